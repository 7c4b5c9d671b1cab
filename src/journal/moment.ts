// When an act was done: a local date, or a local date and time, as the keyholder gave it. Here it is read, put in
// order and subtracted. No clock: nothing here knows what day it is. The plot's time zone only matters between
// two acts that both carry a time, across a change of the clocks.

const MINUTES_A_DAY = 1440;
const NOON = 720;
const FIRST_YEAR = 1900;
const LAST_YEAR = 2199;
const FORM = /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d):(\d\d))?$/;

/** A local date with or without a time, ready to compare. */
export interface Moment {
  /** As the entry has it. */
  readonly on: string;
  /** Local date, counted in days from 1 January 1970. */
  readonly dateDay: number;
  /** Minutes on the local clock from the same start; noon where no time was given. */
  readonly wallMinute: number;
  /** Whether a time was given. */
  readonly timed: boolean;
}

/** Whether a text is a date that the calendar has. */
export function isDate(value: string): boolean {
  return value.length === 10 && isOn(value);
}

/** Whether a text is a local date or a local date and time. */
export function isOn(value: string): boolean {
  const [whole, year, month, day, hour, minute] = FORM.exec(value)?.map(Number) ?? [];
  if (whole === undefined || year === undefined || month === undefined || day === undefined) return false;
  if (year < FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12 || day < 1) return false;
  if (day > lastOfMonth(year, month)) return false;
  return value.length === 10 || ((hour ?? 24) < 24 && (minute ?? 60) < 60);
}

function lastOfMonth(year: number, month: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

/** Days from 1 January 1970 to a date of the Gregorian calendar. @arithmetic */
export function dayNumber(year: number, month: number, day: number): number {
  // The year starts in March, so that the leap day is its last.
  const y = month > 2 ? year : year - 1;
  const era = Math.floor(y / 400);
  const yearOfEra = y - era * 400;
  const dayOfYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return (
    era * 146_097 + yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear - 719_468
  );
}

/** Reads the `on` of a checked entry. */
export function momentOf(on: string): Moment {
  const dateDay = dayNumber(digits(on, 0, 4), digits(on, 5, 2), digits(on, 8, 2));
  const timed = on.length > 10;
  const minute = timed ? digits(on, 11, 2) * 60 + digits(on, 14, 2) : NOON;
  return { on, dateDay, wallMinute: dateDay * MINUTES_A_DAY + minute, timed };
}

function digits(value: string, from: number, count: number): number {
  let sum = 0;
  for (let i = from; i < from + count; i++) sum = sum * 10 + value.charCodeAt(i) - 48;
  return sum;
}

/** Whether two acts may lie within 24 hours of each other; where a time is missing the dates decide, carefully. */
export function maybeWithinADay(a: Moment, b: Moment): boolean {
  if (a.timed && b.timed) return Math.abs(a.wallMinute - b.wallMinute) <= MINUTES_A_DAY;
  return Math.abs(a.dateDay - b.dateDay) <= 1;
}

/** Whether one act was surely done before another: by the minute where both carry a time, else by the date. @arithmetic */
export function isBefore(one: Moment, other: Moment): boolean {
  return one.timed && other.timed ? one.wallMinute < other.wallMinute : one.dateDay < other.dateDay;
}

/** Days from one act to a later one. */
export type DaysBetween = (from: Moment, to: Moment) => number;

/**
 * Counts days between acts in a time zone.
 *
 * With both times given, true hours over 24, a change of the clocks included. With a time missing, hours on the local
 * clock with noon in its place, so that two plain dates are whole days apart; on one date never less than 0.
 * A zone that this device does not know is left out: hours on the local clock alone.
 */
export function daysIn(timeZone: string | undefined): DaysBetween {
  const offset = timeZone === undefined ? () => 0 : offsetsOf(timeZone);
  return (from, to) => {
    if (from.timed && to.timed) {
      const minutes = to.wallMinute - offset(to.wallMinute) - (from.wallMinute - offset(from.wallMinute));
      return minutes / MINUTES_A_DAY;
    }
    const days = (to.wallMinute - from.wallMinute) / MINUTES_A_DAY;
    return from.dateDay === to.dateDay ? Math.max(0, days) : days;
  };
}

/** Minutes that the clocks of a zone stand ahead of UTC at a local time; undefined for a zone this device does not know. */
export function minutesAheadOfUtc(timeZone: string, wallMinute: number): number | undefined {
  return isTimeZone(timeZone) ? offsetsOf(timeZone)(wallMinute) : undefined;
}

/** Minutes that local time is ahead of UTC, by the local clock; asked of the zone once a day and kept. */
function offsetsOf(timeZone: string): (wallMinute: number) => number {
  if (lastOffsets?.timeZone !== timeZone) lastOffsets = { timeZone, of: offsetsAnew(timeZone) };
  return lastOffsets.of;
}

/** The zone asked for last: a plot has one, and asking its calendar for a day takes longer than judging a batch. */
let lastOffsets: { readonly timeZone: string; readonly of: (wallMinute: number) => number } | undefined;

function offsetsAnew(timeZone: string): (wallMinute: number) => number {
  const zone = zoneNamed(timeZone);
  if (zone === undefined) return () => 0;
  const ahead = (utcMinute: number): number => {
    const part = new Map(zone.formatToParts(utcMinute * 60_000).map(({ type, value }) => [type, Number(value)]));
    const of = (name: Intl.DateTimeFormatPartTypes) => part.get(name) ?? 0;
    const date = dayNumber(of('year'), of('month'), of('day'));
    return date * MINUTES_A_DAY + of('hour') * 60 + of('minute') - utcMinute;
  };
  // Twice: the first answer is for the wrong instant where the clocks changed in between.
  const atWall = (wallMinute: number) => ahead(wallMinute - ahead(wallMinute));
  const byDay = new Map<number, number | undefined>();
  return (wallMinute) => {
    const day = Math.floor(wallMinute / MINUTES_A_DAY);
    if (!byDay.has(day)) {
      const first = atWall(day * MINUTES_A_DAY);
      byDay.set(day, first === atWall((day + 1) * MINUTES_A_DAY) ? first : undefined);
    }
    return byDay.get(day) ?? atWall(wallMinute);
  };
}

/** The zone asked for last: a plot has one, and making its calendar takes longer than a fold of a season. */
let lastZone: { readonly timeZone: string; readonly zone: Intl.DateTimeFormat | undefined } | undefined;

function zoneNamed(timeZone: string): Intl.DateTimeFormat | undefined {
  if (lastZone?.timeZone !== timeZone) lastZone = { timeZone, zone: zoneMade(timeZone) };
  return lastZone.zone;
}

function zoneMade(timeZone: string): Intl.DateTimeFormat | undefined {
  try {
    return new Intl.DateTimeFormat('en-GB-u-ca-gregory-nu-latn', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
    });
  } catch {
    return undefined;
  }
}

/** Whether this device knows the time zone. */
export function isTimeZone(timeZone: string): boolean {
  return zoneNamed(timeZone) !== undefined;
}
