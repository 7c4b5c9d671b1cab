// Reading an input from outside: one schema, all problems at once, in one wording.
//   field: what is wrong; allowed: what would do
// Schemas are written with zod/mini and the helpers of fields.ts, whose messages read "what; allowed: …".

import type * as z from 'zod/mini';
import { at, type Problem, parted, pathText, SEPARATOR } from '#journal/problem.ts';

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
  const found: Found = { problems: [], unread: [], strange: new Map() };
  for (const issue of first.error.issues) collect(issue, [], input, found);
  if (found.problems.length > 0) return { ok: false, problems: found.problems };
  const second = schema.safeParse(without(input, found.strange));
  if (second.success) return { ok: true, value: second.data, unread: found.unread };
  for (const issue of second.error.issues) collect(issue, [], input, found);
  return { ok: false, problems: found.problems };
}

type Issue = z.core.$ZodIssue;

interface Found {
  readonly problems: Problem[];
  /** Paths of the fields that are not read, as they are told. */
  readonly unread: string[];
  /** The same fields by the object that holds them: a name may hold dots, a path as text would not tell them apart. */
  readonly strange: Map<object, Set<string>>;
}

function collect(issue: Issue, above: readonly PropertyKey[], input: unknown, found: Found): void {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    const holder = at(input, path) as object;
    found.strange.set(holder, new Set(issue.keys));
    for (const key of issue.keys) found.unread.push(pathText([...path, key]));
    return;
  }
  if (issue.code === 'invalid_union' && !issue.message.includes(SEPARATOR) && issue.errors.length > 0) {
    const closest = issue.errors.reduce((a, b) => (b.length < a.length ? b : a));
    for (const inner of closest) collect(inner, path, input, found);
    return;
  }
  const [what, allowed] = parted(issue.message);
  const value = at(input, path);
  found.problems.push({
    field: pathText(path) || 'input',
    value,
    message: value === undefined ? 'is missing' : `${what ?? issue.message}`,
    allowed: allowed ?? 'see help for this word',
  });
}

/** A deep copy of plain data that leaves out some fields of some of its objects. */
function without(input: unknown, strange: Found['strange']): unknown {
  if (Array.isArray(input)) return input.map((item) => without(item, strange));
  if (typeof input !== 'object' || input === null) return input;
  const left = strange.get(input);
  const kept = Object.entries(input).filter(([key]) => left?.has(key) !== true);
  return Object.fromEntries(kept.map(([key, value]) => [key, without(value, strange)]));
}

/** One line for a person: `field: what is wrong (value); allowed: …`. */
export function problemLine(p: Problem): string {
  const shown = p.value === undefined ? '' : ` (got ${shorten(p.value)})`;
  return `${cut(p.field, MOST_OF_A_FIELD)}: ${p.message}${shown}${SEPARATOR}${p.allowed}`;
}

const MOST_OF_A_VALUE = 60;
const MOST_OF_A_FIELD = 80;

function shorten(value: unknown): string {
  const text = typeof value === 'number' ? numberText(value) : (JSON.stringify(value) ?? String(value));
  return cut(text, MOST_OF_A_VALUE);
}

/** A number as it was read, a zero with its sign too. */
function numberText(value: number): string {
  return Object.is(value, -0) ? '-0' : String(value);
}

/** The beginning of a text that is too long to show, with a sign that more stood there. */
export function cut(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${[...text.slice(0, 2 * most)].slice(0, most - 1).join('')}…`;
}
