// The acts of a peg as blocks: the look first, then straining and pouring on sheets of their own, then the small forms,
// each folded until it is wanted. What is not open for a peg in its state is not shown.

import { A } from '@solidjs/router';
import { For, Show } from 'solid-js';
import { bottlesOfBatch } from '#tasks/plot/bottles-of.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import { type PegForm, pegForms } from '#tasks/plot/peg-forms.ts';
import { pegWords } from '#words/en/peg.ts';
import { useRecord } from '../app/context.tsx';
import { FoldForm } from '../parts/small-form.tsx';

export function Acts(props: { readonly view: PegView }) {
  const record = useRecord();
  const open = (act: PegView['acts'][number]) => props.view.acts.includes(act);
  const forms = () => pegForms(record.plot(), props.view, record.now());
  /** By name, so that a form that is being typed into stays when the record moves on. */
  const names = () => forms().map(({ act }) => act);
  const bottled = () => bottlesOfBatch(record.plot(), props.view.id).length > 0;
  return (
    <section class="acts" aria-labelledby="acts">
      <div class="act-blocks">
        <Show when={open('look')}>
          <A class="block act" href={`/peg/${props.view.id}/look`}>
            {pegWords.look}
          </A>
        </Show>
        <Show when={open('strain')}>
          <A class="block" href={`/peg/${props.view.id}/strain`}>
            {pegWords.strain}
          </A>
        </Show>
        <Show when={open('feed')}>
          <A class="block" href="/can">
            {pegWords.feed}
          </A>
        </Show>
        <Show when={bottled()}>
          <A class="block" href="/shelf">
            {pegWords.shelf}
          </A>
        </Show>
      </div>
      <Show when={names().length > 0}>
        <h2 id="acts">{pegWords.actsHeading}</h2>
        <p class="note">{pegWords.actsNote}</p>
        <For each={names()}>
          {(name) => (
            <Show when={forms().find(({ act }) => act === name)}>
              {(form) => <ActForm form={form()} id={props.view.id} />}
            </Show>
          )}
        </For>
      </Show>
    </section>
  );
}

/** Acts whose amount may be left empty. */
const ALL_IF_EMPTY: readonly PegForm['act'][] = ['join', 'tip'];

function ActForm(props: { readonly form: PegForm; readonly id: string }) {
  const record = useRecord();
  const label = (field: string) =>
    (field === 'taken' || field === 'lost') && ALL_IF_EMPTY.includes(props.form.act)
      ? pegWords.allOfIt
      : (pegWords.fields[field] ?? field);
  return (
    <FoldForm
      id={`peg-${props.form.act}-${props.id}`}
      summary={pegWords.forms[props.form.act]}
      asked={props.form.asked}
      start={props.form.start}
      label={label}
      word={pegWords.write}
      read={(typed) => {
        const read = props.form.read(typed, countriesOf(record.plot(), record.keyholder()));
        return read.ok ? { ok: true, write: () => record.act(props.form.kind, read.body) } : read;
      }}
    />
  );
}
