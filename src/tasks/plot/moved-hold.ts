// What the longer hold moved: the day from which a batch counts as held, and pours that were right by the rule of their
// day. The wait before picking is judged by today's rule alone (pick.ts); here it is only told why.

import { earlierHoldDays, LONGER_HOLD } from '#engine/souring/earlier-hold.ts';
import { acidSinceDay } from '#engine/souring/outlook.ts';
import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Feed } from '#journal/parts/feeds.ts';
import { movedHoldWords } from '#words/en/moved-hold.ts';
import { pegName } from './batch-name.ts';
import type { StateOf } from './liquid.ts';
import { dateOfDay, type PegWord, pegWord } from './peg.ts';

/** The days of a batch on which the clock began, and was done by the earlier rule; nothing while it does not run. */
function earlierClock({ judgement, temperature }: PegWord): { sinceDay: number; doneDay: number } | undefined {
  const sinceDay = acidSinceDay(judgement.reasons);
  if (sinceDay === undefined || temperature === undefined) return undefined;
  return { sinceDay, doneDay: sinceDay + earlierHoldDays(temperature.meanC) };
}

/** A rule of a later day has moved nothing yet. */
const isInForce = (now: string) => now.slice(0, 10) >= LONGER_HOLD.on;

/** Why the day of a batch moved, in a sentence; nothing where it was read under today's rule alone. */
export function movedHoldOf(plot: Plot, batch: Batch, now: string): string | undefined {
  if (!isInForce(now)) return undefined;
  const word = pegWord({ plot, batch, now });
  const clock = earlierClock(word);
  if (clock === undefined || word.heldOn === undefined || word.state !== 'ready') return undefined;
  if (dateOfDay(batch.filled, clock.sinceDay) > LONGER_HOLD.on) return undefined;
  const before = dateOfDay(batch.filled, clock.doneDay);
  return before === word.heldOn ? undefined : movedHoldWords.batch(pegName(plot, batch), before, word.heldOn);
}

/** Whether a batch that was judged so was held on a day by the earlier rule. */
export function isHeldByEarlierRule(word: PegWord, day: number): boolean {
  const clock = earlierClock(word);
  return word.state === 'ready' && clock !== undefined && day >= clock.doneDay;
}

/**
 * Whether a pour was held by the rule of its day and is not by today's. A pour that keeps the formulas of today was made
 * under today's rule; one that keeps none is judged by its date.
 */
export function wasHeldThen({ body, when }: Feed['act'], now: string, states: StateOf): boolean {
  const model = body.figuresShown?.model;
  const isOlder = model === undefined ? when.on.slice(0, 10) <= LONGER_HOLD.on : model < LONGER_HOLD.model;
  if (!isInForce(now) || !isOlder) return false;
  const then = body.from.map((source) => states(source, when.on));
  return then.every((one) => one?.held || one?.heldByEarlierRule) && !then.every((one) => one?.held);
}

/** What is said of pours on a bed that were right by the rule of their day. */
export function movedHoldOn(pours: readonly Feed[]): string | undefined {
  const dates = [...new Set(pours.map(({ act }) => act.when.on.slice(0, 10)))];
  return dates.length === 0 ? undefined : movedHoldWords.pours(dates);
}
