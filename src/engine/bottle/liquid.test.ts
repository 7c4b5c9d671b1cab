// One element from the scale to the bottle: ceilings, molasses, unknown lots, conductivity, C:N.

import { describe, expect, it } from 'vitest';
import type { SugarProduct } from '../scraps/part.ts';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { conductivityDsPerM } from './conductivity.ts';
import { batchLiquidL, elementFate, type StrainedBatch } from './liquid.ts';
import { solidsCn } from './solids.ts';

const white = sugarProduct('white-sugar') as SugarProduct;
const molasses = sugarProduct('cane-molasses') as SugarProduct;
/** 2 kg at 20 % dry matter: 400 g; 3 % N is 12 g, 2 % K is 8 g, 1.6 L of its own water. */
const leaf = { massKg: 2, dryMatter: 0.2, nPercentDm: 3, kPercentDm: 2, cn: 15 };
const batch: StrainedBatch = {
  plants: [resolvePart(leaf)],
  waterL: 8.4,
  sugar: { product: white, massKg: 0.1 },
  starterL: 0,
  days: 10,
  temperatureC: 20,
  finalPh: 3.8,
  drainedL: 8,
  solidsKg: 2,
};

describe('liquid of a batch', () => {
  it('is water, starter and the plants’ own water', () => {
    expect(batchLiquidL(batch)).toBeCloseTo(10, 10);
    expect(batchLiquidL({ ...batch, starterL: 0.5 })).toBeCloseTo(10.5, 10);
  });
});

describe('one element', () => {
  it('has a ceiling of all that went in over all the liquid', () => {
    expect(elementFate('n', batch).ceilingGPerL).toBeCloseTo(1.2, 10);
    expect(elementFate('k', batch).ceilingGPerL).toBeCloseTo(0.8, 10);
  });

  it('closes: drained and left in the solids make what went in', () => {
    const n = elementFate('n', batch);
    expect(n.drainedG.likely + n.solidsG.likely).toBeCloseTo(12, 10);
    // 12 g × 0.2212 given up × 8 of 10 L
    expect(n.drainedG.likely).toBeCloseTo(2.124, 3);
  });

  it('counts the potassium of molasses as put in and as dissolved from the first day', () => {
    const sweet = { ...batch, days: 0, sugar: { product: molasses, massKg: 0.3 } };
    const k = elementFate('k', sweet);
    expect(k.inG.likely).toBeCloseTo(8 + 0.3 * molasses.kGPerKg.likely, 10);
    expect(k.gPerL.likely).toBeCloseTo((0.3 * molasses.kGPerKg.likely) / 10, 10);
  });

  it('names the lots it does not know and says nothing when it knows none', () => {
    const p = elementFate('p', batch);
    expect(p.known).toBe(false);
    expect(p.unknownIn).toHaveLength(1);
  });

  it('never gives more than went in when more was drained than there was', () => {
    const n = elementFate('n', { ...batch, drainedL: 40 });
    expect(n.drainedG.high).toBeLessThanOrEqual(12);
    expect(n.solidsG.low).toBeGreaterThanOrEqual(0);
  });
});

describe('conductivity', () => {
  it('is the sum of equivalents over ten, a quarter less to two fifths more', () => {
    // 390 mg K = 10 meq, 200 mg Ca = 10 meq, 140 mg N of which a tenth is ammonium = 1 meq: 21 meq/L, 2.1 dS/m
    const point = (likely: number) => ({ low: likely, likely, high: likely });
    const ec = conductivityDsPerM({ k: point(0.39), ca: point(0.2), n: point(0.14) }, point(0.1));
    expect(ec?.likely).toBeCloseTo(2.1, 6);
    expect(ec?.low).toBeCloseTo(2.1 * 0.75, 6);
    expect(ec?.high).toBeCloseTo(2.1 * 1.41, 6);
  });

  it('is not known when no ion is known', () => {
    expect(conductivityDsPerM({}, { low: 0, likely: 0, high: 0 })).toBeUndefined();
  });
});

describe('C:N of the solids', () => {
  it('falls below that of the plants by the carbon lost and rises by the nitrogen drained', () => {
    // 15 × (1 − 0.2) / (1 − 0.2212 × 0.8) = 12 / 0.8230
    const cn = solidsCn(batch, elementFate('n', batch));
    expect(cn.known && cn.cn.likely).toBeCloseTo(14.58, 2);
  });

  it('weighs the lots by their nitrogen', () => {
    // 12 g N at 15 and 4 g N at 43: (180 + 172) / 16 = 22
    const straw = resolvePart({ massKg: 0.5, dryMatter: 0.8, nPercentDm: 1, cn: 43 });
    const mixed = { ...batch, plants: [...batch.plants, straw] };
    const cn = solidsCn(mixed, elementFate('n', mixed));
    expect(cn.known && cn.putIn.cn.likely).toBeCloseTo(22, 10);
  });

  it('is not given while one lot lacks it, and names that lot', () => {
    const mixed = { ...batch, plants: [...batch.plants, resolvePart({ massKg: 1, dryMatter: 0.1, name: 'peel' })] };
    expect(solidsCn(mixed, elementFate('n', mixed))).toEqual({ known: false, missingIn: ['peel'] });
  });
});
