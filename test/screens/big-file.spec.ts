// A file that one text could not hold: 40 MB of photos taken in on the sheet, stopped on the way, broken off by closing the page,
// and made again. The same with 1 GB is a piece of `npm run faults`.

import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { createInterface } from 'node:readline';
import { expect, type Page, type TestInfo, test } from '@playwright/test';
import { exportLines } from '#journal/lines.ts';
import { lineOfPhoto } from '#store/photos.ts';
import { jpegOf } from '../scenarios/pictures.ts';
import { kg, recorder } from '../scenarios/recorder.ts';
import type { StoreTest } from './store-page.ts';
import { storeSite } from './store-site.ts';

declare const storeTest: StoreTest;

const PHOTOS = 80;
const PHOTO_BYTES = 500_000;

async function bigFile(info: TestInfo): Promise<string> {
  const rake = recorder();
  const lots = Array.from({ length: PHOTOS }, (_, n) =>
    rake.did('scraps.weighed', '2026-06-01', { name: `lot ${n}`, mass: kg(2) }),
  );
  const photos = lots.map(({ id }, n) =>
    lineOfPhoto({ id, type: 'image/jpeg', bytes: jpegOf({ size: PHOTO_BYTES, seed: n + 1 }) }),
  );
  const path = info.outputPath('big.jsonl');
  await writeFile(path, exportLines(lots, photos));
  return path;
}

/** A digest of each line of a file but the header, in order. */
async function lineDigests(path: string): Promise<readonly string[]> {
  const found: string[] = [];
  for await (const line of createInterface({ input: createReadStream(path), crlfDelay: Number.POSITIVE_INFINITY }))
    found.push(createHash('sha256').update(line).digest('hex'));
  return found.slice(1).sort();
}

/** What the browser's first place holds, whoever counts it. */
const kept = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<readonly number[]>((resolve, reject) => {
        const request = indexedDB.open('tilthwright');
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const tx = request.result.transaction(['entries', 'packs', 'photos']);
          const counts = ['entries', 'packs', 'photos'].map((table) => tx.objectStore(table).count());
          tx.oncomplete = () => {
            request.result.close();
            resolve(counts.map(({ result }) => result));
          };
        };
      }),
  );

async function openRecord(page: Page): Promise<void> {
  await page.goto('/record');
  await page.getByRole('heading', { level: 1 }).waitFor();
}

test('40 MB of photos go in and out, and nothing stays of a reading that was stopped or broken off', async ({
  page,
  context,
}, info) => {
  const path = await bigFile(info);
  await openRecord(page);
  await page.locator('#take-file').setInputFiles(path);
  await page.getByRole('button', { name: 'Stop reading the file' }).click();
  await expect(page.locator('#file-said')).toHaveText('You stopped. Nothing here changed.');
  await expect.poll(() => kept(page)).toEqual([0, 0, 0]);

  // The page is closed while some of the photos are written already.
  await page.locator('#take-file').setInputFiles(path);
  await expect.poll(async () => (await kept(page))[2]).toBeGreaterThan(0);
  await page.close();
  const again = await context.newPage();
  await openRecord(again);
  await expect.poll(() => kept(again)).toEqual([0, 0, 0]);
  await expect(again.locator('.act-line')).toHaveCount(0);

  await again.locator('#take-file').setInputFiles(path);
  await expect(again.locator('#file-said')).toContainText(/80.new entries/);
  await again.locator('#check-file').setInputFiles(path);
  await expect(again.locator('#check-file-said')).toContainText(/holds everything: 80.entries and 80.photos/);
  const waiting = again.waitForEvent('download');
  await again.locator('#make-file').click();
  const made = info.outputPath('made.jsonl');
  await (await waiting).saveAs(made);
  expect(await lineDigests(made)).toEqual(await lineDigests(path));
});

test('a file of photos goes out of the store and in again in parts, and leaves nothing when it is stopped', async ({
  page,
}) => {
  const site = await storeSite();
  try {
    await page.goto(site.address);
    await page.waitForFunction(() => 'storeTest' in globalThis);
    const told = await page.evaluate(() => storeTest.bigFile('big', 40, 500_000));
    expect(told).toMatchObject({ photos: 40, samePhotos: 40, sameEntries: 80, leftOfStopped: 0 });
  } finally {
    site.close();
  }
});
