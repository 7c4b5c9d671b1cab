// Whether a leaf may be sprayed in this hour, and whether a bed may be poured on: one set of limits for wind, still
// air, warmth, rain, drying and soil. What nobody told keeps the window from being open. What the finding reads like
// is words; whether a crop may be sprayed at all is rules/can.ts.

import { point, type Range } from '../quantity/range.ts';
import { sprayFigure } from './spray-figures.ts';
import { deltaT, FORMULA_REACH } from './wet-bulb.ts';

/** The air as seen where no wind was told. */
export type AirSeen = 'still' | 'leaves-rustle' | 'twigs-move' | 'branches-move';

/** One hour, as told or typed from a forecast; whatever is missing or not a number counts as not told. */
export interface SprayHour {
  readonly windMPerS?: number | undefined;
  readonly airSeen?: AirSeen | undefined;
  readonly temperatureC?: number | undefined;
  readonly humidityPercent?: number | undefined;
  /** Hours from now until the next rain; Infinity when none is forecast. */
  readonly untilRainH?: number | undefined;
  /** Below 0 before sunrise. */
  readonly sinceSunriseH?: number | undefined;
  /** Below 0 after sunset. */
  readonly untilSunsetH?: number | undefined;
  readonly overcast?: boolean | undefined;
  /** The least wind of the night past. */
  readonly leastNightWindMPerS?: number | undefined;
  /** Warmer than the lowest of the night by so much. */
  readonly risenC?: number | undefined;
}

export type SprayReason =
  | 'windy'
  | 'still-air'
  | 'inversion'
  | 'hot'
  | 'frost'
  | 'hot-by-the-hour'
  | 'rain-soon'
  | 'dries-too-slowly'
  | 'dries-too-fast';
export type SprayInput = 'wind' | 'temperature' | 'rain' | 'sun' | 'humidity';

/** The answer for one hour. */
export interface SprayWindow {
  readonly answer: 'open' | 'closed' | 'unknown';
  /** What closes it; empty unless closed. */
  readonly reasons: readonly SprayReason[];
  /** Within 8 to 10 °C, or so near an end that the formula's error crosses it. */
  readonly dryingNearLimit: boolean;
  /** What nobody told. All but the humidity keep the window from being open. */
  readonly notTold: readonly SprayInput[];
  /** What was judged by a rule of thumb, as no weather was told. */
  readonly byThumb: readonly SprayInput[];
  readonly deltaTC?: Range;
}

const KM_PER_H = 3.6;
const told = (value: number | undefined): value is number => value !== undefined && !Number.isNaN(value);
const at = (id: string, quantity: string) => sprayFigure(id, quantity).likely;

/**
 * Limits of spraying, each with its source in data/spray.csv.
 * @source grdc-spray-manual-2025 10.8; wind and delta-T of grdc-spray-manual-drying
 * @practice the half hour beyond the hour after sunrise that 10.8 gives is our caution
 */
export const SPRAY_LIMITS = {
  leastWindKmPerH: at('wind', 'leastKmPerH'),
  mostWindKmPerH: at('wind', 'mostKmPerH'),
  afterSunriseH: at('inversion', 'afterSunriseH'),
  beforeSunsetH: at('inversion', 'beforeSunsetH'),
  stirringWindKmPerH: at('inversion', 'stirringKmPerH'),
  risenC: at('inversion', 'risenC'),
  belowC: at('warmth', 'belowC'),
  aboveC: at('warmth', 'aboveC'),
  dryH: at('rain', 'dryH'),
  leastDeltaTC: at('delta-t', 'leastC'),
  mostDeltaTC: at('delta-t', 'mostC'),
  cautionMostDeltaTC: at('delta-t', 'cautionMostC'),
  coolMorningH: at('morning', 'mostAfterSunriseH'),
  heavyRainMm: at('heavy-rain', 'leastMm'),
  heavyRainWithinH: at('heavy-rain', 'withinH'),
} as const;

/** Wind in km/h to a millionth, so that what was typed as 15 km/h stays 15. @arithmetic */
export function windKmPerHOf(windMPerS: number): number {
  return Number((windMPerS * KM_PER_H).toFixed(6));
}

