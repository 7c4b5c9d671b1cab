// What the plants give up, by day and by acidity.

import { describe, expect, it } from 'vitest';
import { ammoniumFraction, fermentAt, releasedFraction } from './extraction.ts';

describe('acid or foul', () => {
  it('is acid at pH 4.6 and foul above it or when the pH is not known', () => {
    expect(fermentAt(4.6)).toBe('acid');
    expect(fermentAt(4.61)).toBe('foul');
    expect(fermentAt(Number.NaN)).toBe('foul');
  });
});

describe('share given up', () => {
  it('is nothing on day 0', () => {
    expect(releasedFraction('k', { days: 0, finalPh: 3.8 })).toEqual({ low: 0, likely: 0, high: 0 });
  });

  it('follows Finf (1 − e^(−k t)) for nitrogen in an acid batch', () => {
    // 0.35, 0.20 and 0.55 times (1 − e^−1) = 0.6321 after ten days at 0.10 a day
    const { low, likely, high } = releasedFraction('n', { days: 10, finalPh: 3.7 });
    expect(likely).toBeCloseTo(0.2212, 4);
    expect(low).toBeCloseTo(0.1264, 4);
    expect(high).toBeCloseTo(0.3477, 4);
  });

  it('is wider for nitrogen above pH 4.6', () => {
    const acid = releasedFraction('n', { days: 20, finalPh: 4 });
    const foul = releasedFraction('n', { days: 20, finalPh: 5 });
    expect(foul.high - foul.low).toBeGreaterThan(acid.high - acid.low);
    expect(foul.likely).toBeGreaterThan(acid.likely);
  });

  it('has a foul figure for nitrogen alone: 0.55 × 0.6321 after ten days, and potassium as in an acid batch', () => {
    expect(releasedFraction('n', { days: 10, finalPh: 5 }).likely).toBeCloseTo(0.3477, 4);
    for (const element of ['p', 'k', 'ca', 'mg'] as const)
      expect(releasedFraction(element, { days: 3, finalPh: 5 }), element).toEqual(
        releasedFraction(element, { days: 3, finalPh: 4 }),
      );
  });

  it('has potassium out long before phosphorus', () => {
    const at = { days: 3, finalPh: 4 };
    expect(releasedFraction('k', at).low).toBeGreaterThan(releasedFraction('p', at).high);
  });
});

describe('ammonium', () => {
  it('is a larger share of the dissolved nitrogen in a foul batch than in any acid one', () => {
    expect(ammoniumFraction(5).low).toBeGreaterThan(ammoniumFraction(4).high);
  });
});
