// Set L: published days for a five-log kill beside the days our hold asks. Where a paper tells the temperature, our
// hold there must not be shorter; where it tells only a span, neither end of ours may be shorter than the same end of
// theirs. Above the pH at which our hold begins a batch is never held, so no days compare.

import { holdDays } from '#engine/souring/lines.ts';
import { observedSpan } from './compare.ts';
import { type Observed, readConditions, readObserved } from './read.ts';

/** Our hold counts only at or below this pH. */
const HELD_AT_PH = 4.0;
/** Our hold is shortest from here upwards, and longest here; colder than that, no time is long enough. */
const WARMEST_C = 20;
const COLDEST_C = 10;

export interface HoldCompared {
  readonly row: Observed;
  readonly ph: number | undefined;
  readonly temperatureC: number | undefined;
  readonly oursShortestDays: number;
  readonly oursLongestDays: number;
  /** 'none' where our hold gives no credit at that pH. */
  readonly verdict: 'not shorter' | 'shorter' | 'none';
}

/**
 * Days on a straight line between the two ends of the brines, at the pH where our hold begins. The abstract gives the
 * ends and that days rise with pH, no line and no temperature: a reading of ours, shown and not scored.
 */
export function brineLineDays(compared: readonly HoldCompared[]): number {
  const end = (batch: string) => {
    const found = compared.find(({ row }) => row.batch === batch);
    if (found?.ph === undefined || found.row.value === undefined) throw new Error(`set L has no ${batch}`);
    return { ph: found.ph, days: found.row.value };
  };
  const sour = end('brine-ph-3-2');
  const mild = end('brine-ph-4-6');
  return sour.days + ((HELD_AT_PH - sour.ph) / (mild.ph - sour.ph)) * (mild.days - sour.days);
}

export function compareHold(): readonly HoldCompared[] {
  const batches = readConditions().filter(({ set }) => set === 'L');
  return readObserved()
    .filter(({ set }) => set === 'L')
    .map((row) => {
      const of = batches.find(({ batch }) => batch === row.batch)?.of;
      const ph = of?.get('ph')?.likely;
      const temperatureC = of?.get('temperatureC')?.likely;
      const oursShortestDays = holdDays(temperatureC ?? WARMEST_C);
      const oursLongestDays = holdDays(temperatureC ?? COLDEST_C);
      return { row, ph, temperatureC, oursShortestDays, oursLongestDays, verdict: verdictOf() };

      function verdictOf(): HoldCompared['verdict'] {
        if (ph !== undefined && ph > HELD_AT_PH) return 'none';
        const shortest = row.value ?? observedSpan(row).low;
        const longest = row.value ?? observedSpan(row).high;
        const enough =
          temperatureC === undefined
            ? oursShortestDays >= shortest && oursLongestDays >= longest
            : oursShortestDays >= longest;
        return enough ? 'not shorter' : 'shorter';
      }
    });
}
