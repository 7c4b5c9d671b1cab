// Exact factors from the units growers use to the SI units kept inside (kg, L, m2), each written as the
// expression that defines it. Customary units carry their country in the id; nothing here picks a country.
// Temperature is no factor and stands in its own functions. Next: names.ts (how people write them), parse.ts.

import type { Origin } from '../rules/rule.ts';

export type Dimension = 'mass' | 'volume' | 'area' | 'temperature' | 'count';
/** Whose gallon, quart, pint and fluid ounce. */
export type GallonCountry = 'us' | 'imperial';
/** Whose tablespoon, teaspoon and cup. */
export type SpoonCountry = 'us' | 'metric' | 'uk' | 'au';

export const GALLON_COUNTRIES: readonly GallonCountry[] = ['us', 'imperial'];
export const SPOON_COUNTRIES: readonly SpoonCountry[] = ['us', 'metric', 'uk', 'au'];

const INCH_CM = 2.54;
/** Metres in a foot. @source nist-sp811-2008 Appendix B.8 */
export const FOOT_M = 0.3048;
const POUND_KG = 0.45359237;
const GALLON_US_L = (231 * INCH_CM ** 3) / 1000;
const GALLON_IMPERIAL_L = 4.54609;

/** Mass of one grain, mg: 1/7000 of a pound. @source nist-sp811-2008 Appendix B.8 */
export const GRAIN_MG = (POUND_KG / 7000) * 1e6;
/** Litres in a gallon: 231 cubic inches (US), 4.54609 L (imperial). @source nist-sp811-2008 Appendix B.8 */
export const GALLON_L: Readonly<Record<GallonCountry, number>> = { us: GALLON_US_L, imperial: GALLON_IMPERIAL_L };

/** One unit: `factor` is the SI amount (kg, L or m2) in one of it. */
export interface Unit {
  readonly dimension: 'mass' | 'volume' | 'area';
  readonly factor: number;
  /** As written after a figure, with its country where it has one; parse.ts reads it back. */
  readonly symbol: string;
  readonly origin: Origin;
  /** Where a kitchen measure has no single definition. */
  readonly doubt?: string;
}

const sp811 = 'nist-sp811-2008';
const mass = (factor: number, symbol: string): Unit => ({ dimension: 'mass', factor, symbol, origin: sp811 });
const area = (factor: number, symbol: string): Unit => ({ dimension: 'area', factor, symbol, origin: sp811 });
const volume = (factor: number, symbol: string, origin: Origin = sp811, doubt?: string): Unit =>
  doubt === undefined
    ? { dimension: 'volume', factor, symbol, origin }
    : { dimension: 'volume', factor, symbol, origin, doubt };

const UK_SPOON = 'older British measure, 5/8 fl oz; many British spoons sold today hold the metric 15 and 5 mL';
const UK_CUP = 'half an imperial pint; British recipes seldom use a cup and some mean 250 mL';
const KITCHEN = 'kitchen practice, no law behind it';

/**
 * Every unit the tool reads or writes.
 * @source nist-sp811-2008 Appendix B.8; spoons and cups other than US are kitchen practice
 * @checked published/nist-sp811-2008.csv, published/gnu-units.csv
 */
export const UNITS = {
  kg: mass(1, 'kg'),
  g: mass(1e-3, 'g'),
  mg: mass(1e-6, 'mg'),
  lb: mass(POUND_KG, 'lb'),
  oz: mass(POUND_KG / 16, 'oz'),
  gr: mass(POUND_KG / 7000, 'grain'),
  L: volume(1, 'L'),
  dL: volume(1e-1, 'dL'),
  cL: volume(1e-2, 'cL'),
  mL: volume(1e-3, 'mL'),
  m3: volume(1000, 'm³'),
  'gal-us': volume(GALLON_US_L, 'US gal'),
  'qt-us': volume(GALLON_US_L / 4, 'US qt'),
  'pt-us': volume(GALLON_US_L / 8, 'US pt'),
  'floz-us': volume(GALLON_US_L / 128, 'US fl oz'),
  'gal-imperial': volume(GALLON_IMPERIAL_L, 'imperial gal'),
  'qt-imperial': volume(GALLON_IMPERIAL_L / 4, 'imperial qt'),
  'pt-imperial': volume(GALLON_IMPERIAL_L / 8, 'imperial pt'),
  'floz-imperial': volume(GALLON_IMPERIAL_L / 160, 'imperial fl oz'),
  'cup-us': volume(GALLON_US_L / 16, 'US cup'),
  'tbsp-us': volume(GALLON_US_L / 256, 'US tbsp'),
  'tsp-us': volume(GALLON_US_L / 768, 'US tsp'),
  'cup-metric': volume(0.25, 'metric cup', 'practice', KITCHEN),
  'tbsp-metric': volume(0.015, 'metric tbsp', 'practice', KITCHEN),
  'tsp-metric': volume(0.005, 'metric tsp', 'practice', KITCHEN),
  'cup-uk': volume(GALLON_IMPERIAL_L / 16, 'UK cup', 'practice', UK_CUP),
  'tbsp-uk': volume(GALLON_IMPERIAL_L / 256, 'UK tbsp', 'practice', UK_SPOON),
  'tsp-uk': volume(GALLON_IMPERIAL_L / 768, 'UK tsp', 'practice', UK_SPOON),
  'cup-au': volume(0.25, 'Australian cup', 'practice', KITCHEN),
  'tbsp-au': volume(0.02, 'Australian tbsp', 'practice', KITCHEN),
  'tsp-au': volume(0.005, 'Australian tsp', 'practice', KITCHEN),
  m2: area(1, 'm²'),
  ft2: area(FOOT_M ** 2, 'ft²'),
  yd2: area((3 * FOOT_M) ** 2, 'yd²'),
} as const satisfies Record<string, Unit>;

export type UnitId = keyof typeof UNITS;

/** °C from °F, (F − 32) / 1.8. @source nist-sp811-2008 Appendix B.8 */
export function celsiusFromFahrenheit(temperatureF: number): number {
  return (temperatureF - 32) / 1.8;
}

/** °F from °C. @source nist-sp811-2008 Appendix B.8 */
export function fahrenheitFromCelsius(temperatureC: number): number {
  return temperatureC * 1.8 + 32;
}

/** Depth of water from litres over an area: 1 L on 1 m2 stands 1 mm deep. @arithmetic 0.001 m3 / 1 m2 */
export function depthMm(poured: { readonly volumeL: number; readonly areaM2: number }): number {
  return poured.volumeL / poured.areaM2;
}

/** Conductivity in dS/m: 1 mS/cm = 1 dS/m = 1000 µS/cm. @arithmetic SI prefixes */
export function ecDsPerM(reading: { readonly value: number; readonly unit: 'mS/cm' | 'dS/m' | 'µS/cm' }): number {
  return reading.unit === 'µS/cm' ? reading.value / 1000 : reading.value;
}
