// Today and tomorrow hour by hour: whether a leaf may be sprayed and a bed poured on, why not, when the next open hour
// comes, and what it was judged by: hours of a forecast, a few figures for the day, or rules of thumb. The limits are the
// engine's; nothing is fetched, and what nobody told stays untold.

import {
  type AirSeen,
  type PourHour,
  type PourWindow,
  pourWindow,
  SPRAY_LIMITS,
  type SprayHour,
  type SprayWindow,
  sprayWindow,
} from '#engine/can/spray-window.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { pourHourRules, sprayRules } from '#engine/rules/spray.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { momentOf } from '#journal/moment.ts';
import { onDay } from './dates.ts';

type WeatherDay = Body<'weather.typed'>['days'][number];
type WeatherHour = NonNullable<WeatherDay['hours']>[number];

/** The sun of one date: by the plot's place, or as a keyholder told it. Minutes of the local clock from midnight. */
export interface SunDay {
  readonly by: 'place' | 'told';
  readonly sunriseMinute?: number;
  readonly sunsetMinute?: number;
  /** Where it neither rises nor sets. */
  readonly all?: 'day' | 'night';
}

export interface HoursAsk {
  readonly plot: Plot;
  /** Local date and time. */
  readonly now: string;
  /** Sunrise and sunset at the plot's place by date; empty without a place. */
  readonly sun?: Readonly<Record<string, SunDay>> | undefined;
  readonly soil?: PourHour['soil'];
  /** The air as seen now, where no wind was told. */
  readonly airSeen?: AirSeen | undefined;
}

/** One hour, from its full hour on. */
export interface HourView {
  readonly on: string;
  readonly hour: number;
  readonly pour: PourWindow;
  readonly spray: SprayWindow;
}

export interface DayView {
  readonly on: string;
  readonly sun: SunDay | undefined;
  /** Hours of a forecast, a few figures for the day, or nothing. */
  readonly by: 'hours' | 'day' | 'nothing';
  readonly hours: readonly HourView[];
}

export interface HoursView {
  readonly days: readonly [today: DayView, tomorrow: DayView];
  /** Findings on the hour that runs. */
  readonly pourNow: readonly Finding[];
  readonly sprayNow: readonly Finding[];
  /** The hour that runs, or the next that is open; nothing where none is told. */
  readonly nextPour: HourView | undefined;
  readonly nextSpray: HourView | undefined;
  /** Hours since the forecast was made that today is read from; nothing for what was seen or not told. */
  readonly forecastAgeH: number | undefined;
}

const HOURS_A_DAY = 24;
const MINUTES_AN_HOUR = 60;
/** Cloud that covers the whole sky, as forecasts give it. @practice our caution, no source */
const OVERCAST_PERCENT = 95;

/** Today and tomorrow. */
export function hoursOf(ask: HoursAsk): HoursView {
  const today = ask.now.slice(0, 10);
  const told = [today, onDay(momentOf(today).dateDay + 1)].map((on) => toldOf(ask, on));
  const at = Number(ask.now.slice(11, 13));
  const [first, second] = told.map((day, i) => dayOf(day, i, told, ask));
  if (first === undefined || second === undefined) throw new Error('hoursOf: no two days');
  const here = { dayIndex: 0, hour: at };
  const ahead = [...first.hours.slice(at), ...second.hours];
  const forecastAgeH = ageOf(told[0], ask.now);
  return {
    days: [first, second],
    pourNow: judge(pourHourRules, pourHourAt(here, told, ask.soil)),
    sprayNow: judge(sprayRules, { hour: sprayHourAt(here, told, ask.airSeen), forecastAgeH }),
    nextPour: ahead.find(({ pour }) => pour.answer === 'open'),
    nextSpray: ahead.find(({ spray }) => spray.answer === 'open'),
    forecastAgeH,
  };
}

/** Findings on the running hour alone. */
export function hourFindings(ask: HoursAsk, way: 'soil' | 'leaf'): readonly Finding[] {
  const { pourNow, sprayNow } = hoursOf(ask);
  return way === 'leaf' ? sprayNow : pourNow;
}

