// Sunrise and sunset of a local date at the plot's place, by a general astronomy library. The place and the zone are
// handed in, the clock times go out; the engine takes them from there. Fetched by the screens only where a place is told.

import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine';
import { minutesAheadOfUtc, momentOf } from '#journal/moment.ts';
import type { SunDay } from './hours.ts';

/** Degrees on the globe, north and east counting up. */
export interface Place {
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
}

/** Days from 1 January 1970 to noon UT on 1 January 2000, where the library counts from. @arithmetic calendar */
const EPOCH_DAYS = 10_957.5;
const MINUTES_A_DAY = 1440;
/** The upper edge of the sun on the horizon, refraction included. @memory Reda and Andreas 2008, NREL/TP-560-34302 */
const RISEN_DEG = -0.8333;

/**
 * Sunrise and sunset of a local date, in minutes of the local clock from its midnight: the sun's upper edge on a level
 * horizon, with 34' of refraction. On a date without one it is missing, and `all` says whether the sun is up all day.
 * @arithmetic search of astronomy-engine
 * @checked worked/sunrise.csv
 */
export function sunOn(on: string, place: Place, minutesAhead: number): SunDay {
  const startMinute = momentOf(on).dateDay * MINUTES_A_DAY - minutesAhead;
  const start = MakeTime(startMinute / MINUTES_A_DAY - EPOCH_DAYS);
  const observer = new Observer(place.latitudeDeg, place.longitudeDeg, 0);
  const minuteOf = (direction: 1 | -1) => {
    const found = SearchRiseSet(Body.Sun, observer, direction, start, 1);
    return found === null ? undefined : (found.ut - start.ut) * MINUTES_A_DAY;
  };
  const sunriseMinute = minuteOf(1);
  const sunsetMinute = minuteOf(-1);
  if (sunriseMinute === undefined && sunsetMinute === undefined) {
    const noon = start.AddDays(0.5);
    const { ra, dec } = Equator(Body.Sun, noon, observer, true, true);
    return { by: 'place', all: Horizon(noon, observer, ra, dec).altitude > RISEN_DEG ? 'day' : 'night' };
  }
  return {
    by: 'place',
    ...(sunriseMinute !== undefined && { sunriseMinute }),
    ...(sunsetMinute !== undefined && { sunsetMinute }),
  };
}

/** The sun of some local dates; nothing without a place or a zone that this device knows. */
export function sunOfDates(
  dates: readonly string[],
  facts: {
    readonly latitudeDeg?: number | undefined;
    readonly longitudeDeg?: number | undefined;
    readonly timeZone?: string | undefined;
  },
): Readonly<Record<string, SunDay>> {
  const { latitudeDeg, longitudeDeg, timeZone } = facts;
  if (latitudeDeg === undefined || longitudeDeg === undefined || timeZone === undefined) return {};
  return Object.fromEntries(
    dates.flatMap((on) => {
      // At noon the clocks of the day have changed where they change at all.
      const ahead = minutesAheadOfUtc(timeZone, momentOf(on).wallMinute);
      return ahead === undefined ? [] : [[on, sunOn(on, { latitudeDeg, longitudeDeg }, ahead)]];
    }),
  );
}
