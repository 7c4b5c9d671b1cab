// Least squares with a lower and an upper bound on every unknown, for a handful of unknowns. An active-set method: an
// unknown stands at a bound until letting it go lowers the sum of squares; what is free is solved by Householder
// reflections. Held against a fine grid and against projected gradients in test/property/heap.test.ts.

const TINY = 1e-12;

/** Rows of the matrix, one a goal; every row as long as there are unknowns. */
export type Matrix = readonly (readonly number[])[];

/**
 * The unknowns that make |A x − b|² least within their bounds.
 * @range columns must be independent; a ridge row under each unknown (solve.ts) makes them so
 * @source stark-parker-1995
 */
export function boundedLeastSquares(problem: {
  readonly rows: Matrix;
  readonly right: readonly number[];
  readonly lows: readonly number[];
  readonly highs: readonly number[];
}): readonly number[] {
  const { rows, right, lows, highs } = problem;
  const count = lows.length;
  let x = [...lows];
  const free = new Set<number>();
  const stuck = new Set<number>();
  for (let round = 0; round < 20 * (count + 1); round++) {
    const next = mostWanted(problem, x, free, stuck);
    if (next === undefined) return x;
    free.add(next);
    for (let inner = 0; inner <= count; inner++) {
      const order = [...free].sort((a, b) => a - b);
      const solved = leastSquares(
        rows.map((row) => order.map((j) => row[j] ?? 0)),
        right.map((b, i) => b - dotWithout(rows[i] ?? [], x, free)),
      );
      let stepFraction = 1;
      let blocked: number | undefined;
      order.forEach((j, k) => {
        const from = x[j] ?? 0;
        const to = solved[k] ?? from;
        const limit = to < (lows[j] ?? 0) ? lows[j] : to > (highs[j] ?? 0) ? highs[j] : undefined;
        if (limit === undefined) return;
        const share = to === from ? 0 : (limit - from) / (to - from);
        if (share < stepFraction) [stepFraction, blocked] = [Math.max(0, share), j];
      });
      const moved = [...x];
      order.forEach((j, k) => {
        moved[j] = (x[j] ?? 0) + stepFraction * ((solved[k] ?? 0) - (x[j] ?? 0));
      });
      const before = x;
      x = moved;
      if (blocked === undefined) {
        stuck.clear();
        break;
      }
      const wall = (solved[order.indexOf(blocked)] ?? 0) < (before[blocked] ?? 0) ? lows[blocked] : highs[blocked];
      x[blocked] = wall ?? 0;
      free.delete(blocked);
      // One that is sent straight back to its bound is left there until something else has moved.
      if (blocked === next && stepFraction === 0) stuck.add(blocked);
      if (free.size === 0) break;
    }
  }
  return x;
}

/** The unknown at a bound whose freedom lowers the sum of squares fastest. */
function mostWanted(
  { rows, right, lows, highs }: Parameters<typeof boundedLeastSquares>[0],
  x: readonly number[],
  free: ReadonlySet<number>,
  stuck: ReadonlySet<number>,
): number | undefined {
  const left = rows.map((row, i) => (right[i] ?? 0) - row.reduce((sum, a, j) => sum + a * (x[j] ?? 0), 0));
  let best: number | undefined;
  let most = 0;
  for (let j = 0; j < lows.length; j++) {
    if (free.has(j) || stuck.has(j)) continue;
    const size = Math.sqrt(rows.reduce((sum, row) => sum + (row[j] ?? 0) ** 2, 0));
    const slope = rows.reduce((sum, row, i) => sum + (row[j] ?? 0) * (left[i] ?? 0), 0);
    const atLow = (x[j] ?? 0) <= (lows[j] ?? 0);
    const atHigh = (x[j] ?? 0) >= (highs[j] ?? 0);
    const wish = atLow && atHigh ? 0 : atLow ? slope : atHigh ? -slope : Math.abs(slope);
    if (wish > TINY * size && wish / (size || 1) > most) [most, best] = [wish / (size || 1), j];
  }
  return best;
}

function dotWithout(row: readonly number[], x: readonly number[], without: ReadonlySet<number>): number {
  return row.reduce((sum, a, j) => (without.has(j) ? sum : sum + a * (x[j] ?? 0)), 0);
}

/**
 * Least squares without bounds, by Householder reflections.
 * @source golub-van-loan-1996 algorithm 5.3.2
 */
export function leastSquares(rows: Matrix, right: readonly number[]): readonly number[] {
  const a = rows.map((row, i) => [...row, right[i] ?? 0]);
  const count = rows[0]?.length ?? 0;
  for (let k = 0; k < count; k++) reflect(a, k);
  const x = new Array<number>(count).fill(0);
  for (let k = count - 1; k >= 0; k--) {
    const row = a[k] ?? [];
    let rest = row[count] ?? 0;
    for (let j = k + 1; j < count; j++) rest -= (row[j] ?? 0) * (x[j] ?? 0);
    const pivot = row[k] ?? 0;
    x[k] = pivot === 0 ? 0 : rest / pivot;
  }
  return x;
}

/** Puts nought under the diagonal of one column. */
function reflect(a: number[][], k: number): void {
  let square = 0;
  for (let i = k; i < a.length; i++) square += (a[i]?.[k] ?? 0) ** 2;
  const size = Math.sqrt(square);
  if (size === 0) return;
  const top = a[k]?.[k] ?? 0;
  const alpha = top > 0 ? -size : size;
  const v = a.map((row, i) => (i < k ? 0 : i === k ? top - alpha : (row[k] ?? 0)));
  const vv = v.reduce((sum, one) => sum + one * one, 0);
  if (vv === 0) return;
  const width = a[k]?.length ?? 0;
  for (let j = k; j < width; j++) {
    const along = a.reduce((sum, row, i) => sum + (v[i] ?? 0) * (row[j] ?? 0), 0);
    for (let i = k; i < a.length; i++) {
      const row = a[i];
      if (row) row[j] = (row[j] ?? 0) - (2 * (v[i] ?? 0) * along) / vv;
    }
  }
}
