// A text or a count in a form of its own draft: label, underlined entry, and a hint where there is one.

import { Show } from 'solid-js';

export function PlainField(props: {
  readonly id: string;
  readonly label: string;
  readonly hint?: string;
  readonly numeric?: boolean;
  readonly value: string;
  readonly onText: (text: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="entry plain"
        inputmode={props.numeric ? 'numeric' : undefined}
        autocomplete="off"
        value={props.value}
        aria-describedby={props.hint === undefined ? undefined : `${props.id}-hint`}
        onInput={(event) => props.onText(event.currentTarget.value)}
      />
      <Show when={props.hint}>
        <p class="note" id={`${props.id}-hint`}>
          {props.hint}
        </p>
      </Show>
    </div>
  );
}
