// A field of the cover's sheet: a line of text with what is wrong with it below.

import { Show } from 'solid-js';

export function CoverText(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly trouble: string | undefined;
  readonly onText: (text: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="entry plain"
        type="text"
        autocomplete="off"
        value={props.value}
        aria-invalid={props.trouble ? true : undefined}
        aria-describedby={props.trouble ? `${props.id}-trouble` : undefined}
        onChange={(event) => props.onText(event.currentTarget.value)}
      />
      <Show when={props.trouble}>
        {(sentence) => (
          <div class="trouble">
            <p id={`${props.id}-trouble`}>{sentence()}</p>
          </div>
        )}
      </Show>
    </div>
  );
}
