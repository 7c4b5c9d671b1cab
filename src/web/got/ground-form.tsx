// A form of the ground folded under its heading: its draft outlives a reload, every problem stands at its field at once,
// and it is cleared only when the act is durable. What is asked in it comes from whoever uses it.

import { type Accessor, createSignal, type JSX, Show } from 'solid-js';
import { writtenPlainly } from '#engine/quantity/number.ts';
import type { FieldTrouble, Troubles } from '#tasks/plot/form.ts';
import { form } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { sayFailure } from '../parts/failure.ts';
import { TroubleNote } from '../parts/trouble-note.tsx';

const NONE: Troubles = new Map();

/** What the draft comes to: an act to write, or troubles at fields. */
export type GroundRead =
  | { readonly ok: true; readonly write: () => Promise<unknown> }
  | { readonly ok: false; readonly troubles: Troubles };

export interface Inside<T> {
  readonly draft: Accessor<T>;
  readonly change: (next: Partial<T>) => void;
  /** Empty until the form was sent once. */
  readonly troubles: Accessor<Troubles>;
}

export function GroundForm<T extends object>(props: {
  readonly id: string;
  readonly summary: string;
  readonly empty: T;
  readonly read: (draft: T) => GroundRead;
  readonly word?: string;
  readonly children: (inside: Inside<T>) => JSX.Element;
}) {
  const { plotId } = useRecord();
  const { draft, change, clear, found } = useDraft<T>(`${plotId()}.${props.id}`, props.empty);
  const [isOpen, setOpen] = createSignal(found);
  const [isTried, setTried] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  const [said, setSaid] = createSignal('');
  let element: HTMLFormElement | undefined;
  const troubles = () => {
    const read = isTried() ? props.read(draft()) : undefined;
    return read === undefined || read.ok ? NONE : read.troubles;
  };

  async function write(event: SubmitEvent) {
    event.preventDefault();
    if (busy()) return;
    setTried(true);
    setSaid('');
    const sent = draft();
    const read = props.read(sent);
    if (!read.ok) {
      queueMicrotask(() => element?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    setBusy(true);
    try {
      await read.write();
      clear(sent);
      setTried(false);
      setSaid(form.written);
    } catch (failure) {
      setSaid(sayFailure(failure));
    } finally {
      setBusy(false);
    }
  }

  return (
    <details
      class="fold"
      id={`${props.id}-fold`}
      open={isOpen()}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>{props.summary}</span>
      </summary>
      <Show when={isOpen()}>
        <form class="small-form" ref={element} onSubmit={write} novalidate>
          {props.children({ draft, change, troubles })}
          <button type="submit" class="block" aria-disabled={busy() || undefined}>
            {props.word ?? form.write}
          </button>
          <p class="said" role="status">
            {said()}
          </p>
        </form>
      </Show>
    </details>
  );
}

/** A typed line with its label above and its trouble below. */
export function GroundField(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly trouble: FieldTrouble | undefined;
  /** Id of a list of what is often typed here. */
  readonly list?: string;
  readonly numeric?: boolean;
  readonly onType: (text: string) => void;
}) {
  /** The country goes before each unit: "2 imperial gal". */
  const withCountry = (country: string) =>
    props.onType(props.value.replaceAll(/(\d\s*)([A-Za-z])/g, `$1 ${country} $2`).replaceAll(/ +/g, ' '));
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="entry plain"
        type="text"
        inputmode={props.numeric ? 'decimal' : 'text'}
        autocomplete="off"
        list={props.list}
        value={props.value}
        aria-invalid={props.trouble ? true : undefined}
        aria-describedby={props.trouble ? `${props.id}-trouble` : undefined}
        onInput={(event) => props.onType(event.currentTarget.value)}
      />
      <Show when={props.trouble}>
        {(found) => (
          <TroubleNote
            id={`${props.id}-trouble`}
            trouble={found()}
            onGallon={withCountry}
            onSpoon={withCountry}
            onStyle={(style) => props.onType(writtenPlainly(props.value, style))}
            onUnit={(unit) => props.onType(`${props.value.trim()} ${unit}`)}
          />
        )}
      </Show>
    </div>
  );
}

/** A trouble that belongs to no field of its own. */
export function GroundTrouble(props: { readonly trouble: FieldTrouble | undefined }) {
  return (
    <Show when={props.trouble}>
      {(found) => (
        <div class="trouble">
          <p>{found().sentence}</p>
        </div>
      )}
    </Show>
  );
}
