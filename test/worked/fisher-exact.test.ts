// The exact test for two groups, against values computed by another program and what holds whatever the counts.

import { describe, expect, it } from 'vitest';
import { chanceOfSoMany } from '#engine/quantity/fisher.ts';
import { num, worked } from '../published/rows.ts';

describe('the exact test for two groups', () => {
  for (const row of worked('fisher-exact.csv')) {
    it(`agrees with ${row.locator} on ${row.case}`, () => {
      const ours = chanceOfSoMany(
        { markedCount: num(row, 'markedFirst'), allCount: num(row, 'allFirst') },
        { markedCount: num(row, 'markedSecond'), allCount: num(row, 'allSecond') },
      );
      expect(Math.abs(ours - num(row, 'chance'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }

  it('is certain of at least none, whatever the groups', () => {
    for (let all = 0; all <= 20; all += 1) {
      expect(chanceOfSoMany({ markedCount: 0, allCount: all }, { markedCount: 0, allCount: 20 })).toBeCloseTo(1, 12);
      expect(chanceOfSoMany({ markedCount: 0, allCount: 9 }, { markedCount: all, allCount: 20 })).toBeCloseTo(1, 12);
    }
  });

  it('gives no chance for counts that cannot be', () => {
    const second = { markedCount: 1, allCount: 9 };
    for (const first of [
      { markedCount: 10, allCount: 9 },
      { markedCount: -1, allCount: 9 },
      { markedCount: 1.5, allCount: 9 },
      { markedCount: Number.NaN, allCount: 9 },
    ]) {
      expect(chanceOfSoMany(first, second)).toBeNaN();
      expect(chanceOfSoMany(second, first)).toBeNaN();
    }
  });
});
