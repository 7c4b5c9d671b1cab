// A jar without a peg: no dose, what to do in drawn steps, and the one act, that it went on the heap.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Countries } from '#engine/quantity/ask.ts';
import { formatAmount } from '#engine/quantity/format.ts';
import { keptVolume } from '#engine/quantity/kept.ts';
import { jarToHeap, unknownJar } from '#tasks/plot/jar.ts';
import { app, titles } from '#words/en/app.ts';
import { jarSheet } from '#words/en/jar.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { habitsOf, NO_TEXT, readTyped } from '../parts/typed.ts';
import { TypedField } from '../parts/typed-field.tsx';
import type { Field } from '../weigh-in/draft.ts';
import '../styles/weigh-in.css';
import '../styles/jar.css';
import { jarSteps } from './jar-steps.tsx';

/** Amounts offered in one touch, litres. */
const OFFERED_L = [0.5, 1, 2, 5];

interface JarDraft {
  readonly amount: Field;
  readonly heap: Field;
  readonly note: Field;
  readonly countries: Countries | undefined;
}

export function JarScreen() {
  const record = useRecord();
  const answer = createMemo(() => unknownJar({ plot: record.plot() }));
  const { draft, change, clear } = useDraft<JarDraft>('jar', {
    amount: NO_TEXT,
    heap: NO_TEXT,
    note: NO_TEXT,
    countries: undefined,
  });
  const [done, setDone] = createSignal(false);
  const [refused, setRefused] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  const habits = () => habitsOf(record.plot().facts, record.keyholder());
  const countries = () => draft().countries ?? habits();
  const amount = () => readTyped(draft().amount, 'volume', countries());
  const poisonLine = () => record.plot().facts.poisonLine;

  async function write() {
    const read = amount().read;
    if (read === undefined || busy()) return;
    setBusy(true);
    try {
      const { heap, note } = draft();
      const told = heap.text.trim() || answer().heap;
      const volume = keptVolume(read);
      await record.act('heap.fed', jarToHeap({ heap: told, volume, note: note.text.trim() }), () => {
        clear();
        setRefused(false);
        setDone(true);
      });
    } catch {
      setRefused(true);
    } finally {
      setBusy(false);
    }
  }

  return (
    <Sheet title={titles.unknownJar} here="bottle" number={10}>
      <p class="say">
        <b>{jarSheet.verdict}</b>
      </p>
      <p class="lead-in">{jarSheet.lead}</p>
      <CautionList cautions={answer().stops} />
      <section class="ask" aria-labelledby="jar-steps">
        <h2 id="jar-steps">{jarSheet.stepsHeading}</h2>
        <ol class="jar-steps">
          <For each={jarSteps(jarSheet.alternatives)}>
            {(drawing, i) => (
              <li>
                {drawing}
                <p>
                  <b class="number">{i() + 1}</b>
                  {jarSheet.steps[i()]}
                </p>
              </li>
            )}
          </For>
        </ol>
        <p class="note">{jarSheet.whyPh}</p>
        <p class="note">{jarSheet.stepSource}</p>
        <p>
          <b>{poisonLine() === undefined ? jarSheet.swallowed : jarSheet.poisonLine(poisonLine() ?? '')}</b>
        </p>
      </section>
      <section class="ask" aria-labelledby="jar-act">
        <h2 id="jar-act">{jarSheet.actHeading}</h2>
        <Show
          when={!done()}
          fallback={
            <>
              <p role="status">{jarSheet.done}</p>
              <button type="button" class="block" onClick={() => setDone(false)}>
                {jarSheet.another}
              </button>
            </>
          }
        >
          <div class="choices">
            <For each={OFFERED_L}>
              {(litres) => {
                const text = () => formatAmount({ value: litres, dimension: 'volume' }, 'metric').text;
                return (
                  <button
                    type="button"
                    class="block"
                    onClick={() => change({ amount: { text: text(), settled: text() } })}
                  >
                    {text()}
                  </button>
                );
              }}
            </For>
          </div>
          <div class="two">
            <TypedField
              id="jar-amount"
              label={jarSheet.amount}
              hint={jarSheet.amountHint}
              dimension="volume"
              field={draft().amount}
              trouble={amount().trouble}
              countries={countries()}
              onField={(field) => change({ amount: field })}
              onCountries={(next) => change({ countries: next })}
            />
            <TypedField
              id="jar-heap"
              label={jarSheet.heap}
              hint={answer().heap}
              field={draft().heap}
              trouble={undefined}
              countries={countries()}
              onField={(field) => change({ heap: { ...field, text: field.text.slice(0, 40) } })}
              onCountries={(next) => change({ countries: next })}
            />
            <TypedField
              id="jar-note"
              label={jarSheet.smell}
              hint={jarSheet.smellHint}
              field={draft().note}
              trouble={undefined}
              countries={countries()}
              onField={(field) => change({ note: field })}
              onCountries={(next) => change({ countries: next })}
            />
          </div>
          <Show when={amount().value === undefined}>
            <p class="note">{jarSheet.stillNeeded}</p>
          </Show>
          <button
            type="button"
            class="block act"
            aria-disabled={amount().value === undefined || busy()}
            onClick={() => {
              write().catch(() => setRefused(true));
            }}
          >
            {jarSheet.act}
          </button>
          <Show when={refused()}>
            <p class="trouble" role="alert">
              {app.notSaved}
            </p>
          </Show>
        </Show>
        <A class="block" href="/shelf">
          {titles.shelf}
        </A>
      </section>
    </Sheet>
  );
}
