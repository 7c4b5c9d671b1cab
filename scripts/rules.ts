// Writes docs/rules.md from the rules of the engine, their sentences and their examples; with --check it writes
// nothing and fails when the file is not what it would write. The page is made in test/rules/report.ts.

import './node-version.mjs';
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rulesPage } from '../test/rules/report.ts';
import { say } from './say.mjs';

const OUT = join(dirname(fileURLToPath(import.meta.url)), '../docs/rules.md');
const page = rulesPage();

if (!process.argv.includes('--check')) {
  writeFileSync(OUT, page);
  say('Wrote docs/rules.md.');
} else if (readFileSync(OUT, 'utf8') !== page) {
  say('docs/rules.md is not what scripts/rules.ts writes.');
  process.exitCode = 1;
}
