// Reading a file of the record line by line against what is here already. All or nothing: one refused line refuses the file.
// The same entry again is counted and left; another content under a known id is refused. A file with fewer lines than its
// header says was cut, and is refused. Photos are handed on as they come, so that no file is too large to be read.

import type { Kept } from './entry.ts';
import { readText, tooLong } from './line-text.ts';
import { FORMAT, type Header, headerSchema, type PhotoLine, photoSchema, type RefusedLine } from './lines.ts';
import { type Problem, problemsOf } from './problem.ts';
import { readEntry } from './read.ts';
import { sameContent } from './same.ts';

/** Refused lines that are kept to be told; the others are counted. */
const MOST_REFUSED = 200;

export interface WholeFile {
  readonly ok: true;
  readonly header: Header;
  /** Not here yet, in the order of the file. */
  readonly fresh: readonly Kept[];
  /** Ids of all entries of the file. */
  readonly ids: ReadonlySet<string>;
  readonly alreadyCount: number;
  readonly sealedCount: number;
  /** Ids of all photos of the file. */
  readonly photoIds: ReadonlySet<string>;
}

export interface RefusedFile {
  readonly ok: false;
  /** The first of them, at most so many as somebody reads. */
  readonly refused: readonly RefusedLine[];
  readonly refusedCount: number;
}

export type Import = WholeFile | RefusedFile;

export interface FileReader {
  /** Reads the next line, or notes why it could not be had. A photo is handed on, not kept. */
  readonly read: (line: string | Problem) => PhotoLine | undefined;
  /** Refuses the line just read, for a reason that only shows outside. */
  readonly refuse: (problem: Problem) => void;
  /** Whether the file is none of ours, so that no other line of it needs reading. */
  readonly isHopeless: () => boolean;
  readonly end: () => Import;
}

/** A reader for one file; `here` gives what is kept under an id. */
export function fileReader(here: (id: string) => Kept | undefined): FileReader {
  const refused: RefusedLine[] = [];
  const seen = new Map<string, Kept>();
  const photoIds = new Set<string>();
  const fresh: Kept[] = [];
  const tally = { line: 0, refused: 0, entries: 0, photos: 0, already: 0, sealed: 0 };
  let header: Header | undefined;
  let isHopeless = false;

  return {
    read(line) {
      tally.line++;
      if (typeof line !== 'string') refuse([line]);
      else if (line.trim() !== '') return readOne(line);
      else return undefined;
      isHopeless ||= header === undefined;
      return undefined;
    },
    refuse: (problem) => refuse([problem]),
    isHopeless: () => isHopeless,
    end() {
      if (header === undefined && tally.refused === 0) refuse([lacking()], 1);
      if (header !== undefined && tally.refused === 0) {
        const cut = [...short('count', header.count, tally.entries), ...short('photos', header.photos, tally.photos)];
        if (cut.length > 0) refuse(cut, 1);
      }
      if (header === undefined || tally.refused > 0) return { ok: false, refused, refusedCount: tally.refused };
      const ids = new Set(seen.keys());
      return { ok: true, header, fresh, ids, alreadyCount: tally.already, sealedCount: tally.sealed, photoIds };
    },
  };

  function refuse(problems: readonly Problem[], line = tally.line): void {
    if (problems.length === 0) return;
    const last = refused.at(-1);
    if (last?.line === line) refused[refused.length - 1] = { line, problems: [...last.problems, ...problems] };
    else {
      tally.refused++;
      if (refused.length < MOST_REFUSED) refused.push({ line, problems });
    }
  }

  function readOne(line: string): PhotoLine | undefined {
    const read = readText(line);
    if (header === undefined) {
      refuse(read.ok ? readHeader(read.value) : [read.problem]);
      isHopeless = header === undefined;
      return undefined;
    }
    if (!read.ok) {
      refuse([read.problem]);
      return undefined;
    }
    if (isPhotoLine(read.value)) return readPhoto(read.value);
    refuse(readKept(read.value, line));
    return undefined;
  }

  function readHeader(value: unknown): readonly Problem[] {
    const read = headerSchema.safeParse(value);
    if (!read.success) return problemsOf(read.error.issues, value);
    const { format, v, plot, count, madeAt, device } = read.data;
    const plots = read.data.plots ?? (plot === null ? [] : [plot]);
    header = { format, v, plot, plots, count, photos: read.data.photos ?? 0, madeAt, device };
    return [];
  }

  function readKept(value: unknown, line: string): readonly Problem[] {
    tally.entries++;
    const long = tooLong(line);
    if (long !== undefined) return [long];
    const read = readEntry(value, line);
    if (read.state === 'damaged') return read.problems;
    const { entry } = read;
    const kept = here(entry.id);
    const before = seen.get(entry.id) ?? kept;
    if (before !== undefined && !sameContent(before, entry)) {
      const allowed = 'the same entry, or a new id';
      return [{ field: 'id', value: entry.id, message: 'stands here already with another content', allowed }];
    }
    if (before === undefined) fresh.push(entry);
    else tally.already++;
    if (read.state === 'sealed') tally.sealed++;
    seen.set(entry.id, before ?? entry);
    return [];
  }

  function readPhoto(value: unknown): PhotoLine | undefined {
    tally.photos++;
    const read = photoSchema.safeParse(value);
    if (!read.success) refuse(problemsOf(read.error.issues, value));
    else photoIds.add(read.data.photo);
    return read.success ? read.data : undefined;
  }
}

/** Reads a small file as one text, with its photos. */
export function importLines(
  file: string,
  here: (id: string) => Kept | undefined,
): (WholeFile & { readonly photos: readonly PhotoLine[] }) | RefusedFile {
  const reader = fileReader(here);
  const photos = new Map<string, PhotoLine>();
  for (const line of file.replace(/^\uFEFF/, '').split('\n')) {
    const photo = reader.read(line.endsWith('\r') ? line.slice(0, -1) : line);
    if (photo !== undefined) photos.set(photo.photo, photo);
    if (reader.isHopeless()) break;
  }
  const read = reader.end();
  return read.ok ? { ...read, photos: [...photos.values()] } : read;
}

function isPhotoLine(value: unknown): boolean {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, 'photo') && !Object.hasOwn(value, 'kind');
}

function lacking(): Problem {
  const allowed = `a first line {"format":"${FORMAT}",…}`;
  return { field: 'header', value: 'an empty file', message: 'is missing', allowed };
}

function short(field: string, promised: number, found: number): readonly Problem[] {
  if (promised === found) return [];
  const message =
    found < promised ? 'is more than the lines that follow: the file was cut' : 'is less than the lines that follow';
  return [{ field, value: promised, message, allowed: String(found) }];
}
