// The rule for combining ranges, held against seeded random draws (an independent way to the same numbers).

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { difference, product, type Range, range, scale, sum, sumTogether } from '#engine/quantity/range.ts';

/** Half-width of the 10th to 90th percentile of a standard normal (Gaussian tables). */
const Z90 = 1.2815515655446004;

function draws(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 4294967296;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}

function percentiles(values: number[]): Range {
  const sorted = values.sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * sorted.length)] ?? Number.NaN;
  return { low: at(0.1), likely: at(0.5), high: at(0.9) };
}

describe('combining ranges', () => {
  it('adds independent normal errors as 40,000 draws do, within 3 % of the width', () => {
    const normal = draws(20260611);
    const a = range(8, 10, 12);
    const b = range(1, 4, 7);
    const drawn = Array.from({ length: 40_000 }, () => 10 + (2 / Z90) * normal() + 4 + (3 / Z90) * normal());
    const seen = percentiles(drawn);
    const said = sum([a, b]);
    const width = seen.high - seen.low;
    expect(Math.abs(said.low - seen.low)).toBeLessThan(0.03 * width);
    expect(Math.abs(said.high - seen.high)).toBeLessThan(0.03 * width);
  });

  it('multiplies independent lognormal errors as 40,000 draws do, within 3 % of the width', () => {
    const normal = draws(41);
    const a = range(5, 10, 20);
    const b = range(2, 3, 4.5);
    const drawn = Array.from(
      { length: 40_000 },
      () => 10 * Math.exp((Math.log(2) / Z90) * normal()) * 3 * Math.exp((Math.log(1.5) / Z90) * normal()),
    );
    const seen = percentiles(drawn);
    const said = product([a, b]);
    const width = seen.high - seen.low;
    expect(Math.abs(said.low - seen.low)).toBeLessThan(0.03 * width);
    expect(Math.abs(said.high - seen.high)).toBeLessThan(0.03 * width);
  });

  const anyRange = fc
    .tuple(
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0, max: 100, noNaN: true }),
    )
    .map((three) => {
      const [low, likely, high] = [...three].sort((x, y) => x - y) as [number, number, number];
      return range(low, likely, high);
    });

  it('keeps low, likely and high in order through every operation', () => {
    fc.assert(
      fc.property(anyRange, anyRange, fc.double({ min: 0, max: 50, noNaN: true }), (a, b, factor) => {
        for (const r of [sum([a, b]), sumTogether([a, b]), product([a, b]), difference(a, b), scale(a, factor)]) {
          expect(r.low).toBeLessThanOrEqual(r.likely);
          expect(r.likely).toBeLessThanOrEqual(r.high);
        }
      }),
      { seed: 7, numRuns: 500 },
    );
  });

  it('refuses ends on the wrong side', () => {
    expect(() => range(2, 1, 3)).toThrow(RangeError);
  });
});
