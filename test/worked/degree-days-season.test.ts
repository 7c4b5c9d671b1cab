// Degree days of two seasons of an open daily series (Seattle, 1 April to 30 September, base 10 °C) by the two ways that
// differ most in spring. daily-temperatures.csv holds date, highest and lowest of data/seattle-weather.csv of the data
// package vega-datasets 3.2.1 (measured by a public weather service); the sums were reckoned from it by another program.

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { degreeDays } from '#engine/ground/degree-days.ts';

const BASE_C = 10;
/** Sums of 183 terms of twentieths: no rounding is allowed for beyond that of the machine. */
const TOLERANCE = 1e-6;

interface Day {
  readonly on: string;
  readonly lowC: number;
  readonly highC: number;
}

function series(): readonly Day[] {
  const file = new URL('daily-temperatures.csv', import.meta.url);
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split(/\r?\n/);
  const names = head.split(',');
  const [on, high, low] = ['date', 'temp_max', 'temp_min'].map((name) => names.indexOf(name));
  return lines.map((line) => {
    const cells = line.split(',');
    return { on: cells[on ?? -1] ?? '', lowC: Number(cells[low ?? -1]), highC: Number(cells[high ?? -1]) };
  });
}

describe('degree days of a season of daily lows and highs', () => {
  const days = series();

  it('are those of a whole series: every day of 2012 to 2015, each low no higher than its high', () => {
    expect(days).toHaveLength(3 * 365 + 366);
    expect(days.filter(({ lowC, highC }) => !(lowC <= highC))).toEqual([]);
  });

  it.each([
    { year: '2012', way: 'mean-then-base', expectedDegreeDays: 1034.45 },
    { year: '2012', way: 'base-then-mean', expectedDegreeDays: 1110.25 },
    { year: '2013', way: 'mean-then-base', expectedDegreeDays: 1298.45 },
    { year: '2013', way: 'base-then-mean', expectedDegreeDays: 1344.2 },
  ] as const)('of $year by $way add up to $expectedDegreeDays', ({ year, way, expectedDegreeDays }) => {
    const season = days.filter(({ on }) => on >= `${year}-04-01` && on <= `${year}-09-30`);
    expect(season).toHaveLength(183);
    const total = season.reduce(
      (sum, { lowC, highC }) => sum + degreeDays({ lowC, highC, baseC: BASE_C, way }).degreeDays,
      0,
    );
    expect(Math.abs(total - expectedDegreeDays)).toBeLessThanOrEqual(TOLERANCE);
  });
});
