// What an answer took where nobody told, folded under it: one line each, with where it comes from. Nothing where nothing was taken.

import { For, Show } from 'solid-js';
import type { Assumed } from '#engine/scraps/part.ts';
import { assumedLine } from '#words/en/weigh-in.ts';
import { sheet } from '#words/en/weigh-in-labels.ts';

export function AssumedList(props: { readonly assumed: readonly Assumed[] }) {
  return (
    <Show when={props.assumed.length > 0}>
      <details class="fold">
        <summary>{sheet.assumedHeading}</summary>
        <ul class="plain">
          <For each={props.assumed}>{(one) => <li>{assumedLine(one)}</li>}</For>
        </ul>
      </details>
    </Show>
  );
}
