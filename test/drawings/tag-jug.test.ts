// The jug of the can card on paper, read back by its own marks: each dose at its millilitres, none out of the jug.

import { describe, expect, it } from 'vitest';
import { tagJugOnPaper } from '#web/drawings/tag-jug-geometry.ts';
import { canCard } from '#words/en/print.ts';
import { readBy } from './read-back.ts';

const paper = (jugMl: number, ...dosesMl: readonly number[]) =>
  tagJugOnPaper({ jugMl, doses: dosesMl.map((volumeMl) => ({ volumeMl, text: String(volumeMl) })) });
/** Millilitres at a height, by floor and highest mark. */
const reader = ({ floorMm, marks }: ReturnType<typeof paper>) =>
  readBy([{ figure: 0, at: floorMm }, ...marks.map(({ volumeMl, atMm }) => ({ figure: volumeMl, at: atMm }))]);

describe('the jug of the can card', () => {
  it.each([1, 49, 171, 222, 244, 500, 999, 1000])('has its mark of %d mL where its scale reads that', (volumeMl) => {
    const drawn = paper(1000, volumeMl);
    expect(reader(drawn)(drawn.doses[0]?.atMm ?? 0)).toBeCloseTo(volumeMl, 6);
  });
  it('puts every mark of its scale at one distance', () => {
    const drawn = paper(1000, 171, 222, 244);
    for (const { volumeMl, atMm } of drawn.marks) expect(reader(drawn)(atMm)).toBeCloseTo(volumeMl, 6);
    expect(drawn.marks.map(({ volumeMl }) => volumeMl)).toEqual([50, 100, 150, 200, 250, 300]);
  });
  it.each([250, 500, 1000])('has a dose that is just the jug of %d mL at its brim, on the paper', (jugMl) => {
    const drawn = paper(jugMl, jugMl);
    expect(reader(drawn)(drawn.doses[0]?.atMm ?? 0)).toBeCloseTo(jugMl, 6);
    expect(drawn.doses[0]?.atMm).toBeGreaterThan(0);
  });
  it('stands higher for more, nothing on the floor, all within the paper', () => {
    const drawn = paper(1000, 0, 1, 200, 201, 900, 1000);
    const heights = drawn.doses.map(({ atMm }) => drawn.floorMm - atMm);
    expect(heights[0]).toBe(0);
    expect(heights).toEqual([...new Set(heights)].toSorted((a, b) => a - b));
    for (const { atMm } of drawn.doses) expect(atMm).toBeGreaterThan(6);
  });
  it('names the figure at which the mark stands, with the full jugs before it', () => {
    expect(canCard.mark('10 L can', { full: 0, restMl: 244 })).toBe('10 L can: 244\u00a0mL');
    expect(canCard.mark('10 L can', { full: 1, restMl: 238 })).toMatch(/^10 L?…: 1.jug \+ 238\u00a0mL$/);
  });
});
