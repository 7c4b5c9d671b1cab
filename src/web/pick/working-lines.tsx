// The working of a wait, in its place under the answer: formula, inputs, doubts.

import { For } from 'solid-js';
import { citation } from '#engine/tables/index.ts';
import type { Working } from '#engine/working/working.ts';
import { pick } from '#words/en/pick.ts';
import { workingWords } from '#words/en/weigh-in.ts';

export function WorkingLines(props: { readonly working: Working }) {
  return (
    <section class="one-working" aria-label={pick.working}>
      <p>{props.working.formula}</p>
      <dl class="inputs">
        <For each={props.working.inputs}>
          {(input) => (
            <div>
              <dt>
                {input.label}
                {input.source === undefined ? undefined : <small>{citation(input.source)}</small>}
              </dt>
              <dd>{workingWords.input(input.value, input.unit)}</dd>
            </div>
          )}
        </For>
      </dl>
      <For each={props.working.doubts}>{(doubt) => <p>{doubt}</p>}</For>
    </section>
  );
}
