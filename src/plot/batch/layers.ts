// What stands in a vessel, thing by thing in litres, for its drawing: the layers of the engine, together as much as is left
// in the vessel. The thing is mixed; the drawing shows it in layers, as the scale saw it.

import { type Layer, layers, withStarter } from '#engine/pail/volume.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { litresOf } from '#journal/parts/contents.ts';
import { plantsOf, sugarsOf } from './recipe.ts';

/** The layers of a batch from the floor up, in the order of a recipe; nothing where nothing is left. */
export function layersOf(batch: Batch): readonly Layer[] {
  const { contents, presentL } = batch;
  const { waterL, starterL } = contents;
  const wholeL = litresOf(contents);
  const share = wholeL > 0 ? presentL / wholeL : 0;
  const whole = layers({ plants: plantsOf(batch), waterL: waterL + starterL, sugars: sugarsOf(batch) });
  return withStarter(whole, starterL).flatMap((layer) => {
    const litres = layer.litres * share;
    return litres > 0 ? [{ ...layer, litres }] : [];
  });
}
