// Native fields for what a small form asks: each with its label above, its answer as typed, and its sentence below
// where it cannot be read. What the fields mean is read by tasks.

import { For, Match, Show, Switch } from 'solid-js';
import { type Asked, styleField, type Troubles, type Typed, unitField } from '#tasks/plot/form.ts';
import { answerNames, form } from '#words/en/plot.ts';
import { record } from '#words/en/record.ts';
import { alkalinityUnits } from '#words/en/weigh-in-labels.ts';
import { TroubleNote } from './trouble-note.tsx';

export interface FormFieldsProps {
  /** Begins the ids of the fields. */
  readonly id: string;
  readonly asked: readonly Asked[];
  readonly typed: Typed;
  readonly troubles: Troubles;
  readonly label: (field: string) => string;
  readonly onType: (field: string, text: string) => void;
}

type OneProps = FormFieldsProps & { readonly one: Asked };

const idOf = (form: string, field: string) => `${form}-${field.replaceAll('.', '-')}`;
const answer = (word: string) => answerNames[word] ?? record.answers[word] ?? word;

export function FormFields(props: FormFieldsProps) {
  return <For each={props.asked}>{(one) => <OneField {...props} one={one} />}</For>;
}

function OneField(props: OneProps) {
  const { one } = props;
  return (
    <Switch fallback={<TypedField {...props} />}>
      <Match when={one.as === 'many' && one}>{(many) => <ManyField {...props} words={many().words} />}</Match>
      <Match when={one.as === 'yes'}>
        <ChosenField {...props} words={['yes', 'no']} />
      </Match>
      <Match when={one.as === 'one' && one}>{(choice) => <ChosenField {...props} words={choice().words} />}</Match>
    </Switch>
  );
}

function TypedField(props: OneProps) {
  const { one } = props;
  const id = () => idOf(props.id, one.field);
  const text = () => props.typed[one.field] ?? '';
  const trouble = () => props.troubles.get(one.field);
  const kind = () =>
    one.as === 'date' || one.field.endsWith('.date') ? 'date' : one.field.endsWith('.time') ? 'time' : 'text';
  /** The country goes before each unit: "2 imperial gal". */
  const withCountry = (country: string) =>
    props.onType(
      one.field,
      text()
        .replaceAll(/(\d\s*)([A-Za-z])/g, `$1 ${country} $2`)
        .replaceAll(/ +/g, ' '),
    );
  return (
    <div class="field">
      <label for={id()}>{props.label(one.field)}</label>
      <Show when={one.as === 'amount' && one}>
        {(amount) => <small id={`${id()}-such`}>{form.such[amount().dimension]}</small>}
      </Show>
      <input
        id={id()}
        class="entry plain"
        type={kind()}
        inputmode={one.as === 'figure' || one.as === 'reading' || one.as === 'degrees' ? 'decimal' : 'text'}
        autocomplete="off"
        value={text()}
        aria-invalid={trouble() ? true : undefined}
        aria-describedby={trouble() ? `${id()}-trouble` : one.as === 'amount' ? `${id()}-such` : undefined}
        onInput={(event) => props.onType(one.field, event.currentTarget.value)}
      />
      <Show when={one.as === 'degrees'}>
        <label class="unseen" for={`${id()}-unit`}>
          {props.label(one.field)}: {form.unit}
        </label>
        <select id={`${id()}-unit`} onChange={(event) => props.onType(unitField(one.field), event.currentTarget.value)}>
          <For each={Object.entries(alkalinityUnits)}>
            {([unit, name]) => (
              <option value={unit} selected={unit === (props.typed[unitField(one.field)] ?? 'mg/L CaCO3')}>
                {name}
              </option>
            )}
          </For>
        </select>
      </Show>
      <Show when={trouble()}>
        {(found) => (
          <TroubleNote
            id={`${id()}-trouble`}
            trouble={found()}
            onGallon={withCountry}
            onSpoon={withCountry}
            onStyle={(style) => props.onType(styleField(one.field), style)}
            onPut={(put) => {
              for (const [field, text] of Object.entries(put)) props.onType(field, text);
            }}
            onUnit={(unit) => props.onType(one.field, `${text().trim()} ${unit}`)}
          />
        )}
      </Show>
    </div>
  );
}

function ChosenField(props: OneProps & { readonly words: readonly string[] }) {
  const id = () => idOf(props.id, props.one.field);
  const taken = () => props.typed[props.one.field] ?? '';
  const trouble = () => props.troubles.get(props.one.field);
  return (
    <div class="field">
      <label for={id()}>{props.label(props.one.field)}</label>
      <select
        id={id()}
        aria-invalid={trouble() ? true : undefined}
        aria-describedby={trouble() ? `${id()}-trouble` : undefined}
        onChange={(event) => props.onType(props.one.field, event.currentTarget.value)}
      >
        <option value="" selected={taken() === ''}>
          {form.notTold}
        </option>
        <For each={props.words}>
          {(word) => (
            <option value={word} selected={taken() === word}>
              {answer(word)}
            </option>
          )}
        </For>
      </select>
      <Show when={trouble()}>
        {(found) => (
          <div class="trouble">
            <p id={`${id()}-trouble`}>{found().sentence}</p>
          </div>
        )}
      </Show>
    </div>
  );
}

function ManyField(props: OneProps & { readonly words: readonly string[] }) {
  const taken = () => (props.typed[props.one.field] ?? '').split(' ').filter(Boolean);
  const turn = (word: string, isOn: boolean) => {
    const next = props.words.filter((one) => (one === word ? isOn : taken().includes(one)));
    props.onType(props.one.field, next.join(' '));
  };
  return (
    <fieldset class="choice">
      <legend>{props.label(props.one.field)}</legend>
      <div class="choices">
        <For each={props.words}>
          {(word) => (
            <label class="block" classList={{ taken: taken().includes(word) }}>
              <input
                type="checkbox"
                checked={taken().includes(word)}
                onChange={(event) => turn(word, event.currentTarget.checked)}
              />
              <span>{answer(word)}</span>
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
