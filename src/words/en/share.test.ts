// The share the liquid brought, as it is said: never more places than the estimate holds, and never 0.00 for a little.

import { describe, expect, it } from 'vitest';
import { sharePercent } from './ledger.ts';

describe('the share of a need', () => {
  it.each([
    [{ low: 0, likely: 0, high: 0 }, '0\u00a0%'],
    [{ low: 0.0012, likely: 0.0025, high: 0.0048 }, '0.003\u00a0% (0.001 to 0.005)'],
    [{ low: 0.012, likely: 0.02, high: 0.034 }, '0.02\u00a0% (0.01 to 0.03)'],
    [{ low: 0.2, likely: 0.31, high: 0.62 }, '0.31\u00a0% (0.20 to 0.62)'],
    [{ low: 2.04, likely: 4.1, high: 7.96 }, '4.1\u00a0% (2.0 to 8.0)'],
    [{ low: 20, likely: 41, high: null }, '41\u00a0% (20 or more)'],
  ])('%j reads %s', (share, said) => {
    expect(sharePercent(share)).toBe(said);
  });
});
