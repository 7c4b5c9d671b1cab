// A day that lies behind: label, date entry, and what is wrong with a day still to come, at the field. Such a day is not
// handed on; what was typed stays in the entry.

import { createSignal, Show } from 'solid-js';
import { dateTrouble } from '#tasks/plot/date-trouble.ts';
import { useRecord } from '../app/context.tsx';

export function DayField(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** '' where nothing was typed, or a day that cannot be. */
  readonly onDay: (on: string) => void;
}) {
  const record = useRecord();
  const [typed, setTyped] = createSignal(props.value);
  const trouble = () => (typed() === '' ? undefined : dateTrouble({ on: typed(), now: record.now() })?.sentence);
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="entry plain"
        type="date"
        max={record.today()}
        value={typed()}
        aria-invalid={trouble() !== undefined || undefined}
        aria-describedby={`${props.id}-trouble`}
        onInput={(event) => {
          setTyped(event.currentTarget.value);
          props.onDay(trouble() === undefined ? typed() : '');
        }}
      />
      <div class="trouble" id={`${props.id}-trouble`} role="alert">
        <Show when={trouble()}>{(sentence) => <p>{sentence()}</p>}</Show>
      </div>
    </div>
  );
}
