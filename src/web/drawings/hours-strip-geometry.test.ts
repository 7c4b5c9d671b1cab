import { describe, expect, it } from 'vitest';
import { hourX, sayStretch, stretchesOf } from './hours-strip-geometry.ts';

describe('a day as a line of hours', () => {
  it('joins neighbouring open hours and no others', () => {
    const open = [false, true, true, false, false, true];
    expect(stretchesOf(open)).toEqual([
      { from: 1, to: 3 },
      { from: 5, to: 6 },
    ]);
    expect(stretchesOf([false, false])).toEqual([]);
  });
  it('runs from edge to edge, noon in the middle', () => {
    expect([hourX(0, 304), hourX(12, 304), hourX(24, 304), hourX(30, 304)]).toEqual([2, 152, 302, 302]);
  });
  it('says a stretch by the clock', () => {
    expect(sayStretch({ from: 6, to: 10 })).toBe('06:00–10:00');
  });
});
