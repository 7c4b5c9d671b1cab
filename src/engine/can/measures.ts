// With what to measure one dose: a mark on the jug, a 20 mL syringe, spoons of a named country, one mix for
// several cans; and a dose too small for any of them in two steps. Which spoons come near is quantity/spoons.ts.

import { spoonsFor } from '../quantity/spoons.ts';
import type { SpoonCountry } from '../quantity/units.ts';

/** One way to measure a dose. `count` is spoons for a spoon, cans for a mix, mL for a jug or a syringe. */
export type Measure =
  | { readonly tool: 'jug' | 'syringe'; readonly count: number; readonly errorPercent: number }
  | {
      readonly tool: 'tablespoon' | 'teaspoon';
      readonly count: number;
      /** The count as a cook writes it: "2½". */
      readonly countText: string;
      readonly spoon: SpoonCountry;
      readonly errorPercent: number;
    }
  /** Concentrate for `count` cans, filled with water to `mixMl`; `eachMl` of it goes into each can. */
  | {
      readonly tool: 'mix';
      readonly count: number;
      readonly concentrateMl: number;
      readonly mixMl: number;
      readonly eachMl: number;
      readonly errorPercent: number;
    };

/** A dose in two steps: a first mix of concentrate and water, and how much of that goes into the can. */
export interface TwoStep {
  readonly firstConcentrateMl: number;
  readonly firstWaterMl: number;
  readonly thenMl: number;
}

/** A jug is read to 2-5 % from here on; below it a syringe is. @practice */
export const JUG_FROM_ML = 20;
/** The syringe: its volume, the half millilitre to which it is read, and the fills beyond which a jug is better. @practice */
export const SYRINGE_ML = 20;
const SYRINGE_STEP_ML = 0.5;
const MOST_SYRINGE_FILLS = 3;
/** A measure further off than this is not offered. @practice our caution, no source */
const TOLERANCE_PERCENT = 5;
/** Below this a dose goes in two steps. @practice our caution, no source */
export const TWO_STEP_BELOW_ML = 2;
const FIRST_CONCENTRATE_ML = 10;
const LEAST_THEN_ML = 5;
const MIX_FOR_CANS = [2, 4, 5, 10] as const;
const EACH_ML = 100;

/**
 * The tools for a dose, best first: jug, syringe, spoons (only of a named country, only within 5 %), and for a
 * small dose one mix for several cans. A dose in two steps has none of them: see twoStepFor.
 * @practice
 */
export function measuresFor(dose: {
  readonly volumeMl: number;
  readonly canL: number;
  readonly spoon: SpoonCountry | null;
}): readonly Measure[] {
  const { volumeMl, canL, spoon } = dose;
  if (!(volumeMl >= TWO_STEP_BELOW_ML)) return [];
  const jug = volumeMl >= JUG_FROM_ML ? marked('jug', volumeMl, 1) : undefined;
  const syringe =
    volumeMl <= SYRINGE_ML * MOST_SYRINGE_FILLS ? marked('syringe', volumeMl, SYRINGE_STEP_ML) : undefined;
  const spoons =
    spoon === null
      ? []
      : spoonsFor({ volumeMl, spoon }).map(
          ({ tool, count, text, errorPercent }): Measure => ({ tool, count, countText: text, spoon, errorPercent }),
        );
  return [jug, syringe, ...spoons, mixFor(volumeMl, canL)].filter((measure) => measure !== undefined);
}

/** The nearest mark, when it lies within 5 % of the dose. */
function marked(tool: 'jug' | 'syringe', volumeMl: number, stepMl: number): Measure | undefined {
  const count = Math.round(volumeMl / stepMl) * stepMl;
  const errorPercent = ((count - volumeMl) / volumeMl) * 100;
  return Math.abs(errorPercent) <= TOLERANCE_PERCENT ? { tool, count, errorPercent } : undefined;
}

/** One mix for so many cans that its concentrate can be measured with a jug. */
function mixFor(volumeMl: number, canL: number): Measure | undefined {
  if (!(volumeMl < JUG_FROM_ML) || !(canL * 1000 >= 10 * EACH_ML)) return undefined;
  const count = MIX_FOR_CANS.find((cans) => cans * volumeMl >= JUG_FROM_ML);
  if (count === undefined) return undefined;
  return {
    tool: 'mix',
    count,
    concentrateMl: count * volumeMl,
    mixMl: count * EACH_ML,
    eachMl: EACH_ML,
    errorPercent: 0,
  };
}

/**
 * A dose under 2 mL in two steps: 10 mL of concentrate in water to ten, a hundred, … times as much, of which the
 * can gets at least 5 mL.
 *
 *   then = dose · (first concentrate + first water) / first concentrate
 *
 * @returns undefined for a dose of 2 mL and more
 * @arithmetic
 */
export function twoStepFor(doseMl: number): TwoStep | undefined {
  if (!(doseMl < TWO_STEP_BELOW_ML) || !(doseMl > 0)) return undefined;
  let factor = 10;
  while (doseMl * factor < LEAST_THEN_ML) factor *= 10;
  return {
    firstConcentrateMl: FIRST_CONCENTRATE_ML,
    firstWaterMl: FIRST_CONCENTRATE_ML * (factor - 1),
    thenMl: doseMl * factor,
  };
}
