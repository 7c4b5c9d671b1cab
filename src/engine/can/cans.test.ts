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
  it('keep a small but real part-can: 20.1 L in 10 L cans', () => {
    expect(volumes(20.1, 1, 10)).toEqual([10, 10, 0.1]);
  });
});
