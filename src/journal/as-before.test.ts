import { describe, expect, it } from 'vitest';
import { asBefore, saysSame } from './as-before.ts';

describe('things made anew', () => {
  const shared = { deep: [1, 2] };
  const before = new Map([
    ['a', { n: 1, list: [shared] }],
    ['b', { n: 2, list: [] }],
  ]);

  it('are the ones of before where they say the same, and the very list where all do', () => {
    const again = new Map([...before].map(([id, one]) => [id, structuredClone(one)]));
    expect(asBefore(before, again)).toBe(before);
    again.set('b', { n: 3, list: [] });
    const one = asBefore(before, again);
    expect(one).toEqual(again);
    expect([one === before, one.get('a') === before.get('a')]).toEqual([false, true]);
  });

  it('keep the order in which they were made', () => {
    const turned = new Map([...before].reverse());
    expect([...asBefore(before, turned).keys()]).toEqual(['b', 'a']);
    const fewer = new Map([...before].slice(1));
    expect([...asBefore(before, fewer).keys()]).toEqual(['b']);
  });

  it('never pass for each other where a field is missing, or holds undefined, another sign or another kind of thing', () => {
    const pairs: readonly [unknown, unknown][] = [
      [{ a: undefined }, {}],
      [{ a: undefined }, { b: undefined }],
      [{ a: 0 }, { a: -0 }],
      [[1], { 0: 1 }],
      [[1], [1, 2]],
      [new Map([[1, 2]]), new Map([[1, 3]])],
      [null, {}],
    ];
    for (const [one, other] of pairs) expect([saysSame(one, other), saysSame(other, one)]).toEqual([false, false]);
    expect(saysSame({ a: Number.NaN, b: [{}] }, { b: [{}], a: Number.NaN })).toBe(true);
  });
});
