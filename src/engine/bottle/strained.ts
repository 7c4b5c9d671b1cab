// What came out of a batch: balance, nutrients, conductivity, solids. One call for the whole answer; the
// cautions are the rules' business, how long it keeps is keep.ts.

import type { Element } from '../pail/recipe.ts';
import type { Range } from '../quantity/range.ts';
import { type Balance, balance } from './balance.ts';
import { conductivityDsPerM } from './conductivity.ts';
import { ammoniumFraction } from './extraction.ts';
import { batchLiquidL, batchPlantsKg, type ElementFate, elementFate, type StrainedBatch } from './liquid.ts';
import { type SolidsCn, solidsCn } from './solids.ts';

export interface Strained {
  readonly balance: Balance;
  /** Water, starter and the plants' own water: all the liquid there can be, litres. */
  readonly batchLiquidL: number;
  readonly fates: Readonly<Record<Element, ElementFate>>;
  readonly ammoniumFraction: Range;
  /** Undefined when no ion is known. */
  readonly ecDsPerM: Range | undefined;
  readonly solidsCn: SolidsCn;
}

/** The whole answer for one strained batch. @arithmetic calls of balance, liquid, conductivity, solids */
export function strainedBatch(batch: StrainedBatch): Strained {
  const fates = {
    n: elementFate('n', batch),
    p: elementFate('p', batch),
    k: elementFate('k', batch),
    ca: elementFate('ca', batch),
    mg: elementFate('mg', batch),
  };
  const known = (fate: ElementFate) => (fate.known ? { [fate.element]: fate.gPerL } : {});
  const share = ammoniumFraction(batch.finalPh);
  return {
    balance: balance({
      plantsKg: batchPlantsKg(batch),
      waterL: batch.waterL,
      sugarKg: batch.sugar.massKg,
      starterL: batch.starterL,
      drainedL: batch.drainedL,
      solidsKg: batch.solidsKg,
    }),
    batchLiquidL: batchLiquidL(batch),
    fates,
    ammoniumFraction: share,
    ecDsPerM: conductivityDsPerM(
      { ...known(fates.n), ...known(fates.k), ...known(fates.ca), ...known(fates.mg) },
      share,
    ),
    solidsCn: solidsCn(batch, fates.n),
  };
}
