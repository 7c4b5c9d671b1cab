// A file of many entries is taken in by a worker: the page answers meanwhile and writes nothing itself, what is pressed then is
// kept beside it, a stop in the middle leaves nothing, and a worker that does not arrive is told as such.

import { expect, type Page, test } from '@playwright/test';
import { exportLines } from '#journal/lines.ts';
import { record as words } from '#words/en/record.ts';
import { notOpened } from '#words/en/trouble.ts';
import { kg, recorder } from '../scenarios/recorder.ts';
import { gatherErrors } from './sheet.ts';

test.use({ viewport: { width: 390, height: 844 } });

const LOTS = 6000;

/** A plot with a name, seen on its record; tells its id. */
async function namedPlot(page: Page): Promise<string> {
  await page.goto('/plot');
  await page.getByLabel('Name', { exact: true }).fill('Hedge End');
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Volume')).toBeVisible();
  await page.goto('/record');
  await expect(page.locator('.act-line')).toHaveCount(1);
  return await page.evaluate(
    () =>
      new Promise<string>((resolve, reject) => {
        const request = indexedDB.open('tilthwright');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const asked = request.result.transaction('facts').objectStore('facts').get('plot');
          asked.onsuccess = () => {
            request.result.close();
            resolve(String(asked.result));
          };
        };
      }),
  );
}

function manyLots(plot: string) {
  const rake = recorder({ plot });
  const lots = Array.from({ length: LOTS }, (_, n) =>
    rake.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: kg(1 + (n % 8)) }),
  );
  return { name: 'many.jsonl', mimeType: 'text/plain', buffer: Buffer.from(exportLines(lots)) };
}

/** Counts what the page itself writes into a database. */
async function countWrites(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const writes = { count: 0 };
    Object.assign(globalThis, { writes });
    for (const method of ['add', 'put'] as const) {
      const plain = IDBObjectStore.prototype[method];
      IDBObjectStore.prototype[method] = function (...args) {
        writes.count++;
        return plain.apply(this, args);
      };
    }
  });
}
const writesSoFar = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { writes: { count: number } }).writes.count);

/** Does something in the page as soon as some of the file was read, and tells what came of it while more is to come. */
const onceBegun = (page: Page, what: 'search' | 'stop') =>
  page.evaluate(
    ([asked, nothing]) =>
      new Promise<string>((resolve) => {
        const seer = new MutationObserver(() => {
          const bar = document.querySelector<HTMLProgressElement>('#taking progress');
          if (bar === null || bar.value === 0) return;
          seer.disconnect();
          if (asked === 'stop') {
            document.querySelector<HTMLButtonElement>('#taking button')?.click();
            return resolve('stopped');
          }
          const field = document.querySelector('#search-text') as HTMLInputElement;
          field.value = 'no such word';
          field.dispatchEvent(new InputEvent('input', { bubbles: true }));
          const look = () => {
            if (!document.querySelector('.acts')?.textContent?.includes(nothing ?? '')) return setTimeout(look);
            return resolve(document.querySelector('#taking') === null ? 'answered too late' : 'answered');
          };
          look();
        });
        seer.observe(document.body, { subtree: true, childList: true, attributes: true });
      }),
    [what, words.nothingFound] as const,
  );

test('the page answers while thousands are taken in, writes none of them, and keeps what is pressed meanwhile', async ({
  page,
}) => {
  const errors = gatherErrors(page);
  await countWrites(page);
  const file = manyLots(await namedPlot(page));
  const before = await writesSoFar(page);
  const answered = onceBegun(page, 'search');
  await page.locator('#take-file').setInputFiles(file);
  expect(await answered).toBe('answered');
  await page.getByLabel('A word in it').fill('');
  const named = page.locator('.act-line').filter({ hasText: 'Hedge End' });
  await named.locator('summary').click();
  await named.getByRole('button', { name: 'Take it back' }).click();
  await named.getByRole('button', { name: 'Yes, take it back' }).click();
  await expect(page.locator('#file-said')).toContainText(/6000.new entries/);
  await expect(named.locator('summary')).toContainText('taken back');
  await expect(page.getByRole('status').filter({ hasText: /^6001.entries$/ })).toBeVisible();
  // The act that was taken back, as one entry and the sums of its write, in two places.
  expect((await writesSoFar(page)) - before).toBeLessThan(20);
  await page.reload();
  await expect(page.getByRole('status').filter({ hasText: /^6001.entries$/ })).toBeVisible();
  expect(errors).toEqual([]);
  // The first place is lost whole: all of it comes back out of the second.
  await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const request = indexedDB.deleteDatabase('tilthwright');
        request.onsuccess = resolve;
        request.onerror = reject;
      }),
  );
  await page.reload();
  await expect(page.getByRole('status').filter({ hasText: /^6001.entries$/ })).toBeVisible();
});

test('thousands that are stopped in the middle leave nothing', async ({ page }) => {
  const file = manyLots(await namedPlot(page));
  const stopped = onceBegun(page, 'stop');
  await page.locator('#take-file').setInputFiles(file);
  expect(await stopped).toBe('stopped');
  await expect(page.locator('#file-said')).toHaveText('You stopped. Nothing here changed.');
  await page.reload();
  await expect(page.locator('.act-line')).toHaveCount(1);
});

test.describe('a worker that does not arrive', () => {
  // It is to fail as the server answers, not as it was kept for days without a signal.
  test.use({ serviceWorkers: 'block' });
  test('is told as a part that is missing, and nothing is kept', async ({ page }) => {
    await page.route(/\/assets\/worker-.*\.js$/, (route) => route.fulfill({ status: 500, body: '' }));
    const file = manyLots(await namedPlot(page));
    await page.locator('#take-file').setInputFiles(file);
    await expect(page.locator('#file-said')).toHaveText(notOpened.missing);
    await expect(page.locator('#taking')).toHaveCount(0);
    await page.reload();
    await expect(page.locator('.act-line')).toHaveCount(1);
  });
});
