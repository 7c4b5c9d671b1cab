// The best use of each lot of scraps that lies there, by how much of its nitrogen reaches a bed this season: only ways its
// slip leaves open. What is set aside or out stands in no list.

import { type Way, type WayShare, waysOf } from '#engine/ground/cover/ways.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { usual, usualBand } from '#engine/scraps/usual.ts';
import type { Plot } from '#journal/fold.ts';
import type { Lot } from '#journal/parts/stock.ts';
import { sayWays } from '#words/en/scrap-ways.ts';
import { LEAST_KG, MULCHES } from './cover-sources.ts';
import { nameOf } from './kept-out.ts';

export interface LotWays {
  readonly id: string;
  readonly name: string;
  readonly materialId: string | undefined;
  readonly massKg: number;
  readonly best: Way | undefined;
  /** Best first; lengths as fractions of what the lot holds, none below 0. */
  readonly ways: readonly (Pick<WayShare, 'way' | 'seasonG'> & {
    readonly drawn: number;
    readonly drawnHigh: number;
  })[];
  /** What to do with it; why stands in `says`. */
  readonly advice: string;
  readonly says: readonly string[];
}

const OFF_A_LAWN: readonly string[] = ['grass-clippings-fresh', 'grass-clippings-wilted'];
/** A batch as it usually goes. */
const USUAL_FERMENT = {
  days: usual('batch.days').likely,
  finalPh: usual('batch.finalPh').likely,
  drainedFraction: usualBand('batch.drainedFraction'),
};

/** Every lot with something left and a way open, the largest first. */
export function scrapWays(plot: Plot): readonly LotWays[] {
  return [...plot.lots.values()]
    .filter((lot) => lot.leftKg >= LEAST_KG && openTo(lot).length > 0)
    .sort((a, b) => b.leftKg - a.leftKg)
    .map(waysOfLot);
}

function waysOfLot(lot: Lot): LotWays {
  const { material, analysis } = lot.act.body;
  const part = resolvePart({ material, massKg: 1, ...analysis });
  const nPercentDm = part.nPercentDm?.likely ?? Number.NaN;
  const told = waysOf({
    name: nameOf(lot),
    massKg: lot.leftKg,
    nGPerKg: part.dryMatter.likely * nPercentDm * 10,
    nPercentDm,
    open: openTo(lot),
    ferment: USUAL_FERMENT,
  });
  const says = sayWays(told);
  const drawn = (grams: number) => (told.holdsG > 0 ? Math.max(0, grams / told.holdsG) : 0);
  return {
    id: lot.id,
    name: told.lot.name,
    materialId: material,
    massKg: lot.leftKg,
    best: told.best,
    ways: told.ways.map(({ way, seasonG }) => ({
      way,
      seasonG,
      drawn: drawn(seasonG.likely),
      drawnHigh: drawn(seasonG.high),
    })),
    advice: says.at(-1) ?? '',
    says: says.slice(0, -1),
  };
}

function openTo({ goes, act }: Lot): readonly Way[] {
  const id = act.body.material;
  if (goes === 'compost-only') return ['heap'];
  if (goes !== 'liquid') return [];
  return [
    'ferment',
    'heap',
    ...(id !== undefined && MULCHES.includes(id) ? (['mulch'] as const) : []),
    ...(id !== undefined && OFF_A_LAWN.includes(id) ? (['lawn'] as const) : []),
  ];
}
