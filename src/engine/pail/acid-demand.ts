// How much acid a batch takes before it stands at the target pH, term by term. Linear plant buffer,
// carbonate of the water, free hydrogen ions and expected ammonia. Next: sugar.ts turns acid into sugar.

import { product, type Range, scale, shift, sum } from '../quantity/range.ts';
import { carbonateLostFraction, dissociatedFraction, PKA } from '../scraps/acid.ts';
import type { Part } from '../scraps/part.ts';
import { liquidL, type Mix } from './recipe.ts';

/** The terms of the acid demand, eq. */
export interface AcidDemand {
  /** Plants, with the spread of their buffers and start pH. */
  readonly plantEq: Range;
  readonly waterEq: number;
  readonly freeEq: number;
  readonly ammoniaEq: number;
  /** Sum, not below 0. */
  readonly totalEq: Range;
}

/** Buffer of one part down to the target, m d b (p − p*); negative for a part more sour than the target. */
function partEq(part: Part, targetPh: number): Range {
  const drop = shift(part.ph, -targetPh);
  if (drop.low > 0) return scale(product([part.dryMatter, part.bufferEqPerKgDmPerPh, drop]), part.massKg);
  const perPh = product([part.dryMatter, part.bufferEqPerKgDmPerPh]);
  // The drop may be of either sign: take the worst and best ends straight.
  const ends = [drop.low * perPh.low, drop.low * perPh.high, drop.high * perPh.low, drop.high * perPh.high];
  return scale({ low: Math.min(...ends), likely: drop.likely * perPh.likely, high: Math.max(...ends) }, part.massKg);
}

/**
 * Acid to reach the target, in equivalents of protons.
 *
 *   Q = Σ m d b (p − p*) + K V [f(p*) − f(pw)] + V_e (10^−p* − 10^−p) + Σ m d a
 *
 * a is expected ammonia, mol per kg dry matter: 0 unless the grower's analysis gives it.
 * @arithmetic charge balance with the linear buffer of acid.ts
 * @checked worked/sugar-dose.csv
 */
export function acidDemand(mix: Mix): AcidDemand {
  const { plants, water, targetPh } = mix;
  const plantEq = sum(plants.map((part) => partEq(part, targetPh)));
  const lost = carbonateLostFraction(targetPh) - carbonateLostFraction(water.ph);
  const waterEq = (water.alkalinityMeqPerL / 1000) * water.volumeL * lost;
  const freeEq = liquidL(plants, water.volumeL) * (10 ** -targetPh - 10 ** -water.ph);
  let ammoniaEq = 0;
  for (const part of plants) ammoniaEq += part.massKg * part.dryMatter.likely * part.ammoniaMolPerKgDm;
  const rest = waterEq + freeEq + ammoniaEq;
  const total = shift(plantEq, rest);
  return {
    plantEq,
    waterEq,
    freeEq,
    ammoniaEq,
    totalEq: { low: Math.max(0, total.low), likely: Math.max(0, total.likely), high: Math.max(0, total.high) },
  };
}

/**
 * Protons that a mole of the mixed acid gives at this pH, x·aL + (1−x)·aA.
 * @arithmetic
 * @checked worked/sugar-dose.csv
 */
export function protonsPerMol(ph: number, lacticShareFraction: number): number {
  const lactic = dissociatedFraction({ ph, pka: PKA.lactic });
  const acetic = dissociatedFraction({ ph, pka: PKA.acetic });
  return lacticShareFraction * lactic + (1 - lacticShareFraction) * acetic;
}
