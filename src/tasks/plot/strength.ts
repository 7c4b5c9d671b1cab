// How strong to pour: matched to a published feed by the plants in a litre, or as a keyholder typed it. A match comes
// as a handy "1 to n"; a typed colon is answered with both readings. The choice is kept as millilitres in a litre.

import { pailFigure } from '#engine/pail/figures.ts';
import { concentrateFraction, type ParsedRatio, parseRatio, type Ratio } from '#engine/quantity/ratio.ts';
import type { Working } from '#engine/working/working.ts';

/** What was chosen; a typed ratio keeps the volumes it stands for. */
export type StrengthChoice =
  | { readonly kind: 'matched' }
  | { readonly kind: 'typed'; readonly ratio: Ratio; readonly concentrateMlPerL: number };

/** A strength that can be poured. */
export interface StrengthOf {
  readonly ratio: Ratio;
  readonly matched: boolean;
  /** Grams of plant in a litre poured; undefined where the batch's plants are not known. */
  readonly leafGPerL: number | undefined;
}

/** Ratios that are easy to say and to measure. @practice */
const HANDY = [2, 3, 4, 5, 8, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 200, 250, 300, 400, 500] as const;

/** Leaf strength of the published feed that is matched. @source rhs-fertilisers nettle feed, 1 kg in 10 L then 10 to 1 */
export function wantedLeafGPerL(): number {
  return pailFigure('strength', 'leafStrengthGPerL').likely;
}

/**
 * The handy ratio nearest to the published leaf strength: n = plants in a litre / wanted − 1, as parts of water to one.
 * @returns undefined where the plants in a litre are not known; undiluted where they are no more than wanted
 * @arithmetic nearest by proportion
 */
export function matchedRatio(plantsGPerL: number | undefined): Ratio | undefined {
  if (plantsGPerL === undefined || !(plantsGPerL > 0)) return undefined;
  const n = plantsGPerL / wantedLeafGPerL() - 1;
  if (!(n > 1)) return { n: 1, reading: n > 0 ? 'to' : 'in' };
  const off = (handy: number) => Math.abs(Math.log(handy / n));
  return { n: HANDY.reduce((best, handy) => (off(handy) < off(best) ? handy : best)), reading: 'to' };
}

/** The strength that a choice stands for with one liquid; undefined where a match is asked and cannot be made. */
export function strengthFor(choice: StrengthChoice, plantsGPerL: number | undefined): StrengthOf | undefined {
  const ratio = choice.kind === 'typed' ? choice.ratio : matchedRatio(plantsGPerL);
  if (ratio === undefined) return undefined;
  const leafGPerL = plantsGPerL === undefined ? undefined : plantsGPerL * concentrateFraction(ratio);
  return { ratio, matched: choice.kind === 'matched', leafGPerL };
}

/** A typed ratio as a choice that keeps its volumes. @arithmetic */
export function typedChoice(ratio: Ratio): StrengthChoice {
  return { kind: 'typed', ratio, concentrateMlPerL: 1000 * concentrateFraction(ratio) };
}

/** A dilution as typed: read, asked, or told what is wrong with it. */
export function readRatio(typed: string): ParsedRatio {
  return parseRatio(typed);
}

/** How the match came about. */
export function workStrength(plantsGPerL: number | undefined, strength: StrengthOf): readonly Working[] {
  if (plantsGPerL === undefined || strength.leafGPerL === undefined) return [];
  return [
    {
      figure: 'strength.leafGPerL',
      label: 'plants in a litre poured',
      unit: 'g/L',
      formula: 'plants in a litre of the batch × share of concentrate',
      value: strength.leafGPerL,
      inputs: [
        { label: 'plants in a litre of the batch', value: plantsGPerL, unit: 'g/L' },
        { label: 'share of concentrate', value: concentrateFraction(strength.ratio), unit: '' },
        { label: 'the feed it is matched to', value: wantedLeafGPerL(), unit: 'g/L', source: 'rhs-fertilisers' },
      ],
      sources: ['rhs-fertilisers'],
      doubts: ['the matched feed is steeped nettles, not soured scraps; how alike they feed was not tried'],
    },
  ];
}
