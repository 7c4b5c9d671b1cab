// The gate every store shares: nothing is kept that the journal could not read again, and one id never stands for two
// contents. What comes out of a store was checked here when it went in.

import { isSealed, type Kept } from '#journal/entry.ts';
import { readEntry, readLine } from '#journal/read.ts';
import { sameContent } from '#journal/same.ts';
import { samePicture } from './picture/picture.ts';
import { type Photo, StoreFailure } from './store.ts';

/**
 * The entries of a batch, each id once.
 * @throws StoreFailure unreadable or different
 */
export function checked(entries: readonly Kept[]): readonly Kept[] {
  const byId = new Map<string, Kept>();
  for (const kept of entries) {
    if (!readable(kept)) {
      throw new StoreFailure('unreadable', `append: ${kept.id} is no entry that can be read again`, { entry: kept.id });
    }
    if (isNew(kept, byId.get(kept.id))) byId.set(kept.id, kept);
  }
  return [...byId.values()];
}

/**
 * Whether an entry is not here yet.
 * @throws StoreFailure different, where its id is here with another content
 */
export function isNew(kept: Kept, here: Kept | undefined): boolean {
  if (here === undefined) return true;
  if (sameContent(here, kept)) return false;
  throw new StoreFailure('different', `append: ${kept.id} is kept with another content`, { entry: kept.id });
}

/**
 * Whether a photo is not here yet.
 * @throws StoreFailure different, where its id is here with another picture
 */
export function isNewPhoto(photo: Photo, here: Photo | undefined): boolean {
  if (here === undefined) return true;
  if (samePicture(here, photo)) return false;
  throw new StoreFailure('different', `photo: ${photo.id} is kept with another picture`, { entry: photo.id });
}

function readable(kept: Kept): boolean {
  if (!isSealed(kept)) return readEntry(kept).state === 'known';
  const read = readLine(kept.line);
  return read.state !== 'damaged' && read.entry.id === kept.id && read.entry.plot === kept.plot;
}
