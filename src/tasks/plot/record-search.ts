// Searching the record: every act through its versions, newest first. What a search for a word, a peg or a bed needs of an
// act is worked out once and kept, in pieces, so that a record of many years opens at once and answers each letter.

import { type Entry, isWithdrawal, type Kept, type Sealed } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import type { Kind } from '#journal/kinds/index.ts';
import { type RecordLine, recordOf } from '#journal/record.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';
import { entryFields, sayEntry } from './record.ts';

/** One act of the record, ready to be shown. */
export interface RecordAct {
  readonly id: string;
  readonly kind: Kind;
  readonly state: RecordLine['state'];
  readonly on: string;
  readonly by: string;
  readonly sentence: string;
  /** The version that counts; undefined where it was taken back. */
  readonly shown: Entry | undefined;
  readonly versions: readonly Entry[];
  /** Who took it back, and the instant; undefined where nobody did. */
  readonly takenBack: { readonly by: string; readonly at: string } | undefined;
}

export interface RecordSearch {
  readonly text?: string;
  readonly kind?: string;
  /** A peg's number, or the id of one batch where two carry it. */
  readonly peg?: number | string | undefined;
  readonly bed?: string;
  /** A day, as 2026-06-10. */
  readonly day?: string;
}

export interface RecordFound {
  /** The first of them, told in full. */
  readonly acts: readonly RecordAct[];
  /** How many the search asks for, of those that were prepared. */
  readonly count: number;
}

export interface RecordIndex {
  /** Acts in the record. */
  readonly total: number;
  readonly sealed: readonly Sealed[];
  readonly waitingCount: number;
  /** Whether a search for a word, a peg or a bed knows every act. */
  readonly isReady: () => boolean;
  /** Prepares so many more acts for that, the newest first. */
  readonly prepare: (count: number) => void;
  /**
   * The acts that a search asks for, the newest first; all of them where it asks for nothing.
   * @param most as many as are told in full
   */
  readonly search: (search: RecordSearch, most?: number) => RecordFound;
}

/** What a search asks an act for. */
interface Prepared {
  readonly text: string;
  readonly pegs: readonly string[];
  readonly beds: readonly string[];
}

/** Whether a search needs what is prepared. */
export function needsPrepared({ text, peg, bed }: RecordSearch): boolean {
  return Boolean(text?.trim()) || peg !== undefined || Boolean(bed);
}

/** The record of one plot, ready to be searched; a changed plot or record needs another. */
export function recordIndex(of: {
  readonly plot: Plot;
  readonly entries: readonly Kept[];
  readonly plotId: string;
}): RecordIndex {
  const { plot } = of;
  const { lines, sealed } = recordOf(of.entries, of.plotId);
  const prepared: Prepared[] = [];
  return {
    total: lines.length,
    sealed,
    waitingCount: plot.waiting.length,
    isReady: () => prepared.length === lines.length,
    prepare(count) {
      const until = Math.min(lines.length, prepared.length + count);
      for (let i = prepared.length; i < until; i++) prepared.push(prepare(lines[i] as RecordLine, plot));
    },
    search(search, most = Number.POSITIVE_INFINITY) {
      const wanted = search.text?.trim().toLowerCase() ?? '';
      const asks = needsPrepared(search);
      const acts: RecordAct[] = [];
      let count = 0;
      for (let i = 0; i < (asks ? prepared.length : lines.length); i++) {
        const line = lines[i] as RecordLine;
        const entry = standsAs(line);
        if (search.kind && entry.kind !== search.kind) continue;
        if (search.day && entry.on.slice(0, 10) !== search.day) continue;
        if (asks && !has(prepared[i] as Prepared, search, wanted)) continue;
        if (++count <= most) acts.push(actOf(line, plot));
      }
      return { acts, count };
    },
  };
}

function has({ text, pegs, beds }: Prepared, { peg, bed }: RecordSearch, wanted: string): boolean {
  if (peg !== undefined && !pegs.includes(String(peg))) return false;
  return !(bed && !beds.includes(bed)) && text.includes(wanted);
}

/** The version that counts; of an act that was taken back the first. */
function standsAs({ shown, versions }: RecordLine): Entry {
  return shown ?? (versions[0] as Entry);
}

function actOf(line: RecordLine, plot: Plot): RecordAct {
  const { id, state, shown, versions } = line;
  const entry = standsAs(line);
  const by = versions[0]?.by ?? entry.by;
  const withdrawal = state === 'withdrawn' ? versions.findLast(isWithdrawal) : undefined;
  const takenBack = withdrawal && { by: withdrawal.by, at: withdrawal.at };
  return { id, kind: entry.kind, state, on: entry.on, by, sentence: sayEntry(entry, plot), shown, versions, takenBack };
}

function prepare(line: RecordLine, plot: Plot): Prepared {
  const entry = standsAs(line);
  const fields = line.versions.flatMap((version) => entryFields(version, plot).map(({ text }) => text));
  const said = [sayEntry(entry, plot), line.versions[0]?.by ?? entry.by, ...fields];
  return { text: said.join('\n').toLowerCase(), ...aboutOf(line, plot) };
}

/** Pegs and beds that an act is about. */
function aboutOf(
  { versions }: RecordLine,
  plot: Plot,
): { readonly pegs: readonly string[]; readonly beds: readonly string[] } {
  const pegs: string[] = [];
  const beds: string[] = [];
  for (const { id, body } of versions) {
    pegs.push(...pegsOf(id, plot));
    if (plot.beds.has(id)) beds.push(id);
    mentioned(body, (text) => {
      pegs.push(...pegsOf(text, plot));
      if (plot.beds.has(text)) beds.push(text);
    });
  }
  return { pegs, beds };
}

/** What a batch, or the batch of a bottle, is searched by: its number and its id. */
function pegsOf(id: string, plot: Plot): readonly string[] {
  const batch = plot.batches.get(plot.bottles.get(id)?.batch ?? id);
  return batch === undefined ? [] : [String(batch.peg), batch.id];
}

/** Every peg to search by, by number; a number that two batches carry stands for each by itself. */
export function pegsToSearch(plot: Plot): readonly (readonly [value: string, said: PegName])[] {
  const batches = [...plot.batches.values()].sort((a, b) => a.peg - b.peg || a.made.wallMinute - b.made.wallMinute);
  return batches.map((batch) => {
    const said = pegName(plot, batch);
    return [said === batch.peg ? String(said) : batch.id, said];
  });
}

function mentioned(value: unknown, tell: (text: string) => void): void {
  if (typeof value === 'string') tell(value);
  else if (typeof value === 'object' && value !== null)
    for (const inner of Object.values(value)) mentioned(inner, tell);
}
