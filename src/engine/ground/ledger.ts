// Given, needed, missing and too much, for each bed and the plot, over a season and week by week. What was given before the
// first day still counts by what comes free from then on. Ranges: causes of error
// that are one and the same (a crop table, a batch's release) add straight; kinds of supply err by themselves and
// combine in quadrature (quantity/range.ts), since ends added straight over a dozen kinds would say nothing and random
// draws would take seconds for 120 beds.

import type { Element } from '../pail/recipe.ts';
import {
  capAt,
  difference,
  floorAt,
  inverse,
  point,
  product,
  type Range,
  scale,
  sum,
  sumTogether,
} from '../quantity/range.ts';
import { releasedFraction } from './available.ts';
import { type BedAsk, type BedNeed, bedNeed, NUTRIENTS, type Nutrient, takenUpFraction } from './need.ts';
import { ELEMENTS, freeNitrogenG, type Grams, leftG, type Supply, type SupplyKind, stepOf } from './supply.ts';

/** Degree days over 0 °C in the soil from one day to a later one. */
export type Warmth = (fromDay: number, toDay: number) => Range;

export interface LedgerBed extends BedAsk {
  readonly name: string;
  readonly supplies: readonly Supply[];
  /** Day the crop was sown or planted; the first day of the period where it is not known. */
  readonly plantedDay?: number | undefined;
}

/** The first day, and the day after the last. */
export interface Period {
  readonly fromDay: number;
  readonly toDay: number;
}

/** One kind of supply on a bed: what is counted as given. */
export interface GivenBy {
  readonly kind: SupplyKind;
  readonly givenG: Grams;
}

export interface Week {
  readonly fromDay: number;
  /** Nitrogen the crop takes up, and what comes free, in that week. */
  readonly needNG: Range | undefined;
  readonly givenNG: Range;
}

export interface BedLedger {
  readonly name: string;
  readonly areaM2: number;
  readonly need: BedNeed;
  /** Nitrogen free by the end of the period; all of the other elements. */
  readonly givenG: Grams;
  /** The part of it that was given before the period and had not come free by then. */
  readonly carriedG: Grams;
  readonly missingG: Grams;
  readonly excessG: Grams;
  readonly byKind: readonly GivenBy[];
  readonly liquidG: Grams;
  readonly liquidSharePercent: Readonly<Partial<Record<Nutrient, Range>>>;
  /** No share passes this: the high end of all that went into the batches, against the low end of need. */
  readonly ceilingSharePercent: Readonly<Partial<Record<Nutrient, number>>>;
  readonly dryKg: Range;
  /** Kinds of supply whose content of an element is not known. */
  readonly unknownIn: readonly { readonly element: Nutrient; readonly what: string }[];
  readonly weeks: readonly Week[];
}

export interface PlotLedger {
  readonly needG: Grams;
  readonly givenG: Grams;
  readonly missingG: Grams;
  readonly excessG: Grams;
  readonly liquidG: Grams;
  readonly liquidSharePercent: Readonly<Partial<Record<Nutrient, Range>>>;
  /** Beds whose need of an element is not known: the sums above are of the others. */
  readonly without: Readonly<Record<Nutrient, readonly string[]>>;
}

const WEEK_DAYS = 7;

/**
 * The sum of one bed.
 *
 *   given = Σ pours + Σ (dressings · share · release) + carried;  missing = need − given;  excess = given − need;  neither below 0
 *   carried = of what was given before: N free by the end less N free by the first day; of the rest what is left (supply.ts)
 *   liquid share = 100 · liquid / need
 *
 * @arithmetic need.ts and supply.ts
 */
