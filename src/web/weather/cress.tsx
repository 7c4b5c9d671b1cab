// The cress test of one feed: counts and root lengths typed in, and each test with its sum and its verdict.

import { A, useParams } from '@solidjs/router';
import { createSignal, For, Show } from 'solid-js';
import type { Values } from '#engine/rules/rule.ts';
import { citation } from '#engine/tables/index.ts';
import type { ActOf } from '#journal/act.ts';
import {
  compostRows,
  cressRows,
  cressTestsOf,
  cressView,
  feedOf,
  heapCressTests,
  readCress,
  readHeapCress,
  usualSown,
} from '#tasks/plot/cress.ts';
import { heapsOf } from '#tasks/plot/heap.ts';
import { sayDate } from '#words/en/app.ts';
import { cressForm as words } from '#words/en/cress.ts';
import { compostTestSays, germinationCautions, germinationSum, strengthAdviceSays } from '#words/en/spray.ts';
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
            <Form
              about={params.feed}
              rows={cressRows}
              write={(typed) => {
                const { peg: _, ...of } = found();
                const read = readCress(typed, of);
                return read.ok ? { ok: true, kept: record.act('feed.tested', read.body) } : read;
              }}
            />
            <Results tests={cressTestsOf(record.plot(), params.feed)} says={germinationCautions} withAdvice />
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

/** The same test of a heap's compost. */
export function HeapCressScreen() {
  const record = useRecord();
  const params = useParams<{ heap: string }>();
  const heap = () => decodeURIComponent(params.heap);
  const isHere = () => heapsOf(record.plot()).includes(heap());
  return (
    <Sheet title={words.compostTitle} aside={sayDate(record.today())} here="bed" number={SHEET}>
      <Show when={isHere()} fallback={<p class="lead-in">{words.compostNone}</p>}>
        <p>{words.compostLead(heap())}</p>
        <Form
          about={`heap.${heap()}`}
          rows={compostRows}
          write={(typed) => {
            const read = readHeapCress(typed, heap());
            return read.ok ? { ok: true, kept: record.act('heap.tested', read.body) } : read;
          }}
        />
        <Results tests={heapCressTests(record.plot(), heap())} says={compostTestSays} />
      </Show>
      <div class="choices">
        <A class="block" href="/print/cress">
          {words.toCard}
        </A>
        <A class="block" href="/heap">
          {words.toHeap}
        </A>
      </div>
    </Sheet>
  );
}

type Written =
  | { readonly ok: true; readonly kept: Promise<unknown> }
  | { readonly ok: false; readonly troubles: ReadonlyMap<string, string> };

function Form(props: {
  readonly about: string;
  readonly rows: readonly string[];
  readonly write: (typed: Readonly<Record<string, string>>) => Written;
}) {
  const record = useRecord();
  const { draft, change, clear } = useDraft<Record<string, string>>(`${record.plotId()}.cress.${props.about}`, {});
  const [troubles, setTroubles] = createSignal<ReadonlyMap<string, string>>(NONE);
  const [said, setSaid] = createSignal('');
  let form: HTMLFormElement | undefined;

  async function write(event: SubmitEvent) {
    event.preventDefault();
    const sent = draft();
    const written = props.write(sent);
    setTroubles(written.ok ? NONE : written.troubles);
    setSaid('');
    if (!written.ok) {
      queueMicrotask(() => form?.querySelector<HTMLElement>('[aria-invalid]')?.focus());
      return;
    }
    try {
      await written.kept;
    } catch {
      setSaid(words.notWritten);
      return;
    }
    clear(sent);
    setSaid(words.written);
  }

  return (
    <form class="small-form weather-form" ref={form} onSubmit={write} novalidate>
      <For each={props.rows}>
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

function Results(props: {
  readonly tests: readonly (ActOf<'feed.tested'> | ActOf<'heap.tested'>)[];
  readonly says: Readonly<Record<string, (values: Values) => string>>;
  readonly withAdvice?: boolean;
}) {
  const record = useRecord();
  const tests = () => props.tests;
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
                <Show when={props.withAdvice}>
                  <p>
                    <b>{strengthAdviceSays(view.advice)}</b>
                  </p>
                </Show>
                <For each={view.strengths}>
                  {({ n, sample, reading, findings }) => (
                    <>
                      <h4>{words.row(String(n))}</h4>
                      <p>{germinationSum(sample, view.control, reading)}</p>
                      <For each={findings}>
                        {({ rule, values, source }) => (
                          <>
                            <p>{props.says[rule]?.(values)}</p>
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
