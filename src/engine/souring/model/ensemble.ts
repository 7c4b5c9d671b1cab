// Draws that have been run, with a weight each: what is believed of a batch, before looks and after them. Bands are
// weighted quantiles over the draws; nothing here narrows a band but the weights.

import type { Range } from '../../quantity/range.ts';
import { at, type Course, course, dayBelow, type Trace } from './course.ts';
import { drawOf, type Known } from './draws.ts';

/** One draw and its run. */
export interface Member {
  /** Number of the draw: drawOf(known, index, unknowns) makes it again. */
  readonly index: number;
  readonly unknowns: Float64Array;
  readonly run: Course;
}

/** Draws and what each is worth; the weights sum to 1. */
export interface Ensemble {
  readonly members: readonly Member[];
  readonly weights: Float64Array;
}

/**
 * Runs draws `from` to `from + count` of a batch for so many days. @memory the model of rates.ts
 * @checked test/property/forecast.test.ts: the same seed gives the same runs, however they are split
 */
export function runDraws(
  known: Known,
  which: { readonly from: number; readonly count: number; readonly days: number },
): readonly Member[] {
  const members: Member[] = [];
  for (let index = which.from; index < which.from + which.count; index++) {
    const draw = drawOf(known, index);
    members.push({ index, unknowns: draw.unknowns, run: course(draw.batch, draw.parameters, which.days) });
  }
  return members;
}

/** An ensemble in which every draw counts the same. @arithmetic */
export function evenly(members: readonly Member[]): Ensemble {
  return { members, weights: new Float64Array(members.length).fill(1 / members.length) };
}

/** Weight that may go unheard when a band is read off: a fifth of a per cent of the belief. */
const UNHEARD_FRACTION = 0.002;

/**
 * The draws that are heard: those that weigh least are left out while together they hold no more than 0.2 %.
 * After looks most draws hardly weigh anything, and bands are read off the rest many times quicker.
 * @arithmetic weights scaled to sum to 1 again
 */
export function heard({ members, weights }: Ensemble): Ensemble {
  const lightest = weights.map((_, i) => i).sort((a, b) => (weights[a] as number) - (weights[b] as number));
  let left = UNHEARD_FRACTION;
  const silent = new Set<number>();
  for (const i of lightest) {
    left -= weights[i] as number;
    if (!(left >= 0)) break;
    silent.add(i);
  }
  const kept = members.flatMap((_, i) => (silent.has(i) ? [] : [i]));
  const sum = kept.reduce((total, i) => total + (weights[i] as number), 0);
  return {
    members: kept.map((i) => members[i] as Member),
    weights: Float64Array.from(kept, (i) => (weights[i] as number) / sum),
  };
}

/** Number of evenly weighted draws that would say as much, 1/Σw². @arithmetic Kish's effective sample size */
export function effectiveCount(weights: Float64Array): number {
  let squares = 0;
  for (const weight of weights) squares += weight * weight;
  return squares > 0 ? 1 / squares : 0;
}

/**
 * Weighted quantiles of one value per draw; draws without a value (undefined) count as later than all others.
 * @returns the values at the shares asked; undefined where the share falls among draws without a value
 * @arithmetic step quantile of the weighted sample, halfway between neighbours
 */
export function quantiles(
  values: readonly (number | undefined)[],
  weights: Float64Array,
  shares: readonly number[],
): readonly (number | undefined)[] {
  const order = values
    .map((value, i) => ({ value: value ?? Number.POSITIVE_INFINITY, weight: weights[i] as number }))
    .sort((a, b) => a.value - b.value);
  const total = order.reduce((sum, one) => sum + one.weight, 0);
  return shares.map((share) => {
    let below = 0;
    for (let i = 0; i < order.length; i++) {
      const one = order[i] as { value: number; weight: number };
      const middle = below + one.weight / 2;
      if (middle >= share * total || i === order.length - 1) {
        const before = order[i - 1];
        if (before === undefined || !Number.isFinite(one.value))
          return Number.isFinite(one.value) ? one.value : undefined;
        const beforeMiddle = below - before.weight / 2;
        const part = Math.min(1, Math.max(0, (share * total - beforeMiddle) / (middle - beforeMiddle || 1)));
        return before.value + part * (one.value - before.value);
      }
      below += one.weight;
    }
    return undefined;
  });
}

const BAND = [0.1, 0.5, 0.9] as const;

/** 10th, 50th and 90th percentile of a trace on a day. @arithmetic weighted quantiles */
export function bandAt(ensemble: Ensemble, day: number, trace: Trace): Range {
  const [low, likely, high] = quantiles(
    ensemble.members.map(({ run }) => at(run, day, trace)),
    ensemble.weights,
    BAND,
  ) as [number, number, number];
  return { low, likely, high };
}

/** A day that may not come: ends that are not reached within the run are absent. */
export interface DayBand {
  readonly low?: number;
  readonly likely?: number;
  readonly high?: number;
  /** Share of the draws that reach it within the run. */
  readonly reachedFraction: number;
}

/** A band of one day per draw, with the share of draws in which it comes at all. @arithmetic weighted quantiles */
export function dayBand(ensemble: Ensemble, dayOf: (member: Member) => number | undefined): DayBand {
  const days = ensemble.members.map(dayOf);
  const [low, likely, high] = quantiles(days, ensemble.weights, BAND);
  let reachedFraction = 0;
  for (let i = 0; i < days.length; i++) if (days[i] !== undefined) reachedFraction += ensemble.weights[i] as number;
  return {
    ...(low !== undefined && { low }),
    ...(likely !== undefined && { likely }),
    ...(high !== undefined && { high }),
    reachedFraction,
  };
}

/** When the batch passes a pH. @arithmetic first crossing of each draw */
export function reaches(ensemble: Ensemble, ph: number): DayBand {
  return dayBand(ensemble, ({ run }) => dayBelow(run, ph));
}
