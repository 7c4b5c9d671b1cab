// Amounts from the touch to the record and over to another phone: a figure that two styles read differently is asked at its
// field, the answer goes with the amount, and a pour corrected asks about its concentrate.

import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import type { Entry } from '#journal/entry.ts';
import { importLines } from '#journal/file-reader.ts';
import { fold } from '#journal/fold.ts';
import { recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const acts = (page: Page) => page.locator('.act-line');
const answer = (page: Page, question: string | RegExp, word: string) =>
  page.getByRole('group', { name: question }).getByRole('radio', { name: word, exact: true }).check();

test('“1,250 g” is asked at the scale, and weighs the same grams on a phone that writes it the other way', async ({
  page,
}, info) => {
  const errors = gatherErrors(page);
  await page.goto('/scraps');
  await page.getByLabel('Kind of scraps').selectOption('grass-clippings-fresh');
  const weight = page.getByLabel('It weighs');
  await weight.fill('1,250 g');
  await weight.press('Enter');
  await expect(page.getByText(/can be read in two ways/)).toBeVisible();
  await expect(page.getByRole('button', { name: /^Read as 1\.25\sg, less than 2$/ })).toBeVisible();
  await page.getByRole('button', { name: /^Read as 1250\sg, a thousand or more$/ }).click();
  await expect(page.getByText(/can be read in two ways/)).toHaveCount(0);
  await expect(weight).toHaveValue('1,250 g');
  await answer(page, /Whose is it/, 'a neighbour’s garden');
  await answer(page, /weedkiller used/, 'not known');
  await answer(page, /How does it look/, 'fresh');
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.lots > li')).toHaveCount(1);

  await page.goto('/record');
  await expect(acts(page)).toHaveCount(1);
  const waiting = page.waitForEvent('download');
  await page.locator('#make-file').click();
  const file = info.outputPath('record.jsonl');
  await (await waiting).saveAs(file);
  const read = importLines(await readFile(file, 'utf8'), () => undefined);
  if (!read.ok) throw new Error(JSON.stringify(read.refused));
  const lot = read.fresh.find(({ kind }) => kind === 'scraps.weighed') as Entry;
  expect(lot.body).toMatchObject({ mass: { typed: '1,250 g', massKg: 1.25, readWith: { style: 'point' } } });
  // Another phone, whose keyholder writes decimals with a comma.
  const other = recorder({ plot: lot.plot, by: 'Rake', device: 'phone-2', seed: 2 }).did(
    'plot.described',
    '2026-05-01',
    {
      keyholders: [{ tag: 'Rake', decimals: 'comma' }],
    },
  );
  const plot = fold([other, ...read.fresh], lot.plot);
  expect(plot.lots.get(lot.id)?.act.body.mass.massKg).toBe(1.25);
  expect(plot.questions).toEqual([]);
  expect(errors).toEqual([]);
});

test('a small form asks in the same way and keeps what was typed', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.goto('/plot');
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Volume').fill('1.250 L');
  await steps.getByLabel('Name').fill('jar');
  await page.keyboard.press('Enter');
  await steps.getByRole('button', { name: /^Read as 1\.25\sL, less than 2$/ }).click();
  await steps.getByLabel('Name').press('Enter');
  await expect(page.getByText('One vessel: done')).toBeVisible();
  await page.goto('/record');
  const jar = acts(page).filter({ hasText: 'jar' });
  await jar.locator('summary').click();
  await expect(jar.locator('.version')).toContainText('1.250 L');
  expect(errors).toEqual([]);
});

test('a pour corrected from 11.52 L to 5 L asks about its concentrate', async ({ page }) => {
  const errors = gatherErrors(page);
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-07-08'));
  await page.goto('/record');
  await page.getByLabel('A word in it').fill('281 mL');
  const pour = acts(page).first();
  await pour.locator('summary').click();
  await pour.getByRole('button', { name: 'Correct it' }).click();
  const litres = pour.getByLabel(/poured/i).first();
  await litres.fill('5 L');
  await pour.getByRole('button', { name: 'Write the correction down' }).click();
  await expect(pour.getByText(/How much concentrate was in the 5\sL\?/)).toBeVisible();
  await expect(pour.getByRole('button', { name: /^Keep the concentrate: 281\smL, 1 to 16\.8$/ })).toBeVisible();
  await pour.getByRole('button', { name: /^Keep the strength: 122\smL of concentrate$/ }).click();
  await pour.getByRole('button', { name: 'Write the correction down' }).click();
  await page.getByLabel('A word in it').fill('122\u00a0mL');
  await expect(acts(page)).toHaveCount(1);
  await expect(acts(page).locator('summary')).toContainText('corrected');
  expect(errors).toEqual([]);
});
