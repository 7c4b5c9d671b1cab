// The sour line with what is expected of a peg: first one likely line, then the band, its table, what is said beside it;
// the sheet right after a look; no signal; what finished batches taught, set back and taken back.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { openDemo, pegPath } from './demo-peg.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 }, contextOptions: { reducedMotion: 'reduce' } });

const whole = (page: Page) => page.locator('.sour-line [data-stands="whole"]');

async function openPeg(page: Page, peg: number, on: string): Promise<void> {
  await openDemo(page, on);
  await page.goto(pegPath(peg));
  await page.locator('.peg-sheet').waitFor();
}

test('peg 14 on the third day: band, error bars, spans of dates, temperatures; nothing moves when they come', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await openPeg(page, 14, '2026-06-13');
  const drawing = page.getByRole('img', { name: /^Sour line of peg 14/ });
  const heightBefore = await drawing.evaluate((svg) => svg.getBoundingClientRect().height);
  await whole(page).waitFor();
  expect(await drawing.evaluate((svg) => svg.getBoundingClientRect().height)).toBe(heightBefore);
  await expect(drawing).toHaveAccessibleName(/Expected 8 times in 10: pH \d/);
  // One whisker for each reading, 0.2 pH high: a fifth of the distance between two whole pH.
  await expect(page.locator('.sour-line path.whisker')).toHaveCount(3);
  await expect(page.locator('.sour-line .span text')).toHaveText([
    /^Ready: \w{3} \d+\u00a0June/,
    /^Held: (\w{3} \d+\u00a0June|from|not likely)/,
  ]);
  await expect(page.locator('.sour-line .warmth text')).toHaveText([/^\d+.°C$/, /^Liquid, \d+.°C$/]);
  await expect(page.getByRole('heading', { name: 'What would change this' })).toBeVisible();
  await expect(page.getByRole('region', { name: 'Gas, lid and room' })).toContainText('Laid on loose');
  expect(errors).toEqual([]);
});

test('its tables are there for those who hear the page, and shown on a touch', async ({ page }) => {
  await openPeg(page, 14, '2026-07-06');
  await whole(page).waitFor();
  const readings = page.getByRole('table', { name: 'Readings of peg 14' });
  // Head, six looks and the straining.
  await expect(readings.getByRole('row')).toHaveCount(8);
  await expect(readings.getByRole('columnheader')).toHaveText(['Day', 'pH', 'Read by', 'Expected']);
  const days = page.getByRole('table', { name: /^Expected of peg 14/ }).getByRole('row');
  await expect(days.nth(1)).toHaveText(/^day 0\d\.\d( to \d\.\d)?/);
  await page.getByRole('button', { name: 'as a table' }).click();
  await expect(page.locator('.line-tables')).toBeVisible();
  await expect(page.getByRole('button', { name: 'as a table' })).toHaveAttribute('aria-pressed', 'true');
});

test('a slow peg: ways to save it with what is expected of each; lessons set back, and taken back', async ({
  page,
}) => {
  await openPeg(page, 15, '2026-06-20');
  await whole(page).waitFor();
  const rescues = page.getByRole('region', { name: 'What can still help' }).getByRole('listitem');
  await expect(rescues.first()).toContainText(/^Wait, and look again/);
  await expect(rescues.filter({ hasText: /^Move it to a place at about 20/ })).toContainText('The model expects');
  await expect(rescues.last()).toContainText('Tip it onto the heap');
  const lessons = page.getByRole('region', { name: 'What finished batches taught' });
  await expect(lessons).toContainText('From peg 13');
  await lessons.getByRole('button', { name: 'Set back to the table' }).click();
  await expect(lessons).toHaveCount(0);
  await page.locator('#take-back').click();
  await expect(lessons).toContainText('From peg 13');
});

test('right after a look: where its reading was expected', async ({ page }) => {
  await openDemo(page, '2026-06-19');
  await page.goto(pegPath(15, '/look'));
  await page.locator('.asking').waitFor();
  await page.locator('#strip-sour').getByRole('button', { name: 'strip 5.0' }).click();
  await page.locator('#write-down').click();
  await expect(page.locator('.was-expected')).toHaveText(/pH.\d\.\d( to \d\.\d)?, 8 times in 10\./);
  await whole(page).waitFor();
});

test('why? has the workings of the forecast beside those of the days', async ({ page }) => {
  await openPeg(page, 14, '2026-06-13');
  await whole(page).waitFor();
  await page.getByRole('button', { name: /^why\?/ }).click();
  await expect(page.getByRole('dialog')).toContainText('day from which it counts as held');
  await expect(page.getByRole('dialog')).toContainText('Runs of the ferment model');
});

test('without a signal the worker answers from what the first visit left', async ({ page, context }) => {
  await page.goto('/');
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await context.setOffline(true);
  await openPeg(page, 14, '2026-06-13');
  await whole(page).waitFor();
});

for (const colorScheme of ['light', 'dark'] as const) {
  test(`axe is content with the peg and its forecast, ${colorScheme}`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await openPeg(page, 15, '2026-06-26');
    await whole(page).waitFor();
    await page.getByRole('button', { name: 'as a table' }).click();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });
}
