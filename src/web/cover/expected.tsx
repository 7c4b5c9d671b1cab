// What is still to come this season: a line for each material with its amount; every trouble stands at its field.

import { For, Show } from 'solid-js';
import { material } from '#engine/tables/index.ts';
import { EMPTY_EXPECTED, EXPECTED, type ExpectedTyped } from '#tasks/plot/cover-expected.ts';
import type { Troubles } from '#tasks/plot/form.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { CoverRows } from './rows.tsx';
import { CoverText } from './text.tsx';

export function Expected(props: {
  readonly rows: readonly ExpectedTyped[];
  readonly troubles: Troubles;
  readonly onRows: (rows: readonly ExpectedTyped[]) => void;
}) {
  const trouble = (i: number, field: keyof ExpectedTyped) => props.troubles.get(`${i}.${field}`)?.sentence;
  return (
    <details class="fold">
      <summary>{words.expectedHeading}</summary>
      <p>{words.expectedLead}</p>
      <p class="note">{words.expectedNote}</p>
      <CoverRows rows={props.rows} empty={EMPTY_EXPECTED} more={words.expectedMore} onRows={props.onRows}>
        {(i, row, change) => (
          <>
            <div class="field">
              <label for={`expected-${i}-material`}>{words.expectedFields.material}</label>
              <select
                id={`expected-${i}-material`}
                class="entry plain"
                value={row().material}
                aria-invalid={trouble(i, 'material') ? true : undefined}
                aria-describedby={trouble(i, 'material') ? `expected-${i}-material-trouble` : undefined}
                onChange={(event) => change({ material: event.currentTarget.value })}
              >
                <option value="">{words.expectedChoose}</option>
                <For each={EXPECTED}>{(id) => <option value={id}>{material(id)?.name ?? id}</option>}</For>
              </select>
              <Show when={trouble(i, 'material')}>
                {(sentence) => (
                  <div class="trouble">
                    <p id={`expected-${i}-material-trouble`}>{sentence()}</p>
                  </div>
                )}
              </Show>
            </div>
            <CoverText
              id={`expected-${i}-amount`}
              label={words.expectedFields.amount}
              value={row().amount}
              trouble={trouble(i, 'amount')}
              onText={(amount) => change({ amount })}
            />
          </>
        )}
      </CoverRows>
    </details>
  );
}
