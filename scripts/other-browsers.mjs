// @ts-check
// Browsers beside Chromium, used where they are installed and missed by nobody where not: the store, taking in a file and
// opening without a network are tried in them too, and `npm test` says in which. Stock builds, driven by their own protocols.

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { onPath } from './programs.mjs';

/** @typedef {{ name: 'Firefox' | 'WebKit', program: string, version: string, display: string | undefined }} Browser */

/** @returns {Browser | undefined} Firefox, which answers to Marionette */
export function findFirefox() {
  const program = onPath(['firefox-esr', 'firefox']);
  if (program === undefined) return undefined;
  return { name: 'Firefox', program, version: versionOf(program, ['--version']), display: undefined };
}

/** @returns {Browser | undefined} WebKit's small browser with its driver; it needs a display, or a program that is one */
export function findWebKit() {
  const program = onPath(['WebKitWebDriver']);
  const browser = ['x86_64-linux-gnu', 'aarch64-linux-gnu']
    .flatMap((machine) => [
      `/usr/lib/${machine}/webkit2gtk-4.1/MiniBrowser`,
      `/usr/lib/${machine}/webkit2gtk-4.0/MiniBrowser`,
    ])
    .find((file) => existsSync(file));
  const display = process.env.DISPLAY ?? onPath(['Xvfb']);
  if (program === undefined || browser === undefined || display === undefined) return undefined;
  // It tells its version only where it has a display; the library beside it is told by the package manager of Debian.
  const version = versionOf('dpkg-query', ['--show', 'webkit2gtk-driver']);
  return { name: 'WebKit', program: browser, version, display };
}

/** @returns {readonly Browser[]} */
export function otherBrowsers() {
  return [findFirefox(), findWebKit()].filter((one) => one !== undefined);
}

/**
 * In which browsers the page tests run, as one line.
 * @param {string | undefined} chromium
 */
export function browsersSaid(chromium) {
  const first = chromium === undefined ? 'Chromium not installed' : `Chromium${versionOf(chromium, ['--version'])}`;
  const others = /** @type {const} */ ([
    ['Firefox', findFirefox()],
    ['WebKit', findWebKit()],
  ]);
  const said = others.map(([name, found]) =>
    found === undefined ? `${name} not installed, left out` : `${name}${found.version} (store, taking in, offline)`,
  );
  return `browsers: ${[first, ...said].join('; ')}`;
}

/**
 * A space and the version, or nothing where the program does not tell it.
 * @param {string} program
 * @param {readonly string[]} args
 */
function versionOf(program, args) {
  const told = spawnSync(program, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
  const version = /\d+(\.\d+)+\S*/.exec(told.stdout ?? '')?.[0];
  return version === undefined ? '' : ` ${version}`;
}