/** What was told of one date, and the act that told it. */
interface Told {
  readonly on: string;
  readonly day: WeatherDay | undefined;
  readonly hours: ReadonlyMap<number, WeatherHour>;
  readonly sun: SunDay | undefined;
  readonly forecastAt: string | undefined;
}

interface Place {
  readonly dayIndex: number;
  readonly hour: number;
}

/** The last telling of a date: what was seen before what was foretold. */
function toldOf({ plot, sun }: HoursAsk, on: string): Told {
  const all = plot.weather.flatMap(({ body, when }) =>
    body.days.filter((day) => day.on === on).map((day) => ({ day, body, at: body.issuedAt ?? when.on })),
  );
  const last = all.findLast(({ body }) => body.what === 'seen') ?? all.at(-1);
  const hours = all.findLast(({ day }) => day.hours !== undefined)?.day.hours ?? [];
  return {
    on,
    day: last?.day,
    hours: new Map(hours.map((one) => [one.hour, one])),
    sun: sun?.[on] ?? sunTold(all.findLast(({ day }) => day.sunrise !== undefined || day.sunset !== undefined)?.day),
    forecastAt: last?.body.what === 'forecast' ? last.at : undefined,
  };
}

function sunTold(day: WeatherDay | undefined): SunDay | undefined {
  if (day === undefined) return undefined;
  return {
    by: 'told',
    ...(day.sunrise !== undefined && { sunriseMinute: minuteOf(day.sunrise) }),
    ...(day.sunset !== undefined && { sunsetMinute: minuteOf(day.sunset) }),
  };
}

function minuteOf(clock: string): number {
  return Number(clock.slice(0, 2)) * MINUTES_AN_HOUR + Number(clock.slice(3, 5));
}

/** Hours between the forecast and now; not a number where the forecast has no time of day. */
function ageOf(told: Told | undefined, now: string): number | undefined {
  if (told?.forecastAt === undefined) return undefined;
  const made = momentOf(told.forecastAt);
  if (!made.timed) return Number.NaN;
  return Math.max(0, Math.floor((momentOf(now).wallMinute - made.wallMinute) / MINUTES_AN_HOUR));
}

function dayOf(day: Told, dayIndex: number, told: readonly Told[], ask: HoursAsk): DayView {
  const at = Number(ask.now.slice(11, 13));
  const hours = Array.from({ length: HOURS_A_DAY }, (_, hour): HourView => {
    const seen = dayIndex === 0 && hour === at ? ask.airSeen : undefined;
    return {
      on: day.on,
      hour,
      // The strip shows the weather: soil can be wetted, so that untold soil counts as moist here, and here alone.
      pour: pourWindow(pourHourAt({ dayIndex, hour }, told, ask.soil ?? 'moist')),
      spray: sprayWindow(sprayHourAt({ dayIndex, hour }, told, seen)),
    };
  });
  return { on: day.on, sun: day.sun, by: day.hours.size > 0 ? 'hours' : day.day ? 'day' : 'nothing', hours };
}

function pourHourAt({ dayIndex, hour }: Place, told: readonly Told[], soil: PourHour['soil']): PourHour {
  const day = told[dayIndex];
  return {
    soil,
    rainAheadMm: rainAheadMm({ dayIndex, hour }, told),
    temperatureC: day?.hours.get(hour)?.temperatureC ?? (day && warmestC(day, hour)),
    windMPerS: day?.hours.get(hour)?.windMPerS ?? day?.day?.windMPerS,
  };
}

/** The day's high stands for every hour but those near sunrise and sunset, where the sun is known. @practice */
function warmestC({ day, sun }: Told, hour: number): number | undefined {
  const { sunriseMinute, sunsetMinute } = sun ?? {};
  const cool =
    (sunriseMinute !== undefined && hour + 1 <= sunriseMinute / MINUTES_AN_HOUR + SPRAY_LIMITS.coolMorningH) ||
    (sunsetMinute !== undefined && hour >= sunsetMinute / MINUTES_AN_HOUR - SPRAY_LIMITS.beforeSunsetH);
  return cool ? day?.lowC : day?.highC;
}

