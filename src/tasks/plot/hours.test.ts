// Today and tomorrow by what was told: hours of a forecast, a few figures, or nothing.
import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { recorder } from '../../../test/scenarios/recorder.ts';
import { type HoursAsk, hourFindings, hoursOf } from './hours.ts';

const ON = '2026-06-26';
const NEXT = '2026-06-27';
const kmPerH = (value: number) => value / 3.6;
/** Sunrise 05:00, sunset 21:00. */
const sun = {
  [ON]: { by: 'place', sunriseMinute: 300, sunsetMinute: 1260 },
  [NEXT]: { by: 'place', sunriseMinute: 300, sunsetMinute: 1260 },
} as const;
type Weather = Body<'weather.typed'>;
type Day = Weather['days'][number];
type Hour = NonNullable<Day['hours']>[number];

function view(weather: Partial<Weather> | undefined, ask: Partial<HoursAsk> = {}) {
  const { did } = recorder();
  const plot = fold([
    did('plot.described', ON, { name: 'a plot' }),
    ...(weather ? [did('weather.typed', `${ON}T06:00`, { what: 'forecast', days: [], ...weather })] : []),
  ]);
  return hoursOf({ plot, now: `${ON}T09:30`, sun, soil: 'moist', ...ask });
}

const hoursOfDay = (of: (hour: number) => Partial<Hour>): Hour[] =>
  Array.from({ length: 24 }, (_, hour) => ({
    hour,
    temperatureC: 18,
    windMPerS: kmPerH(8),
    rainMm: 0,
    humidityPercent: 55,
    ...of(hour),
  }));
const bothDays = (of: (hour: number) => Partial<Hour>): Day[] => [
  { on: ON, hours: hoursOfDay(of) },
  { on: NEXT, hours: hoursOfDay(of) },
];
const sprayHours = (found: ReturnType<typeof hoursOf>, day: 0 | 1 = 0) =>
  found.days[day].hours.filter(({ spray }) => spray.answer === 'open').map(({ hour }) => hour);
const pourHours = (found: ReturnType<typeof hoursOf>) =>
  found.days[0].hours.filter(({ pour }) => pour.answer === 'open').map(({ hour }) => hour);
const rules = (found: readonly { readonly rule: string }[]) => found.map(({ rule }) => rule);

describe('the hours of a forecast', () => {
  it('are open for a spray from 1.5 hours after sunrise to 2 hours before sunset', () => {
    const found = view({ days: bothDays(() => ({})) });
    // Whole hours within 06:30 to 19:00; the next day ends within 6 hours of what was told, so 18 is its last.
    expect(sprayHours(found)).toEqual([7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18]);
    expect(sprayHours(found, 1)).toEqual([7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18]);
    expect(found.nextSpray).toMatchObject({ on: ON, hour: 9 });
    expect(found.days[0].by).toBe('hours');
  });
  it('close in wind over 15 km/h, and the next open hour is told', () => {
    const found = view({ days: bothDays((hour) => (hour < 14 ? { windMPerS: kmPerH(22) } : {})) });
    expect(rules(found.sprayNow)).toContain('spray-windy');
    expect(found.nextSpray).toMatchObject({ on: ON, hour: 14 });
    // Wind closes no pour on the soil: it asks for care.
    expect(found.nextPour).toMatchObject({ on: ON, hour: 9 });
    expect(rules(found.pourNow)).toEqual(['pour-windy']);
  });
  it('close 6 hours before rain, and a pour only before heavy rain', () => {
    const found = view({ days: bothDays((hour) => (hour === 15 ? { rainMm: 12 } : {})) });
    // Rain at 15: 9 is 6 hours before it and open, 10 is not.
    expect(sprayHours(found)).toEqual([7, 8, 9, 16, 17, 18]);
    // Within 6 hours of 12 mm: from 10 to 15.
    expect(pourHours(found)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 16, 17, 18, 19, 20, 21, 22, 23]);
    expect(pourHours(view({ days: bothDays((hour) => (hour === 15 ? { rainMm: 2 } : {})) }))).toHaveLength(24);
  });
  it('close at 25 °C for both', () => {
    const found = view({ days: bothDays((hour) => (hour >= 9 && hour < 17 ? { temperatureC: 25 } : {})) });
    expect(rules(found.sprayNow)).toContain('spray-hot');
    expect(rules(found.pourNow)).toEqual(['pour-hot']);
    expect(found.nextPour).toMatchObject({ hour: 17 });
  });
  it('read in air warmed by 6 °C since its lowest have no layer to fear near sunrise', () => {
    const found = view({ days: bothDays((hour) => ({ temperatureC: hour < 6 ? 12 : 18 })) });
    expect(sprayHours(found)[0]).toBe(6);
  });
  it('know their age from when the forecast was made', () => {
    const days = bothDays(() => ({}));
    expect(view({ days, issuedAt: '2026-06-25T21:00' }).forecastAgeH).toBe(12);
    expect(rules(view({ days, issuedAt: '2026-06-25T21:00' }).sprayNow)).toContain('spray-forecast-old');
    expect(view({ days }).forecastAgeH).toBe(3);
    expect(view({ days, what: 'seen' }).forecastAgeH).toBeUndefined();
  });
});

