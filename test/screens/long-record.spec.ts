// A record of many entries: taken in from a file, its lists drawn page by page, its search answered once it is prepared.

import { expect, type Page, test } from '@playwright/test';
import type { Entry } from '#journal/entry.ts';
import { exportLines } from '#journal/lines.ts';
import { kg, litres, meter, recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const LOTS = 75;

/** A record of so many lots in the stock, taken in. */
async function takenIn(page: Page): Promise<void> {
  const me = recorder();
  const lots = Array.from({ length: LOTS }, (_, i) =>
    me.did('scraps.weighed', '2026-06-01', { name: `leaves of row ${i}`, mass: kg(1 + i / 8) }),
  );
  await take(page, lots);
}

async function take(page: Page, entries: readonly Entry[]): Promise<void> {
  await page.goto('/record');
  const file = { name: 'long.jsonl', mimeType: 'text/plain', buffer: Buffer.from(exportLines(entries)) };
  await page.locator('#take-file').setInputFiles(file);
  await expect(page.locator('#file-said')).toContainText(new RegExp(`${entries.length}.new entries`));
}

const BATCHES = 35;

/** So many batches, each strained into one bottle; the bottles were never vented. */
function bottled(): readonly Entry[] {
  const me = recorder();
  return Array.from({ length: BATCHES }, (_, i) => {
    const filled = me.did('peg.filled', '2026-05-01', {
      peg: i + 1,
      parts: [{ material: 'nettle', mass: kg(1) }],
      water: [{ volume: litres(8), source: 'tap' }],
    });
    const batch = filled.id;
    const looks = ['2026-05-10', '2026-05-14'].map((on) =>
      me.did('peg.looked', on, { batch, acidity: meter(3.6), smell: 'sour', surface: 'clear', temperatureC: 20 }),
    );
    const strained = me.did('peg.strained', '2026-05-20', { batch, drained: litres(6), rest: 'nothing' });
    const bottle = me.did('bottle.filled', '2026-05-20', {
      batch,
      filled: litres(6),
      cap: 'vent',
      material: 'plastic',
    });
    return [filled, ...looks, strained, bottle];
  }).flat();
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

test('what is kept out of a vessel is drawn page by page, each lot with its reason', async ({ page }) => {
  await takenIn(page);
  await page.goto('/fill');
  const kept = page.locator('.kept-out > li');
  await expect(kept).toHaveCount(12);
  await page.getByRole('button', { name: 'Show 12 more' }).click();
  await expect(kept).toHaveCount(24);
  await expect(kept.last().locator('.note')).not.toBeEmpty();
});

test('many bottles: things to do, what to pour from and tags come page by page, and what is taken stays in sight', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const errors = gatherErrors(page);
  await take(page, bottled());
  await page.goto('/');
  const hands = page.locator('.hands li');
  await expect(hands).toHaveCount(30);
  await page
    .locator('.hands')
    .getByRole('button', { name: /^Show \d+ more$/ })
    .click();
  expect(await hands.count()).toBeGreaterThanOrEqual(BATCHES);

  await page.goto('/can');
  const liquids = page.locator('.can-question').first().locator('button[aria-pressed]');
  await expect(liquids).toHaveCount(12);
  const more = page.getByRole('button', { name: /^Show \d+ more$/ });
  await more.click();
  await more.click();
  await expect(liquids).toHaveCount(BATCHES);
  await expect(more).toHaveCount(0);
  await liquids.filter({ hasText: 'peg 35' }).click();
  await page.goto('/can');
  // Twelve of a page, and before them the one that is taken.
  await expect(liquids).toHaveCount(13);
  await expect(liquids.first()).toContainText('peg 35');
  await expect(liquids.first()).toHaveAttribute('aria-pressed', 'true');

  await page.goto('/print/tags');
  const tags = page.locator('.tag');
  await expect(tags).toHaveCount(24);
  await expect(page.getByText('24 of 35 are shown here. Only those are printed.')).toBeVisible();
  await page.getByRole('button', { name: 'Show 11 more' }).click();
  await expect(tags).toHaveCount(BATCHES);
  await expect(page.getByText('Only those are printed.')).toHaveCount(0);
  expect(errors).toEqual([]);
});

test('a search by peg offers every peg once its fold is open', async ({ page }) => {
  test.setTimeout(120_000);
  await take(page, bottled());
  await page.locator('.search summary').click();
  const pegs = page.locator('#search-peg option');
  await expect(pegs).toHaveCount(BATCHES + 1);
  await page.locator('#search-peg').selectOption('35');
  await expect(page.locator('.act-line')).toHaveCount(5);
});
