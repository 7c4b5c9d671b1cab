// The solver of the cover against a programme whose answer is in a textbook: Hillier and Lieberman, Introduction to
// operations research, prototype example of the chapter on linear programming (from memory). Most 3x + 5y with x <= 4,
// 2y <= 12 and 3x + 2y <= 18 is 36, at x = 2 and y = 6; one more of each row is worth 0, 3/2 and 1.

import { describe, expect, it } from 'vitest';
import { loadSolver } from '#tasks/solver/highs.ts';

const solve = await loadSolver();
const ENDLESS = Number.POSITIVE_INFINITY;

describe('the solver', () => {
  it('finds the textbook answer, where it lies, and what one more of each limit is worth', () => {
    const solution = solve({
      columns: { cost: [-3, -5], lower: [0, 0], upper: [ENDLESS, ENDLESS] },
      rows: { lower: [-ENDLESS, -ENDLESS, -ENDLESS], upper: [4, 12, 18] },
      terms: { starts: [0, 1, 2, 4], columns: [0, 1, 0, 1], factors: [1, 2, 3, 2] },
    });
    if (solution.status !== 'best') throw new Error(solution.status);
    const rounded = (all: readonly number[]) => all.map((one) => Number(one.toFixed(9)) + 0);
    expect(solution.value).toBeCloseTo(-36, 9);
    expect(rounded(solution.columns)).toEqual([2, 6]);
    expect(rounded(solution.rowPrices)).toEqual([0, -1.5, -1]);
  });
});
