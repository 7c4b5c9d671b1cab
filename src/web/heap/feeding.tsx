// Putting something on a heap: one row per ingredient, by barrows, buckets or weight. The draft outlives a reload; the
// rows are read by tasks, every trouble at its row.

import { createMemo, createSignal, For, Show } from 'solid-js';
import { materials } from '#engine/tables/index.ts';
import { litresHeld } from '#tasks/plot/bulk-amount.ts';
import { countriesOf } from '#tasks/plot/facts.ts';
import type { Troubles } from '#tasks/plot/form.ts';
import { readFeeding } from '#tasks/plot/heap-forms.ts';
import { type HeapOffer, heapOffers, namedBy } from '#tasks/plot/heap-offers.ts';
import { heapSheet } from '#words/en/heap-sheet.ts';
import { form } from '#words/en/plot.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { sayFailure } from '../parts/failure.ts';

interface RowDraft {
  /** An id of the list, or `lot:…`, or `batch:…`. */
  readonly material: string;
  readonly name: string;
  readonly amount: string;
}
const ROW: RowDraft = { material: '', name: '', amount: '' };
const EMPTY = { heap: '', barrow: '', bucket: '', water: '', rows: [ROW] as readonly RowDraft[] };
const NONE: Troubles = new Map();

export function Feeding(props: { readonly heap: string }) {
  const record = useRecord();
  const { draft, change, clear } = useDraft(`${record.plotId()}.heap-feeding`, EMPTY);
  const [tried, setTried] = createSignal(false);
  const [busy, setBusy] = createSignal(false);
  const [said, setSaid] = createSignal('');
  const offers = createMemo(() => heapOffers({ plot: record.plot(), today: record.today() }));
  const read = () => {
    const { heap, barrow, bucket, water, rows } = draft();
    const countries = countriesOf(record.plot(), record.keyholder());
    return readFeeding({
      heap: heap.trim() || props.heap,
      rows: rows.map(({ material, name, amount }) => ({
        ...namedBy(material),
        name: material === '' ? name.trim() || undefined : undefined,
        amount,
      })),
      offers: offers(),
      water,
      litresOf: { barrow: litresHeld(barrow, countries), bucket: litresHeld(bucket, countries) },
      countries,
    });
  };
  const troubles = () => {
    const answer = tried() ? read() : undefined;
    return answer === undefined || answer.ok ? NONE : answer.troubles;
  };
  const put = (at: number, part: Partial<RowDraft>) =>
    change({ rows: draft().rows.map((row, i) => (i === at ? { ...row, ...part } : row)) });

  async function write(event: SubmitEvent) {
    event.preventDefault();
    if (busy()) return;
    setTried(true);
    const sent = draft();
    const answer = read();
    if (!answer.ok) return;
    setBusy(true);
    try {
      await record.act('heap.fed', answer.body, () => {
        clear(sent);
        setTried(false);
        setSaid(form.written);
      });
    } catch (failure) {
      setSaid(sayFailure(failure));
    } finally {
      setBusy(false);
    }
  }

  return (
    <form class="small-form" onSubmit={write} novalidate>
      <Field id="heap" value={draft().heap || props.heap} troubles={troubles()} onType={(heap) => change({ heap })} />
      <For each={draft().rows.map((_, i) => i)}>
        {(i) => (
          <fieldset class="heap-row">
            <legend class="unseen">{heapSheet.fields.what}</legend>
            <div class="field">
              <label for={`heap-what-${i}`}>{heapSheet.fields.what}</label>
              <select
                id={`heap-what-${i}`}
                aria-invalid={troubles().has(`ingredients.${i}.material`) || undefined}
                aria-describedby={`heap-what-${i}-trouble`}
                onChange={(event) => put(i, { material: event.currentTarget.value })}
              >
                <option value="">{heapSheet.notListed}</option>
                <Offers label={heapSheet.lotsHere} offers={offers().lots} taken={draft().rows[i]?.material} />
                <Offers label={heapSheet.solidsHere} offers={offers().solids} taken={draft().rows[i]?.material} />
                <optgroup label={heapSheet.listed}>
                  <For each={materials.filter(({ into }) => into !== 'out')}>
                    {({ id, name }) => (
                      <option value={id} selected={draft().rows[i]?.material === id}>
                        {name}
                      </option>
                    )}
                  </For>
                </optgroup>
              </select>
              <div class="trouble" id={`heap-what-${i}-trouble`}>
                <Show when={(draft().rows[i]?.material ?? '') !== '' && troubles().get(`ingredients.${i}.material`)}>
                  {(trouble) => <p>{trouble().sentence}</p>}
                </Show>
              </div>
            </div>
            <Show when={(draft().rows[i]?.material ?? '') === ''}>
              <Field
                id="name"
                row={i}
                field={`ingredients.${i}.material`}
                value={draft().rows[i]?.name ?? ''}
                troubles={troubles()}
                onType={(name) => put(i, { name })}
              />
            </Show>
            <Field
              id="amount"
              row={i}
              field={`ingredients.${i}.amount`}
              value={draft().rows[i]?.amount ?? ''}
              troubles={troubles()}
              onType={(amount) => put(i, { amount })}
            />
          </fieldset>
        )}
      </For>
      <button type="button" class="block" onClick={() => change({ rows: [...draft().rows, ROW] })}>
        {heapSheet.addRow}
      </button>
      <Field id="barrow" value={draft().barrow} troubles={NONE} onType={(barrow) => change({ barrow })} />
      <Field id="bucket" value={draft().bucket} troubles={NONE} onType={(bucket) => change({ bucket })} />
      <Field id="water" value={draft().water} troubles={troubles()} onType={(water) => change({ water })} />
      <Show when={troubles().get('ingredients')}>
        {(trouble) => (
          <div class="trouble">
            <p>{trouble().sentence}</p>
          </div>
        )}
      </Show>
      <button type="submit" class="block" aria-disabled={busy() || undefined}>
        {heapSheet.write}
      </button>
      <p class="said" role="status">
        {said()}
      </p>
    </form>
  );
}

function Offers(props: {
  readonly label: string;
  readonly offers: readonly HeapOffer[];
  readonly taken: string | undefined;
}) {
  return (
    <Show when={props.offers.length > 0}>
      <optgroup label={props.label}>
        <For each={props.offers}>
          {({ choice, name, leftKg }) => (
            <option value={choice} selected={props.taken === choice}>
              {heapSheet.offer(name, leftKg)}
            </option>
          )}
        </For>
      </optgroup>
    </Show>
  );
}

function Field(props: {
  readonly id: string;
  readonly row?: number;
  readonly field?: string;
  readonly value: string;
  readonly troubles: Troubles;
  readonly onType: (text: string) => void;
}) {
  const id = () => `heap-${props.id}${props.row === undefined ? '' : `-${props.row}`}`;
  const trouble = () => props.troubles.get(props.field ?? props.id);
  return (
    <div class="field">
      <label for={id()}>{heapSheet.fields[props.id]}</label>
      <input
        id={id()}
        class="entry plain"
        type="text"
        autocomplete="off"
        value={props.value}
        aria-invalid={trouble() ? true : undefined}
        aria-describedby={trouble() ? `${id()}-trouble` : undefined}
        onInput={(event) => props.onType(event.currentTarget.value)}
      />
      <Show when={trouble()}>
        {(found) => (
          <div class="trouble">
            <p id={`${id()}-trouble`}>{found().sentence}</p>
          </div>
        )}
      </Show>
    </div>
  );
}
