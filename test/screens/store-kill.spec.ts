// The browser is killed in mid-save fifty times on one profile: what had been acknowledged is there each time it is opened
// again, and an append is there whole or not at all.

import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from '@playwright/test';
import { findChromium } from '../../scripts/programs.mjs';
import { storeSite } from './store-site.ts';

const KILLS = 50;
const LAUNCH_MS = 30_000;
/** Longest time from the first save of a run to its end. */
const SPAN_MS = 120;

const FLAGS = [
  ...['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-extensions'],
  ...['--disable-quic', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
];

test('fifty kills in mid-save lose nothing that was acknowledged', async () => {
  test.setTimeout(600_000);
  const profile = mkdtempSync(path.join(os.tmpdir(), 'store-kill-'));
  const acknowledged = new Set<string>();
  let hear: (what: string, names: readonly string[]) => void = () => {};
  const site = await storeSite((what, names) => {
    if (what === 'kept') for (const name of names) acknowledged.add(name);
    hear(what, names);
  });
  /** The next telling of a kind. */
  const next = (wanted: string, browser: ChildProcess) =>
    new Promise<readonly string[]>((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`the browser told nothing of "${wanted}"`)), LAUNCH_MS);
      browser.once('exit', (code) => reject(new Error(`the browser ended by itself, code ${code}`)));
      hear = (what, names) => {
        if (what !== wanted) return;
        clearTimeout(late);
        resolve(names);
      };
    });
  try {
    for (let kill = 0; kill <= KILLS; kill++) {
      const before = [...acknowledged];
      const browser = start(profile, `${site.address}/fill`);
      try {
        const found = await next('found', browser);
        const there = new Set(found);
        expect(before.filter((name) => !there.has(name))).toEqual([]);
        expect(there.size).toBe(found.length);
        expect(halfKept(found)).toEqual([]);
        if (kill === KILLS) break;
        await next('kept', browser);
        // Spread over the span, the same in every run of the test.
        await new Promise((resolve) => setTimeout(resolve, (kill * 37) % SPAN_MS));
      } finally {
        await killed(browser);
      }
    }
    expect(acknowledged.size).toBeGreaterThan(KILLS);
  } finally {
    site.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
});

function start(profile: string, address: string): ChildProcess {
  // A group of its own, so that the whole browser dies at once and nothing else does.
  return spawn(findChromium() ?? 'chromium', [...FLAGS, `--user-data-dir=${profile}`, address], {
    detached: true,
    stdio: 'ignore',
  });
}

async function killed(browser: ChildProcess): Promise<void> {
  browser.removeAllListeners('exit');
  if (browser.pid === undefined || browser.exitCode !== null) return;
  const ended = new Promise((resolve) => browser.once('exit', resolve));
  process.kill(-browser.pid, 'SIGKILL');
  await ended;
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
