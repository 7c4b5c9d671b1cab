// The strained solids: what they keep and how much carbon they hold for their nitrogen, for the heap.

import { inverse, product, type Range, scale, sum } from '../quantity/range.ts';
import type { Part } from '../scraps/part.ts';
import { bottleFigure } from './figures.ts';
import { drainedFraction, type ElementFate, type StrainedBatch } from './liquid.ts';

/** C:N of the solids, or the lots that stand in the way of it. */
export type SolidsCn =
  | { readonly known: true; readonly cn: Range; readonly putIn: { readonly cn: Range } }
  | { readonly known: false; readonly missingIn: readonly string[] };

/**
 * Carbon to nitrogen of the strained solids.
 *
 *   C:N in = Σ n_i (C:N)_i / Σ n_i;   C:N solids = C:N in · (1 − carbon lost) / (1 − F_N · share drained)
 *
 * n_i is the likely nitrogen of lot i. The white sugar's carbon is taken to leave with the liquid.
 * @range needs nitrogen and C:N of every lot; otherwise names those that lack it
 * @memory carbon lost to acid, gas and dissolved matter, data/extraction.csv
 */
export function solidsCn(batch: StrainedBatch, nitrogen: ElementFate): SolidsCn {
  const missingIn = batch.plants.filter((part) => !part.cn || !part.nPercentDm).map((part) => part.name);
  const totalN = batch.plants.reduce((total, part) => total + likelyN(part), 0);
  if (missingIn.length > 0 || !(totalN > 0)) return { known: false, missingIn };
  const putInCn = sum(batch.plants.map((part) => scale(part.cn as Range, likelyN(part) / totalN)));
  const lost = bottleFigure('carbon', 'lostShare');
  const share = drainedFraction(batch);
  const { low, likely, high } = nitrogen.releasedFraction;
  const nKept = { low: 1 - high * share, likely: 1 - likely * share, high: 1 - low * share };
  const cKept = { low: 1 - lost.high, likely: 1 - lost.likely, high: 1 - lost.low };
  return { known: true, putIn: { cn: putInCn }, cn: product([putInCn, cKept, inverse(nKept)]) };
}

/** Likely nitrogen of a lot, in tens of grams: only its share of all lots is asked for. */
function likelyN(part: Part): number {
  return part.massKg * part.dryMatter.likely * (part.nPercentDm?.likely ?? 0);
}
