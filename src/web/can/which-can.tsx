// Which can: those of the plot whose size is told, and another one by its size. Whose gallon it is, is asked once.

import { createSignal, For, Show } from 'solid-js';
import { readCanSize } from '#tasks/plot/pour.ts';
import { sayAmountProblem } from '#words/quantity.ts';
import { ChoiceRow } from '../parts/choice-row.tsx';
import type { Can } from './chosen.ts';

export function WhichCan(props: { readonly can: Can }) {
  const { words, cans, can, record, keyholder } = props.can;
  const [typed, setTyped] = createSignal('');
  const [trouble, setTrouble] = createSignal<string>();
  const [asks, setAsks] = createSignal(false);
  const sized = () =>
    cans().flatMap(({ id, name, volumeL }) =>
      volumeL === undefined ? [] : [[id, `${name} (${words().litres(volumeL)})`] as const],
    );

  async function keep(gallon: 'us' | 'imperial' | undefined) {
    const read = readCanSize(typed(), gallon);
    if (!read.ok) {
      setAsks(read.ask?.kind === 'gallon');
      const said = sayAmountProblem(read);
      setTrouble(read.ask?.kind === 'gallon' ? words().gallonAsk : `${said.message}: ${said.allowed}`);
      return;
    }
    const bare = readCanSize(typed());
    // The country stands beside what was typed, so that nobody asks again.
    const country = !bare.ok && gallon !== undefined ? ` (${gallon === 'us' ? 'US' : 'imperial'})` : '';
    try {
      const volume = { typed: `${typed().trim()}${country}`, volumeL: read.value };
      const name = words().canName(typed().trim());
      await record.act('can.described', { name, kind: 'can', volume }, (entry) => {
        props.can.change({ can: entry.id });
        setTyped('');
        setAsks(false);
        setTrouble(undefined);
      });
    } catch {
      setTrouble(words().notSaved);
    }
  }
  const start = () => {
    keep(keyholder().gallon).catch(() => undefined);
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
              setAsks(false);
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
          when={asks()}
          fallback={
            <button type="button" class="block wide" onClick={start}>
              {words().canKeep}
            </button>
          }
        >
          <div class="choices">
            <For each={['us', 'imperial'] as const}>
              {(country) => (
                <button
                  type="button"
                  class="block"
                  onClick={() => {
                    keep(country).catch(() => undefined);
                  }}
                >
                  {words().gallon[country]}
                </button>
              )}
            </For>
          </div>
        </Show>
      </details>
    </section>
  );
}
