// The best use of each lot that lies here: a line a way, as long as the share of the lot's nitrogen that reaches a bed this
// season, the high end as a tick; the reasons below.

import { createMemo, For, Show } from 'solid-js';
import type { Plot } from '#journal/fold.ts';
import { scrapWays } from '#tasks/plot/scrap-ways.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { measured } from '../parts/measured.ts';

const ROW_PX = 26;
const LABEL_PX = 92;
const FIGURE_PX = 8;

export function BestUses(props: { readonly plot: Plot }) {
  const lots = createMemo(() => scrapWays(props.plot));
  return (
    <section class="cover-part">
      <h2>{words.waysHeading}</h2>
      <Show when={lots().length > 0} fallback={<p>{words.noWays}</p>}>
        <p class="note">{words.waysLead}</p>
        <For each={lots()}>
          {(lot) => (
            <section class="cover-lot">
              <h3>
                {lot.name}, {words.amount(lot.massKg)}
              </h3>
              <Lines lot={lot} />
              <p>{lot.advice}</p>
              <details class="fold">
                <summary>{words.waysWhy}</summary>
                <ul class="cover-says">
                  <For each={lot.says}>{(sentence) => <li>{sentence}</li>}</For>
                </ul>
              </details>
            </section>
          )}
        </For>
      </Show>
    </section>
  );
}

function Lines(props: { readonly lot: ReturnType<typeof scrapWays>[number] }) {
  const [width, watch] = measured(340);
  const px = (share: number) => share * Math.max(0, width() - LABEL_PX - FIGURE_PX);
  return (
    <div ref={watch}>
      <svg
        class="drawing"
        width={width()}
        height={ROW_PX * props.lot.ways.length}
        role="img"
        aria-label={props.lot.says.join(' ')}
      >
        <For each={props.lot.ways}>
          {({ way, drawn, drawnHigh }, i) => {
            const y = () => ROW_PX * (i() + 0.5);
            return (
              <>
                <text x="0" y={y() + 5} class={way === props.lot.best ? 'cover-best' : undefined}>
                  {words.ways[way]}
                </text>
                <line class="cover-way" x1={LABEL_PX} x2={LABEL_PX + Math.max(1, px(drawn))} y1={y()} y2={y()} />
                <line class="cover-high" x1={LABEL_PX + px(drawn)} x2={LABEL_PX + px(drawnHigh)} y1={y()} y2={y()} />
                <line
                  class="cover-high"
                  x1={LABEL_PX + px(drawnHigh)}
                  x2={LABEL_PX + px(drawnHigh)}
                  y1={y() - 5}
                  y2={y() + 5}
                />
              </>
            );
          }}
        </For>
      </svg>
    </div>
  );
}