export function bedLedger(bed: LedgerBed, period: Period, warmth: Warmth): BedLedger {
  const need = bedNeed(bed);
  const within = bed.supplies.filter(({ day }) => day >= period.fromDay && day < period.toDay);
  const carried = bed.supplies.filter((supply) => isCarried(supply, period, warmth));
  const counted = [...within, ...carried];
  const byKind = kindsOf(counted, period, warmth);
  const givenG = gramsOver(
    byKind.map(({ givenG: grams }) => grams),
    sum,
  );
  const liquidG = byKind.find(({ kind }) => kind === 'pour')?.givenG ?? {};
  const ceilingG = (one: Nutrient) => {
    let most = 0;
    for (const supply of counted) most += supply.ceilingG?.[one]?.high ?? 0;
    return most;
  };
  const missing: Partial<Record<Element, Range>> = {};
  const excess: Partial<Record<Element, Range>> = {};
  const share: Partial<Record<Nutrient, Range>> = {};
  const ceiling: Partial<Record<Nutrient, number>> = {};
  for (const one of NUTRIENTS) {
    const needed = need.needG[one];
    if (needed === undefined) continue;
    const given = givenG[one] ?? point(0);
    missing[one] = floorAt(difference(needed, given), 0);
    excess[one] = floorAt(difference(given, needed), 0);
    if (!(needed.likely >= LEAST_NEED_G)) continue;
    const most = ceilingG(one);
    const atMost = most === 0 ? 0 : (100 * most) / needed.low;
    ceiling[one] = atMost;
    // Bands of very lopsided figures spread wide in quadrature; what went in bounds them all the same.
    share[one] = capAt(shareOf(liquidG[one], needed), atMost);
  }
  return {
    name: bed.name,
    areaM2: bed.areaM2,
    need,
    givenG,
    carriedG: gramsOver(
      kindsOf(carried, period, warmth).map(({ givenG: grams }) => grams),
      sum,
    ),
    missingG: missing,
    excessG: excess,
    byKind,
    liquidG,
    liquidSharePercent: share,
    ceilingSharePercent: ceiling,
    dryKg: sum(within.flatMap(({ dryKg }) => (dryKg === undefined ? [] : [dryKg]))),
    unknownIn: unknownIn(counted),
    weeks: weeksOf({ bed, need, counted, period, warmth }),
  };
}

/**
 * The plot: beds added up. The crop tables and the batches are the same for all beds, so their errors go together and the
 * ends add straight.
 * @arithmetic
 */
export function plotLedger(beds: readonly BedLedger[]): PlotLedger {
  const over = (of: (bed: BedLedger) => Grams) => gramsOver(beds.map(of), sumTogether);
  const lacking = (one: Nutrient) => beds.filter((bed) => bed.need.needG[one] === undefined).map(({ name }) => name);
  const without = { n: lacking('n'), p: lacking('p'), k: lacking('k') };
  const needG = over(({ need }) => need.needG);
  const share: Partial<Record<Nutrient, Range>> = {};
  for (const one of NUTRIENTS) {
    const needed = needG[one];
    if (needed === undefined || !(needed.likely >= LEAST_NEED_G)) continue;
    const known = beds.filter((bed) => bed.need.needG[one] !== undefined);
    share[one] = shareOf(sumTogether(known.map(({ liquidG }) => liquidG[one] ?? point(0))), needed);
  }
  return {
    needG,
    givenG: over(({ givenG }) => givenG),
    missingG: over(({ missingG }) => missingG),
    excessG: over(({ excessG }) => excessG),
    liquidG: over(({ liquidG }) => liquidG),
    liquidSharePercent: share,
    without,
  };
}

/** A need below this is none: a share of it would be no number, and no balance weighs it. @practice */
const LEAST_NEED_G = 1e-6;

function shareOf(liquidG: Range | undefined, neededG: Range): Range {
  if (liquidG === undefined || liquidG.high === 0) return point(0);
  return scale(product([liquidG, inverse(neededG)]), 100);
}

function gramsOver(list: readonly Grams[], add: (ranges: readonly Range[]) => Range): Grams {
  const total: Partial<Record<Element, Range>> = {};
  for (const element of ELEMENTS) {
    const known = list.flatMap((grams) => grams[element] ?? []);
    if (known.length > 0) total[element] = add(known);
  }
  return total;
}

/** Each kind of supply by itself; acts of one kind rest on the same figures and err together: their ends add straight. */
function kindsOf(counted: readonly Supply[], period: Period, warmth: Warmth): readonly GivenBy[] {
  const kinds = new Map<SupplyKind, Partial<Record<Element, Sum>>>();
  for (const supply of counted) {
    let grams = kinds.get(supply.kind);
    if (grams === undefined) {
      grams = {};
      kinds.set(supply.kind, grams);
    }
    for (const element of ELEMENTS) {
      const free = countedG(supply, element, period, warmth);
      if (free !== undefined) grams[element] = added(grams[element], free);
    }
  }
  return [...kinds].map(([kind, givenG]) => ({ kind, givenG }));
}

