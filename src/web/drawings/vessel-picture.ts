// A vessel as its drawing wants it: the layers of what is in it with their textures, for every sheet; with levels and words, from
// the answer of the word `fit`.

import type { Layer } from '#engine/pail/volume.ts';
import { material } from '#engine/tables/index.ts';
import type { FitResult } from '#tasks/fit.ts';
import { drawingAlternative, drawingNames, shortName } from '#words/en/weigh-in.ts';
import { hatchOf } from './hatch-of.ts';
import type { DrawnLayer, VesselPicture } from './vessel-drawing.tsx';

/** What is wet or dissolved; a starter is feed. */
const HATCH = { water: 'water', starter: 'bottled-feed', sugar: 'sugar' } as const;

/** Layers as they are drawn, in their order. */
export function drawnLayers(layers: readonly Layer[]): readonly DrawnLayer[] {
  return layers.map(({ kind, id, name, litres }) => {
    const row = kind === 'plant' && id !== undefined ? material(id) : undefined;
    const hatch = kind === 'plant' ? row && hatchOf(row) : HATCH[kind];
    return { name: shortName(name), hatch: hatch ?? 'trimmings', litres };
  });
}

/** The vessel as it is drawn, from an answer. */
export function pictureOf(
  given: Pick<FitResult, 'fill' | 'lift' | 'layers'>,
  vesselL: number,
  shape: VesselPicture['shape'],
): VesselPicture {
  const layers = drawnLayers(given.layers);
  return {
    vesselL,
    shape,
    usableL: given.fill.usableL,
    overL: given.fill.overL,
    liftHighL: given.lift.highL,
    layers,
    usableText: drawingNames.usable(given.fill.usableL),
    overText: drawingNames.over(given.fill.overL),
    rimText: drawingNames.rim(vesselL),
    gasRoomText: drawingNames.gasRoom,
    liftText: drawingNames.lift,
    alternative: drawingAlternative(given.fill, given.lift, { vesselL, shape, layers }),
  };
}
