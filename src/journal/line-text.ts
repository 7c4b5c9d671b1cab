// A line of a file as a value. JSON alone is not strict enough for a record: of a field that an object has twice the last one
// is taken in silence, and a line may be of any length. Both are refused here, in words, before anybody reads the value.

import type { Problem } from './problem.ts';

/** Signs of an entry's line, a sealed one too: far above what any kind of entry may hold. @our-caution */
export const MOST_LINE_SIGNS = 4_000_000;
/** Signs of a line that is shown where it is refused. */
const SHOWN_SIGNS = 80;

export type LineText =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problem: Problem };

/** The value of a line, or why it has none. */
export function readText(line: string): LineText {
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return { ok: false, problem: problemOfLine(line, 'is no JSON', 'one whole JSON object on a line') };
  }
  const field = hasNothingTwice(line, value) ? undefined : fieldTwice(line);
  if (field === undefined) return { ok: true, value };
  return { ok: false, problem: { field, value: shown(line), message: 'stands twice', allowed: 'each field once' } };
}

/** A problem of a line as a whole, with its beginning. */
export function problemOfLine(line: string, message: string, allowed: string): Problem {
  return { field: 'line', value: shown(line), message, allowed };
}

/** What is wrong with the length of an entry's line. */
export function tooLong(line: string): Problem | undefined {
  if (line.length <= MOST_LINE_SIGNS) return undefined;
  const millions = MOST_LINE_SIGNS / 1_000_000;
  return problemOfLine(line, 'is too long', `a line of at most ${millions} million characters`);
}

function shown(line: string): string {
  return line.length > SHOWN_SIGNS ? `${line.slice(0, SHOWN_SIGNS)}…` : line;
}

/** Sure where the value, written out, is the line again, as in every file this program made: nothing was left out then. */
function hasNothingTwice(line: string, value: unknown): boolean {
  try {
    return JSON.stringify(value) === line;
  } catch {
    // Nested deeper than this machine can walk: looked at sign by sign.
    return false;
  }
}

/** The first field that one object of a line has twice. The line is known to be JSON. */
function fieldTwice(line: string): string | undefined {
  /** The fields of each object that stands open; a list has none. */
  const open: (Set<string> | undefined)[] = [];
  for (let at = 0; at < line.length; at++) {
    const sign = line[at];
    if (sign === '{') open.push(new Set());
    else if (sign === '[') open.push(undefined);
    else if (sign === '}' || sign === ']') open.pop();
    else if (sign === '"') {
      const end = endOfText(line, at);
      if (isField(line, end)) {
        const field = JSON.parse(line.slice(at, end)) as string;
        const fields = open.at(-1);
        if (fields?.has(field)) return field;
        fields?.add(field);
      }
      at = end - 1;
    }
  }
  return undefined;
}

/** Where a text that begins at a quotation mark has ended. */
function endOfText(line: string, from: number): number {
  let at = from + 1;
  for (;;) {
    const end = line.indexOf('"', at);
    let escapes = 0;
    while (line[end - 1 - escapes] === '\\') escapes++;
    if (escapes % 2 === 0) return end + 1;
    at = end + 1;
  }
}

/** Whether the text that ended here names a field. */
function isField(line: string, end: number): boolean {
  const next = /\S/g;
  next.lastIndex = end;
  return next.exec(line)?.[0] === ':';
}
