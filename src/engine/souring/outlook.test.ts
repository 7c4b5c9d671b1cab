// What follows from the word: what is said of its trend and its hold, what would change it, when to look again. Days are
// counted by hand from the alarm lines (3 and 5 days at 20 °C) and the hold (15 days at 20 °C).
import { describe, expect, it } from 'vitest';
import type { ModelEvidence } from './expected-reasons.ts';
import { type Batch, judgeBatch } from './judge.ts';
import type { Look, Smell, Surface } from './look.ts';

const meter = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });
const nose = (day: number, smell: Smell, who?: string): Look => ({ day, smell, ...(who && { who }) });
const top = (day: number, surface: Surface): Look => ({ day, surface });
const judged = (looks: readonly Look[], more: Partial<Batch> = {}) =>
  judgeBatch({ looks, temperatureC: 20, today: Math.max(...looks.map(({ day }) => day)), ...more });
const told = (some: readonly { readonly code: string; readonly values: object }[]) =>
  some.map(({ code, values }) => [code, values] as const);
const reasons = (looks: readonly Look[], more?: Partial<Batch>) => told(judged(looks, more).reasons);
const changes = (looks: readonly Look[], more?: Partial<Batch>) => told(judged(looks, more).wouldChange);

const souring = [meter(0, 6.3), meter(1, 5.4)];
const slow = [meter(0, 6.3), meter(4, 5.2), meter(6, 4.8)];
const ready = [meter(2, 4.2), meter(4, 4.1)];
const sour = [meter(2, 4.1), meter(4, 4), meter(9, 3.9), meter(14, 3.9)];
const readyBy = ['two-low-readings', { firstPh: 4.1, firstDay: 2, lastPh: 3.9, lastDay: 14 }] as const;

/** What the model adds: a reading above its band, and acid that goes missing. */
const above: ModelEvidence = {
  readings: [{ day: 1, ph: 5.4, by: 'meter', band: { low: 4.6, likely: 4.8, high: 5 }, side: 'above' }],
  buffers: [],
};
const missing: ModelEvidence = {
  readings: [],
  buffers: [
    { day: 0, ph: 6.3, timesFactor: { low: 0.9, likely: 1, high: 1.1 } },
    { day: 1, ph: 5.4, timesFactor: { low: 2.5, likely: 3, high: 3.5 } },
  ],
};

describe('the reasons of the trend', () => {
  it('are one reading alone, a fall, or none', () => {
    expect(reasons([meter(1, 5.4)])).toEqual([['one-reading', { ph: 5.4 }]]);
    expect(reasons(souring)).toEqual([['falling', { fromPh: 6.3, fromDay: 0, toPh: 5.4, toDay: 1 }]]);
    expect(reasons([meter(0, 5.4), meter(1, 5.4)])).toEqual([
      ['not-falling-yet', { fromPh: 5.4, fromDay: 0, toPh: 5.4, toDay: 1 }],
    ]);
  });
  it('of a slow batch name the line first, by which reading it was passed and at what temperature', () => {
    expect(reasons(slow)).toEqual([
      ['line-passed', { ph: 5.2, day: 4, linePh: 5, lineDay: 3, temperatureC: 20 }],
      ['falling', { fromPh: 5.2, fromDay: 4, toPh: 4.8, toDay: 6 }],
    ]);
  });
  it('do not name the line of a late batch that has become ready', () => {
    expect(reasons([meter(0, 6.3), meter(4, 5.2), meter(8, 4.2), meter(10, 4.1)]).map(([code]) => code)).toEqual([
      'two-low-readings',
    ]);
  });
});

describe('the hold', () => {
  const clock = { sinceDay: 4, holdDays: 15, fromDay: 19 };
  it('is told while it runs and when it is done, with its source', () => {
    expect(reasons(sour, { today: 18 })).toEqual([readyBy, ['acid-since', clock]]);
    expect(reasons(sour, { today: 19 })).toEqual([readyBy, ['held', clock]]);
    expect(judged(sour).reasons.at(-1)?.source).toBe('breidt-caldwell-2011');
  });
  it('runs by the hour where the hours are known: the same at a steady 20 °C, later where it turned to 15', () => {
    const steady = new Float64Array(30 * 24).fill(20);
    expect(judged(sour, { hourlyC: steady }).heldFromDay).toBeCloseTo(19, 9);
    // days 4 to 9 are a third of it at 20 °C; two thirds of 24 days at 15 °C are 16
    expect(judged(sour, { hourlyC: steady.fill(15, 9 * 24) }).heldFromDay).toBeCloseTo(25, 9);
  });
  it('is never done in the cold, and says at which temperature', () => {
    const cold = judged(sour, { temperatureC: 9, today: 23 });
    expect(told(cold.reasons)).toEqual([readyBy, ['too-cold-to-hold', { temperatureC: 9 }]]);
    expect(cold).toMatchObject({ state: 'ready', held: false });
    expect(cold.heldFromDay).toBeUndefined();
  });
});

