// How fast a drop dries: the wet-bulb temperature from warmth and humidity, and how far the air stands above it
// (delta-T). Whether that leaves a spray its time on the leaf is spray-window.ts.

import { point, type Range } from '../quantity/range.ts';

/** Air as told: its temperature, and its relative humidity. */
export interface Air {
  readonly temperatureC: number;
  readonly humidityPercent: number;
}

/** How far the formula strays from the true wet bulb: -1 to +0.65 °C; the wider end is taken for both sides. */
const ERROR_C = 1;
/** Where the formula is used. Below 0 °C it is published too, but fails in air both cold and dry. */
export const FORMULA_REACH = { leastPercent: 5, mostPercent: 99, leastC: 0, mostC: 50 } as const;
const NOT_KNOWN: Range = point(Number.NaN);

/**
 * Wet-bulb temperature of air at sea level.
 *
 *   Tw = T·atan(0.151977·√(H + 8.313659)) + atan(T + H) − atan(H − 1.676331)
 *        + 0.00391838·H^1.5·atan(0.023101·H) − 4.686035
 *
 * Limits: 5 to 99 % and -20 to 50 °C, and not air both cold and dry; outside them no number is given.
 * @returns °C, with the error of the formula; never above the air's own temperature
 * @source stull-2011 equation 1
 * @deviates the published errors of -1 and +0.65 °C are taken as 1 °C either way; no frost, where cold and dry meet
 * @checked worked/stull-2011.csv
 */
export function wetBulb({ temperatureC, humidityPercent }: Air): Range {
  const { leastPercent, mostPercent, leastC, mostC } = FORMULA_REACH;
  const reached = humidityPercent >= leastPercent && humidityPercent <= mostPercent;
  if (!(reached && temperatureC >= leastC && temperatureC <= mostC)) return NOT_KNOWN;
  const likely =
    temperatureC * Math.atan(0.151977 * Math.sqrt(humidityPercent + 8.313659)) +
    Math.atan(temperatureC + humidityPercent) -
    Math.atan(humidityPercent - 1.676331) +
    0.00391838 * humidityPercent ** 1.5 * Math.atan(0.023101 * humidityPercent) -
    4.686035;
  const upTo = (valueC: number) => Math.min(valueC, temperatureC);
  return { low: upTo(likely - ERROR_C), likely: upTo(likely), high: upTo(likely + ERROR_C) };
}

/**
 * Delta-T: how far the air stands above its wet bulb, `T − Tw`. Small: drops hang; large: they dry before they work.
 * @returns °C, with the error of the wet bulb; not below 0
 * @source stull-2011 equation 1
 */
export function deltaT(air: Air): Range {
  const { low, likely, high } = wetBulb(air);
  return { low: air.temperatureC - high, likely: air.temperatureC - likely, high: air.temperatureC - low };
}
