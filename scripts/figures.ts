// Moves figures of data/ by a tenth, one at a time, and counts how many are noticed by something outside the tables.
//   npm run figures -- [--seed N] [--count N] [--table NAME] [--batches]
// With neither count nor table given it rewrites its section of docs/tests.md. Ends with 1 where the tests are not
// green to begin with, or not green again at the end.

import './node-version.mjs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { drawn, figuresOf, moved } from './figures/draw.ts';
import { HEADING, linesOf, sectionOf, type Tried } from './figures/page.ts';
import { trial } from './figures/trial.ts';
import { giveUp, say } from './say.mjs';
import { TESTS_PAGE, writeSection } from './tests-page.ts';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..');
const COUNT = 200;
const SEED = 1;

const { values } = parseArgs({
  options: {
    seed: { type: 'string' },
    count: { type: 'string' },
    table: { type: 'string' },
    batches: { type: 'boolean' },
  },
});
const count = Number(values.count ?? COUNT);
const seed = Number(values.seed ?? SEED);
if (!(Number.isInteger(count) && count > 0))
  giveUp(`figures: --count is a whole number above 0; ${values.count} is none.`);
if (!Number.isInteger(seed)) giveUp(`figures: --seed is a whole number; ${values.seed} is none.`);

const { data, run, close } = await trial(ROOT, { batches: values.batches === true });
const unmoved = async (when: string) => {
  const { by, unread, tests } = await run();
  if (by.length + unread.length === 0) return;
  await close();
  giveUp(`figures: unmoved, ${when}, these are not green: ${[...by, ...unread, ...tests].join('; ')}.`);
};

await unmoved('at the start');
const figures = figuresOf(data).filter(({ table }) => values.table === undefined || table === values.table);
const tried: Tried[] = [];
for (const [at, figure] of drawn(figures, { count, seed }).entries()) {
  const one = moved(data, figure, { seed, at });
  const noticed = await run(one);
  tried.push({ figure, to: one.to, noticed });
  const { id, quantity, end, stands } = figure;
  const said =
    noticed.by[0] ??
    (noticed.unread.length > 0 ? `NOT noticed, ${noticed.unread.length} could not run` : 'NOT noticed');
  say(`${at + 1} ${figure.table} ${id} ${quantity} ${end} ${stands} to ${one.to}: ${said}`);
}
await unmoved('at the end');
await close();

for (const line of linesOf(tried, figures)) say(line);
if (values.count === undefined && values.table === undefined) {
  process.chdir(ROOT);
  writeSection(HEADING, sectionOf(tried, { figures, seed, date: new Date().toISOString().slice(0, 10) }));
  say(`Wrote ${TESTS_PAGE}.`);
}
