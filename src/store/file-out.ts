// The record as a file, part by part: the lines of the entries, then each photo read from the store and written by itself.
// What is written becomes a part of the file at once, which the browser may put on its disk; no text of the whole is made.

import type { Kept } from '#journal/entry.ts';
import { type Maker, photoLine, recordLines } from '#journal/lines.ts';
import type { Watched } from './file-in.ts';
import { lineOfPhoto } from './photos.ts';
import { type Store, StoreFailure } from './store.ts';
import { turns } from './turns.ts';

export const FILE_TYPE = 'application/jsonl';
/** Signs of one part. */
const PART_SIGNS = 4_000_000;

/** The file that carries entries and all photos of a store. @throws StoreFailure; what the signal was aborted with */
export async function recordFile(
  store: Store,
  entries: readonly Kept[],
  { progress, signal, maker }: Watched & { readonly maker?: Maker },
): Promise<Blob> {
  const ids = await store.photoIds();
  const turn = turns();
  const parts: Blob[] = [];
  let [lines, signs, written] = [[] as string[], 0, 0];
  for (const line of recordLines(entries, ids.length, maker)) await add(line);
  for (const id of ids) {
    const photo = await store.getPhoto(id);
    if (photo === undefined) throw new StoreFailure('broken', `a photo was removed while the file was made: ${id}`);
    await add(photoLine(lineOfPhoto(photo)));
  }
  close();
  return new Blob(parts, { type: FILE_TYPE });

  async function add(line: string): Promise<void> {
    lines.push(line);
    signs += line.length;
    written++;
    if (signs >= PART_SIGNS) close();
    if (!turn.isOver()) return;
    signal?.throwIfAborted();
    progress?.(written / (1 + entries.length + ids.length));
    await turn.next();
  }

  function close(): void {
    if (lines.length > 0) parts.push(new Blob([`${lines.join('\n')}\n`]));
    [lines, signs] = [[], 0];
  }
}
