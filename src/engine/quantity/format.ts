// Writes an amount in the grower's own units with digits that a scale or jug can bear. What is written reads
// back (parse.ts) within its last digit; an amount the grower typed is shown as typed, never re-rounded.
// Sentences about amounts stand in words; here are only figures and unit symbols.

import { fahrenheitFromCelsius, UNITS, type UnitId } from './units.ts';

/** Keeps a figure and its unit on one line. */
const NBSP = '\u00a0';

/** How a grower likes to read amounts. */
export type Manner = 'metric' | 'us' | 'imperial';

/** An amount to be written: SI value, and what it measures. */
export interface Amount {
  /** kg, L, m2 or °C. */
  readonly value: number;
  readonly dimension: 'mass' | 'volume' | 'area' | 'temperature';
}

/** A written amount, and the SI size of its last digit. */
export interface Written {
  readonly text: string;
  readonly lastDigit: number;
}

/** Units from large to small; the first of which there is at least one is taken, else the last. */
const LADDER: Readonly<Record<Manner, Readonly<Record<'mass' | 'volume' | 'area', readonly UnitId[]>>>> = {
  metric: { mass: ['kg', 'g', 'mg'], volume: ['L', 'mL'], area: ['m2'] },
  us: { mass: ['lb', 'oz'], volume: ['gal-us', 'qt-us', 'floz-us'], area: ['ft2'] },
  imperial: { mass: ['lb', 'oz'], volume: ['gal-imperial', 'pt-imperial', 'floz-imperial'], area: ['ft2'] },
};

/**
 * An amount in the manner the grower reads, three significant digits, whole numbers from 100 up.
 * Pounds are followed by ounces in tenths. Zero and what is no number are written as such.
 * @arithmetic division by the factors of units.ts
 * @checked property/quantity.test.ts
 */
export function formatAmount(amount: Amount, manner: Manner): Written {
  if (amount.dimension === 'temperature') return formatTemperature(amount.value, manner);
  const ladder = LADDER[manner][amount.dimension];
  const size = Math.abs(amount.value);
  const unit = ladder.find((id) => !(size < UNITS[id].factor * 0.9995)) ?? (ladder.at(-1) as UnitId);
  return unit === 'lb' ? formatPounds(amount.value) : formatIn(amount.value, unit);
}

/** An amount in one named unit, three significant digits, whole numbers from 100 up. @arithmetic */
export function formatIn(value: number, unit: UnitId): Written {
  const { factor, symbol } = UNITS[unit];
  const count = value / factor;
  const places = decimals(count);
  return { text: `${trimmed(count, places)}${NBSP}${symbol.replaceAll(' ', NBSP)}`, lastDigit: factor * 10 ** -places };
}

/** The grower's own writing where there is one, else the figure. @arithmetic none */
export function asWritten(amount: Amount & { readonly asTyped?: string | undefined }, manner: Manner): string {
  return amount.asTyped ?? formatAmount(amount, manner).text;
}

function formatPounds(massKg: number): Written {
  const tenths = Math.round((Math.abs(massKg) / UNITS.oz.factor) * 10);
  const pounds = Math.floor(tenths / 160);
  const ounces = (tenths - pounds * 160) / 10;
  const sign = massKg < 0 ? '-' : '';
  const text = `${sign}${pounds}${NBSP}lb${ounces > 0 ? `${NBSP}${ounces}${NBSP}oz` : ''}`;
  return { text, lastDigit: UNITS.oz.factor / 10 };
}

function formatTemperature(temperatureC: number, manner: Manner): Written {
  if (manner === 'us')
    return { text: `${trimmed(fahrenheitFromCelsius(temperatureC), 0)}${NBSP}°F`, lastDigit: 1 / 1.8 };
  return { text: `${trimmed(temperatureC, 1)}${NBSP}°C`, lastDigit: 0.1 };
}

function decimals(count: number): number {
  const size = Math.abs(count);
  if (!(size < 99.95)) return 0;
  if (!(size < 9.995)) return 1;
  if (!(size < 0.9995)) return 2;
  return size > 0 ? Math.min(12, 2 - Math.floor(Math.log10(size))) : 0;
}

function trimmed(count: number, places: number): string {
  if (!Number.isFinite(count)) return 'unknown';
  const text = count.toFixed(places);
  return (places > 0 ? text.replace(/\.?0+$/, '') : text).replace(/^-0$/, '0');
}
