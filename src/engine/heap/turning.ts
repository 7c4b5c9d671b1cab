// Whether to turn a heap now, and why: too hot, cooling with something left to heat, foul, too wet. Reasons only; the
// sentences are words/en/heap.ts.

import { ACCEPTABLE } from './figures.ts';
import type { LogDay } from './log.ts';

/** How a handful feels when it is squeezed. */
export type Feel = 'dry' | 'right' | 'wet';
export type HeapSmell = 'earthy' | 'sour' | 'ammonia' | 'egg' | 'sewage' | 'cannot-smell';

/** What is known of a heap at a look. */
export interface HeapLook {
  readonly days: readonly LogDay[];
  readonly feel?: Feel | undefined;
  readonly smell?: HeapSmell | undefined;
}

export type TurningReason = 'too-hot' | 'cooled' | 'foul' | 'wet' | 'ammonia' | 'dry';

/** Days between turnings of a working heap: sooner drives off heat. @practice */
export const TURNING_REST_DAYS = 3;

export interface TurningAdvice {
  readonly turn: boolean;
  readonly reasons: readonly TurningReason[];
  /** Days since it was last turned; undefined where it never was. */
  readonly sinceTurnedDays: number | undefined;
  readonly coreC: number | undefined;
}

/**
 * Whether to turn now. Too hot, foul and wet call for it at once; a core that was hot and has cooled calls for it once
 * three days have passed since the last time. Dry and ammonia call for water and for browns, mixed in while turning.
 * @practice
 */
export function turningOf({ days, feel, smell }: HeapLook): TurningAdvice {
  const lastRead = days.findLast(({ coreC }) => coreC !== undefined);
  const coreC = lastRead?.coreC;
  const lastTurned = days.findLast(({ turned }) => turned);
  const lastDay = days.at(-1)?.day;
  const sinceTurnedDays = lastTurned && lastDay !== undefined ? lastDay - lastTurned.day : undefined;
  const rested = sinceTurnedDays === undefined || sinceTurnedDays >= TURNING_REST_DAYS;
  const { least, most } = ACCEPTABLE.temperatureC;
  const wasHot = days.some((one) => one.coreC !== undefined && one.coreC >= least);
  const reasons: TurningReason[] = [];
  if (coreC !== undefined && !(coreC <= most)) reasons.push('too-hot');
  if (smell === 'egg' || smell === 'sewage' || smell === 'sour') reasons.push('foul');
  if (feel === 'wet') reasons.push('wet');
  if (smell === 'ammonia') reasons.push('ammonia');
  if (feel === 'dry') reasons.push('dry');
  if (coreC !== undefined && coreC < least && wasHot && rested) reasons.push('cooled');
  return { turn: reasons.length > 0, reasons, sinceTurnedDays, coreC };
}
