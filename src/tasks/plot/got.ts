// What the beds got, as a sheet draws it: for one nutrient every bed in walking order with its need and what was given, by
// kind, on one scale; the liquid by itself with its share of the need. The sums are the ledger's.

import type { Nutrient } from '#engine/ground/need.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Plot } from '#journal/fold.ts';
import type { Caution } from '../caution.ts';
import type { LedgerBedResult, LedgerResult, SharePercent } from '../ledger-answer.ts';
import { plotLedger } from './ledger.ts';

/** A stretch of a bar, as fractions of the widest. */
export interface GotPiece {
  readonly kind: string;
  readonly fromFraction: number;
  readonly toFraction: number;
}

export interface GotBed {
  readonly name: string;
  readonly crops: readonly string[];
  /** Null where it is not known. */
  readonly needG: Range | null;
  readonly givenG: Range | null;
  readonly missingG: Range | null;
  readonly excessG: Range | null;
  readonly liquidG: Range | null;
  readonly liquidPercent: SharePercent | null;
  readonly byKind: readonly { readonly kind: string; readonly givenG: Range }[];
  /** Need on the scale of the drawing. */
  readonly need: Range | undefined;
  /** What was given, the liquid first; what ties nitrogen up is told, not drawn. */
  readonly pieces: readonly GotPiece[];
}

export interface GotView {
  readonly from: string;
  readonly to: string;
  readonly beds: readonly GotBed[];
  /** Grams at the right end of every bar. */
  readonly widestG: number;
  readonly unsized: readonly string[];
  readonly cautions: readonly Caution[];
  readonly kinds: readonly string[];
}

/** From the first day of the year to today, both counted. */
export function yearSoFar(today: string): { readonly from: string; readonly to: string } {
  return { from: `${today.slice(0, 4)}-01-01`, to: today };
}

/** The sums once, for every nutrient: they cost the most. */
export function gotSums({ plot, today }: { readonly plot: Plot; readonly today: string }) {
  return { ...yearSoFar(today), ...plotLedger({ plot, ...yearSoFar(today) }) };
}

/** The view of one nutrient. @arithmetic fractions of the widest bar */
export function gotView(sums: ReturnType<typeof gotSums>, nutrient: Nutrient): GotView {
  const { value, unsized, from, to } = sums;
  const widestG = Math.max(0, ...value.beds.map((bed) => widestOf(bed, nutrient)));
  return {
    from,
    to,
    widestG,
    beds: value.beds.map((bed) => bedOf(bed, nutrient, widestG)),
    unsized,
    cautions: value.cautions,
    kinds: kindsOf(value, nutrient),
  };
}

function widestOf(bed: LedgerBedResult, nutrient: Nutrient): number {
  const given = bed.byKind.reduce((sum, { givenG }) => sum + Math.max(0, givenG[nutrient]?.likely ?? 0), 0);
  return Math.max(bed.needG[nutrient]?.high ?? 0, given);
}

const LIQUID = 'pour';

function bedOf(bed: LedgerBedResult, nutrient: Nutrient, widestG: number): GotBed {
  const kinds = bed.byKind.flatMap(({ kind, givenG }) => {
    const grams = givenG[nutrient];
    return grams === null ? [] : [{ kind, givenG: grams }];
  });
  const needG = bed.needG[nutrient];
  const onScale = (grams: number) => (widestG > 0 ? grams / widestG : 0);
  let atG = 0;
  const pieces = kinds
    .filter(({ givenG }) => givenG.likely > 0)
    .toSorted((a, b) => Number(b.kind === LIQUID) - Number(a.kind === LIQUID))
    .map(({ kind, givenG }): GotPiece => {
      const fromFraction = onScale(atG);
      atG += givenG.likely;
      return { kind, fromFraction, toFraction: onScale(atG) };
    });
  return {
    name: bed.name,
    crops: bed.crops,
    needG,
    givenG: bed.givenG[nutrient],
    missingG: bed.missingG[nutrient],
    excessG: bed.excessG[nutrient],
    liquidG: bed.liquidG[nutrient],
    liquidPercent: bed.liquidSharePercent[nutrient],
    byKind: kinds,
    need:
      needG === null
        ? undefined
        : { low: onScale(needG.low), likely: onScale(needG.likely), high: onScale(needG.high) },
    pieces,
  };
}

function kindsOf({ beds }: LedgerResult, nutrient: Nutrient): readonly string[] {
  const given = beds.flatMap(({ byKind }) =>
    byKind.flatMap(({ kind, givenG }) => ((givenG[nutrient]?.likely ?? 0) > 0 ? [kind] : [])),
  );
  return [...new Set(given)].sort((a, b) => Number(b === LIQUID) - Number(a === LIQUID));
}
