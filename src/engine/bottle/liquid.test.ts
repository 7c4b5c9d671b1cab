// One element from the scale to the bottle: ceilings, molasses, unknown lots, conductivity, C:N.

import { describe, expect, it } from 'vitest';
import type { SugarProduct } from '../scraps/part.ts';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { conductivityDsPerM } from './conductivity.ts';
import { batchLiquidL, elementFate, type StrainedBatch } from './liquid.ts';
import { solidsCn } from './solids.ts';
import { strainedBatch } from './strained.ts';

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
    // 0.3 kg at 40 g/kg is 12 g in 10 L: 8 L take 9.6 g along, the wet solids keep 2.4 g beside the plants' 8 g
    expect(k.drainedG.likely).toBeCloseTo(9.6, 10);
    expect(k.solidsG.likely).toBeCloseTo(10.4, 10);
  });

  it('takes nothing but potassium from molasses: nitrogen comes out as with white sugar', () => {
    const n = elementFate('n', { ...batch, sugar: { product: molasses, massKg: 0.3 } });
    expect(n.sugarG).toEqual({ low: 0, likely: 0, high: 0 });
    expect(n.drainedG.likely).toBeCloseTo(2.124, 3);
  });

  it('keeps in the solids what was not given up and drained, most where least was given up', () => {
    // given up 0.1264, 0.2212, 0.3477, of it 8 of 10 L: 12 × (1 − 0.3477 × 0.8) = 8.662 up to 12 × (1 − 0.1264 × 0.8) = 10.786
    const { low, likely, high } = elementFate('n', batch).solidsG;
    expect([low, likely, high]).toEqual([8.662, 9.876, 10.786].map((grams) => expect.closeTo(grams, 2)));
  });

  it('names the lots it does not know and says nothing when it knows none', () => {
    const p = elementFate('p', batch);
    expect(p.known).toBe(false);
    expect(p.unknownIn).toHaveLength(1);
  });

  it('is known where one lot is, where no plant went in, and where molasses brings it', () => {
    const untested = resolvePart({ massKg: 1, dryMatter: 0.1, name: 'peel' });
    const fate = (plants: StrainedBatch['plants'], element: 'n' | 'k', sugar = batch.sugar) =>
      elementFate(element, { ...batch, plants, sugar });
    expect(fate(batch.plants, 'n')).toMatchObject({ known: true, unknownIn: [] });
    expect(fate([...batch.plants, untested], 'n')).toMatchObject({ known: true, unknownIn: ['peel'] });
    expect(fate([], 'n')).toMatchObject({ known: true, unknownIn: [] });
    expect(fate([untested], 'k', { product: molasses, massKg: 0.3 }).known).toBe(true);
    expect(fate([untested], 'n', { product: molasses, massKg: 0.3 }).known).toBe(false);
    expect(fate([untested], 'k').known).toBe(false);
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

  it('counts magnesium by its half molar mass: 122 mg are 10 meq/L, 1 dS/m', () => {
    const none = { low: 0, likely: 0, high: 0 };
    expect(conductivityDsPerM({ mg: { low: 0.122, likely: 0.122, high: 0.122 } }, none)?.likely).toBeCloseTo(1, 10);
  });

  it('of a strained batch is that of the ions that are known, and of none where none is', () => {
    // K: 8 g × 0.9197 given up in 10 L = 735.8 mg/L, 18.87 meq; N: 265.5 mg/L × 0.055 = 1.04 meq; 19.91 meq/L, 1.991 dS/m
    const { fates, ecDsPerM } = strainedBatch(batch);
    expect([fates.p.known, fates.ca.known, fates.mg.known]).toEqual([false, false, false]);
    expect(ecDsPerM?.likely).toBeCloseTo(1.991, 3);
    const untested = resolvePart({ massKg: 2, dryMatter: 0.2, name: 'peel' });
    expect(strainedBatch({ ...batch, plants: [untested] }).ecDsPerM).toBeUndefined();
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
    // Carbon left 0.65 to 0.9 (likely 0.8), nitrogen left 0.7219 to 0.8989 (likely 0.8230), each a doubt of its own:
    // low 14.58 · exp −√(ln² 0.8/0.65 + ln² 0.8989/0.8230), high 14.58 · exp √(ln² 0.9/0.8 + ln² 0.8230/0.7219)
    expect(cn.known && [cn.cn.low, cn.cn.high]).toEqual([expect.closeTo(11.64, 2), expect.closeTo(17.39, 2)]);
  });

  it('weighs the lots by their nitrogen', () => {
    // 12 g N at 15 and 4 g N at 43: (180 + 172) / 16 = 22
    const straw = resolvePart({ massKg: 0.5, dryMatter: 0.8, nPercentDm: 1, cn: 43 });
    const mixed = { ...batch, plants: [...batch.plants, straw] };
    const cn = solidsCn(mixed, elementFate('n', mixed));
    expect(cn.known && cn.putIn.cn.likely).toBeCloseTo(22, 10);
  });

  it('is not given where there is no nitrogen to divide by, or no plant', () => {
    const without = { ...batch, plants: [resolvePart({ ...leaf, nPercentDm: 0 })] };
    expect(solidsCn(without, elementFate('n', without))).toEqual({ known: false, missingIn: [] });
    const none = { ...batch, plants: [] };
    expect(solidsCn(none, elementFate('n', none))).toEqual({ known: false, missingIn: [] });
  });

  it('is not given while one lot lacks it, and names that lot', () => {
    const mixed = { ...batch, plants: [...batch.plants, resolvePart({ massKg: 1, dryMatter: 0.1, name: 'peel' })] };
    expect(solidsCn(mixed, elementFate('n', mixed))).toEqual({ known: false, missingIn: ['peel'] });
  });
});
