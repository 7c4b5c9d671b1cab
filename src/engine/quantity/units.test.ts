import { describe, expect, it } from 'vitest';
import { depthMm, ecDsPerM, SPOON_COUNTRIES, UNITS } from './units.ts';

describe('kitchen measures', () => {
  it('tablespoons hold 14.787, 15, 17.758 and 20 mL by country', () => {
    const mL = SPOON_COUNTRIES.map((country) => UNITS[`tbsp-${country}`].factor * 1000);
    // 231 × 2.54³ / 256; 15; 4546.09 / 256; 20
    expect(mL.map((one) => Number(one.toFixed(3)))).toEqual([14.787, 15, 17.758, 20]);
  });

  it('say that they have no single definition where none exists', () => {
    expect(UNITS['tbsp-uk'].doubt).toContain('15');
    expect(UNITS['tbsp-metric'].origin).toBe('practice');
  });
});

describe('depth and conductivity', () => {
  it('24 L over 9.60 m² stands 2.5 mm deep', () => {
    expect(depthMm({ volumeL: 24, areaM2: 9.6 })).toBeCloseTo(2.5, 12);
  });

  it('one inch on 100 square feet is 235.97 L', () => {
    // 25.4 mm × 9.290304 m² = 235.9737 L
    expect(depthMm({ volumeL: 235.9737216, areaM2: UNITS.ft2.factor * 100 })).toBeCloseTo(25.4, 9);
  });

  it('0.58 mS/cm, 0.58 dS/m and 580 µS/cm are one conductivity', () => {
    expect(ecDsPerM({ value: 0.58, unit: 'mS/cm' })).toBe(0.58);
    expect(ecDsPerM({ value: 0.58, unit: 'dS/m' })).toBe(0.58);
    expect(ecDsPerM({ value: 580, unit: 'µS/cm' })).toBeCloseTo(0.58, 12);
  });
});
