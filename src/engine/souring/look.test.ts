// Looks in order and gathered into visits: an hour is one visit, and the order in which looks were typed never matters.
import { describe, expect, it } from 'vitest';
import { inOrder, type Look, sawSomething, visits } from './look.ts';

describe('a visit', () => {
  it('ends an hour after its first entry, not after its last', () => {
    const at = (...minutes: readonly number[]) => visits(minutes.map((m) => ({ day: m / 1440 }))).map((v) => v.length);
    expect(at(0, 60)).toEqual([2]);
    expect(at(0, 61)).toEqual([1, 1]);
    expect(at(0, 40, 80)).toEqual([2, 1]);
  });
});

describe('a look', () => {
  it.each([
    [{ day: 1, ph: 4 }, true],
    [{ day: 1, surface: 'clear' }, true],
    [{ day: 1, smell: 'sour' }, true],
    [{ day: 1, smell: 'cannot-smell' }, false],
    [{ day: 1, who: 'Rake' }, false],
  ] as const)('of %o saw something: %s', (look, saw) => {
    expect(sawSomething(look)).toBe(saw);
  });
});

describe('looks in order', () => {
  it('go by their day, however they were typed', () => {
    const [a, b, c] = [{ day: 1 }, { day: 2 }, { day: 3 }] as const;
    for (const typed of [
      [a, b, c],
      [a, c, b],
      [b, a, c],
      [b, c, a],
      [c, a, b],
      [c, b, a],
    ])
      expect(inOrder(typed)).toEqual([a, b, c]);
  });

  it.each([
    ['acidity', { ph: 4.1 }, { ph: 4.4 }],
    ['tool', { ph: 4.1, by: 'meter' }, { ph: 4.1, by: 'strip' }],
    ['smell', { smell: 'egg' }, { smell: 'sour' }],
    ['top', { surface: 'clear' }, { surface: 'larvae' }],
    ['name', { smell: 'sour', who: 'Fork' }, { smell: 'sour', who: 'Rake' }],
  ] as const)('of one moment that differ in their %s stand in one order, whichever came first', (_, one, other) => {
    const [a, b]: readonly Look[] = [
      { day: 2, ...one },
      { day: 2, ...other },
    ];
    if (a && b) expect(inOrder([a, b])).toEqual(inOrder([b, a]));
    expect.assertions(1);
  });
});
