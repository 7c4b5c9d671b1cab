// From one feed of a bed to the next: when its next round falls, and the hold of a bed that was fed less than the usual
// days ago. Beds that fall due within some days of each other are fed in one round. What else speaks for or against a
// pour is round.ts.

import { JUST_FED_DAYS, spacingRules } from '#engine/rules/bed.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { onDay } from './dates.ts';

/** Days from round to round. @practice */
export const ROUND_EVERY_DAYS = 14;
/** Beds that fall due within so many days of the first are fed with it. @practice */
const GATHERS_DAYS = 3;
/** A pour of less than this share of a bed's litres, such as a patch test, is no round. @practice */
const LEAST_SHARE = 0.5;
/** Reasons that days alone settle. */
const OF_DAYS = 'bed-fed-just-now';

/** A bed as its other reasons judge it, and when it was fed. */
export interface Fed {
  readonly reasons: readonly Finding[];
  readonly fedDays: number | undefined;
  readonly lastRoundOn: string | undefined;
}

/** The local date of the last pour that was more than a patch test. @arithmetic at least half of the bed's usual litres */
export function lastRoundOn(bed: Bed, usualL: number | undefined, now: string): string | undefined {
  const today = momentOf(now).dateDay;
  const leastL = (usualL ?? 0) * LEAST_SHARE;
  const last = bed.feeds.findLast(
    ({ counts, pouredL, act }) => counts !== 'no' && pouredL >= leastL && act.when.dateDay <= today,
  );
  return last && onDay(last.act.when.dateDay);
}

/**
 * Every bed with its next round: `nextOn` where nothing but days speaks against it, and the hold of one whose round is
 * still ahead.
 */
export function spaced<B extends Fed>(
  beds: readonly B[],
  now: string,
): readonly (B & { readonly nextOn: string | undefined; readonly findings: readonly Finding[] })[] {
  const today = momentOf(now).dateDay;
  const days = beds.map((bed) => ({ bed, able: isAble(bed), day: ownDay(bed, today) }));
  const first = Math.min(...days.filter(({ able }) => able).map(({ day }) => day));
  return days.map(({ bed, able, day: own }) => {
    const day = own <= first + GATHERS_DAYS && !isJustFed(bed) ? Math.min(own, Math.max(first, today)) : own;
    const findings =
      bed.lastRoundOn === undefined
        ? []
        : judge(spacingRules, {
            fedDays: today - momentOf(bed.lastRoundOn).dateDay,
            nextDays: day - today,
            on: onDay(day),
            today: onDay(today),
          });
    return { ...bed, nextOn: able ? onDay(day) : undefined, findings };
  });
}

/** Whether nothing but days since a feed stops or holds a bed. */
function isAble({ reasons }: Fed): boolean {
  return reasons.every(({ level, rule }) => rule === OF_DAYS || (level !== 'stop' && level !== 'hold'));
}

function isJustFed({ fedDays }: Fed): boolean {
  return fedDays !== undefined && fedDays < JUST_FED_DAYS;
}

/** The day on which a bed by itself is fed again, today at the earliest. @arithmetic */
function ownDay({ lastRoundOn: last, fedDays }: Fed, today: number): number {
  const afterRound = last === undefined ? today : momentOf(last).dateDay + ROUND_EVERY_DAYS;
  const afterAny = fedDays === undefined ? today : today - fedDays + JUST_FED_DAYS;
  return Math.max(today, afterRound, afterAny);
}
