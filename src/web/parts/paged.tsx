// A long list drawn page by page: a shelf or a stock of many years opens at once. What is drawn stays drawn while it
// stands, by its id.

import { createMemo, createSignal, Show } from 'solid-js';
import { app } from '#words/en/app.ts';

export interface Paged<T> {
  /** Ids of what is drawn. */
  readonly ids: () => readonly string[];
  readonly of: (id: string) => T | undefined;
  /** How many the next page draws; 0 where all are drawn. */
  readonly next: () => number;
  readonly more: () => void;
}

/**
 * A list of which so many are drawn at first, and as many again at each touch.
 * @param idOf what a thing is known by while it stands; its place where it has no name of its own
 */
export function paged<T>(all: () => readonly T[], most: number, idOf: (one: T, at: number) => string): Paged<T> {
  const [shown, setShown] = createSignal(most);
  const drawn = createMemo(
    () =>
      new Map(
        all()
          .slice(0, shown())
          .map((one, at) => [idOf(one, at), one]),
      ),
  );
  return {
    ids: () => [...drawn().keys()],
    of: (id) => drawn().get(id),
    next: () => Math.max(0, Math.min(most, all().length - shown())),
    more: () => setShown((count) => count + most),
  };
}

/** For things that have an id. */
export const byId = ({ id }: { readonly id: string }) => id;
/** For things without one. */
export const byPlace = (_: unknown, at: number) => String(at);

/** Draws the next page. */
export function More(props: {
  readonly of: Paged<unknown>;
  /** In the words of a sheet that speaks another language. */
  readonly say?: (count: number) => string;
}) {
  return (
    <Show when={props.of.next() > 0}>
      <button type="button" class="block" onClick={() => props.of.more()}>
        {(props.say ?? app.showMore)(props.of.next())}
      </button>
    </Show>
  );
}
