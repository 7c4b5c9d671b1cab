import { describe, expect, it } from 'vitest';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { fit as fitRecipe } from './fit.ts';
import type { Recipe } from './recipe.ts';

const white = sugarProduct('white-sugar');
const molasses = sugarProduct('cane-molasses');
if (!white || !molasses) throw new Error('sugar table incomplete');

const base: Recipe = {
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants: [
    resolvePart({
      massKg: 2,
      dryMatter: 0.2,
      sugarsGPerKgDm: 80,
      bufferEqPerKgDmPerPh: 0.27,
      ph: 6.2,
      nPercentDm: 4,
      pPercentDm: 0.5,
      kPercentDm: 2,
    }),
  ],
  water: { volumeL: 6, alkalinityMeqPerL: 2, ph: 7.6 },
  sugar: { product: white, massKg: 0.1 },
  targetPh: 3.9,
};

describe('fit', () => {
  it('adds water, plants at 1.0 L/kg and dissolved sugar', () => {
    // 6 + 2 × 1.0 + 0.1 × 0.62
    expect(fitRecipe(base).fill.volumeL.likely).toBeCloseTo(8.062, 9);
  });

  it('counts what the plants carry in: 2 kg × 0.2 × 4 % = 16 g of nitrogen', () => {
    const { inputs } = fitRecipe(base);
    expect(inputs.nG.likely).toBeCloseTo(16, 9);
    expect(inputs.pG.likely).toBeCloseTo(2, 9);
    expect(inputs.kG.likely).toBeCloseTo(8, 9);
  });

  it('names the lots whose figures are not known instead of counting them as nothing known', () => {
    const bare = { ...base, plants: [...base.plants, resolvePart({ name: 'hedge', massKg: 1, dryMatter: 0.4 })] };
    expect(fitRecipe(bare).unknown).toContainEqual({ element: 'n', materials: ['hedge'] });
  });

  it('asks for more of a sugar that must be soured itself', () => {
    const withMolasses = { ...base, sugar: { product: molasses, massKg: 0 } };
    expect(fitRecipe(withMolasses).sugar.leastHexoseG.likely).toBeGreaterThan(
      fitRecipe(base).sugar.leastHexoseG.likely,
    );
  });

  it('solves the own buffer of molasses as repeated substitution does', () => {
    const withMolasses = { ...base, sugar: { product: molasses, massKg: 0 } };
    const { sugar } = fitRecipe(withMolasses);
    const bare = fitRecipe(base).sugar;
    let least = 0;
    for (let i = 0; i < 200; i++) {
      const needed = bare.neededHexoseG + sugar.terms.productSelfFraction * least;
      least = Math.max(0, 2 * needed - bare.ownHexoseG);
    }
    expect(sugar.leastHexoseG.likely).toBeCloseTo(least, 6);
  });

  it('closes the window when the least passes the most', () => {
    const dry = {
      ...base,
      plants: [{ ...(base.plants[0] as (typeof base.plants)[0]), massKg: 8 }],
      water: { ...base.water, volumeL: 1 },
    };
    expect(fitRecipe(dry).sugar.window).toBe('closed');
    expect(fitRecipe(base).sugar.window).toBe('open');
  });
});
