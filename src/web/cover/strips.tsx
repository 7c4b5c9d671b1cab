// The beds of a cover as strips on one scale: as long as what each misses, hatched by what closes it, dashed where it stays
// open. Fractions are the plan's; here are only pixels.

import { createMemo, For, Show } from 'solid-js';
import type { Nutrient } from '#engine/ground/need.ts';
import type { CoverBedShown } from '#tasks/plot/cover.ts';
import { coverSheet as words } from '#words/en/cover-sheet.ts';
import { gapStrip } from '../drawings/bar-geometry.ts';
import { fillOf, Swatch } from '../drawings/hatches.tsx';
import { measured } from '../parts/measured.ts';

const HATCH: Readonly<Record<string, string>> = {
  compost: 'crumbs',
  'clippings-mulch': 'clippings',
  solids: 'trimmings',
  other: 'grounds',
  legume: 'pods',
  'bought-organic': 'halves',
  'bought-mineral': 'basket',
};
const hatchOf = (kind: string) => HATCH[kind] ?? 'roots';
const HEIGHT_PX = 26;

export function CoverStrips(props: { readonly beds: readonly CoverBedShown[]; readonly nutrient: Nutrient }) {
  const [width, watch] = measured(340);
  const widest = createMemo(() => Math.max(0, ...props.beds.map((bed) => bed.missingG[props.nutrient] ?? 0)));
  const strip = (bed: CoverBedShown) =>
    gapStrip(
      {
        missingG: bed.missingG[props.nutrient] ?? 0,
        pieces: bed.pieces.map(({ kind, bringsG }) => ({ kind, grams: bringsG[props.nutrient] })),
      },
      { widestG: widest(), width: width() },
    );
  const materials = createMemo(
    () => new Map(props.beds.flatMap(({ pieces }) => pieces.map(({ source, kind }) => [source, kind] as const))),
  );
  return (
    <figure class="drawing-place" ref={watch}>
      <p class="note">{words.drawing}</p>
      <ul class="got-legend plain">
        <For each={[...materials()]}>
          {([source, kind]) => (
            <li>
              <Swatch hatch={hatchOf(kind)} /> {source}
            </li>
          )}
        </For>
      </ul>
      <ul class="got-beds plain">
        <For each={props.beds}>
          {(bed) => {
            const missing = () => bed.missingG[props.nutrient];
            const said = () => words.alternative(props.nutrient, bed.name, missing(), bed.leftG[props.nutrient]);
            return (
              <li>
                <span>{said()}</span>
                <Show when={(missing() ?? 0) > 0.05}>
                  <svg class="drawing" width={width()} height={HEIGHT_PX + 2} role="img" aria-label={said()}>
                    <rect class="cover-gap" {...strip(bed).whole} y="1" height={HEIGHT_PX} />
                    <For each={strip(bed).pieces}>
                      {({ piece, x, width }) => (
                        <rect
                          class="hatched"
                          x={x}
                          y="1"
                          width={width}
                          height={HEIGHT_PX}
                          fill={fillOf(hatchOf(piece.kind))}
                        />
                      )}
                    </For>
                  </svg>
                </Show>
              </li>
            );
          }}
        </For>
      </ul>
    </figure>
  );
}
