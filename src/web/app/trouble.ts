// What went wrong, by the name of its sentence: a part of the page that did not arrive, a record that does not open, a
// fault of our own. And the one thing that can happen behind every sheet: the browser takes the open record away.

import { createSignal } from 'solid-js';
import { failureOf } from '#store/failure.ts';
import { type Store, StoreFailure } from '#store/store.ts';
import type { notOpened, stopped } from '#words/en/trouble.ts';

/** A part of the page, fetched when it is first needed, did not arrive or did not start. */
export class MissingPart extends Error {}

/** Fetches a part of the page; where it does not arrive, that is said as such. */
export async function part<T>(load: () => Promise<T>): Promise<T> {
  try {
    return await load();
  } catch (cause) {
    throw new MissingPart(cause instanceof Error ? cause.message : String(cause), { cause });
  }
}

/** The record does not open. */
export class NotOpened extends Error {
  readonly why: keyof typeof notOpened;
  /** The open store, where only its content could not be understood: a file can still be made of it. */
  readonly store: Store | undefined;

  constructor(cause: unknown, store?: Store) {
    super(messageOf(cause), { cause });
    this.why = whyNotOpened(cause, store !== undefined);
    this.store = store;
  }
}

function whyNotOpened(cause: unknown, isOpen: boolean): keyof typeof notOpened {
  if (cause instanceof MissingPart) return 'missing';
  const { why } = failureOf(cause);
  if (why !== 'broken' && why !== 'different') return why;
  return isOpen ? 'unreadable' : 'broken';
}

export function messageOf(error: unknown): string {
  return error instanceof Error ? `${error.name}: ${error.message}` : String(error);
}

const [taken, setTaken] = createSignal<keyof typeof stopped>();

/** Why the record that was open is no more; undefined while it is. */
export const recordTaken = taken;

/** Hears a failure of the open store; what stops it for good is said on every sheet. */
export function hearFailure(failure: unknown): void {
  const why = failure instanceof StoreFailure ? failure.why : undefined;
  if (why === 'deleted' || why === 'outdated' || why === 'closed') setTaken(why);
}
