// A linear programme as plain data, and what may come back from whoever solves it. The engine holds no solver: one is
// handed in. What the columns and rows of the cover mean stands in model.ts.

/** Rows kept in a compressed form: the terms of row r stand from starts[r] up to starts[r + 1]. */
export interface Terms {
  readonly starts: readonly number[];
  readonly columns: readonly number[];
  readonly factors: readonly number[];
}

/** Least Σ cost · x, with every column and every row between its lower and its upper limit; limits may be infinite. */
export interface LinearProgram {
  readonly columns: {
    readonly cost: readonly number[];
    readonly lower: readonly number[];
    readonly upper: readonly number[];
  };
  readonly rows: { readonly lower: readonly number[]; readonly upper: readonly number[] };
  readonly terms: Terms;
}

/** Where an answer was found, in the solver's own numbers: a later programme over the same columns starts from there. */
export interface Start {
  readonly columns: readonly number[];
  readonly rows: readonly number[];
}

/**
 * What a solver says. Only `best` holds numbers: a programme that is empty, garbled, without an answer or given up
 * never reads as an answer of 0.
 */
export type Solution =
  | {
      readonly status: 'best';
      readonly value: number;
      readonly columns: readonly number[];
      readonly rows: readonly number[];
      /** Change of the value for one more of a column's tight limit; 0 where the limit is not tight. */
      readonly columnPrices: readonly number[];
      /** The same for rows. */
      readonly rowPrices: readonly number[];
      readonly start?: Start;
    }
  /** No x keeps all limits. */
  | { readonly status: 'none' }
  /** The value falls without end. */
  | { readonly status: 'endless' }
  /** Given up before the end. */
  | { readonly status: 'stopped'; readonly why: string }
  /** The programme makes no sense, or the solver failed. */
  | { readonly status: 'broken'; readonly why: string };

/**
 * A solver, as it is handed in. `from` only makes it faster: the same columns, and the same rows with any number of new
 * ones at their end.
 */
export type Solve = (program: LinearProgram, from?: Start) => Solution;

/** Rows while they are put together. */
export interface RowList {
  readonly lower: number[];
  readonly upper: number[];
  readonly starts: number[];
  readonly columns: number[];
  readonly factors: number[];
}

/** No rows yet. @arithmetic */
export function noRows(): RowList {
  return { lower: [], upper: [], starts: [0], columns: [], factors: [] };
}

/**
 * Appends one row; terms of factor 0 are left out.
 * @returns its place
 * @arithmetic
 */
export function addRow(
  rows: RowList,
  row: { readonly limits: readonly [number, number]; readonly terms: Iterable<readonly [number, number]> },
): number {
  for (const [column, factor] of row.terms) {
    if (factor === 0) continue;
    rows.columns.push(column);
    rows.factors.push(factor);
  }
  rows.lower.push(row.limits[0]);
  rows.upper.push(row.limits[1]);
  return rows.starts.push(rows.columns.length) - 2;
}

/** What is wrong with a programme; undefined when it can be handed to a solver. @arithmetic */
export function programFault({ columns, rows, terms }: LinearProgram): string | undefined {
  const columnCount = columns.cost.length;
  const rowCount = rows.lower.length;
  if (columnCount === 0) return 'no column';
  if (columns.lower.length !== columnCount || columns.upper.length !== columnCount) return 'columns without limits';
  if (rows.upper.length !== rowCount || terms.starts.length !== rowCount + 1) return 'rows without limits or terms';
  if (terms.columns.length !== terms.factors.length || terms.starts.at(-1) !== terms.columns.length)
    return 'torn terms';
  if (!columns.cost.every(Number.isFinite) || !terms.factors.every(Number.isFinite)) return 'a factor is no number';
  if (!terms.columns.every((column) => Number.isInteger(column) && column >= 0 && column < columnCount))
    return 'a term of no column';
  const limits = [...columns.lower, ...columns.upper, ...rows.lower, ...rows.upper];
  return limits.some(Number.isNaN) ? 'a limit is no number' : undefined;
}
