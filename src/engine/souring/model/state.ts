// The states of the model and their places in its vector, the carbon each compound holds, and where a run starts.

import { reachedFraction } from './chop.ts';
import type { Mixture } from './mixture.ts';
import type { Parameters } from './parameters.ts';

/** Places of the states in a vector; g/L, but ammonia in mol/L, and foul and film as shares of full activity. */
export const AT = {
  bound: 0,
  sugar: 1,
  early: 2,
  late: 3,
  yeast: 4,
  entero: 5,
  lactic: 6,
  acetic: 7,
  butyric: 8,
  ethanol: 9,
  mannitol: 10,
  other: 11,
  co2: 12,
  ammonia: 13,
  foul: 14,
  film: 15,
  slow: 16,
} as const;
/** Length of the vector. */
export const STATES = 17;

/** Carbon of each compound, g per g. @arithmetic formulae; cells CH1.8O0.5N0.2, the pool `other` as sugar */
export const CARBON = {
  hexose: 0.4,
  lactic: 0.4,
  acetic: 0.4,
  butyric: 0.5452,
  ethanol: 0.5214,
  mannitol: 0.3956,
  co2: 0.2729,
  cells: 0.4877,
  other: 0.4,
} as const;

/** Cells of a microbe, dry. @memory */
export const CELL_G = 3e-13;

/** Guilds of a starter: an earlier good batch holds more of the acid-hardy ones. @memory */
export const STARTER_SHARE = { early: 0.2, late: 0.8 } as const;

/** Where the run starts, g/L and mol/L. @arithmetic counts per gram of plant times cell mass; starter by STARTER_SHARE */
export function startOf(mixture: Mixture, parameters: Parameters): Float64Array {
  const y = new Float64Array(STATES);
  const cells = (log10PerG: number) => 10 ** log10PerG * CELL_G * 1000 * mixture.plantKgPerL;
  y[AT.bound] = reachedFraction(parameters.plant.accessFraction, mixture.chop) * mixture.boundSugarGPerL;
  y[AT.sugar] = mixture.freeSugarGPerL;
  y[AT.early] = cells(parameters.early.startLog10CountPerG) + STARTER_SHARE.early * mixture.starterGPerL;
  y[AT.late] = cells(parameters.late.startLog10CountPerG) + STARTER_SHARE.late * mixture.starterGPerL;
  y[AT.yeast] = cells(parameters.yeast.startLog10CountPerG);
  y[AT.entero] = cells(parameters.entero.startLog10CountPerG);
  y[AT.foul] = parameters.foul.startFraction;
  y[AT.film] = parameters.film.startFraction;
  y[AT.slow] = parameters.plant.slowSugarGPerKgDm * mixture.dryMatterKgPerL;
  return y;
}
