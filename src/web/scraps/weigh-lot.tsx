// The form that weighs a lot in: kind, weight, the questions its slip needs, what becomes of it, and the act.

import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Countries } from '#engine/quantity/ask.ts';
import { keptMass } from '#engine/quantity/kept.ts';
import { materials } from '#engine/tables/index.ts';
import { closedHere } from '#tasks/plot/closed.ts';
import { OTHER_KIND, type SlipTold, slipAsks, weighedBody } from '#tasks/plot/slip-questions.ts';
import { app } from '#words/en/app.ts';
import { asked, stock } from '#words/en/scraps-stock.ts';
import { groupNames } from '#words/en/weigh-in-labels.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { habitsOf, NO_TEXT, readTyped } from '../parts/typed.ts';
import { TypedField } from '../parts/typed-field.tsx';
import type { Field } from '../weigh-in/draft.ts';
import { Becomes } from './becomes.tsx';
import { SlipPart } from './slip-part.tsx';

interface Draft extends SlipTold, Countries {
  readonly amount: Field;
}

const EMPTY: Draft = { material: '', name: '', amount: NO_TEXT };
/** Answers that belong to one kind of lot, and are asked anew of another. */
const NOTHING_TOLD = {
  name: '',
  place: undefined,
  kitchen: undefined,
  treated: undefined,
  weedkiller: undefined,
  labelAllows: undefined,
  treatedOn: undefined,
  treatedWith: undefined,
  condition: undefined,
} as const;

export function WeighLot() {
  const record = useRecord();
  const { draft, change, clear } = useDraft<Draft>('scraps', EMPTY);
  const [trouble, setTrouble] = createSignal<string>();
  const closed = createMemo(() => closedHere(record.plot().facts));
  const habits = () => {
    const own = habitsOf(record.plot().facts, record.keyholder());
    return {
      gallon: draft().gallon ?? own.gallon,
      spoon: draft().spoon ?? own.spoon,
      style: draft().style ?? own.style,
    };
  };
  const read = () => readTyped(draft().amount, 'mass', habits());
  const groups = Object.entries(groupNames).map(([group, name]) => ({
    name,
    rows: materials.filter((row) => row.group === group),
  }));

  async function write() {
    const { read: weighed } = read();
    const plot = record.plot();
    const { open } = slipAsks({ told: draft(), plot });
    if (draft().material === '' || weighed === undefined) {
      setTrouble(stock.nothingChosen);
      return;
    }
    if (open.length > 0) {
      setTrouble(stock.stillOpen(open.map((question) => asked[question])));
      return;
    }
    setTrouble(undefined);
    const told = draft();
    try {
      const mass = keptMass(weighed);
      await record.act('scraps.weighed', weighedBody({ told, plot, mass }), () => clear(told));
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
          aria-describedby={closed().says === undefined ? undefined : 'lot-closed'}
          onChange={(event) => change({ ...NOTHING_TOLD, material: event.currentTarget.value })}
        >
          <option value="">…</option>
          <For each={groups}>
            {(group) => (
              <optgroup label={group.name}>
                <For each={group.rows}>
                  {(row) => (
                    <option value={row.id} disabled={closed().ids.has(row.id)}>
                      {row.name}
                    </option>
                  )}
                </For>
              </optgroup>
            )}
          </For>
          <option value={OTHER_KIND}>{stock.otherKind}</option>
        </select>
        <Show when={closed().says}>
          {(says) => (
            <p class="note" id="lot-closed">
              {says()}
            </p>
          )}
        </Show>
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
        onCountries={change}
      />
      <SlipPart prefix="lot" told={draft()} onTell={(next) => change(next)} />
      <Becomes told={draft()} />
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
