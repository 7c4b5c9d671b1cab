// @ts-check
// Every check of the house, one after the other, each to its end: tables, format and lint, types, unit and other
// tests, page tests, size of the first screen. Closes with one plain line, `N passed, N failed`; exit code 1 when
// anything failed, when a test was left out, or when no test ran. No step is ever passed over.
//   node scripts/test.mjs          all of it, before work is handed on
//   node scripts/test.mjs check    in a few minutes, before each commit: no page, and none of the slow files, which it names
//   node scripts/test.mjs unit     the tests without a page
//   node scripts/test.mjs pages    the page tests

import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { browsersSaid } from './other-browsers.mjs';
import { findChromium } from './programs.mjs';
import { giveUp } from './say.mjs';
import { tallyPlaywright, tallyStep, tallyVitest } from './tally.mjs';

const REPORTS = 'build/reports';
process.chdir(path.join(path.dirname(fileURLToPath(import.meta.url)), '..'));
rmSync(REPORTS, { recursive: true, force: true });
mkdirSync(REPORTS, { recursive: true });

/** The files that take most of the time of all tests without a page: `check` leaves them to the whole run. */
const SLOW = [
  'test/scenarios/demo-pegs-forecast.test.ts',
  'test/contract/examples.test.ts',
  'test/contract/bad-input.test.ts',
  'test/contract/any-input.test.ts',
  'test/contract/help.test.ts',
  'test/property/learning.test.ts',
  'test/property/rescue.test.ts',
  'test/property/record.test.ts',
  'test/scenarios/speaks/speaks.test.ts',
  'src/tasks/sour.test.ts',
  'src/server/process.test.ts',
  'test/faults/command-line.test.ts',
  'test/property/two-places.test.ts',
];

/** @typedef {import('./tally.mjs').Tally & { name: string, seconds: number }} Line */
/** @type {Readonly<Record<string, () => Line[]>>} */
const RUNS = {
  all: () => [...quick(), vitest(), playwright(), step('size of the first screen', ['scripts/size.mjs'])],
  check: () => [...quick(), vitest(SLOW)],
  unit: () => [vitest()],
  pages: () => [playwright()],
};
const asked = process.argv[2] ?? 'all';
const chosen = RUNS[asked];
if (chosen === undefined) giveUp(`test: ${asked} is not known; known are ${Object.keys(RUNS).join(', ')}.`);
const gone = SLOW.filter((file) => !existsSync(file));
if (gone.length > 0) giveUp(`test: ${gone.join(', ')} is listed as slow, and is not there.`);
const lines = chosen();

console.log('');
for (const one of lines) {
  const counts = `${one.passed} passed, ${one.failed} failed`;
  console.log(
    `${one.name.padEnd(26)}${counts.padEnd(24)}${one.seconds.toFixed(1)} s${one.remark && `  ${one.remark}`}`,
  );
}
console.log(browsersSaid(findChromium()));
const passed = lines.reduce((sum, one) => sum + one.passed, 0);
const failed = lines.reduce((sum, one) => sum + one.failed, 0);
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;

/** @returns {Line[]} */
function quick() {
  return [
    step('tables', ['scripts/tables.mjs']),
    step('format and lint', [
      'node_modules/@biomejs/biome/bin/biome',
      'ci',
      '--error-on-warnings',
      '--colors=off',
      '.',
    ]),
    step('types', ['node_modules/typescript/bin/tsc', '-b', '--pretty', 'false']),
  ];
}

/**
 * A check that passes or fails as a whole.
 * @param {string} name
 * @param {readonly string[]} args
 * @returns {Line}
 */
function step(name, args) {
  const { status, seconds } = run(name, args);
  return { name, seconds, ...tallyStep(status) };
}

/**
 * @param {readonly string[]} [but] files left to the whole run
 * @returns {Line}
 */
function vitest(but = []) {
  const file = `${REPORTS}/vitest.json`;
  const { status, seconds } = run('unit, published, property, scenario, contract and house tests', [
    'node_modules/vitest/vitest.mjs',
    'run',
    '--reporter=dot',
    '--reporter=json',
    `--outputFile.json=${file}`,
    ...but.map((one) => `--exclude=${one}`),
  ]);
  if (but.length > 0) console.log(`\nLeft to npm test: ${but.join(', ')}`);
  return { name: 'tests', seconds, ...tallyVitest(reportIn(file), status) };
}

/** @returns {Line} */
function playwright() {
  const file = `${REPORTS}/playwright.json`;
  const { status, seconds } = run(
    'page tests',
    ['node_modules/@playwright/test/cli.js', 'test', '--reporter=list,json'],
    { PLAYWRIGHT_JSON_OUTPUT_NAME: file },
  );
  return { name: 'page tests', seconds, ...tallyPlaywright(reportIn(file), status) };
}

/**
 * Runs one of our programs with this Node; what it says goes straight to the person.
 * @param {string} title
 * @param {readonly string[]} args
 * @param {Record<string, string>} [more]
 */
function run(title, args, more = {}) {
  console.log(`\n== ${title}`);
  /** @type {NodeJS.ProcessEnv} */
  const env = { ...process.env, ...more, NO_COLOR: '1' };
  delete env.FORCE_COLOR;
  delete env.NODE_ENV;
  const begun = performance.now();
  const { status, error } = spawnSync(process.execPath, args, { env, stdio: ['ignore', 'inherit', 'inherit'] });
  if (error) console.log(`${title}: ${error.message}`);
  return { status, seconds: (performance.now() - begun) / 1000 };
}

/**
 * The report a runner wrote, or nothing when it wrote none.
 * @param {string} file
 * @returns {any}
 */
function reportIn(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
