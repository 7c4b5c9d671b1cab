// Pick day in the demo garden on 6 July, two days after Can and Rake both fed the tunnel.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function open(page: Page): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await page.goto('/pick');
  await page.locator('.pick-list > li').first().waitFor();
}

test('each bed has one word, and why stands one touch below with its source', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page);
  await expect(page.locator('.pick-answer')).toHaveText([
    'Pick',
    'Pick',
    'Cook',
    'Cook',
    'Cook',
    'Wait till Sat 11\u00a0July',
    'Wait till Sat 18\u00a0July',
    'Wait till Sat 11\u00a0July',
  ]);
  const gate = page.locator('.pick-list > li', { hasText: 'tomatoes' });
  await expect(gate).toContainText('soil, 9 days ago, peg 14, held');
  await expect(gate.locator('.pick-why')).toBeHidden();
  await gate.locator('summary').click();
  await expect(gate.locator('.pick-why')).toContainText('14\u00a0days from pour to picking');
  await expect(gate.locator('.pick-why')).toContainText('our caution, no source');
  const tunnel = page.locator('.pick-list > li', { hasText: 'cucumber' });
  await expect(tunnel).toContainText('Told twice?');
  await tunnel.locator('summary').click();
  await expect(tunnel).toContainText('20 to 38\u00a0L');
  expect(errors).toEqual([]);
});

test('an empty phone is told what will stand here', async ({ page }) => {
  await page.goto('/pick');
  await expect(page.getByText('one word: pick, wait or cook')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Tell the beds of the plot' })).toBeVisible();
});

test('it prints with a blank column for the pencil, without blocks', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.pick-pencil').first()).toBeVisible();
  await expect(page.locator('#print-pick')).toBeHidden();
  expect((await page.pdf({ format: 'A4' })).byteLength).toBeGreaterThan(1000);
});

for (const colorScheme of ['light', 'dark'] as const) {
  test.describe(colorScheme, () => {
    test.use({ colorScheme });
    test(`axe finds nothing; the picture is kept, ${colorScheme}`, async ({ page }) => {
      await open(page);
      await page.locator('summary').nth(6).click();
      expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
      await page.screenshot({
        path: `docs/screens/pick-390-${colorScheme}.png`,
        fullPage: true,
        animations: 'disabled',
      });
    });
  });
}
