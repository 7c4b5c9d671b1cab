// The usual warmth of garden soil on a day, by latitude and month alone: for days of which no temperature was told; and what
// is taken where not even a place was told. Which days were told, and where the plot lies, is src/plot/place.

import { floorAt, type Range } from '../quantity/range.ts';
import { usualBand } from '../scraps/usual.ts';

/** Up to this latitude the mean of the year hardly falls. @practice our own, no source */
const WARM_BELT_DEG = 15;
/** Mean of the year there, at the height of the sea. @practice our own, no source */
const WARM_BELT_C = 27;
/** Colder for each degree further from it. @practice our own, no source: a straight line through usual means of the year on land */
const COLDER_C_PER_DEG = 0.5;
/** Half the way from the coldest to the warmest day of the year, for each degree: more land lies north. @practice our own, no source */
const SWING_C_PER_DEG = { north: 0.18, south: 0.12 } as const;
/** Height above the sea, coast or inland, one year and another. @practice our own, no source */
const BAND_C = 6;
/** Day of the year when the soil is coldest, north, counted from 0: a month after midwinter. @practice our own, no source */
const COLDEST_DAY = 24;
const YEAR_DAYS = 365.2425;

/** Taken where neither a temperature nor a place was told. @practice our caution, no source: cool to warm garden soil in the season */
export const UNTOLD_SOIL_C: Range = usualBand('soil.temperatureC');

/** Taken where only the side of the equator was told: where most plots lie. @practice our own, no source */
export const UNTOLD_LATITUDE_DEG = { north: 45, south: -35 } as const;

/**
 * Usual warmth of the soil a plant roots in, °C.
 *
 *   mean = 27 − 0.5 · max(0, |latitude| − 15);  soil = mean − swing · |latitude| · cos(2π (day − coldest) / year), ± 6, not below 0
 *
 * South of the equator the coldest day is half a year later. No frost: nothing rots below 0 °C, so colder soil counts as 0.
 * @range latitude -90 to 90; on high ground it is colder than this by about 6 °C for 1000 m
 * @practice our own, no source: any temperature told comes before it
 */
export function usualSoilC({ latitudeDeg, day }: { readonly latitudeDeg: number; readonly day: number }): Range {
  const fromEquatorDeg = Math.abs(latitudeDeg);
  const isSouth = latitudeDeg < 0;
  const meanC = WARM_BELT_C - COLDER_C_PER_DEG * Math.max(0, fromEquatorDeg - WARM_BELT_DEG);
  const swingC = SWING_C_PER_DEG[isSouth ? 'south' : 'north'] * fromEquatorDeg;
  const coldestDay = COLDEST_DAY + (isSouth ? YEAR_DAYS / 2 : 0);
  const likely = meanC - swingC * Math.cos((2 * Math.PI * (day - coldestDay)) / YEAR_DAYS);
  return floorAt({ low: likely - BAND_C, likely, high: likely + BAND_C }, 0);
}
