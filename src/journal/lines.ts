// The record as a file: JSON Lines, a header first, then one entry a line, then the photos. A file is taken in whole or
// not at all, and every line that is refused is told with its number. Sealed entries go out as the very line they came
// in on. Here are the lines; reading them one by one is file-reader.ts; how lines come out of a file and go into one,
// part by part, is the store's work.

import * as z from 'zod/mini';
import { type Version, version } from '#engine/tables/version.ts';
import { fields, id, listOf, oneOf, text, whole } from './bounds.ts';
import { isSealed, type Kept } from './entry.ts';
import { type Problem, says } from './problem.ts';

export const FORMAT = 'tilthwright-journal';
export const FORMAT_VERSION = 1;
const MOST_PHOTO_SIGNS = 28_000_000;
/** Signs of the longest line of a file: a photo, with what stands around its base64. */
export const MOST_FILE_LINE_SIGNS = MOST_PHOTO_SIGNS + 1000;
const BASE64 = /^[A-Za-z0-9+/]*={0,2}$/;

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
  /** Tables and formulas of the program that made the file: for whoever reads it, and never asked for on the way in. */
  readonly tables?: Version['tables'];
  readonly model?: Version['model'];
  /** When and on which device the file was made, by its clock; absent in older files. */
  readonly madeAt?: string | undefined;
  readonly device?: string | undefined;
}

/** The phone that makes a file, and when by its clock. */
export type Maker = Pick<Header, 'madeAt' | 'device'>;

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

export const headerSchema = z.object(
  {
    format: z.literal(FORMAT, { error: () => says('is not the format of this record', FORMAT) }),
    v: whole(1, FORMAT_VERSION),
    plots: z.optional(listOf(text(64), 0, 10_000)),
    plot: z.nullable(text(64)),
    count: whole(0, 100_000_000),
    photos: z.optional(whole(0, 10_000_000)),
    madeAt: z.optional(text(64)),
    device: z.optional(text(64)),
  },
  { error: () => says('is no header', `{"format":"${FORMAT}","v":${FORMAT_VERSION},…}`) },
);

export const photoSchema = fields({
  photo: id,
  type: oneOf(['image/jpeg', 'image/webp', 'image/png']),
  base64: text(MOST_PHOTO_SIGNS).check(
    z.refine((t) => t.length % 4 === 0 && BASE64.test(t), says('is not whole base64', 'base64')),
  ),
});

/** The header and the entries of a file, a line each; entries by id, so that the same record always gives the same file. */
export function* recordLines(entries: readonly Kept[], photos: number, maker: Maker = {}): Generator<string> {
  const byId = [...new Map(entries.map((kept) => [kept.id, kept])).values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  const plots = [...new Set(byId.map(({ plot }) => plot))].sort();
  const plot = plots.length === 1 ? (plots[0] ?? null) : null;
  const header: Header = {
    format: FORMAT,
    v: FORMAT_VERSION,
    plot,
    plots,
    count: byId.length,
    photos,
    ...version,
    ...maker,
  };
  yield JSON.stringify(header);
  for (const kept of byId) yield isSealed(kept) ? kept.line : JSON.stringify(kept);
}

/** A photo's line. */
export function photoLine({ photo, type, base64 }: PhotoLine): string {
  return JSON.stringify({ photo, type, base64 });
}

/** Entries and photos as the text of a small file; a large one is written part by part. */
export function exportLines(entries: readonly Kept[], photos: readonly PhotoLine[] = []): string {
  return `${[...recordLines(entries, photos.length), ...photos.map(photoLine)].join('\n')}\n`;
}
