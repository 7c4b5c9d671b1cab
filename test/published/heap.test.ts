// The worked example of Richard and Trautmann, Getting the right mix: clippings at 77 % moisture with 45 % carbon and 2.4 %
// nitrogen, leaves at 35 % with 50 and 0.75. What else is worked out by its equations is test/worked/heap.test.ts.

import { describe, expect, it } from 'vitest';
import { weighed } from '#engine/heap/ingredient.ts';
import { mixOf, perKg } from '#engine/heap/mix.ts';
import { solveMasses } from '#engine/heap/solve.ts';
import { ingredient } from '../worked/heap-ingredient.ts';
import { num, published } from './rows.ts';

describe.each(published('heap.csv').map((row) => [row.case, row] as const))('%s', (_, row) => {
  const first = ingredient(row.first);
  const second = ingredient(row.second);
  const firstKg = num(row, 'firstKg');
  const secondKg = num(row, 'secondKg');

  it('is the C:N and the moisture that are printed', () => {
    const mix = mixOf([weighed(first, firstKg), weighed(second, secondKg)]);
    expect(Math.abs((mix.cn?.likely ?? 0) - num(row, 'cn'))).toBeLessThanOrEqual(num(row, 'cnTolerance'));
    expect(Math.abs(mix.moisturePercent.likely - num(row, 'moisturePercent'))).toBeLessThanOrEqual(
      num(row, 'moistureTolerance'),
    );
  });

  it('is the mass that is printed, where the moisture is asked for', () => {
    const found = solveMasses({
      known: [{ massKg: firstKg, contents: perKg(first) }],
      sought: [{ contents: perKg(second), leastKg: 0, mostKg: 200 }],
      goals: { moisturePercent: num(row, 'moisturePercent') },
    });
    expect(found.massesKg[0]).toBeCloseTo(secondKg, 6);
    expect(found).toMatchObject({ kind: 'exact', met: true, waterKg: 0 });
  });
});
