// A file of about 1 GB of photos: made, forgotten, taken in again, and taken in once more with a stop half way. It runs in
// Chromium, in the browser's own store; what it took in memory is told aside.

import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { chromium } from '@playwright/test';
import type { Found, Options } from '../../test/faults/piece.ts';
import type { BigFileTold } from '../../test/screens/big-file-page.ts';
import type { StoreTest } from '../../test/screens/store-page.ts';
import { storeSite } from '../../test/screens/store-site.ts';
import { findChromium } from '../programs.mjs';

declare const storeTest: StoreTest;

const PHOTOS = 2000;
const PHOTO_BYTES = 500_000;
const MB = 1_000_000;

export async function run({ scale }: Options): Promise<Found> {
  const photos = Math.max(4, Math.round(PHOTOS * scale));
  const { told, heapBytes } = await inChromium(photos);
  const { fileBytes, samePhotos, sameEntries, leftOfStopped, outMs, inMs, longestMs } = told;
  const lost = 3 * photos - samePhotos - sameEntries;
  return {
    title: 'A large file',
    lines: [
      `A file of ${Math.round(fileBytes / MB)} MB with ${photos} photos and ${2 * photos} entries, made and taken in again in Chromium: ${samePhotos} photos and ${sameEntries} entries came back as they were, ${lost} did not.`,
      `The same file stopped half way of being taken in: ${leftOfStopped} entries and photos left of it.`,
    ],
    failed: lost + leftOfStopped,
    aside: [
      `Out ${(outMs / 1000).toFixed(1)} s, in ${(inMs / 1000).toFixed(1)} s; the page answered at the latest after ${Math.round(longestMs)} ms; at most ${Math.round(heapBytes / MB)} MB of script memory.`,
    ],
  };
}

async function inChromium(photos: number): Promise<{ readonly told: BigFileTold; readonly heapBytes: number }> {
  const site = await storeSite();
  // A profile on the disk: what is kept in a visit that leaves nothing behind may not be large.
  const profile = mkdtempSync(path.join(os.tmpdir(), 'big-file-'));
  const executablePath = findChromium() ?? 'chromium';
  const browser = await chromium.launchPersistentContext(profile, { executablePath, args: ['--no-sandbox'] });
  let heapBytes = 0;
  let watching: ReturnType<typeof setInterval> | undefined;
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(0);
    await page.goto(site.address);
    await page.waitForFunction(() => 'storeTest' in globalThis);
    const tools = await browser.newCDPSession(page);
    watching = setInterval(() => {
      tools.send('Runtime.getHeapUsage').then(
        ({ usedSize, backingStorageSize = 0 }: { usedSize: number; backingStorageSize?: number }) => {
          heapBytes = Math.max(heapBytes, usedSize + backingStorageSize);
        },
        () => undefined,
      );
    }, 500);
    const told = await page.evaluate(([count, size]) => storeTest.bigFile('big', count, size), [
      photos,
      PHOTO_BYTES,
    ] as const);
    return { told, heapBytes };
  } finally {
    clearInterval(watching);
    await browser.close();
    site.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
