// What the model expects of a change made today: some of the draws that fit the looks are run again from the start,
// once as it is and once with the change, and read off as days to pH 4.2 and 4.0.

import { HELD_PH, READY_PH } from '../lines.ts';
import { type Batch, type Change, course, dayBelow } from '../model/course.ts';
import { drawOf, type Known } from '../model/draws.ts';
import { type DayBand, dayBand, type Ensemble, type Member } from '../model/ensemble.ts';
import { lagHours } from '../model/temperature.ts';

/** When the batch passes each pH, from today on. */
export interface Reach {
  readonly '4.2': DayBand;
  readonly '4.0': DayBand;
}

/** What is done today: a change of the batch itself, or a warmer place. */
export interface Step extends Omit<Change, 'day'> {
  /** Mean of the place it is moved to. */
  readonly placeC?: number | undefined;
}

/** The draws a rescue is judged by, and until when. */
export interface Trial {
  readonly known: Known;
  readonly members: Ensemble;
  readonly today: number;
  readonly untilDay: number;
}

/**
 * So many evenly spread draws of an ensemble, those that weigh more taken more often.
 * @arithmetic systematic resampling from the middle of each slice; seedless, so the same ensemble gives the same draws
 */
export function pick({ members, weights }: Ensemble, count: number): Ensemble {
  const times = new Map<number, number>();
  let below = 0;
  let next = 0;
  for (let i = 0; i < members.length && next < count; i++) {
    below += weights[i] as number;
    for (; next < count && (next + 0.5) / count <= below; next++) times.set(i, (times.get(i) ?? 0) + 1);
  }
  const picked = [...times.keys()];
  return {
    members: picked.map((i) => members[i] as Member),
    weights: Float64Array.from(picked, (i) => (times.get(i) as number) / count),
  };
}

/** Mean temperature of the liquid over the day before a moment, °C. @arithmetic */
export function lastDayC(hourlyC: Float64Array, today: number): number {
  const end = Math.min(hourlyC.length, Math.floor(today * 24) + 1);
  const some = hourlyC.subarray(Math.max(0, end - 24), end);
  return some.length === 0 ? Number.NaN : some.reduce((sum, one) => sum + one, 0) / some.length;
}

/** The temperatures as they were, the last day repeated until the end. @arithmetic */
function longer(hourlyC: Float64Array, hoursCount: number): Float64Array {
  const made = new Float64Array(hoursCount);
  const back = Math.min(24, hourlyC.length);
  for (let hour = 0; hour < hoursCount; hour++)
    made[hour] = hour < hourlyC.length ? (hourlyC[hour] as number) : (made[hour - back] as number);
  return made;
}

/** Moves the batch to a place of such a mean today; the vessel follows with its lag. @memory lag of temperature.ts */
function movedTo(placeC: number, hourlyC: Float64Array, trial: Trial): Float64Array {
  const byC = placeC - lastDayC(hourlyC, trial.today);
  const lag = lagHours(trial.known.batch.mixture.liquidL);
  const from = trial.today * 24;
  return hourlyC.map((temperatureC, hour) =>
    hour > from ? temperatureC + byC * (1 - Math.exp((from - hour) / lag)) : temperatureC,
  );
}

function changed({ known, today, untilDay }: Trial, step: Step): Batch {
  const { placeC, ...rest } = step;
  const hourlyC = longer(known.batch.hourlyC, Math.ceil(untilDay * 24) + 2);
  const told = Object.values(rest).some((one) => one !== undefined);
  return {
    ...known.batch,
    hourlyC: placeC === undefined ? hourlyC : movedTo(placeC, hourlyC, { known, members: NONE, today, untilDay }),
    changes: [...(known.batch.changes ?? []), ...(told ? [{ ...rest, day: today }] : [])],
  };
}
const NONE: Ensemble = { members: [], weights: new Float64Array(0) };

/** The draws of a trial run on with a step made today; nothing made for an empty step. @memory the model of rates.ts */
export function runOn(trial: Trial, step: Step): Ensemble {
  const known: Known = { ...trial.known, batch: changed(trial, step) };
  const members = trial.members.members.map(({ index, unknowns }): Member => {
    const draw = drawOf(known, index, unknowns);
    return { index, unknowns, run: course(draw.batch, draw.parameters, trial.untilDay) };
  });
  return { members, weights: trial.members.weights };
}

/** When runs pass 4.2 and 4.0; a day that lies behind counts as today, since the looks did not show it. @arithmetic */
export function reachFrom(ensemble: Ensemble, today: number): Reach {
  const by = (ph: number) =>
    dayBand(ensemble, ({ run }) => {
      const day = dayBelow(run, ph);
      return day === undefined ? undefined : Math.max(day, today);
    });
  return { '4.2': by(READY_PH), '4.0': by(HELD_PH) };
}
