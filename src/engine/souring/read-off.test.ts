import { describe, expect, it } from 'vitest';
import type { Course, Trace } from './model/course.ts';
import { UNKNOWNS } from './model/draws.ts';
import { evenly, type Member } from './model/ensemble.ts';
import { UNTAUGHT } from './model/learn.ts';
import { beliefsMoved, gasBands, phBand, readingsBeside } from './read-off.ts';

/** A run that makes so much CO2 a day and stands at one pH. */
function plainRun(gPerLPerDay: number, ph: number): Course {
  const points = 13;
  const column = (of: (day: number) => number) => Float64Array.from({ length: points }, (_, i) => of(i / 4));
  const zero = column(() => 0);
  const traces: Partial<Record<Trace, Float64Array>> = {
    ph: column(() => ph),
    co2GPerL: column((day) => gPerLPerDay * day),
  };
  return new Proxy({ points, ...traces } as Course, {
    get: (run, name: keyof Course) => run[name] ?? zero,
  });
}

const member = (gPerLPerDay: number, ph = 5, z = 0): Member => ({
  index: 0,
  unknowns: new Float64Array(UNKNOWNS.length).fill(z),
  run: plainRun(gPerLPerDay, ph),
});

describe('gas of each day', () => {
  it('is the gas law on what each draw makes that day', () => {
    const [first, second] = gasBands(evenly([member(1), member(1), member(1)]), {
      days: 1,
      liquidL: 10,
      meanC: () => 20,
    });
    // 1 g/L · 10 L / 44.009 g/mol · 0.082057 L·atm/mol/K · 293.15 K / 1 atm = 5.466 L
    for (const one of [first, second]) expect(one?.gasL.likely).toBeCloseTo(5.466, 3);
  });

  it('is a band over the draws, in order', () => {
    const [first] = gasBands(evenly([member(1), member(2), member(3), member(4)]), {
      days: 1,
      liquidL: 1,
      meanC: () => 20,
    });
    const { low = 0, likely = 0, high = 0 } = first?.gasL ?? {};
    expect(low).toBeLessThan(likely);
    expect(likely).toBeLessThan(high);
  });
});

describe('the acidity for drawing', () => {
  it('stands every six hours from the filling to the last day', () => {
    const band = phBand(evenly([member(1, 5)]), 2);
    expect(band.map(({ day }) => day)).toEqual([0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2]);
    expect(band[3]?.ph).toEqual({ low: 5, likely: 5, high: 5 });
  });
});

describe('a reading', () => {
  const look = { day: 3, ph: 4.4, by: 'meter' } as const;

  it('has the error of its tool: a strip’s is three times that of a meter', () => {
    const [byMeter, byStrip] = readingsBeside([look, { ...look, by: 'strip' }], { readings: [], buffers: [] });
    // 1.2816 · 0.1 and · 0.3, 10th to 90th percentile
    expect(byMeter?.errorPh.high).toBeCloseTo(4.4 + 0.128, 3);
    expect(byStrip?.errorPh.high).toBeCloseTo(4.4 + 0.384, 3);
  });

  it('stands beside the band it was expected in, where there is one', () => {
    const band = { low: 4, likely: 4.3, high: 4.6 };
    const evidence = { readings: [{ day: 3, ph: 4.4, by: 'meter', band, side: 'within' } as const], buffers: [] };
    expect(
      readingsBeside([look, { day: 30, ph: 4 }, { day: 1 }], evidence).map(({ expectedPh }) => expectedPh),
    ).toEqual([band, null]);
  });
});

describe('the band of a reading', () => {
  const MINUTE = 1 / 1440;
  const band = { low: 4, likely: 4.3, high: 4.6 };
  const evidence = { readings: [{ day: 3, ph: 4.4, by: 'meter', band, side: 'within' } as const], buffers: [] };

  it.each([
    ['of the same minute and tool', { day: 3, ph: 4.4, by: 'meter' }, band],
    ['a minute apart', { day: 3 + MINUTE, ph: 4.4, by: 'meter' }, band],
    ['two minutes apart', { day: 3 + 2 * MINUTE, ph: 4.4, by: 'meter' }, null],
    ['another day, by the same tool', { day: 5, ph: 4.4, by: 'meter' }, null],
    ['of the same minute, by another tool', { day: 3, ph: 4.4, by: 'strip' }, null],
  ] as const)('is that of a reading %s, or none', (_, look, expected) => {
    expect(readingsBeside([look], evidence)[0]?.expectedPh).toEqual(expected);
  });
});

describe('beliefs', () => {
  // One standard deviation, as draws.ts recalls them: rate 0.3, count 0.7, buffer 0.25, sugar 0.35, 1.5 °C, pH 0.2
  it.each([
    ['rate', 'factor', Math.exp(0.6)],
    ['count', 'factor', 10 ** 1.4],
    ['buffer', 'factor', Math.exp(0.5)],
    ['sugar', 'factor', Math.exp(0.7)],
    ['warmth', '°C', 3],
    ['startPh', 'pH', 0.4],
  ] as const)('of two standard deviations of %s are told as a %s', (name, unit, likely) => {
    const moved = beliefsMoved({ ensemble: evenly([member(1, 5, 2), member(1, 5, 2)]), prior: UNTAUGHT });
    const one = moved.find(({ unknown }) => unknown === name);
    expect(one?.unit).toBe(unit);
    expect(one?.to.likely).toBeCloseTo(likely, 12);
  });

  it('start from the width that earlier batches left: half of it, half of the way', () => {
    const prior = {
      middle: new Float64Array(UNKNOWNS.length).fill(1),
      width: new Float64Array(UNKNOWNS.length).fill(0.5),
    };
    const warmth = beliefsMoved({ ensemble: evenly([member(1)]), prior }).find(({ unknown }) => unknown === 'warmth');
    // 1.5 °C · (1 ± 1.28155 / 2)
    expect(warmth?.from.low).toBeCloseTo(0.53884, 5);
    expect(warmth?.from.high).toBeCloseTo(2.46116, 5);
  });

  it('are told in units: two standard deviations of warmth are 3 °C, one of the rate is a factor of e^0.3', () => {
    const moved = beliefsMoved({ ensemble: evenly([member(1, 5, 2), member(1, 5, 2)]), prior: UNTAUGHT });
    const warmth = moved.find(({ unknown }) => unknown === 'warmth');
    expect(warmth?.to.likely).toBeCloseTo(3, 12);
    const rate = moved.find(({ unknown }) => unknown === 'rate');
    expect(rate?.to.likely).toBeCloseTo(Math.exp(0.6), 12);
    expect(rate?.from.likely).toBe(1);
    // 10th and 90th percentile of a factor e^(0.3 z): one is the inverse of the other
    expect((rate?.from.low ?? 0) * (rate?.from.high ?? 0)).toBeCloseTo(1, 12);
  });
});
