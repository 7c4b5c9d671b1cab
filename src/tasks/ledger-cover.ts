// How to close what the ledger shows as missing: beds with their gaps and sources as offered go to the engine's plan, and
// the plan comes back as the contract has it. The plan is ground/cover; sentences are words.

import type { CoverBed, CoverSource, SourceKind } from '#engine/ground/cover/input.ts';
import { planCover } from '#engine/ground/cover/plan.ts';
import type { Solve } from '#engine/ground/cover/program.ts';
import { freeNitrogenG, productSupply, type Supply } from '#engine/ground/supply.ts';
import type { Range } from '#engine/quantity/range.ts';
import { sayBinds, sayBuys, sayExcess, sayNotKnown, sayOpen, sayUses } from '#words/en/cover.ts';
import type { LedgerBedResult } from './ledger-answer.ts';
import type { LedgerInput, SourceIn } from './ledger-input.ts';
import { dressingSupply } from './ledger-supply.ts';

/** The contract's cover; amounts in kilograms, money as typed. */
export interface CoverResult {
  readonly uses: readonly { readonly bed: string; readonly source: string; readonly massKg: number }[];
  readonly buys: readonly {
    readonly source: string;
    readonly massKg: number;
    readonly packs?: number;
    readonly cost: number;
  }[];
  readonly cost: Range;
  readonly minutes: number;
  readonly left: readonly { readonly bed: string; readonly nutrient: 'n' | 'p' | 'k'; readonly leftG: number }[];
  readonly binds: readonly string[];
  /** What to do, bed by bed, what to buy, what stays open, what becomes too much. */
  readonly says: readonly string[];
  readonly notKnown: readonly string[];
}

/**
 * How many times what the harvest carries away a bed may get in a season, by its soil test; nothing where it tests high.
 * An untested bed counts as one that tests medium.
 * @practice our caution, no source
 */
const ROOM_OF_NEED = { low: 4, medium: 2, high: 0, excessive: 0 } as const;

/** The plan for the gaps of an answer. */
export function coverOf(of: {
  readonly beds: readonly LedgerBedResult[];
  readonly input: LedgerInput;
  /** Degree days of the season, by which what is given comes free. */
  readonly degreeDays: Range;
  readonly solve: Solve | undefined;
}): CoverResult | undefined {
  const { sources, limits, aim } = of.input;
  if (sources === undefined) return undefined;
  if (of.solve === undefined) throw new Error('coverOf: no solver was handed in');
  const answer = planCover(
    {
      beds: of.beds.map(coverBedOf),
      sources: sources.map((source) => sourceOf(source, of.degreeDays)),
      ...(limits && { limits }),
      aim,
    },
    of.solve,
  );
  if (!answer.ok) throw new Error(`coverOf: the solver gave no plan in stage ${answer.stage}: ${answer.told}`);
  const { plan } = answer;
  return {
    uses: plan.uses.map(({ bed, source, massKg }) => ({ bed: bed.name, source: source.name, massKg })),
    buys: plan.buys.map(({ source, massKg, packCount, cost }) => ({
      source: source.name,
      massKg,
      ...(packCount !== undefined && { packs: packCount }),
      cost,
    })),
    cost: plan.cost,
    minutes: plan.minutes,
    left: plan.open.map(({ bed, nutrient, leftG }) => ({ bed: bed.name, nutrient, leftG })),
    binds: sayBinds(plan.binds, plan.uses),
    says: [
      ...sayUses(plan.uses),
      ...sayBuys(plan.buys, plan.uses),
      ...sayOpen(plan.open),
      ...sayExcess(plan.balance, plan.uses),
    ],
    notKnown: sayNotKnown(plan.notKnown),
  };
}

/** A bed of the ledger as the cover takes it: what it misses, and what P and K may still come. */
export function coverBedOf({ name, areaM2, needG, givenG, missingG, soil }: LedgerBedResult): CoverBed {
  const known = <T>(grams: Readonly<Partial<Record<'n' | 'p' | 'k', T | null>>>): Partial<Record<'n' | 'p' | 'k', T>> =>
    Object.fromEntries(Object.entries(grams).flatMap(([element, one]) => (one === null ? [] : [[element, one]])));
  const needed = known({ n: needG.n?.likely ?? null, p: needG.p?.likely ?? null, k: needG.k?.likely ?? null });
  return {
    id: name,
    name,
    areaM2,
    missingG: known(missingG),
    needG: needed,
    roomG: known({ p: roomOf('p'), k: roomOf('k') }),
  };

  /** Nothing where neither need nor a full soil is known. */
  function roomOf(element: 'p' | 'k'): number | null {
    const times = ROOM_OF_NEED[(soil[element] ?? 'medium') as keyof typeof ROOM_OF_NEED];
    if (times === 0) return 0;
    const need = needG[element]?.likely;
    const given = givenG[element]?.high;
    return need === undefined || given === undefined ? null : Math.max(0, times * need - given);
  }
}

const KINDS: Readonly<Record<SourceIn['kind'], SourceKind>> = {
  compost: 'compost',
  mulch: 'clippings-mulch',
  solids: 'solids',
  'cover-crop': 'legume',
  product: 'bought-mineral',
};

function sourceOf(source: SourceIn, degreeDays: Range): CoverSource {
  const { name, kind, haveKg, costPerKg, packKg, minutesPerKg, mostKgPerM2 } = source;
  const supply = supplyOf(source);
  const nG = freeNitrogenG(supply, degreeDays);
  return {
    id: name,
    name,
    kind: kind === 'product' && source.release === 'slow' ? 'bought-organic' : KINDS[kind],
    perKg: {
      ...(nG && { nG }),
      ...(supply.totalG.n && { nTotalG: supply.totalG.n.likely }),
      ...(supply.totalG.p && { pG: supply.totalG.p }),
      ...(supply.totalG.k && { kG: supply.totalG.k }),
    },
    haveKg,
    ...(costPerKg !== undefined && { costPerKg }),
    ...(packKg !== undefined && { packKg }),
    ...(minutesPerKg !== undefined && { minutesPerKg }),
    ...(mostKgPerM2 !== undefined && { mostKgPerM2 }),
    coffee: kind !== 'product' && source.material === 'coffee-grounds',
  };
}

/** One kilogram of it as a supply of the ledger, so that both count alike. */
function supplyOf(source: SourceIn): Supply {
  if (source.kind === 'product') {
    const { name, nPercent, p2o5Percent, k2oPercent, release } = source;
    return productSupply({ name, day: 0, massKg: 1, nPercent, p2o5Percent, k2oPercent, release });
  }
  const { haveKg: _have, costPerKg: _cost, packKg: _pack, minutesPerKg: _work, mostKgPerM2: _most, ...given } = source;
  return dressingSupply({ ...given, massKg: 1 }, 0, undefined);
}
