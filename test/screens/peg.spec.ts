// The sheet of one peg: what is shown of a slow, a lost and an emptied batch, and what is written from its forms.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openDemo, pegPath } from './demo-peg.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

async function openPeg(page: Page, peg: number, on: string, by?: string): Promise<void> {
  await openDemo(page, on, by);
  await page.goto(pegPath(peg));
  await page.locator('.peg-sheet').waitFor();
}

test('a slow peg: vessel to scale, the word, the sour line with its table, looks, sums', async ({ page }) => {
  const errors = gatherErrors(page);
  await openPeg(page, 15, '2026-06-20');
  await expect(page.locator('.peg-verdict')).toHaveText('Peg 15 is slow, not lost.');
  await expect(page.getByRole('img', { name: /^Peg 15 to scale: 20\.4.L in a vessel of 30.L/ })).toBeVisible();
  await expect(page.locator('.title-block')).toContainText(/1 : \d/);
  await expect(page.getByRole('table', { name: 'Readings of peg 15' }).getByRole('row')).toHaveCount(5);
  await expect(page.locator('.looks li')).toHaveCount(4);
  // 4.6 + 1.6 + 14 + 0.35 = 20.55 kg
  await expect(page.locator('.peg-sheet')).toContainText(/filled20\.[56].kg/);
  await expect(page.getByRole('link', { name: /can card/ })).toHaveCount(0);
  expect(errors).toEqual([]);
});

test('a lost peg: nothing to pour or to strain, what to do with it instead, its looks kept', async ({ page }) => {
  await openPeg(page, 16, '2026-05-29');
  await expect(page.locator('.peg-verdict')).toHaveText('Peg 16 is lost.');
  await expect(page.locator('.disposal')).toContainText('Let the pressure off first, outdoors');
  await expect(page.locator('.disposal')).toContainText('twice its volume of dry leaves');
  await expect(page.getByRole('link', { name: /can card|Strain/ })).toHaveCount(0);
  await expect(page.locator('.acts summary')).toHaveText(['Tipped out', 'Moved, or under another lid', 'Spilled']);
  await expect(page.locator('.looks li')).toHaveCount(4);
});

test('a bottled peg: ready and held, emptied, with the way to its bottles and to the can card', async ({ page }) => {
  await openPeg(page, 14, '2026-07-06');
  await expect(page.locator('.peg-verdict')).toHaveText('Peg 14 is ready and held.');
  await expect(page.locator('.peg-sheet')).toContainText('Emptied on Sat 20\u00a0June');
  await expect(page.getByRole('link', { name: 'Its bottles' })).toBeVisible();
  await expect(page.getByRole('link', { name: /can card/ })).toBeVisible();
  await expect(page.locator('.acts summary')).toHaveCount(0);
});

test('spilled: the draft outlives a reload, a bare figure is asked about, the sum follows, and it is taken back', async ({
  page,
}) => {
  await openPeg(page, 15, '2026-06-20');
  const amount = page.getByLabel('How much, by litres or by weight');
  await page.locator('summary', { hasText: 'Spilled' }).click();
  await amount.fill('2');
  await page.reload();
  await expect(amount).toHaveValue('2');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.acts .trouble')).toContainText('has no unit');
  await amount.fill('2 kg');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.inputs')).toContainText(/spilled2.kg/);
  // 20.55 − 2 = 18.55 kg
  await expect(page.locator('.inputs')).toContainText(/left in the vessel18\.[56].kg/);
  await page.locator('#take-back').click();
  await expect(page.locator('.inputs')).not.toContainText('spilled');
});

for (const [colorScheme, width] of [
  ['light', 390],
  ['dark', 1280],
] as const) {
  test(`axe finds nothing on a lost peg and on an address without one: ${colorScheme}, ${width} px`, async ({
    page,
  }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 844 });
    await openPeg(page, 16, '2026-05-29');
    await page.locator('summary').first().click();
    await scan(page);
    await page.goto('/peg/nowhere');
    await expect(page.locator('.no-peg')).toContainText('No peg of this plot has that address');
    await scan(page);
  });
}

async function scan(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)).toEqual([]);
}
