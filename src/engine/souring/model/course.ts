// A batch run forward in time: fourth-order Runge-Kutta over the hourly rates, read off every six hours.
// One run is one set of parameters; what is not known about a batch is many runs (draws.ts, forecast.ts).

import { sourOf } from './acidity.ts';
import { warmthFactor } from './cardinal.ts';
import type { Mixture } from './mixture.ts';
import type { Parameters } from './parameters.ts';
import { type Rates, ratesOf, type Warmed } from './rates.ts';
import { AT, STARTER_SHARE, STATES, startOf } from './state.ts';

/** Hours between the points that are kept. */
export const KEPT_EVERY_H = 6;
/** A step is at most this long, and so short that growth stays small within it and hunger does not swing. */
const LONGEST_STEP_H = 2;
const SHORTEST_STEP_H = 0.2;
const GROWTH_TIMES_STEP = 0.5;
const HUNGER_TIMES_STEP = 1.1;
/** Sugar at which the hunger of bacteria turns steep; only the length of a step rests on it. */
const HALF_SUGAR_G_PER_L = 0.5;
const { bound: BOUND, slow: SLOW, sugar: SUGAR } = AT;
const GUILDS = [AT.early, AT.late, AT.yeast, AT.entero] as const;

export interface Batch {
  readonly mixture: Mixture;
  /** Temperature of the liquid at every full hour; temperature.ts makes it. */
  readonly hourlyC: Float64Array;
  /** 0 airtight to 1 open. */
  readonly opennessFraction: number;
  /** What is done to it later on, in the order of the days; nothing if absent. */
  readonly changes?: readonly Change[] | undefined;
}

/** Something done to a batch on a day. It takes effect at the first point kept at or after that day. */
export interface Change {
  readonly day: number;
  readonly addHexoseGPerL?: number | undefined;
  /** Living lactic bacteria, dry cells; water and acid that come with them are not counted. */
  readonly addStarterGPerL?: number | undefined;
  /** From then on. */
  readonly opennessFraction?: number | undefined;
  /** Film yeast back to what there was at the start. */
  readonly skim?: boolean | undefined;
}

/** What can be read off a run. */
export type Trace =
  | 'ph'
  | 'boundGPerL'
  | 'sugarGPerL'
  | 'slowGPerL'
  | 'lacticGPerL'
  | 'aceticGPerL'
  | 'butyricGPerL'
  | 'ethanolGPerL'
  | 'mannitolGPerL'
  | 'otherGPerL'
  | 'co2GPerL'
  | 'ammoniaMolPerL'
  | 'lacticCellsGPerL'
  | 'yeastCellsGPerL'
  | 'enteroCellsGPerL';

/** A run: one value every KEPT_EVERY_H hours from the filling on, the last at or after the last day asked. */
export type Course = { readonly [name in Trace]: Float64Array } & {
  readonly points: number;
  /** Steps it took. */
  readonly stepsCount: number;
};

const PLAIN: readonly (readonly [Trace, number])[] = [
  ['boundGPerL', AT.bound],
  ['sugarGPerL', AT.sugar],
  ['slowGPerL', AT.slow],
  ['lacticGPerL', AT.lactic],
  ['aceticGPerL', AT.acetic],
  ['butyricGPerL', AT.butyric],
  ['ethanolGPerL', AT.ethanol],
  ['mannitolGPerL', AT.mannitol],
  ['otherGPerL', AT.other],
  ['co2GPerL', AT.co2],
  ['ammoniaMolPerL', AT.ammonia],
  ['yeastCellsGPerL', AT.yeast],
  ['enteroCellsGPerL', AT.entero],
];

/** Share of full speed of each guild at a temperature. @source rosso-1993 cardinal temperatures; enzymes double every 10 °C (memory) */
export function warmedAt(parameters: Parameters, temperatureC: number): Warmed {
  return {
    earlyFraction: warmthFactor(parameters.early, temperatureC),
    lateFraction: warmthFactor(parameters.late, temperatureC),
    yeastFraction: warmthFactor(parameters.yeast, temperatureC),
    enteroFraction: warmthFactor(parameters.entero, temperatureC),
    foulFraction: warmthFactor(parameters.foul, temperatureC),
    enzymeFactor: temperatureC > 0 ? 2 ** ((temperatureC - 25) / 10) : 0,
  };
}

/**
 * Runs a batch forward from its filling.
 *
 * Classical fourth-order steps, shorter while a guild grows or sugar runs out; states are held at 0 from below.
 * @range days up to what `hourlyC` covers; a temperature that is not known stops all growth, and the pH stays
 * @returns the traces on a grid of KEPT_EVERY_H hours
 * @memory the model of rates.ts; its errors against published series stand in docs/validation.md
 * @checked souring/model/course.test.ts against an adaptive solver; test/validation
 */
export function course(batch: Batch, parameters: Parameters, days: number): Course {
  const points = Math.ceil((days * 24) / KEPT_EVERY_H) + 1;
  const made = {} as Record<Trace, Float64Array>;
  const names: Trace[] = ['ph', 'lacticCellsGPerL', ...PLAIN.map(([name]) => name)];
  for (const name of names) made[name] = new Float64Array(points);
  let rates = ratesOf(batch.mixture, parameters, batch.opennessFraction);
  const sour = sourOf(batch.mixture);
  const y = startOf(batch.mixture, parameters);
  const trial = new Float64Array(STATES);
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(STATES)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const warmth = warmedByHour(parameters, batch.hourlyC);

  const keep = (point: number) => {
    (made.ph as Float64Array)[point] = sour(y);
    for (const [name, place] of PLAIN) made[name][point] = y[place] as number;
    made.lacticCellsGPerL[point] = (y[AT.early] as number) + (y[AT.late] as number);
  };
  const changes = batch.changes ?? [];
  let done = 0;
  let stepsCount = 0;
  const change = (point: number) => {
    for (let next = changes[done]; next && next.day * 24 <= point * KEPT_EVERY_H + 1e-9; next = changes[++done]) {
      makeChange(y, next, parameters);
      if (next.opennessFraction !== undefined) rates = ratesOf(batch.mixture, parameters, next.opennessFraction);
    }
  };
  keep(0);
  change(0);
  for (let point = 1; point < points; point++) {
    const untilH = point * KEPT_EVERY_H;
    let timeH = untilH - KEPT_EVERY_H;
    for (; timeH < untilH - 1e-9; stepsCount++) timeH += advance({ y, trial, slopes, rates, warmth, timeH, untilH });
    keep(point);
    change(point);
  }
  return { ...made, points, stepsCount };
}

