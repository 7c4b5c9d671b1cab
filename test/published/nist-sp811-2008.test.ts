// Unit factors against Thompson and Taylor 2008, Guide for the use of the SI (NIST SP 811), Appendix B.8.

import { describe, expect, it } from 'vitest';
import { celsiusFromFahrenheit, GRAIN_MG, UNITS, type UnitId } from '#engine/quantity/units.ts';
import { num, published } from './rows.ts';

describe('unit factors, NIST SP 811 Appendix B.8', () => {
  for (const row of published('nist-sp811-2008.csv')) {
    it(`${row.case}: ${row.printed} ${row.si}`, () => {
      const { factor } = UNITS[row.unit as UnitId];
      const inSi = row.si === 'm3' ? factor / 1000 : factor;
      expect(Math.abs(inSi - num(row, 'printed'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }

  it('a grain is 64.79891 mg exactly', () => {
    expect(GRAIN_MG).toBeCloseTo(64.79891, 12);
  });

  it('degrees Fahrenheit follow t/°C = (t/°F − 32)/1.8: 32 °F is 0 °C, 212 °F is 100 °C, −40 is −40', () => {
    expect(celsiusFromFahrenheit(32)).toBe(0);
    expect(celsiusFromFahrenheit(212)).toBeCloseTo(100, 12);
    expect(celsiusFromFahrenheit(-40)).toBeCloseTo(-40, 12);
  });
});
