// How to close the gap, on the demo garden on 24 June: what lies there goes before anything is bought, the plan is made in
// the browser and also with no signal, and what is typed of a shop is kept.

import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { gatherErrors } from './sheet.ts';

const heading = (page: Page, name: string) => page.getByRole('heading', { name });

async function open(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 844 });
  await page.addInitScript(() => sessionStorage.setItem('tilthwright.demo-day', '2026-06-24'));
  await page.goto('/cover');
  await heading(page, 'Put on the beds').waitFor({ timeout: 30_000 });
}

for (const width of [390, 1280]) {
  test(`${width} px: the garden's own goes first, in sentences with bed, material and amount`, async ({ page }) => {
    const errors = gatherErrors(page);
    await open(page, width);
    const uses = page.locator('section', { has: heading(page, 'Put on the beds') }).locator('li');
    for (const said of await uses.allTextContents()) expect(said).toMatch(/^On \w+ put .*\d.* of .*\.$/);
    await expect(heading(page, 'Buy')).toHaveCount(0);
    await expect(page.getByText('It costs nothing but work.')).toBeVisible();
    await expect(page.getByText('That cannot be closed without another source of').first()).toBeVisible();
    // Clippings set aside lie there too, and stay where they are.
    await expect(page.locator('body')).not.toContainText('9.0 kg');
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    expect(errors).toEqual([]);
  });
}

test('a feed of a shop is bought after the clippings are used up, whole packs, and kept over a reload', async ({
  page,
}) => {
  await open(page, 390);
  await page.getByText('What a shop offers, and what you can spend').click();
  for (const [label, text] of [
    ['Name', 'horn meal'],
    ['N, %', '112'],
    ['P₂O₅, %', '0'],
    ['K₂O, %', '0'],
    ['Pack', '5 kg'],
    ['Price of a pack', '20'],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.getByLabel(label, { exact: true }).press('Tab');
  }
  await expect(page.getByText('“112” is no share of the label; allowed: 0 to 100.')).toBeVisible();
  await page.getByLabel('N, %', { exact: true }).fill('12');
  await page.getByLabel('N, %', { exact: true }).press('Tab');
  await page.getByLabel('How it lets go').selectOption('slow');
  const buys = page.locator('section', { has: heading(page, 'Buy') }).locator('li');
  await expect(buys).toHaveText(/^Buy\s\d+\skg\s\(\d\spacks\)\sof\shorn meal for .*: it costs \d+(\.\d+)?\.$/);
  await expect(page.getByText(/All 4\.3.kg of grass clippings, fresh are used/)).toBeVisible();
  await page.reload();
  await expect(buys).toHaveText(/horn meal/);
  await page.getByText('What a shop offers, and what you can spend').click();
  await expect(page.getByLabel('Pack', { exact: true })).toHaveValue('5 kg');
  // A limit on time asks for the work of a bucket.
  await page.getByLabel('Most time, minutes').fill('5');
  await page.getByLabel('Most time, minutes').press('Tab');
  await expect(page.locator('#cover-bucketMinutes-trouble')).toContainText('how long one bucket takes');
  await page.getByLabel('Minutes for one bucket, fetched and spread').fill('10');
  await page.getByLabel('Minutes for one bucket, fetched and spread').press('Tab');
  await expect(page.getByText(/All the time, 5.minutes,/)).toBeVisible();
  await page.getByLabel('Most time, minutes').fill('');
  await page.getByLabel('Most time, minutes').press('Tab');
  await page.getByLabel('Most to spend').fill('0');
  await page.getByLabel('Most to spend').press('Tab');
  await expect(heading(page, 'Buy')).toHaveCount(0);
});

test('clippings still to come are planned too, and kept over a reload; a wrong amount is told at its field', async ({
  page,
}) => {
  await open(page, 390);
  await page.getByText('What is still to come').click();
  await page.getByLabel('What', { exact: true }).selectOption({ label: 'grass clippings, fresh' });
  await page.getByLabel('How much', { exact: true }).fill('much');
  await page.getByLabel('How much', { exact: true }).press('Tab');
  await expect(page.locator('#expected-0-amount-trouble')).toContainText('much');
  await page.getByLabel('How much', { exact: true }).fill('30 kg');
  await page.getByLabel('How much', { exact: true }).press('Tab');
  const uses = page.locator('section', { has: heading(page, 'Put on the beds') });
  await expect(uses).toContainText('of grass clippings, fresh, still to come');
  await page.getByRole('button', { name: 'Another line' }).click();
  await expect(page.getByLabel('How much', { exact: true })).toHaveCount(2);
  await page.reload();
  await expect(uses).toContainText('still to come');
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});

test('the best use of each lot stands below, and workings are one touch away', async ({ page }) => {
  await open(page, 390);
  await expect(page.getByText('Lay it on a bed as mulch, thin and dried first.')).toBeVisible();
  await page.getByRole('button', { name: 'why?' }).click();
  await expect(page.getByRole('dialog')).toContainText('nitrogen brought');
});

test('with no signal the plan is made all the same', async ({ page, context }) => {
  await open(page, 390);
  await page.evaluate(() => navigator.serviceWorker.ready);
  await page.waitForFunction(async () => {
    const caches = await globalThis.caches.keys();
    const found = await Promise.all(
      caches.map(async (name) => (await (await globalThis.caches.open(name)).keys()).map(({ url }) => url)),
    );
    return found.flat().some((url) => url.includes('.wasm'));
  });
  await context.setOffline(true);
  await page.reload();
  await expect(heading(page, 'Put on the beds')).toBeVisible({ timeout: 30_000 });
});

test('a plot without beds is told what will stand here', async ({ page }) => {
  await page.goto('/cover');
  await expect(page.getByRole('link', { name: 'Tell the beds of the plot' })).toBeVisible();
});
