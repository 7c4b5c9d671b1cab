// A form's draft, kept in the browser as it is typed, so that a reload in the middle of any form loses nothing.

import { type Accessor, createSignal } from 'solid-js';
import { DEMO_DAY } from './places.ts';

export interface Drafted<T> {
  readonly draft: Accessor<T>;
  readonly change: (next: Partial<T>) => void;
  /** Called when the act is durable: the draft is no longer needed. */
  readonly clear: () => void;
  /** Whether a draft of an earlier visit was found. */
  readonly found: boolean;
}

/** A draft under a key of its own; `empty` says what an untouched form holds. Plain data only. */
export function useDraft<T extends object>(key: string, empty: T): Drafted<T> {
  const place = `${draftPrefix()}${key}`;
  const kept = readKept<T>(place);
  const [draft, setDraft] = createSignal<T>(kept === undefined ? empty : { ...empty, ...kept }, { equals: false });
  return {
    draft,
    change(next) {
      setDraft(() => ({ ...draft(), ...next }));
      try {
        localStorage.setItem(place, JSON.stringify(draft()));
      } catch {
        // A full or closed storage costs the draft's safety, never what is on the screen.
        document.documentElement.dataset.draftUnsaved = 'yes';
      }
    },
    clear() {
      localStorage.removeItem(place);
      setDraft(() => empty);
    },
    found: kept !== undefined,
  };
}

/** Drafts of the demo garden are kept apart from those of the own plot. */
export function draftPrefix(): string {
  return sessionStorage.getItem(DEMO_DAY) === null ? 'tilthwright.draft.' : 'tilthwright.demo-draft.';
}

function readKept<T>(place: string): Partial<T> | undefined {
  try {
    const text = localStorage.getItem(place);
    const value: unknown = text === null ? undefined : JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Partial<T>) : undefined;
  } catch {
    return undefined;
  }
}
