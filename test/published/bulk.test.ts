// Bulk density of scraps against the household weights of the US food tables (usda-sr-weights, weight file): what a cup of
// 236.6 mL holds, a tablespoon being a sixteenth of it. Which foods stand for which scraps, and what is allowed beyond the
// rows, is said here; the weights stand in the rows.

import { describe, it } from 'vitest';
import { about, type Given, hold } from './held.ts';
import { num, published } from './rows.ts';

const weights = published('usda-sr-weights.csv');
const CUP_L = 0.2366;
/** Shares of a cup that the measures of the table hold. */
const MEASURES: readonly (readonly [words: string, cups: number])[] = [
  ['half cup', 1 / 2],
  ['two tablespoons', 1 / 8],
  ['tablespoon', 1 / 16],
  ['cup', 1],
];

/** kg per m3, which is g per litre, of every measure of a food, the loosest first. */
function densities(code: string): readonly number[] {
  const rows = weights.filter((row) => row.code === code);
  if (rows.length === 0) throw new Error(`no weight of ${code}`);
  return rows
    .map((row) => {
      const [, cups = Number.NaN] = MEASURES.find(([words]) => row.measure?.startsWith(words)) ?? [];
      return num(row, 'grams') / (cups * CUP_L);
    })
    .toSorted((a, b) => a - b);
}

const loosest = (code: string) => densities(code)[0] ?? Number.NaN;
const densest = (code: string) => densities(code).at(-1) ?? Number.NaN;
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;
/** Likely in the middle of two, a fifth allowed beyond either. */
const beyond = (low: number, high: number): Given => ({ low: 0.8 * low, likely: (low + high) / 2, high: 1.2 * high });

describe('bulk density of one kind', () => {
  it.each([
    ['legume-tops', '11201'],
    ['borage', '11613'],
    ['parsley', '11297'],
    ['celery', '11143'],
    ['green-beans', '11052'],
    ['broad-beans', '11088'],
    ['peas', '11304'],
    ['aubergine', '11209'],
    ['tomato-green', '11527'],
    ['beetroot', '11080'],
    ['radish-root', '11429'],
    ['potato', '11352'],
    ['sweet-potato', '11507'],
    ['garlic', '11215'],
    ['peach', '09236'],
    ['plum', '09279'],
    ['grape', '09132'],
    ['pineapple', '09266'],
    ['citrus-peel', '09216'],
    ['citrus-peel', '09156'],
    ['seaweed', '11445'],
  ])('%s by one measure of %s, a fifth allowed each way', (id, code) => {
    hold('materials', id, 'bulkKgPerM3', about(loosest(code), 0.2));
  });

  it.each([
    ['cabbage-leaves', '11109'],
    ['courgette', '11477'],
    ['pepper', '11333'],
    ['tomato', '11529'],
    ['carrot', '11124'],
    ['onion', '11282'],
    ['apple', '09003'],
    ['pear', '09252'],
    ['strawberry', '09316'],
  ])('%s by the loosest and the densest measure of %s, a fifth allowed beyond either', (id, code) => {
    hold('materials', id, 'bulkKgPerM3', beyond(loosest(code), densest(code)));
  });

  it.each([
    ['chinese-cabbage', '11116', '11119'],
    ['cauliflower-leaves', '11161', '11109'],
    ['spinach', '11457', '11276'],
    ['beet-greens', '11147', '11086'],
    ['radish-leaves', '11568', '11270'],
    ['cucumber', '11205', '11206'],
    ['pumpkin', '11422', '11482'],
    ['orange-flesh', '09202', '09200'],
    ['melon', '09181', '09184'],
  ])('%s between %s and %s, a fifth allowed beyond either', (id, low, high) => {
    hold('materials', id, 'bulkKgPerM3', beyond(loosest(low), loosest(high)));
  });

  it('leaves of several kinds reach from the loosest to the densest, nothing allowed beyond', () => {
    const weeds = ['11003', '11152', '11427', '11207', '11190'].map(loosest);
    hold('materials', 'soft-weeds', 'bulkKgPerM3', { low: weeds[0], likely: weeds[2], high: weeds[4] });
    const middle = (loosest('11251') + loosest('11250')) / 2;
    hold('materials', 'lettuce', 'bulkKgPerM3', { low: loosest('11257'), likely: middle, high: loosest('11252') });
    hold('materials', 'kale', 'bulkKgPerM3', {
      low: loosest('11233'),
      likely: loosest('11161'),
      high: loosest('11622'),
    });
  });

  it('onion tops reach from 1.28 standard deviations below to scallions; bananas from sliced to mashed', () => {
    const spread = 19.062 / CUP_L;
    const tops = loosest('11292');
    hold('materials', 'onion-tops', 'bulkKgPerM3', { low: tops - 1.28 * spread, likely: tops, high: loosest('11291') });
    const sliced = loosest('09040');
    hold('materials', 'banana-flesh', 'bulkKgPerM3', { low: 0.8 * sliced, likely: sliced, high: densest('09040') });
  });
});

describe('bulk density of mixed scraps', () => {
  it('is that of equal volumes, from the loosest to the densest of what they hold', () => {
    const vegetables = ['11109', '11124', '11135', '11143', '11147', '11429', '11477', '11422'];
    hold('materials', 'vegetable-scraps-mixed', 'bulkKgPerM3', {
      low: loosest('11109'),
      likely: mean(vegetables.map(densest)),
      high: densest('11124'),
    });
    const fruit = ['09003', '09252', '09236', '09279', '09200', '09216'].map(densest);
    hold('materials', 'fruit-scraps-mixed', 'bulkKgPerM3', {
      low: loosest('09216'),
      likely: mean([...fruit, loosest('09040')]),
      high: densest('09040'),
    });
    hold('materials', 'kitchen-trimmings', 'bulkKgPerM3', {
      low: 0.8 * loosest('09216'),
      likely: mean([...vegetables, '09003', '11282', '09216'].map(densest)),
      high: densest('11352'),
    });
  });
});
