// How strong: the concentrate's share of the mixture from a ratio, from an aim in grams on a square metre, or
// from a conductivity not to be passed; and that share as two volumes. Ratios as typed are quantity/ratio.ts.

import { concentrateFraction, type Ratio } from '../quantity/ratio.ts';

/** A strength that can be poured, or why it cannot. */
export type Share =
  | { readonly reachable: true; readonly concentrateFraction: number }
  /** Even undiluted it brings less than wanted. */
  | { readonly reachable: false; readonly why: 'too-weak'; readonly aimGPerM2: number; readonly mostGPerM2: number }
  /** The water alone stands at the limit or above it. */
  | {
      readonly reachable: false;
      readonly why: 'water-too-salty';
      readonly maxEcDsPerM: number;
      readonly waterEcDsPerM: number;
    };

/** What is asked for. */
export type Strength =
  | { readonly kind: 'ratio'; readonly ratio: Ratio }
  | {
      readonly kind: 'nutrient';
      readonly element: 'n' | 'k';
      readonly aimGPerM2: number;
      readonly contentGPerL: number;
      readonly depthLPerM2: number;
    }
  | {
      readonly kind: 'conductivity';
      readonly maxEcDsPerM: number;
      readonly batchEcDsPerM: number;
      readonly waterEcDsPerM: number;
    };

/**
 * The concentrate's share of the mixture.
 *
 *   ratio:         1/n for "in", 1/(n + 1) for "to"
 *   grams:         aim / (content · depth), the depth poured being litres of mixture on a square metre
 *   conductivity:  (limit − water) / (batch − water), not above 1
 *
 * Conductivities are mixed by volume; see strength.ts for how far that holds.
 * @arithmetic
 */
export function shareFor(strength: Strength): Share {
  switch (strength.kind) {
    case 'ratio':
      return { reachable: true, concentrateFraction: concentrateFraction(strength.ratio) };
    case 'nutrient':
      return shareForNutrient(strength);
    case 'conductivity':
      return shareForConductivity(strength);
  }
}

function shareForNutrient(aim: Extract<Strength, { readonly kind: 'nutrient' }>): Share {
  const mostGPerM2 = aim.contentGPerL * aim.depthLPerM2;
  if (!(aim.aimGPerM2 <= mostGPerM2))
    return { reachable: false, why: 'too-weak', aimGPerM2: aim.aimGPerM2, mostGPerM2 };
  return { reachable: true, concentrateFraction: aim.aimGPerM2 / mostGPerM2 };
}

function shareForConductivity(aim: Extract<Strength, { readonly kind: 'conductivity' }>): Share {
  const { maxEcDsPerM, batchEcDsPerM, waterEcDsPerM } = aim;
  if (!(waterEcDsPerM < maxEcDsPerM)) return { reachable: false, why: 'water-too-salty', maxEcDsPerM, waterEcDsPerM };
  if (batchEcDsPerM <= maxEcDsPerM) return { reachable: true, concentrateFraction: 1 };
  return { reachable: true, concentrateFraction: (maxEcDsPerM - waterEcDsPerM) / (batchEcDsPerM - waterEcDsPerM) };
}

/** Concentrate and water that fill one can. */
export interface TwoVolumes {
  readonly concentrateMl: number;
  readonly waterMl: number;
}

/**
 * A share of the mixture as two volumes that fill a can.
 * @returns mL
 * @arithmetic
 * @checked published examples of scenarios/case-26, case-30
 */
export function twoVolumes(of: { readonly mixtureL: number; readonly concentrateFraction: number }): TwoVolumes {
  const mixtureMl = of.mixtureL * 1000;
  const concentrateMl = mixtureMl * of.concentrateFraction;
  return { concentrateMl, waterMl: mixtureMl - concentrateMl };
}
