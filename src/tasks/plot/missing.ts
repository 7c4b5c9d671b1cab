// What of the record a file lacks, as somebody reads it: the newest acts first, each in one sentence with its date.

import { isSealed, type Kept } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import { sayDate } from '#words/en/app.ts';
import { fileCheck } from '#words/en/files.ts';
import { record as words } from '#words/en/record.ts';
import { sayEntry } from './record.ts';

/** So many are named, the others are counted. @practice */
const MOST_NAMED = 5;

export interface MissingSaid {
  readonly sentences: readonly string[];
  /** How many are not named. */
  readonly moreCount: number;
}

export function sayMissing(
  missing: readonly Kept[],
  { plot, today }: { readonly plot: Plot; readonly today: string },
): MissingSaid {
  const newest = missing.toSorted((a, b) => (a.on < b.on ? 1 : -1)).slice(0, MOST_NAMED);
  const sentences = newest.map((kept) => {
    const sentence = isSealed(kept) ? words.sealed(kept.kind) : sayEntry(kept, plot);
    return fileCheck.missing(sayDate(kept.on.slice(0, 10), today), sentence);
  });
  return { sentences, moreCount: missing.length - newest.length };
}
