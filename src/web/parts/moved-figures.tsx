// What newer tables or formulas moved: a sentence each, and both figures behind a fold. The record shows all of it, a peg
// and a bed their own. A fold that is being read stays open when the plot is made anew.

import { createMemo, For, Index, Show } from 'solid-js';
import type { Moved } from '#tasks/plot/moved-figures.ts';
import { sayBoth, shownWords } from '#words/en/figures-shown.ts';

export function MovedFigures(props: { readonly id: string; readonly moved: readonly Moved[] }) {
  const moved = createMemo(() => props.moved);
  return (
    <Show when={moved().length > 0}>
      <section aria-labelledby={props.id}>
        <h2 id={props.id}>{shownWords.heading}</h2>
        <p class="note">{shownWords.note}</p>
        <Index each={moved()}>
          {(one) => (
            <>
              <p>{one().sentence}</p>
              <details class="fold">
                <summary>{shownWords.fold}</summary>
                <ul class="plain">
                  <For each={one().figures}>{({ what, before, now }) => <li>{sayBoth(what, before, now)}</li>}</For>
                </ul>
              </details>
            </>
          )}
        </Index>
      </section>
    </Show>
  );
}
