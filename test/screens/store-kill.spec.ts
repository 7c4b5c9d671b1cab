// The browser is killed in mid-save, fifty times on one profile, once with a line of its log torn, once with its database
// gone: what had been acknowledged is there each time it is opened again, and an append is there whole or not at all.

import { appendFileSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { type KilledBrowser, killedBrowser } from './killed-browser.ts';

const KILLS = 50;
/** Longest time from the first save of a run to its end. */
const SPAN_MS = 120;
/** Seven bytes that begin a line of the log: a sum, a length of 456 bytes, a kind. Nothing follows. */
const TORN = Buffer.from([1, 2, 3, 4, 200, 1, 1]);

let browser: KilledBrowser;
test.beforeEach(async () => {
  browser = await killedBrowser();
});
test.afterEach(() => browser.end());

test('fifty kills in mid-save lose nothing that was acknowledged', async () => {
  test.setTimeout(600_000);
  for (let kill = 0; kill < KILLS; kill++) await fillAndKill((kill * 37) % SPAN_MS);
  await fillAndKill(0);
  expect(browser.acknowledged.size).toBeGreaterThan(KILLS);
});

test('a line torn by a kill, over which the browser drops its whole database, loses nothing', async () => {
  test.setTimeout(180_000);
  await fillAndKill(100);
  appendFileSync(logOf(browser.profile), TORN);
  // The first opening writes on behind the torn line, the second stumbles over it.
  for (let i = 0; i < 3; i++) await fillAndKill(100);
});

test('a database that is gone is made anew with all that was acknowledged', async () => {
  test.setTimeout(180_000);
  for (let i = 0; i < 2; i++) {
    await fillAndKill(100);
    rmSync(path.join(browser.profile, 'Default/IndexedDB'), { recursive: true });
  }
  await fillAndKill(0);
});

/** The log that the first place is written to. */
function logOf(profile: string): string {
  const databases = path.join(profile, 'Default/IndexedDB');
  const [log] = readdirSync(databases, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.log'));
  if (log === undefined) throw new Error('this browser keeps no log that could be torn');
  return path.join(databases, log);
}

/** One run: what was acknowledged before is there; more is kept; then the kill, a while after the first save. */
async function fillAndKill(afterMs: number): Promise<void> {
  const before = [...browser.acknowledged];
  await browser.visit(async ({ next }) => {
    const found = await next('found');
    const there = new Set(found);
    expect(before.filter((name) => !there.has(name))).toEqual([]);
    expect(there.size).toBe(found.length);
    expect(halfKept(found)).toEqual([]);
    await next('kept');
    await new Promise((resolve) => setTimeout(resolve, afterMs));
  });
}

/** Appends of which a part is there and a part is not; a name ends in "n/size". */
function halfKept(names: readonly string[]): readonly string[] {
  const counts = new Map<string, { readonly size: number; found: number }>();
  for (const name of names) {
    const cut = name.lastIndexOf(' ');
    const append = counts.get(name.slice(0, cut)) ?? { size: Number(name.split('/').at(-1)), found: 0 };
    append.found++;
    counts.set(name.slice(0, cut), append);
  }
  return [...counts].filter(([, { size, found }]) => size !== found).map(([name]) => name);
}
