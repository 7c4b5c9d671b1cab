// The cress test of a feed at home: counts and root lengths as typed become one entry; each strength is read against the
// water alone, with its arithmetic, its verdict by the rules and the strength that follows. The sums are the engine's.

import {
  adviceStrength,
  type Dishes,
  GERMINATION,
  type GerminationReading,
  readGermination,
  type StrengthAdvice,
} from '#engine/can/germination.ts';
import { figureAlone } from '#engine/quantity/number.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { germinationRules } from '#engine/rules/spray.ts';
import type { ActOf } from '#journal/act.ts';
import type { Plot } from '#journal/fold.ts';
import { type Body, kinds } from '#journal/kinds/index.ts';
import { cressForm as words } from '#words/en/cress.ts';
import type { PegName } from '#words/peg-name.ts';
import { pegName } from './batch-name.ts';

/** What a test of a feed and one of a heap's compost have in common. */
type Test = Pick<Body<'feed.tested'>, 'control' | 'samples'>;

/** Strengths of the card, 1 part in n of the mixture. @memory */
export const CRESS_STRENGTHS = [10, 50, 100, 200] as const;
/** Dishes of the form: the water alone, then each strength. */
export const cressRows: readonly string[] = ['control', ...CRESS_STRENGTHS.map(String)];
/** Seeds laid for a strength, where nobody typed another count. */
export const usualSown = GERMINATION.dishCount * GERMINATION.seedsPerDishCount;

/** Dishes of a test of compost: the water alone, and water that stood on one part in ten of it. @memory */
export const compostRows: readonly string[] = ['control', '10'];

export type CressRead<K extends 'feed.tested' | 'heap.tested'> =
  | { readonly ok: true; readonly body: Body<K> }
  | { readonly ok: false; readonly troubles: ReadonlyMap<string, string> };

/** Fields are `control.sown`, `10.germinated`, `10.roots`; a strength left empty was not tried. */
export function readCress(
  typed: Readonly<Record<string, string>>,
  feed: { readonly bottle?: string; readonly batch?: string },
): CressRead<'feed.tested'> {
  const read = readDishes(typed, cressRows);
  return 'troubles' in read ? { ok: false, troubles: read.troubles } : checked('feed.tested', { ...feed, ...read });
}

/** The same of a heap's compost, with the rows of `compostRows`. */
export function readHeapCress(typed: Readonly<Record<string, string>>, heap: string): CressRead<'heap.tested'> {
  const read = readDishes(typed, compostRows);
  return 'troubles' in read ? { ok: false, troubles: read.troubles } : checked('heap.tested', { heap, ...read });
}

function checked<K extends 'feed.tested' | 'heap.tested'>(kind: K, body: object): CressRead<K> {
  const read = kinds[kind].newest.safeParse(body);
  if (read.success) return { ok: true, body: read.data as Body<K> };
  return { ok: false, troubles: new Map([['control.sown', read.error.issues[0]?.message ?? '']]) };
}

function readDishes(typed: Readonly<Record<string, string>>, rows: readonly string[]) {
  const troubles = new Map<string, string>();
  const read = rows.map((row) => [row, dishesOf(row, typed, troubles)] as const);
  const control = read[0]?.[1];
  const samples = read.slice(1).flatMap(([row, dishes]) => (dishes ? [{ n: Number(row), dishes }] : []));
  if (control === undefined && !troubles.has('control.germinated')) troubles.set('control.germinated', words.noControl);
  if (samples.length === 0 && troubles.size === 0) troubles.set('10.germinated', words.noSample);
  return troubles.size > 0 ? { troubles } : { control, samples };
}

function dishesOf(row: string, typed: Readonly<Record<string, string>>, troubles: Map<string, string>) {
  const text = (field: string) => (typed[`${row}.${field}`] ?? '').trim();
  if (text('germinated') === '' && text('roots') === '') return undefined;
  const sown = wholeOf(text('sown') || String(usualSown));
  const germinated = wholeOf(text('germinated'));
  if (sown === undefined || sown === 0) troubles.set(`${row}.sown`, words.noCount(text('sown')));
  if (germinated === undefined) troubles.set(`${row}.germinated`, words.noCount(text('germinated')));
  else if (sown !== undefined && germinated > sown) troubles.set(`${row}.germinated`, words.tooMany(germinated, sown));
  const roots =
    text('roots') === ''
      ? []
      : text('roots')
          .split(/[\s;]+/)
          .map(lengthOf);
  const lengths = roots.filter((mm) => mm !== undefined);
  if (lengths.length < roots.length) troubles.set(`${row}.roots`, words.noLength(text('roots')));
  else if (germinated !== undefined && germinated > 0 && lengths.length !== 1 && lengths.length !== germinated) {
    troubles.set(`${row}.roots`, words.otherCount(lengths.length, germinated));
  }
  if (germinated === undefined || sown === undefined) return undefined;
  if (germinated === 0) return { sown, germinated };
  const meanRootMm = lengths.reduce((sum, mm) => sum + mm, 0) / lengths.length;
  return { sown, germinated, meanRootMm: Number(meanRootMm.toPrecision(12)) };
}

function wholeOf(text: string): number | undefined {
  return /^\d{1,4}$/.test(text) ? Number(text) : undefined;
}

/** A root in mm, up to 300. */
function lengthOf(text: string): number | undefined {
  return figureAlone(text, { least: 0, most: 300 });
}

/** One strength of a test, read. */
export interface StrengthRead {
  readonly n: number;
  readonly sample: Dishes;
  readonly reading: GerminationReading;
  readonly findings: readonly Finding[];
}

export interface CressView {
  readonly control: Dishes;
  readonly strengths: readonly StrengthRead[];
  readonly advice: StrengthAdvice;
}

/** A test with its sums and verdicts, the strongest first. */
export function cressView(test: Test): CressView {
  const control = asDishes(test.control);
  const tried = test.samples.map(({ n, dishes }) => ({ n, sample: asDishes(dishes) })).toSorted((a, b) => a.n - b.n);
  return {
    control,
    strengths: tried.map(({ n, sample }) => {
      const reading = readGermination(sample, control);
      return { n, sample, reading, findings: judge(germinationRules, reading) };
    }),
    advice: adviceStrength(tried, control),
  };
}

function asDishes({ sown, germinated, meanRootMm }: Test['control']): Dishes {
  return { sownCount: sown, germinatedCount: germinated, meanRootMm: meanRootMm ?? Number.NaN };
}

/** Tests of a bottle group or a batch, the newest first. */
export function cressTestsOf(plot: Plot, feed: string): readonly ActOf<'feed.tested'>[] {
  return plot.feedTests.filter(({ body }) => body.bottle === feed || body.batch === feed).toReversed();
}

/** Which feed an address names: a bottle group or a batch of the plot. */
export function feedOf(
  plot: Plot,
  id: string,
): { readonly bottle?: string; readonly batch?: string; readonly peg: PegName } | undefined {
  const bottle = plot.bottles.get(id);
  const batch = plot.batches.get(bottle?.batch ?? id);
  if (batch === undefined) return undefined;
  return bottle === undefined ? { batch: id, peg: pegName(plot, batch) } : { bottle: id, peg: pegName(plot, batch) };
}

/** Tests of a heap's compost, the newest first. */
export function heapCressTests(plot: Plot, heap: string): readonly ActOf<'heap.tested'>[] {
  return plot.heapTests.filter(({ body }) => body.heap === heap).toReversed();
}
