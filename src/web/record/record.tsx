// The record sheet: questions first, then every act in plain sentences, newest first, to be searched, opened, corrected
// or taken back; then the files that carry it elsewhere.

import { A } from '@solidjs/router';
import { createEffect, createMemo, createSignal, For, onCleanup, Show } from 'solid-js';
import { bedStrips } from '#tasks/plot/facts.ts';
import { needsPrepared, pegsToSearch, type RecordSearch, recordIndex } from '#tasks/plot/record-search.ts';
import { titles } from '#words/en/app.ts';
import { demo } from '#words/en/demo.ts';
import { record as words } from '#words/en/record.ts';
import { useRecord } from '../app/context.tsx';
import { Sheet } from '../app/sheet.tsx';
import { DemoBlock } from '../parts/demo-block.tsx';
import { MovedFigures } from '../parts/moved-figures.tsx';
import '../styles/record.css';
import '../styles/small-form.css';
import { ActView } from './act-view.tsx';
import { Files } from './files.tsx';
import { Questions } from './questions.tsx';
import { Search } from './search.tsx';

const PAGE = 40;
/** Acts prepared at a time, and for how long before the page may answer a touch. */
const AT_ONCE = 100;
const SLICE_MS = 10;

export function RecordScreen() {
  const record = useRecord();
  const [search, setSearch] = createSignal<RecordSearch>({});
  const [most, setMost] = createSignal(PAGE);
  const index = createMemo(() =>
    recordIndex({ plot: record.plot(), entries: record.entries(), plotId: record.plotId() }),
  );
  const [ready, setReady] = createSignal(0);
  createEffect(() => {
    const now = index();
    let timer = setTimeout(slice);
    onCleanup(() => clearTimeout(timer));
    function slice() {
      const until = performance.now() + SLICE_MS;
      while (!now.isReady() && performance.now() < until) now.prepare(AT_ONCE);
      setReady((count) => count + 1);
      if (!now.isReady()) timer = setTimeout(slice);
    }
  });
  const found = createMemo(() => {
    if (needsPrepared(search())) ready();
    return index().search(search(), most());
  });
  const isWhole = () => !needsPrepared(search()) || (ready() >= 0 && index().isReady());
  /** Acts by id, so that a line that stays is not drawn anew and keeps its form open. */
  const ids = () => found().acts.map(({ id }) => id);
  const byId = createMemo(() => new Map(found().acts.map((act) => [act.id, act])));
  return (
    <Sheet title={titles.record} number={3}>
      <Show
        when={index().total > 0}
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
        <MovedFigures id="record-moved" />
        <Search
          search={search()}
          pegs={pegsToSearch(record.plot())}
          beds={bedStrips(record.plot()).map(({ id, facts }) => [id, words.bed(facts.name ?? '', facts.tag)] as const)}
          onSearch={(change) => {
            setMost(PAGE);
            setSearch((now) => ({ ...now, ...change }));
          }}
        />
        <p role="status" class="note">
          {isWhole() ? words.found(found().count, index().total) : words.searching}
        </p>
        <ol class="acts">
          <For each={ids()} fallback={<li>{isWhole() ? words.nothingFound : words.searching}</li>}>
            {(id) => <Show when={byId().get(id)}>{(act) => <ActView act={act()} />}</Show>}
          </For>
        </ol>
        <Show when={found().count > most()}>
          <button type="button" class="block" onClick={() => setMost(most() + PAGE)}>
            {words.more(Math.min(PAGE, found().count - most()))}
          </button>
        </Show>
        <Show when={index().sealed.length > 0}>
          <section aria-labelledby="record-sealed">
            <h2 id="record-sealed">{words.sealedHeading}</h2>
            <ul class="plain">
              <For each={index().sealed}>{({ kind }) => <li>{words.sealed(kind)}</li>}</For>
            </ul>
          </section>
        </Show>
        <Show when={index().waitingCount > 0}>
          <p>{words.waiting(index().waitingCount)}</p>
        </Show>
      </Show>
      <Show when={record.isDemo} fallback={<Files />}>
        <p class="note">{demo.noFiles}</p>
      </Show>
      <DemoBlock />
    </Sheet>
  );
}
