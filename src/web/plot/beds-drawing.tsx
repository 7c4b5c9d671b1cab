// Beds as strips in walking order, to one scale: length and width as told, pots as circles, hatched by how the crop is
// eaten. A bed whose length was not told is dashed.

import { For, Show } from 'solid-js';
import type { PotRows } from '#plot/place/ground.ts';
import type { BedStrip } from '#tasks/plot/facts.ts';
import { answerNames, plotWords as words } from '#words/en/plot.ts';
import { fillOf, Swatch } from '../drawings/hatches.tsx';
import { measured } from '../parts/measured.ts';

const HATCH_OF_EATEN: Readonly<Record<string, string>> = {
  'raw-leaf': 'veins',
  'raw-fruit': 'fruit',
  'raw-root': 'roots',
  cooked: 'trimmings',
  'not-eaten': 'basket',
};
const PX_PER_M_FULL = 96 / 0.0254;
const MOST_PX_PER_M = 60;
const GAP = 16;
const LEAST_ROW = 34;
/** Thinner than this a thing is too small for a hatch, and is left open. */
const LEAST_HATCHED_PX = 12;

export function BedsDrawing(props: { readonly strips: readonly BedStrip[] }) {
  const [width, watch] = measured(340);
  const longest = () => props.strips.reduce((most, { lengthM }) => Math.max(most, lengthM), 0);
  const denominator = () => Math.ceil(PX_PER_M_FULL / Math.min((width() * 0.58) / longest(), MOST_PX_PER_M));
  const scale = () => PX_PER_M_FULL / denominator();
  const placePx = ({ diameterM, discFraction }: PotRows) => (diameterM / discFraction) * scale();
  const rows = () => {
    let y = 2;
    return props.strips.map((strip) => {
      const heightPx = Math.max(6, strip.widthM * scale());
      const row = { strip, y, heightPx, lengthPx: strip.lengthM * scale() };
      y += Math.max(heightPx, LEAST_ROW) + GAP;
      return row;
    });
  };
  const height = () => rows().reduce((sum, { heightPx }) => sum + Math.max(heightPx, LEAST_ROW) + GAP, 0);
  const eaten = () => [...new Set(props.strips.map(({ facts }) => facts.eaten ?? ''))];
  const nameOf = ({ facts }: BedStrip) => facts.name ?? facts.tag ?? '';
  return (
    <figure class="drawing-place" ref={watch}>
      <svg
        class="drawing"
        width={width()}
        height={height()}
        viewBox={`0 0 ${width()} ${height()}`}
        role="img"
        aria-label={words.bedsDrawing(props.strips.map(nameOf))}
      >
        <For each={rows()}>
          {({ strip, y, heightPx, lengthPx }) => {
            const fill = heightPx < LEAST_HATCHED_PX ? 'none' : fillFor(strip.facts.eaten);
            return (
              <>
                <Show
                  when={strip.pots}
                  fallback={
                    <rect
                      class="hatched"
                      classList={{ waiting: !strip.lengthTold }}
                      x="1"
                      y={y}
                      width={lengthPx}
                      height={heightPx}
                      fill={fill}
                    />
                  }
                >
                  {(pots) => (
                    <For each={Array.from({ length: pots().count }, (_, i) => i)}>
                      {(i) => (
                        <circle
                          class="hatched"
                          cx={1 + ((i % pots().columns) + 0.5) * placePx(pots())}
                          cy={y + (Math.floor(i / pots().columns) + 0.5) * placePx(pots())}
                          r={Math.max(2, (pots().diameterM * scale()) / 2 - 1)}
                          fill={fill}
                        />
                      )}
                    </For>
                  )}
                </Show>
                <text x={lengthPx + 12} y={y + Math.max(heightPx, 22) / 2 + 6}>
                  <tspan class="figure">{strip.facts.tag ?? ''}</tspan> {nameOf(strip)}
                  <Show when={strip.lengthTold}>, {words.metres(strip.lengthM)}</Show>
                </text>
              </>
            );
          }}
        </For>
      </svg>
      <figcaption>
        <p class="note">{words.hatchLegend}</p>
        <ul class="legend">
          <For each={eaten()}>
            {(word) => (
              <li>
                <Show when={HATCH_OF_EATEN[word]}>{(hatch) => <Swatch hatch={hatch()} />}</Show>
                {answerNames[word] ?? words.eatenUntold}
              </li>
            )}
          </For>
        </ul>
        <p class="note">
          {words.scale(denominator())}
          <Show when={props.strips.some(({ lengthTold, pots }) => !lengthTold && pots === undefined)}>
            . {words.assumedWidth}
          </Show>
        </p>
      </figcaption>
    </figure>
  );
}

function fillFor(eaten: string | undefined): string {
  const hatch = HATCH_OF_EATEN[eaten ?? ''];
  return hatch === undefined ? 'none' : fillOf(hatch);
}
