// The share of phosphorus that leaves the plants, against a release from shoots as recalled.

import { describe, expect, it } from 'vitest';
import { releasedFraction } from '#engine/bottle/extraction.ts';
import type { Element } from '#engine/pail/recipe.ts';
import { num, worked } from '../published/rows.ts';

/** The likely share lies within a fifth of the published one. */
const WITHIN = 0.2;

describe('share given up by the plants', () => {
  it.each(worked('extraction.csv').map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const { likely } = releasedFraction(row.quantity as Element, {
      days: num(row, 'days'),
      finalPh: num(row, 'finalPh'),
    });
    expect(Math.abs(likely / num(row, 'expected') - 1)).toBeLessThanOrEqual(WITHIN);
  });
});
