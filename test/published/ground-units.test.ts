// Unit constants of the ground, as a soil laboratory's guide prints them.

import { describe, expect, it } from 'vitest';
import { ppmOfLbPerAcre } from '#engine/ground/soil-test.ts';
import { num, published } from './rows.ts';

describe('a reading in pounds an acre', () => {
  it.each(published('ground-units.csv'))('$case', (row) => {
    const off = ppmOfLbPerAcre(num(row, 'value')) - num(row, 'expected');
    expect(Math.abs(off)).toBeLessThanOrEqual(num(row, 'tolerance'));
  });
});
