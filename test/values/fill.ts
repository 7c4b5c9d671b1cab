// The most sugar of a batch, what addition is worth the weighing, and how long its liquid is reckoned to keep.

import type { Recipe } from '#engine/pail/recipe.ts';
import { batchUse } from '#engine/pail/use.ts';
import type { Fill } from '#engine/pail/volume.ts';
import { point } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import type { Batch } from '#engine/souring/model/course.ts';
import { sugarRoomGPerL } from '#engine/souring/rescue/dose.ts';
import { answers, type Value } from './value.ts';

const room = (freeSugarGPerL: number) =>
  Number(sugarRoomGPerL({ mixture: { freeSugarGPerL } } as unknown as Batch).toFixed(6));

/** Rounds that one batch lasts for a bed that is fed so often. */
function rounds(everyDays: number): number {
  const recipe = { plants: [resolvePart({ massKg: 2, dryMatter: 0.2 })] } as unknown as Recipe;
  const settled = { volumeL: point(9) } as unknown as Fill;
  return batchUse(recipe, settled, [{ areaM2: 1, depthLPerM2: 2, everyDays }]).rounds;
}

export const fillValues: readonly Value[] = [
  {
    name: 'sugar of a batch, the most',
    at: 'data/pail.csv souring.mostHexoseGPerL',
    stated: '20 g/L of hexose',
    source: 'utar-fermentation-2025',
    locator: 'alcohol at day 90; our reading of it',
    holds: answers(room, [0, 20], [5, 15], [21, 0]),
  },
  {
    name: 'addition of sugar that is worth the weighing',
    at: 'souring/rescue/dose.ts LEAST_ADDED_G_PER_L',
    stated: '1 g/L',
    source: 'our-caution',
    step: 0.05,
    holds: answers(room, [18.99, 1.01], [19, 1], [19.01, 0]),
  },
  {
    name: 'days that the liquid of a batch is reckoned to keep',
    at: 'data/pail.csv keeping.shelfDays',
    stated: '90 days',
    source: 'our-caution',
    holds: answers(rounds, [44.9, 2], [45, 2], [45.1, 1]),
  },
];
