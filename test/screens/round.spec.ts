// Once round the whole job on a phone with no signal: from the second visit on the network is off, and every act is
// kept. The calendar is moved by hand; everything else is as a grower would meet it.

import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors, putIn } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const day = (n: number, hour = 9) => new Date(Date.UTC(2026, 5, 1 + n, hour));
const shot = (page: Page, name: string) =>
  page.screenshot({ path: `docs/screens/round-${name}-390.png`, fullPage: true, animations: 'disabled' });

/** One look: a strip, a nose, a top; what is left out is skipped. Never more than five touches. */
async function look(
  page: Page,
  peg: string,
  answers: { readonly ph: string; readonly nose: string; readonly top: string },
) {
  await page.goto(`${peg}/look`);
  let touches = 0;
  for (const name of [`strip ${answers.ph}`, answers.nose, answers.top]) {
    await page.getByRole('button', { name, exact: true }).click();
    touches += 1;
  }
  await page.locator('#write-down').click();
  touches += 1;
  await expect(page.getByText(/Peg 1 is/).first()).toBeVisible();
  expect(touches).toBeLessThanOrEqual(5);
}

test('once round the job with the network off from the second visit', async ({ page, context }) => {
  test.setTimeout(240_000);
  page.setDefaultTimeout(20_000);
  const errors = gatherErrors(page);
  await page.clock.setFixedTime(day(0));
  await page.goto('/');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await shot(page, '01-nothing-yet');

  await context.setOffline(true);
  await page.goto('/plot');
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Volume').fill('12 L');
  await steps.getByLabel('Name').fill('pail');
  await page.keyboard.press('Enter');
  await expect(page.getByText('One vessel: done')).toBeVisible();
  await steps.getByLabel('Name').fill('Kale bed');
  await steps.getByLabel('Area').fill('5.76 m²');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('link', { name: 'Weigh in' })).toBeVisible();
  const bed = page.locator('details', { hasText: 'Kale bed' }).last();
  await bed.locator('summary').first().click();
  await bed.getByLabel('Crop').fill('kale');
  await bed.getByLabel('How it is eaten').selectOption('cooked');
  await bed.getByRole('button', { name: 'Write it down' }).click();
  await shot(page, '02-plot');

  await page.goto('/scraps');
  await page.locator('#lot-material').selectOption('grass-clippings-fresh');
  await page.locator('#lot-amount').fill('2.1 kg');
  await page.locator('#lot-amount').press('Enter');
  await page.getByRole('radio', { name: 'this plot', exact: true }).check();
  await page.getByRole('radio', { name: 'no', exact: true }).check();
  await page.getByRole('radio', { name: 'fresh', exact: true }).check();
  await page.locator('#lot-write').click();
  await expect(page.getByRole('heading', { name: 'May go in a pail' })).toBeVisible();
  await shot(page, '03-scraps');

  await page.goto('/weigh-in');
  // The vessel told on the sheet of the plot is offered: nothing is typed twice.
  await page.getByRole('button', { name: 'pail, 12 L' }).click();
  await expect(page.getByLabel('Vessel holds')).toHaveValue('12 L');
  await putIn(page, 'grass-clippings-fresh', '2.1 kg');
  await putIn(page, 'cabbage-leaves', '1.1 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('5.2 L');
  await page.getByLabel('Kind of sugar').selectOption('white-sugar');
  await page.getByRole('textbox', { name: 'Sugar' }).fill('150 g');
  await page.getByRole('textbox', { name: 'Sugar' }).press('Enter');
  // The foot keeps to the window: at the end of the sheet it covers nothing.
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await shot(page, '04-weigh-in');
  await page.locator('#fill-now').click();

  await page.getByRole('button', { name: 'All went in as planned' }).click();
  await page.getByRole('radio', { name: 'laid on loose' }).check();
  await page.locator('#fill-warmth').fill('20 °C');
  await page.locator('#fill-warmth').press('Enter');
  await page.getByRole('button', { name: 'Peg it' }).click();
  await expect(page.getByText('Peg 1 hangs.')).toBeVisible();
  const peg = (await page.locator('a[href^="/peg/"]').first().getAttribute('href'))?.replace(/\/look$/, '') ?? '';
  await shot(page, '05-filled');

  const looks = [
    { on: 0, ph: '6.0', nose: 'grassy', top: 'clear', hour: 12 },
    { on: 1, ph: '4.5', nose: 'sour', top: 'bubbles', hour: 9 },
    { on: 3, ph: '3.5', nose: 'sour', top: 'bubbles', hour: 9 },
    { on: 6, ph: '3.5', nose: 'sour', top: 'clear', hour: 9 },
    { on: 11, ph: '3.5', nose: 'yeasty', top: 'clear', hour: 9 },
  ];
  for (const one of looks) {
    await page.clock.setFixedTime(day(one.on, one.hour));
    await look(page, peg, one);
  }
  await expect(page.getByText(/Peg 1 is/).first()).toContainText(/ready/);
  await expect(page.getByRole('link', { name: 'Strain it' })).toBeVisible();
  await shot(page, '06-look');

  await page.goto(`${peg}/strain`);
  await page.locator('#strain-drained').fill('6.3 L');
  await page.locator('#strain-solids').fill('2.1 kg');
  const choose = (name: string) => page.getByRole('radio', { name, exact: true }).check();
  await choose('yes, empty');
  await page.locator('#strain-size').fill('1 L');
  await page.locator('#strain-filled').fill('0.9 L');
  await page.locator('#strain-count').fill('7');
  await choose('lets gas out');
  await choose('plastic, not made for drink');
  await shot(page, '07-strain');
  await page.getByRole('button', { name: 'Strained and bottled: write both down' }).click();
  await expect(page.getByText('Peg 1 is strained, and that is written down.')).toBeVisible();

  await page.goto('/can');
  await page.locator('#can-size').fill('10 L');
  await page.getByRole('button', { name: 'Keep this can' }).click();
  await page.locator('.bed-row', { hasText: 'Kale bed' }).click();
  await expect(page.locator('.dose-figure')).toBeVisible();
  await shot(page, '08-can');
  for (let cans = 0; cans < 5 && (await page.locator('.poured-all').count()) === 0; cans++) {
    const button = page.locator('#can-poured');
    const pressed = (await button.textContent()) ?? '';
    await button.click();
    // Kept, so that the next can is asked for; or it was the last one.
    const next = page.locator('#can-poured:enabled', { hasNotText: pressed });
    await expect(page.locator('.poured-all').or(next).first()).toBeVisible();
  }
  await expect(page.locator('.poured-all')).toContainText('poured');
  await expect(page.getByRole('link', { name: 'To the line' })).toBeVisible();
  await shot(page, '09-poured');

  await page.goto('/pick');
  await expect(page.getByText('Cook', { exact: true }).first()).toBeVisible();
  await page.goto('/');
  await expect(page.locator('h1')).toHaveText('Hedge End');
  await shot(page, '10-line');

  await page.goto('/record');
  const lines = page.locator('.act-line');
  await expect(lines.filter({ hasText: /Kale bed fed/ }).first()).toBeVisible();
  const before = await lines.count();
  const waiting = page.waitForEvent('download');
  await page.locator('#make-file').click();
  const file = await (await waiting).path();
  expect((await readFile(file, 'utf8')).split('\n').length).toBeGreaterThan(before);
  await page.locator('#forget > summary').click();
  await page.locator('#forget-file').setInputFiles(file);
  await page.locator('#forget-now').click();
  await expect(page.locator('.act-line')).toHaveCount(0);
  await page.goto('/record');
  await page.locator('#take-file').setInputFiles(file);
  await expect(page.locator('.act-line')).toHaveCount(before);
  await shot(page, '11-record');
  await page.goto(peg);
  await expect(page.locator('h1')).toHaveText('Peg 1');
  expect(errors).toEqual([]);
});
