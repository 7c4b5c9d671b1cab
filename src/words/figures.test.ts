import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { besideLimit as neben } from './de/figures.ts';
import { fitCautions } from './en/fit.ts';
import { gasCautions } from './en/gas.ts';
import { heapCautions } from './en/heap.ts';
import { files } from './en/record.ts';
import { besideLimit } from './figures.ts';

const NBSP = '\u00a0';

describe('a figure said beside its limit', () => {
  it('takes a digit where it rounds to the limit, and no more', () => {
    expect(besideLimit(19.8, 20, '', 0)).toBe('19.8');
    expect(besideLimit(19.97, 20, '', 0)).toBe('19.97');
    expect(besideLimit(14.2, 20, '', 0)).toBe('14');
    expect(besideLimit(65.1, 65, '%', 0)).toBe(`65.1${NBSP}%`);
  });
  it('leaves the limit as it is, or gives it the digits that tell it apart', () => {
    expect(besideLimit(20, 19.8, '', 0)).toBe('20');
    expect(besideLimit(9.04, 9.01, 'L', 1)).toBe(`9.04${NBSP}L`);
  });
  it('is written with a comma in German', () => {
    expect(neben(1.2004, 1.2, 'dS/m')).toBe(`1,2004${NBSP}dS/m`);
    expect(neben(1.2, 1.2004, 'dS/m')).toBe(`1,2${NBSP}dS/m`);
  });
  it('never reads as its limit where more than a hundred-thousandth lies between', () => {
    const some = fc.double({ min: 0.01, max: 5000, noNaN: true });
    fc.assert(
      fc.property(
        some,
        fc.double({ min: -0.5, max: 0.5, noNaN: true }),
        fc.constantFrom(undefined, 0, 1),
        (a, off, d) => {
          fc.pre(Math.abs(off) > 2e-5);
          expect(besideLimit(a, a + off, 'g', d)).not.toBe(besideLimit(a + off, a, 'g', d));
        },
      ),
    );
  });
});

describe('sentences with a limit', () => {
  const say = (
    of: Readonly<Record<string, (v: Record<string, number>) => string>>,
    id: string,
    v: Record<string, number>,
  ) => of[id]?.(v).replaceAll(NBSP, ' ');
  it('tell the heap from what it takes', () => {
    expect(say(heapCautions, 'heap-too-small-to-heat', { volumeM3: 0.998, leastM3: 1 })).toMatch(
      /0\.998 m³: under 1 m³/,
    );
    expect(say(heapCautions, 'heap-core-too-hot', { coreC: 65.4, mostC: 65 })).toMatch(/65\.4 °C, over 65 °C/);
  });
  it('tell the gas of a room from what workplaces allow', () => {
    expect(say(gasCautions, 'room-gas-past-short-limit', { mostPpm: 30_200, limitPpm: 30_000 })).toMatch(
      /30,200 ppm .* more than the 30,000 ppm/,
    );
  });
  it('never order a fill that is 0.0 L or 0 g too much', () => {
    expect(say(fitCautions, 'past-the-fill-line', { overL: 0.02, usableL: 9 })).toMatch(/0\.02 L too much .* 9\.0 L/);
    expect(say(fitCautions, 'more-sugar-than-the-acid-uses', { overG: 0.3, mostG: 90 })).toMatch(/^0\.3 g more/);
  });
  it('count one as one', () => {
    expect(files.taken(1, 0, 0)).toMatch(/^Taken in: 1\u00a0new entry;/);
    expect(files.moreLines(1)).toBe(`and 1${NBSP}more line`);
  });
});
