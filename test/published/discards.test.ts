// What is thrown away, against a table of material properties (sardarmehni-2022: carbon is biogenic and fossil together),
// what biogas plants are fed with (aafc-holos-2025, table 46: kg of dry matter and of nitrogen in a tonne) and the
// densities of the US environment agency: pounds in a cubic yard, or in a US gallon.

import { describe, it } from 'vitest';
import { about, between, hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const properties = rowBy(published('sardarmehni-2022.csv'), 'material');
const of = (material: string, column: string) => num(properties(material), column);

const dm = (material: string) => 1 - of(material, 'moisturePercent') / 100;
const n = (material: string) => of(material, 'nPercentDm');
const cn = (material: string) => of(material, 'carbonPercentDm') / n(material);
const KG_PER_M3_OF_LB_PER_YD3 = 0.45359 / 0.76455;
const KG_PER_M3_OF_LB_PER_GAL = 453.59 / 3.7854;

describe('material properties', () => {
  it.each([
    ['dry-leaves', 'leaves'],
    ['grass-clippings-fresh', 'grass'],
    ['shrub-trimmings', 'branches'],
  ])('%s lie as loose as %s, a fifth allowed', (id, material) => {
    hold('materials', id, 'bulkKgPerM3', about(of(material, 'bulkKgPerM3'), 0.2));
  });

  it.each([
    ['shrub-trimmings', 'branches'],
    ['newspaper', 'newsprint'],
    ['cardboard', 'corrugated cardboard'],
  ])('%s hold nitrogen and carbon as %s, 15 % allowed', (id, material) => {
    hold('materials', id, 'nPercentDm', about(n(material), 0.15));
    hold('materials', id, 'cn', { low: cn(material) / 1.15, likely: cn(material), high: cn(material) / 0.85 });
  });

  it.each([
    ['newspaper', 'newsprint'],
    ['cardboard', 'corrugated cardboard'],
  ])('%s is as dry as %s, a tenth allowed, and holds its minerals, a quarter allowed', (id, material) => {
    hold('materials', id, 'dryMatter', about(dm(material), 0.1));
    hold('materials', id, 'pPercentDm', about(of(material, 'pPercentDm'), 0.25));
    hold('materials', id, 'kPercentDm', about(of(material, 'kPercentDm'), 0.25));
  });

  it('lawn grass: nitrogen, and with the 15 kg in 870 kg of clippings fed to biogas plants its low end', () => {
    const least = (100 * 15) / 870;
    for (const id of ['grass-clippings-fresh', 'grass-clippings-wilted']) {
      hold('materials', id, 'nPercentDm', { low: least, likely: n('grass') });
      hold('materials', id, 'cn', { high: of('grass', 'carbonPercentDm') / least });
    }
    hold('materials', 'grass-clippings-fresh', 'dryMatter', { high: dm('grass') });
  });

  it('cooked food lies between the two kinds of food waste, and what biogas plants are fed is wetter and richer', () => {
    const [greens, rest] = ['vegetable food waste', 'other food waste'] as const;
    hold('materials', 'cooked-food', 'dryMatter', { low: 0.184, likely: (dm(greens) + dm(rest)) / 2, high: dm(rest) });
    hold('materials', 'cooked-food', 'nPercentDm', { ...between(n(greens), n(rest)), high: (100 * 7.1) / 184 });
    const both = of(greens, 'carbonPercentDm') + of(rest, 'carbonPercentDm');
    hold('materials', 'cooked-food', 'cn', { low: cn(rest), likely: both / (n(greens) + n(rest)), high: cn(greens) });
    hold('materials', 'cooked-food', 'pPercentDm', between(of(greens, 'pPercentDm'), of(rest, 'pPercentDm')));
    hold('materials', 'cooked-food', 'kPercentDm', between(of(rest, 'kPercentDm'), of(greens, 'kPercentDm')));
  });
});

describe('peels', () => {
  // The US food tables (09216, orange peel, raw, as another page gives them): 72.5 g water, 1.5 g protein, 212 mg potassium.
  it('of citrus: orange is the driest and poorest, 15 % allowed for nitrogen, a quarter for potassium', () => {
    hold('materials', 'citrus-peel', 'dryMatter', { high: 1 - 0.725 });
    hold('materials', 'citrus-peel', 'nPercentDm', { low: (0.85 * 100 * (1.5 / 6.25)) / 27.5 });
    hold('materials', 'citrus-peel', 'kPercentDm', { low: (0.75 * 100 * 0.212) / 27.5 });
  });

  // feedipedia-684: 6 to 9 % protein in the dry matter.
  it('of bananas from 6 % protein', () => {
    hold('materials', 'banana-skin', 'nPercentDm', { low: 6 / 6.25 });
  });
});

describe('densities', () => {
  // epa-1993, appendix D: corrugated cardboard, uncompacted, 50 to 150; newspaper, uncompacted, 360 to 505. epa-2016:
  // cardboard 106, food 396 in a cubic yard and 3.8 in a gallon. solid-waste-systems-approach, table 2.2: chipped wood
  // 625, food scraps 7.49 in a gallon. calrecycle-weights: shredded, dry wood chips 300.
  const yard = (lb: number) => lb * KG_PER_M3_OF_LB_PER_YD3;
  const gallon = (lb: number) => lb * KG_PER_M3_OF_LB_PER_GAL;

  it('of paper, chipped wood and food scraps', () => {
    hold('materials', 'cardboard', 'bulkKgPerM3', { low: yard(50), likely: yard(106), high: yard(150) });
    hold('materials', 'newspaper', 'bulkKgPerM3', between(yard(360), yard(505)));
    hold('materials', 'wood-chips', 'bulkKgPerM3', between(yard(300), yard(625)));
    hold('materials', 'cooked-food', 'bulkKgPerM3', { low: yard(396), likely: gallon(3.8), high: gallon(7.49) });
  });

  // dyer-light-artillery, forage: loose hay 5 pounds to a cubic foot; new-mown hay on a wagon 700 cubic feet to a ton.
  it.each(['hay-grass', 'hay-legume'])('of %s, loose and new-mown', (id) => {
    const foot = (lb: number) => (lb * 0.45359) / 0.028317;
    hold('materials', id, 'bulkKgPerM3', between(foot(2000 / 700), foot(5)));
  });
});
