// Degree days of single days, by the four published ways; the sums of whole seasons are degree-days-season.test.ts.

import { describe, expect, it } from 'vitest';
import { type DegreeDayWay, degreeDays } from '#engine/ground/degree-days.ts';
import { worked } from '../published/rows.ts';

describe('degree days of a day', () => {
  it.each(worked('degree-days.csv'))('$case', (row) => {
    const found = degreeDays({
      lowC: Number(row.lowC),
      highC: Number(row.highC),
      baseC: Number(row.baseC),
      upperC: row.upperC === '' ? undefined : Number(row.upperC),
      way: row.way as DegreeDayWay,
    });
    expect(Math.abs(found.degreeDays - Number(row.expectedDegreeDays))).toBeLessThanOrEqual(Number(row.tolerance));
    expect(found.way).toBe(row.way);
  });

  it('by the sine are the mean over a day of what lies over the base, as 100,000 steps of it give', () => {
    for (const [lowC, highC, baseC] of [
      [6, 20, 10],
      [-3, 14, 5],
      [9, 11, 10],
    ] as const) {
      let total = 0;
      for (let i = 0; i < 100_000; i++) {
        const warm = (lowC + highC) / 2 + ((highC - lowC) / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / 100_000);
        total += Math.max(0, warm - baseC) / 100_000;
      }
      expect(degreeDays({ lowC, highC, baseC, way: 'single-sine' }).degreeDays).toBeCloseTo(total, 6);
    }
  });
});
