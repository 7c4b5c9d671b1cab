// The cover of a season: what to put on which bed, what to buy, what it costs at least and at most, what stays short and
// what holds it back. Sentences stand in words/en/cover.ts; the solver is handed in.

import { point, type Range } from '../../quantity/range.ts';
import { NUTRIENTS, type Nutrient } from '../need.ts';
import { type BedNutrient, type Buy, balanceOf, buysOf, minutesOf, type Use, usesOf } from './amounts.ts';
import { type Bind, bindsOf } from './binds.ts';
import { type CoverBed, type CoverInput, type CoverSource, missingG, mostGPerKg } from './input.ts';
import { kept } from './model.ts';
import { type OpenGap, openGaps } from './open.ts';
import type { Solution, Solve } from './program.ts';
import { type Stage, type Staged, solveStages } from './stages.ts';

/** What the plan could not know, and so did not count on. */
export type NotKnown =
  | { readonly kind: 'missing'; readonly bed: CoverBed; readonly nutrient: Nutrient }
  | { readonly kind: 'room'; readonly bed: CoverBed; readonly nutrient: 'p' | 'k' }
  | { readonly kind: 'brings'; readonly source: CoverSource; readonly nutrient: Nutrient };

/** One source over all beds, from the rich figures to the lean ones. */
export interface SourceTotal {
  readonly source: CoverSource;
  readonly usedKg: Range;
  readonly boughtKg: Range;
}

export interface CoverPlan {
  readonly status: 'covered' | 'short' | 'nothing-missing';
  readonly uses: readonly Use[];
  readonly buys: readonly Buy[];
  /** Whole packs with the likely figures; by weight with the rich and the lean ones. */
  readonly cost: Range;
  readonly minutes: number;
  readonly totals: readonly SourceTotal[];
  /** Every bed and nutrient, with the likely figures. */
  readonly balance: readonly BedNutrient[];
  /** Most of P or K that comes on a bed with a limit, by the high ends. */
  readonly most: readonly {
    readonly bed: CoverBed;
    readonly nutrient: 'p' | 'k';
    readonly givenG: number;
    readonly roomG: number;
  }[];
  readonly open: readonly OpenGap[];
  readonly binds: readonly Bind[];
  readonly notKnown: readonly NotKnown[];
}

/** A plan, or where the solver gave none: never a plan of zeros. */
export type CoverAnswer =
  | { readonly ok: true; readonly plan: CoverPlan }
  | {
      readonly ok: false;
      readonly stage: Stage;
      readonly why: Exclude<Solution['status'], 'best'>;
      readonly told: string;
    };

type Answer = Extract<Staged, { readonly ok: true }>;

/**
 * Plans the cover: least shortfall first, then least cost or least bought, then least work. The likely figures make the
 * plan; the lean and the rich ones are solved too and give the range of cost and amounts.
 * @practice the order of stages; the figures are the caller's
 */
export function planCover(input: CoverInput, solve: Solve): CoverAnswer {
  const notKnown = unknowns(input);
  const missesSome = input.beds.some((bed) => NUTRIENTS.some((nutrient) => missingG(bed, nutrient, 'likely') > 0));
  if (!missesSome) return { ok: true, plan: nothingMissing(input, notKnown) };

  const likely = withWholePacks(input, solve);
  const lean = solveStages(input, solve, { outlook: 'lean' });
  const rich = solveStages(input, solve, { outlook: 'rich' });
  for (const one of [likely, lean, rich]) if (!one.ok) return failed(one);
  if (!(likely.ok && lean.ok && rich.ok)) throw new RangeError('planCover: a plan that failed went on');

  const uses = usesOf(likely);
  const buys = buysOf(likely);
  const balance = balanceOf(input, uses, 'likely');
  const open = openGaps(input, likely, balance);
  return {
    ok: true,
    plan: {
      status: open.length > 0 ? 'short' : 'covered',
      uses,
      buys,
      cost: spread(costOf(buys), [byWeight(lean), byWeight(rich)]),
      minutes: minutesOf(uses),
      totals: totals(input, { likely, lean, rich }),
      balance,
      most: mostOf(input, uses),
      open,
      binds: bindsOf(input, solve, likely),
      notKnown,
    },
  };
}

/**
 * The plan of the likely figures. Where whole packs would cost more than there is, the pack least used is left in the
 * shop and the rest planned anew, until the whole packs can be paid.
 */
