// npm run mutate [-- ROOM …] [-- --seed N] [-- --mutants N] [-- --whole]: changes the code of a room in one place at a time,
// and asks the tests whether they notice. Prints the share noticed and each survivor, and writes both to docs/tests.md.

import '../node-version.mjs';
import { parseArgs } from 'node:util';
import { writeTestsPage } from './page.ts';
import { ROOMS } from './room.ts';
import { mutantsOf } from './run.ts';
import { saved, score } from './score.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: '1' },
    mutants: { type: 'string', default: '300' },
    whole: { type: 'boolean' },
  },
});
const unknown = positionals.filter((name) => !ROOMS.some((room) => room.name === name));
if (unknown.length > 0) {
  console.error(`mutate: ${unknown.join(', ')} is no room; the rooms are ${ROOMS.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}
for (const room of ROOMS.filter(({ name }) => positionals.length === 0 || positionals.includes(name))) {
  const seed = values.whole ? undefined : Number(values.seed);
  const run = score(room, seed, await mutantsOf(room, seed, Number(values.mutants)));
  saved(run);
  for (const { file, line, was, became } of run.survivors) console.log(`${file}:${line}  ${was}  →  ${became}`);
  console.log(`${room.name}: ${run.noticed} of ${run.noticed + run.survivors.length} noticed`);
}
writeTestsPage();
