// What newer tables or formulas moved: a sentence each, and both figures behind a fold. The record shows all of it, a peg
// and a bed their own. It is worked out beside the sheet, which opens at once; a fold that is being read stays open when the
// plot is made anew.

import { createMemo, For, Index, Show } from 'solid-js';
import { type MovedOnly, movedInSteps } from '#tasks/plot/moved-figures.ts';
import { sayBoth, shownWords } from '#words/en/figures-shown.ts';
import { useRecord } from '../app/context.tsx';
import { inSlices } from './in-slices.ts';

export function MovedFigures(props: { readonly id: string; readonly only?: MovedOnly }) {
  const record = useRecord();
  // One value, so that a sheet that is drawn again for another reason begins nothing anew.
  const [batch, bed] = [createMemo(() => props.only?.batch), createMemo(() => props.only?.bed)];
  const found = inSlices(() => movedInSteps(record.plot(), { batch: batch(), bed: bed(), now: record.now() }));
  const moved = () => found() ?? [];
  return (
    <Show when={moved().length > 0}>
      <section aria-labelledby={props.id}>
        <h2 id={props.id}>{shownWords.heading}</h2>
        <p class="note">{shownWords.note}</p>
        <Index each={moved()}>
          {(one) => (
            <>
              <p>{one().sentence}</p>
              <Show when={one().figures.length > 0}>
                <details class="fold">
                  <summary>{shownWords.fold}</summary>
                  <ul class="plain">
                    <For each={one().figures}>{({ what, before, now }) => <li>{sayBoth(what, before, now)}</li>}</For>
                  </ul>
                </details>
              </Show>
            </>
          )}
        </Index>
      </section>
    </Show>
  );
}
