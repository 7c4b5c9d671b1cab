// The line on paper: volumes come back out of every shape, strips keep their order and their scale, text keeps its words.

import { describe, expect, it } from 'vitest';
import { bottleM, canM, flowPath, heapM, sackM, scaleFor, walked, wrapped } from './line-geometry.ts';

describe('shapes of the line', () => {
  it.each([1, 12, 45])('hold %d L again when their volume is worked out', (volumeL) => {
    const heap = heapM(volumeL);
    expect(((Math.PI * (heap.widthM / 2) ** 2 * heap.heightM) / 3) * 1000).toBeCloseTo(volumeL, 6);
    const cylinders = [bottleM(volumeL), canM(volumeL)];
    for (const { widthM, heightM } of cylinders)
      expect(Math.PI * (widthM / 2) ** 2 * heightM * 1000).toBeCloseTo(volumeL, 6);
    const sack = sackM(volumeL);
    // A sixth of its height is neck.
    expect(Math.PI * (sack.widthM / 2) ** 2 * (sack.heightM / 1.2) * 1000).toBeCloseTo(volumeL, 6);
  });
});

describe('the scale', () => {
  const pails = { things: [{ widthM: 0.26, heightM: 0.25 }], widthPx: 166, gapPx: 20 };
  it('is the largest at which everything keeps within its room', () => {
    const found = scaleFor([pails], { things: [{ widthM: 0.6, heightM: 0.3 }], widthPx: 166, gapPx: 0 }, 130);
    // 0.6 m on 166 px: 96 px an inch is 3780 px/m, and 3780 · 0.6 / 14 = 162 px; at 1 : 12 it would be 189
    expect(found.denominator).toBe(14);
    expect(found.heapFits).toBe(true);
  });
  it('lets a heap of many barrows be broken off rather than shrink a pail to nothing', () => {
    const found = scaleFor([pails], { things: [{ widthM: 6, heightM: 3 }], widthPx: 166, gapPx: 0 }, 130);
    expect(found.heapFits).toBe(false);
    expect(found.denominator).toBeLessThanOrEqual(30);
  });
});

describe('strips in walking order', () => {
  const strips = [4.8, 4.8, 3, 6].map((lengthM) => ({ lengthM, widthM: 1.2 }));
  const plan = walked(strips, { x: 0, y: 0, widthPx: 330 });
  it('keep their lengths in proportion and within the width', () => {
    for (const [i, at] of plan.at.entries()) {
      expect(at.width / plan.pxPerM).toBeCloseTo(strips[i]?.lengthM ?? 0, 9);
      expect(at.x + at.width).toBeLessThanOrEqual(330);
    }
  });
  it('never overlap, and each comes after the one before', () => {
    for (const [i, at] of plan.at.entries()) {
      const before = plan.at[i - 1];
      if (before) expect(at.y > before.y || at.x >= before.x + before.width).toBe(true);
    }
  });
});

describe('words and lines', () => {
  it('break between words and lose none', () => {
    const lines = wrapped('peg 14, use first by Sat 19 Sept', 16);
    expect(lines.join(' ')).toBe('peg 14, use first by Sat 19 Sept');
    expect(lines.every((line) => line.length <= 16)).toBe(true);
  });
  it('a flow begins and ends where it is told, with a bend at each corner', () => {
    const path = flowPath([
      [0, 0],
      [0, 40],
      [50, 40],
    ]);
    expect(path.startsWith('M0 0')).toBe(true);
    expect(path.endsWith('L50 40')).toBe(true);
    expect(path.match(/Q/g)).toHaveLength(1);
  });
});
