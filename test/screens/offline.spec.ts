// The time without a signal cannot be poisoned: whatever a network answers while a newer version is fetched, the page opens
// afterwards with no network at all, as the last good version and with its record; and once the network is well, the newer
// version comes.

import { expect, type Page, test } from '@playwright/test';
import { app } from '#words/en/app.ts';
import { keptOffline, type OfflineSite, offlineSite, type Says, tryUpdate } from './offline-site.ts';

const PORTAL: Says = {
  status: 200,
  type: 'text/html; charset=utf-8',
  body: '<!doctype html><title>Please sign in</title>',
};
const FAULT: Says = { status: 500, type: 'text/plain', body: 'The server failed.' };

let site: OfflineSite;
test.beforeEach(async () => {
  site = await offlineSite();
});
test.afterEach(() => site.close());

/** A first visit: the page is kept, and the record holds the plot's name. */
async function firstVisit(page: Page): Promise<void> {
  await page.goto(`${site.address}/plot`);
  await page.getByLabel('Name', { exact: true }).fill('Sedge corner');
  await page.keyboard.press('Enter');
  await expect(page.getByText('Name the plot: done')).toBeVisible();
  await keptOffline(page);
}

/** Opens the page with no network, at an address it has not been to, with a sheet that was never shown. */
async function opensWithoutNetwork(page: Page): Promise<void> {
  site.answer(() => 'broken-line');
  for (const address of ['/record', '/pick']) {
    await page.goto(`${site.address}${address}`);
    await expect(page.locator('.title-block')).toContainText('Sedge corner');
    await expect(page.locator('#failed, #failed-plainly')).toHaveCount(0);
  }
  expect(await page.locator('meta[name="application-name"]').getAttribute('content')).toBe('Tilthwright');
}

/** With a network that is well again the newer version comes, waits, and is taken by a touch. */
async function newerComes(page: Page): Promise<void> {
  site.answer(() => 'as-it-is');
  expect(await tryUpdate(page)).toBe('installed');
  await page.goto(`${site.address}/record`);
  await page.locator('#take-newer').click();
  await expect(page.locator('#take-newer')).toHaveCount(0);
  await expect(page.locator('meta[name="build"]')).toHaveAttribute('content', '1');
  await opensWithoutNetwork(page);
}

for (const [what, says] of [
  ['one file answers 500', FAULT],
  [
    'one file has other bytes under its hashed name',
    { status: 200, type: 'text/javascript', body: 'export const build = 0;' },
  ],
  ['one file is a page of a network portal', PORTAL],
  ['one line breaks', 'broken-line'],
] as const) {
  test(`an update in which ${what} is refused whole, and comes later`, async ({ page }) => {
    await firstVisit(page);
    const part = await site.buildAnew();
    site.answer((path) => (path === part ? says : 'as-it-is'));
    expect(await tryUpdate(page)).toBe('refused');
    expect(site.asked).toContain(part);
    await opensWithoutNetwork(page);
    await newerComes(page);
  });
}

test('a portal that answers everything with its own page becomes no part of the app', async ({ page }) => {
  await firstVisit(page);
  await site.buildAnew();
  site.answer(() => PORTAL);
  expect(await tryUpdate(page)).toBe('no worker');
  // The worker's file comes through, all else does not.
  site.answer((path) => (path === '/sw.js' ? 'as-it-is' : PORTAL));
  expect(await tryUpdate(page)).toBe('refused');
  await page.goto(`${site.address}/plot`);
  await expect(page).not.toHaveTitle('Please sign in');
  await opensWithoutNetwork(page);
  await newerComes(page);
});

test('a worker whose file answers 500 changes nothing', async ({ page }) => {
  await firstVisit(page);
  await site.buildAnew();
  site.answer((path) => (path === '/sw.js' ? FAULT : 'as-it-is'));
  expect(await tryUpdate(page)).toBe('no worker');
  await opensWithoutNetwork(page);
  await newerComes(page);
});

test('an install that is broken off in the middle leaves the version before, and is made good later', async ({
  page,
  context,
}) => {
  await firstVisit(page);
  const part = await site.buildAnew();
  site.answer((path) => (path === part ? 'never' : 'as-it-is'));
  const update = tryUpdate(page);
  await expect.poll(() => site.asked.includes(part)).toBe(true);
  const workers = await context.newCDPSession(page);
  await workers.send('ServiceWorker.enable');
  await workers.send('ServiceWorker.stopAllWorkers');
  expect(await update).toBe('refused');
  await opensWithoutNetwork(page);
  await newerComes(page);
});

test('nothing a network answers is kept but what was listed', async ({ page }) => {
  await firstVisit(page);
  await page.goto(`${site.address}/peg/none?seen=1`);
  await page.evaluate(() => Promise.all(['/assets/gone.js', '/nowhere', '/peg.svg?x=1'].map((path) => fetch(path))));
  const kept = await page.evaluate(async () => {
    const paths: string[] = [];
    for (const name of await caches.keys())
      for (const { url } of await (await caches.open(name)).keys())
        paths.push(new URL(url).pathname + new URL(url).search);
    return paths;
  });
  expect(kept.length).toBeGreaterThan(20);
  for (const path of kept) expect(path).not.toMatch(/gone|nowhere|none|\?/);
});

test('a sheet open in another tab still finds its parts after the newer version was taken', async ({ context }) => {
  const [one, other] = [await context.newPage(), await context.newPage()];
  await firstVisit(one);
  await other.goto(`${site.address}/record`);
  await expect(other.locator('.title-block')).toContainText('Sedge corner');
  await site.buildAnew();
  expect(await tryUpdate(one)).toBe('installed');
  await one.goto(`${site.address}/record`);
  await one.locator('#take-newer').click();
  await expect(one.locator('meta[name="build"]')).toHaveAttribute('content', '1');
  site.answer(() => 'broken-line');
  await other.locator('.stream a').last().click();
  await expect(other.locator('.title-block')).toContainText('Sedge corner');
  await expect(other.locator('#failed')).toHaveCount(0);
  await expect(other.getByText(app.opening)).toHaveCount(0);
});
