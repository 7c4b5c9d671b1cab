// What the beds of the demo garden got by 20 August: bars, the liquid's share with its range, the table behind, workings.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

async function open(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 844 });
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-08-20'));
  await page.goto('/got');
  await page.locator('.got-beds > li').first().waitFor();
}

for (const width of [390, 1280]) {
  test(`${width} px: each bed shows its need and the share of the liquid; axe is content`, async ({ page }) => {
    const errors = gatherErrors(page);
    await open(page, width);
    const gate = page.locator('.got-beds > li', { hasText: 'Gate' });
    await expect(gate).toContainText(/Needs 107\u00a0g \(86 to 129\)/);
    // A share under one per cent with its range: three pours of 280 mL from a pail that held 16 g.
    await expect(gate).toContainText(/The liquid brought 0\.\d\d\u00a0% \(0\.\d\d to 0\.\d\d\) of the need/);
    await expect(gate.locator('svg .hatched')).toHaveCount(1);
    await page.getByText('As a table').click();
    await expect(page.locator('.got-table tbody tr')).toHaveCount(8);
    await page.getByRole('radio', { name: 'Potassium' }).check();
    await expect(gate).toContainText('Needs 43');
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    expect(errors).toEqual([]);
  });
}

test('the working of the sums is one touch away', async ({ page }) => {
  await open(page, 390);
  await page.getByRole('button', { name: 'why?' }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
});

test('a plot without beds is told what will stand here', async ({ page }) => {
  await page.goto('/got');
  await expect(page.getByRole('link', { name: 'Tell the beds of the plot' })).toBeVisible();
});
