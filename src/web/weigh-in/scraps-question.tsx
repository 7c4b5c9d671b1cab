// Second question: which scraps. A native list in groups with a field that narrows it; one row for each lot.

import { createMemo, createSignal, For, Show } from 'solid-js';
import { materials } from '#engine/tables/index.ts';
import { acts, groupNames, intoMarks, rowLabels, sheet } from '#words/en/weigh-in-labels.ts';
import { useRecord } from '../app/context.tsx';
import type { Lot } from './draft.ts';
import type { WeighIn } from './model.ts';
import { ScrapRow } from './scrap-row.tsx';

export function ScrapsQuestion(props: { readonly model: WeighIn }) {
  const { sheet: act, reading } = props.model;
  const record = useRecord();
  const [sought, setSought] = createSignal('');
  const [chosen, setChosen] = createSignal('');
  let list: HTMLSelectElement | undefined;
  const kept = createMemo(() => props.model.parts()?.stockKept(record.plot()));
  const isClosed = (id: string) => kept()?.closed.ids.has(id) === true;
  const groups = createMemo(() => {
    const words = sought().toLowerCase().split(/\s+/).filter(Boolean);
    const kept = materials.filter((row) => words.every((word) => row.name.toLowerCase().includes(word)));
    return Object.entries(groupNames)
      .map(([group, name]) => ({ name, rows: kept.filter((row) => row.group === group) }))
      .filter((group) => group.rows.length > 0);
  });
  const first = () =>
    groups()
      .flatMap(({ rows }) => rows)
      .find(({ id }) => !isClosed(id))?.id ?? '';
  const seek = (text: string) => {
    setSought(text);
    setChosen(text.trim() === '' ? '' : first());
  };
  const nameOf = (id: string) => materials.find((row) => row.id === id)?.name ?? id;
  const unweighed = () =>
    act
      .draft()
      .lots.filter((lot) => lot.weight.settled.trim() === '')
      .map((lot) => nameOf(lot.material));

  function put() {
    const id = chosen();
    if (id === '') {
      list?.focus();
      return;
    }
    const key = act.addLot(acts.added(nameOf(id)), id);
    setSought('');
    setChosen('');
    queueMicrotask(() => document.getElementById(`lot-${key}`)?.focus());
  }
  function takeOut(key: number) {
    const name = nameOf(act.draft().lots.find((lot) => lot.key === key)?.material ?? '');
    act.change(acts.removed(name), (now) => ({ ...now, lots: now.lots.filter((lot) => lot.key !== key) }));
    queueMicrotask(() => document.getElementById('take-back')?.focus());
  }
  return (
    <section class="ask" aria-labelledby="ask-scraps">
      <h2 id="ask-scraps">
        <b class="number">2</b> {sheet.scrapsQuestion}
      </h2>
      <div class="rows">
        <For each={act.draft().lots.map((lot) => lot.key)}>
          {(key) => {
            const lot = createMemo<Lot | undefined>((last) => act.draft().lots.find((one) => one.key === key) ?? last);
            return (
              <Show when={lot()}>
                {(one) => <ScrapRow model={props.model} lot={one()} onOut={() => takeOut(key)} />}
              </Show>
            );
          }}
        </For>
      </div>
      <Show when={reading().missing.length === 0 && unweighed().length > 0}>
        <p class="note">{rowLabels.notWeighed(unweighed())}</p>
      </Show>
      <div class="put">
        <div class="field">
          <label for="find-scrap">{sheet.findScrap}</label>
          <input
            id="find-scrap"
            class="entry plain"
            type="search"
            autocomplete="off"
            value={sought()}
            onInput={(event) => seek(event.currentTarget.value)}
            onKeyDown={(event) => event.key === 'Enter' && put()}
          />
        </div>
        <div class="field">
          <label for="choose-scrap">{sheet.chooseScrap}</label>
          <select
            id="choose-scrap"
            ref={list}
            onChange={(event) => setChosen(event.currentTarget.value)}
            aria-describedby={groups().length === 0 ? 'no-scrap' : undefined}
          >
            <option value="" selected={chosen() === ''}>
              {sheet.pickOne}
            </option>
            <For each={groups()}>
              {(group) => (
                <optgroup label={group.name}>
                  <For each={group.rows}>
                    {(row) => (
                      <option value={row.id} selected={row.id === chosen()} disabled={isClosed(row.id)}>
                        {row.name}
                        {intoMarks[row.into]}
                      </option>
                    )}
                  </For>
                </optgroup>
              )}
            </For>
          </select>
        </div>
        <button type="button" class="block" onClick={put}>
          {sheet.addScrap}
        </button>
      </div>
      <Show when={kept()?.closed.says}>{(says) => <p class="note">{says()}</p>}</Show>
      <Show when={props.model.parts()}>
        {(parts) => <Show when={kept()}>{(offers) => parts().KeptOutLots({ offers: offers() })}</Show>}
      </Show>
      <Show when={groups().length === 0}>
        <p class="note" id="no-scrap">
          {sheet.nothingFound}
        </p>
      </Show>
    </section>
  );
}
