// The heap of the demo garden on 6 July: what is in it, its temperature, the rules on heat; a look and a feeding.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function open(page: Page): Promise<void> {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await page.goto('/heap');
  await page.locator('.heap-side').waitFor();
}

test('a heap is drawn from its rows, and its reading is in the curve and in the table', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page);
  await expect(page.locator('.heap-sheet table').first()).toContainText('strained solids of peg 14');
  await expect(page.locator('.heap-heat')).toBeVisible();
  await expect(page.locator('.heap-sheet table').last()).toContainText('48\u00a0°C');
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(errors).toEqual([]);
});

test('a look is written down and stands in the table', async ({ page }) => {
  await open(page);
  await page.getByText('Write down a look').click();
  await page.getByLabel('Core, °C').fill('61');
  await page.getByLabel('Turned now?').selectOption('yes');
  await page.getByRole('button', { name: 'Write it down' }).first().click();
  await expect(page.locator('.heap-sheet table').last()).toContainText('61\u00a0°C');
});

test('a feeding by buckets asks what a bucket holds, and then stands as a row', async ({ page }) => {
  await open(page);
  await page.getByText('Put something on').click();
  await page.getByLabel('What', { exact: true }).selectOption('straw');
  await page.getByLabel('How much').fill('3 buckets');
  await page.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(page.getByText('Say how many litres one bucket holds.')).toBeVisible();
  await page.getByLabel('One bucket holds, L').fill('10');
  await page.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(page.locator('.heap-sheet table').first()).toContainText('3 buckets');
});

test('a feeding is read in the gallon of whoever signs, as everywhere else', async ({ page }) => {
  // Of the garden's keyholders this one told whose gallon they mean.
  await page.addInitScript(() => localStorage.setItem('tilthwright.keyholder', 'Rake'));
  await open(page);
  await page.getByText('Put something on').click();
  await page.getByLabel('What', { exact: true }).selectOption('straw');
  await page.getByLabel('How much').fill('2 gal');
  await page.getByRole('button', { name: 'Write it down' }).last().press('Enter');
  // 2 · 4.546 L; two US gallons would be 8.
  const row = page.locator('.heap-sheet table').first().getByRole('row').filter({ hasText: 'straw' });
  await expect(row.locator('th, td').last()).toHaveText('9');
});

test('a feeding offers the lots that lie here, and the sheet says what is left at the end', async ({ page }) => {
  await open(page);
  await expect(page.locator('.heap-sheet')).toContainText(/Left at the end, roughly: .* of nitrogen/);
  await page.getByText('Put something on').click();
  const what = page.getByLabel('What', { exact: true });
  const lots = what.locator('optgroup[label="Scraps that lie here"] option');
  await expect(lots.first()).toContainText('kg left');
  await what.selectOption({ index: 1 });
  await page.getByLabel('How much').fill('200 g');
  await page.getByRole('button', { name: 'Write it down' }).last().click();
  await expect(page.locator('.heap-sheet table').first()).toContainText('200 g');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
});

test('a cress test of the compost is typed and read against the water', async ({ page }) => {
  const errors = gatherErrors(page);
  await open(page);
  await page.getByRole('link', { name: 'Cress test of its compost' }).click();
  await page.getByRole('button', { name: 'Write the test down' }).click();
  await expect(page.getByText('The water alone is missing')).toBeVisible();
  for (const [row, germinated, roots] of [
    ['control', '27', '20'],
    ['10', '12', '9'],
  ] as const) {
    await page.locator(`[id="cress-${row}.germinated"]`).fill(germinated);
    await page.locator(`[id="cress-${row}.roots"]`).fill(roots);
  }
  await page.getByRole('button', { name: 'Write the test down' }).click();
  // 100 × 12 × 9 / (27 × 20) = 20: it harms.
  await expect(page.locator('.cress-result')).toContainText('Keep it off seed beds and out of pots, let it cure on');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  expect(errors).toEqual([]);
});
