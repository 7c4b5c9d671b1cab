// Warmth of the soil of a plot, day by day: as told, else what is usual at that latitude in that month. The one place where
// a sum asks for it. Warmth of a batch in its vessel stands with the batch.

import { degreeDays } from '#engine/ground/degree-days.ts';
import type { Warmth } from '#engine/ground/ledger.ts';
import { UNTOLD_LATITUDE_DEG, UNTOLD_SOIL_C, usualSoilC } from '#engine/ground/usual-soil.ts';
import { point, type Range, scale, sumTogether } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import { hemisphereOf } from './hemisphere.ts';

/** One day's warmth as told. */
export interface WarmDay {
  readonly day: number;
  readonly lowC: number;
  readonly highC: number;
}

/** Warmth of a day of which nothing was told. */
export type UsualWarmth = (day: number) => Range;

/** The first day, and the day after the last. */
export interface Days {
  readonly fromDay: number;
  readonly toDay: number;
}

/** What is usual at the plot, by latitude and month. */
export function usualWarmthOf(facts: Plot['facts']): UsualWarmth {
  const side = hemisphereOf(facts);
  const latitudeDeg = facts.latitudeDeg ?? (side && UNTOLD_LATITUDE_DEG[side]);
  return (day) => (latitudeDeg === undefined ? UNTOLD_SOIL_C : usualSoilC({ latitudeDeg, day }));
}

/** Days of the weather as seen, with both a low and a high. */
export function warmDaysOf(plot: Plot, { fromDay, toDay }: Days): readonly WarmDay[] {
  return plot.weather
    .filter(({ body }) => body.what === 'seen')
    .flatMap(({ body }) => body.days)
    .flatMap(({ on, lowC, highC }) =>
      lowC === undefined || highC === undefined ? [] : [{ day: momentOf(on).dateDay, lowC, highC }],
    )
    .filter(({ day }) => day >= fromDay && day < toDay);
}

/** Mean of the usual warmth over some days; that of the first day where there are none. @arithmetic ends by themselves */
export function meanUsualC(usual: UsualWarmth, { fromDay, toDay }: Days): Range {
  const count = Math.max(1, toDay - fromDay);
  const each = Array.from({ length: count }, (_, i) => usual(fromDay + i));
  return scale(sumTogether(each), 1 / count);
}

/** Degree days over 0 °C between two days, from the days told; days that are missing take the usual warmth. */
export function warmthOf({ fromDay, toDay }: Days, days: readonly WarmDay[], usual: UsualWarmth): Warmth {
  const told = new Map(days.map(({ day, lowC, highC }) => [day, { lowC, highC }]));
  const toDate: Range[] = [point(0)];
  for (let day = fromDay; day < toDay; day++) {
    const before = toDate.at(-1) ?? point(0);
    const one = told.get(day);
    const known = one && degreeDays({ ...one, baseC: 0, way: 'mean-then-base' }).degreeDays;
    const add = known === undefined ? usual(day) : point(known);
    toDate.push({
      low: before.low + Math.max(0, add.low),
      likely: before.likely + Math.max(0, add.likely),
      high: before.high + Math.max(0, add.high),
    });
  }
  const at = (day: number) => toDate[Math.min(toDate.length - 1, Math.max(0, day - fromDay))] ?? point(0);
  return (from, to) => {
    const [a, b] = [at(from), at(to)];
    return {
      low: Math.max(0, b.low - a.low),
      likely: Math.max(0, b.likely - a.likely),
      high: Math.max(0, b.high - a.high),
    };
  };
}
