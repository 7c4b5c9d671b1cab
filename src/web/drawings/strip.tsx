// The short stream under the title: where this sheet stands on the way from scraps to bed. Only the pail is
// here yet; the other stretches are plain words that say so to a screen reader.

import { For, Show } from 'solid-js';
import { sheet } from '#words/en/weigh-in-labels.ts';

export function StreamStrip(props: { readonly here: (typeof sheet.stretches)[number] }) {
  return (
    <ol class="stream" aria-label={sheet.stream}>
      <For each={sheet.stretches}>
        {(stretch) => (
          <li aria-current={stretch === props.here ? 'page' : undefined}>
            <Show when={stretch === props.here} fallback={<span class="tick" />}>
              <svg class="stream-peg" width="18" height="25" viewBox="0 0 18 25" aria-hidden="true">
                <path class="peg" d="M0 0H18V14L9 24L0 14Z" />
              </svg>
            </Show>
            <span>{stretch}</span>
            <span class="unseen">, {stretch === props.here ? sheet.hereNow : sheet.notYetHere}</span>
          </li>
        )}
      </For>
    </ol>
  );
}
