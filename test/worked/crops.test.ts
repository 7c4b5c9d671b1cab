// Yields, needs, base temperatures and days of crops as recalled before the table was made: yields of the New England
// Vegetable Management Guide (nevmg-yields, table 15, lb/acre times 1.1209e-4) and usual garden figures; needs from
// memory of European target values; days to market maturity of ndsu-h912. A likely value is midway unless the row
// names one. Where the fertilizer ordinance's need lies outside the recalled band, the band reaches out to it.

import { describe, expect, it } from 'vitest';
import { figures } from '#engine/tables/index.ts';
import { between, given, hold } from '../published/held.ts';
import { num, published, worked } from '../published/rows.ts';

const recalled = worked('crops.csv');
const ordinance = new Map(published('duev-2017.csv').map((row) => [row.crop, num(row, 'needKgPerHa') / 10]));

describe('crops as recalled', () => {
  it.each(recalled)('$crop: yield, need, base temperature, days', (row) => {
    const { crop = '' } = row;
    hold('crops', crop, 'yieldKgPerM2', between(num(row, 'leastYield'), num(row, 'mostYield')));
    const seen = ordinance.get(crop);
    const [least, most] = [num(row, 'leastNeed'), num(row, 'mostNeed')];
    if (seen !== undefined) {
      hold('crops', crop, 'nNeedGPerM2', { low: Math.min(least, seen), high: Math.max(most, seen) });
    } else hold('crops', crop, 'nNeedGPerM2', between(least, most));
    if (row.leastBaseC !== '') {
      const [low, likely, high] = ['leastBaseC', 'likelyBaseC', 'mostBaseC'].map((column) => given(row, column));
      hold('crops', crop, 'baseTemperatureC', { low, likely, high });
    }
    if (row.leastRootM !== '') {
      hold('crops', crop, 'rootDepthM', between(num(row, 'leastRootM'), num(row, 'mostRootM')));
      hold('crops', crop, 'depletionFraction', { likely: num(row, 'depletion') });
    }
    const k = given(row, 'kGPerKg');
    if (k !== undefined) hold('crops', crop, 'kGPerKg', { low: 0.75 * k, likely: k, high: 1.25 * k });
    if (row.leastDays !== '') {
      hold('crops', crop, 'maturityDays', between(num(row, 'leastDays'), num(row, 'mostDays')));
    }
  });

  it('stops counting the warmth of sweet corn at 30 °C', () => {
    hold('crops', 'sweet-corn', 'upperTemperatureC', { likely: 30 });
  });

  // Where no ordinance gives a step, a fifth more or less crop needs a fifth more or less; a good crop is the upper end.
  it.each(recalled.filter(({ crop }) => !ordinance.has(crop ?? '')))(
    '$crop: need in proportion to a good crop',
    (row) => {
      const { crop = '' } = row;
      const need = figures('crops').get(crop)?.nNeedGPerM2?.likely ?? Number.NaN;
      hold('crops', crop, 'nPer20PercentGPerM2', { likely: 0.2 * need });
      if (crop === 'tomato') {
        // 30 US tons an acre; 2.5 to 3 kg of nitrogen for a tonne of fruit (hegde-1997)
        hold('crops', crop, 'needYieldKgPerM2', { likely: 30 * 2000 * 1.1209e-4 });
        expect(need / 6.725).toBeCloseTo((2.5 + 3) / 2, 2);
      } else hold('crops', crop, 'needYieldKgPerM2', { likely: num(row, 'mostYield') });
    },
  );
});
