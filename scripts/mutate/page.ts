// The part of docs/tests.md on mutations: a row for each run, then the survivors of the last draw of each room. Next:
// test/house/tests-page.test.ts holds the page to docs/mutants.json.

import { writeSection } from '../tests-page.ts';
import { ROOMS } from './room.ts';
import { EQUAL, type Run, runs } from './score.ts';

const HEADING = '## Changes of the code';

/** The section of the page. */
export function mutationsPart(): string {
  const all = runs();
  const last = ROOMS.flatMap(({ name }) => all.filter(({ room }) => room === name).slice(-1));
  return [
    HEADING,
    '',
    'Written by `npm run mutate`.',
    'One change of one place at a time: a condition turned, a sum made a difference, a list emptied, a block left out.',
    'Noticed means that a test of the room failed, or ran on without end. Changes that the types refuse are no mutants;',
    'emptied strings are left out. A whole room is all of its changes; a draw takes statements of the top level by its',
    'seed. Tests are written for survivors that were seen: a seed that nobody looked at is the fairer measure.',
    '',
    '| room | goal | draw | changes | noticed | share | same answer | refused by the types |',
    '|---|---|---|---|---|---|---|---|',
    ...all.map(row),
    '',
    ...last.flatMap(survivorsOf),
    '### Changes that leave every answer as it is',
    '',
    ...EQUAL.map(({ file, was, became, why }) => `- ${file}: ${code(was)} → ${code(became)}: ${why}`),
    '',
  ].join('\n');
}

function row(run: Run): string {
  const goal = ROOMS.find(({ name }) => name === run.room)?.goal ?? Number.NaN;
  const mutants = run.noticed + run.survivors.length;
  const share = mutants === 0 ? '' : percent(run.noticed / mutants);
  const draw = run.seed === null ? 'whole' : `seed ${run.seed}`;
  return `| ${[run.room, percent(goal), draw, mutants, run.noticed, share, run.equal, run.refusedByTypes].join(' | ')} |`;
}

function survivorsOf({ room, survivors }: Run): readonly string[] {
  if (survivors.length === 0) return [];
  const lines = survivors.map(({ file, line, was, became }) => `- ${file}:${line}: ${code(was)} → ${code(became)}`);
  return [`### Survivors of ${room}`, '', ...lines, ''];
}

const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

/** A piece of code in one short line. */
function code(text: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  return `\`${line.length > 70 ? `${line.slice(0, 67)}...` : line}\``;
}

/** Puts the section into the page, in place of the one of before. */
export function writeTestsPage(): void {
  writeSection(HEADING, mutationsPart());
}
