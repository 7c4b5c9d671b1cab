// What is on this device alone: entries that no file holds which was read back. A browser may clear what it keeps, so after a
// week somebody is told, in words, and never with a count of days to be proud of. Which entries those are is judged by their
// ids, never by a clock; only for how long is asked of clocks, and where they cannot be right, the answer is that it is time.

import type { Kept } from './entry.ts';

/** A week without a file is told. @our-caution browsers clear the storage of pages that are not used */
export const FILE_DUE_DAYS = 7;
/** Sooner where the browser keeps the record in one place. @our-caution nothing fills that place again where it is lost */
const FILE_DUE_DAYS_ONE_PLACE = 3;

/** After how many days without a file somebody is told. */
export const fileDueDays = (places: 1 | 2) => (places === 1 ? FILE_DUE_DAYS_ONE_PLACE : FILE_DUE_DAYS);

const DAY_MS = 86_400_000;
/** A clock that is off by less moves the count of days by less than one. @arithmetic */
const AHEAD_MS = DAY_MS;

/** The last file that was chosen, read and counted on this device. */
export interface LastFile {
  /** Local date on which it was read. */
  readonly on: string;
  /** Instant, UTC, by this device's clock. */
  readonly at: string;
  /** Ids of the entries it held with their photos, a line each: one long text is kept and read faster than many. */
  readonly held: string;
}

export interface Unsaved {
  /** Entries that the last file does not hold. */
  readonly count: number;
  /** Whole days since the oldest of them was recorded; undefined where clocks disagree. */
  readonly days: number | undefined;
  /** Whether it is time to say so. */
  readonly isDue: boolean;
}

type Recorded = Pick<Kept, 'id' | 'at'>;

/** Ids of a file, kept while its fact is: the sheets ask again with every entry. */
const idsOf = new WeakMap<LastFile, ReadonlySet<string>>();

function heldBy(file: LastFile): ReadonlySet<string> {
  const known = idsOf.get(file) ?? new Set(file.held.split('\n'));
  idsOf.set(file, known);
  return known;
}

/**
 * What no file holds that was read back, and whether that is to be said. A file that lies ahead of the clock, or an entry that
 * does, shows a clock that was wrong or is: then it is said at once.
 * @param dueDays fewer where the browser keeps the record in one place only
 */
export function unsavedElsewhere(
  entries: readonly Recorded[],
  { file, nowMs, dueDays = FILE_DUE_DAYS }: { file: LastFile | undefined; nowMs: number; dueDays?: number },
): Unsaved {
  const held = file === undefined ? undefined : heldBy(file);
  let count = 0;
  let [oldestMs, newestMs] = [Number.POSITIVE_INFINITY, file === undefined ? 0 : Date.parse(file.at)];
  for (const { id, at } of entries) {
    if (held?.has(id)) continue;
    count++;
    oldestMs = Math.min(oldestMs, Date.parse(at));
    newestMs = Math.max(newestMs, Date.parse(at));
  }
  if (count === 0) return { count, days: 0, isDue: false };
  // Written so that an instant which cannot be read speaks as well.
  const isClockSure = newestMs - nowMs <= AHEAD_MS;
  const days = isClockSure ? Math.max(0, Math.floor((nowMs - oldestMs) / DAY_MS)) : undefined;
  return { count, days, isDue: days === undefined || days >= dueDays };
}
