import { describe, expect, it } from 'vitest';
import { hourlyC } from './model/temperature.ts';
import { meanBetweenC, warmthByDay, warmthUntil } from './warmth-by-day.ts';

/** Day 0 at 10 °C, day 1 at 20, day 2 at 30. */
const steps = Float64Array.from({ length: 72 }, (_, hour) => 10 * (1 + Math.floor(hour / 24)));

describe('the mean of the liquid', () => {
  it('is that of the hours between two days', () => {
    expect(meanBetweenC(steps, 0, 1)).toBe(10);
    expect(meanBetweenC(steps, 0, 3)).toBe(20);
    // 12 hours at 10 and 24 at 20: (120 + 480) / 36
    expect(meanBetweenC(steps, 0.5, 2)).toBeCloseTo(600 / 36, 12);
  });

  it('of a moment is what it stands at, and past the end what it stood at last', () => {
    expect(meanBetweenC(steps, 0, 0)).toBe(10);
    expect(meanBetweenC(steps, 9, 9)).toBe(30);
  });

  it('is not a number where an hour is not known', () => {
    expect(meanBetweenC(hourlyC({ warmth: [], days: 2, vesselL: 10 }), 0, 2)).toBeNaN();
  });
});

describe('the days of the liquid', () => {
  it('have their low, mean and high, the last one carried on', () => {
    expect(warmthByDay(steps, 3)).toEqual([
      { day: 0, lowC: 10, meanC: 10, highC: 10 },
      { day: 1, lowC: 20, meanC: 20, highC: 20 },
      { day: 2, lowC: 30, meanC: 30, highC: 30 },
      { day: 3, lowC: 30, meanC: 30, highC: 30 },
    ]);
  });

  it('swing less than the air does', () => {
    const [, day] = warmthByDay(hourlyC({ warmth: [[0, 10, 20]], days: 3, vesselL: 10 }), 2);
    expect(day?.lowC).toBeGreaterThan(10);
    expect(day?.highC).toBeLessThan(20);
    expect(day?.meanC).toBeCloseTo(15, 0);
  });
});

describe('the days until one', () => {
  it('are full days and the hours of the last, each with its mean', () => {
    // Day 2 until hour 54: six of its hours, a quarter of a day
    expect(warmthUntil(steps, 2.25)).toEqual([
      { day: 0, temperatureC: 10, stoodDays: 1 },
      { day: 1, temperatureC: 20, stoodDays: 1 },
      { day: 2, temperatureC: 30, stoodDays: 0.25 },
    ]);
  });

  it('take an hour that has begun as a full one, and no hour after it', () => {
    const rising = Float64Array.from({ length: 48 }, (_, hour) => hour);
    // Hours 0 to 5 have a mean of 2.5
    expect(warmthUntil(rising, 5.5 / 24)).toEqual([{ day: 0, temperatureC: 2.5, stoodDays: 0.25 }]);
  });

  it('are the first hour where no time has gone by', () => {
    const [first, ...more] = warmthUntil(steps, 0);
    expect(first).toMatchObject({ day: 0, temperatureC: 10 });
    expect(first?.stoodDays).toBeCloseTo(1 / 24, 12);
    expect(more).toEqual([]);
  });
});
