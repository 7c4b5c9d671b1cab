// A dose in spoons: the nearest count in quarters and thirds, shown only when it is within 5 % of the dose.
// The spoon's country must be known; with none, there is no answer here, only a question (ask.ts).

import { type SpoonCountry, UNITS } from './units.ts';

/** One way to measure a dose with a spoon. */
export interface SpoonMeasured {
  readonly tool: 'tablespoon' | 'teaspoon';
  readonly count: number;
  /** The count as a cook writes it: "2½". */
  readonly text: string;
  /** How far the spoons are from the dose, percent; negative = under. */
  readonly errorPercent: number;
}

/** Spoons further off than this are not offered. @our-caution */
export const SPOON_TOLERANCE_PERCENT = 5;
/** More spoons than this are miscounted; a jug is better. @practice */
const MOST_SPOONS = 12;

const PARTS: readonly (readonly [number, string])[] = [
  [0, ''],
  [1 / 4, '¼'],
  [1 / 3, '⅓'],
  [1 / 2, '½'],
  [2 / 3, '⅔'],
  [3 / 4, '¾'],
  [1, ''],
];

/**
 * The spoons nearest to a dose, best first: tablespoons lead when the dose is at least one of them,
 * teaspoons below that. An empty list says that no count of spoons comes within 5 %.
 *
 *   error = (count · spoon − dose) / dose
 *
 * @returns at most one count of each spoon
 * @arithmetic nearest of whole, ¼, ⅓, ½, ⅔, ¾
 */
export function spoonsFor(dose: { readonly volumeMl: number; readonly spoon: SpoonCountry }): readonly SpoonMeasured[] {
  if (!(dose.volumeMl > 0)) return [];
  const tablespoonMl = UNITS[`tbsp-${dose.spoon}`].factor * 1000;
  const teaspoonMl = UNITS[`tsp-${dose.spoon}`].factor * 1000;
  const tablespoon = nearest('tablespoon', tablespoonMl, dose.volumeMl);
  const teaspoon = nearest('teaspoon', teaspoonMl, dose.volumeMl);
  const order = dose.volumeMl >= tablespoonMl * 0.95 ? [tablespoon, teaspoon] : [teaspoon, tablespoon];
  return order.filter((measured) => measured !== undefined);
}

function nearest(tool: SpoonMeasured['tool'], spoonMl: number, volumeMl: number): SpoonMeasured | undefined {
  const exact = volumeMl / spoonMl;
  const whole = Math.floor(exact);
  let best: { readonly count: number; readonly text: string } | undefined;
  for (const [part, sign] of PARTS) {
    const count = whole + part;
    if (count === 0) continue;
    if (best !== undefined && !(Math.abs(count - exact) < Math.abs(best.count - exact))) continue;
    const full = part === 1 ? whole + 1 : whole;
    best = { count, text: (full > 0 ? String(full) : '') + sign };
  }
  if (best === undefined || !(best.count <= MOST_SPOONS)) return undefined;
  const errorPercent = ((best.count * spoonMl - volumeMl) / volumeMl) * 100;
  if (!(Math.abs(errorPercent) <= SPOON_TOLERANCE_PERCENT)) return undefined;
  return { tool, count: best.count, text: best.text, errorPercent: Math.abs(errorPercent) < 1e-9 ? 0 : errorPercent };
}
