// What is foretold of a peg beside its drawn line: what to expect, ways to save it, the gas, what finished batches
// taught. Where nothing can be foretold, which fact is missing.

import { createSignal, For, Show } from 'solid-js';
import type { PegForecast } from '#tasks/plot/peg-forecast.ts';
import { unbroken } from '#words/en/look.ts';
import { sayLearned } from '#words/en/sour.ts';
import { sayExpected, sayGasOf, sayTaught, sourSheet, taughtFrom } from '#words/en/sour-sheet.ts';
import { useRecord } from '../app/context.tsx';
import { sayFailure } from '../parts/failure.ts';
import type { PegForetold } from '../souring/peg.ts';

interface ForecastProps {
  readonly foretold: PegForetold;
  readonly date: (on: string) => string;
}

/** Why there is none, or what it rests on. */
export function ForecastNotes(props: ForecastProps) {
  const missing = () => {
    const asked = props.foretold.sour();
    return asked === undefined || asked.ok ? undefined : asked.why;
  };
  const rests = () => {
    const asked = props.foretold.sour();
    if (asked?.ok !== true) return [];
    return [
      ...(asked.warmthFrom === 'weather' ? [sourSheet.fromWeather] : []),
      ...(asked.vesselTold ? [] : [sourSheet.vesselUntold]),
      ...(asked.changedMix ? [sourSheet.changedMix] : []),
    ];
  };
  return (
    <>
      <Show when={missing()}>{(why) => <p class="note">{sourSheet.none[why()]}</p>}</Show>
      <Show when={props.foretold.failed()}>
        <p class="note">{sourSheet.failed}</p>
      </Show>
      <For each={rests()}>{(note) => <p class="note">{note}</p>}</For>
    </>
  );
}

/** The ways to save it, least effort first. */
export function Rescues(props: ForecastProps) {
  const rescues = () => props.foretold.forecast()?.rescues ?? [];
  return (
    <Show when={rescues().length > 0}>
      <section aria-labelledby="rescue">
        <h2 id="rescue">{sourSheet.rescueHeading}</h2>
        <p class="note">{sourSheet.rescueNote}</p>
        <ol class="numbered">
          <For each={rescues()}>{(one) => <li>{unbroken(one.text)}</li>}</For>
        </ol>
      </section>
    </Show>
  );
}

/** What to expect, and what was learned from its own looks. */
export function Expected(props: ForecastProps) {
  return (
    <Show when={props.foretold.foretold().comes}>
      <section aria-labelledby="expect">
        <h2 id="expect">{sourSheet.expectHeading}</h2>
        <Show when={props.foretold.forecast()} fallback={<p>{sourSheet.waits}</p>}>
          {(forecast) => (
            <>
              <ul class="plain">
                <For each={[...sayExpected(forecast()), ...sayLearned(forecast()), ...forecast().questions]}>
                  {(line) => <li>{unbroken(line)}</li>}
                </For>
              </ul>
              <p class="note">{sourSheet.spans}</p>
            </>
          )}
        </Show>
      </section>
    </Show>
  );
}

/** Gas of today and of the day of the most, the lid, the room. */
export function GasOf(props: ForecastProps) {
  const said = (forecast: PegForecast) =>
    sayGasOf({
      todayL: forecast.gasTodayL,
      most: forecast.gasMost && { ...forecast.gasMost, on: props.date(forecast.gasMost.on) },
      lid: forecast.lid,
      roomM3: forecast.roomM3,
      limitPpm: forecast.limitPpm,
    });
  return (
    <Show when={props.foretold.forecast()?.gasMost && props.foretold.forecast()}>
      {(forecast) => (
        <section aria-labelledby="gas">
          <h2 id="gas">{sourSheet.gasHeading}</h2>
          <ul class="plain">
            <For each={said(forecast())}>{(line) => <li>{line}</li>}</For>
          </ul>
        </section>
      )}
    </Show>
  );
}

/** What finished batches of the like taught, and the block that sets it back. */
export function LessonsOf(props: ForecastProps) {
  const record = useRecord();
  const [trouble, setTrouble] = createSignal<string>();
  const taught = () => {
    const lessons = props.foretold.lessons();
    const read = props.foretold.answer()?.taught;
    if (lessons?.group === undefined || lessons.from.length === 0 || read === undefined) return undefined;
    return { group: lessons.group, from: lessons.from, read };
  };
  return (
    <Show when={taught()}>
      {(known) => (
        <section aria-labelledby="lessons">
          <h2 id="lessons">{sourSheet.lessonsHeading}</h2>
          <p>{taughtFrom(known().from.map(({ peg }) => peg))}</p>
          <ul class="plain">
            <For each={known().read}>{(one) => <li>{sayTaught(one)}</li>}</For>
          </ul>
          <button
            type="button"
            class="block"
            onClick={() => {
              const { group } = known();
              record.act('lessons.reset', { group }).catch((failure: unknown) => setTrouble(sayFailure(failure)));
            }}
          >
            {sourSheet.setBack}
          </button>
          <Show when={trouble()}>
            <p class="trouble" role="alert">
              {trouble()}
            </p>
          </Show>
          <p class="note">{sourSheet.setBackNote}</p>
        </section>
      )}
    </Show>
  );
}
