// An ingredient of a heap out of a row of the tables of mixes, "carbon/nitrogen/moisture", each in percent.

import { resolveIngredient } from '#engine/heap/ingredient.ts';

/** Nothing of it comes out of the tables of materials. */
export function ingredient(text = '') {
  const [cPercentDm, nPercentDm, moisturePercent] = text.split('/').map(Number);
  return resolveIngredient({ name: text, cPercentDm, nPercentDm, moisturePercent });
}
