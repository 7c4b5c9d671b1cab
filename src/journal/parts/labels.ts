// How bought products let go, as their labels say: told apart from the purchase, so that it can be told of any product of
// the record, also of one bought before anybody asked. What that means for a bed is the ledger's.

import type { ActOf } from '../act.ts';
import type { Waiting } from '../standing.ts';

/** The newest telling for each product; one of a product that is not here waits, and is counted nowhere. */
export function labelsOf(
  told: readonly ActOf<'product.labelled'>[],
  products: readonly ActOf<'product.bought'>[],
  lineOf: ReadonlyMap<string, string>,
  waiting: Waiting[],
): ReadonlyMap<string, ActOf<'product.labelled'>> {
  const here = new Set(products.map(({ id }) => id));
  const labels = new Map<string, ActOf<'product.labelled'>>();
  for (const act of told) {
    const product = lineOf.get(act.body.product) ?? act.body.product;
    if (here.has(product)) labels.set(product, act);
    else waiting.push({ id: act.id, why: 'thing-not-here', of: product });
  }
  return labels;
}
