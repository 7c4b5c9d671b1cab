// What is wrong with an entry, at a named field: the shape and wording every edge of the house uses.
// A schema check says "what is wrong; allowed: what would do"; here its findings become plain problems.
// The sentences for a person are put together by whoever shows them.

import type * as z from 'zod/mini';

/** One thing wrong with an entry, at a named field. */
export interface Problem {
  readonly field: string;
  readonly value: unknown;
  readonly message: string;
  readonly allowed: string;
}

/** Between what is wrong and what would do. */
export const SEPARATOR = '; allowed: ';
const NOT_A_FIELD = 'is no field of this kind of entry';

/** The message of a schema check: what is wrong, and what would do. */
export function says(what: string, allowed: string): string {
  return what + SEPARATOR + allowed;
}

/** What is wrong, and what would do where that is told. Only the first mark parts them: a name that stands in what would do may hold one. */
export function parted(message: string): readonly [what: string, allowed: string | undefined] {
  const at = message.indexOf(SEPARATOR);
  return at < 0 ? [message, undefined] : [message.slice(0, at), message.slice(at + SEPARATOR.length)];
}

/** Every problem a schema found, with the field named from the entry's root. */
export function problemsOf(issues: readonly z.core.$ZodIssue[], input: unknown): readonly Problem[] {
  return issues.flatMap((issue) => collect(issue, [], input));
}

function collect(issue: z.core.$ZodIssue, above: readonly PropertyKey[], input: unknown): readonly Problem[] {
  const path = [...above, ...issue.path];
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      field: pathText([...path, key]),
      value: at(input, [...path, key]),
      message: NOT_A_FIELD,
      allowed: 'nothing here',
    }));
  }
  if (issue.code === 'invalid_union' && !issue.message.includes(SEPARATOR) && issue.errors.length > 0) {
    const closest = issue.errors.reduce((a, b) => (b.length < a.length ? b : a));
    return closest.flatMap((inner) => collect(inner, path, input));
  }
  const [what, allowed = 'an entry as this program writes it'] = parted(issue.message);
  const value = at(input, path);
  return [{ field: pathText(path) || 'entry', value, message: value === undefined ? 'is missing' : what, allowed }];
}

/** A name that can stand in a path as it is. */
const PLAIN = /^[\p{L}\p{N}_$-]+$/u;

/** A path as one text: parts[0].mass. A name with dots, spaces or signs stands in quotes: parts[0]["a.b"]. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else if (PLAIN.test(String(key))) text += `${text ? '.' : ''}${String(key)}`;
    else text += `[${JSON.stringify(String(key))}]`;
  }
  return text;
}

/** What an input has at a path; own fields only. */
export function at(input: unknown, path: readonly PropertyKey[]): unknown {
  let here: unknown = input;
  for (const key of path) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, key)) return undefined;
    here = (here as Record<PropertyKey, unknown>)[key];
  }
  return here;
}
