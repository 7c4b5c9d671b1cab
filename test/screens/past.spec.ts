// The past as it was shown, from touch to record: a straining and a pour keep their figures; where newer tables moved one,
// the record, the peg and the bed say so with both; an entry without figures says so.

import { expect, type Page, test } from '@playwright/test';
import { version } from '#engine/tables/version.ts';
import type { Entry } from '#journal/entry.ts';
import { exportLines } from '#journal/lines.ts';
import { madeWith } from '#words/en/version.ts';
import { program, season } from '../scenarios/past-as-it-was-shown.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('heading', { level: 1 }).waitFor();
}

/** The entry as an earlier program wrote it: other tables, by which the nitrogen was a quarter more than today's. */
function byOlderTables(entry: Entry): Entry {
  const { figuresShown, ...body } = entry.body as { figuresShown?: { figures: readonly { what: string }[] } };
  if (figuresShown === undefined) return entry;
  const figures = figuresShown.figures.map((figure) => {
    if (!figure.what.startsWith('n')) return figure;
    const { low, likely, high } = figure as unknown as { low: number; likely: number; high: number };
    return { ...figure, low: low * 1.25, likely: likely * 1.25, high: high * 1.25 };
  });
  const tables = { number: 1, on: '2026-02-01', digest: '0badcafe' };
  return { ...entry, body: { ...body, figuresShown: { ...figuresShown, tables, figures } } };
}

test('newer tables moved a figure: record, peg and bed say so in one sentence, with both figures', async ({ page }) => {
  const errors = gatherErrors(page);
  const told = season(await program());
  await open(page, '/record');
  const file = exportLines(told.entries.map(byOlderTables));
  await page
    .locator('#take-file')
    .setInputFiles({ name: 'garden.jsonl', mimeType: 'text/plain', buffer: Buffer.from(file) });
  const liquid = /the liquid of peg\s14 holds 20\s% less nitrogen than was shown before\./;
  const pours = /the pours on Gate gave 20\s% less nitrogen than was shown before\./;
  await expect(page.getByText(liquid)).toBeVisible();
  await expect(page.getByText(pours)).toBeVisible();

  const straining = page.locator('.act-line').filter({ hasText: 'strained' }).last();
  await straining.locator('summary').first().click();
  const then = straining.locator('.shown-then');
  await expect(then).toContainText(/Nitrogen in a litre: before .*, now /);
  await expect(then).toContainText('Tables of 1 Feb 2026, 0badcafe');

  await open(page, `/peg/${told.filled.id}`);
  await expect(page.getByText(liquid)).toBeVisible();
  await page.getByText('Figures shown before and now').click();
  await expect(page.getByText(/Nitrogen in a litre: before .*, now /)).toBeVisible();
  await open(page, `/got/${told.bed.id}`);
  await expect(page.getByText(pours)).toBeVisible();
  expect(errors).toEqual([]);
});

test('a pour tells what the bed got, and the record keeps it with its tables; an entry without says so', async ({
  page,
}) => {
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-06'));
  await open(page, '/can');
  await page.getByRole('link', { name: /Middle/ }).click();
  await page.getByRole('button', { name: 'Can 1 is poured' }).first().click();
  await page.locator('#can-poured').click();
  const got = page.getByText(/^The bed got about /);
  await expect(got).toBeVisible();
  const [, grams = ''] = /about (\S+)\sg/.exec((await got.textContent()) ?? '') ?? [];
  expect(Number(grams)).toBeGreaterThan(0);

  // The demo garden lives in memory: the way leads by links, never by a reload.
  await page.locator('.way-back').click();
  await page.locator('a[href="/record"]').first().click();
  await expect(page.getByRole('heading', { level: 1, name: 'Record' })).toBeVisible();
  const pour = page.locator('.act-line').filter({ hasText: 'Middle' }).first();
  await pour.locator('summary').first().click();
  await expect(pour.locator('.shown-then')).toContainText(`Nitrogen: ${grams}\u00a0g`);
  await expect(pour.locator('.shown-then')).toContainText(madeWith(version));
  const before = page.locator('.act-line').filter({ hasText: 'Middle' }).filter({ hasText: 'fed' }).nth(1);
  await before.locator('summary').first().click();
  await expect(before.locator('.shown-then')).toContainText('No figure was shown with this entry.');
  await expect(page.getByRole('heading', { name: 'What newer tables changed' })).toHaveCount(0);
});
