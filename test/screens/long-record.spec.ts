// A record of many entries: taken in from a file, its lists drawn page by page, its search answered once it is prepared.

import { expect, type Page, test } from '@playwright/test';
import { exportLines } from '#journal/lines.ts';
import { kg, recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const LOTS = 75;

/** A record of so many lots in the stock, taken in. */
async function takenIn(page: Page): Promise<void> {
  const me = recorder();
  const lots = Array.from({ length: LOTS }, (_, i) =>
    me.did('scraps.weighed', '2026-06-01', { name: `leaves of row ${i}`, mass: kg(1 + i / 8) }),
  );
  await page.goto('/record');
  const file = { name: 'long.jsonl', mimeType: 'text/plain', buffer: Buffer.from(exportLines(lots)) };
  await page.locator('#take-file').setInputFiles(file);
  await expect(page.locator('#file-said')).toContainText(/75.new entries/);
}

test('a stock of many lots is drawn page by page, down to the last', async ({ page }) => {
  const errors = gatherErrors(page);
  await takenIn(page);
  await page.goto('/scraps');
  const lots = page.locator('.lots > li');
  await expect(lots).toHaveCount(30);
  await page.getByRole('button', { name: 'Show 30 more' }).click();
  await expect(lots).toHaveCount(60);
  await page.getByRole('button', { name: 'Show 15 more' }).click();
  await expect(lots).toHaveCount(LOTS);
  await expect(page.getByRole('button', { name: /^Show \d+ more/ })).toHaveCount(0);
  expect(errors).toEqual([]);
});

test('a word is found wherever it is in the record, and counted', async ({ page }) => {
  await takenIn(page);
  await page.getByLabel('A word in it').fill('row 7');
  // Row 7 and rows 70 to 74.
  await expect(page.getByRole('status').filter({ hasText: /^6 of 75 entries$/ })).toBeVisible();
  await expect(page.locator('.act-line')).toHaveCount(6);
  await page.getByLabel('A word in it').fill('');
  await expect(page.getByRole('status').filter({ hasText: /^75 entries$/ })).toBeVisible();
  await expect(page.locator('.act-line')).toHaveCount(40);
});
