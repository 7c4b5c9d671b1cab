// Where a browser keeps the record in one place it says so, asks for a file after three days instead of a week, and before a
// newer version is taken. What two places held differently is shown.

import { appendFile, cp, mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, type Page, test } from '@playwright/test';
import { createApp } from '../../src/server/app.ts';

const built = path.join(path.dirname(fileURLToPath(import.meta.url)), '../../dist/web');
const DAY_MS = 86_400_000;

async function named(page: Page, address = ''): Promise<void> {
  await page.goto(`${address}/plot`);
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  const steps = page.locator('.first-steps');
  await steps.getByLabel('Volume').fill('12 L');
  await steps.getByLabel('Name').fill('pail');
  await page.keyboard.press('Enter');
  await expect(page.getByText('One vessel: done')).toBeVisible();
  await page.goto(`${address}/record`);
  await expect(page.locator('.act-line')).toHaveCount(2);
}
const withoutSecond = (page: Page) =>
  page.addInitScript(() => Object.defineProperty(Navigator.prototype, 'storageBuckets', { value: undefined }));

test('a browser with one place says so, and asks for a file after three days', async ({ page }) => {
  await withoutSecond(page);
  await named(page);
  await expect(page.locator('#places')).toHaveText(
    /in one place only. Please make a file every 3.days, and before each update/,
  );
  await expect(page.locator('#unsaved')).toHaveCount(0);
  const now = Date.now();
  await page.clock.setFixedTime(now + 3.1 * DAY_MS);
  await page.reload();
  await expect(page.locator('#unsaved')).toContainText(/the oldest is 3.days old/);
  await page.goto('/');
  await expect(page.getByText('Some entries are in no checked file.')).toBeVisible();
});

test('a browser with two places asks after a week', async ({ page }) => {
  await named(page);
  await expect(page.locator('#places')).toHaveText(/in two places. Please make a file every 7.days/);
  const now = Date.now();
  await page.clock.setFixedTime(now + 3.1 * DAY_MS);
  await page.reload();
  await expect(page.locator('#places')).toBeVisible();
  await expect(page.locator('.act-line')).toHaveCount(2);
  await expect(page.locator('#unsaved')).toHaveCount(0);
});

test('before an update a browser with one place asks for a file of what none holds', async ({ page }) => {
  const copy = await mkdtemp(path.join(os.tmpdir(), 'tilthwright-one-place-'));
  await cp(built, copy, { recursive: true });
  const app = await createApp(copy);
  try {
    const address = await app.listen({ host: '127.0.0.1', port: 0 });
    await withoutSecond(page);
    await named(page, address);
    await page.evaluate(() => navigator.serviceWorker.ready);
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await appendFile(path.join(copy, 'sw.js'), '\n// a second build\n');
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    await expect(page.locator('#take-newer')).toBeVisible();
    await expect(page.locator('#file-before-update')).toContainText(
      /2.entries are in no checked file. Please make a file/,
    );
  } finally {
    await app.close();
    await rm(copy, { recursive: true, force: true });
  }
});

test('an entry that the second place held differently is shown, and the first counts', async ({ page }) => {
  await named(page);
  await expect(page.locator('#differing')).toHaveCount(0);
  // The first place comes to hold another content under the id, and its count of writes with it.
  await page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open('tilthwright');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const tx = request.result.transaction(['entries', 'facts'], 'readwrite');
          const rows = tx.objectStore('entries').getAll();
          rows.onsuccess = () => {
            for (const row of rows.result) {
              if (row.kept.kind === 'plot.described') row.kept.body.name = 'Ditch Side';
              tx.objectStore('entries').put(row);
            }
            tx.objectStore('facts').put({ count: 9, sum: 9, era: 0 }, '~writes');
          };
          tx.oncomplete = () => resolve(request.result.close());
        };
      }),
  );
  await page.reload();
  await expect(page.locator('.act-line').last()).toContainText('Ditch Side');
  await expect(page.locator('#differing')).toContainText(/The two places held 1.entry differently/);
  await expect(page.locator('#differing')).toContainText('Hedge End');
});
