// A long record in the real browser on the built page: a file taken in, the page opened anew on it, each sheet opened from the
// one before, one more act kept and shown, and a letter of a search answered. The record is that of journal.ts.

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { chromium, type Page } from '@playwright/test';
import type { Entry } from '#journal/entry.ts';
import type { Kind } from '#journal/kinds/index.ts';
import { exportLines } from '#journal/lines.ts';
import { findChromium } from '../scripts/programs.mjs';
import { createApp } from '../src/server/app.ts';
import { seasons } from './journal.ts';
import { withPainted } from './painted.ts';
import { middle } from './rate.ts';

const ROUNDS = 3;
/** A slow machine is waited for: what it took is told. */
const PATIENCE_MS = 600_000;
const LETTERS = 'grass';
/** Every sheet by its address, reached by a link or by the address bar of the app; `:batch` is the last one filled, and so on. */
const SHEETS = [
  ...['/', '/plot', '/scraps', '/weigh-in', '/two-cases', '/fill', '/peg/:batch', '/peg/:batch/look'],
  ...['/peg/:batch/strain', '/shelf', '/can', '/can/:bed', '/pick', '/weather', '/cress/:feed', '/got', '/got/:bed'],
  ...['/cover', '/heap', '/record', '/print/tags', '/print/can', '/print/bean/:lot', '/print/cress', '/print/shed'],
];
const MADE_BY: Readonly<Record<string, Kind>> = {
  ':batch': 'peg.filled',
  ':bed': 'bed.described',
  ':feed': 'bed.fed',
  ':lot': 'scraps.weighed',
};

export interface RecordPageTimes {
  readonly entries: number;
  readonly takeInMs: number;
  /** The longest the page did not answer while the file was taken in. */
  readonly longestMs: number;
  /** From asking for the page until its first sheet is painted with the record: shell, store, fold. */
  readonly openMs: number;
  /** From the touch that writes one more act down until it is painted: kept in both places, then shown. */
  readonly actMs: number;
  readonly sheets: readonly { readonly sheet: string; readonly ms: number }[];
  readonly letterMs: number;
}

/** Times one record of so many entries. */
export async function recordPageTimes(root: string, count: number): Promise<RecordPageTimes> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error('no Chromium was found (node scripts/ensure.mjs chromium)');
  const folder = await mkdtemp(path.join(os.tmpdir(), 'tilthwright-bench-'));
  const file = path.join(folder, 'record.jsonl');
  const entries = seasons(count);
  await writeFile(file, exportLines(entries));
  const app = await createApp(path.join(root, 'dist/web'));
  const address = await app.listen({ host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage({ serviceWorkers: 'block' });
    await withPainted(page);
    await page.goto(`${address}/record`);
    await page.locator('#take-file').waitFor({ state: 'attached' });
    page.setDefaultTimeout(PATIENCE_MS);
    const { takeInMs, longestMs } = await takenIn(page, file, count);
    const openMs = await openedAnew(page, `${address}/`);
    const sheets = [];
    for (const sheet of SHEETS) {
      const to = addressIn(sheet, entries);
      // Once to fetch its script, then timed.
      await opened(page, to);
      const times = [];
      for (let round = 0; round < ROUNDS; round++) times.push(await opened(page, to));
      sheets.push({ sheet, ms: middle(times) });
    }
    const letterMs = await letter(page);
    // Last, as it changes the record.
    return { entries: count, takeInMs, longestMs, openMs, sheets, letterMs, actMs: await oneMoreAct(page) };
  } finally {
    await browser.close();
    await app.close();
    await rm(folder, { recursive: true });
  }
}

function addressIn(sheet: string, entries: readonly Entry[]): string {
  return sheet.replace(/:\w+/, (what) => {
    const last = entries.findLast(({ kind, replaces }) => kind === MADE_BY[what] && replaces === undefined);
    if (last === undefined) throw new Error(`the record measured has nothing for ${sheet}`);
    return last.id;
  });
}

