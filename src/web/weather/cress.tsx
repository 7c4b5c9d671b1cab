// The cress test of one feed: counts and root lengths typed in, and each test with its sum and its verdict.

import { A, useParams } from '@solidjs/router';
import { createSignal, For, Show } from 'solid-js';
import { citation } from '#engine/tables/index.ts';
import { cressRows, cressTestsOf, cressView, feedOf, readCress, usualSown } from '#tasks/plot/cress.ts';
import { sayDate } from '#words/en/app.ts';
import { cressForm as words } from '#words/en/cress.ts';
import { germinationCautions, germinationSum, strengthAdviceSays } from '#words/en/spray.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { Sheet } from '../app/sheet.tsx';
import '../styles/small-form.css';
import '../styles/weather.css';

const SHEET = 13;
const NONE: ReadonlyMap<string, string> = new Map();
const FIELDS = ['sown', 'germinated', 'roots'] as const;

export function CressScreen() {
  const record = useRecord();
  const params = useParams<{ feed: string }>();
  const feed = () => feedOf(record.plot(), params.feed);
  return (
    <Sheet title={words.title} aside={sayDate(record.today())} here="bottle" number={SHEET}>
      <Show when={feed()} fallback={<p class="lead-in">{words.noFeed}</p>}>
        {(found) => (
          <>
            <p>{words.lead(found().peg)}</p>
            <Form feed={params.feed} />
            <Results feed={params.feed} />
          </>
        )}
      </Show>
      <div class="choices">
        <A class="block" href="/print/cress">
          {words.toCard}
        </A>
        <A class="block" href="/shelf">
          {words.toShelf}
        </A>
      </div>
    </Sheet>
  );
}

function Form(props: { readonly feed: string }) {
  const record = useRecord();
  const { draft, change, clear } = useDraft<Record<string, string>>(`${record.plotId()}.cress.${props.feed}`, {});
  const [troubles, setTroubles] = createSignal<ReadonlyMap<string, string>>(NONE);
  const [said, setSaid] = createSignal('');
  let form: HTMLFormElement | undefined;

  async function write(event: SubmitEvent) {
    event.preventDefault();
    const found = feedOf(record.plot(), props.feed);
    if (found === undefined) return;
    const { peg: _, ...of } = found;
    const read = readCress(draft(), of);
    setTroubles(read.ok ? NONE : read.troubles);
    setSaid('');
    if (!read.ok) {
      queueMicrotask(() => form?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    try {
      await record.act('feed.tested', read.body);
      clear();
      setSaid(words.written);
    } catch {
      setSaid(words.notWritten);
    }
  }

  return (
    <form class="small-form weather-form" ref={form} onSubmit={write} novalidate>
      <For each={cressRows}>
        {(row) => (
          <fieldset>
            <legend>{words.row(row)}</legend>
            <For each={FIELDS}>
              {(field) => {
                const name = `${row}.${field}`;
                return (
                  <div class="field">
                    <label for={`cress-${name}`}>{words[field]}</label>
                    <input
                      class="entry plain"
                      id={`cress-${name}`}
                      type="text"
                      inputmode={field === 'roots' ? 'text' : 'numeric'}
                      autocomplete="off"
                      placeholder={field === 'sown' ? String(usualSown) : field === 'roots' ? words.rootsHint : ''}
                      value={draft()[name] ?? ''}
                      aria-invalid={troubles().has(name) || undefined}
                      onInput={(event) => change({ [name]: event.currentTarget.value })}
                    />
                    <Show when={troubles().get(name)}>{(text) => <p class="trouble">{text()}</p>}</Show>
                  </div>
                );
              }}
            </For>
          </fieldset>
        )}
      </For>
      <button type="submit" class="block act">
        {words.write}
      </button>
      <p class="said" role="status">
        {said()}
      </p>
    </form>
  );
}

function Results(props: { readonly feed: string }) {
  const record = useRecord();
  const tests = () => cressTestsOf(record.plot(), props.feed);
  return (
    <Show when={tests().length > 0}>
      <section aria-labelledby="cress-results">
        <h2 id="cress-results">{words.results}</h2>
        <For each={tests()}>
          {(test) => {
            const view = cressView(test.body);
            return (
              <article class="cress-result">
                <h3>{sayDate(test.when.on, record.today())}</h3>
                <p>
                  <b>{strengthAdviceSays(view.advice)}</b>
                </p>
                <For each={view.strengths}>
                  {({ n, sample, reading, findings }) => (
                    <>
                      <h4>{words.row(String(n))}</h4>
                      <p>{germinationSum(sample, view.control, reading)}</p>
                      <For each={findings}>
                        {({ rule, values, source }) => (
                          <>
                            <p>{germinationCautions[rule]?.(values)}</p>
                            <p class="source">{citation(source)}</p>
                          </>
                        )}
                      </For>
                    </>
                  )}
                </For>
              </article>
            );
          }}
        </For>
      </section>
    </Show>
  );
}
