// A second solver for small programmes, to hold the first one against: the textbook simplex on a full tableau in two
// phases, by Bland's rule, so that it cannot go in circles. Columns start at 0.

import type { LinearProgram } from '#engine/ground/cover/program.ts';

const TINY = 1e-9;

/** The least value; undefined when no x keeps all limits. Throws where the value falls without end. */
export function leastBySimplex(program: LinearProgram): number | undefined {
  const size = program.columns.cost.length;
  const rows: { factors: number[]; most: number }[] = [];
  const keep = (factors: number[], lower: number, upper: number) => {
    if (Number.isFinite(upper)) rows.push({ factors, most: upper });
    if (Number.isFinite(lower)) rows.push({ factors: factors.map((one) => -one), most: -lower });
  };
  program.columns.upper.forEach((upper, j) => {
    if (program.columns.lower[j] !== 0) throw new RangeError('a column does not start at 0');
    const unit = new Array<number>(size).fill(0);
    unit[j] = 1;
    keep(unit, Number.NEGATIVE_INFINITY, upper);
  });
  program.rows.lower.forEach((lower, r) => {
    const factors = new Array<number>(size).fill(0);
    const { starts, columns, factors: given } = program.terms;
    for (let t = starts[r] ?? 0; t < (starts[r + 1] ?? 0); t++) factors[columns[t] ?? 0] = given[t] ?? 0;
    keep(factors, lower, program.rows.upper[r] ?? NaN);
  });

  // Columns of the tableau: x, one slack a row, one artificial a row, the right side.
  const count = rows.length;
  const width = size + 2 * count + 1;
  const basis: number[] = [];
  const tableau = rows.map(({ factors, most }, r) => {
    const sign = most < 0 ? -1 : 1;
    const line = new Array<number>(width).fill(0);
    factors.forEach((factor, j) => {
      line[j] = sign * factor;
    });
    line[size + r] = sign;
    line[size + count + r] = 1;
    line[width - 1] = sign * most;
    basis.push(sign > 0 ? size + r : size + count + r);
    return line;
  });
  const artificial = (j: number) => j >= size + count;

  const phase = (cost: (j: number) => number, allowed: (j: number) => boolean): number => {
    for (let turn = 0; turn < 20_000; turn++) {
      const reduced = (j: number) =>
        cost(j) - tableau.reduce((sum, line, r) => sum + cost(basis[r] ?? 0) * (line[j] ?? 0), 0);
      let enters = -1;
      for (let j = 0; j < width - 1 && enters < 0; j++) if (allowed(j) && reduced(j) < -TINY) enters = j;
      if (enters < 0) return tableau.reduce((sum, line, r) => sum + cost(basis[r] ?? 0) * (line[width - 1] ?? 0), 0);
      let leaves = -1;
      let least = Number.POSITIVE_INFINITY;
      tableau.forEach((line, r) => {
        const factor = line[enters] ?? 0;
        if (!(factor > TINY)) return;
        const ratio = (line[width - 1] ?? 0) / factor;
        const earlier = Math.abs(ratio - least) <= TINY && (basis[r] ?? 0) < (basis[leaves] ?? Infinity);
        if (ratio < least - TINY || earlier) [leaves, least] = [r, Math.min(least, ratio)];
      });
      if (leaves < 0) throw new RangeError('the value falls without end');
      turnTo(leaves, enters);
    }
    throw new RangeError('too many turns');
  };
  const turnTo = (r: number, j: number) => {
    const top = tableau[r] as number[];
    const pivot = top[j] ?? 1;
    for (let k = 0; k < width; k++) top[k] = (top[k] ?? 0) / pivot;
    tableau.forEach((line, other) => {
      const factor = line[j] ?? 0;
      if (other !== r && factor !== 0)
        for (let k = 0; k < width; k++) line[k] = (line[k] ?? 0) - factor * (top[k] ?? 0);
    });
    basis[r] = j;
  };

  if (
    phase(
      (j) => (artificial(j) ? 1 : 0),
      () => true,
    ) > 1e-7
  )
    return undefined;
  basis.forEach((at, r) => {
    const other = artificial(at)
      ? (tableau[r] as number[]).findIndex((factor, j) => !artificial(j) && j < width - 1 && Math.abs(factor) > 1e-7)
      : -1;
    if (other >= 0) turnTo(r, other);
  });
  return phase(
    (j) => program.columns.cost[j] ?? 0,
    (j) => !artificial(j),
  );
}
