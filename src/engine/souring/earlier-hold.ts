// The hold as it was asked before it grew. Nothing is judged by it: it tells a grower why a date moved, and that a pour of
// then was right by the rule of its day.

import { daysAlong } from './lines.ts';

/** The formulas from which on more days are asked, and their day: a row of data/versions.json. */
export const LONGER_HOLD = { model: 2, on: '2026-11-30' } as const;

/** @practice what this program asked before; seven days did not reach the line of breidt-caldwell-2011 */
const EARLIER_HOLD = [
  { temperatureC: 10, days: 24 },
  { temperatureC: 15, days: 16 },
  { temperatureC: 20, days: 7 },
] as const;

/**
 * Days at or below pH 4.0 that were asked before the hold grew: 7 at 20 °C and above, 16 at 15 °C, 24 at 10 °C.
 * @range as holdDays
 * @returns days
 * @practice what this program asked before
 */
export function earlierHoldDays(temperatureC: number): number {
  return daysAlong(EARLIER_HOLD, temperatureC);
}
