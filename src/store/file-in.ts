// A file of the record read from where it lies, part by part, however large it is: into the store, whole or not at all, or
// only held against it, to see what of the record it carries. While it reads the page can answer, and may stop it.

import type { Kept } from '#journal/entry.ts';
import { fileReader, type Import } from '#journal/file-reader.ts';
import type { Problem } from '#journal/problem.ts';
import { fileLines } from './file-lines.ts';
import { photoOf, photoOfLine } from './photos.ts';
import { barePhoto, samePicture } from './picture/picture.ts';
import { type Photo, type Store, StoreFailure } from './store.ts';
import { turns } from './turns.ts';

/** Told of how far a long work is, as a fraction, and heard when it is to stop. */
export interface Watched {
  readonly progress?: (fraction: number) => void;
  readonly signal?: AbortSignal;
}

interface Reading extends Watched {
  readonly file: Blob;
  readonly here: (id: string) => Kept | undefined;
  /** What is done with each photo; a problem refuses its line. */
  readonly photo: (photo: Photo) => Promise<Problem | undefined>;
}

/** Reads a file against what is here. @throws what the signal was aborted with; what reading the file throws */
export async function readFile({ file, here, photo, progress, signal }: Reading): Promise<Import> {
  const reader = fileReader(here);
  const turn = turns();
  for await (const { line, readBytes } of fileLines(file)) {
    const found = reader.read(line);
    if (found !== undefined) {
      const whole = barePhoto(photoOfLine(found));
      const problem = whole === undefined ? notOf(found.type) : await photo(whole);
      if (problem !== undefined) reader.refuse(problem);
    }
    if (reader.isHopeless()) break;
    if (turn.isOver() || found !== undefined) {
      signal?.throwIfAborted();
      progress?.(readBytes / file.size);
      await turn.next();
    }
  }
  return reader.end();
}

/** What an accepted file brought; `keep` makes it count. */
export type TakenIn =
  | (Extract<Import, { ok: true }> & { readonly keep: () => Promise<number>; readonly drop: () => Promise<void> })
  | Extract<Import, { ok: false }>;

/**
 * Reads a file for taking in. What it brought counts once it is kept, and leaves nothing where it is dropped or refused.
 * @throws StoreFailure; what the signal was aborted with. Nothing stays of the file then
 */
export async function takeInFile(store: Store, ask: Omit<Reading, 'photo'>): Promise<TakenIn> {
  const taking = await store.takeIn();
  const drop = () => taking.drop();
  try {
    const photo = (one: Photo) => taking.putPhoto(one).then(() => undefined, otherPicture);
    const read = await readFile({ ...ask, photo });
    if (!read.ok) await drop();
    return read.ok ? { ...read, keep: () => taking.keep(read.fresh).catch(undone), drop } : read;
  } catch (cause) {
    return await undone(cause);
  }

  async function undone(cause: unknown): Promise<never> {
    // Where even this fails, what is left is swept away when the store is opened next.
    await drop().catch(() => undefined);
    throw cause;
  }
}

/** What of a record a file carries. */
export type Checked =
  | {
      readonly ok: true;
      /** Entries of the record that the file lacks. */
      readonly missing: readonly Kept[];
      readonly missingPhotos: readonly string[];
      /** Ids of the entries of the record that the file holds, with the photo where one tells of a photo. */
      readonly held: readonly string[];
      readonly photos: readonly string[];
      /** Entries of the file that are not in the record. */
      readonly moreCount: number;
    }
  | Extract<Import, { ok: false }>;

/** Holds a file against a record: the same entries, the same pictures. @throws as reading does */
export async function checkFile(
  store: Store,
  { entries, ...ask }: Watched & { readonly file: Blob; readonly entries: readonly Kept[] },
): Promise<Checked> {
  const byId = new Map(entries.map((kept) => [kept.id, kept]));
  const held = new Set<string>();
  const photo = async (one: Photo) => {
    const here = await store.getPhoto(one.id);
    if (here === undefined) return undefined;
    if (!samePicture(here, one)) return otherPicture(new StoreFailure('different', 'photo'));
    held.add(one.id);
    return undefined;
  };
  const read = await readFile({ ...ask, here: (id) => byId.get(id), photo });
  if (!read.ok) return read;
  const ids = await store.photoIds();
  const missingPhotos = ids.filter((id) => !held.has(id));
  const lacking = new Set<string | undefined>(missingPhotos);
  return {
    ok: true,
    missing: entries.filter(({ id }) => !read.ids.has(id)),
    missingPhotos,
    held: entries.flatMap((kept) => (read.ids.has(kept.id) && !lacking.has(photoOf(kept)) ? [kept.id] : [])),
    photos: ids.filter((id) => held.has(id)),
    moreCount: read.fresh.length,
  };
}

function notOf(type: string): Problem {
  return { field: 'base64', value: undefined, message: 'is no whole picture of this type', allowed: `a ${type}` };
}

/** A picture that stands here in another form refuses its line; any other failure is the store's. */
function otherPicture(cause: unknown): Problem {
  if (!(cause instanceof StoreFailure) || cause.why !== 'different') throw cause;
  const allowed = 'the same picture, or a new id';
  return { field: 'photo', value: cause.entry, message: 'stands here already with another picture', allowed };
}
