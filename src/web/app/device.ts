// Small facts of this device, beside the record: drafts, the keyholder's tag, the paper. A browser may refuse to keep them,
// have no room for them, or have no such storage at all; then they hold while the page is open, and nothing throws.

import { createSignal } from 'solid-js';

/** Where facts are kept under their names. No call of it ever throws. */
export interface DevicePlace {
  readonly read: (name: string) => string | undefined;
  readonly write: (name: string, text: string) => void;
  readonly remove: (name: string) => void;
  /** Removes every fact whose name begins so. */
  readonly clear: (prefix: string) => void;
}

const [kept, setKept] = createSignal(true);

/** Whether the browser kept every fact so far; where not, a reload loses what was typed and not saved. */
export const factsKept = kept;

/** Facts that outlast the visit. */
export const lasting: DevicePlace = placeOf(() => globalThis.localStorage);

/** Facts of this tab alone, gone with it. */
export const visit: DevicePlace = placeOf(() => globalThis.sessionStorage);

/** @param storage asked anew each time: to ask is what throws where the browser refuses */
function placeOf(storage: () => Storage | null | undefined): DevicePlace {
  /** What the browser did not take. */
  const held = new Map<string, string>();
  const ask = <T>(what: (there: Storage) => T): T | undefined => {
    try {
      const there = storage();
      return there ? what(there) : undefined;
    } catch {
      // Refused, full or gone: `held` has what was written.
      return undefined;
    }
  };
  return {
    read: (name) => held.get(name) ?? ask((there) => there.getItem(name)) ?? undefined,
    write(name, text) {
      const taken = ask((there) => {
        there.setItem(name, text);
        return true;
      });
      if (taken) held.delete(name);
      else {
        held.set(name, text);
        setKept(false);
      }
    },
    remove(name) {
      held.delete(name);
      ask((there) => there.removeItem(name));
    },
    clear(prefix) {
      for (const name of held.keys()) if (name.startsWith(prefix)) held.delete(name);
      ask((there) => {
        for (const name of Object.keys(there)) if (name.startsWith(prefix)) there.removeItem(name);
      });
    },
  };
}
