// Every published batch run through the engine: once at likely values, and as seeded draws for the band that eight
// runs in ten fall in. A row is inside when what was observed, with its own spread and rounding, meets that band.
// The scores are counted in scores.ts.

import { course } from '#engine/souring/model/course.ts';
import { drawOf, normals, uniforms } from '#engine/souring/model/draws.ts';
import { quantiles } from '#engine/souring/model/ensemble.ts';
import { likelyParameters } from '#engine/souring/model/parameters.ts';
import { type Filled, fill, LIKELY, spreadOf, type Take, VARIED_BY_DRAWS, withYeast } from './batch.ts';
import { type Conditions, type Observed, readConditions, readObserved } from './read.ts';
import { isTime, type Ran, readOff } from './read-off.ts';

/** Draws of each batch. */
export const DRAWS = 200;
/** One seed for all: the table is the same whenever it is made. */
export const SEED = 20_261_125;
/** A run for a time row goes on for this many times the published time, so that lateness shows. */
const GOES_ON = 1.7;
const Z_90 = 1.2815515655446004;

/** Ends of a band of eight in ten; an end that does not come within the run is absent. */
export interface Band {
  readonly low: number | undefined;
  readonly high: number | undefined;
}

/** A published number beside what the engine says. */
export interface Compared extends Observed {
  /** At likely values; undefined when a day does not come within the run. */
  readonly predicted: number | undefined;
  /** Absent where the draws were not run. */
  readonly band: Band | undefined;
  readonly inside: boolean | undefined;
  /** Days that were run. */
  readonly runDays: number;
}

/** Ends of what was observed: its spread where printed, else its rounding; a single end leaves the other open. */
export function observedSpan(row: Observed): { readonly low: number; readonly high: number } {
  const { low, value, high, printedWithin } = row;
  if (value !== undefined) return { low: low ?? value - printedWithin, high: high ?? value + printedWithin };
  return { low: low ?? Number.NEGATIVE_INFINITY, high: high ?? Number.POSITIVE_INFINITY };
}

/** Whether observed and predicted meet; a day that does not come lies beyond every end. */
export function meets(row: Observed, band: Band): boolean {
  const span = observedSpan(row);
  const low = band.low ?? Number.POSITIVE_INFINITY;
  const high = band.high ?? Number.POSITIVE_INFINITY;
  return low <= span.high && high >= span.low;
}

/** Days to run so that every row of the batch is reached. */
function runDaysOf(conditions: Conditions, rows: readonly Observed[]): number {
  let days = conditions.of.get('days')?.likely ?? 0;
  for (const row of rows) {
    if (row.day !== undefined) days = Math.max(days, row.day);
    if (isTime(row.quantity)) days = Math.max(days, GOES_ON * (row.value ?? row.high ?? row.low ?? 0));
  }
  return Math.ceil(days);
}

/** Values of the conditions that the six unknowns leave alone, drawn within their bands. */
function drawnTake(index: number): Take {
  const next = normals(uniforms(SEED + 104_729, index));
  return (quantity, band) => {
    if (VARIED_BY_DRAWS.includes(quantity) || band.low === band.high) return band.likely;
    const z = next();
    const side = z < 0 ? band.low : band.high;
    const value = band.likely + ((side - band.likely) * Math.abs(z)) / Z_90;
    return Math.max(band.low / 2, value);
  };
}

/** The run at likely values. */
function likelyRun(conditions: Conditions, days: number): Ran {
  const filled = fill(conditions, LIKELY, days);
  const parameters = withYeast(likelyParameters, filled);
  return { filled, parameters, run: course(filled.batch, parameters, days) };
}

/** The runs of the draws. */
function drawnRuns(conditions: Conditions, days: number, count: number): readonly Ran[] {
  const spread = spreadOf(conditions);
  const runs: Ran[] = [];
  for (let index = 0; index < count; index++) {
    const filled = fill(conditions, drawnTake(index), days);
    const draw = drawOf({ batch: filled.batch, spread, seed: SEED }, index);
    const drawn: Filled = { ...filled, batch: draw.batch };
    const parameters = withYeast(draw.parameters, drawn);
    runs.push({ filled: drawn, parameters, run: course(draw.batch, parameters, days) });
  }
  return runs;
}

/** All rows that a run answers, with the band where `draws` is above 0. Set L has no run: hold.ts compares it. */
export function compareAll(draws: number): readonly Compared[] {
  const observed = readObserved();
  return readConditions()
    .filter(({ set }) => set !== 'L')
    .flatMap((conditions) => {
      const rows = observed.filter(({ set, batch }) => set === conditions.set && batch === conditions.batch);
      if (rows.length === 0) throw new Error(`${conditions.set} ${conditions.batch}: nothing observed`);
      return compareBatch(conditions, rows, draws);
    });
}

function compareBatch(conditions: Conditions, rows: readonly Observed[], draws: number): readonly Compared[] {
  const runDays = runDaysOf(conditions, rows);
  const likely = likelyRun(conditions, runDays);
  const drawn = drawnRuns(conditions, runDays, draws);
  const even = new Float64Array(drawn.length).fill(1 / Math.max(1, drawn.length));
  return rows.map((row) => {
    const predicted = readOff(likely, row.quantity, row.day);
    if (drawn.length === 0) return { ...row, predicted, band: undefined, inside: undefined, runDays };
    const [low, high] = quantiles(
      drawn.map((one) => readOff(one, row.quantity, row.day)),
      even,
      [0.1, 0.9],
    );
    const band: Band = { low, high };
    return { ...row, predicted, band, inside: meets(row, band), runDays };
  });
}
