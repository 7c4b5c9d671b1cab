import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayNumber, daysIn, isOn, isTimeZone, maybeWithinADay, momentOf } from './moment.ts';

const between = (zone: string | undefined, from: string, to: string) => daysIn(zone)(momentOf(from), momentOf(to));

describe('a local date', () => {
  it.each(['2026-06-03', '2026-06-03T00:00', '2026-06-03T23:59', '2024-02-29', '2000-02-29'])('is %s', (on) => {
    expect(isOn(on)).toBe(true);
  });
  it.each([
    ...['2026-02-29', '2100-02-29', '2026-13-01', '2026-00-10', '2026-06-31', '2026-06-03T24:00', '2026-06-03T10:60'],
    ...['2026-6-3', '2026-06-03T10', '2026-06-03 10:00', '1899-12-31', '2200-01-01', '', '2026-06-03T10:00:00Z'],
  ])('is not "%s"', (on) => {
    expect(isOn(on)).toBe(false);
  });
  it('is counted in days as the calendar of the language counts them', () => {
    const days = fc.integer({ min: -25_567, max: 84_005 });
    fc.assert(
      fc.property(days, (day) => {
        const date = new Date(day * 86_400_000);
        expect(dayNumber(date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate())).toBe(day);
        expect(momentOf(date.toISOString().slice(0, 10)).dateDay).toBe(day);
      }),
      { seed: 1970 },
    );
  });
});

describe('days between two acts', () => {
  it('are whole between plain dates, also across a change of the clocks', () => {
    expect(between('Europe/Berlin', '2026-03-28', '2026-03-30')).toBe(2);
  });
  it('are true hours over 24 where both carry a time', () => {
    expect(between('Europe/Berlin', '2026-06-01T08:00', '2026-06-02T20:00')).toBe(1.5);
  });
  // European summer time begins on the last Sunday of March at 01:00 UTC: 29 March 2026; it ends on 25 October 2026.
  it('lose the hour that the clocks lose in spring and gain the one of autumn', () => {
    expect(between('Europe/Berlin', '2026-03-28T12:00', '2026-03-29T12:00')).toBeCloseTo(23 / 24, 12);
    expect(between('Europe/Berlin', '2026-10-24T12:00', '2026-10-25T12:00')).toBeCloseTo(25 / 24, 12);
    expect(between('Europe/Berlin', '2026-03-29T01:30', '2026-03-29T03:30')).toBeCloseTo(1 / 24, 12);
  });
  // Brisbane keeps one time all year; Adelaide ends summer time on the first Sunday of April: 5 April 2026.
  it('follow the zone of the plot, not the device', () => {
    expect(between('Australia/Brisbane', '2026-04-04T12:00', '2026-04-05T12:00')).toBe(1);
    expect(between('Australia/Adelaide', '2026-04-04T12:00', '2026-04-05T12:00')).toBeCloseTo(25 / 24, 12);
  });
  it('take noon where a time is missing, and never fall below 0 on one date', () => {
    expect(between(undefined, '2026-06-01T18:00', '2026-06-01')).toBe(0);
    expect(between(undefined, '2026-06-01T18:00', '2026-06-02')).toBe(0.75);
  });
  it('go by the local clock alone where the zone is not known to the device', () => {
    expect(isTimeZone('Moon/Tranquility')).toBe(false);
    expect(between('Moon/Tranquility', '2026-03-28T12:00', '2026-03-29T12:00')).toBe(1);
  });
});

describe('two acts within a day', () => {
  const near = (a: string, b: string) => maybeWithinADay(momentOf(a), momentOf(b));
  it('are told by their hours, 24 included', () => {
    expect(near('2026-06-01T08:00', '2026-06-02T08:00')).toBe(true);
    expect(near('2026-06-01T08:00', '2026-06-02T08:01')).toBe(false);
  });
  it('may be so on neighbouring dates where a time is missing', () => {
    expect(near('2026-06-01', '2026-06-02T23:00')).toBe(true);
    expect(near('2026-06-01', '2026-06-03T00:00')).toBe(false);
  });
});
