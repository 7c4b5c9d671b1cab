// Nitrogen that comes free over a season: the published line and table.

import { describe, expect, it } from 'vitest';
import { panPercent, releasedFraction } from '#engine/ground/available.ts';
import { point } from '#engine/quantity/range.ts';
import { num, rows } from './rows.ts';

describe('the share of nitrogen free over a season', () => {
  it.each(rows('pan.csv'))('$case', (row) => {
    const found = panPercent(Number(row.nPercentDm));
    const [low, high] = [num(row, 'expectedLow'), num(row, 'expectedHigh')];
    const off = Math.max(low - found.likely, found.likely - high);
    expect(off > 0 ? 'differs' : 'agrees').toBe(row.verdict);
    expect(off).toBeLessThanOrEqual(5);
  });

  it('is 0 at 1.5 % and 35 lb a US ton at 3.5 %, linear in pounds between, as published', () => {
    const lbPerTon = (nPercentDm: number) => (2000 * (nPercentDm / 100) * panPercent(nPercentDm).likely) / 100;
    expect(lbPerTon(1.5)).toBeCloseTo(0, 9);
    expect(lbPerTon(2)).toBeCloseTo(8.75, 1);
    expect(lbPerTon(2.5)).toBeCloseTo(17.5, 1);
    expect(lbPerTon(3)).toBeCloseTo(26.25, 1);
    expect(lbPerTon(3.5)).toBeCloseTo(35, 9);
  });

  it('covers the fit 15 (N − 1), give or take 15 points, from 1.5 to 4 %', () => {
    for (let n = 1.5; n <= 4; n += 0.1) {
      const fit = 15 * (n - 1);
      expect(Math.abs(panPercent(n).likely - fit)).toBeLessThanOrEqual(15);
    }
  });

  it('is mostly out after 4 to 6 weeks at 15 to 20 °C', () => {
    expect(releasedFraction('fresh', point(35 * 17.5)).likely).toBeCloseTo(0.8, 3);
    expect(releasedFraction('fresh', point(14 * 17.5)).likely).toBeLessThan(0.5);
  });
});
