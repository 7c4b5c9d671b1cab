// The fields that several words of the contract share, each with its allowed range stated once.
// Ranges are wide enough for any plot and narrow enough to catch a slipped decimal or a wrong unit.

import * as z from 'zod/mini';
import { says } from './problem.ts';

/** A finite number between two limits, in a named unit. */
export function number(min: number, max: number, unit: string) {
  const allowed = `${min} to ${max}${unit ? ` ${unit}` : ''}`;
  return z
    .number({ error: () => says('is not a number', allowed) })
    .check(z.gte(min, says('is too small', allowed)), z.lte(max, says('is too large', allowed)));
}

/** More than nothing, up to a limit. */
export function positive(max: number, unit: string) {
  const allowed = `more than 0, up to ${max}${unit ? ` ${unit}` : ''}`;
  return z
    .number({ error: () => says('is not a number', allowed) })
    .check(z.gt(0, says('must be more than 0', allowed)), z.lte(max, says('is too large', allowed)));
}

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

/** One of a few words. */
export function oneOf<const T extends readonly string[]>(words: T) {
  return z.enum(words, { error: () => says('is not one of the words known here', words.join(', ')) });
}

/** A short text the grower typed. */
export function text(max = 200) {
  return z
    .string({ error: () => says('is not a text', `a text of up to ${max} characters`) })
    .check(z.maxLength(max, says('is too long', `a text of up to ${max} characters`)));
}

/** A list with at least and at most so many items. */
export function listOf<T extends z.ZodMiniType>(item: T, min: number, max: number) {
  const allowed = `a list of ${min} to ${max}`;
  return z
    .array(item, { error: () => says('is not a list', allowed) })
    .check(
      z.minLength(min, says('is too short a list', allowed)),
      z.maxLength(max, says('is too long a list', allowed)),
    );
}

/** Mass of one lot of scraps; 1,000 kg is more than any bucket garden lifts. */
export const massKg = positive(1000, 'kg');
/** Volume of a vessel or of water; 2,000 L covers any butt. */
export const volumeL = positive(2000, 'L');
/** pH of anything that may meet a batch. */
export const ph = number(2, 12, 'pH');
/** Acid a water can take up, meq per litre; the hardest drinking waters stay below 10. */
export const alkalinityMeqPerL = number(0, 20, 'meq/L');
/** Warmth of a ferment. */
export const temperatureC = number(-10, 60, '°C');
