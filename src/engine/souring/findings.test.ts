// What a judgement gives as its reasons: which, in which order, and with what its sentence needs. Figures are the typed looks.
import { describe, expect, it } from 'vitest';
import { judgeBatch } from './judge.ts';
import type { Look, Smell, Surface } from './look.ts';

const meter = (day: number, ph: number, who?: string): Look => ({ day, ph, by: 'meter', ...(who && { who }) });
const nose = (day: number, smell: Smell, who?: string): Look => ({ day, smell, ...(who && { who }) });
const top = (day: number, surface: Surface): Look => ({ day, surface });
const lastOf = (looks: readonly Look[]) => Math.max(...looks.map(({ day }) => day));
const judged = (looks: readonly Look[], today = lastOf(looks)) => judgeBatch({ looks, temperatureC: 20, today });
const reasons = (looks: readonly Look[], today?: number) =>
  judged(looks, today).reasons.map(({ code, values }) => [code, values] as const);
const start = [meter(0, 6.3), meter(1, 5.2), meter(2, 4.5)];
const falling = ['falling', { fromPh: 5.2, fromDay: 1, toPh: 4.5, toDay: 2 }] as const;

describe('the end of a batch says what was seen, and when', () => {
  it.each<[string, readonly Look[], readonly [string, object]]>([
    ['coloured fuzz', [...start, top(3, 'coloured-fuzz')], ['coloured-fuzz', { day: 3 }]],
    [
      'white fuzz three times: the first and the last',
      [...start, top(3, 'fuzzy-white'), top(4, 'fuzzy-white'), top(6, 'fuzzy-white')],
      ['white-fuzz-twice', { firstDay: 3, lastDay: 6 }],
    ],
    [
      'larvae and a foul smell',
      [...start, top(3, 'larvae'), nose(4, 'sewage')],
      ['larvae-and-foul', { day: 3, smell: 'sewage', smellDay: 4 }],
    ],
    [
      'two foul smells',
      [...start, nose(3, 'egg'), nose(4, 'ammonia')],
      ['foul-twice', { firstSmell: 'egg', firstDay: 3, lastSmell: 'ammonia', lastDay: 4 }],
    ],
    [
      'a foul smell where nothing falls',
      [meter(0, 6.3), meter(1, 6.4), nose(1, 'egg')],
      ['foul-and-not-falling', { smell: 'egg', day: 1, ph: 6.4 }],
    ],
    ['a climb', [...start, meter(4, 5)], ['climbed', { fromPh: 4.5, fromDay: 2, toPh: 5, toDay: 4 }]],
  ])('%s', (_, looks, reason) => {
    expect(judged(looks)).toMatchObject({ state: 'lost', held: false });
    expect(reasons(looks)).toContainEqual(reason);
  });
});

describe('what is not known says since when', () => {
  it('no look for ten days', () => {
    expect(reasons(start, 12)).toEqual([['no-look', { days: 10, afterDays: 10 }]]);
  });
  it('two noses that differ, and an acidity of ten days ago', () => {
    const looks = [...start, nose(11.5, 'egg', 'Fork'), nose(12, 'sour', 'Rake')];
    expect(judged(looks).state).toBe('unknown');
    expect(reasons(looks)).toEqual([['foul-on-old-reading', { smell: 'egg', day: 11.5, readingDay: 2 }]]);
  });
  it('but a foul smell with an acidity of the same week is a doubt', () => {
    expect(judged([...start, meter(6, 4.3), nose(6, 'egg')], 8).state).toBe('doubtful');
  });
});

describe('a doubt says what raised it', () => {
  it.each<[string, readonly Look[], readonly (readonly [string, object])[]]>([
    ['one foul smell', [...start, nose(2, 'egg')], [['foul-once', { smell: 'egg', day: 2, ph: 4.5 }]]],
    [
      'two noses',
      [...start, nose(3, 'egg', 'Fork'), nose(3.5, 'sour', 'Rake')],
      [['noses-differ', { smell: 'egg', day: 3 }]],
    ],
    [
      'two readers',
      [...start, meter(4, 3.9, 'Rake'), meter(4.01, 4.4, 'Fork')],
      [['readers-differ', { onePh: 3.9, otherPh: 4.4 }]],
    ],
    [
      'a small climb',
      [...start, meter(4, 4.7)],
      [['climbed-a-little', { fromPh: 4.5, fromDay: 2, toPh: 4.7, toDay: 4 }]],
    ],
    [
      'a standstill after a line was passed',
      [meter(0, 6.3), meter(4, 5.2), meter(7, 5.2)],
      [['stuck', { fromPh: 5.2, fromDay: 4, toPh: 5.2, toDay: 7 }]],
    ],
    [
      'a foul smell in what would be ready, of which no word is then said',
      [...start, meter(4, 4.1), meter(7, 4.1), nose(7, 'egg')],
      [['foul-once', { smell: 'egg', day: 7, ph: 4.1 }]],
    ],
  ])('%s', (_, looks, expected) => {
    expect(judged(looks)).toMatchObject({ state: 'doubtful', held: false });
    expect(reasons(looks)).toEqual(expected);
  });

  it('and holds nothing, however long it was sour', () => {
    const looks = [meter(2, 4), meter(8, 3.9), meter(14, 3.9), nose(18, 'egg')];
    expect(judged(looks, 18)).toMatchObject({ state: 'doubtful', held: false, heldFromDay: 17 });
  });
  it('is not raised by a standstill once a late batch has become ready', () => {
    expect(judged([meter(0, 6.3), meter(4, 5.2), meter(8, 4), meter(12, 4)]).state).toBe('ready');
  });
});

describe('what was seen on top without changing the word', () => {
  it.each<[string, readonly Look[], readonly (readonly [string, object])[]]>([
    ['nothing', [], []],
    ['one white tuft', [top(2, 'fuzzy-white')], [['white-fuzz-once', { day: 2 }]]],
    ['a flat film, its last day', [top(1, 'flat-white'), top(2, 'flat-white')], [['flat-white', { day: 2 }]]],
    ['larvae, their last day', [top(1, 'larvae'), top(2, 'larvae')], [['larvae', { day: 2 }]]],
    ['bubbles and a clear top', [top(1, 'bubbles'), top(2, 'clear')], []],
  ])('is told beside it: %s', (_, tops, expected) => {
    expect(judged([...start, ...tops]).state).toBe('souring');
    expect(reasons([...start, ...tops])).toEqual([falling, ...expected]);
  });
});
