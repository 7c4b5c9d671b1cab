// Strips and bars read back: lengths in metres, shares of a need, kilograms of a sum, grams of a gap and of sugar, hours.

import { describe, expect, it } from 'vitest';
import { gapStrip, sumPieces, underCeilingX } from '#web/drawings/bar-geometry.ts';
import { laidStrip, pxPerMetre } from '#web/drawings/got-strip-geometry.ts';
import { layersOf } from '#web/drawings/heap-side-geometry.ts';
import { hourX, stretchesOf } from '#web/drawings/hours-strip-geometry.ts';
import { walked } from '#web/drawings/line-geometry.ts';
import { barScale } from '#web/drawings/window-bar-geometry.ts';
import { readBy } from './read-back.ts';

describe('the strip of what a bed got', () => {
  const given = (...ends: readonly number[]) => ({
    lengthM: 4.8,
    covered: undefined,
    pieces: ends.map((toFraction, i) => ({
      kind: i === 0 ? 'compost' : 'mulch',
      fromFraction: ends[i - 1] ?? 0,
      toFraction,
    })),
  });
  it.each([0.1, 0.5, 0.93, 1])('has a share of %d of its length hatched where that was given', (share) => {
    const laid = laidStrip(given(share), 60);
    expect(laid.lengthPx / 60).toBeCloseTo(4.8, 9);
    expect(laid.stretches.reduce((sum, { wide }) => sum + wide, 0) / laid.lengthPx).toBeCloseTo(share, 9);
    expect(laid.past).toBeUndefined();
  });
  it('has nothing hatched where nothing was given', () => {
    expect(laidStrip(given(), 60)).toMatchObject({ stretches: [], liquid: undefined, past: undefined });
  });
  it('lays kind behind kind without a gap, what is too much past the end, each as long as its share', () => {
    const laid = laidStrip(given(0.7, 1.3), 60);
    const [first, second] = laid.stretches;
    expect((first?.wide ?? 0) / laid.lengthPx).toBeCloseTo(0.7, 9);
    expect(second?.x).toBeCloseTo(first?.wide ?? 0, 9);
    expect(((second?.wide ?? 0) + (laid.past?.wide ?? 0)) / laid.lengthPx).toBeCloseTo(0.6, 9);
    expect(laid.past?.x).toBe(laid.lengthPx);
  });
  it('never runs off the sheet, whatever is too much', () => {
    for (const far of [0.4, 1, 1.4, 2, 40]) {
      const strips = [given(far), { ...given(0.2), lengthM: 6 }];
      const pxPerM = pxPerMetre(strips, 340);
      for (const strip of strips) {
        const { lengthPx, past } = laidStrip(strip, pxPerM);
        expect(Math.max(lengthPx, past === undefined ? 0 : past.x + past.wide)).toBeLessThanOrEqual(340 + 1e-9);
      }
    }
  });
});

describe('beds in walking order', () => {
  const strips = [4.8, 3, 6, 0.1].map((lengthM) => ({ lengthM, widthM: 1.2 }));
  it('read back their metres by the one scale, in both directions; a tiny one is 10 px at least', () => {
    const plan = walked(strips, { x: 0, y: 0, widthPx: 330 });
    plan.at.slice(0, 3).forEach(({ width, height }, i) => {
      expect(width / plan.pxPerM).toBeCloseTo(strips[i]?.lengthM ?? 0, 9);
      expect(height / plan.pxPerM).toBeCloseTo(1.2, 9);
    });
    expect(plan.at[3]?.width).toBe(10);
  });
});

describe('the two bars of a straining', () => {
  const parts = [{ massKg: 3.2 }, { massKg: 5.2 }, { massKg: 0.15 }, { massKg: 0 }, { massKg: 0.2 }];
  const totalKg = 8.75;
  it('read back kilogram by kilogram, from end to end', () => {
    const drawn = sumPieces(parts, { totalKg, width: 350 });
    const read = readBy([
      { figure: 0, at: 2 },
      { figure: totalKg, at: 348 },
    ]);
    let sumKg = 0;
    for (const { part, x, width } of drawn) {
      expect(read(x)).toBeCloseTo(sumKg, 9);
      sumKg += part.massKg;
      expect(read(x + width)).toBeCloseTo(sumKg, 9);
    }
    expect(sumKg).toBeCloseTo(totalKg, 9);
  });
});

