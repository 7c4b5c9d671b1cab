// A cure is a whole recipe that is taken in one touch: each is held to sums by hand at the fill line of 9 L (12 L, a quarter for gas).
import { describe, expect, it } from 'vitest';
import { lot, recipe } from '../../../test/worked/pail-recipe.ts';
import { type Cure, cures } from './cures.ts';
import type { Recipe } from './recipe.ts';
import { fill } from './volume.ts';

const curesOf = (of: Recipe) => cures(of, fill(of));
const cure = (of: Recipe, kind: Cure['kind']) => curesOf(of).find((one) => one.kind === kind);
const massesOf = (found: Cure | undefined) => found?.plants?.map(({ massKg }) => massKg);

describe('a batch that fits and fills its vessel well', () => {
  it('needs no cure from 60 % of the usable volume on, and is far from full below', () => {
    // 40 L with a quarter for gas take 30: 18 L are 60 %.
    const of = (waterL: number) => ({ ...recipe(waterL), vessel: { volumeL: 40, gasRoom: 0.25 } });
    expect(curesOf(of(30))).toEqual([]);
    expect(curesOf(of(18))).toEqual([]);
    expect(curesOf(of(17.9)).map(({ kind }) => kind)).toEqual(['more', 'vessel']);
  });
  it('is not told of more while nothing is in', () => {
    expect(curesOf(recipe(0))).toEqual([]);
  });
});

describe('the vessel to take instead', () => {
  it('keeps the same share for gas, in tenths of a litre upwards: 18 L and a quarter for gas need 24 L', () => {
    expect(cure(recipe(18), 'vessel')?.volumeL).toBe(24);
    expect(cure(recipe(18.01), 'vessel')?.volumeL).toBe(24.1);
    expect(cure({ ...recipe(18), vessel: { volumeL: 12, gasRoom: 0.5 } }, 'vessel')?.volumeL).toBe(36);
  });
  it('is a smaller one for a batch that is far from full: 3 L need 4 L', () => {
    expect(cure(recipe(3), 'vessel')?.volumeL).toBe(4);
  });
});

describe('the same recipe, smaller', () => {
  it('has nine tenths of everything at 10 L, named as before', () => {
    // 6 L, 0.2 kg of sugar (0.1 L) and 3.9 kg of plants.
    const found = cure(recipe(6, 0.2, [lot('hedge', 2.4), lot('comfrey', 1.5)]), 'scale');
    expect(found).toEqual({
      kind: 'scale',
      factor: 0.9,
      plants: [
        { name: 'hedge', material: undefined, massKg: 2.16 },
        { name: 'comfrey', material: undefined, massKg: 1.35 },
      ],
      waterL: 5.4,
      sugarKg: 0.18,
    });
  });
  it('rounds each amount down to what a scale or jug shows: 10 g, 50 mL, 1 g', () => {
    const found = cure(recipe(6.03, 0.2017, [lot('hedge', 3.869)]), 'scale');
    // 9.99985 L: nine tenths are 3.4821 kg, 5.427 L, 181.53 g.
    expect([found?.factor, massesOf(found), found?.waterL, found?.sugarKg]).toEqual([0.9, [3.48], 5.4, 0.181]);
  });
  it('rounds from five steps on, and leaves what is smaller as it is', () => {
    // Nine tenths of 56 g are 50.4 g; of 55 g, 49.5 g.
    const of = (massKg: number) => recipe(10 - massKg, 0, [lot('hedge', massKg)]);
    expect(massesOf(cure(of(0.056), 'scale'))).toEqual([0.05]);
    expect(massesOf(cure(of(0.055), 'scale'))?.[0]).toBeCloseTo(0.0495, 9);
    expect(massesOf(cure(of(0.001), 'scale'))?.[0]).toBeCloseTo(0.0009, 9);
  });
  it('has its factor in hundredths downwards, so that 9 of 9.1 L are 0.98, and never rounds a tenth away', () => {
    expect(cure(recipe(9.1), 'scale')?.factor).toBe(0.98);
    expect(cure(recipe(90), 'scale')?.factor).toBe(0.1);
  });
  it.each([91, 300, 900, 4000])('fits with a small factor too: %d L into 9', (waterL) => {
    const found = cure(recipe(waterL), 'scale');
    expect(found?.factor).toBeLessThan(9 / waterL);
    expect(found?.factor).toBeGreaterThan((9 / waterL) * 0.999);
    expect(fill(recipe(found?.waterL ?? Number.NaN)).fits).toBe(true);
  });
});

