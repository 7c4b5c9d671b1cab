// The fields that several words of the contract share, each with its allowed range stated once. What the record has
// too comes from the journal's bounds. Ranges are wide enough for any plot and narrow enough to catch a slipped decimal.

import * as z from 'zod/mini';
import { BELIEVED } from '#engine/quantity/parse.ts';
import { number, ofLength } from '#journal/bounds.ts';
import { says } from './problem.ts';

export { listOf, number, ofLength, oneOf, positive } from '#journal/bounds.ts';

/** An object with these fields. One that no word has is no problem here: it is listed as not read. */
export function object<T extends z.core.$ZodLooseShape>(
  shape: T,
  what: string,
  allowed = `an object with ${Object.keys(shape).join(', ')}`,
) {
  return z.strictObject(shape, { error: () => says(`is not ${what}`, allowed) });
}

/** Mass of one lot, from the least that a typed amount may be. */
export const massKg = number(BELIEVED.mass.least, BELIEVED.mass.most, 'kg');
/** Area of a bed. */
export const areaM2 = number(BELIEVED.area.least, BELIEVED.area.most, 'm²');
/** Volume of a vessel or of water. */
export const volumeL = number(BELIEVED.volume.least, BELIEVED.volume.most, 'L');

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

/** Whether both are numbers and the first is the larger, for checks that run beside those of the single fields. */
export function isMore(a: unknown, b: unknown): boolean {
  return typeof a === 'number' && typeof b === 'number' && a > b;
}

/** A short text the grower typed. */
export function text(max = 200) {
  return z
    .string({ error: () => says('is not a text', `a text of up to ${max} characters`) })
    .check(ofLength(z.maxLength(max, says('is too long', `a text of up to ${max} characters`))));
}

/** pH of anything that may meet a batch. */
export const ph = number(2, 12, 'pH');
/** Acid a water can take up, meq per litre; the hardest drinking waters stay below 10. */
export const alkalinityMeqPerL = number(0, 20, 'meq/L');
/** Warmth of a ferment. */
export const temperatureC = number(-10, 60, '°C');
