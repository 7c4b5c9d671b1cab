// What the liquid holds and what it may be used for: each nutrient as a band under its ceiling, one word for the use.

import { For, Show } from 'solid-js';
import type { StrainingAnswer } from '#tasks/plot/straining.ts';
import { conductivityLine, elementLine, partsTaken, strainSheet, useWords, warmthTaken } from '#words/en/straining.ts';
import { underCeilingX } from '../drawings/bar-geometry.ts';
import { fillOf } from '../drawings/hatches.tsx';
import { AssumedList } from '../parts/assumed-list.tsx';
import { WhyBlock } from '../parts/why.tsx';

export function LiquidUse(props: { readonly answer: StrainingAnswer; readonly today: string }) {
  const words = () => useWords(props.answer.use, props.today);
  return (
    <section class="ask" aria-labelledby="strain-use">
      <h2 id="strain-use">{strainSheet.useHeading}</h2>
      <p class="use-word">{words().head}</p>
      <p>{words().body}</p>
      <Show when={!props.answer.temperatureTold}>
        <p class="note">{warmthTaken(props.answer.temperatureC)}</p>
      </Show>
      <Show when={props.answer.unknownParts.length > 0}>
        <p class="note">{partsTaken(props.answer.unknownParts)}</p>
      </Show>
      <AssumedList assumed={props.answer.assumed} />
    </section>
  );
}

export function Nutrients(props: {
  readonly answer: StrainingAnswer;
  readonly readDsPerM: number | undefined;
  readonly width: number;
  readonly onWhy: (...figures: readonly string[]) => void;
}) {
  return (
    <section class="ask" aria-labelledby="strain-holds">
      <h2 id="strain-holds">{strainSheet.nutrientsHeading}</h2>
      <p class="note">{strainSheet.nutrientsNote}</p>
      <For each={['n', 'p', 'k'] as const}>
        {(element) => {
          const gPerL = () => props.answer.strain.liquid[`${element}GPerL`];
          const ceiling = () => props.answer.strain.ceiling[`${element}GPerL`];
          const line = () => elementLine(element, gPerL(), ceiling());
          return (
            <div class="fact">
              <div>
                <p>{line()}</p>
                <ElementBar band={gPerL()} ceilingGPerL={ceiling()} width={Math.max(120, props.width - 80)} />
              </div>
              <WhyBlock of={line()} onAsk={() => props.onWhy(`liquid.${element}GPerL`, `ceiling.${element}GPerL`)} />
            </div>
          );
        }}
      </For>
      <div class="fact">
        <p>{conductivityLine(props.answer.strain.liquid.ecDsPerM, props.readDsPerM)}</p>
        <WhyBlock of={strainSheet.conductivity} onAsk={() => props.onWhy('liquid.ecDsPerM')} />
      </div>
    </section>
  );
}

/** From nothing to the ceiling: the band hatched, firm at its low end, the likely figure as a stroke. */
function ElementBar(props: {
  readonly band: StrainingAnswer['strain']['liquid']['nGPerL'];
  readonly ceilingGPerL: number | null;
  readonly width: number;
}) {
  const at = (gPerL: number) => underCeilingX(gPerL, { ceilingGPerL: props.ceilingGPerL ?? 1, width: props.width });
  return (
    <Show when={props.ceilingGPerL !== null && props.ceilingGPerL > 0 && props.band}>
      {(band) => (
        <svg class="drawing" width={props.width} height="26" viewBox={`0 0 ${props.width} 26`} aria-hidden="true">
          <path class="hair" d={`M2 20H${at(props.ceilingGPerL ?? 1)}`} />
          <rect
            class="bare"
            x={at(band().low)}
            y="6"
            width={Math.max(1, at(band().high) - at(band().low))}
            height="14"
            fill={fillOf('band')}
          />
          <path class="edge" d={`M${at(band().low)} 4V20`} />
          <path class="edge waiting" d={`M${at(band().high)} 4V20`} />
          <path class="mark" d={`M${at(band().likely)} 2V20`} />
          <path class="wall" d={`M${at(props.ceilingGPerL ?? 1)} 2V24`} />
        </svg>
      )}
    </Show>
  );
}
