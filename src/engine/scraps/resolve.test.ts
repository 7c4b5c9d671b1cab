import { describe, expect, it } from 'vitest';
import { material, materials } from '../tables/index.ts';
import { ASSUMED, resolvePart } from './resolve.ts';

describe('resolvePart', () => {
  it('takes every figure of the table that the grower does not give', () => {
    const part = resolvePart({ material: 'carrot', massKg: 2 });
    const row = material('carrot');
    expect(part.massKg).toBe(2);
    expect(part.dryMatter.likely).toBe(row?.figures.dryMatter?.likely);
    expect(part.kPercentDm?.likely).toBe(row?.figures.kPercentDm?.likely);
    expect(part.assumed.map((a) => a.field)).toEqual(['displacementLPerKg']);
  });

  it("lets the grower's own analysis win over the table, figure by figure", () => {
    const part = resolvePart({
      material: 'grass-clippings-fresh',
      massKg: 2,
      dryMatter: 0.22,
      sugarsGPerKgDm: { low: 60, likely: 80, high: 90 },
    });
    expect(part.dryMatter).toEqual({ low: 0.22, likely: 0.22, high: 0.22 });
    expect(part.sugarsGPerKgDm).toEqual({ low: 60, likely: 80, high: 90 });
    expect(part.nPercentDm?.likely).toBe(material('grass-clippings-fresh')?.figures.nPercentDm?.likely);
  });

  it('lists what it had to assume, and counts sugars that nobody knows as none', () => {
    const part = resolvePart({ name: 'hedge leaves', massKg: 1, dryMatter: 0.3 });
    expect(part.sugarsGPerKgDm).toEqual({ low: 0, likely: 0, high: 0 });
    expect(part.bufferEqPerKgDmPerPh).toEqual(ASSUMED.bufferEqPerKgDmPerPh);
    expect(part.ph).toEqual(ASSUMED.ph);
    expect(part.assumed.map((a) => a.field).sort()).toEqual([
      'bufferEqPerKgDmPerPh',
      'displacementLPerKg',
      'ph',
      'sugarsGPerKgDm',
    ]);
    expect(part.assumed.every((a) => a.material === 'hedge leaves')).toBe(true);
  });

  it('leaves an element that nobody knows absent and lists it, never 0', () => {
    const part = resolvePart({ massKg: 1, dryMatter: 0.3, nPercentDm: 2 });
    expect(part.unknown).toEqual(['pPercentDm', 'kPercentDm', 'caPercentDm', 'mgPercentDm']);
    expect('pPercentDm' in part).toBe(false);
    expect(part.nPercentDm?.likely).toBe(2);
  });

  it('sends a treated lot nowhere and an unanswered one aside, and never softens what the table says', () => {
    const into = (id: string, treated: 'no' | 'unknown' | 'yes') =>
      resolvePart({ material: id, massKg: 1, treated }).into;
    expect(into('grass-clippings-fresh', 'no')).toBe('liquid');
    expect(into('grass-clippings-fresh', 'unknown')).toBe('set-aside');
    expect(into('grass-clippings-fresh', 'yes')).toBe('out');
    expect(into('straw', 'no')).toBe('compost-only');
    expect(into('straw', 'unknown')).toBe('set-aside');
    expect(into('pet-waste', 'no')).toBe('out');
  });

  it('answers the same for a lot from the table whether or not it was asked for before', () => {
    const first = resolvePart({ material: 'kale', massKg: 1 });
    const again = resolvePart({ material: 'kale', massKg: 3, name: 'own kale', ammoniaMolPerKgDm: 0.1 });
    expect(again).toEqual({ ...first, massKg: 3, name: 'own kale', ammoniaMolPerKgDm: 0.1 });
    expect(resolvePart({ material: 'kale', massKg: 1 })).toEqual(first);
  });

  it('resolves every material of the table, each band in order', () => {
    for (const { id } of materials) {
      const part = resolvePart({ material: id, massKg: 1 });
      for (const value of Object.values(part)) {
        if (typeof value !== 'object' || value === null || !('likely' in value)) continue;
        expect(value.low, id).toBeLessThanOrEqual(value.likely);
        expect(value.likely, id).toBeLessThanOrEqual(value.high);
      }
    }
  });

  it('refuses a lot of which neither table nor grower gives dry matter', () => {
    expect(() => resolvePart({ massKg: 1 })).toThrow(RangeError);
    expect(() => resolvePart({ material: 'moon-dust', massKg: 1 })).toThrow(RangeError);
  });
});
