// The lines of a file that cannot be read, each with its number and the reason; so many as somebody reads.

import { For, Show } from 'solid-js';
import type { RefusedFile } from '#journal/file-reader.ts';
import { files as words } from '#words/en/record.ts';

const MOST_LINES_TOLD = 20;

export function RefusedLines(props: { readonly file: RefusedFile | undefined }) {
  const told = () => props.file?.refused.slice(0, MOST_LINES_TOLD) ?? [];
  const moreCount = () => (props.file?.refusedCount ?? 0) - told().length;
  return (
    <>
      <ul class="plain">
        <For each={told()}>
          {({ line, problems }) => (
            <For each={problems}>
              {({ field, message, allowed }) => <li>{words.refusedLine(line, field, message, allowed)}</li>}
            </For>
          )}
        </For>
      </ul>
      <Show when={moreCount() > 0}>
        <p>{words.moreLines(moreCount())}</p>
      </Show>
    </>
  );
}
