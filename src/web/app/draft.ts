// A form's draft, kept in the browser as it is typed, so that a reload in the middle of any form loses nothing.

import { type Accessor, createSignal } from 'solid-js';
import { lasting, visit } from './device.ts';
import { DEMO_DAY } from './places.ts';

export interface Drafted<T> {
  readonly draft: Accessor<T>;
  readonly change: (next: Partial<T>) => void;
  /**
   * Called when the act is durable: the draft is no longer needed.
   * @param sent the draft the act was made of; one typed since then stays
   */
  readonly clear: (sent?: T) => void;
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
      lasting.write(place, JSON.stringify(draft()));
    },
    clear(sent) {
      if (sent !== undefined && draft() !== sent) return;
      lasting.remove(place);
      setDraft(() => empty);
    },
    found: kept !== undefined,
  };
}

/** Drafts of the demo garden are kept apart from those of the own plot. */
export function draftPrefix(): string {
  return visit.read(DEMO_DAY) === undefined ? 'tilthwright.draft.' : 'tilthwright.demo-draft.';
}

function readKept<T>(place: string): Partial<T> | undefined {
  try {
    const text = lasting.read(place);
    const value: unknown = text === undefined ? undefined : JSON.parse(text);
    return typeof value === 'object' && value !== null ? (value as Partial<T>) : undefined;
  } catch {
    return undefined;
  }
}
