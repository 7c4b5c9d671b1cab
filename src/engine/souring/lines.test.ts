// Expected values: the two anchors of each line as stated, the formula worked by hand, and the limits of the range.
import { describe, expect, it } from 'vitest';
import { alarmLines, holdDays } from './lines.ts';

const days = (temperatureC: number) => alarmLines(temperatureC).map((line) => line.days);

describe('alarm lines', () => {
  it('stand at 3 and 5 days at 20 °C, 5 and 9 days at 12 °C', () => {
    expect(days(20)).toEqual([3, 5]);
    expect(days(12)[0]).toBeCloseTo(5, 12);
    expect(days(12)[1]).toBeCloseTo(9, 12);
  });
  it('run between them as a constant factor per degree: at 16 °C the geometric means √15 and √45', () => {
    expect(days(16)[0]).toBeCloseTo(Math.sqrt(15), 12);
    expect(days(16)[1]).toBeCloseTo(Math.sqrt(45), 12);
  });
  it('go on below 12 °C: at 4 °C 25/3 and 81/5 days', () => {
    expect(days(4)[0]).toBeCloseTo(25 / 3, 12);
    expect(days(4)[1]).toBeCloseTo(81 / 5, 12);
  });
  it('grow no shorter above 20 °C, where no line is set', () => {
    expect(days(35)).toEqual(days(20));
  });
  it('are not met by any day when the temperature is unknown', () => {
    for (const line of days(Number.NaN)) expect(0 <= line).toBe(false);
  });
});

describe('hold', () => {
  it.each([
    [20, 7],
    [30, 7],
    [15, 16],
    [10, 24],
    [17.5, 11.5], // half way from 16 to 7
    [12.5, 20], // half way from 24 to 16
  ])('at %d °C takes %d days', (temperatureC, expected) => {
    expect(holdDays(temperatureC)).toBeCloseTo(expected, 12);
  });
  it('is never over below 10 °C or at an unknown temperature', () => {
    expect(holdDays(9.9)).toBe(Number.POSITIVE_INFINITY);
    expect(holdDays(Number.NaN)).toBe(Number.POSITIVE_INFINITY);
  });
});
