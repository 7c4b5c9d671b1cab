// Whole division by hand beside each case.
import { describe, expect, it } from 'vitest';
import { cansFor } from './cans.ts';

const volumes = (areaM2: number, depthLPerM2: number, canL: number) =>
  cansFor({ areaM2, depthLPerM2, canL, concentrateFraction: 0.1 }).cans.map((can) => can.volumeL);

describe('cans for a bed', () => {
  it('are full ones alone when they come out even: 6 L in 2 L cans', () => {
    expect(volumes(3, 2, 2)).toEqual([2, 2, 2]);
  });
  it('are one part-can for less than a can: 1.5 L in a 10 L can', () => {
    expect(volumes(1, 1.5, 10)).toEqual([1.5]);
  });
  it('have no sliver from binary arithmetic: 0.3 m² at 1 L/m² in 0.1 L cans is three', () => {
    expect(volumes(0.3, 1, 0.1)).toEqual([0.1, 0.1, 0.1]);
  });
  it('take a millionth of a can for rounding, and no more: 19.999999 L are two cans of 10 L, 19.9999 L are not', () => {
    expect(volumes(19.999999, 1, 10)).toEqual([10, 10]);
    expect(volumes(19.9999, 1, 10)).toEqual([10, 9.9999]);
    expect(volumes(0.000001, 1, 1)).toEqual([]);
    expect(volumes(0.0000011, 1, 1)).toEqual([0.0000011]);
  });
  it('hold their share of concentrate: a tenth of 25 L is 2.5 L, of each can 1000 mL and of the last 500', () => {
    const found = cansFor({ areaM2: 25, depthLPerM2: 1, canL: 10, concentrateFraction: 0.1 });
    expect([found.totalL, found.concentrateL]).toEqual([25, 2.5]);
    expect(found.cans.map(({ concentrateMl }) => concentrateMl)).toEqual([1000, 1000, 500]);
  });
  it('keep a small but real part-can: 20.1 L in 10 L cans', () => {
    expect(volumes(20.1, 1, 10)).toEqual([10, 10, 0.1]);
  });
});
