// Vessels in a row, to one scale, each with its fill line.

import { For } from 'solid-js';
import type { vesselsDrawn } from '#tasks/plot/facts.ts';
import { plotWords as words } from '#words/en/plot.ts';
import { halfWidth, levelY, type Stand, wallPath } from '../drawings/vessel-geometry.ts';
import { measured } from '../parts/measured.ts';

const PX_PER_M_FULL = 96 / 0.0254;
const SLOT = 116;
const TALL = 170;
const UNDER = 58;
const ABOVE = 8;

export function VesselsDrawing(props: { readonly vessels: ReturnType<typeof vesselsDrawn> }) {
  const [width, watch] = measured(340);
  const shapes = () => props.vessels.map(({ shape }) => shape);
  const inRow = () => Math.max(1, Math.min(props.vessels.length, Math.floor(width() / SLOT)));
  const slot = () => Math.min(200, width() / inRow());
  const denominator = () => {
    const wide = (rings: readonly { readonly radiusM: number }[]) =>
      2 * Math.max(...rings.map(({ radiusM }) => radiusM));
    const most = Math.min(
      ...shapes().map(({ rings, heightM }) => Math.min((slot() * 0.82) / wide(rings), TALL / heightM)),
    );
    return Math.ceil(PX_PER_M_FULL / most);
  };
  const pxPerM = () => PX_PER_M_FULL / denominator();
  const rowHeight = () => ABOVE + UNDER + Math.max(...shapes().map(({ heightM }) => heightM * pxPerM()));
  const height = () => Math.ceil(props.vessels.length / inRow()) * rowHeight();
  const stands = () =>
    shapes().map((shape, i): Stand => {
      const row = Math.floor(i / inRow());
      const axisX = slot() * ((i % inRow()) + 0.5);
      return { shape, axisX, floorY: (row + 1) * rowHeight() - UNDER, pxPerM: pxPerM(), denominator: denominator() };
    });
  return (
    <figure class="drawing-place" ref={watch}>
      <svg
        class="drawing"
        width={width()}
        height={height()}
        viewBox={`0 0 ${width()} ${height()}`}
        role="img"
        aria-label={words.vesselsDrawing(props.vessels.map(({ name }) => name))}
      >
        <For each={stands()}>
          {(stand, i) => {
            const vessel = props.vessels[i()];
            const y = levelY(stand, vessel?.usableL ?? 0);
            const half = halfWidth(stand, y);
            return (
              <>
                <path class="wall" d={wallPath(stand)} />
                <path class="fill-line" d={`M${stand.axisX - half} ${y}H${stand.axisX + half}`} />
                <path class="edge" d={`M${stand.axisX - slot() / 2} ${stand.floorY + 2}h${slot()}`} />
                <text class="figure" x={stand.axisX} y={stand.floorY + 24} text-anchor="middle">
                  {vessel?.typed}
                </text>
                <text x={stand.axisX} y={stand.floorY + 46} text-anchor="middle">
                  {shortened(vessel?.name ?? '', slot())}
                </text>
              </>
            );
          }}
        </For>
      </svg>
      <figcaption class="note">
        {words.scale(denominator())}. {words.fillLineNote}
      </figcaption>
    </figure>
  );
}

/** As much of a name as a slot holds at 18 px. */
function shortened(name: string, widthPx: number): string {
  const most = Math.floor(widthPx / 10);
  return name.length <= most ? name : `${name.slice(0, most - 1)}…`;
}
