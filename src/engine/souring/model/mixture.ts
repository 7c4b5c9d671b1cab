// What a litre of the liquid of a batch holds on the first day: sugars, buffer, nitrogen, salt, dryness. The model
// runs per litre of the liquid the acid must sour, V_e; litres and kilograms come back in only at the end.

import type { WaterIn } from '../../pail/recipe.ts';
import { liquidL, plantsKg } from '../../pail/recipe.ts';
import type { Part, SugarProduct } from '../../scraps/part.ts';
import type { ChopFactors } from './chop.ts';

/** A batch at the start, per litre of its liquid. Sugars are hexose. */
export interface Mixture {
  readonly liquidL: number;
  /** Dry matter of the whole mixture as a fraction of its mass. */
  readonly dryMatterFraction: number;
  readonly plantKgPerL: number;
  readonly dryMatterKgPerL: number;
  /** Sugar within the tissue, let out in hours to days. */
  readonly boundSugarGPerL: number;
  /** Sugar added, at hand at once. */
  readonly freeSugarGPerL: number;
  readonly bufferEqPerLPerPh: number;
  readonly startPh: number;
  readonly alkalinityEqPerL: number;
  readonly waterPh: number;
  /** Nitrogen of the plants. */
  readonly nitrogenMolPerL: number;
  readonly saltGPerL: number;
  /** Living lactic bacteria brought in by a starter, dry cells. */
  readonly starterGPerL: number;
  /** How finely the plants are cut; chopped to 1-3 cm if absent. */
  readonly chop?: ChopFactors | undefined;
}

/** What goes in, as the mixture needs it. */
export interface Filling {
  readonly plants: readonly Part[];
  readonly water: WaterIn;
  readonly sugar: { readonly product: SugarProduct; readonly massKg: number };
  /** Live liquid of an earlier good batch, litres. */
  readonly starterL?: number | undefined;
  readonly saltKg?: number | undefined;
  readonly chop?: ChopFactors | undefined;
}

const G_N_PER_MOL = 14.007;
/** Nitrogen of plant dry matter where no lot tells it, percent. @memory */
const UNTOLD_N_PERCENT = 2.5;
/** Dry living cells in a litre of an earlier good batch, g: 1e8 cells per mL of 3e-13 g. @memory */
export const STARTER_CELLS_G_PER_L = 0.03;

/**
 * A litre of the liquid of a batch at the start, from likely values.
 *
 *   V_e = V + Σ m (1 − d);   B = Σ m d b / V_e (sugar product included);   p0 = Σ m d b p / Σ m d b
 *   bound sugar = Σ m d w / V_e, of which bacteria reach a share (data/ferment.csv);   N = Σ m d n / (14 V_e);   dry matter = Σ m d / (Σ m + V + sugar)
 *
 * @range at least one part or some water; a batch without plants has no buffer of its own and starts at the water's pH
 * @arithmetic
 * @checked worked/sugar-dose.csv through the same terms
 */
export function mixtureOf({ plants, water, sugar, starterL = 0, saltKg = 0, chop }: Filling): Mixture {
  const litres = liquidL(plants, water.volumeL) + starterL;
  let dryKg = 0;
  let boundG = 0;
  let bufferEqPerPh = 0;
  let bufferTimesPh = 0;
  let nitrogenG = 0;
  for (const part of plants) {
    const dry = part.massKg * part.dryMatter.likely;
    const buffer = dry * part.bufferEqPerKgDmPerPh.likely;
    dryKg += dry;
    boundG += dry * part.sugarsGPerKgDm.likely;
    bufferEqPerPh += buffer;
    bufferTimesPh += buffer * part.ph.likely;
    nitrogenG += dry * 10 * (part.nPercentDm?.likely ?? UNTOLD_N_PERCENT);
  }
  const productBuffer = sugar.massKg * sugar.product.bufferEqPerKgPerPh.likely;
  bufferEqPerPh += productBuffer;
  bufferTimesPh += productBuffer * sugar.product.ph;
  const plantKg = plantsKg(plants);
  return {
    liquidL: litres,
    dryMatterFraction: (dryKg + sugar.massKg) / (plantKg + water.volumeL + sugar.massKg + starterL),
    plantKgPerL: plantKg / litres,
    dryMatterKgPerL: dryKg / litres,
    boundSugarGPerL: boundG / litres,
    freeSugarGPerL: (sugar.massKg * sugar.product.hexoseGPerKg.likely) / litres,
    bufferEqPerLPerPh: bufferEqPerPh / litres,
    startPh: bufferEqPerPh > 0 ? bufferTimesPh / bufferEqPerPh : water.ph,
    alkalinityEqPerL: ((water.alkalinityMeqPerL / 1000) * water.volumeL) / litres,
    waterPh: water.ph,
    nitrogenMolPerL: nitrogenG / G_N_PER_MOL / litres,
    saltGPerL: (saltKg * 1000) / litres,
    starterGPerL: (starterL * STARTER_CELLS_G_PER_L) / litres,
    ...(chop !== undefined && { chop }),
  };
}
