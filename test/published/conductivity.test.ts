// The high end of the rule of thumb for the salt of an undiluted liquid, against the primary standards of potassium
// chloride: potassium is most of the salt of such a liquid, and chloride is among the fastest ions that a batch may hold
// beside it. The high end was taken from the first row; the second is a check. What it is with the acids that a batch makes
// is test/worked/conductivity.test.ts.

import { describe, expect, it } from 'vitest';
import { conductivityDsPerM } from '#engine/bottle/conductivity.ts';
import { point } from '#engine/quantity/range.ts';
import { num, published } from './rows.ts';

/** Standard atomic weight, g/mol. */
const POTASSIUM_G = 39.098;

describe('the most a liquid may conduct', () => {
  it.each(published('conductivity.csv'))('is no less than $case, and not much more', (row) => {
    const found = conductivityDsPerM({ k: point(num(row, 'kMolPerL') * POTASSIUM_G) }, point(0));
    const over = (found?.high ?? Number.NaN) / num(row, 'expectedDsPerM') - 1;
    expect(over).toBeGreaterThanOrEqual(0);
    expect(over).toBeLessThanOrEqual(num(row, 'tolerancePercent') / 100);
  });
});
