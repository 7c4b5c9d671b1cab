// The one shape of package odex that our tests use: it ships its own TypeScript, which our compiler's strictness refuses.

export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    change: (x: number, y: readonly number[]) => number[],
    from: number,
    start: readonly number[],
    to: number,
  ): { readonly y: readonly number[]; readonly outcome: number };
}
