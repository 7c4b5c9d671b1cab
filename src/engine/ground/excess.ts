// When more was given than a bed can use by so much that it builds up in the soil. The sentence, and what to stop, are
// the rules'.

import type { BedLedger } from './ledger.ts';
import type { Nutrient } from './need.ts';

/** Given more than twice the need builds up year on year; less than that evens out over a rotation. @practice */
const MOST_FACTOR = 2;

/**
 * Whether the likely amount given is more than twice the likely need, and even the low end more than the high end of need.
 * @range false where the need is not known; a need of 0 with anything given is true
 * @practice our caution, no source
 */
export function doubles(ledger: BedLedger, nutrient: Nutrient): boolean {
  const given = ledger.givenG[nutrient];
  const need = ledger.need.needG[nutrient];
  if (given === undefined || need === undefined) return false;
  return given.likely > MOST_FACTOR * need.likely && given.low > need.high;
}
