// A native text field for an amount as growers write it. Read as soon as it can be, at the latest when the
// field is left; a text that cannot be read keeps its place with the sentence under it.

import { Show } from 'solid-js';
import type { Field } from '../weigh-in/draft.ts';
import type { Trouble } from '../weigh-in/reading.ts';
import { afterPress } from './after-press.ts';
import { type Settling, TroubleNote } from './trouble-note.tsx';

export interface AmountFieldProps extends Settling {
  readonly id: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly field: Field;
  readonly trouble: Trouble | undefined;
  readonly onType: (text: string) => void;
  readonly onLeave: (text: string) => void;
}

/** The bare entry, for rows that place label and sentence themselves. */
export function AmountEntry(
  props: Omit<AmountFieldProps, keyof Settling | 'hint'> & { readonly describedBy?: string | undefined },
) {
  const describedBy = () =>
    [props.trouble ? `${props.id}-trouble` : '', props.describedBy ?? ''].filter(Boolean).join(' ') || undefined;
  return (
    <input
      id={props.id}
      class="entry"
      classList={{ long: props.field.text.length > 8 }}
      type="text"
      inputmode="text"
      enterkeyhint="done"
      autocomplete="off"
      autocapitalize="off"
      spellcheck={false}
      aria-label={props.label}
      aria-invalid={props.trouble ? true : undefined}
      aria-describedby={describedBy()}
      value={props.field.text}
      onInput={(event) => props.onType(event.currentTarget.value)}
      onChange={(event) => {
        const text = event.currentTarget.value;
        afterPress(() => props.onLeave(text));
      }}
      onKeyDown={(event) => event.key === 'Enter' && props.onLeave(event.currentTarget.value)}
    />
  );
}

/** The entry with its label above and its sentence below. */
export function AmountField(props: AmountFieldProps) {
  return (
    <div class="field">
      <label for={props.id}>
        {props.label}
        <Show when={props.hint}>
          <small>{props.hint}</small>
        </Show>
      </label>
      <AmountEntry {...props} label={props.label} />
      <Show when={props.trouble}>
        {(trouble) => (
          <TroubleNote
            id={`${props.id}-trouble`}
            trouble={trouble()}
            onGallon={props.onGallon}
            onSpoon={props.onSpoon}
            onStyle={props.onStyle}
            onUnit={props.onUnit}
          />
        )}
      </Show>
    </div>
  );
}
