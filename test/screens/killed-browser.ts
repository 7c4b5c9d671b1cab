// A browser on a profile of its own that is killed like a phone whose power goes: all its processes at once, in mid-work.

import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { findChromium } from '../../scripts/programs.mjs';
import { storeSite } from './store-site.ts';

const LAUNCH_MS = 30_000;

const FLAGS = [
  ...['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run', '--disable-extensions'],
  ...['--disable-quic', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
];

export interface Visit {
  /** The next telling of a kind. */
  readonly next: (what: 'found' | 'kept') => Promise<readonly string[]>;
}

export interface KilledBrowser {
  readonly profile: string;
  /** Names of all entries that were acknowledged so far. */
  readonly acknowledged: ReadonlySet<string>;
  /** Opens the page that fills the store without end, and kills the browser when the work is done. */
  readonly visit: (work: (visit: Visit) => Promise<void>) => Promise<void>;
  readonly end: () => void;
}

export async function killedBrowser(): Promise<KilledBrowser> {
  const profile = mkdtempSync(path.join(os.tmpdir(), 'store-kill-'));
  const acknowledged = new Set<string>();
  let hear: (what: string, names: readonly string[]) => void = () => {};
  const site = await storeSite((what, names) => {
    if (what === 'kept') for (const name of names) acknowledged.add(name);
    hear(what, names);
  });
  const nextOf = (browser: ChildProcess) => (wanted: string) =>
    new Promise<readonly string[]>((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`the browser told nothing of "${wanted}"`)), LAUNCH_MS);
      browser.once('exit', (code) => reject(new Error(`the browser ended by itself, code ${code}`)));
      hear = (what, names) => {
        if (what !== wanted) return;
        clearTimeout(late);
        resolve(names);
      };
    });
  return {
    profile,
    acknowledged,
    async visit(work) {
      // A group of its own, so that the whole browser dies at once and nothing else does.
      const browser = spawn(
        findChromium() ?? 'chromium',
        [...FLAGS, `--user-data-dir=${profile}`, `${site.address}/fill`],
        { detached: true, stdio: 'ignore' },
      );
      try {
        await work({ next: nextOf(browser) });
      } finally {
        await killed(browser);
      }
    },
    end() {
      site.close();
      rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    },
  };
}

async function killed(browser: ChildProcess): Promise<void> {
  browser.removeAllListeners('exit');
  if (browser.pid === undefined || browser.exitCode !== null) return;
  const ended = new Promise((resolve) => browser.once('exit', resolve));
  process.kill(-browser.pid, 'SIGKILL');
  await ended;
}
