// A recipe of round figures for sums by hand: a pail of 12 L with a quarter for gas, and white sugar of which a kilogram takes
// half a litre once dissolved.

import type { Recipe } from '#engine/pail/recipe.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';

const white = sugarProduct('white-sugar');
if (!white) throw new Error('sugar table incomplete');
const product = { ...white, displacementLPerKg: 0.5 };

/** Plants of which a kilogram takes so many litres, with the band given about them. */
export const lot = (name: string, massKg: number, likely = 1, [less, more] = [0, 0]) => ({
  ...resolvePart({ name, massKg, dryMatter: 0.2 }),
  displacementLPerKg: { low: likely - less, likely, high: likely + more },
});

export const recipe = (waterL: number, sugarKg = 0, plants: Recipe['plants'] = []): Recipe => ({
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants,
  water: { volumeL: waterL, alkalinityMeqPerL: 2, ph: 7.6 },
  sugar: { product, massKg: sugarKg },
  targetPh: 3.9,
});
