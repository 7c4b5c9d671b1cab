// The one question that settles an amount: whose gallon, whose spoon, which product, which mark before the decimals.
// Every choice of a measure is shown in mL, so that a grower can pick by what the vessel holds and not by a country's
// name; every choice of a style with the figure it gives.

import type { GallonMeasure, Named, SpoonMeasure } from './names.ts';
import { NUMBER_STYLES, type NumberStyle, type TwoReadings } from './number.ts';
import {
  GALLON_COUNTRIES,
  type GallonCountry,
  SPOON_COUNTRIES,
  type SpoonCountry,
  UNITS,
  type UnitId,
} from './units.ts';

export interface GallonChoice {
  readonly country: GallonCountry;
  readonly mL: number;
}

export interface SpoonChoice {
  readonly country: SpoonCountry;
  readonly mL: number;
}

/** A figure as one style reads it. */
export interface StyleChoice {
  readonly style: NumberStyle;
  readonly value: number;
}

/** A question, and what may be answered; a product is chosen from the table of sugars. */
export type Ask =
  | { readonly kind: 'gallon'; readonly measure: GallonMeasure; readonly choices: readonly GallonChoice[] }
  | { readonly kind: 'spoon'; readonly measure: SpoonMeasure; readonly choices: readonly SpoonChoice[] }
  /** `behind` is the unit as typed after the figure. */
  | {
      readonly kind: 'style';
      readonly written: string;
      readonly behind: string;
      readonly choices: readonly StyleChoice[];
    }
  | { readonly kind: 'product'; readonly choices: readonly [] };

/** A measure that several countries have, each its own size. */
export type CountryMeasure = Extract<Named, { readonly measure: unknown }>;

/** What the grower has settled once for all: whose gallon and spoon, and the mark before the decimals. */
export interface Countries {
  readonly gallon?: GallonCountry | undefined;
  readonly spoon?: SpoonCountry | undefined;
  readonly style?: NumberStyle | undefined;
}

/**
 * The unit of a measure whose country was typed or is set; undefined while it must be asked.
 * @arithmetic a look-up
 */
export function settledUnit(named: CountryMeasure, set: Countries): UnitId | undefined {
  const country = named.country ?? (named.kind === 'gallon' ? set.gallon : set.spoon);
  return country === undefined ? undefined : (`${named.measure}-${country}` as UnitId);
}

/**
 * The question for a measure without a country, each choice with the mL one of it holds.
 * @arithmetic factors of units.ts
 */
export function askCountry(named: CountryMeasure): Ask {
  const mL = (country: string) => UNITS[`${named.measure}-${country}` as UnitId].factor * 1000;
  if (named.kind === 'gallon') {
    const choices = GALLON_COUNTRIES.map((country) => ({ country, mL: mL(country) }));
    return { kind: 'gallon', measure: named.measure, choices };
  }
  const choices = SPOON_COUNTRIES.map((country) => ({ country, mL: mL(country) }));
  return { kind: 'spoon', measure: named.measure, choices };
}

/** The question for a figure that two styles read differently. @arithmetic none */
export function askStyle(readings: TwoReadings, behind: string): Ask {
  const choices = NUMBER_STYLES.map((style) => ({ style, value: readings.values[style] }));
  return { kind: 'style', written: readings.written, behind, choices: choices.sort((a, b) => b.value - a.value) };
}
