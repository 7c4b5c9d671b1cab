// Expected values: the two anchors of each line as stated, the formula worked by hand, and the limits of the range.
import { describe, expect, it } from 'vitest';
import { alarmLines, alarmLinesOver, holdDays, holdDoneOn } from './lines.ts';

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
    [20, 15],
    [30, 15],
    [15, 24],
    [10, 39],
    [17.5, 19.5], // half way from 24 to 15
    [12.5, 31.5], // half way from 39 to 24
  ])('at %d °C takes %d days', (temperatureC, expected) => {
    expect(holdDays(temperatureC)).toBeCloseTo(expected, 12);
  });
  it('is never over below 10 °C or at an unknown temperature', () => {
    expect(holdDays(9.9)).toBe(Number.POSITIVE_INFINITY);
    expect(holdDays(Number.NaN)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe('lines over the temperatures as they were', () => {
  const steady = (temperatureC: number, days: number) => new Float64Array(days * 24).fill(temperatureC);
  const days = (lines: readonly { readonly days: number }[]) => lines.map((line) => line.days);

  it('are those of the mean where it never changes, within the series and beyond it', () => {
    for (const temperatureC of [8, 12, 17.5, 20, 29])
      for (const told of [1, 30])
        days(alarmLinesOver(steady(temperatureC, told))).forEach((day, i) => {
          expect(day).toBeCloseTo(alarmLines(temperatureC)[i]?.days ?? Number.NaN, 9);
        });
  });

  it('add up: two days at 12 °C are 2/5 of the way to pH 5.0, and the rest takes 3/5 of 3 days at 20 °C', () => {
    const series = new Float64Array(20 * 24).fill(20).fill(12, 0, 48);
    // 2 + (1 − 2/5) × 3 and 2 + (1 − 2/9) × 5, by the two columns of the table
    expect(days(alarmLinesOver(series))[0]).toBeCloseTo(3.8, 9);
    expect(days(alarmLinesOver(series))[1]).toBeCloseTo(2 + (7 / 9) * 5, 9);
  });

  it('are always passed where a temperature before them is not known', () => {
    expect(days(alarmLinesOver(new Float64Array(96).fill(Number.NaN, 0, 24)))).toEqual([Number.NaN, Number.NaN]);
    expect(days(alarmLinesOver(new Float64Array(0)))).toEqual([Number.NaN, Number.NaN]);
  });

  it('hold by the hour: 7.5 days at 20 °C are half of it, and 12 days at 15 °C the other half', () => {
    const series = new Float64Array(40 * 24).fill(15).fill(20, 0, 7.5 * 24);
    expect(holdDoneOn(series, 0)).toBeCloseTo(19.5, 9);
    expect(holdDoneOn(steady(20, 30), 4)).toBeCloseTo(19, 9);
  });

  it('never hold where it turned cold, although the mean is warm enough', () => {
    const series = new Float64Array(20 * 24).fill(8).fill(25, 0, 6 * 24);
    expect(holdDoneOn(series, 6)).toBe(Number.POSITIVE_INFINITY);
  });

  it('take nothing from before the hold began: a first cold day neither helps nor hinders', () => {
    const series = new Float64Array(40 * 24).fill(15).fill(20, 24, 96).fill(8, 0, 24);
    // from day 4 on at 15 °C: 24 days
    expect(holdDoneOn(series, 4)).toBeCloseTo(28, 9);
  });

  it('take nothing from after the hold was done', () => {
    const series = new Float64Array(30 * 24).fill(10).fill(20, 0, 20 * 24);
    expect(holdDoneOn(series, 4)).toBeCloseTo(19, 9);
  });
});
