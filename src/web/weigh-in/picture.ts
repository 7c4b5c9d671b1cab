// The vessel as its drawing wants it, from the answer of the word `fit`: layers with their textures, levels and words.

import { material } from '#engine/tables/index.ts';
import type { FitResult } from '#tasks/fit.ts';
import { drawingAlternative, drawingNames, shortName } from '#words/en/weigh-in.ts';
import { hatchOf } from '../drawings/hatch-of.ts';
import type { VesselPicture } from '../drawings/vessel-drawing.tsx';

/** The vessel as it is drawn, from an answer. */
export function pictureOf(
  given: Pick<FitResult, 'fill' | 'lift' | 'layers'>,
  vesselL: number,
  shape: VesselPicture['shape'],
): VesselPicture {
  const layers = given.layers.map((layer) => {
    const row = layer.id === undefined ? undefined : material(layer.id);
    const hatch = layer.kind === 'plant' ? row && hatchOf(row) : layer.kind;
    return { name: shortName(layer.name), hatch: hatch ?? 'trimmings', litres: layer.litres };
  });
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
