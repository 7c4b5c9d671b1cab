// The cardinal models against what their papers say of them: 1 at the best point, 0 at the ends, the best where the
// paper puts it. The strain's figures are those of Matejčeková and others 2019 (broth).

import { describe, expect, it } from 'vitest';
import { acidFactor, drynessFactor, sournessFactor, warmthFactor, waterActivity } from './cardinal.ts';

const broth = { temperatureMinC: 2, temperatureBestC: 36.6, temperatureMaxC: 41 };

describe('the cardinal temperature model', () => {
  it('is 1 at the best temperature and 0 at and beyond both ends', () => {
    expect(warmthFactor(broth, 36.6)).toBeCloseTo(1, 12);
    for (const temperatureC of [-5, 2, 41, 60, Number.NaN]) expect(warmthFactor(broth, temperatureC)).toBe(0);
  });

  it('has its top at the best temperature and nowhere else', () => {
    // Rosso and others 1993: the model is built so that its derivative is 0 at Topt.
    const around = (temperatureC: number) => warmthFactor(broth, temperatureC);
    for (let temperatureC = 2.5; temperatureC < 41; temperatureC += 0.5)
      expect(around(temperatureC)).toBeLessThanOrEqual(around(36.6));
    expect((around(36.6 + 1e-4) - around(36.6 - 1e-4)) / 2e-4).toBeCloseTo(0, 6);
  });

  it('gives the value worked by hand from the equation', () => {
    // (20−41)(20−2)² / {34.6 [34.6(20−36.6) − (−4.4)(36.6+2−40)]} = −6804 / {34.6 [−574.36 − 6.16]} = 0.33874
    expect(warmthFactor(broth, 20)).toBeCloseTo(0.33874, 4);
  });
});

describe('the cardinal pH model', () => {
  it('is 1 at the best pH, 0 at the ends, and gives the value worked by hand', () => {
    const at = { minPh: 4, bestPh: 7, maxPh: 8.5 };
    expect(sournessFactor(at, 7)).toBe(1);
    for (const ph of [3, 4, 8.5, Number.NaN]) expect(sournessFactor(at, ph)).toBe(0);
    // (5−4)(5−8.5) / [(5−4)(5−8.5) − (5−7)²] = −3.5 / −7.5
    expect(sournessFactor(at, 5)).toBeCloseTo(3.5 / 7.5, 12);
  });
});

describe('acid and dryness', () => {
  it('end growth at the most undissociated acid a guild bears, and not before', () => {
    expect(acidFactor(0.011, 0.011)).toBe(0);
    expect(acidFactor(0.0055, 0.011)).toBeCloseTo(0.5, 12);
    expect(acidFactor(1, 0.011)).toBe(0);
  });

  it('lower the water activity with dry matter and salt, and growth with it', () => {
    const at = (dryMatterFraction: number, saltGPerL = 0) =>
      waterActivity({ dryMatterFraction, slopeFraction: 0.04, saltGPerL });
    expect(at(0)).toBe(1);
    expect(at(0.4)).toBeCloseTo(1 - 0.04 * (0.4 / 0.6), 12);
    expect(at(0.2)).toBeGreaterThan(at(0.4));
    expect(at(0.05, 25)).toBeLessThan(at(0.05));
    expect(drynessFactor(1, 0.95)).toBe(1);
    expect(drynessFactor(0.95, 0.95)).toBe(0);
  });
});
