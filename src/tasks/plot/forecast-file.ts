// A forecast file, CSV with a header that names its columns with their units, read into one entry of the record or into
// problems by line and column. It is shown before it is kept. Fetched by the sheet only when a file was chosen.

import { parse } from 'csv-parse/browser/esm/sync';
import { type Body, kinds } from '#journal/kinds/index.ts';
import { isOn } from '#journal/moment.ts';
import { fileProblem } from '#words/en/weather.ts';
import { type FileRead, sayFigure } from './weather.ts';
import { isWeatherUnit, readWeatherFigure, type WeatherQuantity, weatherUnits } from './weather-figures.ts';

type Day = Body<'weather.typed'>['days'][number];
type Hour = NonNullable<Day['hours']>[number];

const COLUMN: Readonly<Record<WeatherQuantity, keyof Hour>> = {
  temperature: 'temperatureC',
  wind: 'windMPerS',
  rain: 'rainMm',
  humidity: 'humidityPercent',
  cloud: 'cloudPercent',
};
const QUANTITIES: readonly WeatherQuantity[] = ['temperature', 'wind', 'rain', 'humidity', 'cloud'];
const MOST_ROWS = 24 * 16;
const MOST_PROBLEMS = 8;
const HOURS_A_DAY = 24;

/** The sign between two columns: what the header has, so that a comma may stand for decimals under semicolons. */
function delimiterOf(text: string): string {
  const [head = ''] = text.split('\n', 1);
  return [';', '\t'].find((sign) => head.includes(sign)) ?? ',';
}

interface Column {
  readonly quantity: WeatherQuantity;
  readonly unit: string;
  readonly at: number;
  readonly head: string;
}

/** Reads a CSV file with a header: time, then temperature, wind, rain, humidity, cloud, each with its unit in the header. */
export function readForecastFile(text: string): FileRead {
  let rows: string[][];
  try {
    rows = parse(text, {
      bom: true,
      trim: true,
      delimiter: delimiterOf(text),
      skip_empty_lines: true,
      to: MOST_ROWS + 2,
    }) as string[][];
  } catch {
    return { ok: false, problems: [fileProblem.notCsv] };
  }
  const [head = [], ...lines] = rows;
  const timeAt = head.findIndex((name) => /^time\b/i.test(name));
  if (timeAt < 0) return { ok: false, problems: [fileProblem.noTime(head.join(', '))] };
  const { columns, problems, ignored } = columnsOf(head, timeAt);
  if (columns.length === 0 && problems.length === 0) problems.push(fileProblem.noColumns(head.join(', ')));
  if (lines.length === 0) problems.push(fileProblem.noRows);
  if (lines.length > MOST_ROWS) problems.push(fileProblem.tooLong(MOST_ROWS));
  const byDay = new Map<string, Map<number, Hour>>();
  for (const [i, line] of lines.slice(0, MOST_ROWS).entries()) {
    const row = i + 2;
    const time = (line[timeAt] ?? '').replace(' ', 'T').replace(/^(.{16}):00$/, '$1');
    if (!(time.length > 10 && isOn(time) && time.endsWith(':00'))) {
      problems.push(fileProblem.badTime(row, line[timeAt] ?? ''));
      continue;
    }
    const hours = byDay.get(time.slice(0, 10)) ?? new Map<number, Hour>();
    byDay.set(time.slice(0, 10), hours);
    const hour = Number(time.slice(11, 13));
    if (hours.has(hour)) problems.push(fileProblem.twice(row, line[timeAt] ?? ''));
    hours.set(hour, hourOf(line, { row, hour, columns }, problems));
  }
  if (problems.length > 0) return { ok: false, problems: problems.slice(0, MOST_PROBLEMS) };
  const days = [...byDay]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([on, hours]) => dayOfHours(on, [...hours.values()]));
  const checked = kinds['weather.typed'].newest.safeParse({ what: 'forecast', days });
  if (!checked.success) return { ok: false, problems: checked.error.issues.map(({ message }) => message) };
  return { ok: true, body: checked.data, hours: lines.length, ignored };
}

function columnsOf(head: readonly string[], timeAt: number) {
  const columns: Column[] = [];
  const problems: string[] = [];
  const ignored: string[] = [];
  for (const [at, name] of head.entries()) {
    if (at === timeAt) continue;
    const quantity = QUANTITIES.find((one) => name.toLowerCase().startsWith(one));
    if (quantity === undefined || columns.some((one) => one.quantity === quantity)) {
      ignored.push(name);
      continue;
    }
    const unit = name.slice(quantity.length).replace(/[\s_()[\],:]/g, '');
    if (isWeatherUnit(quantity, unit)) columns.push({ quantity, unit, at, head: name });
    else problems.push(fileProblem.badUnit(name, weatherUnits[quantity]));
  }
  return { columns, problems, ignored };
}

function hourOf(
  line: readonly string[],
  { row, hour, columns }: { readonly row: number; readonly hour: number; readonly columns: readonly Column[] },
  problems: string[],
): Hour {
  const values = columns.flatMap(({ quantity, unit, at, head }) => {
    const text = line[at] ?? '';
    if (text === '') return [];
    const read = readWeatherFigure(text, quantity, unit);
    if (read.ok) return [[COLUMN[quantity], read.value] as const];
    problems.push(fileProblem.badValue(row, head, sayFigure(read.message, read.value, quantity)));
    return [];
  });
  return { hour, ...Object.fromEntries(values) };
}

/** A day of hours; its low, its high and its rain where every hour of it is told. @arithmetic least, most and sum */
function dayOfHours(on: string, hours: readonly Hour[]): Day {
  const sorted = hours.toSorted((a, b) => a.hour - b.hour);
  const all = (of: (hour: Hour) => number | undefined) => {
    const found = sorted.flatMap((hour) => of(hour) ?? []);
    return found.length === HOURS_A_DAY ? found : undefined;
  };
  const warmth = all(({ temperatureC }) => temperatureC);
  const rain = all(({ rainMm }) => rainMm);
  return {
    on,
    ...(warmth && { lowC: Math.min(...warmth), highC: Math.max(...warmth) }),
    ...(rain && { rainMm: Number(rain.reduce((sum, one) => sum + one, 0).toPrecision(12)) }),
    hours: sorted,
  };
}
