// How long a touch with wet hands takes until its answer stands drawn: an answer of the look, its last answer with the
// sentence, and a can poured, in the demo garden on the built page, with the CPU slowed fourfold as a small phone is.

import path from 'node:path';
import { type Browser, chromium, type Page } from '@playwright/test';
import { findChromium } from '../scripts/programs.mjs';
import { createApp } from '../src/server/app.ts';
import { pegPath } from '../test/screens/demo-peg.ts';
import { withPainted } from './painted.ts';
import { middle } from './rate.ts';

export const SLOWED = 4;
const ROUNDS = 7;

export interface TouchTime {
  readonly touch: string;
  /** Time the page's own script takes, and time until the answer is painted, ms. */
  readonly scriptMs: number;
  readonly paintedMs: number;
}

interface Case {
  readonly touch: string;
  readonly day: string;
  readonly open: (page: Page) => Promise<unknown>;
  /** Touches that come first, then the one that is timed. */
  readonly before: readonly string[];
  readonly timed: string;
  /** What is on the sheet once the answer is drawn. */
  readonly drawn: string;
}

const strip = (name: string, n: number) => `#strip-${name} .pick-one >> nth=${n}`;

/** An early touch, the last touch of a look, and a can: peg 15 on its seventh day, the bed at the gate. */
const CASES: readonly Case[] = [
  {
    touch: 'look: one answer',
    day: '2026-06-19',
    open: (page) => page.goto(`${new URL(page.url()).origin}${pegPath(15, '/look')}`),
    before: [strip('sour', 2)],
    timed: strip('nose', 0),
    drawn: '#strip-nose .pick-one.taken',
  },
  {
    touch: 'look: last answer, sentence',
    day: '2026-06-19',
    open: (page) => page.goto(`${new URL(page.url()).origin}${pegPath(15, '/look')}`),
    before: [strip('sour', 2), strip('nose', 0), strip('top', 0)],
    timed: strip('warmth', 2),
    drawn: '.peg-verdict',
  },
  {
    touch: 'can card: one can poured',
    day: '2026-06-26',
    open: async (page) => {
      await page.goto(`${new URL(page.url()).origin}/can`);
      await page.locator('.bed-row', { hasText: 'Gate' }).click();
    },
    before: [],
    timed: '#can-poured',
    drawn: '.cans li:first-child:not([aria-current])',
  },
];

/** Middle of seven fresh sheets for each touch. */
export async function touchTimes(root: string): Promise<readonly TouchTime[]> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium was found (node scripts/ensure.mjs chromium)');
  const app = await createApp(path.join(root, 'dist/web'));
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const times: TouchTime[] = [];
    for (const one of CASES) {
      const found = [];
      for (let round = 0; round < ROUNDS; round++) found.push(await timed(browser, address, one));
      times.push({
        touch: one.touch,
        scriptMs: middle(found.map(({ scriptMs }) => scriptMs)),
        paintedMs: middle(found.map(({ paintedMs }) => paintedMs)),
      });
    }
    return times;
  } finally {
    await browser.close();
    await app.close();
  }
}

async function timed(browser: Browser, address: string, one: Case) {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.addInitScript((day) => {
    sessionStorage.setItem('tilthwright.demo-day', day);
    localStorage.setItem('tilthwright.keyholder', 'Fork');
  }, one.day);
  await page.goto(address);
  await one.open(page);
  for (const touch of one.before) await page.locator(touch).click();
  const target = page.locator(one.timed);
  await target.scrollIntoViewIfNeeded();
  await page.waitForTimeout(200);
  await withPainted(page);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  const result = await target.evaluate(async (button: HTMLElement, drawn: string) => {
    await painted();
    const begun = performance.now();
    button.click();
    const scriptMs = performance.now() - begun;
    let paintedMs = 0;
    do paintedMs = (await painted()) - begun;
    while (document.querySelector(drawn) === null && paintedMs < 5000);
    return { scriptMs, paintedMs, seen: document.querySelector(drawn) !== null };
  }, one.drawn);
  await context.close();
  if (!result.seen) throw new Error(`${one.touch}: no answer was drawn`);
  return result;
}
