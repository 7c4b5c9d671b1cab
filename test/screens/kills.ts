// One run of a browser that is killed in mid-save, and what was missing when it was opened: shared by the page tests and by
// the counts of `npm run faults`.

import { appendFileSync, readdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import type { KilledBrowser } from './killed-browser.ts';

/** Longest time from the first save of a run to its end. */
const SPAN_MS = 120;
/** Seven bytes that begin a line of the log: a sum, a length of 456 bytes, a kind. Nothing follows. */
const TORN = Buffer.from([1, 2, 3, 4, 200, 1, 1]);

/** What an opening showed after the kill before it. */
export interface Opened {
  /** Names that had been acknowledged and are not there. */
  readonly missing: readonly string[];
  /** Names that are there twice. */
  readonly twice: number;
  /** Appends of which a part is there and a part is not. */
  readonly half: readonly string[];
}

/** One run: it is opened and looked at; more is kept; then the kill, a while after the first save. */
export async function fillAndKill(browser: KilledBrowser, afterMs: number): Promise<Opened> {
  const before = [...browser.acknowledged];
  let opened: Opened | undefined;
  await browser.visit(async ({ next }) => {
    const found = await next('found');
    const there = new Set(found);
    const missing = before.filter((name) => !there.has(name));
    opened = { missing, twice: found.length - there.size, half: halfKept(found) };
    await next('kept');
    await new Promise((resolve) => setTimeout(resolve, afterMs));
  });
  if (opened === undefined) throw new Error('the browser showed nothing');
  return opened;
}

/** A while between the first save and a kill, another for each kill. */
export const whileMs = (kill: number) => (kill * 37) % SPAN_MS;

/** The first place's log ends in a torn line: the next opening writes on behind it, the one after stumbles over it. */
export function tearLog({ profile }: KilledBrowser): void {
  const databases = databasesOf(profile);
  const [log] = readdirSync(databases, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.log'));
  if (log === undefined) throw new Error('this browser keeps no log that could be torn');
  appendFileSync(path.join(databases, log), TORN);
}

/** The first place is gone with its database. */
export function loseDatabase({ profile }: KilledBrowser): void {
  rmSync(databasesOf(profile), { recursive: true });
}

const databasesOf = (profile: string) => path.join(profile, 'Default/IndexedDB');

/** A name ends in "n/size". */
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
