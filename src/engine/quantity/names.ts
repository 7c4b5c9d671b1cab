// How growers write units: the spellings of each, and which of them mean nothing until a country is named.
// A country may be typed with the unit ("2 US gal", "6 metric tbsp") or come from the grower's settings.
// Names that differ only by case are read alike, except "Mg", which could be a million times "mg".

import type { GallonCountry, SpoonCountry, UnitId } from './units.ts';

/** Measures of which several countries have their own. */
export type GallonMeasure = 'gal' | 'qt' | 'pt' | 'floz';
export type SpoonMeasure = 'cup' | 'tbsp' | 'tsp';

/** What a written unit stands for. */
export type Named =
  | { readonly kind: 'unit'; readonly unit: UnitId }
  | { readonly kind: 'gallon'; readonly measure: GallonMeasure; readonly country?: GallonCountry }
  | { readonly kind: 'spoon'; readonly measure: SpoonMeasure; readonly country?: SpoonCountry }
  | { readonly kind: 'temperature'; readonly scale: 'C' | 'F' };

const PLAIN: Readonly<Partial<Record<UnitId, string>>> = {
  kg: 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes',
  g: 'g gm gms gram grams gramme grammes',
  mg: 'mg milligram milligrams',
  lb: 'lb lbs pound pounds',
  oz: 'oz ozs ounce ounces',
  gr: 'grain grains',
  L: 'l lt ltr ltrs liter liters litre litres',
  dL: 'dl decilitre decilitres deciliter deciliters',
  cL: 'cl centilitre centilitres centiliter centiliters',
  mL: 'ml mls millilitre millilitres milliliter milliliters cm3 cm³',
  m3: 'm3 m³',
  m2: 'm2 m² sqm sq_m square_metre square_metres square_meter square_meters',
  ft2: 'ft2 ft² sqft sq_ft square_foot square_feet',
  yd2: 'yd2 yd² sqyd sq_yd square_yard square_yards',
};

const GALLONS: Readonly<Record<GallonMeasure, string>> = {
  gal: 'gal gals gallon gallons',
  qt: 'qt qts quart quarts',
  pt: 'pt pts pint pints',
  floz: 'fl_oz floz fluid_oz fluid_ounce fluid_ounces',
};

const SPOONS: Readonly<Record<SpoonMeasure, string>> = {
  cup: 'cup cups',
  tbsp: 'tbsp tbsps tbs tblsp tablespoon tablespoons tablespoonful tablespoonfuls',
  tsp: 'tsp tsps teaspoon teaspoons teaspoonful teaspoonfuls',
};

const DEGREES: Readonly<Record<'C' | 'F', string>> = {
  C: 'c °c degc deg_c celsius centigrade degrees_c degrees_celsius',
  F: 'f °f degf deg_f fahrenheit degrees_f degrees_fahrenheit',
};

const COUNTRIES: readonly (readonly [string, string])[] = [
  ['us', 'us usa u_s american'],
  ['uk', 'uk imperial imp british'],
  ['metric', 'metric'],
  ['au', 'au aus australian'],
];

const spelled = new Map<string, Named>();
const spellings = (list: string) => list.split(' ').map((name) => name.replaceAll('_', ' '));
for (const [unit, list] of Object.entries(PLAIN))
  for (const name of spellings(list)) spelled.set(name, { kind: 'unit', unit: unit as UnitId });
for (const [measure, list] of Object.entries(GALLONS))
  for (const name of spellings(list)) spelled.set(name, { kind: 'gallon', measure: measure as GallonMeasure });
for (const [measure, list] of Object.entries(SPOONS))
  for (const name of spellings(list)) spelled.set(name, { kind: 'spoon', measure: measure as SpoonMeasure });
for (const [scale, list] of Object.entries(DEGREES))
  for (const name of spellings(list)) spelled.set(name, { kind: 'temperature', scale: scale as 'C' | 'F' });

const countryNames = COUNTRIES.flatMap(([id, list]) => spellings(list).map((name) => [name, id] as const)).sort(
  (a, b) => b[0].length - a[0].length,
);

/**
 * What a written unit stands for, or undefined when it is not known here.
 * @arithmetic a table of spellings
 */
export function unitNamed(written: string): Named | undefined {
  if (/\bMg\b/.test(written)) return undefined;
  const name = written.toLowerCase().replaceAll('.', ' ').replaceAll(/\s+/g, ' ').trim();
  const plain = spelled.get(name);
  if (plain !== undefined) return plain;
  for (const [country, id] of countryNames) {
    const rest = withoutCountry(name, country);
    const named = rest === undefined ? undefined : spelled.get(rest);
    if (named?.kind === 'gallon')
      return id === 'us' || id === 'uk' ? { ...named, country: gallonCountry(id) } : undefined;
    if (named?.kind === 'spoon') return { ...named, country: id as SpoonCountry };
  }
  return undefined;
}

function withoutCountry(name: string, country: string): string | undefined {
  if (name.startsWith(`${country} `)) return name.slice(country.length + 1);
  if (name.endsWith(` (${country})`)) return name.slice(0, -(country.length + 3));
  return undefined;
}

function gallonCountry(id: 'us' | 'uk'): GallonCountry {
  return id === 'us' ? 'us' : 'imperial';
}
