// Each term by hand: too small a demand asks for too little sugar, and the batch never turns sour.
import { describe, expect, it } from 'vitest';
import type { Range } from '../quantity/range.ts';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { acidDemand, protonsPerMol } from './acid-demand.ts';
import type { Recipe } from './recipe.ts';

const white = sugarProduct('white-sugar');
if (!white) throw new Error('sugar table incomplete');

/** Buffer per kilogram as weighed: 0.01, 0.02 and 0.03 eq per pH at a tenth of dry matter. */
const lot = (ph: Range | number, massKg = 2, ammoniaMolPerKgDm = 0) =>
  resolvePart({
    ...{ name: 'lot', massKg, dryMatter: 0.1, ph, ammoniaMolPerKgDm },
    bufferEqPerKgDmPerPh: { low: 0.1, likely: 0.2, high: 0.3 },
  });
const demand = (plants: Recipe['plants'], water: Partial<Recipe['water']> = {}) =>
  acidDemand({
    plants,
    water: { ...{ volumeL: 0, alkalinityMeqPerL: 0, ph: 7.6 }, ...water },
    sugar: { product: white, massKg: 0 },
    targetPh: 3.9,
  });
const expectEq = (found: Range, [low, likely, high]: readonly [number, number, number]) => {
  expect(found.low).toBeCloseTo(low, 6);
  expect(found.likely).toBeCloseTo(likely, 6);
  expect(found.high).toBeCloseTo(high, 6);
};

describe('the acid that plants take', () => {
  it('is mass × dry matter × buffer × pH above the target: 2 × 0.1 × 0.2 × 2 eq from pH 5.9', () => {
    // One known pH: the spread is that of the buffer, 0.1 to 0.3.
    expectEq(demand([lot(5.9)]).plantEq, [0.04, 0.08, 0.12]);
  });
  it('spreads by buffer and pH as independent ones do: 1.5, 2 or 3 above the target', () => {
    // On the logarithm: ln 2 and ln 4/3 down, ln 1.5 twice up; e^−0.750472 and e^0.573415 of 0.08.
    expectEq(demand([lot({ low: 5.4, likely: 5.9, high: 6.9 })]).plantEq, [0.0377715, 0.08, 0.1419454]);
  });
  it.each([
    // 0.9 to 0.4 more sour and up to 0.6 less: the worst of each end is with the largest buffer.
    ['may be of either sign', { low: 3, likely: 3.5, high: 4.5 }, [-0.054, -0.016, 0.036]],
    // 1.7, 1.5 and 1.3 more sour: they give acid, most with the largest buffer, least with the smallest.
    [
      'is below nothing for a fruit more sour than the target',
      { low: 2.2, likely: 2.4, high: 2.6 },
      [-0.102, -0.06, -0.026],
    ],
    // At the target and up to 1 above it: all that the largest buffer takes over the whole pH.
    ['is at most the largest buffer over the longest way', { low: 3.9, likely: 4.4, high: 4.9 }, [0, 0.02, 0.06]],
  ] as const)('%s', (_what, ph, expected) => {
    expectEq(demand([lot(ph)]).plantEq, expected);
  });
  it('of two lots spreads as independent ones do: √2 × 0.04 on either side of 0.16', () => {
    expectEq(demand([lot(5.9), lot(5.9)]).plantEq, [0.16 - 0.0565685425, 0.16, 0.16 + 0.0565685425]);
  });
});

describe('the acid that water and ammonia take', () => {
  it('counts the bicarbonate that turns to gas: 10 L at 2 meq/L from pH 7.6 to 3.9 take 0.0189 eq', () => {
    // 1/(1+10^(3.9−6.35)) − 1/(1+10^(7.6−6.35)) = 0.996464 − 0.053241 = 0.943224.
    expect(demand([], { volumeL: 10, alkalinityMeqPerL: 2 }).waterEq).toBeCloseTo(0.01886448, 6);
  });
  it('counts free acid at the target less what is there: 10 L at pH 5 need 1.159 meq, with plant water 1.367', () => {
    // 10^−3.9 − 10^−5 = 1.258925e−4 − 1e−5; 2 kg at a tenth of dry matter bring 1.8 L.
    expect(demand([], { volumeL: 10, ph: 5 }).freeEq).toBeCloseTo(0.001158925, 9);
    expect(demand([lot(5.9)], { volumeL: 10, ph: 5 }).freeEq).toBeCloseTo(0.001367532, 8);
  });
  it('counts ammonia of an analysis: 2 kg × 0.1 × 0.5 mol and 1 kg × 0.1 × 0.2 mol are 0.12 eq', () => {
    expect(demand([lot(5.9, 2, 0.5), lot(5.9, 1, 0.2)]).ammoniaEq).toBeCloseTo(0.12, 9);
    expect(demand([lot(5.9)]).ammoniaEq).toBe(0);
  });
});

describe('the whole demand', () => {
  it('is the sum of plants, water, free acid and ammonia, in each end', () => {
    const { totalEq } = demand([lot(5.9, 2, 0.5)], { volumeL: 10, alkalinityMeqPerL: 2, ph: 7.6 });
    // 0.04, 0.08 and 0.12 of plants; 0.018864 water; 11.8 L × (1.258925e−4 − 2.51e−8) = 0.001485; 0.1 ammonia.
    expect(totalEq.low).toBeCloseTo(0.16035, 5);
    expect(totalEq.likely).toBeCloseTo(0.20035, 5);
    expect(totalEq.high).toBeCloseTo(0.24035, 5);
  });
  it('is never below nothing, end by end, for fruit more sour than the target', () => {
    const { totalEq } = demand([lot({ low: 2.2, likely: 2.4, high: 2.6 })]);
    expect(totalEq).toEqual({ low: 0, likely: 0, high: 0 });
    const either = demand([lot({ low: 3, likely: 3.5, high: 4.5 })]).totalEq;
    expect([either.low, either.likely]).toEqual([0, 0]);
    // 0.036 of plants, and 1.8 L of plant water at 1.258674e−4.
    expect(either.high).toBeCloseTo(0.0362265, 6);
  });
});

describe('protons of a mole of acid', () => {
  it.each([
    // Half of each acid has given its proton at its own pKa.
    [3.86, 1, 0.5],
    [4.76, 0, 0.5],
    [3.9, 0.8, 0.4426668],
    [3.9, 0.5, 0.3221523],
  ])('at pH %d, %d of it lactic, are %d', (ph, lacticShare, expected) => {
    expect(protonsPerMol(ph, lacticShare)).toBeCloseTo(expected, 6);
  });
});
