// The record as it is read and searched: every act through all its versions, what is shown of it and why. Nothing is left
// out: corrected and withdrawn entries stay readable, sealed ones are listed. The plot that follows from it is fold.ts.

import type { Entry, Kept, Sealed } from './entry.ts';
import { momentOf } from './moment.ts';
import { type Line, standing, type Waiting } from './standing.ts';

export interface RecordLine {
  readonly id: string;
  readonly state: 'stands' | 'corrected' | 'withdrawn' | 'in-question';
  readonly shown: Entry | undefined;
  /** Every version, the original first, then as they were recorded. */
  readonly versions: readonly Entry[];
}

export interface WholeRecord {
  /** The newest act first. */
  readonly lines: readonly RecordLine[];
  readonly sealed: readonly Sealed[];
  readonly waiting: readonly Waiting[];
}

/** The record of one plot. */
export function recordOf(entries: readonly Kept[], plot: string): WholeRecord {
  const { plain, lines, sealed, waiting, questions } = standing(entries.filter((kept) => kept.plot === plot));
  const disputed = new Set(
    questions
      .filter(({ kind }) => kind === 'two-corrections' || kind === 'correction-not-readable')
      .flatMap(({ about }) => about),
  );
  const alone = plain.map((entry): Line => ({ id: entry.id, original: entry, shown: entry, versions: [entry] }));
  const ordered = [...alone, ...lines].map((line) => ({
    line,
    minute: momentOf((line.shown ?? line.original).on).wallMinute,
  }));
  ordered.sort((a, b) => b.minute - a.minute || (a.line.id < b.line.id ? 1 : -1));
  return {
    lines: ordered.map(({ line }) => ({
      id: line.id,
      state: stateOf(line, disputed),
      shown: line.shown,
      versions: line.versions,
    })),
    sealed,
    waiting,
  };
}

function stateOf({ original, shown, versions }: Line, disputed: ReadonlySet<string>): RecordLine['state'] {
  if (versions.some(({ id }) => disputed.has(id))) return 'in-question';
  if (shown === undefined) return 'withdrawn';
  return shown === original ? 'stands' : 'corrected';
}
