// The rule of thumb for the salt of an undiluted liquid, against the primary standards of potassium chloride and against
// potassium with the acids that a batch makes. Potassium is most of the salt of such a liquid.

import { describe, expect, it } from 'vitest';
import { conductivityDsPerM } from '#engine/bottle/conductivity.ts';
import { point } from '#engine/quantity/range.ts';
import { num, published } from './rows.ts';

/** Standard atomic weight, g/mol. */
const POTASSIUM_G = 39.098;

describe('the conductivity of a liquid', () => {
  it.each(published('conductivity.csv'))('$case: $verdict', (row) => {
    const found = conductivityDsPerM({ k: point(num(row, 'kMolPerL') * POTASSIUM_G) }, point(0));
    const expected = num(row, 'expectedDsPerM');
    if (found === undefined) throw new Error('potassium alone gives no conductivity');
    if (row.verdict === 'differs') {
      // Under the standard, by a third at most at its likely value and by an eighth at its high end.
      expect(found.high).toBeLessThan(expected);
      expect(found.likely / expected).toBeGreaterThan(1 - 1 / 3);
      expect(found.high / expected).toBeGreaterThan(1 - 1 / 8);
    } else {
      expect(found.low).toBeLessThanOrEqual(expected);
      expect(found.high).toBeGreaterThanOrEqual(expected);
    }
  });
});
