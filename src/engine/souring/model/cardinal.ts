// How warmth, acidity, acid itself and dryness slow the growth of a microbe: each a factor between 0 and 1, and they
// multiply. The numbers of each guild stand in data/ferment.csv; rates.ts puts the factors together.

/** Lowest, best and highest temperature of growth, °C. */
export interface CardinalTemperatures {
  readonly temperatureMinC: number;
  readonly temperatureBestC: number;
  readonly temperatureMaxC: number;
}

/**
 * Share of the best growth at a temperature: the cardinal temperature model with inflection.
 *
 *   g = (T−Tmax)(T−Tmin)² / {(Topt−Tmin)[(Topt−Tmin)(T−Topt) − (Topt−Tmax)(Topt+Tmin−2T)]}
 *
 * @range needs Topt > (Tmin+Tmax)/2; 0 outside (Tmin, Tmax), and for a temperature that is not known
 * @returns 0-1, 1 at the best temperature
 * @source rosso-1993 cardinal temperature model with inflection
 * @checked souring/model/cardinal.test.ts
 */
export function warmthFactor(at: CardinalTemperatures, temperatureC: number): number {
  const { temperatureMinC: min, temperatureBestC: best, temperatureMaxC: max } = at;
  if (!(temperatureC > min && temperatureC < max)) return 0;
  const above = (temperatureC - max) * (temperatureC - min) ** 2;
  const below = (best - min) * ((best - min) * (temperatureC - best) - (best - max) * (best + min - 2 * temperatureC));
  return above / below;
}

/** Lowest, best and highest pH of growth. */
export interface CardinalPh {
  readonly minPh: number;
  readonly bestPh: number;
  readonly maxPh: number;
}

/**
 * Share of the best growth at a pH: the cardinal pH model.
 *
 *   h = (p−pmin)(p−pmax) / [(p−pmin)(p−pmax) − (p−popt)²]
 *
 * @range 0 outside (pmin, pmax), and for a pH that is not known
 * @returns 0-1, 1 at the best pH
 * @source rosso-1995 cardinal pH model
 * @checked souring/model/cardinal.test.ts
 */
export function sournessFactor(at: CardinalPh, ph: number): number {
  if (!(ph > at.minPh && ph < at.maxPh)) return 0;
  const span = (ph - at.minPh) * (ph - at.maxPh);
  return span / (span - (ph - at.bestPh) ** 2);
}

/**
 * Share of growth left under undissociated acid, 1 − U/Umax.
 * @range 0 at and beyond the most the guild bears
 * @source presser-1998 growth limits of E. coli by undissociated lactic acid
 */
export function acidFactor(undissociatedMolPerL: number, mostMolPerL: number): number {
  return Math.max(0, 1 - undissociatedMolPerL / mostMolPerL);
}

/** Molality of 1 g/L of salt as far as water activityFraction goes: 0.0058 lower for 10 g/L. */
const PER_SALT_G_PER_L = 0.00058;

/**
 * Water activityFraction of a batch: plant solutes by its dry matter, and salt.
 *
 *   aw = 1 − k·DM/(1 − DM) − 0.00058·salt
 *
 * @range dry matter 0-0.7 of the mixture, salt 0-100 g/L
 * @memory the form is that of silage models; 0.9942 for 1 % sodium chloride
 */
export function waterActivity(of: {
  readonly dryMatterFraction: number;
  readonly slopeFraction: number;
  readonly saltGPerL: number;
}): number {
  const dry = Math.min(of.dryMatterFraction, 0.7);
  return 1 - (of.slopeFraction * dry) / (1 - dry) - PER_SALT_G_PER_L * of.saltGPerL;
}

/** Share of growth left at a water activityFraction, (aw − min)/(1 − min), between 0 and 1. @memory */
export function drynessFactor(activityFraction: number, leastActivityFraction: number): number {
  return Math.min(1, Math.max(0, (activityFraction - leastActivityFraction) / (1 - leastActivityFraction)));
}
