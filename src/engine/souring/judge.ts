// The word for a batch from its looks: souring, slow, ready, doubtful, lost or unknown, with the mark held.
// Nothing is forecast here. The worst finding wins: lost, then unknown, doubtful, ready, slow, souring.

import { isAtLeast } from './days.ts';
import { type ModelEvidence, reasonsBeside } from './expected-reasons.ts';
import { asidesOf, doubtfulBecause, lostBecause, readyBecause, unknownBecause } from './findings.ts';
import { alarmLines, alarmLinesOver } from './lines.ts';
import { inOrder, type Look, sawSomething } from './look.ts';
import { changesFor, holdOf, holdReasons, nextLook, oldReading, passedReason, trendReason } from './outlook.ts';
import { type ChangeCode, change, type Reason, type ReasonCode, type State } from './reason.ts';
import { alarmPassed, readingsOf } from './trend.ts';

export interface Judgement {
  readonly state: State;
  readonly held: boolean;
  /** The day from which it counts as held if nothing turns; absent while that clock does not run. */
  readonly heldFromDay?: number;
  readonly reasons: readonly Reason<ReasonCode>[];
  readonly wouldChange: readonly Reason<ChangeCode>[];
  /** Absent for a lost batch: there is nothing left to watch. */
  readonly nextLookDay?: number;
}

/** What there is to judge: looks in any order, the batch's mean temperature, and the day it is today. */
export interface Batch {
  readonly looks: readonly Look[];
  readonly temperatureC: number;
  /** The liquid hour by hour from the filling on: the alarm lines then follow it instead of the mean. */
  readonly hourlyC?: Float64Array | undefined;
  /** What the model makes of the looks: reasons beside the word, which stays the table's. */
  readonly evidence?: ModelEvidence | undefined;
  readonly today: number;
}

/**
 * The state of a batch from its looks up to today.
 *
 * The limits are our caution where no publication sets them; the hold is lines.ts. A look that cannot be read
 * (no number for its day or acidity) makes the batch unknown unless the others show that it is lost.
 * @source breidt-caldwell-2011 for the hold alone; all else our caution
 * @checked scenarios/case-15 to case-20, scenarios/demo-pegs-states, property/souring
 */
export function judgeBatch({ looks, temperatureC, hourlyC, evidence, today }: Batch): Judgement {
  const seen = looks.filter((look) => !(look.day > today) && sawSomething(look));
  const known = inOrder(seen.filter(readable));
  const readings = readingsOf(known);
  const asides = asidesOf(known);

  const beside = reasonsBeside(evidence, today);

  const end = lostBecause(known, readings);
  if (end.length > 0)
    return {
      state: 'lost',
      held: false,
      reasons: [...end, ...beside, ...asides],
      wouldChange: [change('nothing-brings-it-back')],
    };

  const gap = unknownBecause({ seen, known, readings, today });
  if (gap.length > 0)
    return {
      state: 'unknown',
      held: false,
      reasons: [...gap, ...asides],
      wouldChange: [change('reading-makes-it-known')],
      nextLookDay: today,
    };

  const low = readyBecause(readings);
  const lines = hourlyC ? alarmLinesOver(hourlyC) : alarmLines(temperatureC);
  const late = alarmPassed(readings, lines);
  const doubts = doubtfulBecause(known, readings, late !== undefined && low === undefined);
  const state: State = doubts.length > 0 ? 'doubtful' : low ? 'ready' : late ? 'slow' : 'souring';

  const hold = holdOf(readings, temperatureC, hourlyC);
  const held =
    state === 'ready' && hold !== undefined && isAtLeast({ fromDay: hold.sinceDay, toDay: today }, hold.days);
  const reasons = [
    ...doubts,
    ...(state === 'ready' && low ? [low] : []),
    ...(state === 'slow' && late ? [passedReason(late, temperatureC)] : []),
    ...(state === 'slow' || state === 'souring' ? [trendReason(readings)] : []),
    ...holdReasons({ state, held, hold, temperatureC }),
    ...beside,
    ...oldReading(readings, today),
    ...asides,
  ];
  const bufferRises = beside.some(({ code }) => code === 'buffer-rises');
  return {
    state,
    held,
    ...(hold && Number.isFinite(hold.fromDay) && { heldFromDay: hold.fromDay }),
    reasons,
    wouldChange: changesFor({ state, held, hold, doubts, lines, readings, beside }),
    nextLookDay: nextLook({ state, known, temperatureC, today, bufferRises }),
  };
}

function readable(look: Look): boolean {
  return Number.isFinite(look.day) && (look.ph === undefined || Number.isFinite(look.ph));
}
