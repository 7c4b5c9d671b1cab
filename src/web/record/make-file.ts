// Makes the file that carries a record and hands it to the browser to be put somewhere. Used by the Record sheet, and where a
// sheet failed: it asks nothing of the plot's meaning.

import type { Kept } from '#journal/entry.ts';
import { exportLines } from '#journal/lines.ts';
import type { Photo } from '#store/store.ts';
import { photoLine } from './photo-text.ts';

export interface ToFile {
  readonly entries: readonly Kept[];
  readonly photos: readonly Photo[];
  /** The file's name. */
  readonly name: string;
}

/** Hands the file over; whether it arrived where the grower wants it, a page cannot know. */
export function makeFile({ entries, photos, name }: ToFile): void {
  const text = exportLines(entries, photos.map(photoLine));
  const address = URL.createObjectURL(new Blob([text], { type: 'application/jsonl' }));
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
