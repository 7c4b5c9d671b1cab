// The can card for the shed wall, A6: one jug with the mark for each of the plot's cans, and the same as a table.

import { createMemo, For, Show } from 'solid-js';
import { canWallCard } from '#tasks/plot/prints.ts';
import { app } from '#words/en/app.ts';
import { canCard, print, ratioSaid } from '#words/en/print.ts';
import { useRecord } from '../app/context.tsx';
import { TagJug } from '../drawings/tag-jug.tsx';
import { MadeWith } from '../parts/made-with.tsx';
import { PrintFrame } from './frame.tsx';

export function CanPrint() {
  const record = useRecord();
  const card = createMemo(() => canWallCard({ plot: record.plot(), now: record.now(), tag: record.keyholder() }));
  const nothing = () =>
    card().cans.length === 0 ? { sentence: print.noCans, act: print.noCansAct, to: '/plot' } : undefined;
  return (
    <PrintFrame title={canCard.title} note={print.canNote} nothing={nothing()}>
      <article class="wall-card">
        <header>
          <h2>{canCard.title}</h2>
          <Show when={card().liquid}>{(liquid) => <p>{canCard.from(liquid().peg, liquid().held)}</p>}</Show>
          <Show when={card().ratio}>{(ratio) => <p class="wall-ratio">{ratioSaid(ratio())}</p>}</Show>
        </header>
        <TagJug
          jugMl={card().jugMl}
          doses={card().cans.map(({ name, fills }) => ({ volumeMl: fills.restMl, text: canCard.mark(name, fills) }))}
          label={canCard.jug(card().jugMl)}
        />
        <p class="jug-scale">{canCard.jugScale}</p>
        <table>
          <thead>
            <tr>
              <th scope="col">{canCard.can}</th>
              <th scope="col">{canCard.concentrate}</th>
              <th scope="col">{canCard.thenFill}</th>
            </tr>
          </thead>
          <tbody>
            <For each={card().cans}>
              {({ name, typed, volumeL, concentrateMl }) => (
                <tr>
                  <th scope="row">{name}</th>
                  <td>
                    <b>{canCard.dose(concentrateMl)}</b>
                  </td>
                  <td>{canCard.litres(volumeL, typed)}</td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
        <p>{canCard.soil}</p>
        <Show when={canCard.raw(card().rawBeds)}>{(sentence) => <p>{sentence()}</p>}</Show>
        <MadeWith />
        <footer class="title-block">
          <span>A6</span>
          <span>{record.isDemo ? app.demo : (record.plot().facts.name ?? app.own)}</span>
          <span>{print.notADrink}</span>
        </footer>
      </article>
    </PrintFrame>
  );
}
