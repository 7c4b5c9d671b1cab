// The rule of thumb for the salt of an undiluted liquid, against potassium with the acids that a batch makes, reckoned
// from recalled limiting conductivities. Potassium is most of the salt of such a liquid.

import { describe, expect, it } from 'vitest';
import { conductivityDsPerM } from '#engine/bottle/conductivity.ts';
import { point } from '#engine/quantity/range.ts';
import { num, worked } from '../published/rows.ts';

/** Standard atomic weight, g/mol. */
const POTASSIUM_G = 39.098;

describe('the conductivity of a liquid', () => {
  it.each(worked('conductivity.csv'))('holds that of $case', (row) => {
    const found = conductivityDsPerM({ k: point(num(row, 'kMolPerL') * POTASSIUM_G) }, point(0));
    expect(found?.low).toBeLessThanOrEqual(num(row, 'expectedDsPerM'));
    expect(found?.high).toBeGreaterThanOrEqual(num(row, 'expectedDsPerM'));
    expect(Math.abs((found?.likely ?? Number.NaN) / num(row, 'expectedDsPerM') - 1)).toBeLessThan(0.15);
  });
});
