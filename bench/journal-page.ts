// Opening a plot of 50,000 entries in the browser: read from its store, folded to a plot. The store is filled once, outside
// the time; the first reading puts old entries in packs and is left out, as it happens once.

import { chromium } from '@playwright/test';
import { findChromium } from '../scripts/programs.mjs';
import type { StoreTest } from '../test/screens/store-page.ts';
import { storeSite } from '../test/screens/store-site.ts';
import { middle } from './rate.ts';

declare const storeTest: StoreTest;

const ENTRIES = 50_000;
const ROUNDS = 5;

export interface OpeningTimes {
  readonly entries: number;
  readonly readMs: number;
  readonly foldMs: number;
  readonly wholeMs: number;
}

/** Middle of five openings. */
export async function openingTimes(): Promise<OpeningTimes> {
  const site = await storeSite();
  const browser = await chromium.launch({ executablePath: findChromium() ?? 'chromium', args: ['--no-sandbox'] });
  try {
    const page = await browser.newPage();
    await page.goto(site.address);
    await page.waitForFunction(() => 'storeTest' in globalThis);
    const open = () => page.evaluate((count) => storeTest.openingTime(count), ENTRIES);
    // Twice: the second waits for the packs that the first asked for.
    await open();
    await open();
    const times = [];
    for (let round = 0; round < ROUNDS; round++) times.push(await open());
    if (!times.every(({ lots }) => lots === ENTRIES)) throw new Error('the store did not hold what was put in');
    return {
      entries: ENTRIES,
      readMs: middle(times.map(({ readMs }) => readMs)),
      foldMs: middle(times.map(({ foldMs }) => foldMs)),
      wholeMs: middle(times.map(({ readMs, foldMs }) => readMs + foldMs)),
    };
  } finally {
    await browser.close();
    site.close();
  }
}
