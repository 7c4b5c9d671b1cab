// The plot, computed from its record: the same for any order, repetition or splitting of the entries. Corrections are
// followed first (following.ts); then each part of the plot reads the acts that stand, and is made again only where one
// more entry touches it (stages.ts). Nothing here judges: states, cautions and sentences are made of this by the floors above.

import type { ActOf } from './act.ts';
import { askAboutAmounts } from './amounts.ts';
import { asBefore } from './as-before.ts';
import type { Kept, Sealed } from './entry.ts';
import { following } from './following.ts';
import { type Kind, type KindTable, kinds } from './kinds/index.ts';
import { daysIn } from './moment.ts';
import type { Batch } from './parts/batch.ts';
import { isPegAct } from './parts/batches.ts';
import { type Bed, bedsOf } from './parts/beds.ts';
import { type Bottle, bottlesOf, takenByFeeds } from './parts/bottles.ts';
import { type CanFacts, described, type PlotFacts, type Tellings, type VesselFacts } from './parts/described.ts';
import { feedsOf } from './parts/feeds.ts';
import { labelsOf } from './parts/labels.ts';
import { closed, samePegs } from './parts/pegs.ts';
import { type Ran, runApart } from './parts/run-apart.ts';
import { answeredByBeans, type Lot, stockOf, testsByLot } from './parts/stock.ts';
import { startersOf, usedOf } from './parts/used.ts';
import type { Question } from './question.ts';
import { createStages } from './stages.ts';
import type { Waiting } from './standing.ts';

export interface Plot {
  /** Id of the plot; undefined while nothing was recorded. */
  readonly id: string | undefined;
  readonly facts: PlotFacts;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly vessels: ReadonlyMap<string, VesselFacts>;
  readonly cans: ReadonlyMap<string, CanFacts>;
  /** Who told of each thing last, so that a new telling can name what it was written over. */
  readonly tellings: Tellings;
  readonly waters: readonly ActOf<'water.reported'>[];
  readonly lots: ReadonlyMap<string, Lot>;
  readonly products: readonly ActOf<'product.bought'>[];
  /** How each product lets go, by its label, under the id of the product; absent for one nobody told it of. */
  readonly labels: ReadonlyMap<string, ActOf<'product.labelled'>>;
  /** Every batch, in the order it was made; its peg number is a field of it. */
  readonly batches: ReadonlyMap<string, Batch>;
  readonly bottles: ReadonlyMap<string, Bottle>;
  readonly heapFed: readonly ActOf<'heap.fed'>[];
  readonly heapLooked: readonly ActOf<'heap.looked'>[];
  readonly soilTests: readonly ActOf<'soil.tested'>[];
  /** Crops the grower described; of one name the newest counts. */
  readonly ownCrops: readonly ActOf<'crop.described'>[];
  readonly weather: readonly ActOf<'weather.typed'>[];
  readonly feedTests: readonly ActOf<'feed.tested'>[];
  readonly heapTests: readonly ActOf<'heap.tested'>[];
  readonly photos: readonly ActOf<'photo.taken'>[];
  readonly trialsLaid: readonly ActOf<'trial.laid'>[];
  readonly trialsWeighed: readonly ActOf<'trial.weighed'>[];
  /** From when on finished batches teach anew, the older ones no more. */
  readonly lessonsReset: readonly ActOf<'lessons.reset'>[];
  /** What the record says twice, for a person to settle. */
  readonly questions: readonly Question[];
  /** Entries of a newer program: kept, shown as such, passed on, and counted nowhere. */
  readonly sealed: readonly Sealed[];
  /** Entries that have no effect yet, and why. */
  readonly waiting: readonly Waiting[];
}

/** The plots that entries belong to, in order. */
export function plotsIn(entries: readonly Kept[]): readonly string[] {
  return [...new Set(entries.map(({ plot }) => plot))].sort();
}

/** Folds the entries of one plot; called again with more of them, it does again only what they touch. */
export type Folding = (entries: readonly Kept[], plot?: string) => Plot;

/**
 * Folds the entries of one plot.
 * @param plot its id; may be left out where all entries are of one plot
 * @throws RangeError when entries of several plots come without the id of one
 */
export function fold(entries: readonly Kept[], plot?: string, table: KindTable = kinds): Plot {
  return folding(table)(entries, plot);
}

const PEG_KINDS = (Object.keys(kinds) as Kind[]).filter((kind) => kind.startsWith('peg.'));

/** A fold that remembers its stages. What it gave before stays as it is. */
export function folding(table: KindTable = kinds): Folding {
  const steps = foldingInSteps(table);
  return (entries, plot) => foldWhole(steps(entries, plot));
}

