// The scales of a season hold all that is drawn, end on round grams, and keep nothing at its place.

import { describe, expect, it } from 'vitest';
import { seasonBand, seasonLine, seasonScale } from './release-geometry.ts';

const room = { width: 358, height: 258 };
const even = (grams: number) => ({ low: grams, likely: grams, high: grams });

describe('the scales of a season', () => {
  const points = [
    { day: 100, takenUpG: even(0), freeG: even(0) },
    { day: 200, takenUpG: { low: 80, likely: 100, high: 118 }, freeG: { low: 1, likely: 2, high: 4 } },
  ];
  const scale = seasonScale(points, room);
  it('run from the first day to the last and from nothing to a round figure over the highest', () => {
    expect([scale.x(100), scale.x(200)]).toEqual([48, 348]);
    // 118 g in at most six steps of 1, 2 or 5 times a power of ten: six of 20
    expect(scale.gramTicks).toEqual([0, 20, 40, 60, 80, 100, 120]);
    expect([scale.y(0), scale.y(120)]).toEqual([228, 28]);
  });
  it('go below nothing where nitrogen is tied up', () => {
    const tied = seasonScale([{ day: 0, takenUpG: null, freeG: { low: -3, likely: -2, high: 1 } }], room);
    expect(tied.gramTicks[0]).toBeLessThanOrEqual(-3);
    expect(tied.gramTicks).toContain(0);
  });
  it('stand on a season in which nothing is known', () => {
    const none = seasonScale([{ day: 0, takenUpG: null, freeG: null }], room);
    expect(none.gramTicks[0]).toBe(0);
    expect(Number.isFinite(none.x(0)) && Number.isFinite(none.y(0))).toBe(true);
  });
  it('carry a band that goes out along its high end and comes back along its low one', () => {
    // 200 px for 120 g
    expect(seasonBand(points, scale)).toBe('M48.0 228.0L348.0 221.3L348.0 226.3L48.0 228.0Z');
    expect(seasonBand([{ day: 0, takenUpG: null, freeG: null }], scale)).toBe('');
  });
  it('carry a line through its points', () => {
    expect(
      seasonLine([
        [1, 2],
        [3, 4.25],
      ]),
    ).toBe('M1.0 2.0L3.0 4.3');
  });
});
