// Batches as the plot shows them, once liquid that left them is counted, and the peg numbers they carry. One number on
// two batches at one time, as two phones without signal give out, is a question; both batches stay.

import { saysSame } from '../as-before.ts';
import { isBefore } from '../moment.ts';
import { type Answers, type Question, settle } from '../question.ts';
import type { Batch, BatchLook } from './batch.ts';
import { leftKg, type Open, presentL } from './batches.ts';

/** Liquid taken from a batch after it was drained, litres by batch id. */
export interface LiquidTaken {
  readonly bottledL: ReadonlyMap<string, number>;
  readonly pouredL: ReadonlyMap<string, number>;
  readonly starterL: ReadonlyMap<string, number>;
}

const DECILITRE_L = 0.1;

/** Every batch with its sums closed. */
export function closed(
  open: ReadonlyMap<string, Open>,
  taken: LiquidTaken,
  answers: Answers,
  questions: Question[],
): ReadonlyMap<string, Batch> {
  const batches = new Map<string, Batch>();
  for (const [id, one] of open) {
    const drainedL = one.strainings.reduce((sum, s) => sum + s.drainedL, 0);
    const bottledL = taken.bottledL.get(id) ?? 0;
    const pouredL = taken.pouredL.get(id) ?? 0;
    const starterL = taken.starterL.get(id) ?? 0;
    const leftL = drainedL - bottledL - pouredL - starterL;
    const liquid = { drainedL, bottledL, pouredL, starterL, leftL };
    const before = known.get(one);
    if (before !== undefined && isQuiet(before) && saysSame(before.liquid, liquid)) {
      batches.set(id, before);
      continue;
    }
    if (leftL < -DECILITRE_L) {
      const settled = settle(
        { kind: 'more-out-than-in', about: [id], values: { peg: one.peg, overL: -leftL } },
        answers,
      );
      if ('open' in settled) questions.push(settled.open);
    }
    const seen = doubtfulApart(one, answers, questions);
    const batch: Batch = {
      ...one,
      ...seen,
      temperatureC: seen.temperatures.at(-1)?.temperatureC,
      mass: { ...one.mass, leftKg: leftKg(one) },
      presentL: presentL(one),
      liquid,
    };
    known.set(one, batch);
    batches.set(id, batch);
  }
  return batches;
}

/** What each batch came to last; one that its acts left as it was, and of which as much was taken, is the same again. */
const known = new WeakMap<Open, Batch>();

/** Whether nothing is asked about a batch here. */
function isQuiet({ doubtful, liquid }: Batch): boolean {
  return doubtful.length === 0 && liquid.leftL >= -DECILITRE_L;
}

/**
 * Looks dated before the filling or after the emptying are kept apart, with the temperatures read then; one after the
 * emptying is asked about here, one before the filling was when it was read.
 */
function doubtfulApart(
  { id, filled, ended, looks, temperatures, peg }: Open,
  answers: Answers,
  questions: Question[],
): Pick<Batch, 'looks' | 'doubtful' | 'temperatures'> {
  const doubtful = looks.flatMap((look): BatchLook[] => {
    if (isBefore(look.when, filled)) return [{ ...look, day: 0, against: { why: 'before-filling', from: filled } }];
    const isLate = ended !== undefined && isBefore(ended, look.when);
    return isLate ? [{ ...look, against: { why: 'after-emptying', from: look.when } }] : [];
  });
  if (doubtful.length === 0) return { looks, doubtful, temperatures };
  const ids = new Set(doubtful.map((look) => look.id));
  const read = looks.filter((look) => ids.has(look.id) && look.body.temperatureC !== undefined);
  const isOf = (told: Batch['temperatures'][number]) =>
    read.some(({ day, body }) => day === told.day && body.temperatureC === told.temperatureC);
  for (const { id: look, batch, against } of doubtful) {
    if (against?.why !== 'after-emptying' || batch !== id) continue;
    const settled = settle({ kind: 'after-it-was-emptied', about: [id, look], values: { peg } }, answers);
    if ('open' in settled) questions.push(settled.open);
  }
  return {
    looks: looks.filter((look) => !ids.has(look.id)),
    doubtful,
    temperatures: temperatures.filter((told) => !isOf(told)),
  };
}

/** Batches that carry one number while both stand. */
export function samePegs(batches: ReadonlyMap<string, Batch>, answers: Answers, questions: Question[]): void {
  const byPeg = new Map<number, Batch[]>();
  for (const batch of batches.values()) {
    const others = byPeg.get(batch.peg);
    if (others === undefined) byPeg.set(batch.peg, [batch]);
    else others.push(batch);
  }
  for (const [peg, list] of byPeg) {
    if (list.length < 2) continue;
    list.sort((a, b) => a.made.wallMinute - b.made.wallMinute || (a.id < b.id ? -1 : 1));
    for (const group of overlapping(list)) {
      const settled = settle({ kind: 'same-peg', about: group.map(({ id }) => id), values: { peg } }, answers);
      if ('open' in settled) questions.push(settled.open);
    }
  }
}

/** Runs of batches of which each begins before one earlier in the run has ended. */
function overlapping(ordered: readonly Batch[]): readonly (readonly Batch[])[] {
  const groups: Batch[][] = [];
  let until = Number.NEGATIVE_INFINITY;
  for (const batch of ordered) {
    const end = batch.ended?.wallMinute ?? Number.POSITIVE_INFINITY;
    const group = groups.at(-1);
    if (group !== undefined && batch.made.wallMinute < until) group.push(batch);
    else groups.push([batch]);
    until = Math.max(batch.made.wallMinute < until ? until : Number.NEGATIVE_INFINITY, end);
  }
  return groups.filter((group) => group.length > 1);
}
