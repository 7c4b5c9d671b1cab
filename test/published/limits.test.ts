// Limits that others set: gases in air, and the heat that a heap must reach. Each is written as it is published; the
// tables must give the very same number.

import { describe, expect, it } from 'vitest';
import { figures } from '#engine/tables/index.ts';

const likely = (table: string, id: string, quantity: string) => figures(table).get(id)?.[quantity]?.likely;

/** A limit has no band. */
function exactly(id: string, quantity: string, ppm: number): void {
  expect(figures('gas').get(id)?.[quantity]).toMatchObject({ low: ppm, likely: ppm, high: ppm });
}

describe('limits of gases, ppm', () => {
  // niosh-1994, the page of carbon dioxide: REL 5,000 over a working day and 30,000 for a short time; revised IDLH 40,000.
  it.each([
    ['dayLimitPpm', 5000],
    ['shortLimitPpm', 30_000],
    ['dangerPpm', 40_000],
  ])('carbon dioxide, %s is %d', (quantity, ppm) => {
    exactly('co2', quantity, ppm);
  });

  // malone-rubright-2017, table 3: NIOSH IDLH 100, REL of ten minutes 10; OSHA ceiling 20, peak of ten minutes 50.
  it.each([
    ['tenMinuteLimitPpm', 10],
    ['ceilingPpm', 20],
    ['peakPpm', 50],
    ['dangerPpm', 100],
  ])('hydrogen sulphide, %s is %d', (quantity, ppm) => {
    exactly('hydrogen-sulphide', quantity, ppm);
  });
});

describe('the nose', () => {
  // nrc-2009, chapter 5: olfactory fatigue at 100 ppm and paralysis of the nerve at 150.
  it('tires of hydrogen sulphide at 100 ppm and is numbed at 150', () => {
    const { low, likely: middle, high } = figures('gas').get('hydrogen-sulphide')?.smellFailsPpm ?? {};
    expect([low, middle, high]).toEqual([100, 100, 150]);
  });
});

describe('heat of heaps', () => {
  // cfr-40-503, appendix B, as the rule of Texas (30 TAC 332.23) repeats it: in a vessel or static pile 55 °C or higher for 3
  // days; in windrows 55 °C or higher for 15 days, with at least five turnings.
  it.each([
    ['leastC', 55],
    ['stillDays', 3],
    ['turnedDays', 15],
    ['turningsCount', 5],
  ])('%s is %d', (quantity, value) => {
    expect(likely('heap', 'cfr-40', quantity)).toBe(value);
  });
});
