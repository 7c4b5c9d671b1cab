// How warm a batch stood on the whole, from what was told of it now and then.

/** A temperature as it was told, with its day since the filling. */
export interface Told {
  readonly day: number;
  readonly temperatureC: number;
}

/** A telling and the days it stood for. */
export interface Stood extends Told {
  readonly stoodDays: number;
}

/** Each telling in turn with the days until the next one, the first from the start. @practice as the mean below */
export function stoodFor(told: readonly Told[], untilDay: number): readonly Stood[] {
  const ordered = [...told].sort((a, b) => a.day - b.day);
  return ordered.map((one, i) => {
    const from = i === 0 ? 0 : Math.min(Math.max(one.day, 0), untilDay);
    const to = Math.min(Math.max(ordered[i + 1]?.day ?? untilDay, 0), untilDay);
    return { ...one, stoodDays: Math.max(0, to - from) };
  });
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
  const stood = stoodFor(told, untilDay);
  if (!(untilDay > 0)) return stood.at(-1)?.temperatureC ?? Number.NaN;
  const degreeDays = stood.reduce((sum, { temperatureC, stoodDays }) => sum + temperatureC * stoodDays, 0);
  return stood.length === 0 ? Number.NaN : degreeDays / untilDay;
}
