// The weigh-in as a newcomer meets it: three answers to a fit, an overfull pail and its cures, entries that
// cannot be read, acts taken back. Expected volumes are arithmetic shown beside them.

import { expect, test } from '@playwright/test';
import { gatherErrors, openSheet, overfill, putIn, verdictText } from './sheet.ts';

let errors: string[] = [];
test.beforeEach(async ({ page }) => {
  errors = gatherErrors(page);
  await openSheet(page);
});
test.afterEach(() => {
  expect(errors).toEqual([]);
});

test('an empty sheet is pre-filled with nothing but our usual gas room, and says what will stand there', async ({
  page,
}) => {
  await expect(page.locator('.lead-in')).toContainText('Your pail will stand here');
  const typed = await page
    .locator('input:not([type=radio])')
    .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value).filter((value) => value !== ''));
  expect(typed).toEqual(['25 %']);
  await expect(page.locator('.say')).toHaveCount(0);
});

test('a newcomer reaches a first fit with three answers', async ({ page }) => {
  await page.getByLabel('Vessel holds').fill('12 L');
  await expect(
    page.getByText('Still to tell: which scraps and their weight and how much water.').first(),
  ).toBeVisible();
  await putIn(page, 'carrot', '2 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('5 L');
  // usable 12 × 0.75 = 9.0 L; 5 L + 2 kg at 1.0 L/kg = 7.0 L; 2.0 L to spare
  await expect(page.locator('.say')).toBeVisible();
  expect(await verdictText(page)).toBe('2.0 L to spare');
  await expect(page.getByRole('heading', { name: 'Sugar for souring' })).toBeVisible();
});

test('the example says that it is one, and one act clears it', async ({ page }) => {
  await page.getByRole('button', { name: 'Show me an example' }).click();
  await expect(page.locator('.title-block')).toContainText('example, all invented');
  await expect(page.locator('.say')).toBeVisible();
  await page.getByRole('button', { name: 'Clear the example' }).click();
  await expect(page.locator('.title-block')).toContainText('your own figures');
  await expect(page.getByLabel('Vessel holds')).toHaveValue('');
});

test('an overfull pail is drawn running over, and its text alternative says so', async ({ page }) => {
  await overfill(page);
  // 7.0 + 2.4 + 0.8 kg at 1.0 L/kg, wet grounds 0.3 kg at 0.92, sugar 0.25 kg at 0.62: 10.63 L; 9.0 L usable
  expect(await verdictText(page)).toBe('1.6 L too much');
  await expect(page.locator('svg path.over')).toHaveCount(2);
  const drawing = page.getByRole('img', { name: /12.L pail cut open, to scale/ });
  await expect(drawing).toHaveAccessibleName(/above the fill line and runs down the side/);
});

test('each cure mends an overfull pail in one touch, and one touch takes it back', async ({ page }) => {
  await overfill(page);
  const before = await verdictText(page);
  for (const cure of [/Shrink everything/, /Use a larger vessel/, /Leave out/]) {
    await page.getByRole('button', { name: cure }).click();
    await expect(page.locator('.say')).toContainText('to spare');
    await expect(page.locator('svg path.over')).toHaveCount(0);
    await expect(page.locator('#take-back')).toBeFocused();
    await page.locator('#take-back').click();
    expect(await verdictText(page)).toBe(before);
  }
});

test('a barrel far too large is drawn nearly empty and offers to make more or take a smaller vessel', async ({
  page,
}) => {
  await overfill(page);
  await page.getByLabel('Vessel holds').fill('60 L');
  await page.getByRole('radio', { name: 'barrel' }).check();
  // usable 60 × 0.75 = 45.0 L; about 10.6 L in it
  expect(await verdictText(page)).toMatch(/^34\.\d L left empty$/);
  await expect(page.getByRole('button', { name: /Make 4\.\d times as much/ })).toBeVisible();
  await expect(page.getByRole('button', { name: /Use a smaller vessel/ })).toBeVisible();
});

test('minus and plus move a weight and the pail with it, and every touch can be taken back', async ({ page }) => {
  await overfill(page);
  const entry = page.getByRole('textbox', { name: 'Weight of grass clippings' });
  await page.getByRole('button', { name: /^grass clippings.* less$/ }).click();
  await expect(entry).toHaveValue('2.3\u00a0kg');
  await page.getByRole('button', { name: /^grass clippings.* more$/ }).click();
  await page.getByRole('button', { name: /^grass clippings.* more$/ }).click();
  await expect(entry).toHaveValue('2.5\u00a0kg');
  for (const value of ['2.4\u00a0kg', '2.3\u00a0kg', '2.4 kg']) {
    await page.locator('#take-back').click();
    await expect(entry).toHaveValue(value);
  }
});

test('a lot taken out comes back with its weight', async ({ page }) => {
  await overfill(page);
  await page.getByRole('button', { name: /^out: leave out coffee grounds/ }).click();
  await expect(page.getByRole('textbox', { name: 'Weight of coffee grounds' })).toHaveCount(0);
  await expect(page.locator('#take-back')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('textbox', { name: 'Weight of coffee grounds' })).toHaveValue('0.3 kg');
});

test('the bowl is taken off what stands on the scale', async ({ page }) => {
  await putIn(page, 'carrot', '350 g');
  await page.getByRole('button', { name: /^bowl: take it off the weight of carrot/ }).click();
  await page.getByRole('button', { name: 'Only the bowl is on the scale now' }).click();
  await page.getByRole('textbox', { name: 'Weight of carrot' }).fill('2.35 kg');
  const row = page.getByRole('group', { name: 'carrot' });
  await expect(row.getByText('2 kg without the bowl of 350 g')).toBeVisible();
});

test('entries that cannot be read keep what was typed, each with its sentence, all at once', async ({ page }) => {
  const say = async (label: string, text: string) => {
    const entry = page.getByRole('textbox', { name: label });
    await entry.fill(text);
    await entry.press('Tab');
    await expect(entry).toHaveValue(text);
    await expect(entry).toHaveAttribute('aria-invalid', 'true');
    const note = await entry.getAttribute('aria-describedby');
    await expect(page.locator(`[id="${note?.split(' ')[0]}"]`)).toContainText(`"${text}"`);
    await expect(page.locator(`[id="${note?.split(' ')[0]}"]`)).toContainText('allowed');
  };
  await say('Vessel holds', 'a big one');
  await say('Gas room', '120 %');
  await putIn(page, 'carrot', '1 kg');
  await say('Weight of carrot', '-2 kg');
  await say('Water', '70000 L');
  await expect(page.locator('.trouble')).toHaveCount(4);
  await expect(page.locator('.lead-in')).toContainText(/4.entries cannot be read yet/);
  await expect(page.locator('.say')).toHaveCount(0);
});

test('a gallon is never assumed: one touch says whose it is', async ({ page }) => {
  await page.getByLabel('Vessel holds').fill('3 gal');
  await page.getByLabel('Vessel holds').press('Tab');
  await expect(page.locator('.trouble')).toContainText('which gallon');
  await page.getByRole('button', { name: /^imperial, 4\.55/ }).click();
  await expect(page.locator('.trouble')).toHaveCount(0);
  await putIn(page, 'carrot', '1 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('1 gal');
  // 3 × 4.54609 = 13.64 L in all, three quarters of it 10.2 L; 1 gal is imperial too: 4.55 + 1.0 = 5.5 L
  await expect(page.locator('.stand')).toContainText(/5\.5.L .* with 10\.2.L to the fill line/);
});

test('scraps that must stay out stop the sheet: the verdict leads to the reason', async ({ page }) => {
  await overfill(page);
  await putIn(page, 'rhubarb-leaves', '1.2 kg');
  const jump = page.getByRole('link', { name: /One thing stops this/ });
  await expect(jump).toBeVisible();
  const target = await jump.getAttribute('href');
  await expect(page.locator(target ?? '#none')).toContainText('Stop.');
});

test('the working of a figure is one touch away and gives formula, inputs and sources', async ({ page }) => {
  await overfill(page);
  await page.getByRole('button', { name: /^why\? 1\.[67]/ }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('heading', { name: 'settled volume' })).toBeVisible();
  await expect(dialog).toContainText('grass clippings, fresh');
  await expect(dialog).toContainText('from memory, unverified');
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
});

test('the sugar window draws the weighed amount, and says so when no amount keeps the margin', async ({ page }) => {
  await page.getByLabel('Vessel holds').fill('12 L');
  await putIn(page, 'carrot', '1 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('5 L');
  await page.getByLabel('Kind of sugar').selectOption('white-sugar');
  await page.getByRole('textbox', { name: 'Sugar' }).fill('60 g');
  const bar = page.getByRole('img', { name: /^Sugar bar/ });
  await expect(bar).toHaveAccessibleName(/ to \d+.g of white sugar; 60.g weighed/);
  // Clippings in hardly any water: the acid they take passes what the little liquid may be given.
  await putIn(page, 'grass-clippings-fresh', '4 kg');
  await page.getByRole('textbox', { name: 'Water' }).fill('0.5 L');
  await expect(bar).toHaveAccessibleName(/no amount keeps the margin/);
  await expect(page.locator('.right .fact').filter({ hasText: 'No amount of white sugar' })).toBeVisible();
});

test('what is told of the verdict is said aloud once it rests', async ({ page }) => {
  await overfill(page);
  await expect(page.getByRole('status')).toContainText(/too much\. 10\.\d.L/);
});
