// The stock of scraps: every lot weighed, what was used of it, what is left, and where it may go. A bean test that came
// out clear opens a lot whose treatment was not known; nothing opens one that was treated. Days to spoil and the bean
// test itself are the engine's.

import type { Destination } from '#engine/scraps/part.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '../act.ts';
import { type Answers, type Question, settle } from '../question.ts';
import type { Waiting } from '../standing.ts';

export interface Lot {
  readonly id: string;
  readonly act: ActOf<'scraps.weighed'>;
  readonly weighedKg: number;
  readonly usedKg: number;
  readonly leftKg: number;
  /** liquid, compost-only, set-aside or out: the strictest of table, slip, test and what was decided at the scale. */
  readonly goes: Destination;
  readonly tests: readonly ActOf<'lot.tested'>[];
}

const ORDER: readonly Destination[] = ['liquid', 'compost-only', 'set-aside', 'out'];
const DECIDED: Readonly<Record<string, Destination>> = {
  in: 'liquid',
  'compost-only': 'compost-only',
  'set-aside': 'set-aside',
  out: 'out',
};
const GRAM_KG = 0.001;
/** One list for every lot that was not tested: nearly all. */
const NO_TESTS: Lot['tests'] = [];

/** Where a lot may go: never a softer place than any of its answers gives. */
export function placeOfLot({ body }: ActOf<'scraps.weighed'>, tests: readonly ActOf<'lot.tested'>[]): Destination {
  const table = body.material === undefined ? 'liquid' : material(body.material)?.into;
  const decided = DECIDED[body.goes ?? 'in'] ?? 'set-aside';
  const harmed = tests.some((test) => test.body.outcome === 'harmed');
  const cleared = !harmed && tests.some((test) => test.body.outcome === 'clear');
  const treated = body.slip?.treated;
  // A material that this table does not have waits for one that does: no test of beans can answer for it.
  let place = stricter(table ?? 'set-aside', harmed || treated === 'yes' ? 'out' : 'liquid');
  if (treated === 'unknown' && !cleared) place = stricter(place, 'set-aside');
  return decided === 'set-aside' && cleared ? place : stricter(place, decided);
}

function stricter(a: Destination, b: Destination): Destination {
  return ORDER.indexOf(b) > ORDER.indexOf(a) ? b : a;
}

/** Kilograms taken from each lot. */
export type Used = ReadonlyMap<string, number>;

/** Every lot with what is left of it. */
export function stockOf(
  weighed: readonly ActOf<'scraps.weighed'>[],
  tested: readonly ActOf<'lot.tested'>[],
  used: Used,
  around: {
    readonly lots: ReadonlyMap<string, unknown>;
    readonly lineOf: ReadonlyMap<string, string>;
    readonly answers: Answers;
    readonly waiting: Waiting[];
    readonly questions: Question[];
  },
): ReadonlyMap<string, Lot> {
  const tests = new Map<string, ActOf<'lot.tested'>[]>();
  for (const test of tested) {
    const lot = around.lineOf.get(test.body.lot) ?? test.body.lot;
    if (!around.lots.has(lot)) around.waiting.push({ id: test.id, why: 'lot-not-here', of: lot });
    tests.set(lot, [...(tests.get(lot) ?? []), test]);
  }
  const lots = new Map<string, Lot>();
  for (const act of weighed) {
    const weighedKg = act.body.mass.massKg;
    const usedKg = used.get(act.id) ?? 0;
    const own = tests.get(act.id) ?? NO_TESTS;
    lots.set(act.id, {
      id: act.id,
      act,
      weighedKg,
      usedKg,
      leftKg: weighedKg - usedKg,
      goes: placeOfLot(act, own),
      tests: own,
    });
    if (usedKg - weighedKg <= GRAM_KG) continue;
    const asked = { kind: 'more-out-than-in', about: [act.id], values: { overKg: usedKg - weighedKg } } as const;
    const settled = settle(asked, around.answers);
    if ('open' in settled) around.questions.push(settled.open);
  }
  return lots;
}
