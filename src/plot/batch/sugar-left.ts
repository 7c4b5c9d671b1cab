// Sugar that may be left in a batch at a pH that was read: what a closed bottle could still gas with. Asked of the pail's own sums,
// at whatever pH a batch comes to.

import { batchLiquidL } from '#engine/bottle/liquid.ts';
import { sugarWindow } from '#engine/pail/sugar.ts';
import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { mixOf } from './recipe.ts';

/**
 * Sugar that may be left in a litre, at most: all that went in and that the plants brought, less the least that the
 * acid found took; undefined where there is no liquid.
 *
 *   left = (own, high end + added − taken by the acid, low end) / liquid
 *
 * @arithmetic on the engine's sugar window at the pH that was read; that yeast took none is our caution, no source
 */
export function sugarLeftGPerL(plot: Plot, batch: Batch, finalPh: number): number | undefined {
  const mix = mixOf(plot, batch);
  const { ownHexoseBandG, addedHexoseG, neededHexoseBandG } = sugarWindow({ ...mix, targetPh: finalPh });
  const liquidL = batchLiquidL({ plants: mix.plants, waterL: mix.water.volumeL, starterL: 0 });
  const leftG = Math.max(0, ownHexoseBandG.high + addedHexoseG - neededHexoseBandG.low);
  return liquidL > 0 ? leftG / liquidL : undefined;
}
