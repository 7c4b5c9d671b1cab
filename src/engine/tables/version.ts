// Which tables and which formulas are at work: number, date and digest of the tables, number of the formulas. It stands
// apart from the tables themselves, so that whoever only names them need not load them.
// Raised in data/versions.json; scripts/versions.mjs makes the digest.

import * as made from './made-version.ts';

/** The tables and formulas that a figure came from. A changed formula counts like a changed table. */
export interface Version {
  readonly tables: { readonly number: number; readonly on: string; readonly digest: string };
  /** Number of the formulas. */
  readonly model: number;
}

/** What is at work now. */
export const version: Version = { tables: made.tables, model: made.model };

/**
 * Whether two figures came from the same tables and formulas. The digest decides, not the number: two programs may have
 * given one number to different tables.
 * @arithmetic comparison
 */
export function isSameVersion(a: Version, b: Version): boolean {
  return a.tables.digest === b.tables.digest && a.model === b.model;
}
