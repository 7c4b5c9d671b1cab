// How warm a batch stood on the whole, from what was told of it now and then.

/** A temperature as it was told, with its day since the filling. */
export interface Told {
  readonly day: number;
  readonly temperatureC: number;
}

/**
 * Mean temperature from the filling to a day: each telling holds until the next one, the first from the start.
 *
 *   T = Σ T_i · (d_i+1 − d_i) / d
 *
 * Nothing told gives no number.
 * @practice a thermometer read at each look stands for the time until the next
 */
export function meanTemperatureC(told: readonly Told[], untilDay: number): number {
  const ordered = [...told].sort((a, b) => a.day - b.day);
  const last = ordered.at(-1)?.temperatureC ?? Number.NaN;
  if (!(untilDay > 0)) return last;
  let degreeDays = 0;
  ordered.forEach(({ day, temperatureC }, i) => {
    const from = i === 0 ? 0 : Math.min(Math.max(day, 0), untilDay);
    const to = Math.min(Math.max(ordered[i + 1]?.day ?? untilDay, 0), untilDay);
    degreeDays += temperatureC * Math.max(0, to - from);
  });
  return ordered.length === 0 ? Number.NaN : degreeDays / untilDay;
}