/** All steps of a fold at once. */
export function foldWhole(steps: Generator<void, Plot>): Plot {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The same, step by step: whoever takes the steps lets others have a turn between them. Left in the middle, it begins anew. */
export type FoldingInSteps = (entries: readonly Kept[], plot?: string) => Generator<void, Plot>;

/** A fold that remembers its stages and is taken step by step, for a record whose fold as a whole would be felt. */
export function foldingInSteps(table: KindTable = kinds): FoldingInSteps {
  const follow = following(table);
  const { stage, told } = createStages();
  return function* (entries, plot) {
    const id = plot ?? onlyPlot(entries);
    const own = entries.every((kept) => kept.plot === id) ? entries : entries.filter((kept) => kept.plot === id);
    // What a fold that broke off had told is not told again.
    told();
    const stands = yield* follow(own);
    const { acts, by, lineOf, sealed, answers } = stands;
    yield* stage('amounts', [acts, answers], ({ questions }) => askAboutAmounts(acts, answers, questions));
    const about = ['plot', 'bed', 'vessel', 'can'].map((thing) => by(`${thing}.described` as Kind));
    const { facts, beds, bedsMayBe, vessels, cans, tellings } = yield* stage(
      'described',
      [...about, lineOf, answers],
      (told) => described(by, { lineOf, answers, ...told }),
    );
    const weighed = by('scraps.weighed');
    const tested = by('lot.tested');
    const lots = yield* stage('lots', [weighed, tested, lineOf], () => {
      const tests = testsByLot(tested, lineOf);
      return new Map(weighed.map((act) => [act.id, answeredByBeans(act, tests.get(act.id))]));
    });
    const putIn = yield* stage('putIn', [by('peg.filled'), by('peg.toppedUp')], () => [
      ...by('peg.filled'),
      ...by('peg.toppedUp'),
    ]);
    // Of all lots only those that were put in: one more in the stock changes no batch.
    const lotsPutIn = putIn.flatMap(({ body }) => (body.parts ?? []).map(({ lot }) => lots.get(lot ?? '')));
    const runOf = [...PEG_KINDS.map(by), lineOf, facts.timeZone, answers, ...lotsPutIn];
    const { timeZone } = facts;
    const { batches: open } = yield* stage<Ran>('batches', runOf, (told, before) =>
      runApart(acts.filter(isPegAct), { lots, lineOf, timeZone, days: daysIn(timeZone), answers, ...told }, before),
    );
    const feeds = yield* stage('feeds', [by('bed.fed'), answers], ({ questions }) =>
      feedsOf(by('bed.fed'), answers, questions),
    );
    const starterL = yield* stage('starterL', [putIn, lineOf], () => startersOf(putIn, lineOf));
    const poured = yield* stage('poured', [feeds, lineOf], () => takenByFeeds(feeds, lineOf));
    const shelf = {
      filled: by('bottle.filled'),
      vented: by('bottle.vented'),
      emptied: by('bottle.emptied'),
      poured,
      starterL,
    };
    const bottles = yield* stage<Plot['bottles']>(
      'bottles',
      [...Object.values(shelf), open, lineOf, answers],
      (told, before) => asBefore(before, bottlesOf(shelf, { batches: open, lineOf, answers, ...told })),
    );
    const drawn = [open, bottles, poured, starterL, answers];
    const batches = yield* stage<Plot['batches']>('closed', drawn, ({ questions }, before) => {
      const pouredL = new Map([...poured].map(([from, { sureL }]) => [from, sureL]));
      const bottledL = new Map<string, number>();
      for (const { batch, filledL } of bottles.values()) bottledL.set(batch, (bottledL.get(batch) ?? 0) + filledL);
      const all = closed(open, { bottledL, pouredL, starterL }, answers, questions);
      samePegs(all, answers, questions);
      return asBefore(before, all);
    });
    const onBeds = {
      facts: beds,
      mayBe: bedsMayBe,
      feeds,
      dressed: by('bed.dressed'),
      planted: by('bed.planted'),
      picked: by('bed.picked'),
      soilTested: by('soil.tested'),
      goalsTold: by('goal.told'),
    };
    const products = by('product.bought');
    const takers = { putIn, heapFed: by('heap.fed'), dressed: by('bed.dressed') };
    const used = yield* stage('used', [...Object.values(takers), lineOf], () => usedOf(takers, lineOf));
    const whole = {
      id,
      facts,
      beds: yield* stage('beds', [...Object.values(onBeds), lineOf], ({ waiting }) => bedsOf(onBeds, lineOf, waiting)),
      vessels,
      cans,
      tellings,
      waters: by('water.reported'),
      lots: yield* stage('stock', [weighed, tested, used, facts, lots, lineOf, answers], (told) =>
        stockOf(weighed, tested, used, { facts, lots, lineOf, answers, ...told }),
      ),
      products,
      labels: yield* stage('labels', [by('product.labelled'), products, lineOf], ({ waiting }) =>
        labelsOf(by('product.labelled'), products, lineOf, waiting),
      ),
      batches,
      bottles,
      heapFed: by('heap.fed'),
      heapLooked: by('heap.looked'),
      soilTests: by('soil.tested'),
      ownCrops: by('crop.described'),
      weather: by('weather.typed'),
      feedTests: by('feed.tested'),
      heapTests: by('heap.tested'),
      photos: by('photo.taken'),
      trialsLaid: by('trial.laid'),
      trialsWeighed: by('trial.weighed'),
      lessonsReset: by('lessons.reset'),
      sealed,
    };
    const { waiting, questions } = told();
    return {
      ...whole,
      questions: [...stands.questions, ...questions].sort((a, b) => compare(a.key, b.key)),
      waiting: [...stands.waiting, ...waiting].sort((a, b) => compare(a.id, b.id) || compare(a.why, b.why)),
    };
  };
}

function onlyPlot(entries: readonly Kept[]): string | undefined {
  const first = entries[0]?.plot;
  for (const { plot } of entries) {
    if (plot !== first) throw new RangeError('fold: entries of several plots; name the plot to fold');
  }
  return first;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a === b ? 0 : 1;
}
