// Random small covers for property tests, and a solver that keeps every programme it was handed.

import fc from 'fast-check';
import type { CoverBed, CoverInput, CoverSource } from '#engine/ground/cover/input.ts';
import type { LinearProgram, Solve } from '#engine/ground/cover/program.ts';
import { range } from '#engine/quantity/range.ts';

/** Thousandths: doubles of every size would be mostly nothing, and such a garden needs no plan. */
const between = (min: number, max: number) =>
  fc.integer({ min: Math.ceil(min * 1000), max: Math.floor(max * 1000) }).map((value) => value / 1000);
const band = (min: number, max: number) =>
  fc
    .tuple(between(min, max), between(0, 0.5), between(0, 0.5))
    .map(([likely, down, up]) => range(likely - Math.abs(likely) * down, likely, likely + Math.abs(likely) * up));

const bed = (id: string): fc.Arbitrary<CoverBed> =>
  fc
    .record(
      {
        areaM2: between(1, 12),
        missingG: fc.record({ n: band(0, 120), p: band(0, 25), k: band(0, 120) }),
        roomG: fc.record({ p: between(0, 40), k: between(0, 150) }, { requiredKeys: [] }),
        mostSaltG: between(10, 300),
        mostFreshKg: between(0, 40),
      },
      { requiredKeys: ['areaM2', 'missingG'] },
    )
    .map((one) => ({ id, name: `bed ${id}`, ...one }));

export const anySource = (id: string): fc.Arbitrary<CoverSource> =>
  fc
    .record(
      {
        nG: fc.oneof({ weight: 5, arbitrary: band(0, 40) }, { weight: 1, arbitrary: band(-4, 0) }),
        pG: band(0, 10),
        kG: band(0, 30),
        saltG: between(0, 20),
        haveKg: between(0, 60),
        costPerKg: between(0.05, 6),
        minutesPerKg: between(0, 4),
        mostKgPerM2: between(0.2, 8),
        fresh: fc.boolean(),
      },
      { requiredKeys: ['nG', 'pG', 'kG', 'saltG', 'minutesPerKg', 'fresh'] },
    )
    .map(({ nG, pG, kG, saltG, ...one }) => ({
      id,
      name: `source ${id}`,
      kind: 'other',
      perKg: { nG, pG, kG, saltG },
      ...one,
    }));

/** One or two beds, two or three sources, limits or none. */
export const anyCover: fc.Arbitrary<CoverInput> = fc.record({
  beds: fc.oneof(fc.tuple(bed('A')), fc.tuple(bed('A'), bed('B'))),
  sources: fc.oneof(fc.tuple(anySource('r'), anySource('s')), fc.tuple(anySource('r'), anySource('s'), anySource('t'))),
  limits: fc.record({ money: between(0, 60), minutes: between(5, 200) }, { requiredKeys: [] }),
  aim: fc.constantFrom('least-cost' as const, 'least-purchase' as const),
});

/** The same solver, with a list of all that it was asked. */
export function keeping(solve: Solve): { readonly solve: Solve; readonly asked: readonly LinearProgram[] } {
  const asked: LinearProgram[] = [];
  return {
    asked,
    solve: (program, from) => {
      asked.push(program);
      return solve(program, from);
    },
  };
}
