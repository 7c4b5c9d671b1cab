// When the last file of the record was made on this device; a small fact kept by the store.

import { createResource } from 'solid-js';
import { useRecord } from '../app/context.tsx';

const FACT = 'last-file';

export interface LastFile {
  /** Local date, as it stands in the file's name. */
  readonly on: string;
  /** Instant, UTC. */
  readonly at: string;
}

/** The last file, and how a new one is noted. */
export function useLastFile() {
  const { store } = useRecord();
  const [lastFile, { mutate }] = createResource(async () => {
    const kept = await store.getFact(FACT);
    return isLastFile(kept) ? kept : undefined;
  });
  return {
    lastFile: () => lastFile.latest,
    async note(made: LastFile) {
      await store.setFact(FACT, made);
      mutate(made);
    },
  };
}

function isLastFile(value: unknown): value is LastFile {
  const { on, at } = (value ?? {}) as Partial<LastFile>;
  return typeof on === 'string' && typeof at === 'string';
}
