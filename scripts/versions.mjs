// Which tables and which formulas a figure came from: a digest of all that computes in data/*.csv, and the number, date
// and model that data/versions.json gives it. Sources, marks, notes and reasons compute nothing and leave it as it is.
// scripts/tables.mjs writes the module; test/house/versions.test.ts holds the digest to the newest version.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Signs of a digest: enough to tell two tables apart, few enough to read out. */
export const DIGEST_SIGNS = 8;

/** A digest of lines whose order does not matter. */
export function digestOfLines(lines) {
  const all = [...lines].sort().join('\n');
  return createHash('sha256').update(all).digest('hex').slice(0, DIGEST_SIGNS);
}

/** Digest of what computes: every figure with its place, what a thing is called and where it may go. */
export function tablesDigest({ figures, materials, sugars, excluded }) {
  return digestOfLines([
    ...figures.map(({ table, id, quantity, numbers }) => JSON.stringify(['figure', table, id, quantity, ...numbers])),
    ...materials.map(({ id, name, group, into }) => JSON.stringify(['material', id, name, group, into])),
    ...sugars.map(({ id, name }) => JSON.stringify(['sugar', id, name])),
    ...excluded.map(({ id, name, latin, part, group, into }) =>
      JSON.stringify(['excluded', id, name, latin, part, group, into]),
    ),
  ]);
}

/** All versions, oldest first, as data/versions.json has them. */
export function versionsIn(folder) {
  return JSON.parse(readFileSync(join(folder, 'versions.json'), 'utf8'));
}

/** The text of src/engine/tables/made-version.ts. */
export function versionModule(folder, digest) {
  const rows = versionsIn(folder);
  const { tables, model } = rows.at(-1);
  // A row that only changes a formula leaves the tables their own date.
  const { on } = rows.find((row) => row.tables === tables);
  return `// Made by scripts/tables.mjs from data/*.csv and data/versions.json. Not edited by hand, not kept in git.
export const tables = { number: ${tables}, on: '${on}', digest: '${digest}' };
export const model = ${model};
`;
}
