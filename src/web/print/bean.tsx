// The card of a bean test, A5: the protocol in order, the days, and a table to fill in with pencil.

import { useParams } from '@solidjs/router';
import { createMemo, For, Show } from 'solid-js';
import { stockView } from '#tasks/plot/scraps.ts';
import { beanTestCard } from '#tasks/plot/slips.ts';
import { app, sayDate } from '#words/en/app.ts';
import { beanCard, beans } from '#words/en/scraps-stock.ts';
import { useRecord } from '../app/context.tsx';
import { useDraft } from '../app/draft.ts';
import { MadeWith } from '../parts/made-with.tsx';
import { PrintFrame } from './frame.tsx';
import '../styles/scraps.css';

export function BeanPrint() {
  const record = useRecord();
  const params = useParams<{ lot: string }>();
  const sowing = useDraft(`bean-card-${params.lot}`, { sownOn: '' });
  const lot = createMemo(() => {
    const found = stockView({ plot: record.plot(), today: record.today() }).lots.find(({ id }) => id === params.lot);
    return found?.beanTest ? found : undefined;
  });
  const sownOn = () => sowing.draft().sownOn || record.today();
  const card = createMemo(() => beanTestCard(sownOn()));
  const nothing = () =>
    lot() === undefined ? { sentence: beanCard.nothing, act: beanCard.toScraps, to: '/scraps' } : undefined;
  return (
    <PrintFrame title={beanCard.title} note={beanCard.note} nothing={nothing()}>
      <div class="field screen-only bean-sown">
        <label for="bean-sown">{beans.sownOn}</label>
        <input
          id="bean-sown"
          class="entry plain"
          type="date"
          value={sownOn()}
          onInput={(event) => sowing.change({ sownOn: event.currentTarget.value })}
        />
      </div>
      <Show when={lot()}>
        {(seen) => (
          <article class="bean-card">
            <header>
              <h2>{beanCard.title}</h2>
              <p>{beanCard.of(seen().name, seen().weighedTyped, sayDate(seen().on))}</p>
            </header>
            <ol>
              <For each={card().lines}>{(line) => <li>{line}</li>}</For>
            </ol>
            <For each={card().notes}>{(line) => <p class="bean-note">{line}</p>}</For>
            <table aria-label={beanCard.sign}>
              <thead>
                <tr>
                  <th scope="col">{beanCard.pot}</th>
                  <For each={['sownCount', 'germinatedCount', 'deformedCount'] as const}>
                    {(count) => <th scope="col">{beans.counts[count]}</th>}
                  </For>
                </tr>
              </thead>
              <tbody>
                <For each={card().pots}>
                  {(pot) => (
                    <tr>
                      <th scope="row">{pot}</th>
                      <td />
                      <td />
                      <td />
                    </tr>
                  )}
                </For>
              </tbody>
            </table>
            <p class="bean-read">
              <span>{beanCard.readOn}</span>
              <span>{beanCard.leavesOnC}</span>
            </p>
            <p class="bean-note">{card().source}</p>
            <MadeWith />
            <footer class="title-block">
              <span>A5</span>
              <span>{record.isDemo ? app.demo : (record.plot().facts.name ?? app.own)}</span>
            </footer>
          </article>
        )}
      </Show>
    </PrintFrame>
  );
}
