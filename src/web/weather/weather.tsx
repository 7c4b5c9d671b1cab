// The weather sheet: a few figures for today and tomorrow, or a forecast file, shown before it is kept.

import { A } from '@solidjs/router';
import { createSignal, For, Show } from 'solid-js';
import { keyholderOf } from '#tasks/plot/pour.ts';
import type { FileRead } from '#tasks/plot/weather.ts';
import { dayFields, readWeather } from '#tasks/plot/weather.ts';
import { sayDate } from '#words/en/app.ts';
import { weatherForm as words } from '#words/en/weather.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import '../styles/small-form.css';
import '../styles/weather.css';

const SHEET = 12;
const NONE: ReadonlyMap<string, string> = new Map();

export function WeatherScreen() {
  const record = useRecord();
  const { draft, change, clear } = useDraft<Record<string, string>>(`${record.plotId()}.weather`, {});
  const [troubles, setTroubles] = createSignal<ReadonlyMap<string, string>>(NONE);
  const [said, setSaid] = createSignal('');
  let form: HTMLFormElement | undefined;

  async function write(event: SubmitEvent) {
    event.preventDefault();
    setSaid('');
    const units = keyholderOf(record.plot(), record.keyholder()).units;
    const sent = draft();
    const read = readWeather(sent, { now: record.now(), units });
    setTroubles(read.ok ? NONE : read.troubles);
    if (!read.ok) {
      queueMicrotask(() => form?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    try {
      await record.act('weather.typed', read.body, () => {
        clear(sent);
        setSaid(words.written);
      });
    } catch {
      setSaid(words.notWritten);
    }
  }

  const field = (name: string, label: string, hint: string) => (
    <div class="field">
      <label for={`weather-${name}`}>{label}</label>
      <input
        class="entry plain"
        id={`weather-${name}`}
        type="text"
        autocomplete="off"
        placeholder={hint}
        value={draft()[name] ?? ''}
        aria-invalid={troubles().has(name) || undefined}
        aria-describedby={troubles().has(name) ? `weather-${name}-trouble` : undefined}
        onInput={(event) => change({ [name]: event.currentTarget.value })}
      />
      <Show when={troubles().get(name)}>
        {(text) => (
          <p class="trouble" id={`weather-${name}-trouble`}>
            {text()}
          </p>
        )}
      </Show>
    </div>
  );

  return (
    <Sheet title={words.title} aside={sayDate(record.today())} here="can" number={SHEET}>
      <p>{words.lead}</p>
      <form class="small-form weather-form" ref={form} onSubmit={write} novalidate>
        <For each={[words.today, words.tomorrow]}>
          {(heading, i) => (
            <fieldset>
              <legend>{heading}</legend>
              <For each={dayFields}>{(name) => field(`${i()}.${name}`, words.fields[name], words.hints[name])}</For>
            </fieldset>
          )}
        </For>
        {field('issuedAt', words.issuedAt, words.issuedHint)}
        <button type="submit" class="block act">
          {words.write}
        </button>
        <p class="said" role="status">
          {said()}
        </p>
      </form>
      <FromFile />
      <p class="note">{words.place}</p>
      <div class="choices">
        <A class="block" href="/plot">
          {words.toPlot}
        </A>
        <A class="block" href="/can">
          {words.toCan}
        </A>
      </div>
    </Sheet>
  );
}

function FromFile() {
  const record = useRecord();
  const [read, setRead] = createSignal<FileRead>();
  const [said, setSaid] = createSignal('');
  const good = () => {
    const now = read();
    return now?.ok ? now : undefined;
  };
  const bad = () => {
    const now = read();
    return now === undefined || now.ok ? undefined : now.problems;
  };
  const days = () => good()?.body.days ?? [];

  async function choose(input: HTMLInputElement) {
    const file = input.files?.[0];
    if (file === undefined) return;
    setSaid('');
    const { readForecastFile } = await import('#tasks/plot/forecast-file.ts');
    setRead(readForecastFile(await file.text()));
    input.value = '';
  }

  function keep() {
    const now = good();
    if (now === undefined) return;
    record
      .act('weather.typed', now.body, () => {
        setRead(undefined);
        setSaid(words.written);
      })
      .catch(() => setSaid(words.notWritten));
  }

  return (
    <section aria-labelledby="weather-file">
      <h2 id="weather-file">{words.file}</h2>
      <p>{words.fileLead}</p>
      <label class="block" for="forecast-file">
        {words.choose}
      </label>
      <input
        id="forecast-file"
        class="file-input"
        type="file"
        accept=".csv,text/csv,text/plain"
        onChange={(event) => choose(event.currentTarget)}
      />
      <Show when={bad()}>
        {(problems) => (
          <ul class="trouble" role="alert">
            <For each={problems()}>{(one) => <li>{one}</li>}</For>
          </ul>
        )}
      </Show>
      <Show when={good()}>
        {(now) => (
          <>
            <p>
              <b>{words.preview(days().length, now().hours, days()[0]?.on ?? '', days().at(-1)?.on ?? '')}</b>
            </p>
            <Show when={now().ignored.length > 0}>
              <p class="note">{words.ignored(now().ignored.join(', '))}</p>
            </Show>
            <div class="table-place">
              <table>
                <thead>
                  <tr>
                    <For each={words.hourHeads}>{(head) => <th scope="col">{head}</th>}</For>
                  </tr>
                </thead>
                <tbody>
                  <For each={days()}>
                    {(day) => (
                      <>
                        <tr>
                          <th scope="rowgroup" colspan={words.hourHeads.length}>
                            {sayDate(day.on)}
                          </th>
                        </tr>
                        <For each={day.hours}>
                          {(hour) => (
                            <tr>
                              <For each={words.hourRow(hour)}>{(text) => <td>{text}</td>}</For>
                            </tr>
                          )}
                        </For>
                      </>
                    )}
                  </For>
                </tbody>
              </table>
            </div>
            <button type="button" class="block act" onClick={keep}>
              {words.keep}
            </button>
          </>
        )}
      </Show>
      <p class="said" role="status">
        {said()}
      </p>
    </section>
  );
}