describe('a word that rests on an old reading', () => {
  const looks = [...ready, meter(5, 4.1), nose(14, 'sour')];
  it('says so from ten days on, by the last reading', () => {
    expect(reasons(looks, { today: 14.9 }).map(([code]) => code)).not.toContain('reading-is-old');
    expect(reasons(looks, { today: 15 })).toContainEqual(['reading-is-old', { day: 5, days: 10 }]);
  });
  it('does not where only the earlier readings are old', () => {
    expect(reasons([meter(0, 6.3), meter(2, 4.2), meter(9, 4.1)], { today: 13 }).map(([code]) => code)).toEqual([
      'two-low-readings',
    ]);
  });
});

describe('what would change the word', () => {
  const always = [
    ['foul-word-makes-it-doubtful', {}],
    ['climb-makes-it-lost', {}],
  ] as const;
  const low = ['two-low-readings-make-it-ready', {}] as const;

  it.each<[string, readonly Look[], Partial<Batch>, readonly (readonly [string, object])[]]>([
    ['souring', souring, {}, [low, ['line-makes-it-slow', { linePh: 5, lineDay: 3 }], ...always]],
    [
      'souring, at the very day of the first line',
      [meter(0, 6.3), meter(1, 5.4), meter(3, 5)],
      {},
      [low, ['line-makes-it-slow', { linePh: 5, lineDay: 3 }], ...always],
    ],
    [
      'souring, the first line behind it',
      [meter(0, 6.3), meter(1, 5.4), meter(3.1, 4.9)],
      {},
      [low, ['line-makes-it-slow', { linePh: 4.6, lineDay: 5 }], ...always],
    ],
    ['souring, both lines behind it', [meter(1, 5), meter(6, 4.4)], {}, [low, ...always]],
    ['slow', [meter(0, 6.3), meter(3.5, 5.2)], {}, [low, ...always]],
    ['ready, above 4.0', ready, {}, [['acid-makes-it-held', {}], ...always]],
    ['ready, its hold running', sour, {}, [['time-makes-it-held', { fromDay: 19 }], ...always]],
    ['ready, too cold to hold', sour, { temperatureC: 9 }, [['acid-makes-it-held', {}], ...always]],
    ['ready and held', sour, { today: 19 }, always],
    ['doubtful by a nose', [...souring, nose(1, 'egg')], {}, [['second-nose-decides', {}]]],
    [
      'doubtful by two noses',
      [...souring, nose(1, 'egg', 'Fork'), nose(1.5, 'sour', 'Rake')],
      {},
      [['second-nose-decides', {}]],
    ],
    [
      'doubtful by a nose and by a climb',
      [meter(0, 4.4), meter(1, 4.1), meter(2, 4.3), nose(2, 'egg')],
      {},
      [['second-nose-decides', {}]],
    ],
    ['doubtful by a reading', [meter(0, 4.1), meter(2, 4.3)], {}, [['second-reading-decides', {}]]],
    [
      'souring, with a reading out of its band',
      souring,
      { evidence: above },
      [low, ['line-makes-it-slow', { linePh: 5, lineDay: 3 }], ...always, ['reading-in-band-answers', {}]],
    ],
    [
      'doubtful, with a reading out of its band',
      [...souring, nose(1, 'egg')],
      { evidence: above },
      [
        ['second-nose-decides', {}],
        ['reading-in-band-answers', {}],
      ],
    ],
  ])('%s', (_, looks, more, expected) => {
    expect(changes(looks, more)).toEqual(expected);
  });
});

describe('the next look', () => {
  it.each<[string, readonly Look[], Partial<Batch>, number]>([
    ['two days after the last of several looks', [meter(0, 6.3), meter(1, 5.4), meter(2, 4.9)], {}, 4],
    ['today, where that day is gone by', souring, { today: 6 }, 6],
    ['a week at a ready batch, however warm', ready, { temperatureC: 30 }, 11],
    ['a day after a white tuft', [...souring, top(1, 'fuzzy-white')], {}, 2],
    ['as usual once a look a day later saw no tuft', [...souring, top(1, 'fuzzy-white'), meter(2, 4.9)], {}, 4],
    ['a day, where acid goes missing', souring, { evidence: missing }, 2],
    ['as usual, where a reading only lies out of its band', souring, { evidence: above }, 3],
  ])('is %s', (_, looks, more, day) => {
    expect(judged(looks, more).nextLookDay).toBe(day);
  });
});
