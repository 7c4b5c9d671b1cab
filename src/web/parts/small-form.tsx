// A small form over one entry: its draft outlives a reload, every problem stands at its field at once, and it is cleared
// only when the act is durable. `FoldForm` keeps it folded away until it is wanted.

import { createSignal, type JSX, onMount, Show } from 'solid-js';
import type { Asked, Troubles, Typed } from '#tasks/plot/form.ts';
import { form } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { sayFailure } from './failure.ts';
import { FormFields } from './form-fields.tsx';

export interface SmallFormProps {
  readonly id: string;
  readonly asked: readonly Asked[];
  /** The texts before anything is typed. */
  readonly start: Typed;
  readonly label: (field: string) => string;
  /** What the typed texts come to: an act to write, nothing to write, or troubles at fields. */
  readonly read: (
    typed: Typed,
  ) => { readonly ok: true; readonly write: (() => Promise<unknown>) | undefined } | Refused;
  readonly word?: string;
  readonly onDone?: () => void;
}
type Refused = { readonly ok: false; readonly troubles: Troubles };

const NONE: Troubles = new Map();

export function SmallForm(props: SmallFormProps) {
  const { plotId } = useRecord();
  const { draft, change, clear } = useDraft<Record<string, string>>(`${plotId()}.${props.id}`, {});
  const typed = (): Typed => ({ ...props.start, ...draft() });
  const [isTried, setTried] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  const [said, setSaid] = createSignal('');
  let element: HTMLFormElement | undefined;
  const troubles = () => {
    if (!isTried()) return NONE;
    const read = props.read(typed());
    return read.ok ? NONE : read.troubles;
  };
  const elsewhere = () => [...troubles()].filter(([field]) => !props.asked.some((one) => one.field === field));

  async function write(event: SubmitEvent) {
    event.preventDefault();
    if (busy()) return;
    setTried(true);
    setSaid('');
    const sent = draft();
    const read = props.read(typed());
    if (!read.ok) {
      queueMicrotask(() => element?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    if (read.write === undefined) {
      setSaid(form.nothingChanged);
      return;
    }
    setBusy(true);
    try {
      await read.write();
    } catch (failure) {
      setSaid(sayFailure(failure));
      return;
    } finally {
      setBusy(false);
    }
    clear(sent);
    setTried(false);
    setSaid(form.written);
    props.onDone?.();
  }

  return (
    <form class="small-form" ref={element} onSubmit={write} novalidate>
      <FormFields
        id={props.id}
        asked={props.asked}
        typed={typed()}
        troubles={troubles()}
        label={props.label}
        onType={(field, text) => change({ [field]: text })}
      />
      <Show when={elsewhere().length > 0}>
        <div class="trouble">
          {elsewhere().map(([, { sentence }]) => (
            <p>{sentence}</p>
          ))}
        </div>
      </Show>
      <button type="submit" class="block" aria-disabled={busy() || undefined}>
        {props.word ?? form.write}
      </button>
      <p class="said" role="status">
        {said()}
      </p>
    </form>
  );
}

/** A form folded under its heading; open from the start where a draft of it was left. */
export function FoldForm(
  props: SmallFormProps & { readonly summary: string; readonly line?: string; readonly after?: JSX.Element },
) {
  const { plotId } = useRecord();
  const { found } = useDraft<Record<string, string>>(`${plotId()}.${props.id}`, {});
  // Led here from another sheet: open, and where it can be seen.
  const isMeant = location.hash === `#${props.id}-fold`;
  const [isOpen, setOpen] = createSignal(found || isMeant);
  let fold: HTMLDetailsElement | undefined;
  onMount(() => {
    if (isMeant) requestAnimationFrame(() => fold?.scrollIntoView({ block: 'start' }));
  });
  return (
    <details
      ref={fold}
      class="fold"
      open={isOpen()}
      id={`${props.id}-fold`}
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>
        <span>
          {props.summary}
          <Show when={props.line}>
            <small>{props.line}</small>
          </Show>
        </span>
      </summary>
      <Show when={isOpen()}>
        <SmallForm {...props} onDone={() => (props.onDone ? props.onDone() : setOpen(false))} />
        {props.after}
      </Show>
    </details>
  );
}
