// The sheet of a heap: the one next act, the heap from the side with its rows, its temperature, what the published rules
// on heat say, and the two forms. Everything shown comes from tasks/plot/heap.ts.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { type HeapView, heapsOf, heapView } from '#tasks/plot/heap.ts';
import { lookAsked, readHeapLook } from '#tasks/plot/heap-forms.ts';
import { titles } from '#words/en/app.ts';
import { sayLeft } from '#words/en/heap.ts';
import { heapSheet } from '#words/en/heap-sheet.ts';
import { band } from '#words/figures.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { CautionList } from '../parts/caution-list.tsx';
import { ChoiceRow } from '../parts/choice-row.tsx';
import { FoldForm } from '../parts/small-form.tsx';
import '../styles/drawing.css';
import '../styles/small-form.css';
import '../styles/weigh-in.css';
import '../styles/heap.css';
import { Feeding } from './feeding.tsx';
import { HeapHeat } from './heat.tsx';
import { HeapSide } from './side.tsx';

export function HeapScreen() {
  const record = useRecord();
  const heaps = createMemo(() => heapsOf(record.plot()));
  const [taken, setTaken] = createSignal<string>();
  const heap = () => taken() ?? heaps()[0] ?? heapSheet.usualHeap;
  const view = createMemo(() => heapView({ plot: record.plot(), heap: heap(), today: record.today() }));
  return (
    <Sheet title={titles.heap} aside={view() && heapSheet.ageSaid(view()?.ageDays ?? 0)} number={14}>
      <Show when={heaps().length > 1}>
        <ChoiceRow
          name="heap"
          legend={heapSheet.choose}
          words={heaps().map((one) => [one, one] as const)}
          taken={heap()}
          onTake={setTaken}
        />
      </Show>
      <Show when={view()} fallback={<p>{heapSheet.empty}</p>}>
        {(found) => <Shown view={found()} />}
      </Show>
      <FoldForm
        id="heap-look"
        summary={heapSheet.lookSummary}
        asked={lookAsked}
        start={{}}
        label={(field) => heapSheet.fields[field] ?? field}
        word={heapSheet.write}
        read={(typed) => {
          const read = readHeapLook(heap(), typed);
          return read.ok ? { ok: true, write: () => record.act('heap.looked', read.body) } : read;
        }}
      />
      <details class="fold" open={heaps().length === 0}>
        <summary>{heapSheet.feedSummary}</summary>
        <Feeding heap={heap()} />
      </details>
    </Sheet>
  );
}

function Shown(props: { readonly view: HeapView }) {
  return (
    <>
      <p class="heap-next">
        <b>{props.view.next.text}</b>
      </p>
      <div class="heap-sheet">
        <section aria-labelledby="heap-rows">
          <h2 id="heap-rows">{heapSheet.inIt}</h2>
          <HeapSide view={props.view} />
          <p>{heapSheet.mixSaid(props.view.cn, props.view.moisturePercent)}</p>
          <table>
            <thead>
              <tr>
                <For each={heapSheet.rowHeads}>{(head) => <th scope="col">{head}</th>}</For>
              </tr>
            </thead>
            <tbody>
              <For each={props.view.rows}>
                {({ name, typed, massKg, volumeL }) => (
                  <tr>
                    <th scope="row">{name}</th>
                    <td>{heapSheet.asTold(typed)}</td>
                    <td>{massKg && band(massKg, '')}</td>
                    <td>{volumeL && band(volumeL, '', 0)}</td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <Show when={props.view.left}>{(left) => <p>{sayLeft(left())}</p>}</Show>
          <Show when={props.view.notCounted.length > 0}>
            <p>{heapSheet.notCounted(props.view.notCounted)}</p>
          </Show>
        </section>
        <section aria-labelledby="heap-heat">
          <h2 id="heap-heat">{heapSheet.heatHeading}</h2>
          <HeapHeat view={props.view} />
        </section>
      </div>
      <A class="block" href={`/heap/${encodeURIComponent(props.view.heap)}/cress`}>
        {heapSheet.toCress}
      </A>
      <CautionList cautions={props.view.cautions} />
      <Show when={props.view.verdicts.length > 0}>
        <details class="fold">
          <summary>{heapSheet.rulesHeading}</summary>
          <ul class="plain heap-rules">
            <For each={props.view.verdicts}>{({ text }) => <li>{text}</li>}</For>
          </ul>
        </details>
      </Show>
    </>
  );
}
