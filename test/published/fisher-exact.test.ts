// The exact test for two groups, against the worked example of a statistics program's manual.

import { describe, expect, it } from 'vitest';
import { chanceOfSoMany } from '#engine/quantity/fisher.ts';
import { num, published } from './rows.ts';

describe('the exact test for two groups', () => {
  for (const row of published('fisher-exact.csv')) {
    it(`agrees with ${row.locator} on ${row.case}`, () => {
      const ours = chanceOfSoMany(
        { markedCount: num(row, 'markedFirst'), allCount: num(row, 'allFirst') },
        { markedCount: num(row, 'markedSecond'), allCount: num(row, 'allSecond') },
      );
      expect(Math.abs(ours - num(row, 'chance'))).toBeLessThanOrEqual(num(row, 'tolerance'));
    });
  }
});
