// One row of a heap: a material of the table, the grower's own analysis on top, and how much of it there is, by weight
// or by barrows and buckets. What the mix of the rows comes to is mix.ts; the masses not yet known are found in solve.ts.

import { asRange, point, product, type Range, scale } from '../quantity/range.ts';
import type { Destination, Treated } from '../scraps/part.ts';
import { type Figure, material } from '../tables/index.ts';
import { heapFigure } from './figures.ts';

/** What is told of one row, amount apart. */
export interface IngredientTold {
  readonly material?: string | undefined;
  readonly name?: string | undefined;
  readonly moisturePercent?: number | Range | undefined;
  readonly dryMatter?: number | Range | undefined;
  readonly nPercentDm?: number | Range | undefined;
  readonly kPercentDm?: number | Range | undefined;
  readonly cn?: number | Range | undefined;
  readonly cPercentDm?: number | undefined;
  readonly bulkKgPerM3?: number | Range | undefined;
  readonly treated?: Treated | undefined;
}

/** A row with its figures in place; what nobody knows is absent, never 0. */
export interface Ingredient {
  readonly id: string | undefined;
  readonly name: string;
  readonly group: string | undefined;
  readonly into: Destination;
  readonly treated: Treated | undefined;
  readonly dryMatter: Range;
  /** Likely carbon of the dry matter. */
  readonly cPercentDm?: number;
  readonly cn?: Range;
  readonly nPercentDm?: Range;
  readonly kPercentDm?: Range;
  readonly bulkKgPerM3?: Range;
  /** Nitrogen times C:N passed what dry matter can hold, and the carbon of wood was taken in its place. */
  readonly carbonTaken: boolean;
}

/** A row whose mass is known, as a band where it came by volume. */
export interface Weighed {
  readonly ingredient: Ingredient;
  readonly massKg: Range;
}

const MOST_CARBON = heapFigure('carbon', 'mostPercentDm').likely;
const MOST_CN = 1000;
const WOOD_CARBON = heapFigure('carbon', 'woodPercentDm').likely;

/**
 * A row with its figures in place: own analysis before the table.
 *
 *   C % = N % · C:N;   C:N = C % / N % where both are told;   dry matter = 1 − moisture
 *
 * Where N % and C:N, as averages of different samples, pass the carbon that dry matter can hold, C:N is kept and the
 * carbon of wood taken.
 * @throws RangeError when neither table nor grower gives a dry matter: tasks/heap.ts lets none through
 * @source cornell-right-mix C % = N % × C:N
 */
export function resolveIngredient(told: IngredientTold): Ingredient {
  const row = told.material === undefined ? undefined : material(told.material);
  const name = told.name || row?.name || 'material without a name';
  const dryMatter = dryMatterOf(told) ?? plain(row?.figures.dryMatter);
  if (dryMatter === undefined) throw new RangeError(`resolveIngredient: ${name} has no dry matter`);
  const nitrogen = told.nPercentDm === undefined ? plain(row?.figures.nPercentDm) : asRange(told.nPercentDm);
  const cn = cnOf(told, nitrogen) ?? plain(row?.figures.cn);
  const carbon = told.cPercentDm ?? (nitrogen && cn ? nitrogen.likely * cn.likely : undefined);
  const carbonTaken = cn !== undefined && !(carbon !== undefined && carbon <= MOST_CARBON && carbon > 0);
  const kPercentDm = told.kPercentDm === undefined ? plain(row?.figures.kPercentDm) : asRange(told.kPercentDm);
  const bulk = told.bulkKgPerM3 === undefined ? plain(row?.figures.bulkKgPerM3) : asRange(told.bulkKgPerM3);
  return {
    id: told.material,
    name,
    group: row?.group,
    into: row?.into ?? 'liquid',
    treated: told.treated,
    dryMatter,
    ...(cn === undefined ? {} : { cn, cPercentDm: carbonTaken ? WOOD_CARBON : (carbon ?? WOOD_CARBON) }),
    ...(nitrogen === undefined ? {} : { nPercentDm: nitrogen }),
    ...(kPercentDm === undefined ? {} : { kPercentDm }),
    ...(bulk === undefined ? {} : { bulkKgPerM3: bulk }),
    carbonTaken,
  };
}

function dryMatterOf({ moisturePercent, dryMatter }: IngredientTold): Range | undefined {
  if (dryMatter !== undefined) return asRange(dryMatter);
  if (moisturePercent === undefined) return undefined;
  const { low, likely, high } = asRange(moisturePercent);
  return { low: 1 - high / 100, likely: 1 - likely / 100, high: 1 - low / 100 };
}

/** Own C:N, or own carbon over nitrogen; past 1000 there is as good as no nitrogen. */
function cnOf({ cn, cPercentDm }: IngredientTold, nPercentDm: Range | undefined): Range | undefined {
  if (cn !== undefined) return asRange(cn);
  if (cPercentDm === undefined || nPercentDm === undefined) return undefined;
  const over = (ownPercent: number) => Math.min(cPercentDm / ownPercent, MOST_CN);
  return { low: over(nPercentDm.high), likely: over(nPercentDm.likely), high: over(nPercentDm.low) };
}

function plain(figure: Figure | undefined): Range | undefined {
  return figure && { low: figure.low, likely: figure.likely, high: figure.high };
}

/**
 * Mass of a row filled by barrows or buckets, with the band of how loosely it lies.
 *
 *   m = V · bulk
 *
 * @arithmetic volume times mass per volume
 */
export function massOfVolume({
  volumeL,
  bulkKgPerM3,
}: {
  readonly volumeL: number;
  readonly bulkKgPerM3: Range;
}): Range {
  return scale(bulkKgPerM3, volumeL / 1000);
}

/** Litres that a mass fills, loose; undefined where nobody knows how loosely it lies. @arithmetic mass over mass per volume */
export function volumeOfMass(ingredient: Ingredient, massKg: Range): Range | undefined {
  const bulk = ingredient.bulkKgPerM3;
  if (bulk === undefined || !(bulk.low > 0)) return undefined;
  const perKg = { low: 1000 / bulk.high, likely: 1000 / bulk.likely, high: 1000 / bulk.low };
  return product([massKg, perKg]);
}

/** A row of a known mass. @arithmetic */
export function weighed(ingredient: Ingredient, massKg: number): Weighed {
  return { ingredient, massKg: point(massKg) };
}
