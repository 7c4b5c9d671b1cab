// The sum at straining: what closes, what does not, and what a missing number does.

import { describe, expect, it } from 'vitest';
import { balance } from './balance.ts';

const batch = { plantsKg: 3, waterL: 5, sugarKg: 0.1, starterL: 0, drainedL: 6, solidsKg: 2 };

describe('mass balance', () => {
  it('counts water at 1 kg and drained liquid at 1.01 kg a litre', () => {
    const sum = balance(batch);
    expect(sum.inKg).toBeCloseTo(3 + 5 + 0.1, 10);
    expect(sum.outKg).toBeCloseTo(6 * 1.01 + 2, 10);
    expect(sum.unexplainedPercent).toBeCloseTo((100 * (8.1 - 8.06)) / 8.1, 10);
    expect(sum.closes).toBe(true);
  });

  it('counts a starter as the liquid it is: 2 L weigh 2.02 kg', () => {
    expect(balance({ ...batch, starterL: 2 }).inKg).toBeCloseTo(3 + 5 + 0.1 + 2.02, 10);
  });

  it('is below 0 when more came out than went in', () => {
    expect(balance({ ...batch, solidsKg: 3 }).unexplainedPercent).toBeLessThan(0);
  });

  it('closes at 15 % either way and not beyond', () => {
    // 10 kg in, nothing drained: solids alone make the sum exact
    const ten = { plantsKg: 10, waterL: 0, sugarKg: 0, starterL: 0, drainedL: 0 };
    expect(balance({ ...ten, solidsKg: 8.5 }).closes).toBe(true);
    expect(balance({ ...ten, solidsKg: 8.49 }).closes).toBe(false);
    expect(balance({ ...ten, solidsKg: 11.5 }).closes).toBe(true);
    expect(balance({ ...ten, solidsKg: 11.51 }).closes).toBe(false);
  });

  it('does not close on a number that is missing', () => {
    expect(balance({ ...batch, solidsKg: Number.NaN }).closes).toBe(false);
  });
});
