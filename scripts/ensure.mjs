// @ts-check
// Puts in place what a command needs before it runs, and nothing that is there already:
//   node scripts/ensure.mjs [web] [chromium] [units] [pdftotext]
// always the packages of the lock file and the generated tables; `web` the built page; `chromium`, `units` and
// `pdftotext` the outside programs of the checks. Plain Node, no dependencies: it runs before anything is installed.

import './node-version.mjs';
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureProgram, findChromium, findPdftotext, findUnits } from './programs.mjs';
import { giveUp, say } from './say.mjs';
import { digestOf, holds, write } from './stamp.mjs';

const KNOWN = ['web', 'chromium', 'units', 'pdftotext'];

process.chdir(path.join(path.dirname(fileURLToPath(import.meta.url)), '..'));
const wanted = process.argv.slice(2);
const strange = wanted.filter((word) => !KNOWN.includes(word));
if (strange.length > 0) giveUp(`ensure: ${strange.join(', ')} is not known; known are ${KNOWN.join(', ')}.`);

installPackages();
makeTables();
if (wanted.includes('web')) buildWeb();
if (wanted.includes('chromium')) {
  ensureProgram({
    find: findChromium,
    name: 'Chromium',
    debianPackage: 'chromium',
    variable: 'CHROMIUM_PATH',
    why: 'the page tests and the bench run in a real browser',
  });
}
if (wanted.includes('units')) {
  ensureProgram({
    find: findUnits,
    name: 'GNU units',
    debianPackage: 'units',
    variable: 'UNITS_PATH',
    why: 'the unit factors are held against it',
  });
}

if (wanted.includes('pdftotext')) {
  ensureProgram({
    find: findPdftotext,
    name: 'pdftotext',
    debianPackage: 'poppler-utils',
    variable: 'PDFTOTEXT_PATH',
    why: 'the text of the prints is read back from their PDF',
  });
}

/** `npm ci` when the lock file, the Node version or the platform differ from what the stamp was made for. */
function installPackages() {
  const stamp = 'node_modules/.install-stamp';
  const digest = createHash('sha256')
    .update(readFileSync('package-lock.json'))
    .update(`${process.version} ${process.platform} ${process.arch}`)
    .digest('hex');
  if (holds(stamp, digest)) return;
  say('Installing the packages of package-lock.json; the first time this takes about a minute.');
  const npm = process.env.npm_execpath;
  const options = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  if (npm && /npm-cli\.c?js$/.test(npm)) run(process.execPath, [npm, ...options], 'npm ci');
  else run(process.platform === 'win32' ? 'npm.cmd' : 'npm', options, 'npm ci');
  write(stamp, digest);
}

/** data/ -> src/engine/tables/generated.ts and made-version.ts, checked on the way. */
function makeTables() {
  const stamp = 'build/tables.stamp';
  const digest = digestOf(['data', 'scripts/tables.mjs', 'scripts/versions.mjs']);
  const made = ['generated.ts', 'made-version.ts'].map((name) => `src/engine/tables/${name}`);
  if (made.every((file) => existsSync(file)) && holds(stamp, digest)) return;
  run(process.execPath, ['scripts/tables.mjs'], 'The tables of data/');
  write(stamp, digest);
}

/** src -> dist/web, with Vite's own program. */
function buildWeb() {
  const stamp = 'build/web.stamp';
  const places = ['src', 'vite.config.ts', 'package.json', 'package-lock.json', 'tsconfig.base.json'];
  const digest = digestOf(places, (file) => !/\.test\.tsx?$/.test(file));
  if (existsSync('dist/web/index.html') && holds(stamp, digest)) return;
  say('Building the page.');
  run(process.execPath, ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'], 'Building the page');
  write(stamp, digest);
}

/**
 * Runs one program to its end, with nothing on its input and all it says on stderr.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {string} what
 */
function run(program, args, what) {
  const env = { ...process.env };
  delete env.NODE_ENV;
  const ended = spawnSync(program, args, { env, stdio: ['ignore', 2, 2], shell: program.endsWith('.cmd') });
  if (ended.error) giveUp(`${what}: ${ended.error.message}.`);
  if (ended.status !== 0) giveUp(`${what} did not succeed; what stands above says why.`);
}
