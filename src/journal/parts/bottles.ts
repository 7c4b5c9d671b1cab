// Bottles on the shelf: what was filled, vented, poured and tipped out, and what is left in each group. A pour that may
// have been told twice leaves a range. Use-first dates and gas are the engine's.

import { floorAt, point, type Range } from '#engine/quantity/range.ts';
import type { ActOf } from '../act.ts';
import type { Moment } from '../moment.ts';
import { type Answers, type Question, settle } from '../question.ts';
import type { Waiting } from '../standing.ts';
import type { Open } from './batches.ts';
import type { Feed } from './feeds.ts';

export interface Bottle {
  readonly id: string;
  readonly act: ActOf<'bottle.filled'>;
  readonly batch: string;
  readonly peg: number;
  readonly count: number;
  readonly filledL: number;
  /** Litres left in the whole group. */
  readonly leftL: Range;
  /** The straining its liquid came from: the last one before it was filled. */
  readonly strained: Moment | undefined;
  readonly vents: readonly ActOf<'bottle.vented'>[];
  /** Vented last, or filled. */
  readonly lastVented: Moment;
  /** When it was emptied; undefined while something is left. */
  readonly emptied: Moment | undefined;
}

/** Every act that takes liquid, as the shelf sees it. */
export interface Shelf {
  readonly filled: readonly ActOf<'bottle.filled'>[];
  readonly vented: readonly ActOf<'bottle.vented'>[];
  readonly emptied: readonly ActOf<'bottle.emptied'>[];
  readonly poured: Poured;
  /** Litres of starter taken from a bottle or a batch, by its id. */
  readonly starterL: ReadonlyMap<string, number>;
}

export interface ShelfSurroundings {
  readonly batches: ReadonlyMap<string, Open>;
  readonly lineOf: ReadonlyMap<string, string>;
  readonly answers: Answers;
  readonly waiting: Waiting[];
  readonly questions: Question[];
}

const MILLILITRE_L = 0.001;

/** Litres of concentrate that pours took from each bottle group or batch: surely, and perhaps. */
export type Poured = ReadonlyMap<string, { readonly sureL: number; readonly maybeL: number }>;

/** What pours took from each source; one that was answered to be no act of its own takes nothing. */
export function takenByFeeds(feeds: readonly Feed[], lineOf: ReadonlyMap<string, string>): Poured {
  const taken = new Map<string, { sureL: number; maybeL: number }>();
  for (const { act, counts } of feeds) {
    for (const { bottle, batch, volume } of act.body.from) {
      const source = bottle ?? batch;
      if (source === undefined || counts === 'no') continue;
      const id = lineOf.get(source) ?? source;
      const sum = taken.get(id) ?? { sureL: 0, maybeL: 0 };
      if (counts === 'yes') sum.sureL += volume.volumeL;
      else sum.maybeL += volume.volumeL;
      taken.set(id, sum);
    }
  }
  return taken;
}

/** Every group of bottles with what is left in it. */
export function bottlesOf(shelf: Shelf, around: ShelfSurroundings): ReadonlyMap<string, Bottle> {
  const ref = (id: string) => around.lineOf.get(id) ?? id;
  const vents = grouped(shelf.vented, ({ body }) => ref(body.bottle));
  const empties = grouped(shelf.emptied, ({ body }) => ref(body.bottle));
  const bottles = new Map<string, Bottle>();
  for (const act of shelf.filled) {
    const batch = around.batches.get(ref(act.body.batch));
    if (batch === undefined) {
      around.waiting.push({ id: act.id, why: 'batch-not-here', of: ref(act.body.batch) });
      continue;
    }
    const count = act.body.count ?? 1;
    const filledL = act.body.filled.volumeL * count;
    const taken = shelf.poured.get(act.id) ?? { sureL: 0, maybeL: 0 };
    const own = empties.get(act.id) ?? [];
    const whole = own.find(({ body }) => body.lost === undefined);
    const tippedL = own.reduce((sum, { body }) => sum + (body.lost?.volumeL ?? 0), 0);
    const high = filledL - taken.sureL - (shelf.starterL.get(act.id) ?? 0) - tippedL;
    const left = { low: high - taken.maybeL, likely: high - taken.maybeL / 2, high };
    if (high < -MILLILITRE_L) tooMuch(act, batch.peg, -high, around);
    const drained = batch.strainings.filter(({ when }) => when.wallMinute <= act.when.wallMinute).at(-1);
    const last = own.at(-1);
    bottles.set(act.id, {
      id: act.id,
      act,
      batch: batch.id,
      peg: batch.peg,
      count,
      filledL,
      leftL: whole === undefined ? floorAt(left, 0) : point(0),
      strained: (drained ?? batch.strainings.at(-1))?.when,
      vents: vents.get(act.id) ?? [],
      lastVented: vents.get(act.id)?.at(-1)?.when ?? act.when,
      emptied: whole?.when ?? (high < MILLILITRE_L ? (last?.when ?? act.when) : undefined),
    });
  }
  for (const list of [...vents, ...empties]) {
    if (bottles.has(list[0])) continue;
    for (const { id } of list[1]) around.waiting.push({ id, why: 'bottle-not-here', of: list[0] });
  }
  return bottles;
}

function tooMuch(act: ActOf<'bottle.filled'>, peg: number, overL: number, around: ShelfSurroundings): void {
  const settled = settle({ kind: 'more-out-than-in', about: [act.id], values: { peg, overL } }, around.answers);
  if ('open' in settled) around.questions.push(settled.open);
}

function grouped<T>(list: readonly T[], key: (item: T) => string): ReadonlyMap<string, readonly T[]> {
  const groups = new Map<string, T[]>();
  for (const item of list) {
    const group = groups.get(key(item));
    if (group === undefined) groups.set(key(item), [item]);
    else group.push(item);
  }
  return groups;
}
