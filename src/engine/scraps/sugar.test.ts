import { describe, expect, it } from 'vitest';
import { sugarIds, sugarProduct, sugarsInVolumeG } from './sugar.ts';

describe('sugarProduct', () => {
  it('gives every figure of every sugar source', () => {
    for (const id of sugarIds) expect(sugarProduct(id)?.hexoseGPerKg.likely, id).toBeGreaterThan(400);
    expect(sugarProduct('sand')).toBeUndefined();
  });

  it('counts white sugar as the hexose that sucrose splits into, 2 × 180.16 g from 342.30 g', () => {
    // Molar masses from standard atomic weights: C6H12O6 180.16, C12H22O11 342.30 g/mol.
    const perKg = (1000 * 2 * 180.16) / 342.3;
    const white = sugarProduct('white-sugar')?.hexoseGPerKg;
    expect(Math.abs((white?.likely ?? 0) - perKg)).toBeLessThan(5);
  });

  it('gives white sugar no buffer and no potassium, and molasses much of both', () => {
    expect(sugarProduct('white-sugar')?.bufferEqPerKgPerPh.high).toBe(0);
    expect(sugarProduct('white-sugar')?.kGPerKg.high).toBe(0);
    expect(sugarProduct('cane-molasses')?.bufferEqPerKgPerPh.low).toBeGreaterThan(0.1);
    expect(sugarProduct('cane-molasses')?.kGPerKg.low).toBeGreaterThanOrEqual(30);
  });
});

describe('sugarsInVolumeG', () => {
  it('is volume × density × sugars: 100 mL of white sugar at 0.84 kg/L and 999 g/kg holds 83.9 g', () => {
    expect(sugarsInVolumeG({ id: 'white-sugar', volumeMl: 100 })?.likely).toBeCloseTo(0.1 * 0.84 * 999, 9);
  });

  it('shows that one jug of different sugars differs by more than the 10 % a spoon errs', () => {
    const likely = sugarIds.map((id) => sugarsInVolumeG({ id, volumeMl: 100 })?.likely ?? 0);
    const times = Math.max(...likely) / Math.min(...likely);
    // Syrup of 480 g/kg at 1.4 kg/L holds 67 g, honey of 800 g/kg at 1.4 kg/L 112 g: 1.67 times.
    expect(times).toBeGreaterThan(1.4);
    expect(times).toBeLessThan(1.9);
  });

  it('has no answer for a product it does not know', () => {
    expect(sugarsInVolumeG({ id: 'sugar', volumeMl: 100 })).toBeUndefined();
  });
});
