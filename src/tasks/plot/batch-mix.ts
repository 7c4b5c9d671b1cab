// What stands in a batch, as the words of the contract ask for it: its parts as portions, its sugars as one, the
// alkalinity of its water. What nobody told is told here once for all who ask.

import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { BatchPart } from '#journal/parts/contents.ts';
import type { PortionIn } from '../portion.ts';
import { UNTOLD_ALKALINITY_MEQ_PER_L } from './fill.ts';

/** Dry matter of a part that no table knows: from cucumber to stalks. @practice our caution, no source */
const UNTOLD_DRY_MATTER = { low: 0.05, likely: 0.12, high: 0.35 };
/** A question needs some water; a batch without any is asked with a drop. @arithmetic */
export const DROP_L = 1e-6;

/** Whether its dry matter is known, from the table or from an analysis. */
export function isKnown({ material: id, analysis }: BatchPart): boolean {
  return (id !== undefined && material(id) !== undefined) || analysis?.dryMatter !== undefined;
}

/** A part of a batch as the words of the contract take it. */
export function portionOf(part: BatchPart): PortionIn {
  const { material: id, name, treated, analysis, massKg } = part;
  const row = id === undefined ? undefined : material(id);
  return {
    ...(analysis ?? {}),
    ...(row === undefined ? {} : { material: row.id }),
    ...(isKnown(part) ? {} : { dryMatter: UNTOLD_DRY_MATTER }),
    ...(name === undefined ? (row === undefined && id !== undefined ? { name: id } : {}) : { name }),
    ...(treated === undefined ? {} : { treated }),
    massKg,
  };
}

/** The sugars as one: that of which there was most, with the weight of all. */
export function sugarOf({ contents }: Batch): { readonly product: string; readonly massKg: number } {
  const most = [...contents.sugar].sort((a, b) => b.massKg - a.massKg)[0];
  const known = most !== undefined && sugarProduct(most.product) !== undefined;
  return {
    product: known ? most.product : 'white-sugar',
    massKg: contents.sugar.reduce((total, { massKg }) => total + massKg, 0),
  };
}

/** Alkalinity of its water; of several reports the hardest counts. @practice our caution, no source */
export function alkalinityOf(plot: Plot, { contents }: Batch): number {
  const told = contents.waters.flatMap((id) => {
    const report = plot.waters.find((one) => one.id === id)?.body.alkalinity;
    return report === undefined ? [] : [report.alkalinityMeqPerL];
  });
  return told.length > 0 ? Math.max(...told) : UNTOLD_ALKALINITY_MEQ_PER_L;
}
