// The least value of a small linear programme by looking at every corner: each choice of as many tight limits as there
// are columns is solved by elimination, and the cheapest corner that keeps all limits is the answer. For boxed columns.

import type { LinearProgram } from '#engine/ground/cover/program.ts';

interface Limit {
  readonly factors: readonly number[];
  readonly most: number;
}

/** Σ factors · x <= most, for every finite limit of the programme. */
function limitsOf({ columns, rows, terms }: LinearProgram): readonly Limit[] {
  const size = columns.cost.length;
  const limits: Limit[] = [];
  const keep = (factors: readonly number[], lower: number, upper: number) => {
    if (Number.isFinite(upper)) limits.push({ factors, most: upper });
    if (Number.isFinite(lower)) limits.push({ factors: factors.map((one) => -one), most: -lower });
  };
  for (let j = 0; j < size; j++) {
    const unit = Array.from({ length: size }, (_, at) => (at === j ? 1 : 0));
    keep(unit, columns.lower[j] ?? NaN, columns.upper[j] ?? NaN);
  }
  for (const [r, lower] of rows.lower.entries()) {
    const factors = new Array<number>(size).fill(0);
    for (let t = terms.starts[r] ?? 0; t < (terms.starts[r + 1] ?? 0); t++) {
      factors[terms.columns[t] ?? 0] = terms.factors[t] ?? 0;
    }
    keep(factors, lower, rows.upper[r] ?? NaN);
  }
  return limits;
}

/** The least value over all corners; undefined when no corner keeps all limits. */
export function leastOverCorners(program: LinearProgram): number | undefined {
  const limits = limitsOf(program);
  const size = program.columns.cost.length;
  let least: number | undefined;
  const chosen: Limit[] = [];
  const visit = (from: number) => {
    if (chosen.length === size) {
      const x = corner(chosen);
      const kept = x && limits.every(({ factors, most }) => dot(factors, x) <= most + 1e-7);
      if (x && kept) least = Math.min(least ?? Number.POSITIVE_INFINITY, dot(program.columns.cost, x));
      return;
    }
    for (let at = from; at < limits.length; at++) {
      chosen.push(limits[at] as Limit);
      visit(at + 1);
      chosen.pop();
    }
  };
  visit(0);
  return least;
}

function dot(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, one, at) => sum + one * (b[at] ?? NaN), 0);
}

/** Where all these limits are tight; undefined where they do not meet in one point. */
function corner(limits: readonly Limit[]): readonly number[] | undefined {
  const size = limits.length;
  const rows = limits.map(({ factors, most }) => [...factors, most]);
  for (let c = 0; c < size; c++) {
    let pivot = c;
    for (let r = c; r < size; r++) {
      if (Math.abs(rows[r]?.[c] ?? 0) > Math.abs(rows[pivot]?.[c] ?? 0)) pivot = r;
    }
    const top = rows[pivot] as number[];
    if (!(Math.abs(top[c] ?? 0) > 1e-9)) return undefined;
    rows[pivot] = rows[c] as number[];
    rows[c] = top;
    for (let r = 0; r < size; r++) {
      const row = rows[r] as number[];
      const factor = r === c ? 0 : (row[c] ?? 0) / (top[c] ?? 1);
      if (factor !== 0) for (let k = c; k <= size; k++) row[k] = (row[k] ?? 0) - factor * (top[k] ?? 0);
    }
  }
  return rows.map((row, at) => (row[size] ?? NaN) / (row[at] ?? NaN));
}
