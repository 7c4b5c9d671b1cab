// The can from the side, read back: its floor is nothing, its fill line the whole can.

import { describe, expect, it } from 'vitest';
import { canLayers, canLevel } from '#web/drawings/can-geometry.ts';
import { readBy } from './read-back.ts';

/** Share of a can at a height, by its floor and its fill line. */
const shareAt = readBy([
  { figure: 0, at: 0 },
  { figure: 1, at: canLevel(1) },
]);

describe('a can from the side', () => {
  it.each([0, 0.152, 0.5, 1])('stands as high as its share of %d', (share) => {
    expect(shareAt(canLevel(share))).toBeCloseTo(share, 9);
  });
  it('is never fuller than full, nor emptier than empty, and its fill line is under the rim', () => {
    expect([canLevel(1.4), canLevel(-1)]).toEqual([canLevel(1), 0]);
    expect(canLevel(1)).toBeLessThan(1);
  });
  it.each([0, 1 / 41, 1 / 11, 1])('has %d of what is filled as concentrate, the rest as water above it', (share) => {
    const { concentrate, water } = canLayers(share);
    expect(concentrate / (concentrate + water)).toBeCloseTo(share, 9);
    expect(shareAt(concentrate + water)).toBeCloseTo(1, 9);
  });
});
