// A heap as a whole: known rows and rows to be found, its goals, and from them the masses, the mix, the water, the ways
// out and what is left at the end. One call for the command line, the workings and the sheet.

import type { Range } from '../quantity/range.ts';
import { material } from '../tables/index.ts';
import { ACCEPTABLE, heapFigure, PREFERRED } from './figures.ts';
import { type Ingredient, type Weighed, weighed } from './ingredient.ts';
import { type Left, leftOf } from './left.ts';
import { type Drying, dryingOf, isWorkable, type Mends, mendsOf, nearestWorkable } from './mends.ts';
import { likelyRows, type Mix, mixOf, moistureOf, perKg, waterToAddKg } from './mix.ts';
import { type Goals, type Question, type Solution, solveMasses } from './solve.ts';

/** A row whose mass is known, or is to be found within limits. */
export type HeapRow =
  | (Weighed & { readonly find?: never })
  | {
      readonly ingredient: Ingredient;
      readonly find: { readonly leastKg?: number | undefined; readonly mostKg?: number | undefined };
    };

export interface HeapPlan {
  readonly rows: readonly Weighed[];
  readonly goals: Goals;
  readonly solution: Solution;
  readonly mix: Mix;
  /** Water to add, kg or litres: part of the solution, or what the goal (or the middle of the preferred range) asks. */
  readonly waterL: number;
  readonly moistureWithWaterPercent: number;
  readonly feasible: boolean;
  readonly mends: Mends | undefined;
  readonly dryToAdd: readonly Drying[];
  readonly left: Left;
}

/** A mass that is to be found stays within so many times what is there. @practice */
const MOST_TIMES = 20;
const AIM = {
  cn: heapFigure('aim', 'cn').likely,
  moisturePercent: heapFigure('aim', 'moisturePercent').likely,
} as const;

/**
 * The masses, the mix and what follows from them.
 *
 * Without goals the mix is feasible where a heap works (acceptable C:N and moisture, water added included), and water
 * is told where it is drier than the preferred range.
 * @source cornell-right-mix
 */
export function planHeap(told: readonly HeapRow[], goals: Goals): HeapPlan {
  const known = told.flatMap((row) =>
    row.find ? [] : [{ massKg: row.massKg.likely, contents: perKg(row.ingredient) }],
  );
  const knownKg = known.reduce((sum, row) => sum + row.massKg, 0);
  const sought = told.flatMap((row) => {
    if (!row.find) return [];
    const { leastKg = 0, mostKg = Math.max(leastKg, MOST_TIMES * knownKg) } = row.find;
    return [{ contents: perKg(row.ingredient), leastKg, mostKg }];
  });
  const question: Question = { known, sought, goals };
  const nearest = solveMasses(question);
  const stands = nearest.met || sought.length === 0 || isWorkable(nearest);
  const solution = stands ? nearest : (nearestWorkable(question) ?? nearest);
  let next = 0;
  const rows = told.map((row) => (row.find ? weighed(row.ingredient, solution.massesKg[next++] ?? 0) : row));
  const mix = mixOf(rows);
  const likely = likelyRows(rows);
  const waterL = waterOf({ goals, solution, mix, likely });
  const moistureWithWaterPercent = moistureOf(likely, waterL);
  const hasGoals = goals.cn !== undefined || goals.moisturePercent !== undefined;
  const reached = { cn: mix.cn?.likely ?? Number.NaN, moisturePercent: moistureWithWaterPercent };
  const feasible = hasGoals ? solution.met : isWorkable(reached);
  const moistureGoal = goals.moisturePercent ?? AIM.moisturePercent;
  const tooWet =
    goals.moisturePercent === undefined
      ? mix.moisturePercent.likely > ACCEPTABLE.moisturePercent.most
      : !solution.moistureMet && mix.moisturePercent.likely > moistureGoal;
  return {
    rows,
    goals,
    solution,
    mix,
    waterL,
    moistureWithWaterPercent,
    feasible,
    mends:
      hasGoals && !solution.met
        ? mendsOf(
            question,
            solution,
            told.map(({ ingredient }) => ingredient.id),
          )
        : undefined,
    dryToAdd:
      tooWet && sought.length === 0
        ? dryingOf(likely, {
            moisturePercent: moistureGoal,
            cn: goals.cn ?? AIM.cn,
            mixCn: mix.cn?.likely ?? Number.NaN,
          })
        : [],
    left: leftOf(rows, mix, finishedDryMatter()),
  };
}

function waterOf(ask: {
  readonly goals: Goals;
  readonly solution: Solution;
  readonly mix: Mix;
  readonly likely: ReturnType<typeof likelyRows>;
}): number {
  const { goals, solution, mix, likely } = ask;
  if (goals.moisturePercent !== undefined) return solution.waterKg;
  const isDry = mix.moisturePercent.likely < PREFERRED.moisturePercent.least;
  return isDry ? waterToAddKg(likely, AIM.moisturePercent) : 0;
}

/** Dry matter of finished compost. @memory data/materials.csv, finished-compost */
export function finishedDryMatter(): Range {
  const figure = material('finished-compost')?.figures.dryMatter;
  if (figure === undefined) throw new Error('the materials table has no finished compost');
  return { low: figure.low, likely: figure.likely, high: figure.high };
}

/**
 * Share of coffee grounds in the loose volume of a heap.
 * @returns percent; 0 without any, NaN where a volume is not known
 * @arithmetic volume over volume
 */
export function coffeePercentOf(rows: readonly Weighed[], volumeOf: (row: Weighed) => number | undefined): number {
  const isCoffee = ({ ingredient, massKg }: Weighed) => ingredient.id === 'coffee-grounds' && massKg.likely > 0;
  if (!rows.some(isCoffee)) return 0;
  const total = rows.reduce((sum, row) => sum + (volumeOf(row) ?? Number.NaN), 0);
  return (100 * rows.filter(isCoffee).reduce((sum, row) => sum + (volumeOf(row) ?? Number.NaN), 0)) / total;
}
