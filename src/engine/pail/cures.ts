// What to do when a batch does not fit, or would leave the vessel far from full. Every cure is a whole
// recipe that can be taken in one touch; masses are rounded down so that a cure never brings the trouble back.

import type { Part } from '../scraps/part.ts';
import type { Recipe } from './recipe.ts';
import { plantsKg } from './recipe.ts';
import type { Fill } from './volume.ts';

/** A lot of a cured recipe, by its place in the list of plants. */
export interface CuredPlant {
  readonly name: string;
  readonly material: string | undefined;
  readonly massKg: number;
}

export interface Cure {
  readonly kind: 'scale' | 'vessel' | 'leave-out' | 'more';
  readonly factor?: number;
  /** Least volume of the other vessel, for kind 'vessel'. */
  readonly volumeL?: number;
  readonly plants?: readonly CuredPlant[];
  readonly waterL?: number;
  readonly sugarKg?: number;
  /** What stays out, for kind 'leave-out'. */
  readonly leftOut?: { readonly what: string; readonly massKg?: number; readonly volumeL?: number };
}

/** A vessel less than this share full (of its usable volume) is worth saying. @practice */
const FAR_FROM_FULL_PERCENT = 60;

/** Water still covers the mat at this many litres per kg of plant. @memory */
const LEAST_WATER_L_PER_KG = 1;

/** The next step down that a scale or jug shows; tiny lots are left exact. */
function stepDown(value: number, step: number): number {
  const stepped = Math.floor(value / step + 1e-9) * step;
  return stepped >= 5 * step ? Number(stepped.toFixed(6)) : value;
}

function scaled(recipe: Recipe, kind: 'scale' | 'more', factor: number): Cure {
  return {
    kind,
    factor,
    plants: recipe.plants.map((part) => lot(part, stepDown(part.massKg * factor, 0.01))),
    waterL: stepDown(recipe.water.volumeL * factor, 0.05),
    sugarKg: stepDown(recipe.sugar.massKg * factor, 0.001),
  };
}

function lot(part: Part, massKg: number): CuredPlant {
  return { name: part.name, material: part.id, massKg };
}

/** Floor to hundredths; a factor below a tenth stays as it is, less a millionth of it for rounding. */
function factorDown(factor: number): number {
  const hundredths = Math.floor(factor * 100 + 1e-9) / 100;
  if (hundredths >= 0.1) return hundredths;
  return factor * (1 - 1e-6);
}

/**
 * Cures for a recipe that passes the fill line, or ways to use a vessel that stands far from full.
 * Scaling everything alike scales the volume alike, so a factor at or below usable/volume always fits.
 * @arithmetic
 */
export function cures(recipe: Recipe, settled: Fill): readonly Cure[] {
  const { vessel } = recipe;
  const leastVesselL = Math.ceil((settled.volumeL.likely / (1 - vessel.gasRoom)) * 10 - 1e-9) / 10;
  if (!settled.fits) {
    const list: Cure[] = [
      scaled(recipe, 'scale', factorDown(settled.usableL / settled.volumeL.likely)),
      { kind: 'vessel', volumeL: leastVesselL },
    ];
    const less = leaveOut(recipe, settled.overL);
    return less ? [...list, less] : list;
  }
  if (settled.usedPercent < FAR_FROM_FULL_PERCENT && settled.volumeL.likely > 0) {
    return [
      scaled(recipe, 'more', factorDown(settled.usableL / settled.volumeL.likely)),
      { kind: 'vessel', volumeL: leastVesselL },
    ];
  }
  return [];
}

/** Water first, while the mat stays covered; then the largest lots. Undefined when that cannot be enough. */
function leaveOut(recipe: Recipe, overL: number): Cure | undefined {
  const { water, sugar, plants } = recipe;
  const lots = plants.map((part) => lot(part, part.massKg));
  const waterOutL = Math.ceil(overL * 20 - 1e-9) / 20;
  if (water.volumeL - waterOutL >= LEAST_WATER_L_PER_KG * plantsKg(plants)) {
    const waterL = Number((water.volumeL - waterOutL).toFixed(6));
    return {
      kind: 'leave-out',
      plants: lots,
      waterL,
      sugarKg: sugar.massKg,
      leftOut: { what: 'water', volumeL: waterOutL },
    };
  }
  const largest = plants.reduce((a, b) => (b.massKg > a.massKg ? b : a), plants[0] as Part);
  if (!largest) return undefined;
  const massOutKg = Math.ceil((overL / largest.displacementLPerKg.likely) * 100 - 1e-9) / 100;
  if (!(massOutKg < largest.massKg)) return undefined;
  const left = Number((largest.massKg - massOutKg).toFixed(6));
  return {
    kind: 'leave-out',
    plants: plants.map((part) => lot(part, part === largest ? left : part.massKg)),
    waterL: water.volumeL,
    sugarKg: sugar.massKg,
    leftOut: { what: largest.name, massKg: massOutKg },
  };
}
