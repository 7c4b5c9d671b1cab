// Random histories of a store with two places: what was lost, refused and forgotten in them, and what was missing afterwards.

import fc from 'fast-check';
import { history, live, type Told } from '../../test/faults/histories.ts';
import type { Found, Options } from '../../test/faults/piece.ts';

const HISTORIES = 1000;
/** The same histories each time, so that the counts can be compared; the test of the property draws new ones. */
const SEED = 20_261_130;

export async function run({ scale }: Options): Promise<Found> {
  const numRuns = Math.max(1, Math.round(HISTORIES * scale));
  const all: Told = { openings: 0, acknowledged: 0, forgettings: 0, losses: 0, refusals: 0 };
  const told = await fc.check(
    fc.asyncProperty(history, async (steps) => {
      const one = await live(steps);
      for (const key of Object.keys(all) as (keyof Told)[]) all[key] += one[key];
    }),
    { numRuns, seed: SEED },
  );
  const { openings, acknowledged, forgettings, losses, refusals } = all;
  return {
    title: 'Two places: random histories',
    lines: [
      `${numRuns} histories of a store in two places: ${acknowledged} entries and photos acknowledged, ${forgettings} forgettings.`,
      `On the way ${losses} times a place lost its last writes or all it had, and ${refusals} writes were refused or broken off.`,
      `At each of ${openings} openings all that was acknowledged and not forgotten was looked for: ${told.failed ? 'something was missing, or back' : 'nothing missing, nothing forgotten back'}.`,
    ],
    failed: told.failed ? 1 : 0,
    ...(told.failed && { aside: [fc.defaultReportMessage(told) ?? ''] }),
  };
}
