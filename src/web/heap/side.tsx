// A heap from the side: a hatched layer for each row, as thick as its volume, its name beside it, its height dimensioned
// in litres.

import { For, Show } from 'solid-js';
import type { HeapView } from '#tasks/plot/heap.ts';
import { heapSheet } from '#words/en/heap-sheet.ts';
import { band } from '#words/figures.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import { fillOf } from '../drawings/hatches.tsx';
import { layerPath, layersOf } from '../drawings/heap-side-geometry.ts';

const WIDTH = 360;
const FLOOR_Y = 196;
const MIDDLE_X = 170;

export function HeapSide(props: { readonly view: HeapView }) {
  const rows = () => props.view.rows.filter(({ volumeL }) => (volumeL?.likely ?? 0) > 0);
  const layers = () =>
    layersOf(
      rows().map(({ volumeL }) => volumeL?.likely ?? 0),
      { floorY: FLOOR_Y, height: 160, footHalf: 160, topHalf: 84 },
    );
  return (
    <Show when={layers().length > 0}>
      <svg
        class="drawing heap-side"
        viewBox={`0 0 ${WIDTH} 232`}
        role="img"
        aria-label={heapSheet.sideAlternative(props.view.heap)}
      >
        <For each={layers()}>
          {(layer, i) => {
            const material = () => rows()[i()]?.material;
            const hatch = () => {
              const found = material();
              return (found && hatchOf(found)) ?? 'crumbs';
            };
            const tall = () => layer.bottomY - layer.topY;
            return (
              <>
                <path class="bare" d={layerPath(layer, MIDDLE_X)} fill={fillOf(hatch())} />
                <path class="edge bare-fill" d={layerPath(layer, MIDDLE_X)} fill="none" />
                <Show when={tall() >= 22}>
                  <text class="heap-name" x={MIDDLE_X} y={(layer.bottomY + layer.topY) / 2 + 6} text-anchor="middle">
                    {rows()[i()]?.name}
                  </text>
                </Show>
              </>
            );
          }}
        </For>
        <path class="outline" d={`M4 ${FLOOR_Y}H${WIDTH - 20}`} />
        <Show when={props.view.volumeL}>
          {(volumeL) => (
            <text class="figure" x={MIDDLE_X} y="224" text-anchor="middle">
              {band(volumeL(), 'L', 0)}
            </text>
          )}
        </Show>
      </svg>
    </Show>
  );
}
