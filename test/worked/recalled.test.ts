// Figures as they were recalled, from the publication named or from usual practice, on the pages that were written before
// the tables were: their marks are "memory", or the publication was seen by those who wrote them. What no such page gives
// is not here. A number of a publication that we could read ourselves stands in test/published.

import { describe, expect, it } from 'vitest';
import { figures, material } from '#engine/tables/index.ts';
import { given, hold } from '../published/held.ts';
import { worked } from '../published/rows.ts';

describe('figures as recalled', () => {
  it.each(worked('recalled.csv'))('$table $id $quantity', (row) => {
    const { table = '', id = '', quantity = '' } = row;
    const [low, likely, high] = ['low', 'likely', 'high'].map((end) => given(row, end));
    hold(table, id, quantity, { low, likely, high });
  });
});

describe('sums of recalled numbers', () => {
  // 35 lb of 70 lb in a US ton at 3.5 % nitrogen, none at 1.5 %, a straight line between; fifteen points either way.
  it.each([
    ['fresh-2', 2],
    ['fresh-2-5', 2.5],
    ['fresh-3', 3],
    ['fresh-3-5', 3.5],
  ])('release of %s by the two points of PNW 636', (id, n) => {
    const likely = (100 * (35 * (n - 1.5))) / (2 * 20 * n);
    hold('release', id, 'nPercentDm', { likely: n });
    hold('release', id, 'panPercent', { low: likely - 15, likely, high: likely + 15 });
  });

  it('little or none is released at 1.5 % nitrogen', () => {
    hold('release', 'fresh-1-5', 'nPercentDm', { likely: 1.5 });
    expect(figures('release').get('fresh-1-5')?.panPercent).toMatchObject({ low: -10, likely: 0, high: 10 });
  });

  // Wood substance of 1.53 kg/L and its water; the low end with the driest matter, a fifth more for trapped air above.
  it.each([
    'straw',
    'corn-stalks',
    'dry-leaves',
    'pine-needles',
    'shrub-trimmings',
    'sawdust',
    'wood-chips',
    'cardboard',
    'newspaper',
  ])('%s in water: volume of its substance and its water', (id) => {
    const dm = material(id)?.figures.dryMatter ?? { low: NaN, likely: NaN, high: NaN };
    const volume = (share: number) => share / 1.53 + 1 - share;
    const likely = volume(dm.likely);
    hold('materials', id, 'displacementLPerKg', { low: volume(dm.high), likely, high: 1.2 * likely });
  });
});

describe('bands of the fitted souring model', () => {
  // The band of a fitted parameter is that of its prior about the fitted value: 10th and 90th percentile, 1.2816 standard
  // deviations, of the logarithm for rates and of the power of ten for counts.
  const fitted = (id: string, quantity: string) => figures('ferment').get(id)?.[quantity]?.likely ?? Number.NaN;

  it.each([
    ['plant', 'releasePerH', 0.4],
    ['early', 'muPerH', 0.25],
    ['late', 'muPerH', 0.25],
    ['yeast', 'muPerH', 0.5],
    ['entero', 'muPerH', 0.3],
    ['early', 'acidAtRestGPerGPerH', 0.4],
    ['late', 'acidAtRestGPerGPerH', 0.4],
    // Passos 1994, abstract: 51.9 with a standard error of 4.2 mmol/g.
    ['early', 'acidPerGrowthGPerG', 4.2 / 51.9],
    ['late', 'acidPerGrowthGPerG', 4.2 / 51.9],
  ])('%s %s: standard deviation of its logarithm %d', (id, quantity, sd) => {
    const likely = fitted(id, quantity);
    const spread = Math.exp(1.2816 * sd);
    hold('ferment', id, quantity, { low: likely / spread, high: likely * spread });
  });

  it.each(['early', 'late'])('%s: start counts with a standard deviation of 0.7 powers of ten', (id) => {
    const likely = fitted(id, 'startLog10CountPerG');
    hold('ferment', id, 'startLog10CountPerG', { low: likely - 1.2816 * 0.7, high: likely + 1.2816 * 0.7 });
  });
});
