// What the plot's answers change on the screens at once, a stop passed over with a reason and its mark, and on every
// sheet: all stops open, at most two others, nothing said twice.

import { expect, type Page, test } from '@playwright/test';
import { openDemo } from './demo-peg.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

const ON = '2026-07-06';
const SOLD = /food is sold from here/;

/** By the way around: what is told in the demo garden lasts until the page is loaded anew. */
async function openBed(page: Page, name: string): Promise<void> {
  await page.locator('.stream a[href="/can"]').click();
  const choose = page.getByRole('link', { name: 'Choose batch, can and strength' });
  await page.locator('.bed-row, .bed-head').first().waitFor();
  if (await choose.isVisible()) await choose.click();
  await page.locator('.bed-row', { hasText: name }).click();
  await page.locator('.bed-head').waitFor();
}

async function toPlot(page: Page): Promise<void> {
  await page.locator('.way-back').click();
  await page.locator('a[href="/plot"]').first().click();
  await page.locator('#plot-facts').waitFor();
}

test('"we sell" is said to tighten, and tightens, at once', async ({ page }) => {
  const errors = gatherErrors(page);
  await openDemo(page, ON);
  await page.goto('/plot');
  await openBed(page, 'Gate');
  await expect(page.getByText(SOLD)).toHaveCount(0);
  await toPlot(page);
  await expect(page.locator('.stricter')).toContainText('the poison line at hand');
  await expect(page.locator('.stricter')).not.toContainText('sold');
  await page.locator('summary', { hasText: 'Change the plot’s facts' }).click();
  await page.getByLabel('Is any of the harvest sold or handed on?').selectOption('yes');
  await page.locator('#plot-own-fold').getByRole('button', { name: 'Write it down' }).click();
  await expect(page.locator('.stricter')).toContainText(
    'Food is sold or handed on: on beds eaten raw the can card holds',
  );
  await openBed(page, 'Gate');
  await expect(page.locator('.no-dose')).toContainText(SOLD);
  await expect(page.locator('.no-dose')).toContainText('21 CFR');
  // Kale is told as cooked; whoever buys it may eat it raw.
  await openBed(page, 'Middle');
  await expect(page.locator('.no-dose')).toContainText(SOLD);
  expect(errors).toEqual([]);
});

test('a stop that is a matter of judgement gives way to a reason in words, and marks the bed', async ({ page }) => {
  const errors = gatherErrors(page);
  await openDemo(page, ON);
  await page.goto('/plot');
  const bed = page.locator('details', { hasText: 'M Middle' }).last();
  await bed.locator('summary').first().click();
  await bed.getByLabel('Feed goes').selectOption('none');
  await bed.getByRole('button', { name: 'Write it down' }).click();
  await openBed(page, 'Middle');
  const stop = page.locator('.no-dose');
  await expect(stop).toContainText('No feed on this bed: so the plot says.');
  await expect(stop).toContainText('Instead: Water it plain');
  await stop.getByText('Pass over "no feed on this bed"?').click();
  await stop.getByLabel('Because').fill('x');
  await stop.getByRole('button', { name: 'Pass over it' }).click();
  await expect(stop.locator('.trouble')).toContainText('three at least');
  await stop.getByLabel('Because').fill('The chard is pale and we agreed on it');
  await stop.getByRole('button', { name: 'Pass over it' }).click();
  await expect(page.locator('.holds')).toContainText('Passed over: no feed on this bed, because The chard is pale');
  for (const can of ['Can 1 is poured', 'Can 2 is poured']) {
    await page.getByRole('button', { name: can }).first().click();
  }
  await expect(page.locator('.poured-all')).toBeVisible();
  await toPlot(page);
  await expect(page.locator('.passed-mark')).toContainText(
    'no feed on this bed, because The chard is pale and we agreed',
  );
  await openBed(page, 'Middle');
  await expect(page.locator('.bed-head .passed-mark')).toContainText('we agreed on it');
  expect(errors).toEqual([]);
});

test('a stop without an override offers the way out alone', async ({ page }) => {
  await openDemo(page, ON);
  await page.goto('/shelf/unknown');
  await expect(page.locator('.caution').first()).toContainText('Instead:');
  await expect(page.locator('.pass-over')).toHaveCount(0);
});

test('on every sheet all stops stand open, of the rest at most two, and nothing stands twice', async ({ page }) => {
  test.setTimeout(240_000);
  await openDemo(page, ON);
  await page.goto('/');
  await page.locator('a[href^="/peg/"]').first().waitFor();
  const hrefs = await page.locator('a[href^="/peg/"]').evaluateAll((all) => all.map((one) => one.getAttribute('href')));
  const pegs = [...new Set(hrefs)].filter((href) => /^\/peg\/[^/]+$/.test(href ?? ''));
  expect(pegs.length).toBeGreaterThan(0);
  await page.goto('/can');
  await page.locator('.bed-row').first().waitFor();
  const beds = await page.locator('.bed-row').evaluateAll((all) => all.map((one) => one.getAttribute('href')));
  // The sheets of what the beds got go by the same ids.
  const got = beds.map((href) => href?.replace('/can/', '/got/'));
  const sheets = [
    ...['/plot', '/scraps', '/weigh-in', '/two-cases', '/fill', '/shelf', '/shelf/unknown', '/can', '/pick', '/record'],
    ...['/weather', '/heap', '/got', '/cover'],
    ...pegs.flatMap((peg) => [peg, `${peg}/look`, `${peg}/strain`]),
    ...beds,
    ...got,
  ];
  let seen = 0;
  for (const sheet of sheets) {
    await page.goto(sheet ?? '/');
    await page.locator('h1').first().waitFor();
    await page.waitForLoadState('networkidle');
    const said = await page.evaluate(() =>
      [...document.querySelectorAll('.level-mark')].map((mark) => ({
        open: mark.closest('details:not([open])') === null,
        // A bed of the round has its reasons in a fold of its own.
        apart: mark.closest('.round') !== null,
        word: mark.parentElement?.querySelector('b')?.textContent ?? '',
        text: mark.parentElement?.textContent ?? '',
        listed: mark.closest('.caution') !== null,
      })),
    );
    const stops = said.filter(({ word }) => /^(Stop|Halt)/.test(word));
    const others = said.filter((one) => !stops.includes(one) && one.open);
    const texts = said.filter(({ apart }) => !apart).map(({ text }) => text);
    expect(
      stops.filter(({ open, apart }) => !open && !apart),
      `${sheet}: a stop is folded`,
    ).toEqual([]);
    expect(others.length, `${sheet}: ${others.map(({ text }) => text).join(' | ')}`).toBeLessThanOrEqual(2);
    expect(new Set(texts).size, `${sheet} says a thing twice`).toBe(texts.length);
    seen += said.length;
  }
  expect(seen).toBeGreaterThan(10);
});
