// The vessel of a peg, drawn to scale with what is left in it, and its peg hung on the rim.

import { Show } from 'solid-js';
import type { PegView } from '#tasks/plot/peg.ts';
import { pegDrawing } from '#words/en/peg.ts';
import { VesselDrawing, type VesselPicture } from '../drawings/vessel-drawing.tsx';
import { vesselRoom, vesselSheet } from '../drawings/vessel-geometry.ts';
import { drawnLayers } from '../drawings/vessel-picture.ts';
import { measured } from '../parts/measured.ts';

/** The picture of a vessel whose size is known; undefined where it is not. */
export function vesselPicture(view: PegView): VesselPicture | undefined {
  const { volumeL, usableL, kind } = view.vessel;
  if (volumeL === undefined || usableL === undefined) return undefined;
  const layers = drawnLayers(view.layers);
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
