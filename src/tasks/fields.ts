// The fields that several words of the contract share, each with its allowed range stated once. What the record has
// too comes from the journal's bounds. Ranges are wide enough for any plot and narrow enough to catch a slipped decimal.

import * as z from 'zod/mini';
import { number } from '#journal/bounds.ts';
import { says } from './problem.ts';

export { listOf, massKg, number, oneOf, positive, volumeL } from '#journal/bounds.ts';

/** A number, or a band { low, likely, high } in order, both within the limits. */
export function banded(min: number, max: number, unit: string) {
  const one = number(min, max, unit);
  const allowed = `${min} to ${max}${unit ? ` ${unit}` : ''}, or { low, likely, high } in that order`;
  return z.union(
    [
      one,
      z
        .strictObject({ low: one, likely: one, high: one })
        .check(z.refine((r) => r.low <= r.likely && r.likely <= r.high, says('is not in order', allowed))),
    ],
    { error: () => says('is not a number or a band', allowed) },
  );
}

/** A short text the grower typed. */
export function text(max = 200) {
  return z
    .string({ error: () => says('is not a text', `a text of up to ${max} characters`) })
    .check(z.maxLength(max, says('is too long', `a text of up to ${max} characters`)));
}

/** pH of anything that may meet a batch. */
export const ph = number(2, 12, 'pH');
/** Acid a water can take up, meq per litre; the hardest drinking waters stay below 10. */
export const alkalinityMeqPerL = number(0, 20, 'meq/L');
/** Warmth of a ferment. */
export const temperatureC = number(-10, 60, '°C');
