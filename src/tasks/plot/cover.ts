// The cover of a plot out of its record: what its ledger misses, closed first with clippings that lie there and may go
// on a bed, then with feeds whose label and price the grower told. Other stocks are not counted on.

import type { CoverSource } from '#engine/ground/cover/input.ts';
import { type CoverPlan, planCover } from '#engine/ground/cover/plan.ts';
import type { Solve } from '#engine/ground/cover/program.ts';
import { matterSupply, productSupply, type Supply } from '#engine/ground/supply.ts';
import { product, type Range, scale } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import type { Plot } from '#journal/fold.ts';
import { noCover, sayBinds, sayBuys, sayNotKnown, sayOpen, sayUses } from '#words/en/cover.ts';
import { coverBedOf } from '../ledger-cover.ts';
import { plotLedger } from './ledger.ts';

/** What the cover of a plot is asked for: local dates, both counted, and the solver. */
export interface PlotCoverAsk {
  readonly plot: Plot;
  readonly from: string;
  readonly to: string;
  readonly solve: Solve;
  /** Products to choose from, with prices that the grower told. */
  readonly shop?: readonly CoverSource[] | undefined;
}

/** The cover in sentences, its cost and the plan; both are absent where no plan was found, and `open` says so. */
export interface PlotCoverAnswer {
  readonly says: Readonly<Record<'uses' | 'buys' | 'binds' | 'open', readonly string[]>>;
  readonly cost: Range | null;
  readonly plan: CoverPlan | undefined;
}

/** Thickest layer of clippings on a bed, kg/m². @practice our caution, no source */
const CLIPPINGS_KG_PER_M2 = 5;
const MULCHES = ['grass-clippings-fresh', 'grass-clippings-wilted'];

/** How to close what the beds of the plot miss. */
export function plotCover({ plot, from, to, solve, shop = [] }: PlotCoverAsk): PlotCoverAnswer {
  const beds = plotLedger({ plot, from, to }).value.beds.map(coverBedOf);
  const sources = [...clippingsOf(plot), ...feedsOf(plot), ...shop];
  const answer = planCover({ beds, sources, aim: 'least-cost' }, solve);
  if (!answer.ok) return { says: { uses: [], buys: [], binds: [], open: [noCover] }, cost: null, plan: undefined };
  const { plan } = answer;
  const { uses, buys, binds, open, notKnown } = plan;
  return {
    says: {
      uses: sayUses(uses),
      buys: sayBuys(buys, uses),
      binds: sayBinds(binds, uses),
      open: [...sayOpen(open), ...sayNotKnown(notKnown)],
    },
    cost: plan.cost,
    plan,
  };
}

function clippingsOf(plot: Plot): readonly CoverSource[] {
  return [...plot.lots.values()].flatMap(({ id, act, leftKg, goes }): readonly CoverSource[] => {
    const { material } = act.body;
    if (goes !== 'liquid' || !(leftKg > 0) || material === undefined || !MULCHES.includes(material)) return [];
    const part = resolvePart({ material, massKg: 1, ...act.body.analysis });
    const perKg = perKgOf(matterSupply({ kind: 'mulch', day: 0, part, dugIn: false }));
    const layer = { mostKgPerM2: CLIPPINGS_KG_PER_M2, fresh: true };
    return [{ id, name: part.name, kind: 'clippings-mulch', perKg, haveKg: leftKg, ...layer }];
  });
}

/** A feed bought once, at the price it had: more of it can be bought. What is left of the bag nobody told. */
function feedsOf(plot: Plot): readonly CoverSource[] {
  return plot.products.flatMap(({ id, body }): readonly CoverSource[] => {
    const { name, what, mass, cost, nPercent, p2o5Percent, k2oPercent } = body;
    const labelled = nPercent !== undefined && p2o5Percent !== undefined && k2oPercent !== undefined;
    if (what !== 'feed' || !labelled || cost === undefined || mass === undefined || !(mass.massKg > 0)) return [];
    // Slow: whether a bag is a meal or a salt is not told, and the smaller share is the careful one.
    const label = { nPercent, p2o5Percent, k2oPercent, release: 'slow' } as const;
    const perKg = perKgOf(productSupply({ name, day: 0, massKg: 1, ...label }));
    const costPerKg = cost.amount / mass.massKg;
    return [{ id, name, kind: 'bought-organic', perKg, costPerKg, packKg: mass.massKg }];
  });
}

function perKgOf({ totalG, sharePercent }: Supply): CoverSource['perKg'] {
  const { n, p, k } = totalG;
  return {
    ...(n ? { nG: product([n, scale(sharePercent, 0.01)]) } : {}),
    ...(p ? { pG: p } : {}),
    ...(k ? { kG: k } : {}),
  };
}
