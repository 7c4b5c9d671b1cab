// Masses not yet known, found so that the mix meets its goals: exactly where there are as many unknowns as goals, by
// least squares where there are more or fewer. Goals are straight lines in the masses; where they cannot all be met,
// the mix is sought whose C:N and moisture miss them least, each weighed by half of its preferred range.

import { boundedLeastSquares } from './bounded.ts';
import { PREFERRED } from './figures.ts';
import { cnOf, moistureOf, type PerKg } from './mix.ts';

/** What the mix is to come to. */
export interface Goals {
  readonly cn?: number | undefined;
  readonly moisturePercent?: number | undefined;
}

export interface Known {
  readonly massKg: number;
  readonly contents: PerKg;
}

/** A row whose mass is to be found. */
export interface Sought {
  readonly contents: PerKg;
  readonly leastKg: number;
  readonly mostKg: number;
}

export interface Question {
  readonly known: readonly Known[];
  readonly sought: readonly Sought[];
  readonly goals: Goals;
}

/** 'exact': as many unknowns as goals · 'spread': more unknowns, the smallest that meet them · 'fewer': least squares. */
export type Kind = 'nothing-sought' | 'exact' | 'spread' | 'fewer';

export interface Solution {
  readonly kind: Kind;
  readonly massesKg: readonly number[];
  /** Water that must be added for the goals to be met, as part of the answer. */
  readonly waterKg: number;
  /** C:N and moisture with that water. */
  readonly cn: number;
  readonly moisturePercent: number;
  /** Whether every goal is met. */
  readonly met: boolean;
  readonly cnMet: boolean;
  readonly moistureMet: boolean;
}

/** Half of the preferred ranges: a miss of this much weighs 1. @source composting-handbook chapter 4 table 4.2 */
export const HALF_RANGE = {
  cn: (PREFERRED.cn.most - PREFERRED.cn.least) / 2,
  moisturePercent: (PREFERRED.moisturePercent.most - PREFERRED.moisturePercent.least) / 2,
} as const;

/** A goal counts as met within this: finer than any bucket is filled. @practice */
export const MET_WITHIN = { cnFraction: 0.01, moisturePercent: 0.5 } as const;

/** Water is worth its can where it lowers the miss by so much: a tenth of half a range, squared. @practice */
const WORTH_WATER = 0.01;
/** Among mixes that meet the goals, the one of the least masses: a ridge too small to move a goal. */
const RIDGE = 1e-6;
const START_SHARES = [0, 0.02, 0.2, 1];
const WATER: PerKg = { dryFraction: 0, carbonFraction: 0, nitrogenFraction: 0 };

/**
 * The masses that meet the goals, or come nearest. Water is put in only where the goals cannot be met without it and
 * come nearer with it.
 *
 *   moisture: Σ Q (M − G) = 0;   C:N: Σ Q (100 − M)(C − R N) = 0;   least ≤ Q ≤ most
 *
 * @range at least one row of a known mass; otherwise nothing at all would meet every goal
 * @source cornell-right-mix two linear equations for two unknown masses
 */
export function solveMasses(question: Question): Solution {
  const dry = best({ ...question, water: false });
  if (dry.met || question.goals.moisturePercent === undefined) return dry;
  const wet = best({ ...question, water: true });
  return wet.waterKg > 0 && (wet.met || missOf(wet, question.goals) < missOf(dry, question.goals) - WORTH_WATER)
    ? wet
    : dry;
}

/**
 * The masses that meet the goals, or undefined: no search for the nearest, so quick enough to try many partners.
 * @source cornell-right-mix two linear equations for two unknown masses
 */
export function meetingMasses(question: Question): Solution | undefined {
  const kind = kindOf(question.sought.length, question.goals);
  for (const water of question.goals.moisturePercent === undefined ? [false] : [false, true]) {
    const asked = { ...question, water };
    const found = solution(asked, kind, straight(asked, question.goals));
    if (found.met) return found;
  }
  return undefined;
}

/** How far a mix is from its goals: squares of the misses over half of the preferred ranges. @arithmetic */
export function missOf(mix: { readonly cn: number; readonly moisturePercent: number }, goals: Goals): number {
  const cn = goals.cn === undefined ? 0 : (mix.cn - goals.cn) / HALF_RANGE.cn;
  const wet =
    goals.moisturePercent === undefined
      ? 0
      : (mix.moisturePercent - goals.moisturePercent) / HALF_RANGE.moisturePercent;
  const miss = cn * cn + wet * wet;
  return Number.isFinite(miss) ? miss : Number.POSITIVE_INFINITY;
}