/** Puts a change into the state; what is not a number adds nothing. */
function makeChange(y: Float64Array, change: Change, parameters: Parameters): void {
  const { addHexoseGPerL = 0, addStarterGPerL = 0, skim } = change;
  if (addHexoseGPerL > 0) y[AT.sugar] = (y[AT.sugar] as number) + addHexoseGPerL;
  if (addStarterGPerL > 0) {
    y[AT.early] = (y[AT.early] as number) + STARTER_SHARE.early * addStarterGPerL;
    y[AT.late] = (y[AT.late] as number) + STARTER_SHARE.late * addStarterGPerL;
  }
  if (skim === true) y[AT.film] = Math.min(y[AT.film] as number, parameters.film.startFraction);
}

/** Warmth factors at any hour: between full hours the nearest one's, worked out once. */
function warmedByHour(parameters: Parameters, hourlyC: Float64Array): (timeH: number) => Warmed {
  const last = hourlyC.length - 1;
  const known: (Warmed | undefined)[] = [];
  let same: { readonly temperatureC: number; readonly warmed: Warmed } | undefined;
  return (timeH) => {
    const at = Math.min(last, Math.round(timeH));
    const found = known[at];
    if (found) return found;
    const temperatureC = hourlyC[at] as number;
    if (same?.temperatureC !== temperatureC) same = { temperatureC, warmed: warmedAt(parameters, temperatureC) };
    known[at] = same.warmed;
    return same.warmed;
  };
}

interface Step {
  readonly y: Float64Array;
  readonly trial: Float64Array;
  readonly slopes: readonly [Float64Array, Float64Array, Float64Array, Float64Array];
  readonly rates: Rates;
  readonly warmth: (timeH: number) => Warmed;
  readonly timeH: number;
  readonly untilH: number;
}

/** The longest step the moment allows: by sugar running out, which swings when stepped over, and by growth. */
function allowedH(y: Float64Array, change: Float64Array): number {
  const sugar = (y[SUGAR] as number) + 1e-6;
  const eaten = -(change[BOUND] as number) - (change[SLOW] as number) - (change[SUGAR] as number);
  const hunger = (eaten * HALF_SUGAR_G_PER_L) / (sugar * (HALF_SUGAR_G_PER_L + sugar));
  let growth = 0;
  for (const guild of GUILDS) {
    const pace = Math.abs(change[guild] as number) / ((y[guild] as number) + 1e-12);
    if (pace > growth) growth = pace;
  }
  return Math.min(LONGEST_STEP_H, HUNGER_TIMES_STEP / (hunger + 1e-9), GROWTH_TIMES_STEP / (growth + 1e-9));
}

/** One step of the classical Runge-Kutta method, in place; answers its length in hours. */
function advance({ y, trial, slopes, rates, warmth, timeH, untilH }: Step): number {
  const [k1, k2, k3, k4] = slopes;
  rates(y, warmth(timeH), k1);
  const stepH = Math.min(untilH - timeH, Math.max(SHORTEST_STEP_H, allowedH(y, k1)));
  const half = stepH / 2;
  const middle = warmth(timeH + half);
  for (let i = 0; i < STATES; i++) trial[i] = (y[i] as number) + half * (k1[i] as number);
  rates(trial, middle, k2);
  for (let i = 0; i < STATES; i++) trial[i] = (y[i] as number) + half * (k2[i] as number);
  rates(trial, middle, k3);
  for (let i = 0; i < STATES; i++) trial[i] = (y[i] as number) + stepH * (k3[i] as number);
  rates(trial, warmth(timeH + stepH), k4);
  for (let i = 0; i < STATES; i++) {
    const slope = (k1[i] as number) + 2 * ((k2[i] as number) + (k3[i] as number)) + (k4[i] as number);
    const next = (y[i] as number) + (stepH / 6) * slope;
    y[i] = Math.max(next, 0);
  }
  return stepH;
}

/** A trace at a day, on the straight line between the points beside it; the last point beyond the end. @arithmetic */
export function at(run: Course, day: number, name: Trace): number {
  const place = Math.min(run.points - 1, Math.max(0, (day * 24) / KEPT_EVERY_H));
  const before = Math.floor(place);
  const after = Math.min(run.points - 1, before + 1);
  const values = run[name];
  const from = values[before] as number;
  return from + (place - before) * ((values[after] as number) - from);
}

/** The first day at which the pH is at or below a line, or undefined if it is not within the run. @arithmetic */
export function dayBelow(run: Course, ph: number): number | undefined {
  for (let point = 0; point < run.points; point++) {
    const here = run.ph[point] as number;
    if (!(here <= ph)) continue;
    if (point === 0) return 0;
    const before = run.ph[point - 1] as number;
    return ((point - 1 + (before - ph) / (before - here)) * KEPT_EVERY_H) / 24;
  }
  return undefined;
}
