// The lines in time that a batch is held against: by when it ought to be sour (alarm lines), and how long it
// must stay sour before it may go near a crop eaten raw (hold). Both run with the mean temperature, or by the hour
// with the temperatures as they were.

/** Two lines of alarm: above `ph` later than `days` is slow. */
export interface AlarmLine {
  readonly ph: number;
  readonly days: number;
}

/** At or below this a batch may be called ready. @practice our caution, no source: silage is stable near it */
export const READY_PH = 4.2;
/** The readings that make a batch ready lie so far apart. @practice our caution, no source */
export const READY_APART_DAYS = 2;
/** At and below this the clock of the hold runs. @source breidt-caldwell-2011 abstract: brines of pH 3.2 to 4.6 */
export const HELD_PH = 4.0;

const LINES = [
  { ph: 5.0, daysAt20C: 3, daysAt12C: 5 },
  { ph: 4.6, daysAt20C: 5, daysAt12C: 9 },
] as const;

/**
 * By when a batch of this mean temperature ought to have passed pH 5.0 and pH 4.6.
 *
 *   t = t20 · (t12 / t20)^((20 − T) / 8)
 *
 * @range above 20 °C the line of 20 °C holds, because none is set for warmer batches; below 12 °C the curve
 *   goes on; a temperature that is not known gives lines that are always passed
 * @returns days since filling, for each line
 * @practice our caution, no source: drawn from a fermentation model at 12 and 20 °C, not from a trial of such batches
 */
export function alarmLines(temperatureC: number): readonly AlarmLine[] {
  return LINES.map((line) => ({ ph: line.ph, days: lineDays(line, temperatureC) }));
}

function lineDays({ daysAt20C, daysAt12C }: (typeof LINES)[number], temperatureC: number): number {
  return daysAt20C * (daysAt12C / daysAt20C) ** ((20 - Math.min(temperatureC, 20)) / 8);
}

/**
 * By when a batch ought to have passed pH 5.0 and pH 4.6, by the temperatures as they were: each hour counts for what
 * it is worth at its own temperature.
 *
 *   Σ Δt / t(T) = 1
 *
 * @range as alarmLines; after the last hour told, the mean of its last day goes on; an hour not known before the line
 *   gives a line that is always passed
 * @returns days since filling, for each line
 * @practice our caution, no source: the lines of alarmLines, added up
 */
export function alarmLinesOver(hourlyC: Float64Array): readonly AlarmLine[] {
  return LINES.map((line) => ({ ph: line.ph, days: doneOn(hourlyC, 0, (c) => 1 / lineDays(line, c)) }));
}

/**
 * The day on which a hold that began on `sinceDay` is done, by the temperatures as they were: each hour counts for what
 * it is worth at its own temperature, and none below 10 °C.
 *
 *   Σ Δt / holdDays(T) = 1
 *
 * @range after the last hour told, the mean of its last day goes on
 * @returns days since filling; infinity where it never is
 * @source breidt-caldwell-2011 abstract
 * @deviates the days by temperature are our reading: see holdDays
 */
export function holdDoneOn(hourlyC: Float64Array, sinceDay: number): number {
  return doneOn(hourlyC, sinceDay, (c) => 1 / holdDays(c));
}

/** The day on which a clock that runs at `perDay` of the temperature has gone once round. */
function doneOn(hourlyC: Float64Array, fromDay: number, perDay: (temperatureC: number) => number): number {
  let left = 1;
  let day = fromDay;
  for (let hour = Math.floor(fromDay * 24); hour < hourlyC.length; hour++) {
    const untilDay = (hour + 1) / 24;
    const pace = perDay(hourlyC[hour] as number);
    const done = (untilDay - day) * pace;
    if (!(done < left)) return day + left / pace;
    left -= done;
    day = untilDay;
  }
  return day + left / perDay(lastMeanC(hourlyC));
}

/** Mean of the last day of a series. */
function lastMeanC(hourlyC: Float64Array): number {
  const some = hourlyC.subarray(Math.max(0, hourlyC.length - 24));
  return some.reduce((sum, one) => sum + one, 0) / some.length;
}

/** Days of the hold by temperature, the coldest first: see holdDays. @source breidt-caldwell-2011 @deviates our reading */
const HOLD = [
  { temperatureC: 10, days: 39 },
  { temperatureC: 15, days: 24 },
  { temperatureC: 20, days: 15 },
] as const;
/** Below this no time of holding is known: at 5 °C sour alone killed nothing. @practice our caution: putnam-2018 */
export const COLDEST_HOLD_C = HOLD[0].temperatureC;

/**
 * How long a batch must stay at or below pH 4.0 before it counts as held.
 *
 *   15 d at 20 °C and above, 24 d at 15 °C, 39 d at 10 °C, straight lines between
 *
 * Published: a five-log kill of Escherichia coli O157:H7 took 3 days in fermented brine of pH 3.2 and 24 at pH 4.6, the
 * temperature not told in the summary seen (breidt-caldwell-2011); it took 1.4 days at 25 °C and 5.7 at 10 °C in
 * acidified cucumbers (breidt-2007); none fell within four days at 5 °C and pH 3.8 by acid alone (putnam-2018).
 * Our reading: a straight line between the brines gives 3 + 21 · 0.8 / 1.4 = 15 days at pH 4.0, which we take for 20 °C.
 * Colder, (5.7 / 1.4)^((20 − T) / 15): 15 · 1.597 = 23.95 at 15 °C and 15 · 2.550 = 38.25 at 10 °C, rounded up. A
 * straight line between lies above that curve. No credit for more than 20 °C or for less than pH 4.0. Beside it:
 * fermented juice of pH 3.9 took 1 to 16 days over all its acids and temperatures (breidt-caldwell-2011).
 * @range below 10 °C, or when the temperature is not known, no time is long enough: infinity
 * @returns days
 * @source breidt-caldwell-2011 abstract
 * @deviates no source gives a table by temperature: the days are our reading of two sources, on the careful side
 */
export function holdDays(temperatureC: number): number {
  return daysAlong(HOLD, temperatureC);
}

interface HoldPoint {
  readonly temperatureC: number;
  readonly days: number;
}

/**
 * Days on straight lines through three points, the coldest first; infinity below them or where it is not known.
 * @arithmetic linear interpolation
 */
export function daysAlong(points: readonly [HoldPoint, HoldPoint, HoldPoint], temperatureC: number): number {
  const [cold, cool, mild] = points;
  if (temperatureC >= mild.temperatureC) return mild.days;
  if (temperatureC >= cool.temperatureC) return daysBetween(cool, mild, temperatureC);
  if (temperatureC >= cold.temperatureC) return daysBetween(cold, cool, temperatureC);
  return Number.POSITIVE_INFINITY;
}

/** On the straight line from a colder to a warmer point of the hold. */
function daysBetween(colder: HoldPoint, warmer: HoldPoint, temperatureC: number): number {
  const share = (warmer.temperatureC - temperatureC) / (warmer.temperatureC - colder.temperatureC);
  return warmer.days + share * (colder.days - warmer.days);
}
