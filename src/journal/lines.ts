// The record as a file: JSON Lines, a header first, then one entry a line, then the photos. A file is taken in whole or
// not at all, and every line that is refused is told with its number. Sealed entries go out as the very line they came
// in on. Reading a file into a Blob or out of one is the store's and the screens' work.

import * as z from 'zod/mini';
import { fields, id, listOf, oneOf, text, whole } from './bounds.ts';
import { isSealed, type Kept } from './entry.ts';
import { type Problem, problemsOf, says } from './problem.ts';
import { readEntry } from './read.ts';
import { sameContent } from './same.ts';

export const FORMAT = 'tilthwright-journal';
export const FORMAT_VERSION = 1;
const MOST_PHOTO_SIGNS = 28_000_000;
const BASE64 = /^(?:[A-Za-z0-9+/]{4})*(?:[A-Za-z0-9+/]{2}==|[A-Za-z0-9+/]{3}=)?$/;

/** The first line. */
export interface Header {
  readonly format: typeof FORMAT;
  readonly v: number;
  /** The plots it carries, in order. */
  readonly plots: readonly string[];
  /** The one plot it carries; null where there are several or none. */
  readonly plot: string | null;
  readonly count: number;
  readonly photos: number;
}

/** A photo as a line carries it. */
export interface PhotoLine {
  readonly photo: string;
  readonly type: 'image/jpeg' | 'image/webp' | 'image/png';
  readonly base64: string;
}

/** A line that was refused, counted from 1 as an editor counts. */
export interface RefusedLine {
  readonly line: number;
  readonly problems: readonly Problem[];
}

export type Import =
  | {
      readonly ok: true;
      readonly header: Header;
      /** Not here yet, in the order of the file. */
      readonly fresh: readonly Kept[];
      readonly alreadyCount: number;
      readonly sealedCount: number;
      readonly photos: readonly PhotoLine[];
    }
  | { readonly ok: false; readonly refused: readonly RefusedLine[] };

const headerSchema = z.object(
  {
    format: z.literal(FORMAT, { error: () => says('is not the format of this record', FORMAT) }),
    v: whole(1, FORMAT_VERSION),
    plots: z.optional(listOf(text(64), 0, 10_000)),
    plot: z.nullable(text(64)),
    count: whole(0, 100_000_000),
    photos: z.optional(whole(0, 10_000_000)),
  },
  { error: () => says('is no header', `{"format":"${FORMAT}","v":${FORMAT_VERSION},…}`) },
);

const photoSchema = fields({
  photo: id,
  type: oneOf(['image/jpeg', 'image/webp', 'image/png']),
  base64: text(MOST_PHOTO_SIGNS).check(z.refine((t) => BASE64.test(t), says('is not whole base64', 'base64'))),
});

/** Entries and photos as the text of a file; entries by id, so that the same record always gives the same file. */
export function exportLines(entries: readonly Kept[], photos: readonly PhotoLine[] = []): string {
  const byId = [...new Map(entries.map((kept) => [kept.id, kept])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const plots = [...new Set(byId.map(({ plot }) => plot))].sort();
  const plot = plots.length === 1 ? (plots[0] ?? null) : null;
  const header: Header = { format: FORMAT, v: FORMAT_VERSION, plot, plots, count: byId.length, photos: photos.length };
  const lines = [
    JSON.stringify(header),
    ...byId.map((kept) => (isSealed(kept) ? kept.line : JSON.stringify(kept))),
    ...photos.map(({ photo, type, base64 }) => JSON.stringify({ photo, type, base64 })),
  ];
  return `${lines.join('\n')}\n`;
}

/**
 * Reads a file against what is here already.
 *
 * All or nothing: one refused line refuses the file. The same entry again is counted and left; another content under a
 * known id is refused. A file with fewer lines than its header says was cut, and is refused.
 */
export function importLines(file: string, here: (id: string) => Kept | undefined): Import {
  const lines = file
    .replace(/^\uFEFF/, '')
    .split('\n')
    .map((line) => (line.endsWith('\r') ? line.slice(0, -1) : line));
  const refused: RefusedLine[] = [];
  const seen = new Map<string, Kept>();
  const photos = new Map<string, PhotoLine>();
  const fresh: Kept[] = [];
  const tally = { header: undefined as Header | undefined, entries: 0, photos: 0, already: 0, sealed: 0 };
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue;
    const problems = readOne(line);
    if (problems.length > 0) refused.push({ line: index + 1, problems });
    if (tally.header === undefined) return { ok: false, refused };
  }
  const { header } = tally;
  if (header === undefined) return { ok: false, refused: [{ line: 1, problems: [lacking('an empty file')] }] };
  if (refused.length > 0) return { ok: false, refused };
  const cut = [...short('count', header.count, tally.entries), ...short('photos', header.photos, tally.photos)];
  if (cut.length > 0) return { ok: false, refused: [{ line: 1, problems: cut }] };
  return {
    ok: true,
    header,
    fresh,
    alreadyCount: tally.already,
    sealedCount: tally.sealed,
    photos: [...photos.values()],
  };

  function readOne(line: string): readonly Problem[] {
    const value = parsed(line);
    if (tally.header === undefined) return readHeader(value);
    if (value === undefined) return [problem('line', line, 'is no JSON', 'one whole JSON object on a line')];
    if (isPhotoLine(value)) return readPhoto(value);
    tally.entries++;
    const read = readEntry(value, line);
    if (read.state === 'damaged') return read.problems;
    const { entry } = read;
    const before = seen.get(entry.id) ?? here(entry.id);
    if (before === undefined) {
      seen.set(entry.id, entry);
      fresh.push(entry);
    } else if (sameContent(before, entry)) tally.already++;
    else return [problem('id', entry.id, 'stands here already with another content', 'the same entry, or a new id')];
    if (read.state === 'sealed') tally.sealed++;
    return [];
  }

  function readHeader(value: unknown): readonly Problem[] {
    const read = headerSchema.safeParse(value);
    if (!read.success) return problemsOf(read.error.issues, value);
    const { format, v, plot, count } = read.data;
    const plots = read.data.plots ?? (plot === null ? [] : [plot]);
    tally.header = { format, v, plot, plots, count, photos: read.data.photos ?? 0 };
    return [];
  }

  function readPhoto(value: unknown): readonly Problem[] {
    tally.photos++;
    const read = photoSchema.safeParse(value);
    if (!read.success) return problemsOf(read.error.issues, value);
    photos.set(read.data.photo, read.data);
    return [];
  }
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}

function isPhotoLine(value: unknown): boolean {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, 'photo') && !Object.hasOwn(value, 'kind');
}

function problem(field: string, value: unknown, message: string, allowed: string): Problem {
  return { field, value, message, allowed };
}

function lacking(found: string): Problem {
  return problem('header', found, 'is missing', `a first line {"format":"${FORMAT}",…}`);
}

function short(field: string, promised: number, found: number): readonly Problem[] {
  if (promised === found) return [];
  const what =
    found < promised ? 'is more than the lines that follow: the file was cut' : 'is less than the lines that follow';
  return [problem(field, promised, what, String(found))];
}
