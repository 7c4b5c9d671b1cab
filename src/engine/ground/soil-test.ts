// A soil test read as it was reported: value, unit and method together. Different extracts are not interchangeable, so a
// value without its method, or with one that does not go with it, is asked about and given no class.

import { soilTestFigure, soilTestFigures } from './figures.ts';

/** What the laboratory shook the soil with. */
export type SoilMethod = 'bray-1' | 'olsen' | 'mehlich-3' | 'ammonium-acetate' | 'ammonium-nitrate';
/** ppm is mg in a kg of soil; mg-per-l is mg in a litre of it; an index is already a class. */
export type SoilUnit = 'ppm' | 'lb-per-acre' | 'kg-per-ha' | 'mg-per-l' | 'index';
export type SoilClass = 'low' | 'medium' | 'high' | 'excessive';
export type TestedElement = 'p' | 'k';

/** One line of a report. */
export interface SoilReading {
  readonly element: TestedElement;
  readonly value: number;
  readonly unit: SoilUnit;
  readonly method?: SoilMethod | undefined;
  /** pH of the soil, where the report has it: some methods fail on limy or on sour soil. */
  readonly soilPh?: number | undefined;
}

/** Why no class was given. */
export type SoilQuestion = 'method-missing' | 'method-not-for-element' | 'unit-not-for-method' | 'method-against-ph';

/** The class by the scale of the method, and what other published scales of it say. */
export type SoilReadAs =
  | {
      readonly kind: 'class';
      readonly class: SoilClass;
      /** Id of data/soil-tests.csv. */
      readonly scale: string;
      readonly source: string;
      /** Scales of other places that give the value another class. */
      readonly others: readonly { readonly scale: string; readonly class: SoilClass; readonly source: string }[];
    }
  | { readonly kind: 'question'; readonly why: SoilQuestion };

const FOR: Readonly<Record<SoilMethod, readonly TestedElement[]>> = {
  'bray-1': ['p'],
  olsen: ['p'],
  'mehlich-3': ['p', 'k'],
  'ammonium-acetate': ['k'],
  'ammonium-nitrate': ['k'],
};

/** Scales of each method by weight of soil, the one used first; and by its volume. */
const BY_WEIGHT: Readonly<Record<string, readonly string[]>> = {
  'bray-1-p': ['bray-1-p', 'bray-1-p-western-oregon', 'bray-1-p-midwest'],
  'olsen-p': ['olsen-p-eastern-oregon'],
  'mehlich-3-p': ['mehlich-3-p'],
  'mehlich-3-k': ['mehlich-3-k'],
  'ammonium-acetate-k': ['ammonium-acetate-k'],
};
const BY_VOLUME: Readonly<Record<string, string>> = {
  'olsen-p': 'olsen-p-index',
  'ammonium-nitrate-k': 'ammonium-nitrate-k-index',
};

/** A method by the names reports use; undefined for one not known here. @arithmetic text alone */
export function readMethod(typed: string): SoilMethod | undefined {
  const name = typed.toLowerCase().replace(/[^a-z0-9]/g, '');
  if (/^(mehlich|m)(3|iii)/.test(name) || name === 'pm3') return 'mehlich-3';
  if (/bray/.test(name) && !/bray(p)?2/.test(name)) return 'bray-1';
  if (/olsen|bicarbonate|nahco3/.test(name)) return 'olsen';
  if (/ammoniumacetate|nh4oac|nh4ac/.test(name)) return 'ammonium-acetate';
  if (/ammoniumnitrate|nh4no3/.test(name)) return 'ammonium-nitrate';
  return undefined;
}

/** A unit by the names reports use; undefined for one not known here. @arithmetic text alone */
export function readSoilUnit(typed: string): SoilUnit | undefined {
  const name = typed.toLowerCase().replace(/\s/g, '');
  if (/^(ppm|mg\/kg|mgkg-1)$/.test(name)) return 'ppm';
  if (/^(lbs?|pounds?)(\/|per)(a|ac|acre)$/.test(name)) return 'lb-per-acre';
  if (/^kg(\/|per)(ha|hectare)$/.test(name)) return 'kg-per-ha';
  if (/^(mg\/l|mg\/litre|mg\/liter)$/.test(name)) return 'mg-per-l';
  return name === 'index' ? 'index' : undefined;
}

/** ppm of a value in pounds an acre: a furrow slice weighs two million pounds. @source osu-agbmps-phosphorus units */
export function ppmOfLbPerAcre(value: number): number {
  return value / soilTestFigure('lb-per-acre', 'perPpm').likely;
}

/** ppm of a value in kilograms a hectare, for a furrow slice. @source osu-agbmps-phosphorus units; a pound an acre @arithmetic */
export function ppmOfKgPerHa(value: number): number {
  return ppmOfLbPerAcre(value / (10 * G_PER_M2_OF_LB_PER_ACRE));
}

/**
 * Bray-1 phosphorus that a Mehlich-3 (ICP) value stands for in Ohio, ppm; other places have other lines.
 *
 *   Bray = −8.08 + 0.832 · M3
 *
 * @source osu-agbmps-phosphorus conversion
 * @checked published/soil-tests.test.ts, worked/soil-tests.test.ts
 */