describe('the gap of a bed', () => {
  const paper = { widestG: 108, width: 342 };
  const gramsIn = (px: number) => (px / 340) * 108;
  it('is as long as what is missing, hatched as far as it is closed, never past its end', () => {
    const drawn = gapStrip(
      { missingG: 54, pieces: [{ grams: 20 }, { grams: 0 }, { grams: 10 }, { grams: 90 }] },
      paper,
    );
    expect(gramsIn(drawn.whole.width)).toBeCloseTo(54, 9);
    expect(drawn.pieces.map(({ width }) => gramsIn(width))).toEqual([20, 10, 24].map((g) => expect.closeTo(g, 9)));
    const last = drawn.pieces.at(-1);
    expect((last?.x ?? 0) + (last?.width ?? 0)).toBeCloseTo(drawn.whole.x + drawn.whole.width, 9);
  });
  it('is nothing where nothing is missing, the whole width where the most is', () => {
    expect(gapStrip({ missingG: 0, pieces: [{ grams: 5 }] }, paper)).toEqual({ whole: { x: 1, width: 0 }, pieces: [] });
    expect(gapStrip({ missingG: 0, pieces: [] }, { widestG: 0, width: 342 }).whole.width).toBe(0);
    expect(gapStrip({ missingG: 108, pieces: [] }, paper).whole).toEqual({ x: 1, width: 340 });
  });
});

describe('a strength under its ceiling', () => {
  it('reads back between nothing and the ceiling, both on the paper', () => {
    const paper = { ceilingGPerL: 1.9, width: 270 };
    const read = readBy([
      { figure: 0, at: underCeilingX(0, paper) },
      { figure: 1.9, at: underCeilingX(1.9, paper) },
    ]);
    for (const gPerL of [0, 0.2, 0.68, 1.9]) expect(read(underCeilingX(gPerL, paper))).toBeCloseTo(gPerL, 9);
    expect([underCeilingX(0, paper), underCeilingX(1.9, paper)]).toEqual([2, 266]);
  });
});

describe('the bar of sugar', () => {
  it.each([20, 90, 150, 240])(
    'has its mark at %d g by its quarter marks, and so the ends of its window',
    (weighedG) => {
      const bar = barScale({ leastG: 120, mostG: 190, weighedG }, 350);
      const read = readBy(bar.ticksX.map((at, i) => ({ figure: (bar.endG * i) / 4, at })));
      expect(read(bar.weighedX)).toBeCloseTo(weighedG, 6);
      expect(read(bar.leastX)).toBeCloseTo(120, 6);
      expect(read(bar.mostX)).toBeCloseTo(190, 6);
    },
  );
  it('stays on the paper and in order for nothing, little and far too much', () => {
    const marks = [0, 1, 30, 300, 5000].map(
      (weighedG) => barScale({ leastG: 120, mostG: 190, weighedG }, 350).weighedX,
    );
    for (const x of marks) expect(x).toBeGreaterThanOrEqual(0);
    for (const x of marks) expect(x).toBeLessThanOrEqual(350);
  });
});

describe('the hours of a day', () => {
  it('read back on their line, each open stretch as long as its hours', () => {
    const read = readBy([
      { figure: 0, at: hourX(0, 350) },
      { figure: 24, at: hourX(24, 350) },
    ]);
    for (const hour of [0, 5.75, 12, 21.5, 24]) expect(read(hourX(hour, 350))).toBeCloseTo(hour, 9);
    const open = Array.from({ length: 24 }, (_, hour) => hour >= 6 && hour < 10);
    const hours = stretchesOf(open).map(({ from, to }) => read(hourX(to, 350)) - read(hourX(from, 350)));
    expect(hours).toEqual([expect.closeTo(4, 9)]);
  });
});

describe('the rows of a heap', () => {
  it('are as thick as their share of the litres, from the floor to the top', () => {
    const litres = [120, 30, 0, 250];
    const drawn = layersOf(litres, { floorY: 196, height: 160, footHalf: 160, topHalf: 84 });
    expect(drawn.map(({ bottomY, topY }) => ((bottomY - topY) / 160) * 400)).toEqual(
      litres.map((one) => expect.closeTo(one, 9)),
    );
    expect([drawn[0]?.bottomY, drawn.at(-1)?.topY]).toEqual([196, 36]);
  });
});
