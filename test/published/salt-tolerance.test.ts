// What salt crops bear, against the table of the US Salinity Laboratory (Maas 1990, vegetables and fruit crops); and the
// line no drench passes, against the irrigation water that FAO paper 29 (Ayers and Westcot 1985, table 1) severely restricts.

import { describe, expect, it } from 'vitest';
import { ADDED_EC_DS_PER_M, saltTolerance } from '#engine/can/limits.ts';
import { figures } from '#engine/tables/index.ts';
import { num, published } from './rows.ts';

const table = published('salt-tolerance.csv');

describe('salt tolerance', () => {
  it.each(table)('$case: threshold and slope to the last digit', (row) => {
    expect(saltTolerance(row.crop ?? '')).toMatchObject({
      thresholdEcDsPerM: num(row, 'thresholdDsPerM'),
      slopePercentPerDsPerM: num(row, 'slopePercentPerDsPerM'),
    });
  });

  it('has no crop that was not seen in the publication', () => {
    expect([...figures('salt-tolerance').keys()].toSorted()).toEqual(table.map(({ crop }) => crop).toSorted());
  });
});

describe('salt that a drench adds', () => {
  // degree of restriction on use: none under 0.7, slight to moderate 0.7 to 3.0, severe over 3.0 dS/m
  it('stops where irrigation water is severely restricted, and asks for care before', () => {
    expect(ADDED_EC_DS_PER_M.never).toBe(3.0);
    for (const limit of [ADDED_EC_DS_PER_M.seedling, ADDED_EC_DS_PER_M.established]) {
      expect(limit).toBeGreaterThanOrEqual(0.7);
      expect(limit).toBeLessThan(3.0);
    }
  });
});
