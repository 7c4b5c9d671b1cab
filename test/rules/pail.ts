// Weighing in: one recipe just past a line of the pail, and one just short of it.

import { fit } from '#engine/pail/fit.ts';
import type { Recipe } from '#engine/pail/recipe.ts';
import type { BedToFeed } from '#engine/pail/use.ts';
import { type FitSituation, fitRules } from '#engine/rules/fit.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { examplesOf } from './example.ts';

interface Pail {
  readonly vesselL?: number;
  readonly gasRoom?: number;
  readonly waterL?: number;
  readonly sugarKg?: number;
  readonly product?: string;
  readonly beds?: readonly BedToFeed[];
  readonly bufferEqPerKgDmPerPh?: number;
}

/** 2 kg of clippings, 0.2 dry; water, and white sugar unless another is named. */
function pail({ vesselL = 12, gasRoom = 0.25, waterL = 6, sugarKg = 0.1, beds, ...more }: Pail): FitSituation {
  const product = sugarProduct(more.product ?? 'white-sugar');
  if (product === undefined) throw new Error('sugar table incomplete');
  const vessel = { volumeL: vesselL, gasRoom };
  const plants = resolvePart({
    massKg: 2,
    dryMatter: 0.2,
    sugarsGPerKgDm: 80,
    bufferEqPerKgDmPerPh: more.bufferEqPerKgDmPerPh ?? 0.27,
    ph: 6.2,
  });
  const recipe: Recipe = {
    vessel,
    plants: [plants],
    water: { volumeL: waterL, alkalinityMeqPerL: 2, ph: 7.6 },
    sugar: { product, massKg: sugarKg },
    targetPh: 3.9,
  };
  return { fit: fit(recipe, beds), vessel, sugarProduct: product.name, addedKg: sugarKg };
}

export const pailExamples = examplesOf(fitRules, {
  // fill line 12 × 0.75 = 9.0 L; water + 2 × 1.0 + 0.1 × 0.62 = 9.06 and 8.96 L
  'past-the-fill-line': [pail({ waterL: 7 }), pail({ waterL: 6.9 })],
  // full to 11.4 of 12 L, and to 9 of 12 L
  'mat-rises-over-the-rim': [pail({ gasRoom: 0.05, waterL: 9.3 }), pail({ waterL: 4 })],
  // 2 + 0.1 + water: 15.1 and 14.9 kg, where one person lifts 15
  'fill-it-where-it-stands': [pail({ vesselL: 30, waterL: 13 }), pail({ vesselL: 30, waterL: 12.8 })],
  'sugar-window-closed': [pail({ bufferEqPerKgDmPerPh: 3, sugarKg: 0 }), pail({})],
  'may-not-turn-sour': [pail({ sugarKg: 0 }), pail({ sugarKg: 0.15 })],
  'more-sugar-than-the-acid-uses': [pail({ sugarKg: 0.8 }), pail({ sugarKg: 0.1 })],
  'more-than-the-beds-use': [
    pail({ beds: [{ areaM2: 1, depthLPerM2: 2, everyDays: 14 }] }),
    pail({ beds: [{ areaM2: 200, depthLPerM2: 4, everyDays: 7 }] }),
  ],
});
