// How fast a heap cools towards the air, fitted to its own log: never preset, since a bin of 0.3 m³ and a heap of 1 m³
// differ threefold. A heap that is turned or fed heats anew, so each fall is fitted by itself.

import type { LogDay } from './log.ts';

export interface Cooling {
  /** Days in which the gap to the air shrinks to 37 %. */
  readonly tauDays: number;
  readonly fromDay: number;
  readonly toDay: number;
  readonly readingsCount: number;
  /** Root mean square of what the fit misses. */
  readonly missC: number;
}

/** Readings that a fit needs: fewer tell no curve. @practice */
const LEAST_READINGS = 4;
/** A gap to the air smaller than this is within the error of a probe. @practice */
const LEAST_GAP_C = 2;

/**
 * Time constant of the last fall of the core temperature, by Newton's law.
 *
 *   T(t) = Ta + (T0 − Ta) e^(−t/τ):  ln(T − Ta) is a straight line of slope −1/τ, fitted by least squares
 *
 * Readings from the highest of the last fall on, until a turning, a feeding or the end. Each point weighs as the square
 * of its gap, since the logarithm stretches the errors of small ones.
 * @returns undefined where fewer than four readings fall, or they do not fall
 * @source newton-1701
 */
export function coolingOf(days: readonly LogDay[], airC: number): Cooling | undefined {
  const last = days.findLastIndex(({ turned, fed }) => turned || fed);
  const after = days.slice(Math.max(0, last));
  const read = after.flatMap(({ day, coreC }) => (coreC === undefined ? [] : [{ day, coreC }]));
  const peak = read.reduce((best, one, i) => (one.coreC > (read[best]?.coreC ?? -Infinity) ? i : best), 0);
  const falling = read.slice(peak).filter(({ coreC }) => coreC - airC >= LEAST_GAP_C);
  if (!(falling.length >= LEAST_READINGS)) return undefined;
  let [w, wt, wy] = [0, 0, 0];
  const points = falling.map(({ day, coreC }) => ({ t: day, y: Math.log(coreC - airC), weight: (coreC - airC) ** 2 }));
  for (const { t, y, weight } of points) [w, wt, wy] = [w + weight, wt + weight * t, wy + weight * y];
  const [meanT, meanY] = [wt / w, wy / w];
  let [tt, ty] = [0, 0];
  for (const { t, y, weight } of points) {
    tt += weight * (t - meanT) ** 2;
    ty += weight * (t - meanT) * (y - meanY);
  }
  const slope = ty / tt;
  if (!(slope < 0)) return undefined;
  const at = (day: number) => airC + Math.exp(meanY + slope * (day - meanT));
  const square = falling.reduce((sum, { day, coreC }) => sum + (coreC - at(day)) ** 2, 0);
  return {
    tauDays: -1 / slope,
    fromDay: falling[0]?.day ?? Number.NaN,
    toDay: falling.at(-1)?.day ?? Number.NaN,
    readingsCount: falling.length,
    missC: Math.sqrt(square / falling.length),
  };
}
