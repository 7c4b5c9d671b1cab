// Bottles on the shelf read back: litres out of the drawn wall, and under them what the next round takes.

import { describe, expect, it } from 'vitest';
import { bottleFill, bottlePath, bottleScale, bottleShape, takesSpan } from '#web/drawings/bottle-geometry.ts';
import { footOf, topOf, turnedL } from './read-back.ts';

// Far larger than on a sheet, so that a tenth of a pixel does not blur the litres.
const stand = (sizeL: number) => ({ shape: bottleShape(sizeL), axisX: 1000, floorY: 4000, pxPerM: 5000 });

describe('a bottle on the shelf', () => {
  it.each([0.25, 0.5, 1, 2])('of %d L holds its litres by its drawn wall', (sizeL) => {
    const one = stand(sizeL);
    expect(turnedL(bottlePath(one), one.axisX, one.pxPerM)).toBeCloseTo(sizeL, 2);
  });
  it.each([0.05, 0.3, 0.5, 0.85, 0.9, 0.97, 1])('of 1 L has %d L in it by what is drawn', (litres) => {
    const one = stand(1);
    const drawn = bottleFill(one, litres);
    expect(turnedL(drawn, one.axisX, one.pxPerM)).toBeCloseTo(litres, 3);
    expect(footOf(drawn)).toBe(one.floorY);
  });
  it('never stands above its mouth, and higher for more', () => {
    const one = stand(1);
    const mouthY = topOf(bottlePath(one));
    expect(topOf(bottleFill(one, 1.5))).toBeCloseTo(mouthY, 1);
    const tops = [0.1, 0.2, 0.6, 0.88, 0.95, 1].map((litres) => topOf(bottleFill(one, litres)));
    for (const [i, y] of tops.entries()) expect(y).toBeLessThan(tops[i - 1] ?? one.floorY);
  });
  it('has one scale for all sizes, and says which: px of a metre at 96 px an inch, divided', () => {
    const { pxPerM, denominator } = bottleScale([0.5, 1, 2], 118);
    expect((pxPerM * denominator * 25.4) / 1000).toBeCloseTo(96, 9);
  });
});

describe('what the next round takes of the bottles', () => {
  /** Litres over a span, bottle by bottle: what lies over each is its share of what that one holds. */
  const litresOver = (eachL: readonly number[], span: { readonly left: number; readonly right: number }) =>
    eachL.reduce((sum, litres, i) => {
      const over = Math.min(span.right, 2 + (i + 1) * 30) - Math.max(span.left, 2 + i * 30);
      return sum + litres * (Math.max(0, over) / 30);
    }, 0);
  const full = [0.9, 0.9, 0.9, 0.9];
  const opened = [0.9, 0.9, 0.9, 0.4, 0];

  it.each([0.1, 0.4, 0.7, 1.3, 1.68, 3.1])('is %d L by the bottles it runs under, the last opened first', (takesL) => {
    for (const eachL of [full, opened]) {
      const span = takesSpan(eachL, { takesL, left: 2, wide: 30 });
      expect(litresOver(eachL, span ?? { left: 0, right: 0 })).toBeCloseTo(takesL, 9);
      expect(span?.right).toBe(122);
    }
  });
  it('runs under all of them where the round takes more, and under none where nothing is in them or taken', () => {
    expect(takesSpan(full, { takesL: 9, left: 2, wide: 30 })).toEqual({ left: 2, right: 122 });
    expect(takesSpan([0, 0], { takesL: 1, left: 2, wide: 30 })).toBeUndefined();
    expect(takesSpan(full, { takesL: 0, left: 2, wide: 30 })).toBeUndefined();
  });
});
