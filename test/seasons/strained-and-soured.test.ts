// The straining sheet and both answers about souring agree with the engine at every acidity.

import { describe, expect, it } from 'vitest';
import { batchLiquidL } from '#engine/bottle/liquid.ts';
import { fit as fitRecipe } from '#engine/pail/fit.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { straining } from '#tasks/plot/straining.ts';
import { filled, PLANTS_KG, WATER_L } from './pail.ts';

const SUGAR_KG = 0.4;
/** Counted by the straining sheet for a water that nobody told. */
const HARD_WATER_MEQ = 4;

/** What the straining sheet says of the pail at a final acidity. */
function strainedAt(ph: number) {
  const { grower, batch } = filled({ sugarKg: SUGAR_KG });
  grower.wait(9);
  const sheet = straining({
    plot: grower.plot,
    batch,
    now: grower.now,
    drainedL: 6,
    acidity: { ph, by: 'meter' },
    bottle: { sizeL: 1, filledL: 0.9, count: 6, cap: 'vent', material: 'plastic', temperatureC: 18 },
  });
  if (!sheet.ok) throw new Error(JSON.stringify(sheet));
  return { leftGPerL: sheet.value.sugarLeftGPerL, pressure: sheet.value.strain.pressure?.upToBar };
}

/** Sugar left by the engine's own sums: what came in at most, less what the acid took at least, in a litre. */
function engineGPerL(targetPh: number): number {
  const plants = [resolvePart({ material: 'grass-clippings-fresh', massKg: PLANTS_KG, treated: 'no' })];
  const product = sugarProduct('white-sugar');
  if (product === undefined) throw new Error('no white sugar');
  const { sugar } = fitRecipe({
    vessel: { volumeL: 12, gasRoom: 0.25 },
    plants,
    water: { volumeL: WATER_L, alkalinityMeqPerL: HARD_WATER_MEQ, ph: 7.6 },
    sugar: { product, massKg: SUGAR_KG },
    targetPh,
  });
  const leftG = sugar.ownHexoseBandG.high + sugar.addedHexoseG - sugar.neededHexoseBandG.low;
  return Math.max(0, leftG) / batchLiquidL({ plants, waterL: WATER_L, starterL: 0 });
}

describe('the sugar that is left', () => {
  it('is known at pH 3.5 to 4.6, as the engine has it', () => {
    for (const ph of [3.5, 4, 4.6]) {
      expect(strainedAt(ph).leftGPerL).toBeCloseTo(engineGPerL(ph), 9);
      expect(strainedAt(ph).pressure).toBeGreaterThan(0);
    }
  });
  for (const ph of [3.2, 3.4, 4.7, 4.8, 5.2]) {
    const { leftGPerL, pressure } = strainedAt(ph);
    const leftByEngine = engineGPerL(ph);
    it(`is known at pH ${ph} too`, () => {
      expect(leftGPerL).toBeCloseTo(leftByEngine, 9);
    });
    it(`tells at pH ${ph} the pressure that a bottle may come to`, () => {
      expect(pressure).toBeGreaterThan(0);
    });
  }
});