type Asked = Question & { readonly water: boolean };

function best(asked: Asked): Solution {
  const { sought, goals } = asked;
  if (sought.length === 0) return solution(asked, 'nothing-sought', asked.water ? [waterFor(asked)] : []);
  const kind = kindOf(sought.length, goals);
  const line = straight(asked, goals);
  const linear = solution(asked, kind, line);
  if (linear.met) return linear;
  const starts = [
    line,
    ...(goals.cn === undefined ? [] : [straight(asked, { cn: goals.cn })]),
    ...(goals.moisturePercent === undefined ? [] : [straight(asked, { moisturePercent: goals.moisturePercent })]),
    ...spreadStarts(asked),
  ];
  const ends = starts.map((start) => solution(asked, kind, descend(asked, start)));
  return ends.reduce((a, b) => (missOf(b, goals) < missOf(a, goals) ? b : a), linear);
}

/** The miss has more than one valley, so the search starts from all over: a grid where unknowns are few, else the axes. */
function spreadStarts(asked: Asked): readonly (readonly number[])[] {
  const { lows, highs } = boundsOf(asked);
  const at = (index: number, wayFraction: number) =>
    (lows[index] ?? 0) + wayFraction * ((highs[index] ?? 0) - (lows[index] ?? 0));
  const shares = lows.length > 2 ? START_SHARES.filter((share) => share !== 0.02) : START_SHARES;
  if (lows.length > 3) return [lows, highs, ...lows.map((_, j) => lows.map((low, i) => (i === j ? at(j, 0.2) : low)))];
  let starts: readonly (readonly number[])[] = [[]];
  lows.forEach((_, j) => {
    starts = starts.flatMap((start) => shares.map((share) => [...start, at(j, share)]));
  });
  return starts;
}

/** Which goals a mix meets. @practice within 1 % of a C:N, half a point of moisture */
export function metBy(mix: { readonly cn: number; readonly moisturePercent: number }, goals: Goals) {
  const { cn, moisturePercent } = goals;
  const cnMet = cn === undefined || Math.abs(mix.cn - cn) <= MET_WITHIN.cnFraction * cn;
  const moistureMet =
    moisturePercent === undefined || Math.abs(mix.moisturePercent - moisturePercent) <= MET_WITHIN.moisturePercent;
  return { met: cnMet && moistureMet, cnMet, moistureMet };
}

/** How unknowns and goals compare in number. @arithmetic */
export function kindOf(soughtCount: number, goals: Goals): Kind {
  if (soughtCount === 0) return 'nothing-sought';
  const goalCount = Number(goals.cn !== undefined) + Number(goals.moisturePercent !== undefined);
  return soughtCount === goalCount ? 'exact' : soughtCount > goalCount ? 'spread' : 'fewer';
}

/** All rows with the unknowns put in. */
function rowsOf({ known, sought, water }: Asked, x: readonly number[]): readonly Known[] {
  const found = sought.map(({ contents }, j) => ({ massKg: x[j] ?? 0, contents }));
  return [...known, ...found, ...(water ? [{ massKg: x[sought.length] ?? 0, contents: WATER }] : [])];
}

function waterFor({ known, goals }: Asked): number {
  const massKg = known.reduce((sum, row) => sum + row.massKg, 0);
  const dryKg = known.reduce((sum, row) => sum + row.massKg * row.contents.dryFraction, 0);
  const goal = (goals.moisturePercent ?? 0) / 100;
  return Math.max(0, (goal * massKg - (massKg - dryKg)) / (1 - goal));
}

function solution(asked: Asked, kind: Kind, x: readonly number[]): Solution {
  const rows = rowsOf(asked, x);
  const { goals } = asked;
  const cn = cnOf(rows);
  const moisturePercent = moistureOf(rows);
  return {
    kind,
    massesKg: x.slice(0, asked.sought.length),
    waterKg: asked.water ? (x[asked.sought.length] ?? 0) : 0,
    cn,
    moisturePercent,
    ...metBy({ cn, moisturePercent }, goals),
  };
}

function boundsOf({ sought, water, known }: Asked): { readonly lows: number[]; readonly highs: number[] } {
  const massKg = known.reduce((sum, row) => sum + row.massKg, 0);
  return {
    lows: [...sought.map(({ leastKg }) => leastKg), ...(water ? [0] : [])],
    highs: [...sought.map(({ mostKg }) => mostKg), ...(water ? [100 * massKg] : [])],
  };
}

