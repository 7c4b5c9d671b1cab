// What is to be expected of a batch, day by day and as dates: the draws read off as bands. Every figure here is a
// 10th, 50th and 90th percentile over the draws, never a constant added to a line.

import type { Range } from '../../quantity/range.ts';
import { HELD_PH, holdDays, READY_APART_DAYS, READY_PH } from '../lines.ts';
import { at, KEPT_EVERY_H } from './course.ts';
import { type Known, UNKNOWNS } from './draws.ts';
import { bandAt, type DayBand, dayBand, type Ensemble, type Member, quantiles, reaches } from './ensemble.ts';
import { readingSd } from './evidence.ts';

/** What to expect on one day. */
export interface DayExpected {
  readonly day: number;
  readonly ph: Range;
  readonly sugarGPerL: Range;
  readonly lacticGPerL: Range;
  readonly aceticGPerL: Range;
  readonly ethanolGPerL: Range;
  /** All gas since filling, as CO2. */
  readonly co2GPerL: Range;
  /** Nitrogen let go as ammonia since filling. */
  readonly ammoniaNMgPerL: Range;
}

export interface Forecast {
  readonly days: readonly DayExpected[];
  /** When it passes each pH. */
  readonly reach: { readonly '4.6': DayBand; readonly '4.2': DayBand; readonly '4.0': DayBand };
  /** From when it may be called ready: two days at or below 4.2. */
  readonly ready: DayBand;
  /** When it has stood long enough at or below 4.0 for its warmth. */
  readonly held: DayBand;
  /** The lowest pH of the run. */
  readonly plateauPh: Range;
}

const MG_N_PER_MOL = 14007;

/** First day from which a run has stood so long at or below a pH without a break. */
function stoodBelow(member: Member, ph: number, days: number): number | undefined {
  let since: number | undefined;
  for (let point = 0; point < member.run.points; point++) {
    const day = (point * KEPT_EVERY_H) / 24;
    if (!((member.run.ph[point] as number) <= ph)) since = undefined;
    else since ??= day;
    if (since !== undefined && day - since >= days - 1e-9) return since + days;
  }
  return undefined;
}

/**
 * The day on which the hold is done: time at or below pH 4.0, each hour counted against the days asked at its warmth.
 *
 *   Σ Δt / holdDays(T) ≥ 1; a rise above 4.0 starts it anew
 *
 * @returns a day, or undefined where the run ends before
 * @source breidt-caldwell-2011 the days by temperature are our caution
 */
function heldDay(member: Member, hourlyC: Float64Array, offsetC: number): number | undefined {
  let done = 0;
  let stood = false;
  for (let point = 0; point < member.run.points; point++) {
    const below = (member.run.ph[point] as number) <= HELD_PH;
    const hour = point * KEPT_EVERY_H;
    if (below && stood) {
      const temperatureC = (hourlyC[Math.min(hour, hourlyC.length - 1)] as number) + offsetC;
      done += KEPT_EVERY_H / 24 / holdDays(temperatureC);
      if (done >= 1 - 1e-9) return hour / 24;
    }
    if (!below) done = 0;
    stood = below;
  }
  return undefined;
}

/**
 * What to expect of a batch from its draws.
 * @range bands reach as far as the runs do
 * @memory the model of rates.ts; its errors against published series stand in docs/validation.md
 * @checked test/property/forecast.test.ts
 */
export function forecast(ensemble: Ensemble, known: Known, days: number): Forecast {
  const warmthAt = UNKNOWNS.indexOf('warmth');
  const offsetOf = (member: Member) => known.spread.warmthC * (member.unknowns[warmthAt] as number);
  const expected: DayExpected[] = [];
  for (let day = 0; day <= days; day++) {
    const ammonia = bandAt(ensemble, day, 'ammoniaMolPerL');
    expected.push({
      day,
      ph: bandAt(ensemble, day, 'ph'),
      sugarGPerL: bandAt(ensemble, day, 'sugarGPerL'),
      lacticGPerL: bandAt(ensemble, day, 'lacticGPerL'),
      aceticGPerL: bandAt(ensemble, day, 'aceticGPerL'),
      ethanolGPerL: bandAt(ensemble, day, 'ethanolGPerL'),
      co2GPerL: bandAt(ensemble, day, 'co2GPerL'),
      ammoniaNMgPerL: {
        low: ammonia.low * MG_N_PER_MOL,
        likely: ammonia.likely * MG_N_PER_MOL,
        high: ammonia.high * MG_N_PER_MOL,
      },
    });
  }
  return {
    days: expected,
    reach: { '4.6': reaches(ensemble, 4.6), '4.2': reaches(ensemble, READY_PH), '4.0': reaches(ensemble, HELD_PH) },
    ready: dayBand(ensemble, (member) => stoodBelow(member, READY_PH, READY_APART_DAYS)),
    held: dayBand(ensemble, (member) => heldDay(member, known.batch.hourlyC, offsetOf(member))),
    plateauPh: plateau(ensemble),
  };
}

/** Lowest pH of each run, as a band. @arithmetic */
function plateau({ members, weights }: Ensemble): Range {
  const lowest = members.map(({ run }) => run.ph.reduce((a, b) => Math.min(a, b), 14));
  const [low, likely, high] = quantiles(lowest, weights, [0.1, 0.5, 0.9]) as [number, number, number];
  return { low, likely, high };
}

/**
 * The band a reading with such a tool should fall in on a day: what the draws say, widened by the tool's error and
 * the model's.
 * @arithmetic quantiles of each draw blurred by its error, by the normal law at five points
 */
export function readingBand(ensemble: Ensemble, day: number, by: 'meter' | 'strip'): Range {
  const sd = readingSd(by);
  const values: number[] = [];
  const weights: number[] = [];
  ensemble.members.forEach(({ run }, m) => {
    const ph = at(run, day, 'ph');
    for (const [z, share] of BLUR) {
      values.push(ph + z * sd);
      weights.push((ensemble.weights[m] as number) * share);
    }
  });
  const [low, likely, high] = quantiles(values, Float64Array.from(weights), [0.1, 0.5, 0.9]) as [
    number,
    number,
    number,
  ];
  return { low, likely, high };
}

/** Five-point Gauss-Hermite rule for a standard normal. @arithmetic */
const BLUR: readonly (readonly [z: number, share: number])[] = [
  [-2.8569700138728, 0.0112574113277207],
  [-1.3556261799742, 0.2220759220056126],
  [0, 0.5333333333333333],
  [1.3556261799742, 0.2220759220056126],
  [2.8569700138728, 0.0112574113277207],
];
