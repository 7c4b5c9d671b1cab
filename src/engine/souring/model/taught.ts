// What was learned of a batch as a person reads it: times what the table says, with a low and a high end.

import type { Range } from '../../quantity/range.ts';
import { UNKNOWNS, type Unknown, USUAL_SPREAD } from './draws.ts';
import type { Belief } from './learn.ts';

/** The unknowns that are carried from batch to batch; start pH and warmth belong to the one batch. */
export type TaughtUnknown = Exclude<Unknown, 'startPh' | 'warmth'>;

/** z of the 10th and 90th percentile. @arithmetic */
const Z_90 = 1.2815515655446004;

/** ln of the factor of one standard deviation. */
const LN_FACTOR: Readonly<Record<TaughtUnknown, number>> = {
  rate: USUAL_SPREAD.rateLnFactor,
  count: USUAL_SPREAD.countLog10Factor * Math.LN10,
  buffer: USUAL_SPREAD.bufferLnFactor,
  sugar: USUAL_SPREAD.sugarLnFactor,
};

/** A belief about one unknown as a factor on the table's likely value, 10th to 90th percentile. @arithmetic exp(spread · (middle ± 1.28 width)) */
export function taughtFactor({ middle, width }: Belief, unknown: TaughtUnknown): Range {
  const at = UNKNOWNS.indexOf(unknown);
  const of = (z: number) => Math.exp(LN_FACTOR[unknown] * z);
  const [likely, off] = [middle[at] as number, Z_90 * (width[at] as number)];
  return { low: of(likely - off), likely: of(likely), high: of(likely + off) };
}
