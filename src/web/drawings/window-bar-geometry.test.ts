import { describe, expect, it } from 'vitest';
import { barLabels, barScale, roundEnd } from './window-bar-geometry.ts';

describe('the sugar bar', () => {
  it('ends at a round figure at or above what it must hold', () => {
    for (const value of [1, 7, 12, 99, 101, 188, 234, 999, 4321]) {
      expect(roundEnd(value)).toBeGreaterThanOrEqual(value);
      expect(roundEnd(value)).toBeLessThanOrEqual(2 * value);
    }
  });

  it('keeps marks in the order of their grams and on the bar', () => {
    const bar = barScale({ leastG: 120, mostG: 190, weighedG: 250 }, 350);
    expect(bar.leastX).toBeLessThan(bar.mostX);
    expect(bar.mostX).toBeLessThan(bar.weighedX);
    expect(bar.weighedX).toBeLessThanOrEqual(350);
  });

  it('draws the ends the wrong way round when no amount fits', () => {
    const bar = barScale({ leastG: 240, mostG: 190, weighedG: 0 }, 350);
    expect(bar.mostX).toBeLessThan(bar.leastX);
  });

  it('writes both ends with as many digits as tell them apart', () => {
    const said = (leastG: number) =>
      barLabels(barScale({ leastG, mostG: 187.53, weighedG: 0 }, 350), 350, true).map(({ text }) => text);
    expect(said(187.71)).toEqual(['most 187.5\u00a0g', 'least 187.7\u00a0g']);
    expect(said(240)).toEqual(['most 188\u00a0g', 'least 240\u00a0g']);
  });

  it('puts a least without bound at its end', () => {
    const bar = barScale({ leastG: Number.POSITIVE_INFINITY, mostG: 190, weighedG: 0 }, 350);
    expect(bar.leastX).toBe(349);
  });

  // 40 px is half of the widest weighed figure, 138 px the widest window figure at 20 px bold.
  it.each([0, 30, 110, 150, 185, 220, 400, 2000])('keeps the window figure clear of %d g weighed', (weighedG) => {
    const bar = barScale({ leastG: 120, mostG: 190, weighedG }, 350);
    const label = barLabels(bar, 350, false).find((one) => !one.low);
    expect(label).toBeDefined();
    if (label === undefined || weighedG === 0) return;
    const left = label.anchor === 'start' ? label.x : label.anchor === 'end' ? label.x - 138 : label.x - 69;
    expect(left >= bar.weighedTextX + 40 || left + 138 <= bar.weighedTextX - 40).toBe(true);
    expect(left).toBeGreaterThanOrEqual(0);
    expect(left + 138).toBeLessThanOrEqual(350);
  });
});
