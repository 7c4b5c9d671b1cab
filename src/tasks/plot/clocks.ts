// What can be known of the clocks of a record's phones: entries that lie ahead of the clock here prove a difference of at
// least so much. Which of the two is wrong, a person must say; a clock that is slow shows nowhere. What such entries count
// as is counted.ts.

import { type Entry, isSealed, isWithdrawal, type Kept } from '#journal/entry.ts';
import type { WholeFile } from '#journal/file-reader.ts';
import { momentOf } from '#journal/moment.ts';
import { CLOCKS_APART_MINUTES, isAhead } from './counted.ts';

const MINUTE_MS = 60_000;

/** Entries of one device that lie ahead of now. */
export interface AheadOf {
  readonly device: string;
  readonly entries: readonly Entry[];
  /** Of the one furthest ahead; a date alone counts from the start of its day. */
  readonly mostMinutes: number;
}

/** Acts that count and are dated ahead of a local moment, by device; the furthest ahead first. */
export function aheadOfNow(entries: readonly Kept[], now: string): readonly AheadOf[] {
  const at = momentOf(now);
  const ahead = entries.filter((kept): kept is Entry => !isSealed(kept) && kept.on > now && isFar(kept, now));
  if (ahead.length === 0) return [];
  const replaced = new Set(entries.map(({ replaces }) => replaces));
  const byDevice = new Map<string, Entry[]>();
  for (const entry of ahead) {
    if (replaced.has(entry.id) || isWithdrawal(entry)) continue;
    byDevice.set(entry.device, [...(byDevice.get(entry.device) ?? []), entry]);
  }
  const startOf = ({ on }: Entry) => momentOf(on.length > 10 ? on : `${on}T00:00`).wallMinute;
  return [...byDevice]
    .map(([device, own]) => ({ device, entries: own, mostMinutes: Math.max(...own.map(startOf)) - at.wallMinute }))
    .sort((a, b) => b.mostMinutes - a.mostMinutes);
}

function isFar({ on }: Entry, now: string): boolean {
  return isAhead(momentOf(on), momentOf(now), CLOCKS_APART_MINUTES);
}

export interface Meeting {
  /** All that is kept here once the file was taken in. */
  readonly entries: readonly Kept[];
  readonly file: Pick<WholeFile, 'header' | 'fresh' | 'ids'>;
  /** This phone, and the instant of its clock. */
  readonly device: string;
  readonly nowMs: number;
}

/** What is known once the files of two phones have met. */
export interface FilesMet {
  /** By how much the other phone's entries, or its file, lie ahead of this phone's clock at least; undefined where none do. */
  readonly aheadMinutes: number | undefined;
  /** Entries here that the file does not hold: whoever made it lacks them. */
  readonly lacksCount: number;
}

/** What a file that was taken in shows of the clocks, and what it lacks. */
export function filesThatMet({ entries, file, device, nowMs }: Meeting): FilesMet {
  const { madeAt, device: maker } = file.header;
  const theirs = file.fresh.filter((kept) => kept.device !== device).map(({ at }) => at);
  const instants = [...theirs, ...(maker === device || madeAt === undefined ? [] : [madeAt])].map(Date.parse);
  const latestMs = instants
    .filter(Number.isFinite)
    .reduce((most, one) => Math.max(most, one), Number.NEGATIVE_INFINITY);
  const minutes = Math.floor((latestMs - nowMs) / MINUTE_MS);
  return {
    aheadMinutes: minutes >= CLOCKS_APART_MINUTES ? minutes : undefined,
    lacksCount: entries.filter(({ id }) => !file.ids.has(id)).length,
  };
}
