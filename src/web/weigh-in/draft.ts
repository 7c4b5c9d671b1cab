// What stands on the sheet, as typed. Nothing here is computed and nothing is kept beyond the page; what the
// typed text means is read in reading.ts. The example is the demo garden's peg 14, all invented.

import type { ShapeKind } from '#engine/pail/shape.ts';
import type { AmountRead } from '#engine/quantity/kept.ts';
import type { NumberStyle } from '#engine/quantity/number.ts';
import type { GallonCountry, SpoonCountry } from '#engine/quantity/units.ts';
import type { Treated } from '#engine/scraps/part.ts';
import type { AlkalinityUnit } from '#engine/scraps/water.ts';
import { USUAL_GAS_ROOM } from '../parts/usual-gas-room.ts';

/** A field: the text as it stands, and the text as it was last read. Half-typed text is not read yet. */
export interface Field {
  readonly text: string;
  readonly settled: string;
  /** What the settled text was read as where it was typed: on another sheet it is never read again. */
  readonly read?: AmountRead | undefined;
}

/** One lot of scraps on the sheet. */
export interface Lot {
  readonly key: number;
  readonly material: string;
  readonly weight: Field;
  /** Weight of the bowl it is weighed in; undefined without a bowl. */
  readonly bowl: Field | undefined;
  readonly treated: Treated | undefined;
}

export type Lid = 'loose' | 'vent' | 'tight';

export interface Draft {
  readonly vessel: {
    readonly volume: Field;
    /** As chosen; undefined where it goes by the litres. */
    readonly shape: ShapeKind | undefined;
    readonly gasRoom: Field;
    readonly lid: Lid | undefined;
  };
  readonly lots: readonly Lot[];
  readonly water: { readonly volume: Field; readonly alkalinity: Field; readonly alkalinityUnit: AlkalinityUnit };
  readonly sugar: { readonly product: string | undefined; readonly weight: Field };
  /** Settled once for the whole sheet, when a gallon, a spoon or a figure with two readings is first typed. */
  readonly gallon: GallonCountry | undefined;
  readonly spoon: SpoonCountry | undefined;
  readonly style?: NumberStyle | undefined;
  readonly isExample: boolean;
  /** Taken from the two cases: how warm it will stand, and the size of the pieces. */
  readonly standing?: { readonly warmth: string; readonly chop: 'coarse' | 'chopped' | 'fine' } | undefined;
}

/** A field that holds a text already read. */
export function field(text: string): Field {
  return { text, settled: text };
}

/** Nothing told yet; the gas room is our usual quarter, said on the sheet. */
export const EMPTY: Draft = {
  vessel: { volume: field(''), shape: undefined, gasRoom: field(USUAL_GAS_ROOM), lid: undefined },
  lots: [],
  water: { volume: field(''), alkalinity: field(''), alkalinityUnit: 'mg/L CaCO3' },
  sugar: { product: undefined, weight: field('') },
  gallon: undefined,
  spoon: undefined,
  isExample: false,
};

/** Peg 14 of the demo garden, before its starter: 12 L pail, clippings, cabbage, trimmings, tap water, sugar. */
export function exampleDraft(firstKey: number): Draft {
  const lots: readonly (readonly [string, string, Treated | undefined])[] = [
    ['grass-clippings-fresh', '2.1 kg', 'no'],
    ['cabbage-leaves', '0.7 kg', undefined],
    ['kitchen-trimmings', '0.4 kg', undefined],
  ];
  return {
    ...EMPTY,
    vessel: { ...EMPTY.vessel, volume: field('12 L'), lid: 'loose' },
    lots: lots.map(([material, weight, treated], i) => ({
      key: firstKey + i,
      material,
      weight: field(weight),
      bowl: undefined,
      treated,
    })),
    water: { volume: field('5.2 L'), alkalinity: field('212'), alkalinityUnit: 'mg/L CaCO3' },
    sugar: { product: 'white-sugar', weight: field('150 g') },
    isExample: true,
  };
}
