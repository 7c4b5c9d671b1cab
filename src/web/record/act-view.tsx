// One act of the record: its sentence, and when opened every version as typed, a form to correct it, and taking it back.

import { createSignal, For, Show } from 'solid-js';
import type { Entry } from '#journal/entry.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import {
  correctionForm,
  correctionTyped,
  entryFields,
  fieldLabel,
  ON_DATE,
  ON_TIME,
  readCorrection,
} from '#tasks/plot/record.ts';
import type { RecordAct } from '#tasks/plot/record-search.ts';
import { sayMoment } from '#words/en/app.ts';
import { record as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import { SmallForm } from '../parts/small-form.tsx';
import { UndoButton } from '../parts/undo-button.tsx';
import { ShownThen } from './shown-then.tsx';

export function ActView(props: { readonly act: RecordAct }) {
  const record = useRecord();
  const [isOpen, setOpen] = createSignal(false);
  return (
    <li class="act-line" classList={{ withdrawn: props.act.state === 'withdrawn' }}>
      <details class="fold" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <span>
            <span class="act-when">
              {sayMoment(props.act.on, record.today())}, {words.writtenBy(props.act.by)}
              <Show when={props.act.state !== 'stands'}>
                ,{' '}
                {props.act.takenBack === undefined
                  ? words.states[props.act.state]
                  : words.takenBackBy(
                      props.act.takenBack.by,
                      sayMoment(record.localAt(props.act.takenBack.at), record.today()),
                    )}
              </Show>
            </span>
            <span class="act-sentence">{props.act.sentence}</span>
          </span>
        </summary>
        <Show when={isOpen()}>
          <Versions versions={props.act.versions} />
          <ShownThen act={props.act} />
          <Show when={props.act.shown} keyed>
            {(shown) => <Mend shown={shown} line={props.act.id} />}
          </Show>
        </Show>
      </details>
    </li>
  );
}

function Versions(props: { readonly versions: readonly Entry[] }) {
  const record = useRecord();
  return (
    <>
      <h3>{props.versions.length > 1 ? words.versions : words.fields}</h3>
      <For each={props.versions}>
        {(version, i) => {
          const fields = entryFields(version, record.plot());
          return (
            <section class="version">
              <p class="note">
                {words.version(i(), version.by, sayMoment(record.localAt(version.at), record.today()))}
              </p>
              <Show when={fields.length > 0} fallback={<p>{words.takenBack}</p>}>
                <p>{sayMoment(version.on, record.today())}</p>
                <dl class="inputs">
                  <For each={fields}>
                    {({ name, text }) => (
                      <div>
                        <dt>{name}</dt>
                        <dd>{text}</dd>
                      </div>
                    )}
                  </For>
                </dl>
              </Show>
            </section>
          );
        }}
      </For>
    </>
  );
}

/** Correcting and taking back: both are entries of their own. */
function Mend(props: { readonly shown: Entry; readonly line: string }) {
  const record = useRecord();
  const { shown } = props;
  const [which, setWhich] = createSignal<'none' | 'correct' | 'withdraw'>('none');
  const [said, setSaid] = createSignal('');
  const asked = [
    { field: ON_DATE, as: 'text' } as const,
    { field: ON_TIME, as: 'text' } as const,
    ...correctionForm(shown),
  ];
  const label = (field: string) =>
    field === ON_DATE ? words.date : field === ON_TIME ? words.time : fieldLabel(field);
  const read = (typed: Readonly<Record<string, string>>) => {
    const at = { line: props.line, now: record.now(), plot: record.plot() };
    const found = readCorrection(shown, typed, countriesOf(record.plot(), record.keyholder()), at);
    if (!found.ok) return found;
    const write = () => record.correct(shown, { on: found.on, body: found.body });
    return { ok: true as const, write: found.changed ? write : undefined };
  };
  return (
    <Show when={shown.kind !== 'question.answered' || which() !== 'correct'}>
      <div class="choices">
        <Show when={shown.kind !== 'question.answered'}>
          <button
            type="button"
            class="block"
            aria-expanded={which() === 'correct'}
            onClick={() => setWhich(which() === 'correct' ? 'none' : 'correct')}
          >
            {words.correct}
          </button>
        </Show>
        <button
          type="button"
          class="block"
          aria-expanded={which() === 'withdraw'}
          onClick={() => setWhich(which() === 'withdraw' ? 'none' : 'withdraw')}
        >
          {words.withdraw}
        </button>
      </div>
      <Show when={which() === 'correct'}>
        <p class="note">{words.correctNote}</p>
        <SmallForm
          id={`correct-${shown.id}`}
          asked={asked}
          start={correctionTyped(shown)}
          label={label}
          read={read}
          word={words.writeCorrection}
        />
      </Show>
      <Show when={which() === 'withdraw'}>
        <p class="note">{words.withdrawNote}</p>
        <div class="choices">
          <UndoButton
            of={shown.id}
            onPress={() => record.takeBack(shown).catch((failure) => setSaid(sayFailure(failure)))}
          >
            {words.withdrawSure}
          </UndoButton>
          <button type="button" class="block" onClick={() => setWhich('none')}>
            {words.keep}
          </button>
        </div>
        <p role="status" class="said">
          {said()}
        </p>
      </Show>
    </Show>
  );
}
