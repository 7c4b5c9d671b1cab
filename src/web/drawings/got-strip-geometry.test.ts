// Strips of what the beds got keep to one scale, show the liquid however little it is, and stay on the sheet.

import { describe, expect, it } from 'vitest';
import { laidStrip, pxPerMetre, type StripOfNeed } from './got-strip-geometry.ts';

const strip = (lengthM: number, pieces: StripOfNeed['pieces'], covered?: StripOfNeed['covered']): StripOfNeed => ({
  lengthM,
  pieces,
  covered,
});
const half = strip(4, [{ kind: 'compost', fromFraction: 0, toFraction: 0.5 }], { low: 0.4, likely: 0.5, high: 0.7 });

describe('the scale of the strips', () => {
  it('is one for all, by the longest: 4 m on 200 px are 50 px a metre', () => {
    expect(pxPerMetre([half, strip(2, [])], 200)).toBe(50);
  });
  it('leaves room for what lies past an end, at most half a strip', () => {
    const much = { low: 2, likely: 3, high: 4 };
    expect(pxPerMetre([strip(4, [{ kind: 'compost', fromFraction: 0, toFraction: 3 }], much)], 300)).toBe(50);
  });
  it('does not blow up a short bed', () => {
    expect(pxPerMetre([strip(0.5, [])], 1000)).toBe(90);
  });
});

describe('a strip', () => {
  it('is as long as the bed, hatched up to the share that was given, with a whisker for its range', () => {
    const laid = laidStrip(half, 50);
    expect(laid.lengthPx).toBe(200);
    expect(laid.stretches).toEqual([{ kind: 'compost', x: 0, wide: 100 }]);
    expect(laid.whisker?.fromX).toBeCloseTo(80, 9);
    expect(laid.whisker?.toX).toBeCloseTo(140, 9);
    expect([laid.past, laid.liquid]).toEqual([undefined, undefined]);
  });
  it('shows a liquid too thin to see wider than it is, and says so', () => {
    const laid = laidStrip(strip(4, [{ kind: 'pour', fromFraction: 0, toFraction: 0.003 }]), 50);
    // to scale 0.6 px
    expect(laid.liquid).toMatchObject({ x: 0, wide: 4, widened: true });
    const plenty = laidStrip(strip(4, [{ kind: 'pour', fromFraction: 0, toFraction: 0.1 }]), 50);
    expect(plenty.liquid).toMatchObject({ wide: 20, widened: false });
  });
  it('draws too much past the end, and breaks off where that is more than half a strip', () => {
    const laid = (far: number) => laidStrip(strip(4, [{ kind: 'mulch', fromFraction: 0, toFraction: far }]), 50);
    expect(laid(1.25)).toMatchObject({ stretches: [{ wide: 200 }], past: { x: 200, wide: 50, broken: false } });
    expect(laid(9)).toMatchObject({ stretches: [{ wide: 200 }], past: { x: 200, wide: 100, broken: true } });
  });
  it('has no whisker too short to be told from a line: 0.1 to 1 % of 200 px are 1.8 px', () => {
    expect(laidStrip(strip(4, [], { low: 0.001, likely: 0.003, high: 0.01 }), 50).whisker).toBeUndefined();
  });
  it('has a whisker that ends on the sheet, whatever its range', () => {
    const wild = { low: Number.NEGATIVE_INFINITY, likely: 1, high: Number.POSITIVE_INFINITY };
    expect(laidStrip(strip(4, [], wild), 50).whisker).toEqual({ fromX: 0, toX: 300, broken: true });
  });
});