/** The goals as straight lines, solved at once. */
function straight(asked: Asked, goals: Goals): readonly number[] {
  const { known } = asked;
  const massKg = known.reduce((sum, row) => sum + row.massKg, 0) || 1;
  const columns = rowsOf(asked, []).slice(known.length);
  const rows: number[][] = [];
  const right: number[] = [];
  const put = (of: (contents: PerKg) => number) => {
    const row = columns.map(({ contents }) => of(contents));
    const size = Math.hypot(...row) || 1;
    rows.push(row.map((one) => one / size));
    right.push(-known.reduce((sum, one) => sum + one.massKg * of(one.contents), 0) / size);
  };
  const { cn, moisturePercent } = goals;
  if (moisturePercent !== undefined) put(({ dryFraction }) => 1 - dryFraction - moisturePercent / 100);
  if (cn !== undefined) put(({ carbonFraction, nitrogenFraction }) => carbonFraction - cn * nitrogenFraction);
  return ridged(rows, right, boundsOf(asked), massKg);
}

function ridged(
  rows: readonly (readonly number[])[],
  right: readonly number[],
  bounds: { readonly lows: number[]; readonly highs: number[] },
  massKg: number,
): readonly number[] {
  const count = bounds.lows.length;
  const ridge = Array.from({ length: count }, (_, j) =>
    Array.from({ length: count }, (_2, i) => (i === j ? RIDGE : 0)),
  );
  const scaled = { lows: bounds.lows.map((one) => one / massKg), highs: bounds.highs.map((one) => one / massKg) };
  const x = boundedLeastSquares({
    rows: [...rows, ...ridge],
    right: [...right.map((one) => one / massKg), ...ridge.map(() => 0)],
    ...scaled,
  });
  return x.map((one) => one * massKg);
}

/** Gauss-Newton steps within the bounds from a start, each shortened until it lowers the miss. */
function descend(asked: Asked, start: readonly number[]): readonly number[] {
  const { goals, known } = asked;
  const massKg = known.reduce((sum, row) => sum + row.massKg, 0) || 1;
  const { lows, highs } = boundsOf(asked);
  const miss = (x: readonly number[]) =>
    missOf({ cn: cnOf(rowsOf(asked, x)), moisturePercent: moistureOf(rowsOf(asked, x)) }, goals);
  let x = start;
  let last = miss(x);
  for (let step = 0; step < 30; step++) {
    const { rows, right } = tangent(asked, x);
    if (right.some((one) => !Number.isFinite(one))) return x;
    const from = x;
    const move = ridged(
      rows,
      right,
      { lows: lows.map((one, j) => one - (from[j] ?? 0)), highs: highs.map((one, j) => one - (from[j] ?? 0)) },
      massKg,
    );
    let share = 1;
    let next = x;
    let now = last;
    while (share > 1e-6) {
      next = from.map((one, j) => Math.min(highs[j] ?? one, Math.max(lows[j] ?? 0, one + share * (move[j] ?? 0))));
      now = miss(next);
      if (now < last) break;
      share /= 2;
    }
    if (!(now < last * (1 - 1e-12))) return x;
    [x, last] = [next, now];
  }
  return x;
}

/** The misses and how they change with each unknown, at a point. */
function tangent(asked: Asked, x: readonly number[]): { rows: number[][]; right: number[] } {
  const all = rowsOf(asked, x);
  const columns = all.slice(asked.known.length);
  const sum = (of: (contents: PerKg) => number) => all.reduce((total, row) => total + row.massKg * of(row.contents), 0);
  const massKg = sum(() => 1);
  const nitrogenKg = sum(({ nitrogenFraction }) => nitrogenFraction);
  const { cn, moisturePercent } = asked.goals;
  const rows: number[][] = [];
  const right: number[] = [];
  if (moisturePercent !== undefined) {
    const now = moistureOf(all) / 100;
    rows.push(
      columns.map(({ contents }) => (100 * (1 - contents.dryFraction - now)) / massKg / HALF_RANGE.moisturePercent),
    );
    right.push((moisturePercent - 100 * now) / HALF_RANGE.moisturePercent);
  }
  if (cn !== undefined) {
    const now = cnOf(all);
    rows.push(
      columns.map(({ contents: c }) => (c.carbonFraction - now * c.nitrogenFraction) / nitrogenKg / HALF_RANGE.cn),
    );
    right.push((cn - now) / HALF_RANGE.cn);
  }
  return { rows, right };
}
