// Composition of scraps against the abbreviated file of the US food tables (usda-sr-abbreviated, per 100 g): over dry matter,
// nitrogen is protein over 6.25 and carbon what burns over 1.8. Which foods stand for which scraps is said here.

import { describe, it } from 'vitest';
import { about, between, hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const food = rowBy(published('usda-sr-abbreviated.csv'), 'code');

const dm = (code: string) => 100 - num(food(code), 'waterG');
const n = (code: string) => num(food(code), 'proteinG') / 6.25;
const carbon = (code: string) => (dm(code) - num(food(code), 'ashG')) / 1.8;
const percentDm = (code: string, column: 'pMg' | 'kMg') => num(food(code), column) / 10 / dm(code);
const sugars = (code: string) => (1000 * num(food(code), 'sugarsG')) / dm(code);
const nPercent = (code: string) => (100 * n(code)) / dm(code);
const cn = (code: string) => carbon(code) / n(code);

const VEGETABLES = ['11109', '11124', '11135', '11143', '11147', '11429', '11477', '11422'];
const sum = (of: (code: string) => number) => VEGETABLES.reduce((total, code) => total + of(code), 0);
const sorted = (of: (code: string) => number) => VEGETABLES.map(of).toSorted((a, b) => a - b);

describe('mixed vegetable scraps', () => {
  it('are equal fresh weights of eight kinds, from the wettest to the driest, and the middle six for nitrogen and carbon', () => {
    const dry = sorted((code) => dm(code) / 100);
    hold('materials', 'vegetable-scraps-mixed', 'dryMatter', { low: dry[0], likely: sum(dm) / 800, high: dry[7] });
    const nitrogen = sorted(nPercent);
    const likelyN = (100 * sum(n)) / sum(dm);
    hold('materials', 'vegetable-scraps-mixed', 'nPercentDm', { low: nitrogen[1], likely: likelyN, high: nitrogen[6] });
    const ratios = sorted(cn);
    const likelyCn = sum(carbon) / sum(n);
    hold('materials', 'vegetable-scraps-mixed', 'cn', { low: ratios[1], likely: likelyCn, high: ratios[6] });
  });

  it('are the wet end of kitchen trimmings', () => {
    hold('materials', 'kitchen-trimmings', 'dryMatter', { low: sum(dm) / 800 });
    hold('materials', 'kitchen-trimmings', 'nPercentDm', { high: (100 * sum(n)) / sum(dm) });
    hold('materials', 'kitchen-trimmings', 'cn', { low: sum(carbon) / sum(n) });
  });
});

describe('single plants', () => {
  it('borage: one row, 15 % allowed, 25 % for minerals', () => {
    const code = '11613';
    hold('materials', 'borage', 'dryMatter', about(dm(code) / 100, 0.15));
    hold('materials', 'borage', 'nPercentDm', about(nPercent(code), 0.15));
    hold('materials', 'borage', 'cn', about(cn(code), 0.15));
    hold('materials', 'borage', 'pPercentDm', about(percentDm(code, 'pMg'), 0.25));
    hold('materials', 'borage', 'kPercentDm', about(percentDm(code, 'kMg'), 0.25));
  });

  it('seaweed: phosphorus of kelp to that of Irish moss, sugars of kelp', () => {
    const kelp = percentDm('11445', 'pMg');
    hold('materials', 'seaweed', 'pPercentDm', { low: 0.75 * kelp, likely: kelp, high: percentDm('11444', 'pMg') });
    hold('materials', 'seaweed', 'sugarsGPerKgDm', about(sugars('11445'), 0.4));
  });

  it('soft weeds: dock is the wettest and richest in phosphorus, chicory the sweetest', () => {
    hold('materials', 'soft-weeds', 'dryMatter', { low: dm('11616') / 100 });
    hold('materials', 'soft-weeds', 'pPercentDm', { high: percentDm('11616', 'pMg') });
    hold('materials', 'soft-weeds', 'sugarsGPerKgDm', { high: 1.4 * sugars('11152') });
  });
});

describe('legume tops', () => {
  // Whole-crop field bean, field pea and common vetch (pursiainen-tuori, abstract): dry matter 155, 213 and 238 g/kg, soluble
  // sugars 93, 157 and 67 g/kg, buffering 588, 710 and 755 mEq/kg of dry matter, from pH 6 to 4.
  it('dry matter, sugars and buffer', () => {
    hold('materials', 'legume-tops', 'dryMatter', { high: 0.238 });
    hold('materials', 'legume-tops', 'sugarsGPerKgDm', { low: 0.9 * 67, likely: (67 + 93) / 2, high: 157 });
    const [bean, pea, vetch] = [588 / 2000, 710 / 2000, 755 / 2000] as const;
    const likely = (bean + pea + vetch) / 3;
    hold('materials', 'legume-tops', 'bufferEqPerKgDmPerPh', { low: 0.85 * bean, likely, high: vetch });
  });

  // Hairy vetch and crimson clover in spring (ban-2008, abstract): N 1.53 to 3.34, P2O5 0.55 to 1.04, K2O 2.02 to 5.32 %.
  it('nitrogen and minerals', () => {
    hold('materials', 'legume-tops', 'nPercentDm', { low: (1.53 + 3.34) / 2 });
    hold('materials', 'legume-tops', 'pPercentDm', between(0.55 * 0.4364, 1.04 * 0.4364));
    hold('materials', 'legume-tops', 'kPercentDm', between(2.02 * 0.8301, 5.32 * 0.8301));
  });
});

describe('days until leaves spoil', () => {
  // Cut leaves of Asian brassicas at 20 °C (ohare-2001, abstract): the oldest keep 1.5 days, the youngest 7.5.
  it.each(['cabbage-leaves', 'kale', 'cauliflower-leaves', 'radish-leaves'])('%s', (id) => {
    hold('materials', id, 'spoilDays', between(1.5, 7.5));
  });
});

describe('brewed leaves and grounds', () => {
  // Tea by-products before ensiling (kondo-2014, table 1): dry matter 196 (green) and 183 (black), crude protein 292 and 290
  // g/kg; green tea waste elsewhere 34.8 % crude protein (kondo-2004, abstract).
  it('tea leaves', () => {
    hold('materials', 'tea-leaves', 'dryMatter', { low: 0.9 * 0.183, likely: (0.183 + 0.196) / 2, high: 1.2 * 0.196 });
    const nitrogen = { low: (0.85 * 29) / 6.25, likely: 29.1 / 6.25, high: 34.8 / 6.25 };
    hold('materials', 'tea-leaves', 'nPercentDm', nitrogen);
  });

  // 2.3 % N in fifty espresso grounds (cruz-2012, abstract); moisture 7.42, ash 1.71, protein 10.34, P 0.145, K 0.442 %
  // (puello-silva-2018, abstract), which may be counted with the moisture or without.
  it('coffee grounds', () => {
    const nitrogen = { low: 10.34 / 6.25, likely: 2.3, high: 1.15 * 2.3 };
    hold('materials', 'coffee-grounds', 'nPercentDm', nitrogen);
    const c = (100 - 1.71) / 1.8;
    const ratios = { low: c / nitrogen.high, likely: c / nitrogen.likely, high: c / nitrogen.low };
    hold('materials', 'coffee-grounds', 'cn', ratios);
    const dry = 1 - 0.0742;
    const mineral = (percent: number) => ({
      low: 0.75 * percent,
      likely: (percent + percent / dry) / 2,
      high: (1.25 * percent) / dry,
    });
    hold('materials', 'coffee-grounds', 'pPercentDm', mineral(0.145));
    hold('materials', 'coffee-grounds', 'kPercentDm', mineral(0.442));
  });
});

describe('nettle shoots', () => {
  // Raw shoots (rutto-2013, table 2), per 100 g. Autumn: moisture 89.0, protein 3.7, ash 2.1 g, Ca 278 mg; spring: 75.1, 6.3,
  // 3.4 g, 788 mg.
  it('autumn and spring are the ends', () => {
    const [autumn, spring] = [100 - 89, 100 - 75.1] as const;
    hold('materials', 'nettle', 'dryMatter', between(autumn / 100, spring / 100));
    const nAutumn = 3.7 / 6.25;
    const nSpring = 6.3 / 6.25;
    hold('materials', 'nettle', 'nPercentDm', {
      likely: (100 * (nAutumn / autumn + nSpring / spring)) / 2,
      high: (100 * nAutumn) / autumn,
    });
    const [low, older] = [(autumn - 2.1) / 1.8 / nAutumn, (spring - 3.4) / 1.8 / nSpring] as const;
    hold('materials', 'nettle', 'cn', { low, likely: (low + older) / 2 });
    hold('materials', 'nettle', 'caPercentDm', { low: (0.278 / autumn) * 100, likely: (0.788 / spring) * 100 });
  });
});
