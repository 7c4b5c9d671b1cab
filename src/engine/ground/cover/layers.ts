// How much of a soft material may lie on a bed: the thickest layer that still lets air through, as kilograms a square metre.

import { wayFigure } from './ways.ts';

/**
 * Most of a material on a square metre.
 *
 *   most = layer · loose bulk
 *
 * @range bulk of the loose material, kg/m³; a bulk that is not known gives NaN
 * @practice data/ways.csv mostLayerCm
 */
export function mostLayerKgPerM2(material: 'mulch' | 'coffee-grounds', bulkKgPerM3: number): number {
  return (wayFigure(material, 'mostLayerCm').likely / 100) * bulkKgPerM3;
}
