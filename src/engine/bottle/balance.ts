// Mass in against mass out at straining. Whether the sum closes is said; where it does not, the grower is
// asked (rules/bottle.ts). What the liquid holds is liquid.ts.

import { bottleFigure } from './figures.ts';

/** Largest share of the mass put in that may be missing or too much, in percent. @practice kitchen scale and jug */
export const CLOSES_WITHIN_PERCENT = 15;

/** Mass of a litre of water. @practice within 0.2 % from 4 to 20 °C */
const WATER_KG_PER_L = 1;

/** What was weighed and measured. */
export interface MassInAndOut {
  readonly plantsKg: number;
  readonly waterL: number;
  readonly sugarKg: number;
  readonly starterL: number;
  readonly drainedL: number;
  readonly solidsKg: number;
}

export interface Balance {
  readonly inKg: number;
  readonly outKg: number;
  /** Positive: something is missing. Negative: more came out than went in. */
  readonly unexplainedPercent: number;
  readonly closes: boolean;
}

/**
 * Does what came out add up to what went in?
 *
 *   in = plants + water · 1 kg/L + sugar + starter · 1.01 kg/L;   out = drained · 1.01 kg/L + wet solids
 *   unexplained = 100 (in − out) / in
 *
 * Gas and what dries off are part of the unexplained: a few grams a litre.
 * @range a sum that is not a number does not close
 * @memory density of the drained liquid, data/extraction.csv
 */
export function balance(mass: MassInAndOut): Balance {
  const densityKgPerL = bottleFigure('liquid', 'densityKgPerL').likely;
  const inKg = mass.plantsKg + mass.waterL * WATER_KG_PER_L + mass.sugarKg + mass.starterL * densityKgPerL;
  const outKg = mass.drainedL * densityKgPerL + mass.solidsKg;
  const unexplainedPercent = (100 * (inKg - outKg)) / inKg;
  return { inKg, outKg, unexplainedPercent, closes: Math.abs(unexplainedPercent) <= CLOSES_WITHIN_PERCENT };
}
