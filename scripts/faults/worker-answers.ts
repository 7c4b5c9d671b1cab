// What a network may answer while a newer version of the page is fetched, and whether the page still opened with none.

import fc from 'fast-check';
import type { Found, Options } from '../../test/faults/piece.ts';
import { ANSWERS, type Answer, live, season } from '../../test/faults/worker-world.ts';

const SEASONS = 2000;
/** The same seasons each time, so that the counts can be compared; the test of the property draws new ones. */
const SEED = 20_261_130;

export async function run({ scale }: Options): Promise<Found> {
  const numRuns = Math.max(1, Math.round(SEASONS * scale));
  const answers = new Map<Answer, number>();
  const all = { updates: 0, refused: 0, taken: 0, openings: 0 };
  const told = await fc.check(
    fc.asyncProperty(season, async (steps) => {
      const one = await live(steps);
      for (const [answer, count] of one.answers) answers.set(answer, (answers.get(answer) ?? 0) + count);
      for (const key of Object.keys(all) as (keyof typeof all)[]) all[key] += one[key];
    }),
    { numRuns, seed: SEED },
  );
  const counted = ANSWERS.map((answer) => `${answer} ${answers.get(answer) ?? 0}`).join(', ');
  const total = [...answers.values()].reduce((sum, count) => sum + count, 0);
  return {
    title: 'The page without a signal: what a network may answer',
    lines: [
      `${numRuns} seasons with ${all.updates} tries at a newer version, whose files got ${total} answers: ${counted}.`,
      `${all.refused} tries were refused as not whole; ${all.taken} versions were taken.`,
      `After each step the page was opened with no network, ${all.openings} times: ${told.failed ? 'once it was not the version taken last, whole' : 'each time it was the version taken last, whole'}.`,
    ],
    failed: told.failed ? 1 : 0,
    ...(told.failed && { aside: [fc.defaultReportMessage(told) ?? ''] }),
  };
}
