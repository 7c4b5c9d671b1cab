import { describe, expect, it } from 'vitest';
import { judge } from './rule.ts';
import { warmthRules } from './warmth.ts';

const said = (hottestC: number, meanC: number) => judge(warmthRules, { hottestC, meanC }).map(({ rule }) => rule);

describe('the warmth of a batch', () => {
  it.each([
    ['nothing from 10 to 25 °C', 24.9, 10, []],
    ['a look a day from 25 °C', 30, 25, ['warm-look-daily']],
    ['shade from 35 °C, if only for an hour', 35, 20, ['too-hot-to-sour']],
    ['both in lasting heat', 36, 36, ['too-hot-to-sour', 'warm-look-daily']],
    ['no hold below 10 °C', 12, 9.9, ['too-cold-for-a-hold']],
    [
      'every one of them where it is not known',
      Number.NaN,
      Number.NaN,
      ['too-hot-to-sour', 'too-cold-for-a-hold', 'warm-look-daily'],
    ],
  ])('asks for %s', (_, hottestC, meanC, rules) => {
    expect(said(hottestC, meanC)).toEqual(rules);
  });
});
