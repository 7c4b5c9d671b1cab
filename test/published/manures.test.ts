// Manures against the nutrient management guide of the British levy board (ahdb-rb209-2023, section 2, tables 2.4, 2.5 and
// 2.7): kg in a tonne as it is spread, over its dry matter. Phosphorus is 0.4364 of P2O5, potassium 0.8301 of K2O.

import { describe, it } from 'vitest';
import { hold } from './held.ts';
import { num, published } from './rows.ts';

const guide = new Map(published('ahdb-rb209-2023.csv').map((row) => [row.manure, row]));

/** Percent of dry matter of one row of the guide. */
function percent(manure: string, column: 'nKgPerT' | 'p2o5KgPerT' | 'k2oKgPerT'): number {
  const row = guide.get(manure);
  if (row === undefined) throw new Error(`the guide has no ${manure}`);
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
