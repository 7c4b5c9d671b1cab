// Reads an answer of the solver back into kilograms: what goes on which bed, what is bought, what is still short, and
// how much of a limit is used up. Which limits hold the plan is binds.ts.

import { NUTRIENTS, type Nutrient } from '../need.ts';
import { bringsGPerKg, type CoverBed, type CoverInput, type CoverSource, missingG, type Outlook } from './input.ts';
import { minutesPerKg } from './model.ts';
import type { Staged } from './stages.ts';

/** Below this a kilogram is the solver's rounding, not an amount: a tenth of a gram. */
const LEAST_KG = 1e-4;

export interface Use {
  readonly bed: CoverBed;
  readonly source: CoverSource;
  readonly massKg: number;
}

/** What is bought of one source; whole packs where it is sold in packs. */
export interface Buy {
  readonly source: CoverSource;
  /** Put on the beds. */
  readonly usedKg: number;
  /** Carried home: whole packs. */
  readonly massKg: number;
  readonly packCount: number | undefined;
  readonly cost: number;
}

/** Grams of one nutrient on one bed. */
export interface BedNutrient {
  readonly bed: CoverBed;
  readonly nutrient: Nutrient;
  readonly missingG: number;
  readonly givenG: number;
  readonly leftG: number;
  /** Given past what was missing. */
  readonly overG: number;
}

type Answer = Extract<Staged, { readonly ok: true }>;

/** Kilograms on beds. @arithmetic */
export function usesOf({ model, last }: Answer): readonly Use[] {
  return model.columnTags.flatMap((tag, at) => {
    const massKg = last.columns[at] ?? 0;
    return tag.kind === 'use' && massKg > LEAST_KG ? [{ bed: tag.bed, source: tag.source, massKg }] : [];
  });
}

/**
 * What is bought, in whole packs where there are packs.
 *
 *   packs = ⌈bought ÷ pack⌉,  cost = packs · pack · price
 *
 * @arithmetic
 */
export function buysOf({ model, last }: Answer): readonly Buy[] {
  return model.columnTags.flatMap((tag, at) => {
    const usedKg = last.columns[at] ?? 0;
    if (tag.kind !== 'buy' || !(usedKg > LEAST_KG)) return [];
    const { packKg = 0, costPerKg = 0 } = tag.source;
    const packCount = packKg > 0 ? Math.ceil(usedKg / packKg - 1e-6) : undefined;
    const massKg = packCount === undefined ? usedKg : packCount * packKg;
    return [{ source: tag.source, usedKg, massKg, packCount, cost: massKg * costPerKg }];
  });
}

/** Minutes of work of some uses. @arithmetic */
export function minutesOf(uses: readonly Use[]): number {
  return uses.reduce((sum, { source, massKg }) => sum + minutesPerKg(source) * massKg, 0);
}

/**
 * Every nutrient that a bed's missing grams are known of.
 *
 *   given = Σ brings · kg,  left = missing − given (not below 0),  over = given − missing (not below 0)
 *
 * @arithmetic
 */
export function balanceOf(input: CoverInput, uses: readonly Use[], outlook: Outlook): readonly BedNutrient[] {
  const byBed = new Map<CoverBed, Use[]>();
  for (const use of uses) byBed.set(use.bed, [...(byBed.get(use.bed) ?? []), use]);
  return input.beds.flatMap((bed) =>
    NUTRIENTS.flatMap((nutrient) => {
      const grams = missingG(bed, nutrient, outlook);
      if (Number.isNaN(grams)) return [];
      const givenG = (byBed.get(bed) ?? []).reduce(
        (sum, { source, massKg }) => sum + bringsGPerKg(source, nutrient, outlook) * massKg,
        0,
      );
      // A thousandth of the missing grams is the solver's rounding and no amount a hand could weigh.
      const leftG = grams - givenG > 1e-3 * grams ? Math.max(0, grams - givenG) : 0;
      return [{ bed, nutrient, missingG: grams, givenG, leftG, overG: Math.max(0, givenG - grams) }];
    }),
  );
}
