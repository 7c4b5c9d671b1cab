// What is said about gas, and when.

import { describe, expect, it } from 'vitest';
import { foulGasRules, lidGasRules, roomGasRules } from './gas.ts';
import { judge } from './rule.ts';

const ids = (found: readonly { readonly rule: string }[]) => found.map(({ rule }) => rule);

describe('a lid over a batch that gasses', () => {
  it('is stopped when tight, whatever the pressure foretold', () => {
    for (const mostPressureAtm of [0, 2, Number.NaN]) {
      const [found] = judge(lidGasRules, { lid: 'tight', mostPressureAtm });
      expect(found).toMatchObject({ rule: 'gas-behind-a-tight-lid', level: 'stop' });
    }
  });

  it('passes when it lets gas out', () => {
    for (const lid of ['vent', 'loose', 'cloth', 'none'] as const) {
      expect(judge(lidGasRules, { lid, mostPressureAtm: 5 })).toEqual([]);
    }
  });
});

describe('a room where a batch gasses', () => {
  // 24 L a day is 1 L an hour; in 1 m3, one change an hour leaves 1,000 ppm
  const room = { gasLPerDay: 24, roomM3: 1, totalGasL: 1000 };

  it.each([
    [1, []],
    [0.2, ['room-gas-past-day-limit']],
    [0.02, ['room-gas-past-short-limit']],
    [0, ['room-gas-past-short-limit']],
    [Number.NaN, ['room-gas-not-known']],
  ])('with %s changes of air an hour answers %j', (airChangesPerH, expected) => {
    expect(ids(judge(roomGasRules, { ...room, airChangesPerH }))).toEqual(expected);
  });

  it('says how much air or room it takes', () => {
    const [found] = judge(roomGasRules, { ...room, airChangesPerH: 0.2 });
    // 1 L an hour over 5,000 − 430 ppm is 218.8 L of fresh air an hour
    expect(found?.values.leastAirChangesPerH).toBeCloseTo(0.2188, 4);
    expect(found?.values.leastRoomM3).toBeCloseTo(1.094, 3);
  });
});

describe('a foul batch before its lid comes off', () => {
  const lost = { state: 'lost', foulSmell: false, likelyPpm: 1600, highPpm: 6000 } as const;

  it('is opened outdoors under any lid that closes, and under one that nobody named', () => {
    for (const lid of ['tight', 'vent', 'loose', undefined] as const) {
      expect(ids(judge(foulGasRules, { ...lost, lid }))).toEqual([
        'foul-closed-open-it-outdoors',
        'foul-gas-under-the-lid',
        'foul-gas-nose-fails',
      ]);
    }
  });

  it('is kept off under a cloth or none', () => {
    expect(ids(judge(foulGasRules, { ...lost, lid: 'none' }))).toEqual(['foul-open-keep-off']);
    expect(ids(judge(foulGasRules, { ...lost, lid: 'cloth' }))).toEqual(['foul-open-keep-off']);
  });

  it('speaks for a foul smell in any state, and for gas that nobody can reckon', () => {
    const found = judge(foulGasRules, {
      state: 'doubtful',
      foulSmell: true,
      likelyPpm: Number.NaN,
      highPpm: Number.NaN,
    });
    expect(ids(found)).toContain('foul-gas-under-the-lid');
  });

  it('is silent for a batch that is not foul', () => {
    expect(judge(foulGasRules, { ...lost, state: 'souring' })).toEqual([]);
  });
});
