// The temperature of the liquid read off hour by hour: what each day was, and the mean between two days, with which
// the alarm lines and the hold run.

/** One day of the liquid. */
export interface DayOfWarmth {
  readonly day: number;
  readonly lowC: number;
  readonly meanC: number;
  readonly highC: number;
}

/**
 * Mean of the liquid from one day to another.
 * @range within what is known of its hours, ends beyond are cut off; a span of no length gives the hour it stands at
 * @returns °C, not a number where no hour is known
 * @arithmetic mean of full hours
 */
export function meanBetweenC(hourlyC: ArrayLike<number>, fromDay: number, toDay: number): number {
  const first = Math.max(0, Math.min(hourlyC.length - 1, Math.floor(fromDay * 24)));
  const last = Math.max(first, Math.min(hourlyC.length - 1, Math.ceil(toDay * 24) - 1));
  let sum = 0;
  for (let hour = first; hour <= last; hour++) sum += hourlyC[hour] ?? Number.NaN;
  return sum / (last - first + 1);
}

/** Low, mean and high of the liquid on each day, from day 0 to the last begun. @arithmetic */
export function warmthByDay(hourlyC: ArrayLike<number>, days: number): readonly DayOfWarmth[] {
  return Array.from({ length: days + 1 }, (_, day) => {
    let lowC = Number.POSITIVE_INFINITY;
    let highC = Number.NEGATIVE_INFINITY;
    for (let hour = day * 24; hour < (day + 1) * 24; hour++) {
      const hereC = hourlyC[Math.min(hour, hourlyC.length - 1)] ?? Number.NaN;
      lowC = Math.min(lowC, hereC);
      highC = Math.max(highC, hereC);
    }
    return { day, lowC, meanC: meanBetweenC(hourlyC, day, day + 1), highC };
  });
}

/**
 * Each day until one, with the mean of its hours and the days they make up: together the mean from the start till then.
 * @range at least the first hour, as meanBetweenC
 * @arithmetic full hours
 */
export function warmthUntil(
  hourlyC: ArrayLike<number>,
  untilDay: number,
): readonly { readonly day: number; readonly temperatureC: number; readonly stoodDays: number }[] {
  const hours = Math.max(1, Math.ceil(untilDay * 24));
  return Array.from({ length: Math.ceil(hours / 24) }, (_, day) => {
    const until = Math.min(hours, (day + 1) * 24);
    return { day, temperatureC: meanBetweenC(hourlyC, day, until / 24), stoodDays: until / 24 - day };
  });
}
