// npm run mutate [-- ROOM …] [-- --seed N] [-- --mutants N] [-- --whole | --again]: changes the code of a room in one place at a time,
// and asks the tests whether they notice. Prints the share noticed and each survivor, and writes both to docs/tests.md.
// With --again only the lines of the survivors on record are tried, and nothing is put on record.

import '../node-version.mjs';
import { parseArgs } from 'node:util';
import { drawn, type Piece, pieces } from './draw.ts';
import { writeTestsPage } from './page.ts';
import { ROOMS, type Room } from './room.ts';
import { filesOf, mutantsOf, pieceOf } from './run.ts';
import { type Run, runs, saved, score } from './score.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: '1' },
    mutants: { type: 'string', default: '300' },
    whole: { type: 'boolean' },
    again: { type: 'boolean' },
  },
});
const unknown = positionals.filter((name) => !ROOMS.some((room) => room.name === name));
if (unknown.length > 0) {
  console.error(`mutate: ${unknown.join(', ')} is no room; the rooms are ${ROOMS.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}
for (const room of ROOMS.filter(({ name }) => positionals.length === 0 || positionals.includes(name))) {
  if (values.again) print(score(room, undefined, await mutantsOf(room, survivorsOf(room), true)));
  else if (values.whole) keep(score(room, undefined, await mutantsOf(room, filesOf(room).flatMap(pieces), false)));
  else {
    const seed = Number(values.seed);
    keep(score(room, seed, await mutantsOf(room, await drawn(filesOf(room), seed, Number(values.mutants)), false)));
  }
}
writeTestsPage();

function keep(run: Run): void {
  saved(run);
  print(run);
}

function print({ room, noticed, survivors }: Run): void {
  for (const { file, line, was, became } of survivors) console.log(`${file}:${line}  ${was}  →  ${became}`);
  console.log(`${room}: ${noticed} of ${noticed + survivors.length} noticed`);
}

/** Where the survivors on record lie: the lines of the last run of the room. */
function survivorsOf({ name }: Room): readonly Piece[] {
  const last = runs().findLast(({ room }) => room === name);
  return (last?.survivors ?? []).map(pieceOf);
}
