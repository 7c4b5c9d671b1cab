// How long a bottle may stand before it is used first: a band, because the sources disagree, and no promise.
// A rising pH or a film ends it at once, whatever the date. Pressure in the bottle is souring/gas.

import { type Range, range } from '../quantity/range.ts';
import { fermentAt } from './extraction.ts';

/** At or below this pH a feed keeps; above it no source gives a time. @memory */
export const KEEPS_AT_PH = 4;

/** Longest any source goes: kept to the next summer. @source rhs-fertilisers home-made liquid feeds */
export const NEXT_SUMMER_DAYS = 365;

/** Days for the living bacteria to fall to a tenth, the short end of each band, by temperature. @memory */
export const TENFOLD_DAYS: readonly { readonly temperatureC: number; readonly days: number }[] = [
  { temperatureC: 4, days: 30 },
  { temperatureC: 20, days: 10 },
  { temperatureC: 30, days: 4 },
];

/** 'keeps' = sour and kept · 'short' = sour, but not enough to keep · 'none' = not a feed to keep. */
export type Keeping = 'keeps' | 'short' | 'none';

export interface UseFirst {
  /** Days from straining. */
  readonly days: Range;
  readonly keeping: Keeping;
  /** Days for the living bacteria to fall to a tenth at this warmth. */
  readonly tenfoldDays: number;
}

/**
 * Days for the living bacteria to fall to a tenth at a temperature.
 * @range below 4 °C as at 4; above 30 °C the line is drawn on and falls further
 * @memory straight lines of ln(days) between 4, 20 and 30 °C
 */
export function tenfoldDays(temperatureC: number): number {
  const [cold, mild, warm] = TENFOLD_DAYS as readonly [Point, Point, Point];
  const from = temperatureC < mild.temperatureC ? cold : mild;
  const to = temperatureC < mild.temperatureC ? mild : warm;
  const at = Math.max(cold.temperatureC, temperatureC);
  const share = (at - from.temperatureC) / (to.temperatureC - from.temperatureC);
  return from.days * (to.days / from.days) ** share;
}

type Point = (typeof TENFOLD_DAYS)[number];

/**
 * Use-first days from straining.
 *
 *   kept:  low = two tenfold falls of the living bacteria;  high = next summer, 365 d;  likely = √(low · high)
 *   short of pH 4.0, up to the acid-food line 4.6:  0, one and two tenfold falls
 *   above 4.6, a batch that is lost or unknown, or a pH not known:  0
 *
 * Low and high stand for two schools: the bacteria fade in weeks, the nutrients stay as long as the feed
 * stays sour. The middle is our own choice.
 * @source rhs-fertilisers the high end; @memory the low end; the middle is our caution, no source
 */
export function useFirst(bottle: {
  readonly finalPh: number;
  readonly temperatureC: number;
  /** False for a batch that is lost or unknown. */
  readonly sound: boolean;
}): UseFirst {
  const tenfold = tenfoldDays(bottle.temperatureC);
  const twice = 2 * tenfold;
  if (bottle.sound && bottle.finalPh <= KEEPS_AT_PH) {
    return {
      days: range(twice, Math.sqrt(twice * NEXT_SUMMER_DAYS), NEXT_SUMMER_DAYS),
      keeping: 'keeps',
      tenfoldDays: tenfold,
    };
  }
  if (bottle.sound && fermentAt(bottle.finalPh) === 'acid') {
    return { days: range(0, tenfold, twice), keeping: 'short', tenfoldDays: tenfold };
  }
  return { days: range(0, 0, 0), keeping: 'none', tenfoldDays: tenfold };
}
