// The share of an element that leaves the plants, against published releases from straw and silage.

import { describe, expect, it } from 'vitest';
import { ammoniumFraction, releasedFraction } from '#engine/bottle/extraction.ts';
import type { Element } from '#engine/pail/recipe.ts';
import { product, type Range } from '#engine/quantity/range.ts';
import { num, published, type Row } from './rows.ts';

/** The likely share lies within a fifth of the published one, and the band holds it. */
const WITHIN = 0.2;

/** Released share of an element, or of all nitrogen as ammonium. */
function modelled(row: Row): Range {
  const at = { days: Number(row.days), finalPh: Number(row.finalPh) };
  if (row.quantity !== 'ammonium') return releasedFraction(row.quantity as Element, at);
  return product([releasedFraction('n', at), ammoniumFraction(at.finalPh)]);
}

describe('share given up by the plants', () => {
  it.each(published('extraction.csv').map((row) => [row.case, row.verdict, row] as const))(
    '%s %s',
    (_name, verdict, row) => {
      const { low, likely, high } = modelled(row);
      const apart = Math.abs(likely / num(row, 'expected') - 1);
      if (verdict === 'agrees') expect(apart).toBeLessThanOrEqual(WITHIN);
      else {
        expect(apart).toBeGreaterThan(WITHIN);
        expect(row.why).not.toBe('');
      }
      expect(low).toBeLessThanOrEqual(num(row, 'expected'));
      expect(high).toBeGreaterThanOrEqual(num(row, 'expected'));
    },
  );
});
