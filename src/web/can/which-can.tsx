// Which can: those of the plot whose size is told, and another one by its size. Whose gallon it is, is asked once.

import { createSignal, For, Show } from 'solid-js';
import type { Ask, Countries } from '#engine/quantity/ask.ts';
import { keptVolume } from '#engine/quantity/kept.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import { readCanSize } from '#tasks/plot/pour.ts';
import { sayAmountProblem, sayStyleChoice } from '#words/quantity.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import type { Can } from './chosen.ts';

export function WhichCan(props: { readonly can: Can }) {
  const { words, cans, can, record } = props.can;
  const [typed, setTyped] = createSignal('');
  const [trouble, setTrouble] = createSignal<string>();
  const [ask, setAsk] = createSignal<Ask>();
  const sized = () =>
    cans().flatMap(({ id, name, volumeL }) =>
      volumeL === undefined ? [] : [[id, `${name} (${words().litres(volumeL)})`] as const],
    );

  async function keep(settled: Countries) {
    const read = readCanSize(typed(), settled);
    if (!read.ok) {
      setAsk(read.ask);
      const said = sayAmountProblem(read);
      setTrouble(read.ask?.kind === 'gallon' ? words().gallonAsk : `${said.message}: ${said.allowed}`);
      return;
    }
    try {
      const volume = keptVolume(read);
      const name = words().canName(typed().trim());
      await record.act('can.described', { name, kind: 'can', volume }, (entry) => {
        props.can.change({ can: entry.id });
        setTyped('');
        setAsk(undefined);
        setTrouble(undefined);
      });
    } catch {
      setTrouble(words().notSaved);
    }
  }
  /** What is answered here goes before the keyholder's own. */
  const answered = (settled: Countries) => {
    keep({ ...countriesOf(record.plot(), record.keyholder()), ...settled }).catch(() => undefined);
  };
  const start = () => {
    answered({});
  };

  const choices = () => {
    const asked = ask();
    if (asked?.kind === 'gallon') {
      return asked.choices.map(({ country }) => ({ text: words().gallon[country], settled: { gallon: country } }));
    }
    if (asked?.kind !== 'style') return [];
    return asked.choices.map((choice) => ({
      text: sayStyleChoice(choice, asked.behind),
      settled: { style: choice.style },
    }));
  };

  return (
    <section class="can-question">
      <Show when={sized().length > 0} fallback={<h3>{words().whichCan}</h3>}>
        <ChoiceRow
          name="can"
          legend={words().whichCan}
          words={sized()}
          taken={can()?.id}
          onTake={(id) => props.can.change({ can: id })}
        />
      </Show>
      <details class="fold" open={sized().length === 0}>
        <summary>{words().otherCan}</summary>
        <div class="field">
          <label for="can-size">
            {words().canSize}
            <small>{words().canSizeHint}</small>
          </label>
          <input
            id="can-size"
            class="entry"
            type="text"
            autocomplete="off"
            value={typed()}
            aria-invalid={trouble() === undefined ? undefined : true}
            aria-describedby={trouble() === undefined ? undefined : 'can-size-trouble'}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setAsk(undefined);
              setTrouble(undefined);
            }}
            onKeyDown={(event) => event.key === 'Enter' && start()}
          />
        </div>
        <Show when={trouble()}>
          <p id="can-size-trouble" class="accent" role="alert">
            {trouble()}
          </p>
        </Show>
        <Show
          when={ask()}
          fallback={
            <button type="button" class="block wide" onClick={start}>
              {words().canKeep}
            </button>
          }
        >
          <div class="choices">
            <For each={choices()}>
              {({ text, settled }) => (
                <button type="button" class="block" onClick={() => answered(settled)}>
                  {text}
                </button>
              )}
            </For>
          </div>
        </Show>
      </details>
    </section>
  );
}
