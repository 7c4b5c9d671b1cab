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

/** A list of which so many are drawn at first, and as many again at each touch. */
export function paged<T extends { readonly id: string }>(all: () => readonly T[], most: number): Paged<T> {
  const [shown, setShown] = createSignal(most);
  const byId = createMemo(() => new Map(all().map((one) => [one.id, one])));
  return {
    ids: () =>
      all()
        .slice(0, shown())
        .map(({ id }) => id),
    of: (id) => byId().get(id),
    next: () => Math.max(0, Math.min(most, all().length - shown())),
    more: () => setShown((count) => count + most),
  };
}

/** Draws the next page. */
export function More(props: { readonly of: Paged<unknown> }) {
  return (
    <Show when={props.of.next() > 0}>
      <button type="button" class="block" onClick={() => props.of.more()}>
        {app.showMore(props.of.next())}
      </button>
    </Show>
  );
}
