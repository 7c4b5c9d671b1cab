// Which answer of the cover is wanted: first the least shortfall, among those the least cost (or the least bought),
// among those the least work. Each stage is solved by itself, and its value is kept as a row for the next.

import type { Nutrient } from '../need.ts';
import { type CoverInput, missingG, type Outlook } from './input.ts';
import { type Change, type ColumnTag, type CoverModel, coverModel, minutesPerKg } from './model.ts';
import { addRow, type LinearProgram, type RowList, type Solution, type Solve } from './program.ts';

/**
 * What a share of need left open weighs. Nitrogen twice: the season's yield hangs on this season's nitrogen, while
 * a soil holds phosphorus and potassium over from year to year. Our choice, no source.
 */
export const WEIGHTS: Readonly<Record<Nutrient, number>> = { n: 2, p: 1, k: 1 };

/** Work counted for a kilogram carried, beside its told minutes, so that of two equal ways the lighter is taken. */
const CARRIED_MINUTES_PER_KG = 0.01;

/** A need below this weighs by the gram, not by its share: a bed that misses next to nothing is not put first. */
const LEAST_NEED_G_PER_M2 = 0.1;

export type Stage = 'short' | 'cost' | 'bought' | 'work';
type Best = Extract<Solution, { readonly status: 'best' }>;

/** The answer of all stages. */
export type Staged =
  | {
      readonly ok: true;
      readonly model: CoverModel;
      /** What was changed of the input. */
      readonly change: Change;
      readonly values: ReadonlyMap<Stage, number>;
      readonly solutions: ReadonlyMap<Stage, Best>;
      /** The answer that keeps every stage. */
      readonly last: Best;
    }
  | { readonly ok: false; readonly stage: Stage; readonly solution: Exclude<Solution, Best> };

/** The stages of an aim. What can be had for nothing is bought last, so it needs a stage of its own. @arithmetic */
export function stagesOf(input: CoverInput): readonly Stage[] {
  if (input.aim === 'least-purchase') return ['short', 'bought', 'cost', 'work'];
  const free = input.sources.some(({ costPerKg }) => costPerKg === 0);
  return free ? ['short', 'cost', 'bought', 'work'] : ['short', 'cost', 'work'];
}

function weightOf(tag: ColumnTag, stage: Stage, outlook: Outlook): number {
  switch (tag.kind) {
    case 'short': {
      if (stage !== 'short') return 0;
      const { bed, nutrient } = tag;
      const needG = Math.max(
        bed.needG?.[nutrient] ?? 0,
        missingG(bed, nutrient, outlook),
        LEAST_NEED_G_PER_M2 * bed.areaM2,
      );
      return (WEIGHTS[nutrient] * bed.areaM2) / needG;
    }
    case 'use':
      return stage === 'work' ? minutesPerKg(tag.source) + CARRIED_MINUTES_PER_KG : 0;
    case 'buy':
      return stage === 'cost' ? (tag.source.costPerKg ?? 0) : stage === 'bought' ? 1 : 0;
    case 'own':
      return 0;
  }
}

function copyOf({ lower, upper, starts, columns, factors }: RowList): RowList {
  return {
    lower: [...lower],
    upper: [...upper],
    starts: [...starts],
    columns: [...columns],
    factors: [...factors],
  };
}

/** What is handed over stays as it is: rows of later stages are added to our own list. */
function programOf(model: CoverModel, rows: RowList, cost: readonly number[]): LinearProgram {
  const { lower, upper, ...terms } = copyOf(rows);
  return { columns: { ...model.columns, cost }, rows: { lower, upper }, terms };
}

/** How far the solver may leave a row or a limit unmet. @practice its own usual tolerance */
const UNMET = 1e-7;

/**
 * What the next stage may lose of this one: a millionth, and what a solver's rounding comes to where each column that
 * weighs stands that far off on either side. With less, a later stage of tiny needs would find nothing left.
 * @arithmetic
 */
function slackOf(value: number, cost: readonly number[]): number {
  return 1e-6 * Math.max(1, Math.abs(value)) + 2 * UNMET * cost.reduce((sum, weight) => sum + Math.abs(weight), 0);
}

/**
 * Solves stage after stage.
 *
 *   short: least Σ weight · area · short / need  (m² of need left open);  cost: least Σ price · bought;
 *   bought: least Σ bought;  work: least Σ (minutes + 0.01) · kg
 *
 * @practice weights and the order of stages
 */
export function solveStages(
  input: CoverInput,
  solve: Solve,
  asked: { readonly outlook: Outlook; readonly change?: Change; readonly stages?: readonly Stage[] },
): Staged {
  const model = coverModel(input, asked.outlook, asked.change);
  const rows = copyOf(model.rows);
  const values = new Map<Stage, number>();
  const solutions = new Map<Stage, Best>();
  let last: Best | undefined;
  for (const stage of asked.stages ?? stagesOf(input)) {
    const cost = model.columnTags.map((tag) => weightOf(tag, stage, asked.outlook));
    const solution = solve(programOf(model, rows, cost), last?.start);
    if (solution.status !== 'best') return { ok: false, stage, solution };
    last = solution;
    values.set(stage, solution.value);
    solutions.set(stage, solution);
    const most = solution.value + slackOf(solution.value, cost);
    addRow(rows, { limits: [Number.NEGATIVE_INFINITY, most], terms: cost.entries() });
  }
  if (last === undefined) throw new RangeError('solveStages: no stage was asked for');
  return { ok: true, model, change: asked.change ?? {}, values, solutions, last };
}
