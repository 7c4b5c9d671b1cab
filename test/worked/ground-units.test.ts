// Unit constants of the ground: as handbooks are recalled to print them, and by hand.

import { describe, expect, it } from 'vitest';
import { phosphorusPercent, potassiumPercent } from '#engine/ground/oxides.ts';
import { nitrateNGPerM2 } from '#engine/ground/soil-test.ts';
import { productSupply } from '#engine/ground/supply.ts';
import { worked } from '../published/rows.ts';

const FT2_M2 = 0.3048 ** 2;
const of: Readonly<Record<string, (value: number) => number>> = {
  'phosphorus in phosphate': phosphorusPercent,
  'potassium in potash': potassiumPercent,
  'g/m2 of 1 lb/acre': (value) => nitrateNGPerM2({ value, unit: 'lb-per-acre' }),
  'g/m2 of 1 lb/100 ft2': (value) => nitrateNGPerM2({ value: value * 435.6, unit: 'lb-per-acre' }),
};

describe('a unit of the ground', () => {
  it.each(worked('ground-units.csv'))('$case', (row) => {
    const found = of[row.case ?? '']?.(Number(row.value)) ?? Number.NaN;
    expect(Math.abs(found - Number(row.expected))).toBeLessThanOrEqual(Number(row.tolerance));
  });

  it('of nitrate in ppm is two pounds an acre for a furrow slice, and twice that for twice the depth', () => {
    expect(nitrateNGPerM2({ value: 10, unit: 'ppm' })).toBeCloseTo(20 * 0.112085, 5);
    expect(nitrateNGPerM2({ value: 10, unit: 'ppm', depthCm: 34 })).toBeCloseTo(40 * 0.112085, 5);
    expect(nitrateNGPerM2({ value: 100, unit: 'kg-per-ha' })).toBe(10);
  });
});

describe('a label of 10-10-10', () => {
  it('is 45.4 g of nitrogen, 19.8 of phosphorus and 37.7 of potassium a pound', () => {
    // 1 lb of 10-10-10: 453.6 g · 10 % N; P2O5 · 0.4364; K2O · 0.8301
    const { totalG } = productSupply({
      name: 'label',
      day: 0,
      massKg: 0.45359237,
      nPercent: 10,
      p2o5Percent: 10,
      k2oPercent: 10,
      release: 'at-once',
    });
    expect(totalG.n?.likely).toBeCloseTo(45.4, 1);
    expect(totalG.p?.likely).toBeCloseTo(45.359 * 0.4364, 2);
    expect(totalG.k?.likely).toBeCloseTo(45.359 * 0.8301, 2);
  });

  it('at 25 to 35 lb on 1,000 square feet is 12 to 17 g of nitrogen a square metre', () => {
    const gPerM2 = (lb: number) => {
      const of = { name: 'label', day: 0, nPercent: 10, p2o5Percent: 10, k2oPercent: 10, release: 'at-once' } as const;
      return (productSupply({ ...of, massKg: lb * 0.45359237 }).totalG.n?.likely ?? 0) / (1000 * FT2_M2);
    };
    expect(gPerM2(25)).toBeCloseTo(12.2, 1);
    expect(gPerM2(35)).toBeCloseTo(17.1, 1);
  });
});
