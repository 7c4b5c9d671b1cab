// Where each element of a strained batch is: put in, at most in a litre, in a litre, drained off, left in
// the solids. Nothing here ever passes what went in. Conductivity is conductivity.ts, C:N solids.ts.

import { carriedIn } from '../pail/inputs.ts';
import { type Element, liquidL, plantsKg, type SugarIn } from '../pail/recipe.ts';
import { capAt, floorAt, point, product, type Range, scale, sum } from '../quantity/range.ts';
import type { Part } from '../scraps/part.ts';
import { releasedFraction } from './extraction.ts';

/** A batch on the day it was strained. */
export interface StrainedBatch {
  readonly plants: readonly Part[];
  readonly waterL: number;
  readonly sugar: SugarIn;
  /** Liquid of an earlier batch put in at the start; its own nutrients are not known and not counted. */
  readonly starterL: number;
  readonly days: number;
  readonly finalPh: number;
  readonly drainedL: number;
  readonly solidsKg: number;
}

/** One element from the scale to the bottle. */
export interface ElementFate {
  readonly element: Element;
  /** False when it is known for no lot at all: then every figure below is 0 and means nothing. */
  readonly known: boolean;
  /** Lots whose figure is not known: everything below misses them and is too low. */
  readonly unknownIn: readonly string[];
  readonly plantsG: Range;
  readonly sugarG: Range;
  readonly inG: Range;
  readonly releasedFraction: Range;
  readonly gPerL: Range;
  readonly ceilingGPerL: number;
  readonly drainedG: Range;
  readonly solidsG: Range;
}

/** Liquid of the whole batch: water, starter and the plants' own water, litres. @arithmetic */
export function batchLiquidL(batch: Pick<StrainedBatch, 'plants' | 'waterL' | 'starterL'>): number {
  return liquidL(batch.plants, batch.waterL + batch.starterL);
}

/** Share of the batch's liquid that was drained, never above 1: more litres than there were hold nothing we know of. @arithmetic */
export function drainedFraction(batch: StrainedBatch): number {
  return Math.min(1, batch.drainedL / batchLiquidL(batch));
}

/**
 * Where one element of a strained batch is.
 *
 *   ceiling = high end of what went in / V_e;   g/L = (F · plants + sugar) / V_e, held down to the ceiling
 *   drained = g/L · V_e · share;   solids = plants (1 − F · share) + sugar (1 − share)
 *   V_e = water + starter + Σ m (1 − d);   share = drained litres / V_e
 *
 * The potassium of molasses is dissolved from the first day. Ammonia that escapes as gas is not counted.
 * @arithmetic mass balance; F is extraction.ts
 */
export function elementFate(element: Element, batch: StrainedBatch): ElementFate {
  const carried = carriedIn(element, batch.plants, batch.sugar);
  const plantsG = carriedIn(element, batch.plants, { ...batch.sugar, massKg: 0 }).grams;
  const sugarG = element === 'k' ? scale(batch.sugar.product.kGPerKg, batch.sugar.massKg) : point(0);
  const liquid = batchLiquidL(batch);
  const share = drainedFraction(batch);
  const released = releasedFraction(element, batch);
  const ceilingGPerL = carried.grams.high / liquid;
  const dissolvedG = floorAt(sum([product([floorAt(plantsG, 0), released]), sugarG]), 0);
  const gPerL = capAt(scale(dissolvedG, 1 / liquid), ceilingGPerL);
  const kept = { low: 1 - released.high * share, likely: 1 - released.likely * share, high: 1 - released.low * share };
  return {
    element,
    known: carried.unknownIn.length < batch.plants.length || batch.plants.length === 0 || sugarG.likely > 0,
    unknownIn: carried.unknownIn,
    plantsG,
    sugarG,
    inG: carried.grams,
    releasedFraction: released,
    gPerL,
    ceilingGPerL,
    drainedG: scale(gPerL, liquid * share),
    solidsG: capAt(floorAt(sum([product([plantsG, kept]), scale(sugarG, 1 - share)]), 0), carried.grams.high),
  };
}

/** Mass of plants in the batch, kg. @arithmetic */
export function batchPlantsKg(batch: StrainedBatch): number {
  return plantsKg(batch.plants);
}
