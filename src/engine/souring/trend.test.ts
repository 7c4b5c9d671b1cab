// What readings say together, at the limits where tools, people or visits are mixed. Expectations by the stated cautions.
import { describe, expect, it } from 'vitest';
import { judgeBatch } from './judge.ts';
import type { Look } from './look.ts';
import { climbs, falls, lastTwo, type Reading, readersDiffer, runBelow, stuckSince, worstOf } from './trend.ts';

const meter = (day: number, ph: number, who?: string): Reading => ({ day, ph, strip: false, who });
const strip = (day: number, ph: number, who?: string): Reading => ({ day, ph, strip: true, who });
const read = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });
const word = (looks: readonly Look[]) =>
  judgeBatch({ looks, temperatureC: 20, today: Math.max(...looks.map(({ day }) => day)) }).state;

describe('a visit that read the acidity more than once', () => {
  it.each([
    ['the first of two', [meter(2, 4.6), meter(2.01, 4.1)], 4.6],
    ['the last of two', [meter(2, 4.1), meter(2.01, 4.6)], 4.6],
    ['the middle one of three', [meter(2, 4.1), meter(2.01, 4.6), meter(2.02, 4.3)], 4.6],
    ['a strip at 4.1, which counts as 4.6', [meter(2, 4.5), strip(2.01, 4.1)], 4.1],
  ] as const)('stands at the least sour of them: %s', (_, visit, ph) => {
    expect(worstOf(visit)?.ph).toBe(ph);
    expect(lastTwo(visit).last?.ph).toBe(ph);
  });

  it('breaks the run below a line with one reading above it', () => {
    const run = [meter(2, 4.1), meter(4, 4.1), meter(4.01, 4.3), meter(6, 4.0)];
    expect(runBelow(run, 4.2).map(({ day }) => day)).toEqual([6]);
  });
  it('does not make a batch ready where its second reading says no', () => {
    expect(word([read(2, 4.1), read(4, 4.1), read(4.01, 4.25)])).toBe('souring');
  });
});

describe('a climb', () => {
  it('is counted from the lowest reading, however small each step is', () => {
    expect(word([read(2, 3.9), read(4, 4.08), read(6, 4.25)])).toBe('lost');
  });
  it('in doubt is forgotten once a later visit has come down again', () => {
    expect(climbs([meter(2, 3.9), meter(4, 4.1)]).doubt).toBeDefined();
    expect(climbs([meter(2, 3.9), meter(4, 4.1), meter(6, 3.8)])).toEqual({});
  });
  it('between two tools is held to pads: from a strip to a meter or back, a doubt from 0.5, lost from 1.0', () => {
    for (const [from, to] of [
      [strip, meter],
      [meter, strip],
    ] as const) {
      expect(climbs([from(2, 4), to(4, 4.49)])).toEqual({});
      expect(climbs([from(2, 4), to(4, 4.5)]).doubt).toBeDefined();
      expect(climbs([from(2, 4), to(4, 4.99)]).lost).toBeUndefined();
      expect(climbs([from(2, 4), to(4, 5)]).lost).toBeDefined();
    }
  });
});

describe('two readers of the last visit', () => {
  it('differ where two names read it more than 0.3 apart', () => {
    expect(readersDiffer([meter(4, 3.6, 'Rake'), meter(4.01, 4, 'Fork')])).toMatchObject({
      from: { ph: 3.6 },
      to: { ph: 4 },
    });
    expect(readersDiffer([meter(4, 3.6, 'Rake'), meter(4.01, 3.9, 'Fork')])).toBeUndefined();
  });
  it('are not two where one gave no name, or both gave the same', () => {
    expect(readersDiffer([meter(4, 3.6), meter(4.01, 4, 'Fork')])).toBeUndefined();
    expect(readersDiffer([meter(4, 3.6, 'Fork'), meter(4.01, 4, 'Fork')])).toBeUndefined();
    expect(readersDiffer([meter(4, 3.6, 'Fork'), meter(4.01, 4)])).toBeUndefined();
  });
});

describe('a fall', () => {
  it.each([
    ['a tenth by meter', [meter(2, 5.2), meter(4, 5.1)], true],
    ['nothing by meter', [meter(2, 5.2), meter(4, 5.2)], false],
    ['a whole pad by strip', [strip(2, 5.5), strip(4, 5)], true],
    ['less than a pad by strip', [strip(2, 5.5), strip(4, 5.1)], false],
    ['less than a pad from strip to meter', [strip(2, 5.5), meter(4, 5.1)], false],
    ['less than a pad from meter to strip', [meter(2, 5.5), strip(4, 5.1)], false],
    ['a whole pad from meter to strip', [meter(2, 5.5), strip(4, 5)], true],
  ] as const)('is or is not seen in %s', (_, readings, seen) => {
    expect(falls(readings)).toBe(seen);
  });
});

describe('standing still', () => {
  it('takes six days to show where either of the two readings is a strip', () => {
    for (const [from, to] of [
      [strip, meter],
      [meter, strip],
    ] as const) {
      expect(stuckSince([from(6, 5.5), to(11.9, 5.5)])).toBeUndefined();
      expect(stuckSince([from(6, 5.5), to(12, 5.5)])).toMatchObject({ day: 6 });
    }
  });
});
