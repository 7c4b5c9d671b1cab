// Which own acts can be undone from the sheet they were made on. An act made while this page lives is counted by a time
// that only counts up; after a reload only the clock is left, so that nobody is told minutes.

import { type Entry, isSealed, type Kept } from '#journal/entry.ts';

/** Undo from where an act was made lasts this long; cancelling it from the record lasts for ever. */
export const UNDO_MINUTES = 10;
const MOST = 20;
const MINUTE_MS = 60_000;

export interface Recent {
  readonly entry: Entry;
  /** Undefined for an act made before this page was loaded. */
  readonly minutesLeft: number | undefined;
}

/** Own acts of the last minutes that still stand, newest first. */
export function recentOf(given: {
  readonly entries: readonly Kept[];
  readonly device: string;
  /** When an act came to this page, by the time that only counts up. */
  readonly cameMs: ReadonlyMap<string, number>;
  readonly aliveMs: number;
  readonly nowMs: number;
}): readonly Recent[] {
  const { entries, device, cameMs, aliveMs, nowMs } = given;
  const replaced = new Set<string>();
  const list: Recent[] = [];
  for (let i = entries.length - 1; i >= 0 && list.length < MOST; i--) {
    const kept = entries[i];
    if (kept === undefined) continue;
    // A withdrawal or correction arrives after what it replaces, or lies further back than anyone looks here.
    if (kept.replaces !== undefined) replaced.add(kept.replaces);
    if (isSealed(kept) || kept.device !== device) continue;
    const came = cameMs.get(kept.id);
    const ageMs = came === undefined ? Math.abs(nowMs - Date.parse(kept.at)) : aliveMs - came;
    if (!(ageMs <= UNDO_MINUTES * MINUTE_MS)) break;
    if (kept.replaces !== undefined || replaced.has(kept.id)) continue;
    const left = Math.max(1, Math.ceil(UNDO_MINUTES - ageMs / MINUTE_MS));
    list.push({ entry: kept, minutesLeft: came === undefined ? undefined : left });
  }
  return list;
}
