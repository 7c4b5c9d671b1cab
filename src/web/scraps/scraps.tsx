// Scraps in stock: each lot with its weight and where it may go, and the small form that weighs one in.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { materials } from '#engine/tables/index.ts';
import { stockView } from '#tasks/plot/scraps.ts';
import { app } from '#words/en/app.ts';
import { condition, lotLine, places, stock, treated, whose } from '#words/en/scraps-stock.ts';
import { groupNames } from '#words/en/weigh-in-labels.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { habitsOf, NO_TEXT, readTyped } from '../parts/typed.ts';
import '../styles/weigh-in.css';
import '../styles/scraps.css';
import { TypedField } from '../parts/typed-field.tsx';

const EMPTY = {
  material: '',
  amount: NO_TEXT,
  whose: undefined as keyof typeof whose | undefined,
  treated: undefined as keyof typeof treated | undefined,
  condition: undefined as keyof typeof condition | undefined,
  gallon: undefined as 'us' | 'imperial' | undefined,
  spoon: undefined as 'us' | 'metric' | 'uk' | 'au' | undefined,
};
/** A word list as the choice rows take it. */
function pairs<Word extends string>(names: Readonly<Record<Word, string>>) {
  return Object.entries(names) as [Word, string][];
}

const ORDER = ['liquid', 'set-aside', 'compost-only', 'out'] as const;

export function ScrapsScreen() {
  const record = useRecord();
  const view = createMemo(() => stockView({ plot: record.plot(), today: record.today() }));
  return (
    <Sheet title={stock.title} here="scraps" number={3}>
      <Show when={view().lots.length > 0} fallback={<p>{stock.empty}</p>}>
        <h2>{stock.list}</h2>
        <For each={ORDER}>
          {(place) => (
            <Show when={view().lots.some((lot) => lot.goes === place)}>
              <h3 class="lots-goes">{places[place]}</h3>
              <ul class="plain lots">
                <For each={view().lots.filter((lot) => lot.goes === place)}>
                  {(lot) => (
                    <li>
                      <b>{lot.name}</b>
                      <span>{lotLine(lot)}</span>
                      <Show when={lot.why}>
                        <small>{lot.why}</small>
                      </Show>
                    </li>
                  )}
                </For>
              </ul>
            </Show>
          )}
        </For>
        <A class="block go" href="/weigh-in">
          {stock.toPail}
        </A>
      </Show>
      <WeighLot />
    </Sheet>
  );
}

function WeighLot() {
  const record = useRecord();
  const { draft, change, clear } = useDraft('scraps', EMPTY);
  const [trouble, setTrouble] = createSignal<string>();
  const habits = () => {
    const own = habitsOf(record.plot().facts, record.keyholder());
    return { gallon: draft().gallon ?? own.gallon, spoon: draft().spoon ?? own.spoon };
  };
  const read = () => readTyped(draft().amount, 'mass', habits());
  const groups = Object.entries(groupNames).map(([group, name]) => ({
    name,
    rows: materials.filter((row) => row.group === group),
  }));

  async function write() {
    const { value } = read();
    const { material, amount, whose: from, treated: told, condition: as } = draft();
    if (material === '' || value === undefined || !(value > 0)) {
      setTrouble(stock.nothingChosen);
      return;
    }
    setTrouble(undefined);
    try {
      await record.act('scraps.weighed', {
        material,
        mass: { typed: amount.settled.trim(), massKg: value },
        ...(from === undefined && told === undefined
          ? {}
          : { slip: { whose: from ?? 'unknown', treated: told ?? 'unknown' } }),
        ...(as === undefined ? {} : { condition: as }),
      });
      clear();
    } catch {
      setTrouble(app.notSaved);
    }
  }

  return (
    <section class="ask scraps-form" aria-labelledby="weigh-lot">
      <h2 id="weigh-lot">{stock.weigh}</h2>
      <div class="field">
        <label for="lot-material">{stock.name}</label>
        <select
          id="lot-material"
          value={draft().material}
          onChange={(event) => change({ material: event.currentTarget.value })}
        >
          <option value="">…</option>
          <For each={groups}>
            {(group) => (
              <optgroup label={group.name}>
                <For each={group.rows}>{(row) => <option value={row.id}>{row.name}</option>}</For>
              </optgroup>
            )}
          </For>
        </select>
      </div>
      <TypedField
        id="lot-amount"
        label={stock.amount}
        hint={stock.hint}
        dimension="mass"
        field={draft().amount}
        trouble={read().trouble}
        countries={habits()}
        onField={(amount) => change({ amount })}
        onCountries={({ gallon, spoon }) => change({ gallon, spoon })}
      />
      <ChoiceRow
        legend={stock.whose}
        name="lot-whose"
        words={pairs(whose)}
        taken={draft().whose}
        onTake={(word) => change({ whose: word })}
      />
      <ChoiceRow
        legend={stock.treated}
        name="lot-treated"
        words={pairs(treated)}
        taken={draft().treated}
        onTake={(word) => change({ treated: word })}
      />
      <ChoiceRow
        legend={stock.condition}
        name="lot-condition"
        words={pairs(condition)}
        taken={draft().condition}
        onTake={(word) => change({ condition: word })}
      />
      <Show when={trouble()}>
        <p class="trouble" role="alert">
          {trouble()}
        </p>
      </Show>
      <button type="button" class="block act" id="lot-write" onClick={() => void write()}>
        {stock.put}
      </button>
    </section>
  );
}