function withWholePacks(input: CoverInput, solve: Solve): Staged {
  const money = input.limits?.money;
  const mostBoughtKg = new Map<string, number>();
  for (;;) {
    const staged = solveStages(input, solve, { outlook: 'likely', change: { mostBoughtKg } });
    if (!staged.ok || money === undefined) return staged;
    const buys = buysOf(staged);
    if (costOf(buys) <= Math.max(0, money) + 1e-6) return staged;
    const opened = buys
      .filter(({ massKg, usedKg, packCount }) => packCount !== undefined && massKg - usedKg > 1e-6)
      .toSorted((a, b) => shareOfLastPack(a) - shareOfLastPack(b));
    const [least] = opened;
    if (least?.packCount === undefined) return staged;
    mostBoughtKg.set(least.source.id, (least.packCount - 1) * (least.source.packKg ?? 0));
  }
}

function shareOfLastPack({ usedKg, packCount = 1, source }: Buy): number {
  return usedKg / (source.packKg ?? 1) - (packCount - 1);
}

function failed(staged: Staged): CoverAnswer {
  if (staged.ok) throw new RangeError('failed: this one did not fail');
  const { stage, solution } = staged;
  return { ok: false, stage, why: solution.status, told: 'why' in solution ? solution.why : '' };
}

function costOf(buys: readonly Buy[]): number {
  return buys.reduce((sum, { cost }) => sum + cost, 0);
}

function byWeight(answer: Answer): number {
  return buysOf(answer).reduce((sum, { usedKg, source }) => sum + usedKg * (source.costPerKg ?? 0), 0);
}

/** Three values as a band, whichever way they lie. */
function spread(likely: number, others: readonly number[]): Range {
  return { low: Math.min(likely, ...others), likely, high: Math.max(likely, ...others) };
}

function totals(
  input: CoverInput,
  answers: { readonly likely: Answer; readonly lean: Answer; readonly rich: Answer },
): readonly SourceTotal[] {
  const used = (answer: Answer) => sumBySource(usesOf(answer).map(({ source, massKg }) => [source, massKg]));
  const bought = (answer: Answer) => sumBySource(buysOf(answer).map(({ source, usedKg }) => [source, usedKg]));
  const sums = (of: (answer: Answer) => ReadonlyMap<CoverSource, number>) => {
    const [likely, lean, rich] = [of(answers.likely), of(answers.lean), of(answers.rich)];
    return (source: CoverSource) => spread(likely.get(source) ?? 0, [lean.get(source) ?? 0, rich.get(source) ?? 0]);
  };
  const [usedOf, boughtOf] = [sums(used), sums(bought)];
  return input.sources
    .map((source) => ({ source, usedKg: usedOf(source), boughtKg: boughtOf(source) }))
    .filter(({ usedKg }) => usedKg.high > 0);
}

function sumBySource(amounts: readonly (readonly [CoverSource, number])[]): ReadonlyMap<CoverSource, number> {
  const sums = new Map<CoverSource, number>();
  for (const [source, massKg] of amounts) sums.set(source, (sums.get(source) ?? 0) + massKg);
  return sums;
}

function mostOf(input: CoverInput, uses: readonly Use[]): CoverPlan['most'] {
  return input.beds.flatMap((bed) =>
    (['p', 'k'] as const).flatMap((nutrient) => {
      const roomG = bed.roomG?.[nutrient];
      if (roomG === undefined) return [];
      const givenG = uses
        .filter((use) => use.bed === bed)
        .reduce((sum, { source, massKg }) => sum + mostGPerKg(source, nutrient) * massKg, 0);
      return [{ bed, nutrient, givenG, roomG: kept(roomG) ?? 0 }];
    }),
  );
}

/** What was not told. A bed of which P or K room is not known is told of only where that nutrient could come. */
function unknowns({ beds, sources }: CoverInput): readonly NotKnown[] {
  return [
    ...beds.flatMap((bed) => [
      ...NUTRIENTS.filter((nutrient) => Number.isNaN(missingG(bed, nutrient, 'likely'))).map(
        (nutrient) => ({ kind: 'missing', bed, nutrient }) as const,
      ),
      ...(['p', 'k'] as const)
        .filter((nutrient) => bed.roomG?.[nutrient] === undefined)
        .map((nutrient) => ({ kind: 'room', bed, nutrient }) as const),
    ]),
    ...sources.flatMap((source) =>
      NUTRIENTS.filter((nutrient) => !Number.isFinite(source.perKg[`${nutrient}G`]?.likely)).map(
        (nutrient) => ({ kind: 'brings', source, nutrient }) as const,
      ),
    ),
  ];
}

function nothingMissing(input: CoverInput, notKnown: readonly NotKnown[]): CoverPlan {
  return {
    status: 'nothing-missing',
    uses: [],
    buys: [],
    cost: point(0),
    minutes: 0,
    totals: [],
    balance: balanceOf(input, [], 'likely'),
    most: mostOf(input, []),
    open: [],
    binds: [],
    notKnown,
  };
}
