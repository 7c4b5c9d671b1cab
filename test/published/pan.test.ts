// Nitrogen that comes free over a season: the two ends of the published line, and how soon most of it is out.

import { describe, expect, it } from 'vitest';
import { panPercent, releasedFraction } from '#engine/ground/available.ts';
import { point } from '#engine/quantity/range.ts';
import { num, published } from './rows.ts';

/** Pounds free of a US ton of 2,000 lb of dry matter. */
const lbPerUsTon = (nPercentDm: number) => (2000 * (nPercentDm / 100) * panPercent(nPercentDm).likely) / 100;

describe('the nitrogen free over a season', () => {
  it.each(published('pan.csv'))('is $case', (row) => {
    const off = lbPerUsTon(num(row, 'nPercentDm')) - num(row, 'expectedLbPerUsTon');
    expect(Math.abs(off)).toBeLessThanOrEqual(num(row, 'tolerance'));
  });

  // pnw-636, highlights: most of it in 4 to 6 weeks.
  it('is mostly out after 4 weeks at 15 to 20 °C, and not yet after 2', () => {
    expect(releasedFraction('fresh', point(4 * 7 * 17.5)).likely).toBeGreaterThan(0.5);
    expect(releasedFraction('fresh', point(2 * 7 * 17.5)).likely).toBeLessThan(0.5);
  });
});
