// The weather sheet in plain English: what is asked of today and tomorrow, what is wrong with a figure or a file, and the
// day drawn as a line of hours. Nothing is computed here.

import { figure, withUnit } from '../figures.ts';
import { sayDate } from './app.ts';

/** A figure that cannot be read, with what would do. */
export function figureProblem(
  message: 'not-a-number' | 'unit-missing' | 'unit-unknown' | 'out-of-range',
  value: string,
  allowed: { readonly units: readonly string[]; readonly least: number; readonly most: number },
): string {
  const units = allowed.units.join(', ');
  const kept = allowed.units.includes('km/h') ? 'm/s' : (allowed.units[0] ?? '');
  const what = {
    'not-a-number': `is not a number; allowed: digits with one of ${units}`,
    'unit-missing': `has no unit; allowed: ${units}`,
    'unit-unknown': `has a unit not known here; allowed: ${units}`,
    'out-of-range': `cannot be; allowed: ${figure(allowed.least, 0)} to ${withUnit(allowed.most, kept, 0)}`,
  }[message];
  return `"${value}" ${what}.`;
}

/** What is wrong with a forecast file. */
export const fileProblem = {
  notCsv: 'This is no table of values; allowed: a CSV file whose first line names its columns.',
  noTime: (head: string) =>
    `No column "time" in "${head}"; allowed: time, such as 2026-06-03T14:00, in the plot’s own time.`,
  noColumns: (head: string) =>
    `Nothing of the weather in "${head}"; allowed: temperature (°C), wind (km/h), rain (mm), humidity (%), cloud (%).`,
  noRows: 'No hours under the first line; allowed: one line for each hour.',
  tooLong: (rows: number) => `More than ${rows} lines; allowed: up to ${rows} hours.`,
  badTime: (row: number, value: string) =>
    `Line ${row}, time: "${value}" is no full hour of the local clock; allowed: such as 2026-06-03T14:00.`,
  twice: (row: number, value: string) => `Line ${row}, time: "${value}" stands twice; allowed: each hour once.`,
  badUnit: (name: string, units: readonly string[]) =>
    `Column "${name}" tells no unit known here; allowed in its name: ${units.join(', ')}.`,
  badValue: (row: number, head: string, problem: string) => `Line ${row}, ${head}: ${problem}`,
} as const;

export const weatherForm = {
  title: 'Weather',
  lead: 'Type the few figures of a forecast you trust. Nothing is fetched, and nothing is sent.',
  today: 'Today',
  tomorrow: 'Tomorrow',
  fields: {
    lowC: 'Lowest',
    highC: 'Highest',
    windMPerS: 'Wind at its strongest',
    rainMm: 'Rain in all',
    sunrise: 'Sunrise, if you know it',
    sunset: 'Sunset, if you know it',
  },
  hints: {
    lowC: 'such as 9 °C',
    highC: 'such as 21 °C',
    windMPerS: 'such as 12 km/h or 8 mph',
    rainMm: 'such as 0 mm',
    sunrise: 'such as 05:10',
    sunset: 'such as 21:05',
  },
  issuedAt: 'When the forecast was made',
  issuedHint: 'such as 2026-06-03T06:00',
  write: 'Keep this weather',
  nothingTold: 'Nothing is told yet; tell at least one figure.',
  noMoment: (value: string) => `"${value}" is no date and time; allowed: such as 2026-06-03T06:00.`,
  wrong: (value: string, message: string) => `"${value}" ${message}.`,
  written: 'Written down.',
  notWritten: 'Not written down: the browser refused to keep it. Try again.',
  file: 'A forecast from a file',
  fileLead:
    'A CSV file with one line an hour. The first line names the columns: time, temperature (°C), wind (km/h), rain (mm), humidity (%), cloud (%).',
  choose: 'Choose a file',
  preview: (days: number, hours: number, from: string, to: string) =>
    `${hours} hours on ${days} ${days === 1 ? 'day' : 'days'}, ${sayDate(from)} to ${sayDate(to)}. Not kept yet.`,
  ignored: (names: string) => `Not read: ${names}.`,
  keep: 'Keep this forecast',
  hourHeads: ['time', 'temperature', 'wind', 'rain', 'humidity'],
  hourRow: (hour: {
    readonly hour: number;
    readonly temperatureC?: number | undefined;
    readonly windMPerS?: number | undefined;
    readonly rainMm?: number | undefined;
    readonly humidityPercent?: number | undefined;
  }) => [
    `${String(hour.hour).padStart(2, '0')}:00`,
    hour.temperatureC === undefined ? '' : withUnit(hour.temperatureC, '°C', 1),
    hour.windMPerS === undefined ? '' : withUnit(hour.windMPerS * 3.6, 'km/h', 0),
    hour.rainMm === undefined ? '' : withUnit(hour.rainMm, 'mm', 1),
    hour.humidityPercent === undefined ? '' : withUnit(hour.humidityPercent, '%', 0),
  ],
  place: 'Sunrise and sunset come from the plot’s place, told on its own sheet.',
  toPlot: 'To the plot',
  toCan: 'To the can card',
} as const;

/** How the hours were judged. */
export const hoursWords = {
  pourStrip: 'Hours to pour on moist soil',
  sprayStrip: 'Hours to wet leaves',
  now: 'now',
  open: 'open',
  drawn: (name: string, stretches: string) => `${name}: ${stretches}`,
  noneOpen: 'no hour open',
  notJudged: 'Tell the weather, and the hours are judged.',
  next: (on: string, hour: number, today: string) =>
    `${on === today ? 'today' : sayDate(on)}, ${String(hour).padStart(2, '0')}:00`,
  by: {
    hours: 'By the hours of a forecast.',
    day: 'By the few figures told for the day.',
    nothing: 'No weather was told: rules of thumb alone.',
  },
  age: (ageH: number) =>
    Number.isNaN(ageH) ? 'Its age was not told.' : `It is ${withUnit(ageH, ageH === 1 ? 'hour' : 'hours', 0)} old.`,
  sun: {
    place: 'Sunrise and sunset by the plot’s place.',
    told: 'Sunrise and sunset as told.',
    none: 'Sunrise and sunset are not known: tell the plot’s place, or their times.',
  },
  typeIt: 'Type the weather',
};
