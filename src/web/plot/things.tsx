// Beds, vessels and cans as a list: each opens its form, and one more can be added. A thing that is gone leaves the
// list and stays in the record.

import { For } from 'solid-js';
import { countriesOf, type factForms, factForms as forms, readThing, toldOver } from '#tasks/plot/facts.ts';
import { typedForm } from '#tasks/plot/form.ts';
import { fieldNames, plotWords as words } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { FoldForm } from '../parts/small-form.tsx';

type ThingForm = Extract<keyof typeof factForms, 'bed' | 'vessel' | 'can'>;

export interface ThingsProps<T extends { readonly id: string }> {
  readonly form: ThingForm;
  readonly list: readonly T[];
  readonly title: (thing: T) => string;
  readonly line: (thing: T) => string;
  /** What was passed over for it. */
  readonly marks?: (thing: T) => readonly string[];
  readonly add: string;
}

const label = (field: string) => fieldNames[field] ?? field;

export function Things<T extends { readonly id: string }>(props: ThingsProps<T>) {
  const ids = () => props.list.map(({ id }) => id);
  const thing = (id: string) => props.list.find((one) => one.id === id);
  return (
    <>
      <For each={ids()}>{(id) => <OneThing {...props} thing={thing(id)} />}</For>
      <NewThing form={props.form} add={props.add} />
    </>
  );
}

function OneThing<T extends { readonly id: string }>(props: ThingsProps<T> & { readonly thing: T | undefined }) {
  const read = useThing(props.form, () => props.thing);
  return (
    <>
      {props.thing && (
        <FoldForm
          id={`${props.form}-${props.thing.id}`}
          summary={props.title(props.thing)}
          line={props.line(props.thing)}
          asked={forms[props.form]}
          start={typedForm(forms[props.form], props.thing)}
          label={label}
          read={read}
          after={<Gone form={props.form} id={props.thing.id} />}
        />
      )}
      <For each={props.thing && props.marks?.(props.thing)}>{(mark) => <p class="passed-mark">{mark}</p>}</For>
    </>
  );
}

/** A form for a thing that is not there yet. */
export function NewThing(props: { readonly form: ThingForm; readonly add: string; readonly id?: string }) {
  const read = useThing(props.form, () => undefined);
  return (
    <FoldForm
      id={props.id ?? `${props.form}-new`}
      summary={props.add}
      asked={forms[props.form]}
      start={{}}
      label={label}
      read={read}
    />
  );
}

/** Reads a thing's form and writes its entry. */
export function useThing(form: ThingForm, known: () => { readonly id: string } | undefined) {
  const record = useRecord();
  return (typed: Readonly<Record<string, string>>) => {
    const countries = countriesOf(record.plot(), record.keyholder());
    const read = readThing(form, typed, { known: known(), countries, now: record.now() });
    if (!read.ok) return read;
    const { act } = read;
    const id = known()?.id;
    const over = id === undefined ? {} : toldOver(record.plot(), id, record.device);
    return { ok: true as const, write: act && (() => record.act(act.kind, { ...act.body, ...over })) };
  };
}

function Gone(props: { readonly form: ThingForm; readonly id: string }) {
  const record = useRecord();
  const write = () => {
    const gone = { gone: true as const, ...toldOver(record.plot(), props.id, record.device) };
    if (props.form === 'bed') return record.act('bed.described', { bed: props.id, ...gone });
    if (props.form === 'vessel') return record.act('vessel.described', { vessel: props.id, ...gone });
    return record.act('can.described', { can: props.id, ...gone });
  };
  return (
    <div class="gone">
      <button type="button" class="block" onClick={() => write().catch(() => undefined)}>
        {words.gone}
      </button>
      <p class="note">{words.goneNote}</p>
    </div>
  );
}
