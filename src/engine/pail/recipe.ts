// What goes into one vessel, resolved and ready to compute with. The pail's rooms all start from this.

import type { Range } from '../quantity/range.ts';
import type { Part, SugarProduct } from '../scraps/part.ts';

export interface Vessel {
  readonly volumeL: number;
  /** Share of the volume left empty for froth and gas, 0-0.9. */
  readonly gasRoom: number;
  readonly emptyMassKg?: number | undefined;
}

export interface WaterIn {
  readonly volumeL: number;
  readonly alkalinityMeqPerL: number;
  readonly ph: number;
}

export interface SugarIn {
  readonly product: SugarProduct;
  readonly massKg: number;
}

export interface Recipe {
  readonly vessel: Vessel;
  readonly plants: readonly Part[];
  readonly water: WaterIn;
  readonly sugar: SugarIn;
  /** pH the batch is meant to reach. */
  readonly targetPh: number;
}

/** What the acid has to sour, whatever vessel it is in. */
export type Mix = Omit<Recipe, 'vessel'>;

/** Mass of all plant parts, kg. @arithmetic */
export function plantsKg(plants: readonly Part[]): number {
  let total = 0;
  for (const part of plants) total += part.massKg;
  return total;
}

/**
 * Liquid the acid must sour, V_e = V + Σ m (1 − d), litres (plant water at 1 kg/L).
 * @arithmetic
 */
export function liquidL(plants: readonly Part[], waterL: number): number {
  let total = waterL;
  for (const part of plants) total += part.massKg * (1 - part.dryMatter.likely);
  return total;
}

/** Grams of an element in the plants, Σ m d x · 10, over the lots whose figure is known. */
export type Element = 'n' | 'p' | 'k' | 'ca' | 'mg';

/** The figure of one element in a part, percent of dry matter; undefined where not known. @arithmetic look-up */
export function elementPercentDm(part: Part, element: Element): Range | undefined {
  switch (element) {
    case 'n':
      return part.nPercentDm;
    case 'p':
      return part.pPercentDm;
    case 'k':
      return part.kPercentDm;
    case 'ca':
      return part.caPercentDm;
    case 'mg':
      return part.mgPercentDm;
  }
}