describe('a few figures for the day', () => {
  const days: Day[] = [
    { on: ON, lowC: 11, highC: 21, rainMm: 0, windMPerS: kmPerH(10) },
    { on: NEXT, lowC: 11, highC: 21, rainMm: 0, windMPerS: kmPerH(10) },
  ];
  it('open the whole of a mild, dry day', () => {
    const found = view({ days });
    expect(found.days[0].by).toBe('day');
    expect(sprayHours(found)).toHaveLength(12);
    expect(rules(found.sprayNow)).toEqual(['spray-humidity-not-told', 'spray-window-open']);
  });
  it('leave a hot day to the cool of its morning', () => {
    const found = view({ days: days.map((day) => ({ ...day, highC: 29 })) });
    // From 06:30 to 4 hours after sunrise.
    expect(sprayHours(found)).toEqual([7, 8, 9]);
    expect(rules(found.sprayNow)).toContain('spray-by-rule-of-thumb');
  });
  it('do not tell the hour of rain: then no spray is open', () => {
    const found = view({ days: days.map((day) => ({ ...day, rainMm: 3 })) });
    expect(sprayHours(found)).toEqual([]);
    expect(rules(found.sprayNow)).toContain('spray-hour-not-known');
    expect(pourHours(found)).toHaveLength(24);
  });
  it('of frost close the day', () => {
    expect(sprayHours(view({ days: days.map((day) => ({ ...day, lowC: -1 })) }))).toEqual([]);
  });
  it('without tomorrow do not tell the rain of the last hours', () => {
    const found = view({ days: days.slice(0, 1) });
    expect(pourHours(found).at(-1)).toBe(18);
    expect(sprayHours(found).at(-1)).toBe(18);
  });
});

describe('the sun', () => {
  const days = bothDays(() => ({}));
  it('may be told by the clock where the plot has no place', () => {
    const told = days.map((day) => ({ ...day, sunrise: '05:00', sunset: '21:00' }));
    const found = view({ days: told }, { sun: {} });
    expect(found.days[0].sun).toEqual({ by: 'told', sunriseMinute: 300, sunsetMinute: 1260 });
    expect(sprayHours(found)).toHaveLength(12);
  });
  it('that nobody told keeps every spray from being open', () => {
    const found = view({ days }, { sun: {} });
    expect(sprayHours(found)).toEqual([]);
    expect(found.nextSpray).toBeUndefined();
  });
  it('of a polar night closes every hour; of a polar day it tells nothing, and cloud may', () => {
    const all = (word: 'day' | 'night') =>
      ({ sun: { [ON]: { by: 'place', all: word }, [NEXT]: { by: 'place', all: word } } }) as const;
    expect(view({ days }, all('night')).days[0].hours.every(({ spray }) => spray.answer === 'closed')).toBe(true);
    expect(view({ days }, all('day')).days[0].hours.every(({ spray }) => spray.answer === 'unknown')).toBe(true);
    const cloudy = bothDays(() => ({ cloudPercent: 100 }));
    expect(sprayHours(view({ days: cloudy }, all('day')))).toHaveLength(24);
  });
});

describe('without any weather', () => {
  it('nothing is open, and it says so', () => {
    const found = view(undefined);
    expect(found.days[0].by).toBe('nothing');
    expect([found.nextPour, found.nextSpray]).toEqual([undefined, undefined]);
    expect(rules(found.pourNow)).toEqual(['pour-hour-not-known']);
  });
  it('the air as seen stands in for the wind of the hour that runs', () => {
    const { did } = recorder();
    const plot = fold([did('plot.described', ON, { name: 'a plot' })]);
    const found = hourFindings({ plot, now: `${ON}T09:30`, sun, airSeen: 'branches-move' }, 'leaf');
    expect(rules(found)).toContain('spray-windy');
  });
});
