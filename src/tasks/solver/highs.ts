// The linear solver behind a small door: HiGHS, fetched when it is first asked for. Every model is given back at once,
// and only a solved one yields numbers. What is solved, and why, stands in the engine; nothing here knows of beds.

import type { BasisStatus, Highs, Model, ModelData } from 'highs';
import {
  type LinearProgram,
  programFault,
  type Solution,
  type Solve,
  type Start,
} from '#engine/ground/cover/program.ts';

/** Where the solver's own file lies, for a page; a program on a machine finds it by itself. */
export interface SolverPlace {
  readonly wasmUrl: string;
}

/** The solver's own number for it. */
const PRIMAL_SIMPLEX = 4;

let loaded: Promise<Solve> | undefined;

/** Fetches the solver once; asked again, gives the same one. A fetch that failed is tried anew the next time. */
export function loadSolver(place?: SolverPlace): Promise<Solve> {
  loaded ??= fetchSolver(place).catch((error: unknown) => {
    loaded = undefined;
    throw error;
  });
  return loaded;
}

async function fetchSolver(place: SolverPlace | undefined): Promise<Solve> {
  const { default: load } = await import('highs');
  const highs = await load(place === undefined ? undefined : { locateFile: () => place.wasmUrl });
  return solverOn(highs);
}

/** Steps a programme is given for each column and row: the covers drawn in the tests take less than one. @practice */
const STEPS_EACH = 100;
const LEAST_STEPS = 1000;

/** Most steps of the simplex for a programme: work grows with the input, never without an end. @arithmetic */
function mostSteps({ columns, rows }: LinearProgram): number {
  return LEAST_STEPS + STEPS_EACH * (columns.cost.length + rows.lower.length);
}

/**
 * The solver of a runtime that is loaded already.
 * @param steps most steps it may take over a programme; with fewer than are needed it stops without an answer
 */
export function solverOn(highs: Highs, steps: (program: LinearProgram) => number = mostSteps): Solve {
  return (program, from) => {
    const fault = programFault(program);
    if (fault !== undefined) return { status: 'broken', why: fault };
    const limit = steps(program);
    const near = from === undefined ? undefined : solveWith(highs, program, limit, from);
    // From a start the solver skips its own tidying up, and now and then loses its way: only an answer counts.
    return near?.status === 'best' ? near : solveWith(highs, program, limit);
  };
}

function solveWith(highs: Highs, program: LinearProgram, limit: number, from?: Start): Solution {
  try {
    return highs.withModel(modelOf(highs, program), (model) => {
      // Primal simplex: the covers of a large plot take a fifth less time by it than by the dual one.
      model.options.set({ output_flag: false, simplex_strategy: PRIMAL_SIMPLEX, simplex_iteration_limit: limit });
      if (from !== undefined) startFrom(highs, model, program, from);
      model.run();
      return read(highs, model);
    });
  } catch (error) {
    return { status: 'broken', why: error instanceof Error ? error.message : String(error) };
  }
}

/** Rows that came after the start hold no column back there yet: they stand free, which the solver calls basic. */
function startFrom(highs: Highs, model: Model, { rows }: LinearProgram, from: Start): void {
  const added = new Array<BasisStatus>(rows.lower.length - from.rows.length).fill(highs.constants.basisStatus.basic);
  model.setBasis({
    colStatus: from.columns as readonly BasisStatus[],
    rowStatus: [...(from.rows as readonly BasisStatus[]), ...added],
  });
}

function modelOf(highs: Highs, { columns, rows, terms }: LinearProgram): ModelData {
  const size = { numCols: columns.cost.length, numRows: rows.lower.length };
  return {
    ...size,
    sense: highs.constants.objectiveSense.minimize,
    colCost: columns.cost,
    colLower: columns.lower,
    colUpper: columns.upper,
    rowLower: rows.lower,
    rowUpper: rows.upper,
    matrix: { ...size, format: 'csr', starts: terms.starts, indices: terms.columns, values: terms.factors },
  };
}

/** Every status by itself: only "optimal" is an answer, and an empty model is a fault of ours, not a value of 0. */
function read(highs: Highs, model: Model): Solution {
  const status = model.getModelStatus();
  const known = highs.constants.modelStatus;
  switch (status) {
    case known.optimal: {
      const { colValue, rowValue, colDual, rowDual } = model.getSolution();
      const { colStatus, rowStatus } = model.getBasis();
      const value = model.getObjectiveValue();
      if (!Number.isFinite(value)) return { status: 'broken', why: 'the value is no number' };
      return {
        status: 'best',
        value,
        columns: [...colValue],
        rows: [...rowValue],
        columnPrices: [...colDual],
        rowPrices: [...rowDual],
        start: { columns: [...colStatus], rows: [...rowStatus] },
      };
    }
    case known.infeasible:
      return { status: 'none' };
    case known.unbounded:
      return { status: 'endless' };
    case known.unboundedOrInfeasible:
      return { status: 'stopped', why: 'without an answer or without an end: the solver does not tell which' };
    case known.timeLimit:
    case known.iterationLimit:
    case known.interrupted:
      return { status: 'stopped', why: `given up with status ${status}` };
    default:
      return { status: 'broken', why: `solver status ${status}` };
  }
}
