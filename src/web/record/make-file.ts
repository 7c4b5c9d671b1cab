// Makes the file that carries a record and hands it to the browser to be put somewhere. Used by the Record sheet, and where a
// sheet failed: it asks nothing of the plot's meaning.

import type { Kept } from '#journal/entry.ts';
import type { Watched } from '#store/file-in.ts';
import { recordFile } from '#store/file-out.ts';
import type { Store } from '#store/store.ts';

export interface ToFile extends Watched {
  readonly store: Store;
  readonly entries: readonly Kept[];
  /** The file's name. */
  readonly name: string;
  /** This device, which the file names as its maker, where the sheet knows it. */
  readonly device?: string;
}

/** Hands the file over; whether it arrived where the grower wants it, a page cannot know. */
export async function makeFile({ store, entries, name, device, ...watched }: ToFile): Promise<void> {
  const file = await recordFile(store, entries, {
    ...watched,
    maker: { madeAt: new Date().toISOString(), ...(device !== undefined && { device }) },
  });
  const address = URL.createObjectURL(file);
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  link.click();
  // Let go of late: a browser may ask where to put it before it reads it.
  setTimeout(() => URL.revokeObjectURL(address), 30 * 60_000);
}
