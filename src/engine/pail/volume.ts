// Does it fit: the settled volume with its band, the fill line, the lift while it gasses, the mass to move.

import { type Range, scale, shift, sumTogether } from '../quantity/range.ts';
import type { Part } from '../scraps/part.ts';
import { usual } from '../scraps/usual.ts';
import { pailFigure } from './figures.ts';
import { plantsKg, type Recipe, type SugarIn } from './recipe.ts';

/** One layer of the drawing, in the order it is drawn from the floor up. */
export interface Layer {
  readonly kind: 'water' | 'starter' | 'sugar' | 'plant';
  readonly name: string;
  /** Material or product id; undefined for a lot of the grower's own analysis. */
  readonly id: string | undefined;
  readonly litres: number;
}

export interface Fill {
  readonly volumeL: Range;
  /** Litres up to the fill line. */
  readonly usableL: number;
  readonly overL: number;
  readonly fits: boolean;
  readonly massKg: number;
  /** Likely volume as percent of the usable one. */
  readonly usedPercent: number;
}

export interface Lift {
  readonly lowL: number;
  readonly highL: number;
  /** The upper end stands above the rim. */
  readonly passesRim: boolean;
}

/** What stands in a vessel, in any order; a starter counts as water. */
export interface InVessel {
  readonly waterL: number;
  readonly sugars: readonly SugarIn[];
  readonly plants: readonly Part[];
}

/** The layers of what is in a vessel: water, then sugar, then the plants as they float. @arithmetic volume = mass × displacement */
export function layers({ waterL, sugars, plants }: InVessel): readonly Layer[] {
  const all: Layer[] = [{ kind: 'water', name: 'water', id: undefined, litres: waterL }];
  for (const { product, massKg } of sugars) {
    if (massKg > 0) {
      all.push({ kind: 'sugar', name: product.name, id: product.id, litres: massKg * product.displacementLPerKg });
    }
  }
  for (const part of plants) {
    all.push({ kind: 'plant', name: part.name, id: part.id, litres: part.massKg * part.displacementLPerKg.likely });
  }
  return all;
}

/** The same with the starter as a layer of its own on the rest of the water. @arithmetic */
export function withStarter(all: readonly Layer[], starterL: number): readonly Layer[] {
  if (!(starterL > 0)) return all;
  return all.flatMap((layer) => {
    if (layer.kind !== 'water') return [layer];
    const starter: Layer = { kind: 'starter', name: 'starter', id: undefined, litres: starterL };
    return [{ ...layer, litres: layer.litres - starterL }, starter];
  });
}

/** Litres of a vessel up to its fill line; where nobody told its gas room, the usual one is left. @arithmetic vessel × (1 − gas room) */
export function upToFillLineL(vessel: {
  readonly volumeL: number;
  readonly gasRoomFraction: number | undefined;
}): number {
  return vessel.volumeL * (1 - (vessel.gasRoomFraction ?? usual('vessel.gasRoomFraction').likely));
}

/**
 * Volume once the mat has settled, against what stands below the fill line.
 *
 *   V = V_water + Σ m · displacement + m_sugar · displacement;   usable = vessel × (1 − gas room)
 *
 * The plants' displacements err together (one cause, air in the tissue), so their ends add straight.
 * @source memory settled tissue 1.0 L/kg (0.95-1.05), dissolved sucrose 0.62 L/kg
 */
export function fill(recipe: Recipe): Fill {
  const { vessel, plants, water, sugar } = recipe;
  const plant = sumTogether(plants.map((part) => scale(part.displacementLPerKg, part.massKg)));
  const volumeL = shift(plant, water.volumeL + sugar.massKg * sugar.product.displacementLPerKg);
  const usableL = upToFillLineL({ volumeL: vessel.volumeL, gasRoomFraction: vessel.gasRoom });
  const fits = volumeL.likely <= usableL;
  return {
    volumeL,
    usableL,
    overL: fits ? 0 : volumeL.likely - usableL,
    fits,
    massKg: plantsKg(plants) + water.volumeL + sugar.massKg + (vessel.emptyMassKg ?? 0),
    usedPercent: (100 * volumeL.likely) / usableL,
  };
}

/**
 * How high the whole stands while the mat floats (day 0) and while gas lifts it: what the gas room is for.
 * @memory mat 1.2 L/kg on day 0; gas lifts by 5-15 %
 */
export function lift(recipe: Recipe, settled: Fill): Lift {
  const gas = pailFigure('float', 'gasLiftFactor');
  const floating =
    recipe.water.volumeL +
    recipe.sugar.massKg * recipe.sugar.product.displacementLPerKg +
    plantsKg(recipe.plants) * pailFigure('float', 'floatLPerKg').likely;
  const lowL = settled.volumeL.likely * gas.low;
  const highL = Math.max(settled.volumeL.likely * gas.high, floating);
  return { lowL, highL, passesRim: !(highL <= recipe.vessel.volumeL) };
}
