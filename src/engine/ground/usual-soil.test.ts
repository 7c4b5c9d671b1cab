// Usual warmth of soil: warm at the equator, opposite seasons on its two sides, never frozen.

import { describe, expect, it } from 'vitest';
import { usualSoilC } from './usual-soil.ts';

/** Days from 1 January 1970 in a year without a leap day before it. */
const JANUARY = 15;
const JULY = 196;
const likely = (latitudeDeg: number, day: number) => usualSoilC({ latitudeDeg, day }).likely;

describe('the usual warmth of soil', () => {
  it('is highest in July in the north and in January in the south', () => {
    for (const latitudeDeg of [20, 27.5, 35, 45, 52, 60]) {
      expect(likely(latitudeDeg, JULY)).toBeGreaterThan(likely(latitudeDeg, JANUARY) + 3);
      expect(likely(-latitudeDeg, JANUARY)).toBeGreaterThan(likely(-latitudeDeg, JULY) + 3);
    }
  });
  it('is the same all year at the equator, and falls towards the poles', () => {
    expect(likely(0, JULY)).toBeCloseTo(27, 9);
    expect(likely(0, JANUARY)).toBeCloseTo(27, 9);
    // A year of 12 °C, by which the release of a first year is spread (data/release.csv), lies at 45 degrees.
    const year = Array.from({ length: 365 }, (_, day) => likely(45, day)).reduce((sum, one) => sum + one, 0) / 365;
    expect(year).toBeCloseTo(12, 0);
  });
  it('is never below 0 °C, and its ends stand in order', () => {
    for (let latitudeDeg = -80; latitudeDeg <= 80; latitudeDeg += 5) {
      for (let day = 0; day < 366; day += 14) {
        const { low, likely: middle, high } = usualSoilC({ latitudeDeg, day });
        expect(low).toBeGreaterThanOrEqual(0);
        expect(middle).toBeGreaterThanOrEqual(low);
        expect(high).toBeGreaterThanOrEqual(middle);
      }
    }
  });
});
