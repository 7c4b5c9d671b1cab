// What the comparison amounts to: the root-mean-square error of pH, the share of times foretold within a factor, the
// share of rows within their band, and what is owed a reason. Pure; compare.ts makes the rows, report.ts prints.

import { type Compared, observedSpan } from './compare.ts';
import { isTime } from './read-off.ts';

/** Sets whose pH rows are scored together. */
export const PH_SETS: readonly string[] = ['C', 'E', 'F', 'J', 'K', 'M', 'P'];
/** Sets whose times are scored together. */
export const TIME_SETS: readonly string[] = ['A', 'E', 'J', 'N'];
/** A time counts as foretold within this factor, either way. */
export const TIME_FACTOR = 1.6;
/** Rows that may be left out of all scores. */
export const MOST_LEFT_OUT = 3;

export interface Scores {
  readonly phRows: number;
  readonly phRmse: number;
  /** Mean of predicted less observed: above 0, the model is less sour than the batch was. */
  readonly phBias: number;
  readonly timeRows: number;
  readonly timesWithin: number;
  readonly timeShare: number;
  /** Rows with a band, and those that meet it. */
  readonly bandRows: number;
  readonly bandInside: number;
}

/** Predicted less observed. Where only an end or a span was printed, the way past the nearest end, or 0 within. */
export function errorOf(row: Compared): number | undefined {
  if (row.predicted === undefined) return undefined;
  if (row.value !== undefined) return row.predicted - row.value;
  const { low, high } = observedSpan(row);
  if (row.predicted < low) return row.predicted - low;
  if (row.predicted > high) return row.predicted - high;
  return 0;
}

/** How many times too long or too short a time is foretold, 1 at best; infinite when it does not come. */
export function factorOf(row: Compared): number {
  if (row.predicted === undefined) return Number.POSITIVE_INFINITY;
  const { low, high } = row.value === undefined ? observedSpan(row) : { low: row.value, high: row.value };
  if (row.predicted > high) return row.predicted / high;
  if (row.predicted < low) return low / Math.max(row.predicted, 1e-9);
  return 1;
}

const scored = (rows: readonly Compared[]) => rows.filter(({ use }) => use === 'score');

/** The pH rows that count. */
export function phRows(rows: readonly Compared[]): readonly Compared[] {
  return scored(rows).filter(({ set, quantity }) => quantity === 'ph' && PH_SETS.includes(set));
}

/** The time rows that count. */
export function timeRows(rows: readonly Compared[]): readonly Compared[] {
  return scored(rows).filter(({ set, quantity }) => isTime(quantity) && TIME_SETS.includes(set));
}

export function rootMeanSquare(errors: readonly number[]): number {
  return Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
}

export function scoresOf(rows: readonly Compared[]): Scores {
  const errors = phRows(rows).map((row) => errorOf(row) ?? Number.NaN);
  const times = timeRows(rows);
  const timesWithin = times.filter((row) => factorOf(row) <= TIME_FACTOR).length;
  const banded = scored(rows).filter(({ inside }) => inside !== undefined);
  return {
    phRows: errors.length,
    phRmse: rootMeanSquare(errors),
    phBias: errors.reduce((sum, error) => sum + error, 0) / errors.length,
    timeRows: times.length,
    timesWithin,
    timeShare: timesWithin / times.length,
    bandRows: banded.length,
    bandInside: banded.filter(({ inside }) => inside).length,
  };
}

/** Scored rows that do not meet their band. */
export function outsideBand(rows: readonly Compared[]): readonly Compared[] {
  return scored(rows).filter(({ inside }) => inside === false);
}

export function leftOut(rows: readonly Compared[]): readonly Compared[] {
  return rows.filter(({ use }) => use === 'left-out');
}

/** What stands against printing the table: a row outside without a reason, or too many rows left out. */
export function faultsOf(rows: readonly Compared[]): readonly string[] {
  const faults = outsideBand(rows)
    .filter(({ reasonOutside }) => reasonOutside === '')
    .map(
      ({ set, batch, day, quantity }) =>
        `${set} ${batch}${day === undefined ? '' : ` day ${day}`} ${quantity}: outside its band, and observed.csv gives no reason_outside.`,
    );
  const left = leftOut(rows).length;
  if (left > MOST_LEFT_OUT) faults.push(`${left} rows are left out; at most ${MOST_LEFT_OUT} may be.`);
  return faults;
}
