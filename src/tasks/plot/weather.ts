// The weather as a keyholder types it, today and tomorrow, into one entry of the record, every problem at its field. A
// file is read by forecast-file.ts. Nothing is fetched from anywhere.

import { type Body, kinds } from '#journal/kinds/index.ts';
import { isOn, momentOf } from '#journal/moment.ts';
import { figureProblem, weatherForm as words } from '#words/en/weather.ts';
import { dateTrouble } from './date-trouble.ts';
import { onDay } from './dates.ts';
import { readWeatherFigure, type WeatherQuantity, weatherRange, weatherUnits } from './weather-figures.ts';

type Weather = Body<'weather.typed'>;
type Day = Weather['days'][number];
export type TypedWeather = Readonly<Record<string, string>>;

/** What is asked of a day, in the order of a forecast. */
export const dayFields = ['lowC', 'highC', 'windMPerS', 'rainMm', 'sunrise', 'sunset'] as const;
export type DayField = (typeof dayFields)[number];
const QUANTITY = { lowC: 'temperature', highC: 'temperature', windMPerS: 'wind', rainMm: 'rain' } as const;

export type WeatherRead =
  | { readonly ok: true; readonly body: Weather }
  | { readonly ok: false; readonly troubles: ReadonlyMap<string, string> };

/** Fields of the form are named `0.lowC` for today, `1.lowC` for tomorrow, and `issuedAt`. */
export function readWeather(
  typed: TypedWeather,
  { now, units }: { readonly now: string; readonly units: 'metric' | 'us' | 'imperial' },
): WeatherRead {
  const today = now.slice(0, 10);
  const troubles = new Map<string, string>();
  const days = [0, 1].flatMap((i): Day[] => {
    const values = dayFields.flatMap((field): (readonly [DayField, string | number])[] => {
      const text = (typed[`${i}.${field}`] ?? '').trim();
      if (text === '') return [];
      if (field === 'sunrise' || field === 'sunset') return [[field, text]];
      const quantity = QUANTITY[field];
      const read = readWeatherFigure(text, quantity, bareUnit(quantity, units));
      if (read.ok) return [[field, read.value]];
      troubles.set(`${i}.${field}`, sayFigure(read.message, read.value, quantity));
      return [];
    });
    return values.length === 0
      ? []
      : [{ on: onDay(momentOf(today).dateDay + i), ...Object.fromEntries(values) } as Day];
  });
  const issuedAt = (typed.issuedAt ?? '').trim();
  const body = { what: 'forecast' as const, ...(issuedAt !== '' && { issuedAt }), days };
  if (days.length === 0 && troubles.size === 0) troubles.set('0.lowC', words.nothingTold);
  const checked = kinds['weather.typed'].newest.safeParse(body);
  const ahead = isOn(issuedAt) ? dateTrouble({ on: issuedAt, now }) : undefined;
  if (ahead !== undefined) troubles.set('issuedAt', ahead.sentence);
  for (const { path, message } of checked.error?.issues ?? []) {
    const [first, at, field] = path.map(String);
    if (first === 'issuedAt') troubles.set('issuedAt', words.noMoment(issuedAt));
    const day = days[Number(at)];
    if (first !== 'days' || day === undefined || field === undefined) continue;
    const name = `${day.on === today ? 0 : 1}.${field}`;
    if (!troubles.has(name)) troubles.set(name, words.wrong(typed[name] ?? '', message));
  }
  return troubles.size === 0 && checked.success ? { ok: true, body: checked.data } : { ok: false, troubles };
}

/** Wind is never read without its unit; warmth and rain are bare only for those who use one system. */
function bareUnit(quantity: WeatherQuantity, units: 'metric' | 'us' | 'imperial'): string | undefined {
  if (quantity === 'wind' || units !== 'metric') return undefined;
  return quantity === 'rain' ? 'mm' : 'C';
}

/** What is wrong with a figure, with what would do. */
export function sayFigure(
  message: Parameters<typeof figureProblem>[0],
  value: string,
  quantity: WeatherQuantity,
): string {
  const { least, most } = weatherRange(quantity);
  return figureProblem(message, value, { units: weatherUnits[quantity], least, most });
}

/** A forecast file as it would be kept, for a look before it is. */
export type FileRead =
  | { readonly ok: true; readonly body: Weather; readonly hours: number; readonly ignored: readonly string[] }
  | { readonly ok: false; readonly problems: readonly string[] };
