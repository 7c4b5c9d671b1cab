// Sugar sources as the batch sees them: sugars by mass, the room they take once dissolved, the buffer and
// the potassium they bring along. How much to add is worked out in the pail.

import { point, type Range } from '../quantity/range.ts';
import { type Figure, type SugarRow, sugarRow, sugars } from '../tables/index.ts';
import type { SugarProduct } from './part.ts';

/** Ids of the sugar sources, in the order of the table. */
export const sugarIds: readonly string[] = sugars.map((row) => row.id);

const products = new Map(sugars.map((row) => [row.id, product(row)]));

/**
 * A sugar source with every figure, or undefined for an id the table does not have.
 * @arithmetic look-up; the figures name their own sources
 */
export function sugarProduct(id: string): SugarProduct | undefined {
  return products.get(id);
}

/** The same, with white sugar in the place of one that nobody named or that no table has. @practice our caution: no buffer of its own */
export function sugarOrWhite(id: string | undefined): SugarProduct {
  const found = products.get(id ?? '') ?? products.get('white-sugar');
  if (found === undefined) throw new RangeError('sugarOrWhite: data/sugars.csv has no white-sugar');
  return found;
}

/**
 * Sugars by the gram as a jug or spoon measures them: volume × bulk density × sugars per kg.
 * The same spoon of loose brown sugar, white sugar, molasses or honey differs by far more than a spoon can
 * err, which is why a volume without a product says nothing.
 * @returns g sugars in the volume, or undefined for an id the table does not have
 * @arithmetic
 */
export function sugarsInVolumeG(measured: { readonly id: string; readonly volumeMl: number }): Range | undefined {
  const found = products.get(measured.id);
  if (found === undefined) return undefined;
  const massKg = (densityKgPerL: number) => (measured.volumeMl / 1000) * densityKgPerL;
  return {
    low: massKg(found.bulkKgPerL.low) * found.sugarsGPerKg.low,
    likely: massKg(found.bulkKgPerL.likely) * found.sugarsGPerKg.likely,
    high: massKg(found.bulkKgPerL.high) * found.sugarsGPerKg.high,
  };
}

function product(row: SugarRow): SugarProduct {
  const need = (quantity: string): Figure => {
    const figure = row.figures[quantity];
    if (figure === undefined)
      throw new RangeError(`sugarProduct: ${row.id} has no ${quantity} in data/sugar-figures.csv`);
    return figure;
  };
  const band = (quantity: string): Range => {
    const { low, likely, high } = need(quantity);
    return low === high ? point(likely) : { low, likely, high };
  };
  return {
    id: row.id,
    name: row.name,
    hexoseGPerKg: band('hexoseGPerKg'),
    sugarsGPerKg: band('sugarsGPerKg'),
    bulkKgPerL: band('bulkKgPerL'),
    displacementLPerKg: need('displacementLPerKg').likely,
    bufferEqPerKgPerPh: band('bufferEqPerKgPerPh'),
    ph: need('ph').likely,
    kGPerKg: band('kGPerKg'),
    sources: [...new Set(Object.values(row.figures).map((figure) => figure?.source ?? 'memory'))],
  };
}

/** True when the id names a sugar source. @arithmetic look-up */
export function isSugar(id: string): boolean {
  return sugarRow(id) !== undefined;
}