/** Given before the period, and not all of it free by the first day. */
function isCarried({ day, pace }: Supply, { fromDay }: Period, warmth: Warmth): boolean {
  return day < fromDay && releasedFraction(pace, warmth(day, fromDay)).low < 1;
}

/** What an act counts for in a period: nitrogen by its release; of the others all, or what was left of them on the first day. */
function countedG(supply: Supply, element: Element, { fromDay, toDay }: Period, warmth: Warmth): Range | undefined {
  const all = supply.totalG[element];
  const isEarlier = supply.day < fromDay;
  if (element !== 'n') return all && isEarlier ? leftG(all, supply.pace, warmth(supply.day, fromDay)) : all;
  if (supply.pace === 'at-once') return all;
  const free = freeNitrogenG(supply, warmth(supply.day, toDay));
  const before = isEarlier ? freeNitrogenG(supply, warmth(supply.day, fromDay)) : undefined;
  return free && before ? stepOf(before, free) : free;
}

/** A band that is still being added up. */
interface Sum {
  low: number;
  likely: number;
  high: number;
}

function added(to: Sum | undefined, { low, likely, high }: Range): Sum {
  if (to === undefined) return { low, likely, high };
  to.low += low;
  to.likely += likely;
  to.high += high;
  return to;
}

function unknownIn(counted: readonly Supply[]): BedLedger['unknownIn'] {
  const seen = new Map<string, { readonly element: Nutrient; readonly what: string }>();
  for (const { what, totalG } of counted) {
    for (const element of NUTRIENTS) {
      if (totalG[element] === undefined) seen.set(`${element} ${what}`, { element, what });
    }
  }
  return [...seen.values()];
}

interface WeekAsk {
  readonly bed: LedgerBed;
  readonly need: BedNeed;
  readonly counted: readonly Supply[];
  readonly period: Period;
  readonly warmth: Warmth;
}

/** Week by week: the crop's target over its stages, and what comes free between the week's ends. */
function weeksOf({ bed, need, counted, period, warmth }: WeekAsk): readonly Week[] {
  const given = freeByWeek({ counted, period, warmth });
  const planted = bed.plantedDay ?? period.fromDay;
  const seasonDays = period.toDay - planted;
  const target = need.cropG.n;
  const takenUp = (day: number) => {
    let total = 0;
    for (const crop of bed.crops) total += takenUpFraction(crop, day - planted, seasonDays);
    return bed.crops.length > 0 ? total / bed.crops.length : 0;
  };
  let before = takenUp(period.fromDay);
  return given.map((givenNG, i) => {
    const fromDay = period.fromDay + i * WEEK_DAYS;
    const after = takenUp(Math.min(period.toDay, fromDay + WEEK_DAYS));
    const needNG = target && scale(target, after - before);
    before = after;
    return { fromDay, needNG, givenNG };
  });
}

/** Nitrogen free in each week, each act followed until all of it is out. */
function freeByWeek({ counted, period, warmth }: Pick<WeekAsk, 'counted' | 'period' | 'warmth'>): readonly Range[] {
  const weeks = Array.from({ length: Math.ceil((period.toDay - period.fromDay) / WEEK_DAYS) }, () => ({
    low: 0,
    likely: 0,
    high: 0,
  }));
  for (const supply of counted) {
    const isEarlier = supply.day < period.fromDay;
    let before = (isEarlier && freeNitrogenG(supply, warmth(supply.day, period.fromDay))) || point(0);
    const first = isEarlier ? 0 : Math.floor((supply.day - period.fromDay) / WEEK_DAYS);
    for (let i = first; i < weeks.length; i++) {
      const week = weeks[i];
      const degreeDays = warmth(supply.day, Math.min(period.toDay, period.fromDay + (i + 1) * WEEK_DAYS));
      const after = freeNitrogenG(supply, degreeDays);
      if (week === undefined || after === undefined) break;
      const step = stepOf(before, after);
      week.low += step.low;
      week.likely += step.likely;
      week.high += step.high;
      before = after;
      if (releasedFraction(supply.pace, degreeDays).low >= 1) break;
    }
  }
  return weeks;
}
