// What the beds got, as a sheet draws it: for one nutrient every bed in walking order as a strip whose length is its need,
// with what was given by kind, as fractions of that need; the plot in one line. The sums are the ledger's.

import type { Nutrient } from '#engine/ground/need.ts';
import { inverse, product, type Range } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import { areaOf, type BedArea } from '#plot/place/bed-area.ts';
import { hemisphereOf } from '#plot/place/hemisphere.ts';
import type { Caution } from '../caution.ts';
import type { LedgerBedResult, LedgerResult, SharePercent } from '../ledger-answer.ts';
import { onDay } from './dates.ts';
import { type BedStrip, bedStrips } from './facts.ts';
import { plotLedger } from './ledger.ts';

/** A stretch of a strip, as fractions of the need of its bed. */
export interface GotPiece {
  readonly kind: string;
  readonly fromFraction: number;
  readonly toFraction: number;
}

export interface GotBed {
  readonly id: string;
  readonly name: string;
  readonly crops: readonly string[];
  readonly strip: Pick<BedStrip, 'lengthM' | 'lengthTold' | 'pots'>;
  /** Set where the area was reckoned from pots. */
  readonly pots: (NonNullable<BedArea['pots']> & { readonly areaM2: number }) | undefined;
  /** Null where it is not known. */
  readonly needG: Range | null;
  readonly givenG: Range | null;
  readonly missingG: Range | null;
  readonly excessG: Range | null;
  readonly liquidG: Range | null;
  readonly liquidPercent: SharePercent | null;
  readonly byKind: readonly { readonly kind: string; readonly givenG: Range }[];
  /** All that was given as a fraction of the need; undefined where either is not known, or nothing is needed. */
  readonly covered: Range | undefined;
  /** What was given, the liquid first; what ties nitrogen up is told, not drawn. Empty without a need. */
  readonly pieces: readonly GotPiece[];
}

export interface GotPlot extends Pick<GotBed, 'needG' | 'givenG' | 'missingG' | 'excessG' | 'liquidPercent'> {
  /** Beds whose need is not known: need and missing are of the others. */
  readonly without: readonly string[];
}

export interface GotView {
  /** First day of the earliest season of a bed, and today. */
  readonly from: string;
  readonly to: string;
  /** Whether all beds are counted from that day. */
  readonly isOneSeason: boolean;
  /** Nobody told on which side of the equator the plot lies: when a season turns is not known. */
  readonly asksHemisphere: boolean;
  readonly beds: readonly GotBed[];
  readonly plot: GotPlot;
  /** Beds that stand in no sum, as neither area nor pots were told. */
  readonly unsized: readonly string[];
  readonly cautions: readonly Caution[];
  readonly kinds: readonly string[];
}

/** The sums once, for every nutrient: they cost the most. */
export function gotSums({ plot, today }: { readonly plot: Plot; readonly today: string }) {
  const { value, ids, seasons, unsized } = plotLedger({ plot, to: today });
  const strips = new Map(bedStrips(plot).map((strip) => [strip.id, strip]));
  const beds = ids.flatMap((id, i) => {
    const [strip, sums] = [strips.get(id), value.beds[i]];
    return strip === undefined || sums === undefined ? [] : [{ id, strip, sums }];
  });
  const first = Math.min(...seasons.map(({ fromDay }) => fromDay));
  return {
    from: Number.isFinite(first) ? onDay(first) : today,
    to: today,
    isOneSeason: new Set(seasons.map(({ fromDay }) => fromDay)).size < 2,
    asksHemisphere: beds.length > 0 && hemisphereOf(plot.facts) === undefined,
    beds,
    value,
    unsized,
  };
}

/** The view of one nutrient. */
export function gotView({ beds, value, unsized, ...counted }: ReturnType<typeof gotSums>, nutrient: Nutrient): GotView {
  const { plot } = value;
  return {
    ...counted,
    beds: beds.map((bed) => bedOf(bed, nutrient)),
    plot: {
      needG: plot.needG[nutrient],
      givenG: plot.givenG[nutrient],
      missingG: plot.missingG[nutrient],
      excessG: plot.excessG[nutrient],
      liquidPercent: plot.liquidSharePercent[nutrient],
      without: plot.without[nutrient],
    },
    unsized,
    cautions: value.cautions,
    kinds: kindsOf(value, nutrient),
  };
}

const LIQUID = 'pour';

interface Summed {
  readonly id: string;
  readonly strip: BedStrip;
  readonly sums: LedgerBedResult;
}

/** One bed. @arithmetic fractions of the likely need; the range of the quotient in quadrature (quantity/range.ts) */
function bedOf({ id, strip, sums }: Summed, nutrient: Nutrient): GotBed {
  const byKind = sums.byKind.flatMap(({ kind, givenG: grams }) => {
    const given = grams[nutrient];
    return given === null ? [] : [{ kind, givenG: given }];
  });
  const [needG, givenG] = [sums.needG[nutrient], sums.givenG[nutrient]];
  const needs = needG !== null && needG.likely > 0;
  const area = areaOf(strip.facts);
  return {
    id,
    name: sums.name,
    crops: sums.crops,
    strip,
    pots: area?.pots && { ...area.pots, areaM2: area.areaM2 },
    needG,
    givenG,
    missingG: sums.missingG[nutrient],
    excessG: sums.excessG[nutrient],
    liquidG: sums.liquidG[nutrient],
    liquidPercent: sums.liquidSharePercent[nutrient],
    byKind,
    covered: needs && givenG !== null ? coveredOf(givenG, needG) : undefined,
    pieces: needs ? piecesOf(byKind, needG.likely) : [],
  };
}

/** Given over needed. What is tied up may outweigh what is given: end by end then, as the logarithm has no place below 0. */
function coveredOf(givenG: Range, needG: Range): Range {
  if (givenG.low >= 0 && givenG.likely > 0) return product([givenG, inverse(needG)]);
  return {
    low: givenG.low < 0 ? givenG.low / needG.low : 0,
    likely: givenG.likely / needG.likely,
    high: givenG.high / (givenG.high > 0 ? needG.low : needG.high),
  };
}

function piecesOf(byKind: GotBed['byKind'], needG: number): readonly GotPiece[] {
  let atG = 0;
  return byKind
    .filter(({ givenG }) => givenG.likely > 0)
    .toSorted(liquidFirst)
    .map(({ kind, givenG }): GotPiece => {
      const fromFraction = atG / needG;
      atG += givenG.likely;
      return { kind, fromFraction, toFraction: atG / needG };
    });
}

function liquidFirst(a: { readonly kind: string }, b: { readonly kind: string }): number {
  return Number(b.kind === LIQUID) - Number(a.kind === LIQUID);
}

function kindsOf({ beds }: LedgerResult, nutrient: Nutrient): readonly string[] {
  const given = beds.flatMap(({ byKind }) => byKind.filter(({ givenG }) => (givenG[nutrient]?.likely ?? 0) > 0));
  return [...new Set(given.toSorted(liquidFirst).map(({ kind }) => kind))];
}