async function takenIn(page: Page, file: string, count: number) {
  await page.evaluate(() => {
    const watch = { longestMs: 0, last: performance.now() };
    Object.assign(globalThis, { watch });
    setInterval(() => {
      const now = performance.now();
      watch.longestMs = Math.max(watch.longestMs, now - watch.last);
      watch.last = now;
    }, 5);
  });
  const begun = performance.now();
  await page.locator('#take-file').setInputFiles(file);
  await page.waitForFunction(
    (least) => Number(document.querySelector('#file-said')?.textContent?.replace(/\D/g, '') ?? 0) >= least,
    count,
  );
  const takeInMs = performance.now() - begun;
  const longestMs = await page.evaluate(
    () => (globalThis as unknown as { watch: { longestMs: number } }).watch.longestMs,
  );
  return { takeInMs, longestMs };
}

/** Middle of some openings of the page; it counts its time from when it was asked for. */
async function openedAnew(page: Page, address: string): Promise<number> {
  const times = [];
  for (let round = 0; round < ROUNDS; round++) {
    await page.goto(address);
    times.push(
      await page.evaluate(async () => {
        let now = await painted();
        while (document.querySelector('h1') === null) now = await painted();
        return now;
      }),
    );
  }
  return middle(times);
}

/** A lot of scraps written down, from the touch on the button until it is kept and shown. */
async function oneMoreAct(page: Page): Promise<number> {
  const times = [];
  await go(page, '/scraps');
  for (let round = 0; round < ROUNDS; round++) {
    await page.getByLabel('Kind of scraps').selectOption('grass-clippings-fresh');
    await page.getByLabel('It weighs').fill(`${round + 1}1.5 kg`);
    for (const [question, word] of [
      [/Whose is it/, 'a neighbour’s garden'],
      [/weedkiller used/, 'not known'],
      [/How does it look/, 'fresh'],
    ] as const)
      await page.getByRole('group', { name: question }).getByRole('radio', { name: word, exact: true }).check();
    times.push(
      await page.evaluate(async () => {
        const kind = document.querySelector('#lot-material') as HTMLSelectElement;
        const begun = performance.now();
        (document.querySelector('#lot-write') as HTMLButtonElement).click();
        // The form is emptied in the drawing that shows the act.
        while (kind.value !== '' && performance.now() - begun < 60_000) await new Promise(requestAnimationFrame);
        if (kind.value !== '') throw new Error('the act was not kept');
        return performance.now() - begun;
      }),
    );
  }
  return middle(times);
}

/** From the touch on a way to another sheet until that sheet is painted. */
async function opened(page: Page, sheet: string): Promise<number> {
  // Always from the same light sheet; the app leads links to itself.
  await go(page, '/shelf/unknown');
  return await go(page, sheet);
}

async function go(page: Page, sheet: string): Promise<number> {
  return await page.evaluate(async (to) => {
    await new Promise((resolve) => setTimeout(resolve, 300));
    await painted();
    const old = document.querySelector('main');
    const link = Object.assign(document.createElement('a'), { href: to });
    document.body.append(link);
    const begun = performance.now();
    link.click();
    link.remove();
    let now = await painted();
    while ((document.querySelector('main') === old || document.querySelector('h1') === null) && now - begun < 60_000)
      now = await painted();
    return now - begun;
  }, sheet);
}

/** The middle letter of a word typed into the search, until its answer is painted. */
async function letter(page: Page): Promise<number> {
  await go(page, '/record');
  await page.locator('#search-text').waitFor();
  // Until every act is prepared for a search.
  await page.locator('#search-text').fill('q');
  await page.waitForFunction(() => !document.querySelector('.note[role="status"]')?.textContent?.includes('…'));
  const times = await page.evaluate(async (text) => {
    const field = document.querySelector('#search-text') as HTMLInputElement;
    const found: number[] = [];
    for (let length = 1; length <= text.length; length++) {
      await painted();
      field.value = text.slice(0, length);
      const begun = performance.now();
      field.dispatchEvent(new InputEvent('input', { bubbles: true }));
      found.push((await painted()) - begun);
    }
    return found;
  }, LETTERS);
  return middle(times);
}
