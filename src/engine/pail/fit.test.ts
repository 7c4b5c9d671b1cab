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
    const halfKnown = { ...base, plants: [resolvePart({ name: 'hay', massKg: 1, dryMatter: 0.4, nPercentDm: 2 })] };
    expect(fitRecipe(halfKnown).unknown).toEqual([
      { element: 'p', materials: ['hay'] },
      { element: 'k', materials: ['hay'] },
    ]);
    expect(fitRecipe(base).unknown).toEqual([]);
  });

  it('answers what the beds can use where beds are named, and only there', () => {
    const beds = [{ areaM2: 10, depthLPerM2: 2, everyDays: 14 }];
    expect(fitRecipe(base, beds).use?.rounds).toBe(6);
    for (const none of [fitRecipe(base), fitRecipe(base, [])]) expect(none).not.toHaveProperty('use');
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

  it('lets the mat of day 0 float on water and dissolved sugar together', () => {
    const packed = { ...base, plants: base.plants.map((part) => ({ ...part, massKg: 8 })) };
    const of = { ...packed, water: { ...base.water, volumeL: 1 }, sugar: { product: white, massKg: 0.5 } };
    // 1 + 0.5 × 0.62 + 8 × 1.2 = 10.91 L; settled 9.31 L, lifted by gas to 10.71 L at most.
    expect(fitRecipe(of).lift.highL).toBeCloseTo(10.91, 9);
    expect(fitRecipe({ ...of, sugar: { product: white, massKg: 0 } }).lift.highL).toBeCloseTo(10.6, 9);
  });

  it('names what the acid takes, without the share of a sugar of which no amount would do', () => {
    // A product so well buffered that each gram of it takes more than a gram to sour.
    const chalky = { ...white, ph: 8, bufferEqPerKgPerPh: { low: 5, likely: 5, high: 5 } };
    const { sugar } = fitRecipe({ ...base, sugar: { product: chalky, massKg: 0 } });
    expect([sugar.window, sugar.asProductG]).toEqual(['closed', Number.POSITIVE_INFINITY]);
    expect(sugar.neededHexoseG).toBeCloseTo(fitRecipe(base).sugar.neededHexoseG, 9);
  });

  it('counts the own buffer of molasses in every end of what souring takes', () => {
    const { sugar } = fitRecipe({ ...base, sugar: { product: molasses, massKg: 0 } });
    const bare = fitRecipe(base).sugar.neededHexoseBandG;
    const own = sugar.terms.productSelfFraction * sugar.leastHexoseG.likely;
    expect(own).toBeGreaterThan(1);
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(sugar.neededHexoseBandG[end]).toBeCloseTo(bare[end] + own, 9);
    }
  });

  it('takes water out of an overfull pail while a litre stays for each kilogram of plants, and plants from there on', () => {
    // 12 L with a quarter for gas takes 9 L: 2.4 kg of plants and 7 L of water, with 62 mL of sugar, stand 0.462 L over.
    const leftOut = (plantsKg: number, waterL: number) =>
      fitRecipe({
        ...base,
        plants: base.plants.map((part) => ({ ...part, massKg: plantsKg })),
        water: { ...base.water, volumeL: waterL },
      }).cures.find(({ kind }) => kind === 'leave-out')?.leftOut;
    expect(leftOut(2.4, 7)).toEqual({ what: 'water', volumeL: 0.5 });
    // 4.45 + 5 + 0.062 L stand 0.512 L over: 0.55 L out leaves 4.45 L. With 50 g more 4.4 L would be left for 4.5 kg.
    expect(leftOut(4.45, 5)).toEqual({ what: 'water', volumeL: 0.55 });
    expect(leftOut(4.5, 5)?.what).not.toBe('water');
    expect(leftOut(4.5, 5)?.massKg).toBeCloseTo(0.57, 9);
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
