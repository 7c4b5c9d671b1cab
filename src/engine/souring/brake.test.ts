import { describe, expect, it } from 'vitest';
import { brakeOf } from './brake.ts';
import type { DayExpected, Forecast } from './model/forecast.ts';

const range = (likely: number) => ({ low: likely, likely, high: likely });

function expected(plateauPh: number, sugarGPerL: number): Forecast {
  const none = range(0);
  const day: DayExpected = {
    day: 21,
    ph: range(plateauPh),
    sugarGPerL: range(sugarGPerL),
    lacticGPerL: none,
    aceticGPerL: none,
    ethanolGPerL: none,
    co2GPerL: none,
    ammoniaNMgPerL: none,
  };
  const band = { reachedFraction: 0 };
  return {
    days: [day],
    reach: { '4.6': band, '4.2': band, '4.0': band },
    ready: band,
    held: band,
    plateauPh: range(plateauPh),
  };
}

describe('what holds a batch back', () => {
  it.each([
    ['its own acid, where it comes down to 4.0 with warmth enough', 3.7, 5, 20, 0.07, 'acid'],
    ['sugar, where none is left and it stays above 4.0', 4.5, 0.2, 20, 0.07, 'sugar'],
    ['cold below 15 °C', 4.1, 8, 12, 0.07, 'cold'],
    ['sugar before cold, since warmth brings none', 4.5, 0.2, 12, 0.07, 'sugar'],
    ['heat above what the bacteria bear', 5.5, 12, 40, 0.07, 'warm'],
    ['dryness, where there is little water and it stays above 4.0', 4.5, 8, 20, 0.5, 'dry'],
    ['cold, where nobody knows how warm it stands', 3.9, 5, Number.NaN, 0.07, 'cold'],
  ] as const)('is %s', (_, plateauPh, sugarGPerL, meanC, dryMatterFraction, brake) => {
    expect(brakeOf({ expected: expected(plateauPh, sugarGPerL), meanC, dryMatterFraction })).toBe(brake);
  });
});
