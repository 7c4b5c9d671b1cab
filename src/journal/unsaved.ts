// What is on this device alone: entries recorded here since the last file was written. A browser may clear what it keeps, so
// after a week somebody is told, in words, and never with a count of days to be proud of.

import type { Kept } from './entry.ts';

/** A week without a file is told. @our-caution browsers clear the storage of pages that are not used */
export const FILE_DUE_DAYS = 7;

const DAY_MS = 86_400_000;

export interface Unsaved {
  /** Entries that no file of this device holds. */
  readonly count: number;
  /** Whole days since the last file, or since the first entry where there was none. */
  readonly sinceDays: number;
  /** Whether it is time to say so. */
  readonly due: boolean;
}

/**
 * Entries recorded after the last file; nothing recorded since is nothing unsaved, however old the file.
 * @param lastFileAt instant of the last file, as entries carry it; undefined where there was none
 */
export function unsavedElsewhere(entries: readonly Kept[], lastFileAt: string | undefined, nowMs: number): Unsaved {
  const fileMs = lastFileAt === undefined ? Number.NaN : Date.parse(lastFileAt);
  let count = 0;
  let firstMs = Number.POSITIVE_INFINITY;
  for (const { at } of entries) {
    const atMs = Date.parse(at);
    if (atMs <= fileMs) continue;
    count++;
    firstMs = Math.min(firstMs, atMs);
  }
  if (count === 0) return { count, sinceDays: 0, due: false };
  const sinceDays = Math.floor((nowMs - (Number.isNaN(fileMs) ? firstMs : fileMs)) / DAY_MS);
  return { count, sinceDays, due: !(sinceDays < FILE_DUE_DAYS) };
}