describe('the same recipe, larger', () => {
  it('fills the usable volume: 3 L into 9 are three times everything', () => {
    const found = cure(recipe(2, 0.1, [lot('hedge', 0.95)]), 'more');
    expect([found?.factor, massesOf(found), found?.waterL, found?.sugarKg]).toEqual([3, [2.85], 6, 0.3]);
  });
});

describe('what to leave out', () => {
  it('is water while a litre stays for each kilogram of plants, in 50 mL upwards', () => {
    expect(cure(recipe(7.3, 0.2, [lot('hedge', 2.1)]), 'leave-out')).toEqual({
      kind: 'leave-out',
      plants: [{ name: 'hedge', material: undefined, massKg: 2.1 }],
      waterL: 6.8,
      sugarKg: 0.2,
      leftOut: { what: 'water', volumeL: 0.5 },
    });
    expect(cure(recipe(7.31, 0.2, [lot('hedge', 2.1)]), 'leave-out')?.leftOut).toEqual({
      what: 'water',
      volumeL: 0.55,
    });
  });
  it('is some of the largest lot where the rest would no longer be covered, in 10 g upwards by its own volume', () => {
    // 2 + 0.1 + 1 × 2 + 4 × 1.25 + 1 × 0.4 = 9.5 L: half a litre of it is 0.4 kg of the clippings.
    const plants = [lot('hedge', 2), lot('clippings', 4, 1.25), lot('comfrey', 0.4)];
    expect(cure(recipe(2, 0.2, plants), 'leave-out')).toEqual({
      kind: 'leave-out',
      plants: [
        { name: 'hedge', material: undefined, massKg: 2 },
        { name: 'clippings', material: undefined, massKg: 3.6 },
        { name: 'comfrey', material: undefined, massKg: 0.4 },
      ],
      waterL: 2,
      sugarKg: 0.2,
      leftOut: { what: 'clippings', massKg: 0.4 },
    });
    expect(cure(recipe(2.01, 0.2, plants), 'leave-out')?.leftOut).toEqual({ what: 'clippings', massKg: 0.41 });
  });
  it('is of the one first named where two lots are the largest', () => {
    const found = cure(recipe(1, 0, [lot('hedge', 1.5), lot('clippings', 4), lot('comfrey', 4)]), 'leave-out');
    expect(found?.leftOut).toEqual({ what: 'clippings', massKg: 1.5 });
    expect(massesOf(found)).toEqual([1.5, 2.5, 4]);
  });
  it('fits again, and is not on offer where one lot is not enough', () => {
    // 3 + 3 × 3 L stand 3 L over: all of a lot of 3 kg. With 3.5 kg of the first, 0.5 kg of it stay.
    const three = (firstKg: number) => recipe(3, 0, [lot('a', firstKg), lot('b', 3), lot('c', 6 - firstKg)]);
    expect(cure(three(3), 'leave-out')).toBeUndefined();
    expect(curesOf(three(3)).map(({ kind }) => kind)).toEqual(['scale', 'vessel']);
    expect(cure(three(3.5), 'leave-out')?.leftOut).toEqual({ what: 'a', massKg: 3 });
    expect(massesOf(cure(three(3.5), 'leave-out'))).toEqual([0.5, 3, 2.5]);
  });
  it('is nothing where sugar alone is too much', () => {
    expect(cure(recipe(0.5, 20), 'leave-out')).toBeUndefined();
  });
});
