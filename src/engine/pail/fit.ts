// Does it fit, will it sour: one recipe through the pail's rooms. The cautions are the rules' business.

import type { Range } from '../quantity/range.ts';
import { type Cure, cures } from './cures.ts';
import { type Carried, carriedIn } from './inputs.ts';
import type { Recipe } from './recipe.ts';
import { type SugarWindow, sugarWindow } from './sugar.ts';
import { type BatchUse, type BedToFeed, batchUse } from './use.ts';
import { type Fill, fill, type Layer, type Lift, layers, lift } from './volume.ts';

export interface Fit {
  readonly fill: Fill;
  readonly lift: Lift;
  readonly layers: readonly Layer[];
  readonly cures: readonly Cure[];
  readonly sugar: SugarWindow;
  readonly inputs: { readonly nG: Range; readonly pG: Range; readonly kG: Range };
  /** Lots whose nitrogen, phosphorus or potassium is not known: the totals miss them. */
  readonly unknown: readonly { readonly element: 'n' | 'p' | 'k'; readonly materials: readonly string[] }[];
  readonly use?: BatchUse;
}

/** The whole answer for one recipe. @arithmetic calls of volume, cures, sugar, inputs, use */
export function fit(recipe: Recipe, beds?: readonly BedToFeed[]): Fit {
  const settled = fill(recipe);
  const carried: Record<'n' | 'p' | 'k', Carried> = {
    n: carriedIn('n', recipe.plants, recipe.sugar),
    p: carriedIn('p', recipe.plants, recipe.sugar),
    k: carriedIn('k', recipe.plants, recipe.sugar),
  };
  const elements = ['n', 'p', 'k'] as const;
  return {
    fill: settled,
    lift: lift(recipe, settled),
    layers: layers({ waterL: recipe.water.volumeL, sugars: [recipe.sugar], plants: recipe.plants }),
    cures: cures(recipe, settled),
    sugar: sugarWindow(recipe),
    inputs: { nG: carried.n.grams, pG: carried.p.grams, kG: carried.k.grams },
    unknown: elements
      .filter((element) => carried[element].unknownIn.length > 0)
      .map((element) => ({ element, materials: carried[element].unknownIn })),
    ...(beds && beds.length > 0 ? { use: batchUse(recipe, settled, beds) } : {}),
  };
}
