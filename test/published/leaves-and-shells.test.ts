// Fallen leaves and egg shells against the abstracts of two papers: 100 samples of municipal leaf waste (heckman-kluchinski-1996:
// least, median and most, g per kg of dry matter) and shell waste of egg breaking plants (walton-1973: dry matter basis).

import { describe, it } from 'vitest';
import { about, type Given, hold } from './held.ts';

describe('municipal leaf waste', () => {
  it.each<[string, Given]>([
    ['nPercentDm', { low: 6.6 / 10, likely: 9.4 / 10, high: 16.2 / 10 }],
    ['pPercentDm', { low: 0.2 / 10, likely: 1.0 / 10, high: 2.9 / 10 }],
    ['kPercentDm', { low: 0.9 / 10, likely: 3.6 / 10, high: 8.8 / 10 }],
    ['cn', { low: 26.8, likely: 48.5, high: 71.8 }],
  ])('%s: least, median and most of 100 samples', (quantity, given) => {
    hold('materials', 'dry-leaves', quantity, given);
  });
});

describe('egg shells', () => {
  it('leave the breaker with 29.1 % water', () => {
    hold('materials', 'eggshell', 'dryMatter', { low: 1 - 0.291 });
  });

  it('hold 5.15 % protein washed and 7.56 % as they come, 36.4 % calcium, 0.116 % phosphorus, 0.097 % potassium', () => {
    hold('materials', 'eggshell', 'nPercentDm', { likely: 5.15 / 6.25, high: 7.56 / 6.25 });
    hold('materials', 'eggshell', 'caPercentDm', { likely: 36.4 });
    hold('materials', 'eggshell', 'pPercentDm', { low: 0.75 * 0.116, likely: 0.116 });
    hold('materials', 'eggshell', 'kPercentDm', about(0.097, 0.25));
  });
});
