// After the act is durable: the peg with its number, what stands on the tag, the days of the first looks.

import { A } from '@solidjs/router';
import { For } from 'solid-js';
import { firstLooks } from '#tasks/plot/fill.ts';
import { fillSheet, lookLine, tagLines } from '#words/en/fill.ts';

export interface PeggedFacts {
  readonly peg: number;
  readonly batch: string;
  readonly on: string;
  readonly by: string;
  readonly temperatureC: number | undefined;
  readonly place: string | undefined;
  readonly names: readonly string[];
}

export function Pegged(props: { readonly pegged: PeggedFacts; readonly onAnother: () => void }) {
  return (
    <>
      <div class="pegged" role="status">
        <svg class="drawing" width="132" height="164" viewBox="0 0 132 164" aria-hidden="true">
          <path class="peg" d="M6 4H126V104L66 160L6 104Z" />
          <text class="peg-number" x="66" y="82" text-anchor="middle">
            {props.pegged.peg}
          </text>
        </svg>
        <p class="lead-in">
          <b>{fillSheet.done(props.pegged.peg)}</b> {fillSheet.doneRest}
        </p>
      </div>
      <section class="ask" aria-labelledby="fill-tag">
        <h2 id="fill-tag">{fillSheet.tagHeading}</h2>
        <ul class="plain">
          <For each={tagLines(props.pegged)}>{(line) => <li>{line}</li>}</For>
          <li>
            <b>{fillSheet.notDrink}</b>
          </li>
        </ul>
      </section>
      <section class="ask" aria-labelledby="fill-looks">
        <h2 id="fill-looks">{fillSheet.looksHeading}</h2>
        <ol class="plain">
          <For each={firstLooks(props.pegged.on, props.pegged.temperatureC)}>{(look) => <li>{lookLine(look)}</li>}</For>
        </ol>
        <p class="note">{fillSheet.looksNote}</p>
      </section>
      <div class="act-foot">
        <A class="block act" href={`/peg/${props.pegged.batch}/look`}>
          {fillSheet.toLook}
        </A>
        <A class="block" href={`/peg/${props.pegged.batch}`}>
          {fillSheet.toPeg}
        </A>
        <A class="block" href="/print/tags">
          {fillSheet.toPrint}
        </A>

        <button type="button" class="block" onClick={() => props.onAnother()}>
          {fillSheet.fillAnother}
        </button>
      </div>
    </>
  );
}
