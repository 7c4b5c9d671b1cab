// What the plants and the sugar carry in, element by element: the ceiling of everything that can come out.

import { product, type Range, scale, sum } from '../quantity/range.ts';
import type { Part } from '../scraps/part.ts';
import { type Element, elementPercentDm, type SugarIn } from './recipe.ts';

/** An element of the batch: grams as a band, and the lots whose figure is not known (the band misses them). */
export interface Carried {
  readonly grams: Range;
  readonly unknownIn: readonly string[];
}

/**
 * Grams of one element put in.
 *
 *   g = Σ m · d · x · 10    (m kg fresh, d dry fraction, x percent of dry matter), plus the sugar's potassium
 *
 * @arithmetic
 */
export function carriedIn(element: Element, plants: readonly Part[], sugar: SugarIn): Carried {
  const terms: Range[] = [];
  const unknownIn: string[] = [];
  for (const part of plants) {
    const percent = elementPercentDm(part, element);
    if (percent === undefined) unknownIn.push(part.name);
    else terms.push(scale(product([part.dryMatter, percent]), part.massKg * 10));
  }
  if (element === 'k') terms.push(scale(sugar.product.kGPerKg, sugar.massKg));
  return { grams: sum(terms), unknownIn };
}
