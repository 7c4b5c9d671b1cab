// Jug and syringe read back by their own marks: the dose stands at its millilitres, nothing at the floor, never out.

import { describe, expect, it } from 'vitest';
import { jugOnPaper, syringeOnPaper } from '#web/drawings/jug-geometry.ts';
import { readBy } from './read-back.ts';

const TOP_Y = 30;
const jug = (doseMl: number, jugMl: number, pxPerMl?: number) => jugOnPaper({ doseMl, jugMl, topY: TOP_Y, pxPerMl });
/** Millilitres at a height, by the marks alone: the floor is not asked. */
const reader = ({ marks }: ReturnType<typeof jug>) =>
  readBy(marks.map(({ volumeMl, y }) => ({ figure: volumeMl, at: y })));

describe('a jug', () => {
  it.each([
    [21, 1000],
    [171, 1000],
    [244, 1000],
    [500, 1000],
    [1000, 1000],
    [250, 250],
    [1700, 2000],
  ])('has its line of %d mL of %d mL where its marks read that', (doseMl, jugMl) => {
    for (const drawn of [jug(doseMl, jugMl), jug(doseMl, jugMl, 0.1)]) {
      const read = reader(drawn);
      expect(read(drawn.doseY)).toBeCloseTo(doseMl, 6);
      expect(read(drawn.floorY)).toBeCloseTo(0, 6);
      for (const { volumeMl, y } of drawn.marks) expect(read(y)).toBeCloseTo(volumeMl, 6);
      expect(drawn.doseY).toBeGreaterThanOrEqual(TOP_Y);
      expect(drawn.doseY).toBeLessThan(drawn.floorY);
    }
  });
  it('whole reaches from its floor to its brim, broken off it goes on above', () => {
    for (const [doseMl, jugMl] of [
      [900, 1000],
      [1000, 1000],
    ] as const) {
      const drawn = jug(doseMl, jugMl);
      expect([drawn.broken, reader(drawn)(TOP_Y)]).toEqual([false, expect.closeTo(jugMl, 6)]);
    }
    const low = jug(100, 1000);
    expect(low.broken).toBe(true);
    expect(reader(low)(TOP_Y)).toBeLessThan(1000);
  });
  it('at full size is as many pixels high as its millilitres ask', () => {
    const drawn = jug(300, 1000, 0.7);
    expect(drawn.fullSize).toBe(true);
    expect(drawn.floorY - drawn.doseY).toBeCloseTo(210, 6);
  });
});

describe('a syringe', () => {
  it.each([0, 0.5, 3, 12.5, 20])('has its plunger at %d mL by its marks', (doseMl) => {
    const drawn = syringeOnPaper({ doseMl, width: 350 });
    const read = readBy(drawn.marks.map(({ volumeMl, x }) => ({ figure: volumeMl, at: x })));
    expect(read(drawn.doseX)).toBeCloseTo(doseMl, 9);
    expect(read(drawn.emptyX)).toBeCloseTo(0, 9);
    expect(read(drawn.fullX)).toBeCloseTo(20, 9);
  });
  it('keeps its plunger within, however much is asked', () => {
    const drawn = syringeOnPaper({ doseMl: 31, width: 350 });
    expect(drawn.doseX).toBe(drawn.fullX);
    expect(drawn.fullX).toBeLessThan(350);
  });
});
