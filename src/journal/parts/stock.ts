// The stock of scraps: every lot weighed, what was used of it, what is left, and where it may go. Each lot is judged once,
// by the engine's slip with the rule of its site; what was decided at the scale can only make that stricter. Days to
// spoil and the bean test itself are the engine's.

import { outcomeOf } from '#engine/rules/slip.ts';
import type { Destination } from '#engine/scraps/part.ts';
import type { SiteRules, SlipOutcome } from '#engine/scraps/slip.ts';
import { material } from '#engine/tables/index.ts';
import type { ActOf } from '../act.ts';
import { type Answers, type Question, settle } from '../question.ts';
import type { Waiting } from '../standing.ts';
import type { PlotFacts } from './described.ts';
import { beansOf, siteOf, slipOfLot } from './slip-of-lot.ts';

export interface Lot {
  readonly id: string;
  readonly act: ActOf<'scraps.weighed'>;
  readonly weighedKg: number;
  readonly usedKg: number;
  readonly leftKg: number;
  /** liquid, compost-only, set-aside or out: the strictest of table, slip, site, test and what was decided at the scale. */
  readonly goes: Destination;
  readonly tests: readonly ActOf<'lot.tested'>[];
}

const ORDER: readonly Destination[] = ['liquid', 'compost-only', 'set-aside', 'out'];
/** What was decided at the scale, and what the engine's slip comes to, as a place of the stock. */
const PLACES: Readonly<Record<SlipOutcome, Destination>> = {
  in: 'liquid',
  'compost-only': 'compost-only',
  'set-aside': 'set-aside',
  out: 'out',
};
const GRAM_KG = 0.001;
/** One list for every lot that was not tested: nearly all. */
const NO_TESTS: Lot['tests'] = [];

/**
 * Where a lot may go: never a softer place than any of its answers gives. The site's rule joins in here and not on the
 * sheets, so that no list of the stock can forget it; `site` is left out where a lot is judged by itself alone.
 */
export function placeOfLot(
  { body }: ActOf<'scraps.weighed'>,
  tests: readonly ActOf<'lot.tested'>[],
  site?: SiteRules,
): Destination {
  const beans = beansOf(tests);
  const judged = PLACES[outcomeOf(slipOfLot(body, { site, beans }))];
  // A material that this table does not have waits for one that does: no test of beans can answer for it.
  const known = body.material === undefined || material(body.material) !== undefined;
  const place = stricter(known ? 'liquid' : 'set-aside', judged);
  const decided = PLACES[body.goes ?? 'in'];
  return decided === 'set-aside' && beans === 'clear' ? place : stricter(place, decided);
}

function stricter(a: Destination, b: Destination): Destination {
  return ORDER.indexOf(b) > ORDER.indexOf(a) ? b : a;
}

/** The tests of each lot. */
export function testsByLot(
  tested: readonly ActOf<'lot.tested'>[],
  lineOf: ReadonlyMap<string, string>,
): ReadonlyMap<string, Lot['tests']> {
  const tests = new Map<string, ActOf<'lot.tested'>[]>();
  for (const test of tested) {
    const lot = lineOf.get(test.body.lot) ?? test.body.lot;
    tests.set(lot, [...(tests.get(lot) ?? []), test]);
  }
  return tests;
}

/** A lot as what goes into a vessel takes its answers over: a clear bean test answers the question about weedkiller. */
export function answeredByBeans(act: ActOf<'scraps.weighed'>, tests: Lot['tests'] | undefined) {
  const { slip } = act.body;
  if (tests === undefined || slip === undefined || slip.treated === 'yes' || beansOf(tests) !== 'clear') return act;
  return { ...act, body: { ...act.body, slip: { ...slip, treated: 'no' as const } } };
}

/** Kilograms taken from each lot. */
export type Used = ReadonlyMap<string, number>;

/** Every lot with what is left of it. */
export function stockOf(
  weighed: readonly ActOf<'scraps.weighed'>[],
  tested: readonly ActOf<'lot.tested'>[],
  used: Used,
  around: {
    readonly facts: PlotFacts;
    readonly lots: ReadonlyMap<string, unknown>;
    readonly lineOf: ReadonlyMap<string, string>;
    readonly answers: Answers;
    readonly waiting: Waiting[];
    readonly questions: Question[];
  },
): ReadonlyMap<string, Lot> {
  const tests = testsByLot(tested, around.lineOf);
  for (const [lot, own] of tests) {
    if (around.lots.has(lot)) continue;
    for (const { id } of own) around.waiting.push({ id, why: 'lot-not-here', of: lot });
  }
  const site = siteOf(around.facts);
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
      goes: placeOfLot(act, own, site),
      tests: own,
    });
    if (usedKg - weighedKg <= GRAM_KG) continue;
    const asked = { kind: 'more-out-than-in', about: [act.id], values: { overKg: usedKg - weighedKg } } as const;
    const settled = settle(asked, around.answers);
    if ('open' in settled) around.questions.push(settled.open);
  }
  return lots;
}