/**
 * May a leaf be sprayed in this hour? Open: wind 3 to 15 km/h, no inversion to be expected, over 0 and under 25 °C, dry for 6 h
 * and, where the humidity is told, delta-T 2 to 10 °C. Closed: one of them is known not to hold. Unknown: none is, but
 * one was not told. Without a wind the air as seen stands in (Beaufort); without a temperature the cool of the morning.
 * @source grdc-spray-manual-2025 10.8; wind and delta-T of grdc-spray-manual-drying
 */
export function sprayWindow(hour: SprayHour): SprayWindow {
  const parts = [wind(hour), sun(hour), warmth(hour), rain(hour), drying(hour)];
  const reasons = parts.flatMap((part) => part.reasons ?? []);
  const notTold = parts.flatMap((part) => part.notTold ?? []);
  const deltaTC = deltaTOf(hour);
  const open = notTold.every((input) => input === 'humidity');
  return {
    answer: reasons.length > 0 ? 'closed' : open ? 'open' : 'unknown',
    reasons,
    dryingNearLimit: deltaTC !== undefined && nearLimit(deltaTC),
    notTold,
    byThumb: parts.flatMap((part) => part.byThumb ?? []),
    ...(deltaTC && { deltaTC }),
  };
}

/** What one look at the hour finds. */
interface Part {
  readonly reasons?: readonly SprayReason[];
  readonly notTold?: readonly SprayInput[];
  readonly byThumb?: readonly SprayInput[];
}

function wind({ windMPerS, airSeen }: SprayHour): Part {
  if (told(windMPerS)) return { reasons: windReasons(point(windKmPerHOf(windMPerS))) };
  if (airSeen === undefined) return { notTold: ['wind'] };
  return { reasons: windReasons(sprayFigure(`air-${airSeen}`, 'windKmPerH')), byThumb: ['wind'] };
}

function windReasons({ low, high }: Range): readonly SprayReason[] {
  if (!(low >= SPRAY_LIMITS.leastWindKmPerH)) return ['still-air'];
  return high <= SPRAY_LIMITS.mostWindKmPerH ? [] : ['windy'];
}

/** Where no air layer was seen, the sun says when one is to be expected. */
function sun(hour: SprayHour): Part {
  const { sinceSunriseH, untilSunsetH, overcast, leastNightWindMPerS, risenC } = hour;
  if (overcast === true) return {};
  if (!(told(sinceSunriseH) && told(untilSunsetH))) return { notTold: ['sun'] };
  if (!(untilSunsetH >= SPRAY_LIMITS.beforeSunsetH)) return { reasons: ['inversion'], byThumb: ['sun'] };
  if (sinceSunriseH >= SPRAY_LIMITS.afterSunriseH) return { byThumb: ['sun'] };
  if (told(leastNightWindMPerS) && windKmPerHOf(leastNightWindMPerS) > SPRAY_LIMITS.stirringWindKmPerH) return {};
  if (told(risenC) && risenC >= SPRAY_LIMITS.risenC) return {};
  return { reasons: ['inversion'], byThumb: ['sun'] };
}

function warmth({ temperatureC, sinceSunriseH }: SprayHour): Part {
  if (told(temperatureC)) {
    if (!(temperatureC > SPRAY_LIMITS.aboveC)) return { reasons: ['frost'] };
    return { reasons: temperatureC < SPRAY_LIMITS.belowC ? [] : ['hot'] };
  }
  if (!told(sinceSunriseH)) return { notTold: ['temperature'] };
  const cool = sinceSunriseH <= SPRAY_LIMITS.coolMorningH;
  return { reasons: cool ? [] : ['hot-by-the-hour'], byThumb: ['temperature'] };
}

function rain({ untilRainH }: SprayHour): Part {
  if (!told(untilRainH)) return { notTold: ['rain'] };
  return { reasons: untilRainH >= SPRAY_LIMITS.dryH ? [] : ['rain-soon'] };
}

