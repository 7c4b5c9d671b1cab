// A part of a batch: one lot of scraps with every figure the pail and the bottle need, as bands, together
// with what was not known about it. The table's figures and the grower's own analysis meet here (resolve.ts).

import type { Range } from '../quantity/range.ts';

/** Where a material may go. 'out' = neither liquid nor heap; 'set-aside' = waits on an answer or a test. */
export type Destination = 'liquid' | 'compost-only' | 'set-aside' | 'out';

/** What the grower says about weedkiller on the lawn or field it came from. */
export type Treated = 'no' | 'unknown' | 'yes';

/** One lot as it is put in: an id of the materials table, own analysis, or both (the analysis wins). */
export interface Portion {
  readonly material?: string | undefined;
  readonly name?: string | undefined;
  readonly massKg: number;
  /** Fraction of wet mass, 0.01-1. */
  readonly dryMatter?: number | Range | undefined;
  readonly sugarsGPerKgDm?: number | Range | undefined;
  readonly bufferEqPerKgDmPerPh?: number | Range | undefined;
  readonly ph?: number | Range | undefined;
  readonly nPercentDm?: number | Range | undefined;
  readonly pPercentDm?: number | Range | undefined;
  readonly kPercentDm?: number | Range | undefined;
  readonly caPercentDm?: number | Range | undefined;
  readonly mgPercentDm?: number | Range | undefined;
  readonly cn?: number | Range | undefined;
  /** Expected ammonia, mol per kg dry matter; 0 unless given. */
  readonly ammoniaMolPerKgDm?: number | undefined;
  /** Only asked of clippings, hay, straw: 'unknown' is an answer. */
  readonly treated?: Treated | undefined;
}

/** A figure that had to be assumed because neither the table nor the grower gives it. */
export interface Assumed {
  /** Name of the figure, such as `bufferEqPerKgDmPerPh`. */
  readonly field: string;
  readonly material: string;
  readonly value: Range;
  readonly source: string;
}

/** A lot with every figure in place. An element that is not known is absent, never 0. */
export interface Part {
  readonly id: string | undefined;
  readonly name: string;
  readonly massKg: number;
  readonly into: Destination;
  readonly dryMatter: Range;
  readonly sugarsGPerKgDm: Range;
  readonly bufferEqPerKgDmPerPh: Range;
  readonly ph: Range;
  readonly ammoniaMolPerKgDm: number;
  readonly displacementLPerKg: Range;
  readonly nPercentDm?: Range;
  readonly pPercentDm?: Range;
  readonly kPercentDm?: Range;
  readonly caPercentDm?: Range;
  readonly mgPercentDm?: Range;
  readonly cn?: Range;
  readonly assumed: readonly Assumed[];
  /** Elements not known for this lot (`nPercentDm`, …): totals miss them and say so. */
  readonly unknown: readonly string[];
}

/** A sugar source: a product by mass. Buffer and potassium of white sugar are 0. */
export interface SugarProduct {
  readonly id: string;
  readonly name: string;
  /** Fermentable sugars, g hexose per kg as fed. */
  readonly hexoseGPerKg: Range;
  /** Sugars as such, g per kg as fed (what a label says). */
  readonly sugarsGPerKg: Range;
  /** Mass of one litre as measured in a jug or spoon. */
  readonly bulkKgPerL: Range;
  /** Volume that 1 kg adds to a batch once dissolved. */
  readonly displacementLPerKg: number;
  readonly bufferEqPerKgPerPh: Range;
  readonly ph: number;
  readonly kGPerKg: Range;
  readonly sources: readonly string[];
}
