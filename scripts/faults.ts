// Runs every piece of scripts/faults, or those that are named, prints their counts and writes docs/reliability.md.
//   npm run faults -- [NAME…] [--scale SHARE]
// With a scale below 1 a share of each piece is tried and nothing is written. Exit code 1 when anything failed.

import './node-version.mjs';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { pageWith } from '../test/faults/page.ts';
import { type Found, loadPiece, pieceNames, runPiece } from '../test/faults/piece.ts';
import { giveUp, say } from './say.mjs';

const OUT = join(dirname(fileURLToPath(import.meta.url)), '../docs/reliability.md');
const { values, positionals } = parseArgs({ allowPositionals: true, options: { scale: { type: 'string' } } });
const scale = Number(values.scale ?? 1);
if (!(scale > 0 && scale <= 1)) giveUp(`faults: --scale is a number above 0, up to 1; ${values.scale} is none.`);
const names = pieceNames();
const strange = positionals.filter((name) => !names.includes(name));
if (strange.length > 0) giveUp(`faults: ${strange.join(', ')} is not known; known are ${names.join(', ')}.`);

const found = new Map<string, Found>();
for (const name of positionals.length > 0 ? positionals : names) {
  const one = await runPiece(await loadPiece(name), { scale });
  found.set(name, one);
  say(`\n== ${one.title}`);
  for (const line of [...one.lines, ...(one.aside ?? [])]) say(line);
  say(`Failed: ${one.failed}.`);
}

if (scale === 1) {
  mkdirSync(dirname(OUT), { recursive: true });
  writeFileSync(OUT, pageWith(standing(), found, names));
  say('\nWrote docs/reliability.md.');
}
const failed = [...found.values()].reduce((sum, one) => sum + one.failed, 0);
say(`${found.size} pieces, ${failed} failed`);
process.exitCode = failed === 0 && found.size > 0 ? 0 : 1;

function standing(): string {
  try {
    return readFileSync(OUT, 'utf8');
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw fault;
  }
}
