// Reading one entry from outside: a file, another device, a form. What is known is checked whole; what this program
// cannot know yet (a new kind, a newer version, a new field around the body) is sealed: kept to the letter, shown as
// such and passed on; what is damaged is told with all its problems. Nothing is repaired and nothing is guessed.

import * as z from 'zod/mini';
import { id, text, whole } from './bounds.ts';
import { type Entry, type Envelope, isWithdrawal, type Sealed } from './entry.ts';
import { type Kind, type KindTable, kinds } from './kinds/index.ts';
import { readText, tooLong } from './line-text.ts';
import { isOn } from './moment.ts';
import { type Problem, problemsOf, says } from './problem.ts';

export type Reading =
  | { readonly state: 'known'; readonly entry: Entry }
  | { readonly state: 'sealed'; readonly entry: Sealed }
  | { readonly state: 'damaged'; readonly problems: readonly Problem[] };

const INSTANT = /^(\d{4}-\d\d-\d\d)T([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/;
const instantAllowed = 'an instant in UTC such as 2026-06-03T17:20:05.120Z';
const onAllowed = 'a local date, or a local date and time, such as 2026-06-03T18:20';

const envelope = z.object(
  {
    id,
    plot: text(64),
    by: text(40),
    device: text(64),
    at: z
      .string({ error: () => says('is not an instant', instantAllowed) })
      .check(z.refine(isInstant, says('is not an instant', instantAllowed))),
    on: z
      .string({ error: () => says('is not a date', onAllowed) })
      .check(z.refine(isOn, says('is not a date', onAllowed))),
    kind: text(64),
    v: whole(1, 1_000_000),
    replaces: z.optional(id),
  },
  { error: () => says('is not an entry', 'an object with id, plot, by, device, at, on, kind, v and body') },
);

const FIELDS: readonly string[] = ['id', 'plot', 'by', 'device', 'at', 'on', 'kind', 'v', 'body', 'replaces'];

/**
 * Reads a value as an entry.
 * @param line the line it came from, kept where the entry is sealed; without it the value is written out
 */
export function readEntry(value: unknown, line?: string, table: KindTable = kinds): Reading {
  const around = envelope.safeParse(value);
  if (!around.success) return { state: 'damaged', problems: problemsOf(around.error.issues, value) };
  const given = value as Envelope & { readonly body?: unknown };
  const { id, plot, by, device, at, on, kind, v, replaces } = around.data;
  const head: Envelope = { id, plot, by, device, at, on, kind, v, ...(replaces !== undefined && { replaces }) };
  const known = Object.hasOwn(table, kind) ? table[kind] : undefined;
  if (known === undefined || v > known.v || Object.keys(given).some((field) => !FIELDS.includes(field))) {
    // A line holds no line break; a value handed over in several lines is written out on one.
    const kept = line === undefined || /[\n\r]/.test(line) ? JSON.stringify(value) : line;
    return { state: 'sealed', entry: { ...head, sealed: true, line: kept } };
  }
  // An own field only: a body that an object inherits was never written by anyone.
  const body = Object.hasOwn(given, 'body') ? given.body : undefined;
  const entry: Entry = { ...head, kind: kind as Kind, body, ...(replaces !== undefined && { replaces }) };
  if (isWithdrawal(entry)) return { state: 'known', entry };
  const schema = v === known.v ? known.newest : known.older?.[v];
  if (schema === undefined) throw new RangeError(`readEntry: ${kind} has no schema for version ${v}`);
  const read = schema.safeParse(body);
  if (read.success) return { state: 'known', entry };
  const problems = problemsOf(read.error.issues, body);
  return {
    state: 'damaged',
    problems: problems.map((p) => ({ ...p, field: p.field === 'entry' ? 'body' : `body.${p.field}` })),
  };
}

/** Reads one line of a file as an entry. */
export function readLine(line: string, table: KindTable = kinds): Reading {
  const long = tooLong(line);
  if (long !== undefined) return { state: 'damaged', problems: [long] };
  const read = readText(line);
  return read.ok ? readEntry(read.value, line, table) : { state: 'damaged', problems: [read.problem] };
}

/** A sealed entry that this program has learnt to read since it was kept; otherwise as it is. */
export function unsealed(sealed: Sealed, table: KindTable = kinds): Entry | Sealed {
  const known = Object.hasOwn(table, sealed.kind) ? table[sealed.kind] : undefined;
  if (known === undefined || sealed.v > known.v) return sealed;
  const read = readLine(sealed.line, table);
  return read.state === 'known' ? read.entry : sealed;
}

function isInstant(value: string): boolean {
  const date = INSTANT.exec(value)?.[1];
  return date !== undefined && isOn(date);
}
