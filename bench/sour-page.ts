// How long the sour line of a peg takes in the browser: from the touch that opens its sheet to the likely line, to the
// first band and to the whole, and after a look with the runs that are there already.

import path from 'node:path';
import { type Browser, chromium } from '@playwright/test';
import { findChromium } from '../scripts/programs.mjs';
import { createApp } from '../src/server/app.ts';
import { pegPath } from '../test/screens/demo-peg.ts';
import { middle } from './rate.ts';

const ROUNDS = 5;
/** A day on which peg 15 wants to be looked at. */
const DAY = '2026-06-20';

export interface SourTime {
  readonly what: string;
  readonly ms: number;
  readonly aimMs: number | undefined;
}

const STEPS = [
  ['touch to the likely line', 50],
  ['touch to the first band, 200 draws', undefined],
  ['touch to the whole, 1,000 draws', 2000],
  ['a look weighed in with kept runs', 150],
  ['the same, with new draws near it', undefined],
] as const;

/** Middle of five fresh pages for each step. */
export async function sourTimes(root: string): Promise<readonly SourTime[]> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium was found (node scripts/ensure.mjs chromium)');
  const app = await createApp(path.join(root, 'dist/web'));
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const rounds: (readonly number[])[] = [];
    for (let round = 0; round < ROUNDS; round++) rounds.push(await one(browser, address));
    return STEPS.map(([what, aimMs], i) => ({
      what,
      aimMs,
      ms: middle(rounds.map((times) => times[i] ?? Number.NaN)),
    }));
  } finally {
    await browser.close();
    await app.close();
  }
}

async function one(browser: Browser, address: string): Promise<readonly number[]> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript((day) => {
    sessionStorage.setItem('tilthwright.demo-day', day);
    localStorage.setItem('tilthwright.keyholder', 'Fork');
  }, DAY);
  // A first visit, so that the script of the sheet is there; then the line, and the touch.
  await page.goto(address + pegPath(14));
  await page.locator('[data-stands="whole"]').waitFor();
  await page.locator('a[href="/"]').first().click();
  const link = page.locator(`a[href="${pegPath(15)}"]`).first();
  await link.waitFor();
  await page.evaluate('globalThis.__name = (named) => named');
  const opened = await link.evaluate(async (touch: Element) => {
    const until = async (wanted: string) => {
      while (document.querySelector(wanted) === null) await new Promise(requestAnimationFrame);
      return performance.now() - begun;
    };
    const begun = performance.now();
    touch.dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }));
    return [
      await until('[data-stands]'),
      await until('[data-stands="first"], [data-stands="whole"]'),
      await until('[data-stands="whole"]'),
    ];
  });
  await page.locator(`a[href="${pegPath(15, '/look')}"]`).click();
  await page.locator('#strip-sour').getByRole('button', { name: 'strip 5.0' }).click();
  const weighed = await page.locator('#write-down').evaluate(async (touch: HTMLElement) => {
    const begun = performance.now();
    touch.click();
    const until = async (isThere: () => boolean) => {
      while (!isThere()) await new Promise(requestAnimationFrame);
      return performance.now() - begun;
    };
    return [
      await until(() => (document.querySelector('.was-expected')?.textContent ?? '') !== ''),
      await until(() => document.querySelector('[data-stands="whole"]') !== null),
    ];
  });
  await context.close();
  return [...opened, ...weighed];
}
