// The file, where the Record sheet cannot make it: every entry the page holds, and the photos where the browser still gives
// them. It asks nothing of the plot but its name, and does not count as the last file: nobody has seen it arrive.

import type { Kept } from '#journal/entry.ts';
import { memoryStore } from '#store/memory.ts';
import type { Store } from '#store/store.ts';
import { fileName } from '#words/file-name.ts';
import { makeFile } from './make-file.ts';

export interface Held {
  readonly entries: readonly Kept[];
  readonly store: Store;
  readonly plotName: string;
}

/** Hands the file to the browser; answers its name, and whether the photos are in it. */
export async function saveAll({ entries, store, plotName }: Held): Promise<{ name: string; withPhotos: boolean }> {
  const name = fileName({ plot: plotName, now: new Date().toISOString().slice(0, 16) });
  try {
    await makeFile({ store, entries, name });
    return { name, withPhotos: true };
  } catch {
    // The store gives no photos any more; the entries are in hand, and an empty store has none to ask for.
    await makeFile({ store: memoryStore(), entries, name });
    return { name, withPhotos: false };
  }
}
