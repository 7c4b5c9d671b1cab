// What the acidity readings say together: the last one, whether it still falls, how far it has climbed from
// the lowest, whether an alarm line was passed. A strip is read in pads of half a pH and held to lines one
// pad stricter. Smell and top are nose.ts; the word for the batch is judge.ts.

import { isAtLeast } from './days.ts';
import type { AlarmLine } from './lines.ts';
import { type Look, visits } from './look.ts';

/** One acidity reading. */
export interface Reading {
  readonly day: number;
  readonly ph: number;
  readonly strip: boolean;
  readonly who: string | undefined;
}

/** A climb from an earlier reading to a later one. */
export interface Climb {
  readonly from: Reading;
  readonly to: Reading;
}

/** A line of alarm and the reading that stood above it too late. */
export interface Passed {
  readonly reading: Reading;
  readonly line: AlarmLine;
}

/** One pad of a strip. */
export const PAD_PH = 0.5;
/** Climbs of a meter that raise a doubt, and that mean the batch is lost when passed. */
const DOUBT_PH = 0.2;
export const LOST_PH = 0.3;
/** Days back to the reading that a slow batch must have fallen from; a strip needs twice as long to show a pad. */
const STILL_FALLING_DAYS = 3;

/** The readings of some ordered looks. A reading that does not say what it was read with counts as a strip. @arithmetic */
export function readingsOf(ordered: readonly Look[]): readonly Reading[] {
  return ordered.flatMap(({ day, ph, by, who }) => (ph === undefined ? [] : [{ day, ph, strip: by !== 'meter', who }]));
}

/** Where a reading stands against a line of the table: a strip one pad higher than it shows. @practice our caution, no source */
export function againstLine({ ph, strip }: Reading): number {
  return rounded(strip ? ph + PAD_PH : ph);
}

/** The least sour reading of a visit stands for it. @practice our caution, no source */
export function worstOf(visit: readonly Reading[]): Reading | undefined {
  return visit.reduce<Reading | undefined>(
    (a, b) => (a === undefined || againstLine(b) > againstLine(a) ? b : a),
    undefined,
  );
}

/** Last visit that read the acidity, and the one before it. @arithmetic */
export function lastTwo(readings: readonly Reading[]): { readonly last?: Reading; readonly before?: Reading } {
  const [last, before] = visits(readings).slice(-2).reverse().map(worstOf);
  return { ...(last && { last }), ...(before && { before }) };
}

/** Whether the last visit read lower than the one before: any step of a meter, a whole pad of a strip. @practice our caution, no source */
export function falls(readings: readonly Reading[]): boolean {
  const { last, before } = lastTwo(readings);
  return last !== undefined && before !== undefined && fell(before, last);
}

/**
 * The worst climb after an earlier, lower reading: of all readings for `lost`, of the last visit alone for `doubt`.
 *
 *   meter: lost above 0.3, doubt from 0.2;  where a strip is one of the two: lost from two pads, doubt from one
 *
 * A batch that was lost by a climb stays lost: a wrong reading is withdrawn, not out-voted.
 * @practice our caution, no source
 */
export function climbs(readings: readonly Reading[]): { readonly lost?: Climb; readonly doubt?: Climb } {
  const all = visits(readings);
  let lost: Climb | undefined;
  let doubt: Climb | undefined;
  const lowest: { meter?: Reading; strip?: Reading } = {};
  all.forEach((visit, i) => {
    for (const to of visit) {
      for (const from of [lowest.meter, lowest.strip]) {
        if (from === undefined) continue;
        if (climbedTo(from, to, 'lost')) lost ??= { from, to };
        else if (i === all.length - 1 && climbedTo(from, to, 'doubt')) doubt ??= { from, to };
      }
    }
    for (const reading of visit) {
      const kind = reading.strip ? 'strip' : 'meter';
      const low = lowest[kind];
      if (low === undefined || reading.ph < low.ph) lowest[kind] = reading;
    }
  });
  return { ...(lost && { lost }), ...(doubt && { doubt }) };
}

/** Two people who read the last visit further apart than their tools explain. @practice our caution, no source */
export function readersDiffer(readings: readonly Reading[]): Climb | undefined {
  const last = (visits(readings).at(-1) ?? []).filter((reading) => reading.who !== undefined);
  for (const from of last)
    for (const to of last) if (from.who !== to.who && climbedTo(from, to, 'lost')) return { from, to };
  return undefined;
}

/** The first reading that stood above an alarm line later than the line allows; a line not known is passed. @practice our caution, no source */
export function alarmPassed(readings: readonly Reading[], lines: readonly AlarmLine[]): Passed | undefined {
  for (const reading of readings)
    for (const line of lines)
      if (!(againstLine(reading) <= line.ph) && !(reading.day <= line.days)) return { reading, line };
  return undefined;
}

/** An earlier reading, three days old or more (six by strip), that the last one has not fallen from. @practice our caution, no source */
export function stuckSince(readings: readonly Reading[]): Reading | undefined {
  const { last } = lastTwo(readings);
  if (last === undefined) return undefined;
  const old = readings.filter((reading) => {
    const days = reading.strip || last.strip ? 2 * STILL_FALLING_DAYS : STILL_FALLING_DAYS;
    return isAtLeast({ fromDay: reading.day, toDay: last.day }, days);
  });
  const from = worstOf(visits(old).at(-1) ?? []);
  return from !== undefined && !fell(from, last) ? from : undefined;
}

/** The readings, from the first, since which none stood above a line of the table. @arithmetic */
export function runBelow(readings: readonly Reading[], linePh: number): readonly Reading[] {
  const all = visits(readings);
  const above = all.findLastIndex((visit) => visit.some((reading) => !(againstLine(reading) <= linePh)));
  return all.slice(above + 1).flat();
}

function fell(from: Reading, to: Reading): boolean {
  const by = rounded(from.ph - to.ph);
  return from.strip || to.strip ? by >= PAD_PH : by > 0;
}

function climbedTo(from: Reading, to: Reading, what: 'lost' | 'doubt'): boolean {
  const by = rounded(to.ph - from.ph);
  if (from.strip || to.strip) return by >= (what === 'lost' ? 2 * PAD_PH : PAD_PH);
  return what === 'lost' ? by > LOST_PH : by >= DOUBT_PH;
}

/** Thousandths of a pH: 4.1 − 3.9 is 0.2. */
function rounded(ph: number): number {
  return Math.round(ph * 1000) / 1000;
}
