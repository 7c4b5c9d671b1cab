// What stands in a vessel, thing by thing in litres, for its drawing: each by its own room in the liquid, together as
// much as is left in the vessel. The thing is mixed; the drawing shows it in layers, as the scale saw it.

import { ASSUMED } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { material } from '#engine/tables/index.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { litresOf } from '#journal/parts/contents.ts';

/** One thing in the vessel, from the floor up. */
export interface Layer {
  readonly kind: 'plant' | 'sugar' | 'water' | 'starter';
  /** Id of the materials or sugars table; undefined where it was named on the spot. */
  readonly material: string | undefined;
  readonly name: string | undefined;
  readonly litres: number;
}

/** Room of a sugar that the table does not have: that of white sugar. */
const SUGAR_L_PER_KG = sugarProduct('white-sugar')?.displacementLPerKg ?? Number.NaN;

/** The layers of a batch; nothing where nothing is left. @memory displacements as in the pail's own fill */
export function layersOf({ contents, presentL }: Batch): readonly Layer[] {
  const wholeL = litresOf(contents);
  const share = wholeL > 0 ? presentL / wholeL : 0;
  const layers: Layer[] = [
    ...contents.parts.map((part) => {
      const row = part.material === undefined ? undefined : material(part.material);
      const perKg = row?.figures.displacementLPerKg?.likely ?? ASSUMED.displacementLPerKg.likely;
      return {
        kind: 'plant' as const,
        material: part.material,
        name: part.name ?? row?.name,
        litres: part.massKg * perKg * share,
      };
    }),
    ...contents.sugar.map(({ product, massKg }) => {
      const row = sugarProduct(product);
      return {
        kind: 'sugar' as const,
        material: product,
        name: row?.name ?? product,
        litres: massKg * (row?.displacementLPerKg ?? SUGAR_L_PER_KG) * share,
      };
    }),
    { kind: 'starter', material: undefined, name: undefined, litres: contents.starterL * share },
    { kind: 'water', material: undefined, name: undefined, litres: contents.waterL * share },
  ];
  return layers.filter(({ litres }) => litres > 0);
}
