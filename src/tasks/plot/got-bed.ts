// What one bed got, as its own sheet shows it: need, given, missing and too much for each nutrient, what else came along,
// what went on and what was told of its ground, newest first. The sums are the ledger's.

import type { Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Entry } from '#journal/entry.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { type Feed, sumOfFeeds } from '#journal/parts/feeds.ts';
import { type SeasonStart, seasonOf } from '#plot/ground/season.ts';
import { hemisphereOf } from '#plot/place/hemisphere.ts';
import type { PegName } from '#words/peg-name.ts';
import type { Caution } from '../caution.ts';
import type { SharePercent } from '../ledger-answer.ts';
import { pegNameOf } from './batch-name.ts';
import { onDay } from './dates.ts';
import { type CropAsked, cropsAsked } from './goal-forms.ts';
import { plotLedger } from './ledger.ts';
import { sayEntry } from './record.ts';

/** One nutrient of the small table; null stands for "not known". */
export interface GotRow {
  readonly nutrient: Nutrient;
  readonly needG: Range | null;
  readonly givenG: Range | null;
  readonly missingG: Range | null;
  readonly excessG: Range | null;
  readonly liquidPercent: SharePercent | null;
}

/** Pours of one liquid, added up. */
export interface PouredSum {
  /** Undefined where the record no longer knows the liquid; null for plain water. */
  readonly peg: PegName | undefined | null;
  readonly count: number;
  readonly concentrateL: Range;
  readonly dilutedL: Range;
}

/** An act on the bed, as the record says it. */
export interface ToldAct {
  readonly id: string;
  readonly on: string;
  readonly sentence: string;
  readonly entry: Entry;
}

export interface GotBedView {
  readonly id: string;
  readonly name: string;
  readonly from: string;
  readonly to: string;
  /** What its season starts with. */
  readonly start: SeasonStart;
  /** Of what was given before, what had not come free by then. */
  readonly carriedG: Readonly<Record<Nutrient, Range | null>> | undefined;
  readonly asksHemisphere: boolean;
  /** False where nobody told the bed's size: nothing is summed then. */
  readonly sized: boolean;
  readonly rows: readonly GotRow[];
  readonly also: { readonly ca: Range | null; readonly mg: Range | null; readonly dryMatterKg: Range | null };
  /** A report of the bed or the plot is in the record. */
  readonly isTested: boolean;
  readonly soil: { readonly p: string | null; readonly k: string | null };
  readonly cautions: readonly Caution[];
  readonly poured: readonly PouredSum[];
  readonly dressed: readonly ToldAct[];
  /** Soil reports, goals and own crops, of any year. */
  readonly told: readonly ToldAct[];
  readonly crops: readonly CropAsked[];
}

const NUTRIENTS: readonly Nutrient[] = ['n', 'p', 'k'];

/** The sheet of one bed; undefined for a bed that is not in the record. */
export function gotBed(ask: {
  readonly plot: Plot;
  readonly bed: string;
  readonly today: string;
}): GotBedView | undefined {
  const { plot, today } = ask;
  const bed = plot.beds.get(ask.bed);
  if (bed === undefined) return undefined;
  const todayDay = momentOf(today).dateDay;
  const hemisphere = hemisphereOf(plot.facts);
  const { fromDay, start } = seasonOf({ bed, hemisphere, todayDay });
  const { value } = plotLedger({ plot, to: today, bed: bed.id });
  const [sums] = value.beds;
  const crops = cropsAsked(plot, bed.id, today);
  const names = new Set(crops.map(({ name }) => name));
  const told = [
    ...bed.soilTests,
    ...plot.soilTests.filter(({ body }) => body.bed === undefined),
    ...bed.goals,
    ...plot.ownCrops.filter(({ body }) => names.has(body.name.toLowerCase())),
  ];
  const isOfSeason = (day: number) => day >= fromDay && day <= todayDay;
  const act = (one: { readonly id: string; readonly entry: Entry }): ToldAct => ({
    id: one.id,
    on: one.entry.on,
    sentence: sayEntry(one.entry, plot),
    entry: one.entry,
  });
  return {
    id: bed.id,
    name: bed.facts.name ?? bed.facts.tag ?? bed.id,
    from: onDay(fromDay),
    to: today,
    start,
    carriedG: sums?.carriedG,
    asksHemisphere: hemisphere === undefined,
    sized: sums !== undefined,
    rows:
      sums === undefined
        ? []
        : NUTRIENTS.map((nutrient) => ({
            nutrient,
            needG: sums.needG[nutrient],
            givenG: sums.givenG[nutrient],
            missingG: sums.missingG[nutrient],
            excessG: sums.excessG[nutrient],
            liquidPercent: sums.liquidSharePercent[nutrient],
          })),
    also: {
      ca: sums?.alsoG.ca ?? null,
      mg: sums?.alsoG.mg ?? null,
      dryMatterKg: sums !== undefined && sums.dryMatterKg.likely > 0 ? sums.dryMatterKg : null,
    },
    isTested: told.some(({ entry }) => entry.kind === 'soil.tested'),
    soil: { p: sums?.soil.p ?? null, k: sums?.soil.k ?? null },
    cautions: sums === undefined ? [] : value.cautions,
    poured: pouredOn(plot, bed, isOfSeason),
    dressed: bed.dressings
      .filter(({ when }) => isOfSeason(when.dateDay))
      .toReversed()
      .map(act),
    told: told.toSorted((a, b) => b.when.wallMinute - a.when.wallMinute).map(act),
    crops,
  };
}

/** Pours of the season by the liquid in them; a can of several liquids counts under the first. */
function pouredOn(plot: Plot, bed: Bed, isOfSeason: (day: number) => boolean): readonly PouredSum[] {
  const groups = new Map<string, Feed[]>();
  for (const feed of bed.feeds) {
    if (feed.counts === 'no' || !isOfSeason(feed.act.when.dateDay)) continue;
    const [first] = feed.act.body.from;
    const id = first === undefined ? '' : (plot.bottles.get(first.bottle ?? '')?.batch ?? first.batch ?? '?');
    groups.set(id, [...(groups.get(id) ?? []), feed]);
  }
  return [...groups].map(([id, feeds]) => ({
    peg: id === '' ? null : pegNameOf(plot, id),
    count: feeds.length,
    concentrateL: sumOfFeeds(feeds, ({ concentrateL }) => concentrateL),
    dilutedL: sumOfFeeds(feeds, ({ pouredL }) => pouredL),
  }));
}
