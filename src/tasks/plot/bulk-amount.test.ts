import { describe, expect, it } from 'vitest';
import { readAlkalinity } from '#web/weigh-in/alkalinity.ts';
import { litresHeld, readBulk } from './bulk-amount.ts';
import { readLabel } from './dress-forms.ts';

describe('what a barrow or a bucket holds', () => {
  it('is litres where a bare number is typed, and any unit of volume where one is', () => {
    expect(litresHeld('80', {})).toBe(80);
    expect(litresHeld('80 L', {})).toBe(80);
    expect(litresHeld('12,5', {})).toBe(12.5);
    expect(litresHeld('1 ½ l', {})).toBe(1.5);
    expect(litresHeld('20 gal', { gallon: 'imperial' })).toBeCloseTo(90.9218, 4);
    expect(litresHeld('', {})).toBeUndefined();
    expect(litresHeld('much', {})).toBeNaN();
  });
  it('is not taken for a thousandth or a thousandfold where two styles differ', () => {
    expect(litresHeld('1,250', {})).toBeNaN();
    expect(litresHeld('1,250', { style: 'comma' })).toBe(1.25);
    expect(readBulk('2 buckets', { litresOf: { bucket: litresHeld('12 L', {}) } })).toEqual({
      value: { typed: '2 buckets', volumeL: 24 },
    });
  });
});

describe('other figures as typed', () => {
  it('are read by the same reader', () => {
    expect(readAlkalinity('1,250', 'mg/L CaCO3')).toBeUndefined();
    expect(readAlkalinity('212', 'mg/L CaCO3')).toBeCloseTo(4.24, 2);
    expect(readAlkalinity('4,2', 'meq/L')).toBe(4.2);
    expect(readLabel('5-3,5-8')).toMatchObject({ n: 5, p2o5: 3.5, k2o: 8 });
  });
});
