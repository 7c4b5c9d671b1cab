import { describe, expect, it } from 'vitest';
import { jugOnPaper } from './jug-geometry.ts';

describe('a jug on paper', () => {
  const jug = jugOnPaper({ doseMl: 244, jugMl: 1000, topY: 30 });

  it('puts every mark and the dose at one scale', () => {
    const perMl = (jug.floorY - jug.doseY) / 244;
    for (const { volumeMl, y } of jug.marks) expect((jug.floorY - y) / volumeMl).toBeCloseTo(perMl, 9);
  });
  it('is broken off above where the dose stands low in it, and whole where it does not', () => {
    expect(jug.broken).toBe(true);
    expect(jugOnPaper({ doseMl: 900, jugMl: 1000, topY: 30 }).broken).toBe(false);
  });
  it('names at most seven marks, none of them across the line of the dose', () => {
    for (const doseMl of [21, 37, 50, 244, 500, 998]) {
      const named = jugOnPaper({ doseMl, jugMl: 1000, topY: 30 }).marks.filter((mark) => mark.named);
      const { doseY } = jugOnPaper({ doseMl, jugMl: 1000, topY: 30 });
      expect(named.length).toBeLessThanOrEqual(7);
      for (const { y } of named) expect(Math.abs(y - doseY)).toBeGreaterThan(13);
    }
  });
  it('claims full size only where the screen was set, and then is as high as the screen says', () => {
    expect(jug.fullSize).toBe(false);
    const set = jugOnPaper({ doseMl: 244, jugMl: 1000, topY: 30, pxPerMl: 0.5 });
    expect(set.fullSize).toBe(true);
    expect(set.floorY - set.doseY).toBeCloseTo(122, 9);
  });
  it('does not claim it where there is no room for it', () => {
    expect(jugOnPaper({ doseMl: 900, jugMl: 1000, topY: 30, pxPerMl: 2 }).fullSize).toBe(false);
  });
});
