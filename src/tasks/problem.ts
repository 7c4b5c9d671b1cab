// Reading an input from outside: one schema, all problems at once, in one wording.
//   field: what is wrong; allowed: what would do
// Schemas are written with zod/mini and the helpers of fields.ts, whose messages read "what; allowed: …".

import type * as z from 'zod/mini';
import { at, type Problem, pathText, SEPARATOR } from '#journal/problem.ts';

export { type Problem, says } from '#journal/problem.ts';

export type Read<T> =
  | { readonly ok: true; readonly value: T; readonly unread: readonly string[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a whole input and reports every problem. A field that no word of the contract has is not an
 * error: it is listed in `unread`, and the answer says that it was not read.
 */
export function read<T>(schema: z.ZodMiniType<T>, input: unknown): Read<T> {
  const first = schema.safeParse(input);
  if (first.success) return { ok: true, value: first.data, unread: [] };
  const unread: string[] = [];
  const problems: Problem[] = [];
  for (const issue of first.error.issues) collect(issue, [], input, problems, unread);
  if (problems.length > 0) return { ok: false, problems };
  const second = schema.safeParse(without(input, unread));
  if (second.success) return { ok: true, value: second.data, unread };
  for (const issue of second.error.issues) collect(issue, [], input, problems, unread);
  return { ok: false, problems };
}

type Issue = z.core.$ZodIssue;

function collect(
  issue: Issue,
  above: readonly PropertyKey[],
  input: unknown,
  problems: Problem[],
  unread: string[],
): void {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys) unread.push(pathText([...path, key]));
    return;
  }
  if (issue.code === 'invalid_union' && !issue.message.includes(SEPARATOR) && issue.errors.length > 0) {
    const closest = issue.errors.reduce((a, b) => (b.length < a.length ? b : a));
    for (const inner of closest) collect(inner, path, input, problems, unread);
    return;
  }
  const field = pathText(path) || 'input';
  const [what, allowed] = issue.message.split(SEPARATOR);
  const value = at(input, path);
  const missing = value === undefined;
  problems.push({
    field,
    value,
    message: missing ? 'is missing' : `${what ?? issue.message}`,
    allowed: allowed ?? 'see help for this word',
  });
}

/** A deep copy of plain data that leaves out the named paths. */
function without(input: unknown, paths: readonly string[], here = ''): unknown {
  if (Array.isArray(input)) return input.map((item, i) => without(item, paths, `${here}[${i}]`));
  if (typeof input !== 'object' || input === null) return input;
  const copy: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(input)) {
    const path = here ? `${here}.${key}` : key;
    if (!paths.includes(path)) copy[key] = without(value, paths, path);
  }
  return copy;
}

/** One line for a person: `field: what is wrong (value); allowed: …`. */
export function problemLine(p: Problem): string {
  const shown = p.value === undefined ? '' : ` (got ${shorten(p.value)})`;
  return `${p.field}: ${p.message}${shown}${SEPARATOR}${p.allowed}`;
}

function shorten(value: unknown): string {
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}