function deltaTOf({ temperatureC, humidityPercent }: SprayHour): Range | undefined {
  if (!(told(temperatureC) && told(humidityPercent))) return undefined;
  const found = deltaT({ temperatureC, humidityPercent });
  return told(found.likely) ? found : undefined;
}

function drying(hour: SprayHour): Part {
  const found = deltaTOf(hour);
  if (found === undefined) return beyondFormula(hour);
  if (!(found.likely >= SPRAY_LIMITS.leastDeltaTC)) return { reasons: ['dries-too-slowly'] };
  return { reasons: found.likely <= SPRAY_LIMITS.cautionMostDeltaTC ? [] : ['dries-too-fast'] };
}

/** Air as told that the formula does not reach: fog and the driest air need none; frost and great heat close anyway. */
function beyondFormula({ temperatureC, humidityPercent }: SprayHour): Part {
  if (!(told(temperatureC) && told(humidityPercent))) return { notTold: ['humidity'] };
  if (humidityPercent > FORMULA_REACH.mostPercent) return { reasons: ['dries-too-slowly'] };
  return humidityPercent < FORMULA_REACH.leastPercent ? { reasons: ['dries-too-fast'] } : {};
}

function nearLimit({ low, likely, high }: Range): boolean {
  const { leastDeltaTC, mostDeltaTC, cautionMostDeltaTC } = SPRAY_LIMITS;
  return !(low >= leastDeltaTC && likely <= mostDeltaTC && high <= cautionMostDeltaTC);
}

/**
 * The first hour of a row that is open, as its place in the row; undefined when none is.
 * @arithmetic search
 */
export function nextSprayHour(hours: readonly SprayHour[]): number | undefined {
  const found = hours.findIndex((hour) => sprayWindow(hour).answer === 'open');
  return found === -1 ? undefined : found;
}

/** Soil as felt, and the rain told for the hours ahead. */
export interface PourHour {
  readonly soil?: 'moist' | 'dry' | 'cracked' | 'soaked' | undefined;
  /** Rain of the next 6 hours; 0 when none is forecast. */
  readonly rainAheadMm?: number | undefined;
  /** Nothing where nobody told: then the soil and the rain alone are asked. */
  readonly temperatureC?: number | undefined;
  readonly windMPerS?: number | undefined;
}

export interface PourWindow {
  readonly answer: 'open' | 'closed' | 'unknown';
  readonly reasons: readonly ('soil-dry' | 'soil-soaked' | 'heavy-rain-soon' | 'hot')[];
  /** Over the most for a spray: what leaves a rose lands elsewhere. It closes nothing on the soil. */
  readonly windy: boolean;
  readonly notTold: readonly ('soil' | 'rain')[];
}

/**
 * May the soil be poured on in this hour? Open on moist soil with less than 10 mm of rain in the next 6 hours and, where
 * it is told, under 25 °C. On dry or cracked soil the feed runs past the roots, on soaked soil and before heavy rain it
 * runs off.
 * @practice our caution, no source
 */
export function pourWindow({ soil, rainAheadMm, temperatureC, windMPerS }: PourHour): PourWindow {
  const reasons: PourWindow['reasons'][number][] = [];
  if (soil === 'dry' || soil === 'cracked') reasons.push('soil-dry');
  if (soil === 'soaked') reasons.push('soil-soaked');
  if (told(rainAheadMm) && !(rainAheadMm < SPRAY_LIMITS.heavyRainMm)) reasons.push('heavy-rain-soon');
  if (temperatureC !== undefined && !(temperatureC < SPRAY_LIMITS.belowC)) reasons.push('hot');
  const windy = windMPerS !== undefined && !(windKmPerHOf(windMPerS) <= SPRAY_LIMITS.mostWindKmPerH);
  const notTold: PourWindow['notTold'][number][] = [];
  if (soil === undefined) notTold.push('soil');
  if (!told(rainAheadMm)) notTold.push('rain');
  const answer = reasons.length > 0 ? 'closed' : notTold.length > 0 ? 'unknown' : 'open';
  return { answer, reasons, windy, notTold };
}
