// What a batch is called: by the number on its peg; where two batches of the plot carry one number, as two phones without
// signal give out, by its vessel as well, else by the date of its filling. Every sheet, list, print and sentence asks here.

import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { PegName } from '#words/peg-name.ts';

const known = new WeakMap<Plot['batches'], ReadonlyMap<string, PegName>>();

/** The number of a batch's peg, with what tells it apart where it must: 14, "14 (blue barrel)", "14 (2026-06-12)". */
export function pegName(plot: Plot, batch: Pick<Batch, 'id' | 'peg'>): PegName {
  const names = known.get(plot.batches) ?? namesOf(plot);
  known.set(plot.batches, names);
  return names.get(batch.id) ?? batch.peg;
}

/** The same of a batch by its id; undefined for one that is not here. */
export function pegNameOf(plot: Plot, batch: string | undefined): PegName | undefined {
  const found = plot.batches.get(batch ?? '');
  return found && pegName(plot, found);
}

function namesOf(plot: Plot): ReadonlyMap<string, PegName> {
  const byPeg = new Map<number, Batch[]>();
  for (const batch of plot.batches.values()) byPeg.set(batch.peg, [...(byPeg.get(batch.peg) ?? []), batch]);
  const names = new Map<string, PegName>();
  for (const [peg, batches] of byPeg) {
    if (batches.length < 2) continue;
    const marks = apart(plot, batches);
    batches.forEach(({ id }, i) => {
      names.set(id, `${peg} (${marks[i]})`);
    });
  }
  return names;
}

/** What tells some batches apart: the first way in which all of them differ; else their place in the order of filling. */
function apart(plot: Plot, batches: readonly Batch[]): readonly string[] {
  const ways: readonly ((batch: Batch) => string | undefined)[] = [
    ({ vessel, vesselName }) => plot.vessels.get(vessel ?? '')?.name ?? vesselName,
    ({ made }) => made.on.slice(0, 10),
    ({ made }) => made.on.replace('T', ' '),
  ];
  const told = ways.map((way) => batches.map(way)).find((marks) => isApart(marks));
  const order = batches.toSorted((a, b) => a.made.wallMinute - b.made.wallMinute || (a.id < b.id ? -1 : 1));
  return batches.map((batch, i) => told?.[i] ?? String.fromCharCode(97 + (order.indexOf(batch) % 26)));
}

function isApart(marks: readonly (string | undefined)[]): boolean {
  return !marks.includes(undefined) && new Set(marks).size === marks.length;
}
