// The vessel of a peg, drawn to scale with what is left in it, and its peg hung on the rim.

import { Show } from 'solid-js';
import { material } from '#engine/tables/index.ts';
import type { PegView } from '#tasks/plot/peg.ts';
import { pegDrawing, pegWords } from '#words/en/peg.ts';
import { shortName } from '#words/en/weigh-in.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import { VesselDrawing, type VesselPicture } from '../drawings/vessel-drawing.tsx';
import { vesselRoom, vesselSheet } from '../drawings/vessel-geometry.ts';
import { measured } from '../parts/measured.ts';

/** Water stands for what is in it from the start; a starter has the close lines of what is sour already. */
const HATCH = { sugar: 'sugar', water: 'water', starter: 'window' } as const;

/** The picture of a vessel whose size is known; undefined where it is not. */
export function vesselPicture(view: PegView): VesselPicture | undefined {
  const { volumeL, usableL, kind } = view.vessel;
  if (volumeL === undefined || usableL === undefined) return undefined;
  const layers = view.layers.map((layer) => {
    if (layer.kind !== 'plant') {
      const name = layer.kind === 'sugar' ? shortName(layer.name ?? layer.kind) : pegWords[layer.kind];
      return { name, hatch: HATCH[layer.kind], litres: layer.litres };
    }
    const row = layer.material === undefined ? undefined : material(layer.material);
    const name = shortName(layer.name ?? row?.name ?? pegWords.scraps);
    return { name, hatch: (row && hatchOf(row)) ?? 'trimmings', litres: layer.litres };
  });
  const presentL = view.layers.reduce((sum, layer) => sum + layer.litres, 0);
  const overL = Math.max(0, presentL - usableL);
  return {
    vesselL: volumeL,
    shape: kind,
    usableL,
    overL,
    liftHighL: undefined,
    layers,
    usableText: pegDrawing.usable(usableL),
    overText: pegDrawing.over(overL),
    rimText: pegDrawing.rim(volumeL),
    gasRoomText: pegDrawing.gasRoom,
    liftText: '',
    alternative: pegDrawing.alternative({
      peg: view.peg,
      presentL,
      vesselL: volumeL,
      layers: layers.map(({ name }) => name),
    }),
  };
}

export function StandingVessel(props: { readonly view: PegView; readonly onScale: (denominator: number) => void }) {
  const [width, place] = measured(350);
  return (
    <div class="drawing-place standing" ref={place}>
      <Show when={vesselPicture(props.view)} fallback={<PegStake peg={props.view.batch.peg} />}>
        {(picture) => (
          <>
            <VesselDrawing picture={picture()} width={width()} onScale={props.onScale} />
            <PegStake peg={props.view.batch.peg} hungAt={vesselRoom(vesselSheet(width())).axisX} />
          </>
        )}
      </Show>
    </div>
  );
}

const STAKE_WIDE = 56;

/** The stake with its number; hung on a vessel's rim at its axis, or standing for itself. */
export function PegStake(props: { readonly peg: number; readonly hungAt?: number }) {
  return (
    <svg
      class="stake"
      classList={{ hung: props.hungAt !== undefined }}
      style={{ left: `${(props.hungAt ?? 0) - STAKE_WIDE / 2}px` }}
      width={STAKE_WIDE}
      height="76"
      viewBox="0 0 56 76"
      aria-hidden="true"
    >
      <path class="stake-board" d="M3 3H53V46L28 73L3 46Z" />
      <text class="figure" x="28" y="36" text-anchor="middle">
        {props.peg}
      </text>
    </svg>
  );
}
