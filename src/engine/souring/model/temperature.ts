// The temperature of the liquid, hour by hour, from what is known of the air: one mean, or a low and a high a day.
// A vessel follows the air slowly; the more litres, the slower.

/** One mean for all days, or the days that are known as [day, low, high] in °C; days between are carried on. */
export type Warmth = number | readonly (readonly [day: number, lowC: number, highC: number])[];

/** Hour of the day at which the air is coldest; twelve hours later it is warmest. @practice a plain sine */
const COLDEST_HOUR = 4;

/**
 * Time in which a vessel goes through 63 % of a step in temperature, τ = 8 h at 10 L, growing with V^0.5 (20 h at 60 L).
 * @range 0.2-1000 L; insulated or sunlit vessels differ
 * @returns hours
 * @memory 6-10 h for 10 L, 15-25 h for 60 L
 */
export function lagHours(vesselL: number): number {
  return 8 * Math.sqrt(vesselL / 10);
}

/** Low and high of the air on a day; a day that is not told takes the last one told before it, or the first. */
function airOf(warmth: Exclude<Warmth, number>, day: number): { readonly lowC: number; readonly highC: number } {
  const first = warmth[0];
  if (first === undefined) return { lowC: Number.NaN, highC: Number.NaN };
  let best = first;
  for (const one of warmth) if (one[0] <= day && one[0] >= best[0]) best = one;
  return { lowC: best[1], highC: best[2] };
}

/**
 * Temperature of the liquid at every full hour from filling to the end of the last day, and one hour past it.
 *
 *   air(t) = mean − half swing · cos(2π (t − 4 h)/24 h);   dT/dt = (air − T)/τ, exact over each hour; T(0) = air's mean of day 0
 *
 * @range a warmth without any day gives a temperature that is not known
 * @returns °C, `days` × 24 + 2 values
 * @arithmetic first-order lag
 */
export function hourlyC(of: {
  readonly warmth: Warmth;
  readonly days: number;
  readonly vesselL: number;
}): Float64Array {
  const hours = Math.ceil(of.days * 24) + 2;
  const liquid = new Float64Array(hours);
  if (typeof of.warmth === 'number') return liquid.fill(of.warmth);
  const known = [...of.warmth].sort((a, b) => a[0] - b[0]);
  const keep = Math.exp(-1 / lagHours(of.vesselL));
  const start = airOf(known, 0);
  let nowC = (start.lowC + start.highC) / 2;
  for (let hour = 0; hour < hours; hour++) {
    liquid[hour] = nowC;
    const { lowC, highC } = airOf(known, Math.floor(hour / 24));
    const turn = Math.cos((2 * Math.PI * (hour + 0.5 - COLDEST_HOUR)) / 24);
    const airC = (lowC + highC) / 2 - ((highC - lowC) / 2) * turn;
    nowC = airC + (nowC - airC) * keep;
  }
  return liquid;
}
