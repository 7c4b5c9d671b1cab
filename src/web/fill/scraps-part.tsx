// What went in: a row for each lot, the lots of the stock that may, the list for what never was in the stock, and
// below it what may not and why.

import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { material, materials } from '#engine/tables/index.ts';
import type { FillOffers } from '#tasks/plot/fill.ts';
import { fillSheet, lotShort, lotWords } from '#words/en/fill.ts';
import { asksWeedkiller, groupNames, rowLabels, sheet } from '#words/en/weigh-in-labels.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { byId, More, paged } from '../parts/paged.tsx';
import { type Habits, NO_TEXT } from '../parts/typed.ts';
import { massStep } from '../weigh-in/steps.ts';
import { ActualRow } from './actual-row.tsx';
import type { FillDraft, FillRow } from './draft.ts';
import { KeptOutLots } from './kept-out.tsx';
import type { FillReading } from './reading.ts';

/** Lots drawn at first. */
const LOTS = 30;

export interface PartProps {
  readonly draft: FillDraft;
  readonly change: (next: Partial<FillDraft>) => void;
  readonly reading: FillReading;
  readonly offers: FillOffers;
  readonly habits: Habits;
}

export function ScrapsPart(props: PartProps & { readonly children?: JSX.Element }) {
  const [kind, setKind] = createSignal('');
  const rest = createMemo(() => props.offers.lots.filter(({ id }) => !props.draft.rows.some(({ lot }) => lot === id)));
  const lots = paged(rest, LOTS, byId);
  const groups = [...new Set(materials.filter(({ into }) => into === 'liquid').map(({ group }) => group))];
  const put = (row: Pick<FillRow, 'lot' | 'material' | 'name' | 'treated'>) => {
    const key = props.draft.rows.reduce((most, one) => Math.max(most, one.key), 0) + 1;
    const fresh = { ...row, key, planned: undefined, amount: NO_TEXT };
    props.change({ rows: [...props.draft.rows, fresh] });
  };
  const keys = createMemo(() => props.draft.rows.map(({ key }) => key), undefined, {
    equals: (a, b) => a.join() === b.join(),
  });
  return (
    <section class="ask" aria-labelledby="fill-scraps">
      <h2 id="fill-scraps">
        <b class="number">2</b> {fillSheet.scrapsQuestion}
      </h2>
      <p class="note">{props.draft.planText === undefined ? fillSheet.noPlan : fillSheet.fromPlan}</p>
      {props.children}
      <div class="rows">
        <For each={keys()}>
          {(key) => (
            <Show when={props.draft.rows.find((row) => row.key === key)}>
              {(row) => <ScrapsRow {...props} row={row()} />}
            </Show>
          )}
        </For>
      </div>
      <Show when={rest().length > 0 || props.offers.keptOut.length > 0}>
        <h3>{fillSheet.stockHeading}</h3>
      </Show>
      <Show when={rest().length > 0}>
        <div class="choices">
          <For each={lots.ids()}>
            {(id) => (
              <Show when={lots.of(id)} keyed>
                {({ material, name, treated, leftKg }) => (
                  <button type="button" class="block" onClick={() => put({ lot: id, material, name, treated })}>
                    + {lotWords({ name, leftKg })}
                  </button>
                )}
              </Show>
            )}
          </For>
        </div>
        <More of={lots} />
      </Show>
      <KeptOutLots offers={props.offers} />
      <div class="put">
        <div class="field">
          <label for="fill-kind">{fillSheet.fromList}</label>
          <select id="fill-kind" onChange={(event) => setKind(event.currentTarget.value)}>
            <option value="">{sheet.pickOne}</option>
            <For each={groups}>
              {(group) => (
                <optgroup label={groupNames[group] ?? group}>
                  <For each={materials.filter((one) => one.group === group && one.into === 'liquid')}>
                    {(one) => (
                      <option
                        value={one.id}
                        selected={kind() === one.id}
                        disabled={props.offers.closed.ids.has(one.id)}
                      >
                        {one.name}
                      </option>
                    )}
                  </For>
                </optgroup>
              )}
            </For>
          </select>
          <Show when={props.offers.closed.says}>{(says) => <p class="note">{says()}</p>}</Show>
        </div>
        <button
          type="button"
          class="block"
          aria-disabled={kind() === ''}
          onClick={() => {
            if (kind() === '') return;
            put({ lot: undefined, material: kind(), name: undefined, treated: undefined });
            setKind('');
          }}
        >
          {fillSheet.putIn}
        </button>
      </div>
    </section>
  );
}

function ScrapsRow(props: PartProps & { readonly row: FillRow }) {
  const table = () => (props.row.material === undefined ? undefined : material(props.row.material));
  const name = () => props.row.name ?? table()?.name ?? '';
  const lot = () => props.offers.lots.find(({ id }) => id === props.row.lot);
  const sameKind = () => props.offers.lots.filter((one) => one.material === props.row.material);
  const read = () => props.reading.rows.get(props.row.key) ?? {};
  const set = (next: Partial<FillRow>) =>
    props.change({ rows: props.draft.rows.map((row) => (row.key === props.row.key ? { ...row, ...next } : row)) });
  const id = () => `fill-row-${props.row.key}`;
  const short = () => {
    const left = lot()?.leftKg;
    const massKg = read().value;
    return left !== undefined && massKg !== undefined && massKg > left + 1e-9 ? left : undefined;
  };
  return (
    <ActualRow
      id={id()}
      name={name()}
      hint={fillSheet.weightHint}
      hatch={hatchOf(table() ?? { id: '', group: '' }) ?? 'trimmings'}
      dimension="mass"
      field={props.row.amount}
      read={read()}
      planned={props.row.planned}
      step={massStep}
      habits={props.habits}
      onField={(amount) => set({ amount })}
      onCountries={(countries) => props.change({ countries })}
      keys={
        <button
          type="button"
          class="block"
          aria-label={rowLabels.out(name())}
          onClick={() => props.change({ rows: props.draft.rows.filter((row) => row.key !== props.row.key) })}
        >
          {fillSheet.out}
        </button>
      }
    >
      <Show when={sameKind().length > 0 && (props.row.lot === undefined || sameKind().length > 1)}>
        <div class="field">
          <label for={`${id()}-lot`}>{fillSheet.stockHeading}</label>
          <select
            id={`${id()}-lot`}
            onChange={(event) => {
              const taken = props.offers.lots.find((one) => one.id === event.currentTarget.value);
              set({
                lot: taken?.id,
                ...(taken === undefined ? {} : { name: taken.name, treated: taken.treated ?? props.row.treated }),
              });
            }}
          >
            <option value="">{fillSheet.noReport}</option>
            <For each={sameKind()}>
              {(one) => (
                <option value={one.id} selected={one.id === props.row.lot}>
                  {lotWords(one)}
                </option>
              )}
            </For>
          </select>
        </div>
      </Show>
      <Show when={short()}>{(leftKg) => <p class="note">{lotShort(leftKg())}</p>}</Show>
      <Show when={asksWeedkiller(table()?.group ?? '') && lot()?.treated === undefined}>
        <ChoiceRow
          name={`${id()}-treated`}
          legend={sheet.treatedQuestion}
          words={[
            ['no', sheet.treated.no],
            ['unknown', sheet.treated.unknown],
            ['yes', sheet.treated.yes],
          ]}
          taken={props.row.treated}
          onTake={(treated) => set({ treated })}
        />
      </Show>
    </ActualRow>
  );
}
