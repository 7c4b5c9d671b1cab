// Sunrise and sunset against published cases, against the NOAA equations after Meeus worked here a second time, and on
// polar days and nights.

import { describe, expect, it } from 'vitest';
import { momentOf } from '#journal/moment.ts';
import { sunOfDates, sunOn } from '#tasks/plot/sun.ts';
import { num, worked } from '../published/rows.ts';

const minutes = (clock = '') => Number(clock.slice(0, 2)) * 60 + Number(clock.slice(3));

describe('sunrise and sunset', () => {
  for (const row of worked('sunrise.csv')) {
    it(`agree with ${row.locator} at ${row.case}`, () => {
      const place = { latitudeDeg: num(row, 'latitudeDeg'), longitudeDeg: num(row, 'longitudeDeg') };
      const sun = sunOn(row.on ?? '', place, num(row, 'aheadMinutes'));
      const tolerance = num(row, 'tolerance');
      expect(Math.abs((sun.sunriseMinute ?? Number.NaN) - minutes(row.expectedSunrise))).toBeLessThanOrEqual(tolerance);
      expect(Math.abs((sun.sunsetMinute ?? Number.NaN) - minutes(row.expectedSunset))).toBeLessThanOrEqual(tolerance);
    });
  }

  it('of the worked example is not the sunset printed for the UT day', () => {
    const sun = sunOn('2003-10-17', { latitudeDeg: 39.742476, longitudeDeg: -105.1786 }, -420);
    expect(minutes('17:20.3') - (sun.sunsetMinute ?? Number.NaN)).toBeGreaterThan(1);
  });

  it('agree within a minute with the NOAA equations at 50 places and dates', () => {
    for (let i = 0; i < 50; i++) {
      const place = { latitudeDeg: -58 + ((i * 37) % 117), longitudeDeg: -179 + ((i * 71) % 358) };
      const day = momentOf('2026-01-01').dateDay + ((i * 53) % 365);
      const on = new Date(day * 86_400_000).toISOString().slice(0, 10);
      const ahead = Math.round(place.longitudeDeg / 15) * 60;
      const ours = sunOn(on, place, ahead);
      const theirs = noaa(day, place, ahead);
      expect(Math.abs((ours.sunriseMinute ?? Number.NaN) - theirs.rise), `${on} ${JSON.stringify(place)}`).toBeLessThan(
        1,
      );
      expect(Math.abs((ours.sunsetMinute ?? Number.NaN) - theirs.set), `${on} ${JSON.stringify(place)}`).toBeLessThan(
        1,
      );
    }
  });
});

describe('within the polar circles', () => {
  const tromso = { latitudeDeg: 69.65, longitudeDeg: 18.96 };
  it('the sun stays up all day in June and down all day in December', () => {
    expect(sunOn('2026-06-21', tromso, 120)).toEqual({ by: 'place', all: 'day' });
    expect(sunOn('2026-12-21', tromso, 60)).toEqual({ by: 'place', all: 'night' });
    expect(sunOn('2026-12-21', { latitudeDeg: -75, longitudeDeg: 0 }, 0)).toEqual({ by: 'place', all: 'day' });
  });
  it('it rises and sets again in March', () => {
    const { sunriseMinute, sunsetMinute } = sunOn('2026-03-20', tromso, 60);
    // Equinox: about 12 hours, with a few minutes more for refraction and the sun's edge.
    expect((sunsetMinute ?? 0) - (sunriseMinute ?? 0)).toBeGreaterThan(12 * 60);
    expect((sunsetMinute ?? 0) - (sunriseMinute ?? 0)).toBeLessThan(12.5 * 60);
  });
});

describe('the plot’s own dates', () => {
  const facts = { latitudeDeg: 51.4769, longitudeDeg: 0, timeZone: 'Europe/London' };
  it('are told by the local clock, an hour ahead in summer', () => {
    const sun = sunOfDates(['2024-06-20'], facts)['2024-06-20'];
    expect(Math.abs((sun?.sunriseMinute ?? Number.NaN) - minutes('04:42.6'))).toBeLessThanOrEqual(1);
  });
  it('have no sun without a place, or in a zone that this device does not know', () => {
    expect(sunOfDates(['2024-06-20'], { timeZone: 'Europe/London' })).toEqual({});
    expect(sunOfDates(['2024-06-20'], { ...facts, timeZone: 'No/Where' })).toEqual({});
  });
});

/** The NOAA equations after Meeus, Astronomical Algorithms, chapter 25; zenith 90.833°, iterated once. */
function noaa(day: number, place: { latitudeDeg: number; longitudeDeg: number }, ahead: number) {
  const rad = Math.PI / 180;
  const of = (minute: number) => {
    const t = (day + (minute - ahead) / 1440 - 10_957.5) / 36_525;
    const l0 = 280.46646 + t * (36_000.76983 + t * 0.0003032);
    const m = (357.52911 + t * (35_999.05029 - 0.0001537 * t)) * rad;
    const e = 0.016708634 - t * (0.000042037 + 0.0000001267 * t);
    const centre =
      Math.sin(m) * (1.914602 - t * (0.004817 + 0.000014 * t)) +
      Math.sin(2 * m) * (0.019993 - 0.000101 * t) +
      Math.sin(3 * m) * 0.000289;
    const omega = (125.04 - 1934.136 * t) * rad;
    const lambda = (l0 + centre - 0.00569 - 0.00478 * Math.sin(omega)) * rad;
    const obliquity = (23.439291 - t * 0.0130042 + 0.00256 * Math.cos(omega)) * rad;
    const declination = Math.asin(Math.sin(obliquity) * Math.sin(lambda));
    const y = Math.tan(obliquity / 2) ** 2;
    const l = l0 * rad;
    const equation =
      (4 / rad) *
      (y * Math.sin(2 * l) -
        2 * e * Math.sin(m) +
        4 * e * y * Math.sin(m) * Math.cos(2 * l) -
        0.5 * y * y * Math.sin(4 * l) -
        1.25 * e * e * Math.sin(2 * m));
    const latitude = place.latitudeDeg * rad;
    const hourAngle = Math.acos(
      Math.cos(90.833 * rad) / (Math.cos(latitude) * Math.cos(declination)) -
        Math.tan(latitude) * Math.tan(declination),
    );
    const noon = 720 - 4 * place.longitudeDeg - equation + ahead;
    return { rise: noon - (4 * hourAngle) / rad, set: noon + (4 * hourAngle) / rad };
  };
  return { rise: of(of(360).rise).rise, set: of(of(1080).set).set };
}
