// Manures against the nutrient management guide of the British levy board (ahdb-rb209-2023, section 2, tables 2.4, 2.5 and
// 2.7): kg in a tonne as it is spread, over its dry matter. Phosphorus is 0.4364 of P2O5, potassium 0.8301 of K2O.

import { describe, it } from 'vitest';
import { hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const guide = rowBy(published('ahdb-rb209-2023.csv'), 'manure');

/** Percent of dry matter of one row of the guide. */
function percent(manure: string, column: 'nKgPerT' | 'p2o5KgPerT' | 'k2oKgPerT'): number {
  const row = guide(manure);
  const element = { nKgPerT: 1, p2o5KgPerT: 0.4364, k2oKgPerT: 0.8301 }[column];
  return (10 * num(row, column) * element) / num(row, 'dmPercent');
}

const n = (manure: string) => percent(manure, 'nKgPerT');
const p = (manure: string) => percent(manure, 'p2o5KgPerT');
const k = (manure: string) => percent(manure, 'k2oKgPerT');

describe('manures', () => {
  it('of cattle, horses and sheep', () => {
    hold('materials', 'cattle-manure', 'pPercentDm', { likely: p('cattle') });
    hold('materials', 'cattle-manure', 'kPercentDm', { high: k('cattle') });
    hold('materials', 'horse-manure', 'pPercentDm', { high: p('horse') });
    hold('materials', 'horse-manure', 'kPercentDm', { likely: k('horse'), high: 1.15 * k('horse') });
    hold('materials', 'sheep-goat-manure', 'kPercentDm', { likely: k('sheep') });
  });

  it('of poultry: fresh from the rows of 20 and 40 %, litter from those of 60 and 80 % dry matter', () => {
    const dry = ['poultry 60 %', 'poultry 80 %'] as const;
    const middle = (of: (manure: string) => number) => (of(dry[0]) + of(dry[1])) / 2;
    hold('materials', 'poultry-manure', 'nPercentDm', { likely: n('poultry 20 %'), high: 1.15 * n('poultry 20 %') });
    hold('materials', 'poultry-manure', 'pPercentDm', { likely: (p('poultry 20 %') * 2 + p('poultry 40 %') * 4) / 6 });
    hold('materials', 'poultry-manure', 'kPercentDm', { high: k('poultry 20 %') });
    hold('materials', 'poultry-litter', 'dryMatter', { high: 0.8 });
    hold('materials', 'poultry-litter', 'nPercentDm', { low: 0.85 * n('poultry 80 %'), likely: middle(n) });
    hold('materials', 'poultry-litter', 'pPercentDm', { low: 0.75 * p('poultry 80 %'), likely: middle(p) });
    hold('materials', 'poultry-litter', 'kPercentDm', { low: 0.75 * k('poultry 80 %'), likely: middle(k) });
  });
});

// What water leaves (casady-1962, table 1, per cent of fresh manure: least and most), with phosphate and potash there in the
// middle of their ranges; and composition as pounds in a US ton (uaf-lpm-340, table 1; 20 lb is one per cent).
const DRY = { horse: [0.24, 0.51], sheep: [0.34, 0.41], chickens: [0.25, 0.45] } as const;
const middle = ([a, b]: readonly [number, number]) => (a + b) / 2;
const P = 0.4364;
const K = 0.8301;

describe('dry matter of manures', () => {
  it('is what water leaves: dairy cattle 75 to 79 %, fattening cattle 78 to 84 %', () => {
    hold('materials', 'cattle-manure', 'dryMatter', { low: 1 - 0.84, likely: 1 - 0.79, high: 1 - 0.75 });
  });

  it('horse 49 to 76 % and 70 %, sheep from 59 % and 65 %, chickens 55 to 75 % and 54 %', () => {
    hold('materials', 'horse-manure', 'dryMatter', { low: 1 - 0.76, likely: 1 - 0.7, high: 1 - 0.49 });
    hold('materials', 'sheep-goat-manure', 'dryMatter', { likely: 1 - 0.65, high: 1 - 0.59 });
    hold('materials', 'poultry-manure', 'dryMatter', { low: 1 - 0.75, likely: 1 - 0.65, high: 1 - 0.54 });
  });
});

describe('manures by the older tables', () => {
  it('of cattle: 0.4 % nitrogen and 0.5 % potash at 23 % dry matter; a feedlot at 68 %, a dairy at 79 % moisture', () => {
    hold('materials', 'cattle-manure', 'nPercentDm', { low: (100 * 0.4) / 23 });
    hold('materials', 'cattle-manure', 'pPercentDm', { high: (12.8 / 20 / 32) * 100 * P });
    hold('materials', 'cattle-manure', 'kPercentDm', { low: (0.5 / 23) * 100 * K, likely: (12 / 20 / 21) * 100 * K });
  });

  it('of horses: phosphate 0.3 to 0.5 %, potash 0.2 to 0.6 %, and 4.6 lb phosphate at 70 % moisture', () => {
    const dry = middle(DRY.horse);
    hold('materials', 'horse-manure', 'pPercentDm', { low: (4.6 / 20 / 30) * 100 * P, likely: (0.4 / dry) * P });
    hold('materials', 'horse-manure', 'kPercentDm', { low: (0.4 / dry) * K });
  });

  it('of sheep: phosphate 0.3 to 0.5 %, potash 0.2 to 1.1 %; 28, 9.6 and 24 lb at 65 % moisture', () => {
    const dry = middle(DRY.sheep);
    hold('materials', 'sheep-goat-manure', 'nPercentDm', { high: (28 / 20 / 35) * 100 });
    hold('materials', 'sheep-goat-manure', 'pPercentDm', { low: (0.4 / dry) * P, likely: (9.6 / 20 / 35) * 100 * P });
    hold('materials', 'sheep-goat-manure', 'kPercentDm', { low: (0.65 / dry) * K, high: (24 / 20 / 35) * 100 * K });
  });

  it('of poultry: potash 0.4 to 0.9 %; 31.2 lb nitrogen and 18.4 lb phosphate at 54 % moisture', () => {
    hold('materials', 'poultry-manure', 'nPercentDm', { low: (31.2 / 20 / 46) * 100 });
    hold('materials', 'poultry-manure', 'pPercentDm', { low: (18.4 / 20 / 46) * 100 * P });
    hold('materials', 'poultry-manure', 'kPercentDm', { low: (0.65 / middle(DRY.chickens)) * K });
  });
});

describe('manures by the Canadian defaults', () => {
  // aafc-holos-2025, table 6: moisture, nitrogen and phosphorus in per cent of fresh manure, and C:N.
  const share = (percent: number, moisture: number) => (100 * percent) / (100 - moisture);

  it('of cattle on pasture and stored, of sheep and of poultry', () => {
    hold('materials', 'cattle-manure', 'cn', { low: 11.88, high: 21.02 });
    hold('materials', 'cattle-manure', 'pPercentDm', { low: share(0.047, 86) });
    hold('materials', 'sheep-goat-manure', 'cn', { low: 8.08 });
    hold('materials', 'sheep-goat-manure', 'nPercentDm', { low: share(0.729, 53.58) });
    hold('materials', 'sheep-goat-manure', 'pPercentDm', { high: share(0.34, 67.8) });
    hold('materials', 'poultry-manure', 'cn', { low: 4.17 });
    hold('materials', 'poultry-manure', 'pPercentDm', { high: share(1.06, 44.83) });
    hold('materials', 'poultry-litter', 'pPercentDm', { high: share(1.06, 44.83) });
    hold('materials', 'poultry-litter', 'dryMatter', { low: 1 - 0.4483 });
  });

  it('of horses, stored and on pasture', () => {
    hold('materials', 'horse-manure', 'nPercentDm', { likely: share(0.864, 56.65), high: share(0.59, 80) });
  });

  it('the guide sets the wet end of sheep manure, with straw', () => {
    hold('materials', 'sheep-goat-manure', 'dryMatter', { low: num(guide('sheep'), 'dmPercent') / 100 });
  });
});
