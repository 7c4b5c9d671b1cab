// How much of a batch the beds can take before it ages: the question that saves most work. The full schedule
// is the season room's; this is one batch against the beds named with it.

import { type Range, range } from '../quantity/range.ts';
import { pailFigure } from './figures.ts';
import { plantsKg, type Recipe } from './recipe.ts';
import type { Fill } from './volume.ts';

export interface BedToFeed {
  readonly areaM2: number;
  readonly depthLPerM2: number;
  readonly everyDays: number;
}

export interface BatchUse {
  /** Concentrate that will be drained off, litres. */
  readonly drainedL: Range;
  /** Concentrate one round over the beds takes. */
  readonly perRoundL: number;
  readonly rounds: number;
  /** Concentrate the beds take before it ages. */
  readonly usableL: number;
  /** Drained over usable; above 1 some ages unused. */
  readonly timesTooMuch: number;
  readonly leafStrengthGPerL: number;
  readonly shelfDays: number;
}

/**
 * Concentrate drained, wanted and left over for one recipe.
 *
 *   drained = settled volume − solids (0.8 L per kg of plant);   a round takes Σ area × depth × strength / leaf strength
 *
 * Strength of what is poured: 9.1 g of plant per litre, the nettle feed of a public horticultural body.
 * @source rhs-fertilisers nettle feed, 1 kg in 10 L then 10 to 1
 */
export function batchUse(recipe: Recipe, settled: Fill, beds: readonly BedToFeed[]): BatchUse {
  const solids = pailFigure('yield', 'solidsLPerKg');
  const plants = plantsKg(recipe.plants);
  const volumeL = settled.volumeL.likely;
  const drained = (perKg: number) => Math.max(0, volumeL - plants * perKg);
  const drainedL = range(drained(solids.high), drained(solids.likely), drained(solids.low));
  const leafStrengthGPerL = (1000 * plants) / volumeL;
  const share = pailFigure('strength', 'leafStrengthGPerL').likely / leafStrengthGPerL;
  const shelfDays = pailFigure('keeping', 'shelfDays').likely;
  let perRoundL = 0;
  let usableL = 0;
  let rounds = 0;
  for (const bed of beds) {
    const litres = bed.areaM2 * bed.depthLPerM2 * Math.min(1, share);
    const times = Math.max(1, Math.floor(shelfDays / bed.everyDays));
    perRoundL += litres;
    usableL += litres * times;
    rounds = Math.max(rounds, times);
  }
  const timesTooMuch = usableL > 0 ? drainedL.likely / usableL : Number.POSITIVE_INFINITY;
  return { drainedL, perRoundL, rounds, usableL, timesTooMuch, leafStrengthGPerL, shelfDays };
}
