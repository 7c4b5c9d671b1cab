// Old entries in packs: a thousand on one row, as text. A database hands over fifty thousand rows ten times slower than fifty
// long ones, and opening a plot must not take seconds. Packing moves rows in one strict write, so that an entry is always in
// exactly one place; the ids stand beside the text and are indexed, so that the same entry is known again.

import type { Kept } from '#journal/entry.ts';

/** Entries on one row; this many come together before a pack is made. */
export const PACK_SIZE = 1000;

/** One kept entry as a row: `seq` is given by the database, in the order of arrival. */
export interface Row {
  readonly seq?: number;
  readonly id: string;
  readonly plot: string;
  readonly kept: Kept;
  /** By which write it came, and as which of that write's: the same in both places, another one where it is kept again. */
  readonly birth?: string;
}

/** What a forgetting knows a row or a photo by; those of a time before births are known by their id. */
export function birthOf({ birth, id }: { readonly birth?: string; readonly id: string }): string {
  return birth ?? id;
}

/** A row as it is read back: it has its number. */
export type ReadRow = Row & { readonly seq: number };

/** The birth of what a write brings as its n-th. */
export const birthAt = (drawn: number, n = 0) => `${drawn.toString(36)}.${n}`;

/** Rows of one stretch of arrivals, each a line; found under the number of the last. */
export interface Pack {
  readonly last: number;
  readonly seqs: readonly number[];
  readonly ids: readonly string[];
  /** Absent in packs of a time before births. */
  readonly births?: readonly string[];
  readonly text: string;
}

/** Rows, in order, as one pack. */
export function packOf(rows: readonly ReadRow[]): Pack {
  const seqs = rows.map(({ seq }) => seq);
  // JSON holds no line break outside an escape: one line is one entry.
  return {
    last: seqs.at(-1) ?? 0,
    seqs,
    ids: rows.map(({ id }) => id),
    births: rows.map(birthOf),
    text: rows.map(({ kept }) => JSON.stringify(kept)).join('\n'),
  };
}

/** The rows that a pack was made of. */
export function rowsOf({ seqs, births, text }: Omit<Pack, 'ids'>): readonly ReadRow[] {
  if (seqs.length === 0) return [];
  return text.split('\n').map((line, i) => {
    const kept = JSON.parse(line) as Kept;
    return { seq: seqs[i] ?? 0, id: kept.id, plot: kept.plot, kept, birth: births?.[i] ?? kept.id };
  });
}

/** Adds to `found` what a pack holds after a cursor: the way of an opening, which makes no rows. */
export function addKept(found: Kept[], { seqs, text }: Pack, cursor: number): void {
  if (seqs.length === 0) return;
  const lines = text.split('\n');
  for (let i = 0; i < lines.length; i++) {
    if ((seqs[i] ?? 0) > cursor) found.push(JSON.parse(lines[i] ?? '') as Kept);
  }
}

/** The stretches of rows that are to be packed now: whole ones only, the latest rows stay as they are. */
export function stretches(rows: readonly ReadRow[]): readonly (readonly ReadRow[])[] {
  const found: (readonly ReadRow[])[] = [];
  for (let from = 0; from + PACK_SIZE <= rows.length; from += PACK_SIZE) found.push(rows.slice(from, from + PACK_SIZE));
  return found;
}
