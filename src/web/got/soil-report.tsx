// A soil report, line by line as the laboratory printed it. Beside each line stands at once what it tests and by which
// published scale, or the question it raises; all of it is read by tasks/plot/soil-forms.ts.

import { createMemo, For, Show } from 'solid-js';
import type { Troubles } from '#tasks/plot/form.ts';
import { readSoilReport, SOIL_WHAT, type SoilRow, type SoilRowSaid, type SoilTyped } from '#tasks/plot/soil-forms.ts';
import { soilForm } from '#words/en/ground-forms.ts';
import { soilNames } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { HandMark } from '../parts/marks.tsx';
import { GroundField, GroundForm, GroundTrouble } from './ground-form.tsx';

const row = (what: SoilRow['what']): SoilRow => ({ what, value: '', unit: '', method: '', depth: '' });
const EMPTY: SoilTyped = {
  of: 'bed',
  rows: [row('ph'), row('p'), row('k')],
  laboratory: '',
  note: '',
  insists: false,
};

export function SoilReportForm(props: { readonly bed: string; readonly name: string }) {
  const record = useRecord();
  const id = () => `soil-${props.bed}`;
  const readOf = (draft: SoilTyped) => readSoilReport(draft, { plot: record.plot(), bed: props.bed });
  return (
    <GroundForm
      id={id()}
      summary={soilForm.summary}
      empty={EMPTY}
      read={(draft) => {
        const { read } = readOf(draft);
        return read.ok ? { ok: true, write: () => record.act('soil.tested', read.body) } : read;
      }}
    >
      {({ draft, change, troubles }) => {
        const said = createMemo(() => readOf(draft()).rows);
        const put = (at: number, part: Partial<SoilRow>) =>
          change({ rows: draft().rows.map((one, i) => (i === at ? { ...one, ...part } : one)), insists: false });
        return (
          <>
            <ChoiceRow
              name={`${id()}-of`}
              legend={soilForm.whole}
              words={soilForm.wholeWords(props.name)}
              taken={draft().of}
              onTake={(of) => change({ of })}
            />
            <datalist id={`${id()}-units`}>
              <For each={soilForm.units}>{(unit) => <option value={unit} />}</For>
            </datalist>
            <datalist id={`${id()}-methods`}>
              <For each={soilForm.methods}>{(method) => <option value={method} />}</For>
            </datalist>
            <For each={draft().rows.map((_, i) => i)}>
              {(i) => (
                <Line
                  id={id()}
                  at={i}
                  row={draft().rows[i] ?? row('other')}
                  said={said()[i] ?? { says: [] }}
                  troubles={troubles()}
                  onPut={(part) => put(i, part)}
                />
              )}
            </For>
            <button type="button" class="block" onClick={() => change({ rows: [...draft().rows, row('nitrate')] })}>
              {soilForm.addRow}
            </button>
            <GroundField
              id={`${id()}-laboratory`}
              label={soilForm.laboratory}
              value={draft().laboratory}
              trouble={troubles().get('laboratory')}
              onType={(laboratory) => change({ laboratory })}
            />
            <GroundField
              id={`${id()}-note`}
              label={soilForm.fields.note ?? ''}
              value={draft().note}
              trouble={troubles().get('note')}
              onType={(note) => change({ note })}
            />
            <GroundTrouble trouble={troubles().get('figures')} />
            <Show when={said().some(({ question }) => question !== undefined)}>
              <GroundTrouble trouble={troubles().get('insists')} />
              <label class="block" classList={{ taken: draft().insists }}>
                <input
                  type="checkbox"
                  checked={draft().insists}
                  aria-invalid={troubles().has('insists') ? true : undefined}
                  onChange={(event) => change({ insists: event.currentTarget.checked })}
                />
                <span>{soilForm.insist}</span>
              </label>
            </Show>
          </>
        );
      }}
    </GroundForm>
  );
}

function Line(props: {
  readonly id: string;
  readonly at: number;
  readonly row: SoilRow;
  readonly said: SoilRowSaid;
  readonly troubles: Troubles;
  readonly onPut: (part: Partial<SoilRow>) => void;
}) {
  const id = (field: string) => `${props.id}-${field}-${props.at}`;
  const Text = (line: { readonly field: 'value' | 'unit' | 'method' | 'depth'; readonly list?: string }) => (
    <GroundField
      id={id(line.field)}
      label={soilForm.fields[line.field] ?? line.field}
      value={props.row[line.field]}
      trouble={props.troubles.get(`figures.${props.at}.${line.field}`)}
      {...(line.list !== undefined && { list: `${props.id}-${line.list}` })}
      numeric={line.field === 'value'}
      onType={(text) => props.onPut({ [line.field]: text })}
    />
  );
  return (
    <fieldset class="soil-line">
      <legend>{soilForm.row(props.at)}</legend>
      <div class="soil-fields">
        <div class="field">
          <label for={id('what')}>{soilForm.fields.what}</label>
          <select
            id={id('what')}
            onChange={(event) => props.onPut({ what: event.currentTarget.value as SoilRow['what'] })}
          >
            <For each={SOIL_WHAT}>
              {(what) => (
                <option value={what} selected={props.row.what === what}>
                  {soilNames[what]}
                </option>
              )}
            </For>
          </select>
        </div>
        <Text field="value" />
        <Show when={props.row.what !== 'ph'}>
          <Text field="unit" list="units" />
          <Text field="method" list="methods" />
          <Text field="depth" />
        </Show>
      </div>
      <div aria-live="polite">
        <For each={props.said.says}>{(text) => <p>{text}</p>}</For>
        <Show when={props.said.question}>
          {(question) => (
            <div class="trouble soil-question">
              <p>
                <HandMark />
                {question().text}
              </p>
              <p class="note">{question().source}</p>
            </div>
          )}
        </Show>
      </div>
    </fieldset>
  );
}
