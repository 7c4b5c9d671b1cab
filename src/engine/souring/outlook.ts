// What follows from the word: the clock of the hold, the reasons of the trend, what would change the word, and
// the day of the next look.

import { isAtLeast } from './days.ts';
import { UNKNOWN_AFTER_DAYS } from './findings.ts';
import { type AlarmLine, HELD_PH, holdDays, holdDoneOn } from './lines.ts';
import type { Look } from './look.ts';
import { whiteFuzz } from './nose.ts';
import { because, type ChangeCode, change, type Reason, type ReasonCode, type State } from './reason.ts';
import { falls, lastTwo, type Passed, type Reading, runBelow } from './trend.ts';

/** Days to the next look for each word; daily where it is warm or in doubt. */
const NEXT_DAYS: Readonly<Record<State, number>> = { souring: 2, slow: 3, ready: 7, doubtful: 1, unknown: 0, lost: 0 };
/** From here a batch turns in hours to days, so it is looked at daily. @practice our caution, no source */
export const LOOK_DAILY_C = 25;

/** The clock of the hold: since when the batch stands at or below 4.0, for how long it must, and until when. */
export interface Hold {
  readonly sinceDay: number;
  readonly days: number;
  readonly fromDay: number;
}

/**
 * The clock of the hold, while it runs: by the mean temperature or by the temperatures as they were, whichever ends later.
 * @source breidt-caldwell-2011 abstract @deviates the days are our caution
 */
export function holdOf(
  readings: readonly Reading[],
  temperatureC: number,
  hourlyC?: Float64Array | undefined,
): Hold | undefined {
  const since = runBelow(readings, HELD_PH)[0];
  if (since === undefined) return undefined;
  const byMeanDays = holdDays(temperatureC);
  const days = hourlyC ? Math.max(byMeanDays, holdDoneOn(hourlyC, since.day) - since.day) : byMeanDays;
  return { sinceDay: since.day, days, fromDay: since.day + days };
}

interface HoldSituation {
  readonly state: State;
  readonly held: boolean;
  readonly hold: Hold | undefined;
  readonly temperatureC: number;
}

/** What to say of the hold. @practice our caution, no source */
export function holdReasons({ held, hold, temperatureC }: HoldSituation): readonly Reason<ReasonCode>[] {
  if (hold === undefined) return [];
  if (!Number.isFinite(hold.days)) return [because('too-cold-to-hold', { temperatureC })];
  const code = held ? 'held' : 'acid-since';
  return [
    {
      code,
      values: { sinceDay: hold.sinceDay, holdDays: hold.days, fromDay: hold.fromDay },
      source: 'breidt-caldwell-2011',
    },
  ];
}

/** Which line was passed, by which reading. @practice our caution, no source */
export function passedReason(late: Passed, temperatureC: number): Reason<ReasonCode> {
  return because('line-passed', {
    ph: late.reading.ph,
    day: late.reading.day,
    linePh: late.line.ph,
    lineDay: late.line.days,
    temperatureC,
  });
}

/** Whether it falls, as far as two readings show. @practice our caution, no source */
export function trendReason(readings: readonly Reading[]): Reason<ReasonCode> {
  const { last, before } = lastTwo(readings);
  if (last === undefined || before === undefined) return because('one-reading', { ph: last?.ph ?? Number.NaN });
  const values = { fromPh: before.ph, fromDay: before.day, toPh: last.ph, toDay: last.day };
  return because(falls(readings) ? 'falling' : 'not-falling-yet', values);
}

/** The day since which a batch lies at pH 4.0 or below, as its reasons tell; undefined while no hold runs. @arithmetic look-up */
export function acidSinceDay(reasons: readonly Reason<ReasonCode>[]): number | undefined {
  const since = reasons.find(({ code }) => code === 'acid-since' || code === 'held')?.values.sinceDay;
  return typeof since === 'number' ? since : undefined;
}

/** A word that rests on an old reading says so. @practice our caution, no source */
export function oldReading(readings: readonly Reading[], today: number): readonly Reason<ReasonCode>[] {
  const last = readings.at(-1);
  if (last === undefined || !isAtLeast({ fromDay: last.day, toDay: today }, UNKNOWN_AFTER_DAYS)) return [];
  return [because('reading-is-old', { day: last.day, days: today - last.day })];
}

interface ChangeSituation {
  readonly state: State;
  readonly held: boolean;
  readonly hold: Hold | undefined;
  readonly doubts: readonly Reason<ReasonCode>[];
  readonly lines: readonly AlarmLine[];
  readonly readings: readonly Reading[];
  /** What the model adds to the reasons. */
  readonly beside: readonly Reason<ReasonCode>[];
}

/** What would change the word. @practice our caution, no source */
export function changesFor({
  state,
  held,
  hold,
  doubts,
  lines,
  readings,
  beside,
}: ChangeSituation): readonly Reason<ChangeCode>[] {
  const asked = beside.length > 0 ? [change('reading-in-band-answers')] : [];
  if (state === 'doubtful') {
    const nose = doubts.some(({ code }) => code === 'foul-once' || code === 'noses-differ');
    return [change(nose ? 'second-nose-decides' : 'second-reading-decides'), ...asked];
  }
  const changes: Reason<ChangeCode>[] = [];
  if (state === 'souring' || state === 'slow') changes.push(change('two-low-readings-make-it-ready'));
  const lastDay = readings.at(-1)?.day ?? 0;
  const next = lines.find((line) => line.days >= lastDay);
  if (state === 'souring' && next) changes.push(change('line-makes-it-slow', { linePh: next.ph, lineDay: next.days }));
  if (state === 'ready' && !held)
    changes.push(
      hold && Number.isFinite(hold.fromDay)
        ? change('time-makes-it-held', { fromDay: hold.fromDay })
        : change('acid-makes-it-held'),
    );
  changes.push(change('foul-word-makes-it-doubtful'), change('climb-makes-it-lost'));
  return [...changes, ...asked];
}

interface NextSituation {
  readonly state: State;
  readonly known: readonly Look[];
  readonly temperatureC: number;
  readonly today: number;
  /** Acid goes missing: look again within a day. */
  readonly bufferRises: boolean;
}

/** The day of the next look: today when it is overdue. @practice our caution, no source */
export function nextLook({ state, known, temperatureC, today, bufferRises }: NextSituation): number {
  const lastDay = known.at(-1)?.day ?? today;
  const usual = NEXT_DAYS[state];
  const fuzz = whiteFuzz(known).at(-1);
  const fresh = fuzz !== undefined && !isAtLeast({ fromDay: fuzz.day, toDay: lastDay }, 1);
  const warm = !(temperatureC < LOOK_DAILY_C) && state !== 'ready';
  const days = warm || fresh || bufferRises ? Math.min(usual, 1) : usual;
  return Math.max(lastDay + days, today);
}
