// The plot, computed from its record: the same for any order, repetition or splitting of the entries, and quick enough to
// do anew on every change. Corrections are followed first (standing.ts); then each part of the plot reads the acts that
// stand. Nothing here judges: states, cautions and sentences are made of this by the floors above.

import { type Act, type ActOf, actsOf, type ByKind } from './act.ts';
import type { Kept, Sealed } from './entry.ts';
import { type Kind, type KindTable, kinds } from './kinds/index.ts';
import { daysIn } from './moment.ts';
import type { Batch } from './parts/batch.ts';
import { isPegAct, runBatches } from './parts/batches.ts';
import { type Bed, bedsOf } from './parts/beds.ts';
import { type Bottle, bottlesOf, takenByFeeds } from './parts/bottles.ts';
import { type CanFacts, described, type PlotFacts, type VesselFacts } from './parts/described.ts';
import { feedsOf } from './parts/feeds.ts';
import { labelsOf } from './parts/labels.ts';
import { closed, samePegs } from './parts/pegs.ts';
import { answeredByBeans, type Lot, stockOf, testsByLot } from './parts/stock.ts';
import { startersOf, usedOf } from './parts/used.ts';
import type { Question } from './question.ts';
import { standing, type Waiting } from './standing.ts';

export interface Plot {
  /** Id of the plot; undefined while nothing was recorded. */
  readonly id: string | undefined;
  readonly facts: PlotFacts;
  readonly beds: ReadonlyMap<string, Bed>;
  readonly vessels: ReadonlyMap<string, VesselFacts>;
  readonly cans: ReadonlyMap<string, CanFacts>;
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

/**
 * Folds the entries of one plot.
 * @param plot its id; may be left out where all entries are of one plot
 * @throws RangeError when entries of several plots come without the id of one
 */
export function fold(entries: readonly Kept[], plot?: string, table: KindTable = kinds): Plot {
  const id = plot ?? onlyPlot(entries);
  const own = entries.every((kept) => kept.plot === id) ? entries : entries.filter((kept) => kept.plot === id);
  const stands = standing(own, table);
  const { lineOf, sealed, answers } = stands;
  const waiting: Waiting[] = [...stands.waiting];
  const questions: Question[] = [...stands.questions];
  const acts = actsOf(stands, table);
  const by = grouped(acts);
  const { facts, beds, vessels, cans } = described(by, lineOf, waiting);
  const lotActs = by('scraps.weighed');
  const lots = new Map<string, ActOf<'scraps.weighed'>>();
  const tests = testsByLot(by('lot.tested'), lineOf);
  for (const act of lotActs) lots.set(act.id, answeredByBeans(act, tests.get(act.id)));
  const around = { lots, lineOf, days: daysIn(facts.timeZone), answers, waiting, questions };
  const open = runBatches(acts.filter(isPegAct), around);
  const feeds = feedsOf(by('bed.fed'), answers, questions);
  const putIn = [...by('peg.filled'), ...by('peg.toppedUp')];
  const starterL = startersOf(putIn, lineOf);
  const poured = takenByFeeds(feeds, lineOf);
  const shelf = {
    filled: by('bottle.filled'),
    vented: by('bottle.vented'),
    emptied: by('bottle.emptied'),
    poured,
    starterL,
  };
  const bottles = bottlesOf(shelf, { batches: open, lineOf, answers, waiting, questions });
  const pouredL = new Map([...poured].map(([from, { sureL }]) => [from, sureL]));
  const bottledL = new Map<string, number>();
  for (const { batch, filledL } of bottles.values()) bottledL.set(batch, (bottledL.get(batch) ?? 0) + filledL);
  const batches = closed(open, { bottledL, pouredL, starterL }, answers, questions);
  samePegs(batches, answers, questions);
  const onBeds = {
    facts: beds,
    feeds,
    dressed: by('bed.dressed'),
    planted: by('bed.planted'),
    picked: by('bed.picked'),
    soilTested: by('soil.tested'),
    goalsTold: by('goal.told'),
  };
  const products = by('product.bought');
  const used = usedOf({ putIn, heapFed: by('heap.fed'), dressed: by('bed.dressed') }, lineOf);
  return {
    id,
    facts,
    beds: bedsOf(onBeds, lineOf, waiting),
    vessels,
    cans,
    waters: by('water.reported'),
    lots: stockOf(lotActs, by('lot.tested'), used, { ...around, facts }),
    products,
    labels: labelsOf(by('product.labelled'), products, lineOf, waiting),
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
    questions: questions.sort((a, b) => compare(a.key, b.key)),
    sealed,
    waiting: waiting.sort((a, b) => compare(a.id, b.id) || compare(a.why, b.why)),
  };
}

function onlyPlot(entries: readonly Kept[]): string | undefined {
  const first = entries[0]?.plot;
  for (const { plot } of entries) {
    if (plot !== first) throw new RangeError('fold: entries of several plots; name the plot to fold');
  }
  return first;
}

/** Acts of a kind, in their order. */
function grouped(acts: readonly Act[]): ByKind {
  const groups = new Map<Kind, Act[]>();
  for (const act of acts) {
    const group = groups.get(act.kind);
    if (group === undefined) groups.set(act.kind, [act]);
    else group.push(act);
  }
  return <K extends Kind>(kind: K) => (groups.get(kind) ?? []) as unknown as readonly ActOf<K>[];
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a === b ? 0 : 1;
}
