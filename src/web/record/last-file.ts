// The last file of the record that was chosen, read and counted on this device; a small fact kept by the store. That one was
// made is no such fact: a page cannot see where a download went.

import { createResource } from 'solid-js';
import type { LastFile } from '#journal/unsaved.ts';
import { useRecord } from '../app/context.tsx';

const FACT = 'last-file';

/** The last file, and how a new one is noted. */
export function useLastFile() {
  const { store } = useRecord();
  const [lastFile, { mutate }] = createResource(async () => {
    const kept = await store.getFact(FACT);
    return isLastFile(kept) ? kept : undefined;
  });
  return {
    lastFile: () => lastFile.latest,
    async note(file: LastFile) {
      await store.setFact(FACT, file);
      mutate(file);
    },
  };
}

/** An older program kept when a file was made, and not what it held: such a file was never read back. */
function isLastFile(value: unknown): value is LastFile {
  const { on, at, held } = (value ?? {}) as Partial<LastFile>;
  return typeof on === 'string' && typeof at === 'string' && typeof held === 'string';
}
