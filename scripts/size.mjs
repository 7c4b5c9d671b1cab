// @ts-check
// How heavy the first screen is: script and style that dist/web/index.html loads before anything is touched,
// with all they import statically, and the record that is opened at once; each file gzipped as a server would send it.
//   node scripts/size.mjs [--json]     exit 1 above the limit

import './node-version.mjs';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { parseSync } from 'oxc-parser';

/** The aim of the first screen: 60 kB of script and style, gzipped. */
export const LIMIT_BYTES = 60_000;

/**
 * Files of the first screen and their gzipped sizes.
 * @param {string} root folder of the built page
 * @returns {{ files: { file: string, gzipBytes: number }[], gzipBytes: number }}
 */
export function firstScreen(root) {
  const page = path.join(root, 'index.html');
  if (!existsSync(page)) throw new Error(`${page} is not there: build the page first (node scripts/ensure.mjs web).`);
  const waiting = loadedBy(readFileSync(page, 'utf8')).map((address) => path.join(root, address));
  if (!waiting.some((file) => file.endsWith('.js'))) throw new Error(`${page} loads no script: nothing to weigh.`);
  const files = new Map();
  for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
    if (files.has(file)) continue;
    const content = readFileSync(file);
    files.set(file, gzipSync(content).length);
    if (file.endsWith('.js'))
      waiting.push(...importedBy(file, content.toString('utf8')), ...openedAtOnce(file, content.toString('utf8')));
  }
  const list = [...files].map(([file, gzipBytes]) => ({ file: path.relative(root, file), gzipBytes }));
  return { files: list, gzipBytes: list.reduce((sum, one) => sum + one.gzipBytes, 0) };
}

/**
 * Scripts and styles that a page names: script src, stylesheet and modulepreload links.
 * @param {string} html
 * @returns {string[]}
 */
export function loadedBy(html) {
  /** @type {string[]} */
  const found = [];
  for (const [tag, name] of html.matchAll(/<(script|link)\b[^>]*>/g)) {
    const rel = /\brel="?([\w-]+)/.exec(tag)?.[1];
    const address = (name === 'script' ? /\bsrc="?([^"\s>]+)/ : /\bhref="?([^"\s>]+)/).exec(tag)?.[1];
    const counts = name === 'script' || rel === 'stylesheet' || rel === 'modulepreload';
    if (counts && address !== undefined) found.push(address);
  }
  return found;
}

/**
 * The record's own script: fetched by itself, but always and at once, so it counts.
 * @param {string} file
 * @param {string} code
 */
function openedAtOnce(file, code) {
  return [...code.matchAll(/import\(\s*[`'"]\.\/(open-[\w-]+\.js)[`'"]/g)].map(([, name]) =>
    path.join(path.dirname(file), String(name)),
  );
}

/**
 * Files that a built script imports before it runs; what it loads later does not count.
 * @param {string} file
 * @param {string} code
 */
function importedBy(file, code) {
  const { module } = parseSync(file, code);
  const from = [
    ...module.staticImports.map((one) => one.moduleRequest.value),
    ...module.staticExports.flatMap((one) => one.entries.map((entry) => entry.moduleRequest?.value)),
  ];
  return from.filter((name) => name?.startsWith('.')).map((name) => path.join(path.dirname(file), String(name)));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { files, gzipBytes } = firstScreen('dist/web');
  if (process.argv.includes('--json')) {
    process.stdout.write(`${JSON.stringify({ files, gzipBytes, limitBytes: LIMIT_BYTES })}\n`);
  } else {
    for (const one of files) process.stdout.write(`  ${(one.gzipBytes / 1000).toFixed(1)} kB  ${one.file}\n`);
    const total = (gzipBytes / 1000).toFixed(1);
    process.stdout.write(`First screen, script and style, gzip: ${total} kB of at most ${LIMIT_BYTES / 1000} kB.\n`);
  }
  if (!(gzipBytes <= LIMIT_BYTES)) process.exitCode = 1;
}
