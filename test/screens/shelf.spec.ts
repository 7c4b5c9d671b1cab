// The shelf of the demo garden: bottles to scale, one touch to vent, past-date ones for the heap; the unknown jar; and
// an empty shelf that says what will stand there.

import { expect, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

test.beforeEach(async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
});

test('one touch vents a bottle and says what was found', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-07'));
  await page.goto('/shelf');
  await expect(page.getByText('use first by Sat 19\u00a0Sept')).toBeVisible();
  await expect(page.getByRole('img', { name: /Peg 14, bottles of 1\sL, to scale/ })).toBeVisible();
  // 37.04 L / 41
  await expect(page.getByText(/0\.90?\sL from these bottles/)).toBeVisible();
  await page.getByRole('button', { name: 'Peg 14 vented just now, found: hiss' }).click();
  await page.getByText('Vent diary').click();
  await expect(page.getByText(/Tue 7\sJuly, \d\d:\d\d: hiss/)).toBeVisible();
  expect(errors).toEqual([]);
});

test('a bottle past its date says heap, and goes there in one touch', async ({ page }) => {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-10-01'));
  await page.goto('/shelf');
  await expect(page.getByText('past Sat 19\u00a0Sept: heap')).toBeVisible();
  await page.getByRole('button', { name: 'Tip it on the heap' }).click();
  await expect(page.getByText('Your bottles will stand here')).toBeVisible();
});

test('a jar without a peg gets no dose and goes on the heap', async ({ page }) => {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-07'));
  await page.goto('/shelf/unknown');
  await expect(page.locator('.say')).toHaveText('No dose.');
  await expect(page.locator('.jar-steps li')).toHaveCount(5);
  expect(await page.locator('main').textContent()).not.toMatch(/\d\s?mL of concentrate/);
  await page.getByRole('button', { name: '1\u00a0L' }).click();
  await page.getByRole('button', { name: 'It is on the heap: write it down' }).click();
  await expect(page.getByText('a jar without a peg went on the heap')).toBeVisible();
});

test('an empty shelf says what will stand there and offers the one act', async ({ page }) => {
  await page.goto('/shelf');
  await expect(page.getByText('Your bottles will stand here')).toBeVisible();
  await expect(page.getByRole('link', { name: 'Strain a batch to fill the first' })).toBeVisible();
});
