// How warm a batch stood and stands, as its forecast takes it: what the thermometer told at the filling and at each
// look, each telling until the next; where nobody measured, the weather that was typed in. Nothing told gives nothing.

import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { Told } from './peg-temperature.ts';

/** Days since the filling with the low and high of each; a day without a row goes on as the row before it. */
export type DaysOfWarmth = readonly (readonly [day: number, lowC: number, highC: number])[];

export interface WarmthOfBatch {
  readonly days: DaysOfWarmth;
  readonly from: 'told' | 'weather';
}

/** Warmth of a batch from what was told of it up to now, or else from the plot's weather. @practice each telling holds until the next */
export function warmthOf(plot: Plot, batch: Batch, told: readonly Told[]): WarmthOfBatch | undefined {
  if (told.length > 0) return { days: fromTold(told), from: 'told' };
  const days = fromWeather(plot, batch);
  return days.length > 0 ? { days, from: 'weather' } : undefined;
}

/** One row for each day on which the telling changes; of several on one day the last holds. */
function fromTold(told: readonly Told[]): DaysOfWarmth {
  const rows: (readonly [number, number, number])[] = [];
  for (const { day, temperatureC } of [...told].sort((a, b) => a.day - b.day)) {
    const on = Math.max(0, Math.floor(day));
    if (rows.at(-1)?.[0] === on) rows.pop();
    if (rows.at(-1)?.[1] !== temperatureC) rows.push([rows.length === 0 ? 0 : on, temperatureC, temperatureC]);
  }
  return rows;
}

/** Days of the weather with a low and a high; what was seen counts before what was foretold. */
function fromWeather({ weather }: Plot, { filled }: Batch): DaysOfWarmth {
  const byDay = new Map<number, readonly [number, number, number]>();
  const seenLast = [...weather].sort((a, b) => Number(a.body.what === 'seen') - Number(b.body.what === 'seen'));
  for (const { body } of seenLast) {
    for (const { on, lowC, highC } of body.days) {
      const day = momentOf(on).dateDay - filled.dateDay;
      if (day >= 0 && lowC !== undefined && highC !== undefined) byDay.set(day, [day, lowC, highC]);
    }
  }
  return [...byDay.values()].sort((a, b) => a[0] - b[0]);
}
