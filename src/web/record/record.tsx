// The record sheet: questions first, then every act in plain sentences, newest first, to be searched, opened, corrected
// or taken back; then the files that carry it elsewhere.

import { A } from '@solidjs/router';
import { createMemo, createSignal, For, Show } from 'solid-js';
import { bedStrips } from '#tasks/plot/facts.ts';
import { type RecordSearch, searchRecord } from '#tasks/plot/record.ts';
import { titles } from '#words/en/app.ts';
import { demo } from '#words/en/demo.ts';
import { record as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { DemoBlock } from '../parts/demo-block.tsx';
import '../styles/record.css';
import '../styles/small-form.css';
import { ActView } from './act-view.tsx';
import { Files } from './files.tsx';
import { Questions } from './questions.tsx';
import { Search } from './search.tsx';

const PAGE = 40;

export function RecordScreen() {
  const record = useRecord();
  const [search, setSearch] = createSignal<RecordSearch>({});
  const [most, setMost] = createSignal(PAGE);
  const found = createMemo(() =>
    searchRecord({ plot: record.plot(), entries: record.entries(), plotId: record.plotId() }, search()),
  );
  /** Acts by id, so that a line that stays is not drawn anew and keeps its form open. */
  const ids = () =>
    found()
      .acts.slice(0, most())
      .map(({ id }) => id);
  const byId = createMemo(() => new Map(found().acts.map((act) => [act.id, act])));
  return (
    <Sheet title={titles.record} number={3}>
      <Show
        when={found().total > 0}
        fallback={
          <>
            <p>{words.empty}</p>
            <A class="block act" href="/plot">
              {words.toPlot}
            </A>
          </>
        }
      >
        <Questions />
        <Search
          search={search()}
          pegs={[...new Set([...record.plot().batches.values()].map(({ peg }) => peg))].sort((a, b) => a - b)}
          beds={bedStrips(record.plot()).map(({ id, facts }) => [id, words.bed(facts.name ?? '', facts.tag)] as const)}
          onSearch={(change) => {
            setMost(PAGE);
            setSearch((now) => ({ ...now, ...change }));
          }}
        />
        <p role="status" class="note">
          {words.found(found().acts.length, found().total)}
        </p>
        <ol class="acts">
          <For each={ids()} fallback={<li>{words.nothingFound}</li>}>
            {(id) => <Show when={byId().get(id)}>{(act) => <ActView act={act()} />}</Show>}
          </For>
        </ol>
        <Show when={found().acts.length > most()}>
          <button type="button" class="block" onClick={() => setMost(most() + PAGE)}>
            {words.more(Math.min(PAGE, found().acts.length - most()))}
          </button>
        </Show>
        <Show when={found().sealed.length > 0}>
          <section aria-labelledby="record-sealed">
            <h2 id="record-sealed">{words.sealedHeading}</h2>
            <ul class="plain">
              <For each={found().sealed}>{({ kind }) => <li>{words.sealed(kind)}</li>}</For>
            </ul>
          </section>
        </Show>
        <Show when={found().waitingCount > 0}>
          <p>{words.waiting(found().waitingCount)}</p>
        </Show>
      </Show>
      <Show when={record.isDemo} fallback={<Files />}>
        <p class="note">{demo.noFiles}</p>
      </Show>
      <DemoBlock />
    </Sheet>
  );
}