export function brayOfMehlich3Ppm(mehlich3Ppm: number): number {
  const of = (quantity: string) => soilTestFigure('mehlich-3-icp-to-bray-1', quantity).likely;
  return of('interceptPpm') + of('slopePpmPerPpm') * mehlich3Ppm;
}

/**
 * The class of a reading, or the question it raises.
 * @range value 0 and up; a value that is no number is given the question of its method
 * @source sare-building-soils table 21.2 and the other sources of data/soil-tests.csv
 * @checked published/soil-tests.csv, worked/soil-tests.csv
 */
export function readSoilTest({ element, value, unit, method, soilPh }: SoilReading): SoilReadAs {
  const ask = (why: SoilQuestion): SoilReadAs => ({ kind: 'question', why });
  if (method === undefined || !(value >= 0)) return ask('method-missing');
  if (!FOR[method].includes(element)) return ask('method-not-for-element');
  const key = `${method}-${element}`;
  const volume = BY_VOLUME[key];
  if (unit === 'index') return volume === undefined ? ask('unit-not-for-method') : indexClass(volume, value);
  const ids = unit === 'mg-per-l' ? (volume === undefined ? [] : [volume]) : (BY_WEIGHT[key] ?? []);
  const [scale, ...rest] = ids;
  if (scale === undefined) return ask('unit-not-for-method');
  if (!suits(method, soilPh)) return ask('method-against-ph');
  const amount = unit === 'lb-per-acre' ? ppmOfLbPerAcre(value) : unit === 'kg-per-ha' ? ppmOfKgPerHa(value) : value;
  const found = classOn(scale, amount);
  const others = rest
    .map((id) => ({ scale: id, class: classOn(id, amount), source: sourceOf(id) }))
    .filter((other) => other.class !== found);
  return { kind: 'class', class: found, scale, source: sourceOf(scale), others };
}

function suits(method: SoilMethod, soilPh: number | undefined): boolean {
  if (soilPh === undefined) return true;
  if (method === 'bray-1') return soilPh <= soilTestFigure('bray-1', 'highestPh').likely;
  return method !== 'olsen' || soilPh >= soilTestFigure('olsen', 'lowestPh').likely;
}

function classOn(scale: string, value: number): SoilClass {
  const row = soilTestFigures(scale);
  const below = (name: string) => row[`${name}BelowPpm`]?.likely ?? row[`${name}BelowMgPerL`]?.likely;
  const within = (most: number | undefined) => most === undefined || value < most;
  if (within(below('low'))) return 'low';
  if (within(below('medium'))) return 'medium';
  return within(below('high')) ? 'high' : 'excessive';
}

/** Index 0 and 1 are low, 2 medium, 3 high, 4 and up excessive. */
function indexClass(scale: string, value: number): SoilReadAs {
  const found: SoilClass = value < 2 ? 'low' : value < 3 ? 'medium' : value < 4 ? 'high' : 'excessive';
  return { kind: 'class', class: found, scale, source: sourceOf(scale), others: [] };
}

function sourceOf(scale: string): string {
  const row = soilTestFigures(scale);
  return (row.lowBelowPpm ?? row.lowBelowMgPerL)?.source ?? 'memory';
}

/** Depth a soil test stands for where none is told: a furrow slice of 6.7 inches. @practice */
const USUAL_DEPTH_CM = 17;
/** Grams a square metre of a pound an acre. @arithmetic 453.592 g / 4046.86 m² */
const G_PER_M2_OF_LB_PER_ACRE = 453.59237 / 4046.8564224;

/** Units a report gives nitrate nitrogen in. */
export type NitrateUnit = 'ppm' | 'lb-per-acre' | 'kg-per-ha' | 'g-per-m2';

/** A unit of nitrate nitrogen by the names reports use; undefined for one not known here. @arithmetic text alone */
export function readNitrateUnit(typed: string): NitrateUnit | undefined {
  const unit = readSoilUnit(typed);
  if (unit === 'ppm' || unit === 'lb-per-acre' || unit === 'kg-per-ha') return unit;
  return /^g(\/|per)(m²|m2|sqm)$/.test(typed.toLowerCase().replace(/\s/g, '')) ? 'g-per-m2' : undefined;
}

/**
 * Nitrate nitrogen of a soil test, g/m².
 *
 *   ppm: value · 2 lb/acre for a furrow slice, in proportion to the depth sampled;  1 lb/acre = 0.1121 g/m²
 *
 * @range a depth counts for ppm alone; the other units are already for the depth sampled
 * @source osu-agbmps-phosphorus units; the rest @arithmetic
 * @checked worked/ground-units.test.ts
 */
export function nitrateNGPerM2(told: {
  readonly value: number;
  readonly unit: NitrateUnit;
  readonly depthCm?: number | undefined;
}): number {
  switch (told.unit) {
    case 'ppm': {
      const lb = told.value * soilTestFigure('lb-per-acre', 'perPpm').likely;
      return (lb * G_PER_M2_OF_LB_PER_ACRE * (told.depthCm ?? USUAL_DEPTH_CM)) / USUAL_DEPTH_CM;
    }
    case 'lb-per-acre':
      return told.value * G_PER_M2_OF_LB_PER_ACRE;
    case 'kg-per-ha':
      return told.value / 10;
    case 'g-per-m2':
      return told.value;
  }
}
