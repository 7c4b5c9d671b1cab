// Oxides on a label against the masses of the atoms: P 30.973762, K 39.0983, O 15.999 (IUPAC 2021, abridged).

import { describe, expect, it } from 'vitest';
import { elementsOfLabel, K_IN_K2O, P_IN_P2O5 } from './label.ts';

const [P, K, O] = [30.973762, 39.0983, 15.999];

describe('the analysis on a bag', () => {
  it('turns oxides into elements by the masses of their atoms', () => {
    // The usual four decimals of fertiliser tables are cut, not rounded: 0.8301 stands for 0.83015.
    expect(Math.abs(P_IN_P2O5 - (2 * P) / (2 * P + 5 * O))).toBeLessThan(1e-4);
    expect(Math.abs(K_IN_K2O - (2 * K) / (2 * K + O))).toBeLessThan(1e-4);
  });

  it('reads 10-10-10 as 100 g N, 44 g P and 83 g K in a kilogram, not as 100 each', () => {
    const { nTotalGPerKg, pGPerKg, kGPerKg } = elementsOfLabel({ nPercent: 10, p2o5Percent: 10, k2oPercent: 10 });
    expect(nTotalGPerKg).toBe(100);
    expect(pGPerKg).toBeCloseTo(43.64, 2);
    expect(kGPerKg).toBeCloseTo(83.01, 2);
  });
});