/** Rain of the next 6 hours: of the hours where all are told, else the whole of the days they reach into. */
function rainAheadMm({ dayIndex, hour }: Place, told: readonly Told[]): number | undefined {
  const within = Array.from({ length: SPRAY_LIMITS.heavyRainWithinH }, (_, i) => dayIndex * HOURS_A_DAY + hour + i);
  const byHour = within.map((at) => told[Math.floor(at / HOURS_A_DAY)]?.hours.get(at % HOURS_A_DAY)?.rainMm);
  if (byHour.every((rainMm) => rainMm !== undefined)) return byHour.reduce((sum, rainMm) => sum + rainMm, 0);
  const days = [...new Set(within.map((at) => Math.floor(at / HOURS_A_DAY)))].map((i) => told[i]?.day?.rainMm);
  const sumMm = days.reduce<number>((sum, rainMm) => sum + (rainMm ?? 0), 0);
  // What is told is enough to close the hour; to open it, all of it has to be told.
  return sumMm >= SPRAY_LIMITS.heavyRainMm || days.every((rainMm) => rainMm !== undefined) ? sumMm : undefined;
}

function sprayHourAt({ dayIndex, hour }: Place, told: readonly Told[], airSeen: AirSeen | undefined): SprayHour {
  const day = told[dayIndex];
  const row = day?.hours.get(hour);
  const windMPerS = row?.windMPerS ?? day?.day?.windMPerS;
  const temperatureC = row?.temperatureC ?? (day && dayTemperatureC(day.day));
  const risenC = day && risenOf(day, hour);
  return {
    windMPerS,
    ...(windMPerS === undefined && { airSeen }),
    temperatureC,
    humidityPercent: row?.humidityPercent,
    untilRainH: untilRainH({ dayIndex, hour }, told),
    ...sunAt(day?.sun, hour),
    ...(row?.cloudPercent !== undefined && { overcast: row.cloudPercent >= OVERCAST_PERCENT }),
    ...(risenC !== undefined && { risenC }),
  };
}

/** A day wholly under the line is read at its high, one with frost at its low; any other is left to the hour. */
function dayTemperatureC(day: WeatherDay | undefined): number | undefined {
  const { lowC, highC } = day ?? {};
  if (lowC !== undefined && lowC <= SPRAY_LIMITS.aboveC) return lowC;
  return highC !== undefined && highC < SPRAY_LIMITS.belowC ? highC : undefined;
}

/** Warmer than the lowest hour so far today; nothing where an hour is missing. */
function risenOf({ hours }: Told, hour: number): number | undefined {
  const soFar = Array.from({ length: hour + 1 }, (_, i) => hours.get(i)?.temperatureC);
  if (!soFar.every((temperatureC) => temperatureC !== undefined)) return undefined;
  return (soFar.at(-1) ?? Number.NaN) - Math.min(...soFar);
}

/** Hours to the first rain told; nothing where it may come before what was told ends. */
function untilRainH({ dayIndex, hour }: Place, told: readonly Told[]): number | undefined {
  const start = dayIndex * HOURS_A_DAY + hour;
  const end = told.length * HOURS_A_DAY;
  for (let at = start; at < end; at++) {
    const day = told[Math.floor(at / HOURS_A_DAY)];
    const row = day?.hours.get(at % HOURS_A_DAY)?.rainMm;
    const rainMm = row ?? (day?.day?.rainMm === 0 ? 0 : undefined);
    if (rainMm === undefined) return at - start >= SPRAY_LIMITS.dryH ? at - start : undefined;
    if (rainMm > 0) return at - start;
  }
  return end - start >= SPRAY_LIMITS.dryH ? end - start : undefined;
}

/** The whole hour has to lie clear of sunrise and sunset. A sun that stays up tells nothing of still air. */
function sunAt(sun: SunDay | undefined, hour: number): Pick<SprayHour, 'sinceSunriseH' | 'untilSunsetH'> {
  if (sun?.all === 'night') return { sinceSunriseH: -1, untilSunsetH: -1 };
  const { sunriseMinute, sunsetMinute } = sun ?? {};
  return {
    ...(sunriseMinute !== undefined && { sinceSunriseH: hour - sunriseMinute / MINUTES_AN_HOUR }),
    ...(sunsetMinute !== undefined && { untilSunsetH: sunsetMinute / MINUTES_AN_HOUR - (hour + 1) }),
  };
}
