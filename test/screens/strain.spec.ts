// Peg 14 strained in the demo garden: the sum in one line, the use, bottles, a drink bottle stopped.

import { expect, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.beforeEach(async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-06-19'));
});

test('a straining is summed up, judged and bottled; a drink bottle stops it', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.goto('/peg/14/strain');
  await page.locator('#strain-drained').fill('6.3 L');
  await page.locator('#strain-solids').fill('2.1 kg');
  const choose = (name: string) => page.getByRole('radio', { name, exact: true }).check();
  await choose('yes, empty');
  await page.locator('#strain-ph').fill('3.7');
  await page.locator('#strain-ph').press('Enter');
  await choose('meter');
  // in 2.1 + 0.7 + 0.4 + 5.2 + 0.15 + 0.2 × 1.01 = 8.75 kg; out 6.3 × 1.01 + 2.1 = 8.46 kg
  await expect(page.locator('.sum-line')).toHaveText(
    /In 8\.75\skg = out 8\.46\skg \+ 0\.29\skg not accounted for \(3\s%\)\./,
  );
  await expect(page.locator('.use-word')).toHaveText('Ready, not held');
  await choose('another: say which');
  await page.locator('#strain-kind').fill('old lemonade bottle');
  await page.locator('#strain-kind').press('Enter');
  await page.locator('#strain-size').fill('1 L');
  await page.locator('#strain-filled').fill('0.9 L');
  await page.locator('#strain-count').fill('7');
  await choose('lets gas out');
  await expect(page.getByText(/Never in a bottle made for drinks/).first()).toBeVisible();
  const act = page.getByRole('button', { name: 'Strained and bottled: write both down' });
  await expect(act).toHaveAttribute('aria-disabled', 'true');
  await choose('plastic, not made for drink');
  await expect(page.getByText('7\u00a0bottles with 0.9\u00a0L hold 6.3\u00a0L of 6.3\u00a0L.')).toBeVisible();
  await act.click();
  await expect(page.getByText('Peg 14 is strained, and that is written down.')).toBeVisible();
  await page.getByRole('link', { name: 'To the shelf' }).click();
  await expect(page.getByRole('heading', { name: 'Peg 14' })).toBeVisible();
  expect(errors).toEqual([]);
});
