// @ts-check
// Outside programs that the checks need, and where to find them: a browser for the page tests, GNU units as a
// second opinion on unit factors. Found on PATH or named by a variable; on Debian as root they are installed.
// Their absence is never passed over: whoever needs one stops with a sentence. Browsers that are only wished for are in
// other-browsers.mjs.

import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import { giveUp, say } from './say.mjs';

/**
 * The first of some program names that PATH holds.
 * @param {readonly string[]} names
 * @returns {string | undefined}
 */
export function onPath(names) {
  for (const folder of (process.env.PATH ?? '').split(path.delimiter).filter(Boolean)) {
    for (const name of names) {
      const file = path.join(folder, name);
      try {
        accessSync(file, constants.X_OK);
        return file;
      } catch {
        // Not here: look in the next folder.
      }
    }
  }
  return undefined;
}

/**
 * A program named by a variable of the environment, or else the first of its usual names on PATH.
 * @param {string} variable
 * @param {readonly string[]} names
 * @returns {string | undefined}
 */
function named(variable, names) {
  const wanted = process.env[variable];
  if (!wanted) return onPath(names);
  if (!existsSync(wanted)) throw new Error(`${variable} names ${wanted}, which does not exist.`);
  return wanted;
}

/** @returns {string | undefined} the browser for the page tests */
export function findChromium() {
  const windows = ['chrome.exe', 'msedge.exe'];
  const others = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
  return named('CHROMIUM_PATH', process.platform === 'win32' ? windows : others);
}

/** @returns {string | undefined} GNU units; another program of that name does not count */
export function findUnits() {
  const file = named('UNITS_PATH', ['units', 'gunits']);
  if (file === undefined) return undefined;
  const told = spawnSync(file, ['--version'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  return /GNU units/i.test(told.stdout ?? '') ? file : undefined;
}

/** @returns {string | undefined} pdftotext of Poppler, which reads the text of a print back */
export function findPdftotext() {
  return named('PDFTOTEXT_PATH', ['pdftotext']);
}

/**
 * Makes sure that a program is there: finds it, or installs its Debian package when root, or stops.
 * @param {{ find: () => string | undefined, name: string, debianPackage: string, variable: string, why: string }} program
 */
export function ensureProgram({ find, name, debianPackage, variable, why }) {
  try {
    if (find() !== undefined) return;
  } catch (error) {
    giveUp(error instanceof Error ? error.message : String(error));
  }
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    say(`Installing ${name} (Debian package ${debianPackage}): ${why}.`);
    apt(['update', '-qq']);
    apt(['install', '-y', '-qq', '--no-install-recommends', debianPackage]);
    if (find() !== undefined) return;
  }
  giveUp(
    `${name} is missing: ${why}. Install it (Debian: apt-get install ${debianPackage}) or name it in ${variable}.`,
  );
}

/** @param {readonly string[]} args */
function apt(args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const ended = spawnSync('apt-get', args, { env, stdio: ['ignore', 2, 2] });
  if (ended.status !== 0) giveUp(`apt-get ${args.join(' ')} did not succeed.`);
}
