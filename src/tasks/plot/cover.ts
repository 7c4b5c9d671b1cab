// How to close what the beds of a plot miss, out of its record: the question for the cover (plain data, so that it can go to
// a worker), and the answer as a sheet shows it: sentences, pieces of each bed, sums. The plan is the engine's.

import type { CoverBed, CoverInput, CoverSource, SourceKind } from '#engine/ground/cover/input.ts';
import { type CoverPlan, planCover } from '#engine/ground/cover/plan.ts';
import type { Solve } from '#engine/ground/cover/program.ts';
import { NUTRIENTS, type Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import { workCover } from '#engine/working/cover.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import { noCover, sayBinds, sayBuys, sayExcess, sayNotKnown, sayOpen, sayShort, sayUses } from '#words/en/cover.ts';
import { coverBedOf } from '../ledger-cover.ts';
import { type ExpectedStuff, expectedSource } from './cover-expected.ts';
import { COFFEE, coverSources, eatenRaw, layerOf } from './cover-sources.ts';
import { plotLedger } from './ledger.ts';

/** What the cover of a plot is asked for: local dates, both counted. */
export interface PlotCoverAsk {
  readonly plot: Plot;
  /** The same first day for all beds; each bed's own season without it. */
  readonly from?: string | undefined;
  readonly to: string;
  /** Products to choose from, with prices that the grower told. */
  readonly shop?: readonly CoverSource[] | undefined;
  /** Scraps, green manure and compost of the garden that are still to come. */
  readonly expected?: readonly ExpectedStuff[] | undefined;
  readonly limits?: CoverInput['limits'];
  /** Minutes for one bucket of the garden's own, fetched and spread. */
  readonly bucketMinutes?: number | undefined;
  readonly aim?: CoverInput['aim'] | undefined;
}

/** One material on one bed. */
export interface CoverPiece {
  readonly source: string;
  readonly kind: SourceKind;
  readonly massKg: number;
  readonly kgPerM2: number;
  /** What it brings of each nutrient, likely; below 0 where it ties some up. */
  readonly bringsG: Readonly<Record<Nutrient, number>>;
}

/** A bed with what closes its gaps; null where what it misses is not known. */
export interface CoverBedShown {
  readonly name: string;
  readonly areaM2: number;
  readonly missingG: Readonly<Record<Nutrient, number | null>>;
  readonly leftG: Readonly<Record<Nutrient, number | null>>;
  readonly pieces: readonly CoverPiece[];
}

/** The cover in sentences, its cost and the plan; cost and plan are absent where none was found, and `open` says so. */
export interface PlotCoverAnswer {
  readonly status: CoverPlan['status'] | 'no-plan' | 'no-beds';
  readonly says: Readonly<
    Record<'uses' | 'buys' | 'binds' | 'short' | 'open' | 'excess' | 'notKnown', readonly string[]>
  >;
  readonly cost: Range | null;
  readonly beds: readonly CoverBedShown[];
  readonly workings: readonly Working[];
  readonly plan: CoverPlan | undefined;
}

/** Clippings, wilted or fresh, by whose layer all fresh stuff on a bed is held. */
const FRESH = 'grass-clippings-fresh';

/** The question for the cover. */
export function coverInput({ plot, from, to, shop = [], expected = [], ...ask }: PlotCoverAsk): CoverInput {
  const { value, ids } = plotLedger({ plot, from, to });
  const beds = value.beds.map((bed) => withLayers(coverBedOf(bed)));
  const known = ids.flatMap((id, i) => {
    const [bed, asked] = [plot.beds.get(id), beds[i]];
    return bed === undefined || asked === undefined ? [] : [{ id: asked.id, bed }];
  });
  const coming = expected.map((stuff) => expectedSource(stuff, eatenRaw(known)));
  const own = [...coverSources({ plot, now: `${to}T23:59`, beds: known }), ...coming].map(timed(ask.bucketMinutes));
  const sources = [...own, ...shop];
  return { beds, sources, aim: ask.aim ?? 'least-cost', ...(ask.limits && { limits: ask.limits }) };
}

/** The work of a kilogram out of that of a bucket, where the bulk is known. @arithmetic */
function timed(bucketMinutes: number | undefined): (source: CoverSource) => CoverSource {
  return (source) =>
    bucketMinutes === undefined || source.unit === undefined
      ? source
      : { ...source, minutesPerKg: bucketMinutes / source.unit.massKg };
}

/** No thicker layer of fresh stuff, and of coffee grounds, than lets air through, whichever lots it comes from. */
function withLayers(bed: CoverBed): CoverBed {
  return { ...bed, mostFreshKg: layerOf(FRESH) * bed.areaM2, mostCoffeeKg: layerOf(COFFEE) * bed.areaM2 };
}

/** The answer to such a question. */
export function coverAnswer(input: CoverInput, solve: Solve): PlotCoverAnswer {
  const none = { uses: [], buys: [], binds: [], short: [], open: [], excess: [], notKnown: [] };
  if (input.beds.length === 0) {
    return { status: 'no-beds', says: none, cost: null, beds: [], workings: [], plan: undefined };
  }
  const answer = planCover(input, solve);
  if (!answer.ok) {
    const says = { ...none, short: [noCover] };
    return { status: 'no-plan', says, cost: null, beds: [], workings: [], plan: undefined };
  }
  const { plan } = answer;
  const { uses, buys, binds, open, balance, notKnown } = plan;
  return {
    status: plan.status,
    says: {
      uses: sayUses(uses),
      buys: sayBuys(buys, uses),
      binds: sayBinds(binds, uses),
      short: sayShort(open),
      open: sayOpen(open),
      excess: sayExcess(balance, uses),
      notKnown: sayNotKnown(notKnown),
    },
    cost: plan.cost,
    beds: input.beds.map((bed) => shown(bed, plan)),
    workings: workCover(plan),
    plan,
  };
}

/** Question and answer in one, where the solver is at hand. */
export function plotCover({ solve, ...ask }: PlotCoverAsk & { readonly solve: Solve }): PlotCoverAnswer {
  return coverAnswer(coverInput(ask), solve);
}

function shown(bed: CoverBed, { balance, uses }: CoverPlan): CoverBedShown {
  const of = (get: (one: CoverPlan['balance'][number]) => number) =>
    Object.fromEntries(
      NUTRIENTS.map((nutrient) => {
        const found = balance.find((one) => one.bed === bed && one.nutrient === nutrient);
        return [nutrient, found === undefined ? null : get(found)];
      }),
    ) as Record<Nutrient, number | null>;
  return {
    name: bed.name,
    areaM2: bed.areaM2,
    missingG: of(({ missingG }) => missingG),
    leftG: of(({ leftG }) => leftG),
    pieces: uses
      .filter((use) => use.bed === bed)
      .map(({ source, massKg }) => ({
        source: source.name,
        kind: source.kind,
        massKg,
        kgPerM2: massKg / bed.areaM2,
        bringsG: {
          n: (source.perKg.nG?.likely ?? 0) * massKg,
          p: (source.perKg.pG?.likely ?? 0) * massKg,
          k: (source.perKg.kG?.likely ?? 0) * massKg,
        },
      })),
  };
}
