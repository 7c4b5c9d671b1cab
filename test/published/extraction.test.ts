// The share of an element that leaves the plants, against published releases from straw, shoots and silage.

import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { ammoniumFraction, releasedFraction } from '#engine/bottle/extraction.ts';
import type { Element } from '#engine/pail/recipe.ts';
import { product, type Range } from '#engine/quantity/range.ts';

type Row = Readonly<Record<string, string>>;
const rows: Row[] = parse(readFileSync(new URL('extraction.csv', import.meta.url), 'utf8'), { columns: true });

/** Released share of an element, or of all nitrogen as ammonium. */
function modelled(row: Row): Range {
  const at = { days: Number(row.days), finalPh: Number(row.finalPh) };
  if (row.quantity !== 'ammonium') return releasedFraction(row.quantity as Element, at);
  return product([releasedFraction('n', at), ammoniumFraction(at.finalPh)]);
}

describe('share given up by the plants', () => {
  it.each(rows.map((row) => [row.case, row] as const))('%s', (_name, row) => {
    const { low, likely, high } = modelled(row);
    const from = Number(row.expectedLow);
    const to = Number(row.expectedHigh);
    switch (row.relation) {
      case 'band-holds':
        expect(low).toBeLessThanOrEqual(from);
        expect(high).toBeGreaterThanOrEqual(to);
        break;
      case 'high-at-least':
        expect(high).toBeGreaterThanOrEqual(from);
        break;
      case 'likely-at-most':
        expect(likely).toBeLessThanOrEqual(to);
        break;
      default:
        throw new Error(`unknown relation ${row.relation}`);
    }
  });
});
