// Figures of the weather as people and forecasts write them, with their unit: warmth, wind, rain, shares. Read into
// °C, m/s, mm and percent; a unit is never guessed where two are in use. Problems come as words with what is allowed.

import { figureAlone } from '#engine/quantity/number.ts';
import { celsiusFromFahrenheit } from '#engine/quantity/units.ts';

export type WeatherQuantity = 'temperature' | 'wind' | 'rain' | 'humidity' | 'cloud';

/** What is wrong with a figure, and what would do. */
export interface FigureProblem {
  readonly message: 'not-a-number' | 'unit-missing' | 'unit-unknown' | 'out-of-range';
  readonly quantity: WeatherQuantity;
  readonly value: string;
}
export type FigureRead = { readonly ok: true; readonly value: number } | ({ readonly ok: false } & FigureProblem);

interface Measure {
  readonly least: number;
  readonly most: number;
  readonly units: Readonly<Record<string, (value: number) => number>>;
}

const same = (value: number) => value;
const times = (factor: number) => (value: number) => value * factor;

/**
 * Units by quantity, each with its way to the unit kept: °C, m/s, mm, %.
 * @source nist-sp811-2008 Appendix B.8: mile 1609.344 m, nautical mile 1852 m, inch 25.4 mm
 */
const MEASURES: Readonly<Record<WeatherQuantity, Measure>> = {
  temperature: {
    least: -30,
    most: 60,
    units: { c: same, '°c': same, f: celsiusFromFahrenheit, '°f': celsiusFromFahrenheit },
  },
  wind: {
    least: 0,
    most: 120,
    units: {
      'm/s': same,
      ms: same,
      'km/h': times(1 / 3.6),
      kmh: times(1 / 3.6),
      kph: times(1 / 3.6),
      mph: times(1609.344 / 3600),
      kn: times(1852 / 3600),
      kt: times(1852 / 3600),
      knots: times(1852 / 3600),
    },
  },
  rain: { least: 0, most: 2000, units: { mm: same, cm: times(10), in: times(25.4), '"': times(25.4) } },
  humidity: { least: 0, most: 100, units: { '%': same, percent: same } },
  cloud: { least: 0, most: 100, units: { '%': same, percent: same } },
};

/** The units that a quantity may have, as they are listed in a problem. */
export const weatherUnits: Readonly<Record<WeatherQuantity, readonly string[]>> = {
  temperature: ['°C', '°F'],
  wind: ['km/h', 'mph', 'm/s', 'kn'],
  rain: ['mm', 'in'],
  humidity: ['%'],
  cloud: ['%'],
};

/** The range believed of a quantity, in the unit kept. */
export const weatherRange = (quantity: WeatherQuantity) => MEASURES[quantity];

/** Whether a unit is one of the quantity's. */
export function isWeatherUnit(quantity: WeatherQuantity, unit: string): boolean {
  return unit.trim().toLowerCase() in MEASURES[quantity].units;
}

const FORM = /^([-+−]?\d+(?:[.,]\d+)?)\s*(.*)$/;

/** A figure with its unit, or with the unit of its column. @arithmetic */
export function readWeatherFigure(text: string, quantity: WeatherQuantity, bareUnit?: string): FigureRead {
  const problem = (message: FigureProblem['message']): FigureRead => ({ ok: false, message, quantity, value: text });
  const [, digits, typedUnit = ''] = FORM.exec(text.trim()) ?? [];
  if (digits === undefined) return problem('not-a-number');
  const unit = (typedUnit || bareUnit || '').trim().toLowerCase();
  if (unit === '') return problem('unit-missing');
  const { least, most, units } = MEASURES[quantity];
  const convert = units[unit];
  if (convert === undefined) return problem('unit-unknown');
  // A file writes its decimals with the one mark that stands in the figure.
  const style = digits.includes(',') ? 'comma' : 'point';
  const value = Number(convert(figureAlone(digits.replace(/^\+/, ''), { style }) ?? Number.NaN).toPrecision(12));
  return value >= least && value <= most ? { ok: true, value } : problem('out-of-range');
}
