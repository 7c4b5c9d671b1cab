// Runs every published batch through the souring model and writes docs/validation.md; with --check it writes nothing
// and fails when the file is not what it would write. It fails, too, when a row outside its band has no reason.
// The work is done in test/validation; this prints.

import './node-version.mjs';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compareAll, DRAWS } from '../test/validation/compare.ts';
import { compareHold } from '../test/validation/hold.ts';
import { readUnmodelled } from '../test/validation/read.ts';
import { reportOf } from '../test/validation/report.ts';
import { faultsOf, leftOut, outsideBand, scoresOf } from '../test/validation/scores.ts';
import { say } from './say.mjs';

const OUT = join(dirname(fileURLToPath(import.meta.url)), '../docs/validation.md');

function standing(): string | undefined {
  try {
    return readFileSync(OUT, 'utf8');
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw fault;
  }
}

const rows = compareAll(DRAWS);
const hold = compareHold();
const text = reportOf(rows, hold, readUnmodelled());
const scores = scoresOf(rows);
const faults = [
  ...faultsOf(rows),
  ...hold
    .filter(({ verdict }) => verdict === 'shorter')
    .map(({ row }) => `L ${row.batch}: our hold is shorter than the published kill time.`),
];

say(`pH: root-mean-square error ${scores.phRmse.toFixed(3)} over ${scores.phRows} rows.`);
say(`Times within the factor: ${scores.timesWithin} of ${scores.timeRows}.`);
say(
  `Rows inside their band: ${scores.bandInside} of ${scores.bandRows}; outside ${outsideBand(rows).length}, left out ${leftOut(rows).length}.`,
);

if (process.argv.includes('--check')) {
  if (standing() !== text) faults.push('docs/validation.md is not what npm run validate writes.');
} else {
  mkdirSync(dirname(OUT), { recursive: true });
  writeFileSync(OUT, text);
  say('Wrote docs/validation.md.');
}
for (const fault of faults) say(fault);
if (faults.length > 0) process.exitCode = 1;
