// The jug of the can card on paper: its own marks, and one heavy mark for each can's dose. Millimetres; not at full
// size, since nobody measured the jug's bore: it is read by its marks. Broken off above the highest.

import { For } from 'solid-js';
import { type TagDose, tagJugOnPaper } from './tag-jug-geometry.ts';

const WIDE_MM = 27;

export function TagJug(props: { readonly jugMl: number; readonly doses: readonly TagDose[]; readonly label: string }) {
  const paper = () => tagJugOnPaper(props);
  const wall = () => {
    const { floorMm } = paper();
    const cornerMm = floorMm - 2;
    return `M3 6V${cornerMm}Q3 ${floorMm} 5 ${floorMm}H${WIDE_MM - 2}Q${WIDE_MM} ${floorMm} ${WIDE_MM} ${cornerMm}V6`;
  };
  return (
    <svg
      class="tag-jug"
      width="87mm"
      height={`${paper().highMm}mm`}
      viewBox={`0 0 87 ${paper().highMm}`}
      role="img"
      aria-label={props.label}
    >
      <path class="jug-wall" d={wall()} />
      <path class="jug-hair" d={`M0 6H17l1.6 2 2.4 -4 1.6 2H${WIDE_MM + 3}`} />
      <For each={paper().marks}>
        {({ volumeMl, atMm }) => (
          <>
            <path class="jug-edge" d={`M3 ${atMm}h${volumeMl % 100 === 0 ? 6 : 3.5}`} />
            {volumeMl % 100 === 0 && (
              <text class="jug-text" x="10.5" y={atMm + 1.4}>
                {volumeMl}
              </text>
            )}
          </>
        )}
      </For>
      <For each={paper().doses}>
        {({ atMm, nameMm, text }) => (
          <>
            <path class="jug-mark" d={`M${WIDE_MM - 7} ${atMm}H${WIDE_MM + 2}`} />
            <path class="jug-hair" d={`M${WIDE_MM + 2} ${atMm}L${WIDE_MM + 6} ${nameMm}H${WIDE_MM + 8}`} />
            <text class="jug-text jug-name" x={WIDE_MM + 9} y={nameMm + 1.5}>
              {text}
            </text>
          </>
        )}
      </For>
    </svg>
  );
}
