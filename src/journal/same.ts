// Whether two entries of one id say the same, however their fields are ordered. What differs under one id is never
// merged: it is refused or told.

import { isSealed, type Kept } from './entry.ts';

/** A value as text with the fields of every object in one order; what is not JSON counts as absent. */
export function canonical(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null';
  const fields = Object.entries(value).filter(([, inner]) => inner !== undefined);
  fields.sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${fields.map(([key, inner]) => `${JSON.stringify(key)}:${canonical(inner)}`).join(',')}}`;
}

/** An entry as text by which two of the same content are equal. */
export function contentOf(kept: Kept): string {
  if (!isSealed(kept)) return canonical(kept);
  try {
    return canonical(JSON.parse(kept.line));
  } catch {
    // Nested deeper than this machine can walk: the letters of the line decide.
    return kept.line;
  }
}

/** Whether two entries say the same. */
export function sameContent(a: Kept, b: Kept): boolean {
  if (a === b) return true;
  if (isSealed(a) && isSealed(b) && a.line === b.line) return true;
  return contentOf(a) === contentOf(b);
}
