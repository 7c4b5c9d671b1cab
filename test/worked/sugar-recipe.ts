// A recipe out of a row of the tables of sugar: lots as "mass/dry matter/sugars/buffer/pH", one after the other.

import type { Recipe } from '#engine/pail/recipe.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';

/** White sugar, none of it in yet, in a vessel that is large enough. */
export function recipe(
  lots: string,
  water: { readonly volumeL: number; readonly alkalinityMeqPerL: number },
  targetPh: number,
): Recipe {
  const product = sugarProduct('white-sugar');
  if (!product) throw new Error('white sugar is missing from the table');
  const plants = lots.split(' ').map((lot) => {
    const [massKg, dryMatter, sugarsGPerKgDm, bufferEqPerKgDmPerPh, ph] = lot.split('/').map(Number);
    return resolvePart({ name: 'lot', massKg: massKg ?? 0, dryMatter, sugarsGPerKgDm, bufferEqPerKgDmPerPh, ph });
  });
  return {
    vessel: { volumeL: 30, gasRoom: 0.25 },
    plants,
    water: { ...water, ph: 7.6 },
    sugar: { product, massKg: 0 },
    targetPh,
  };
}
