// What stands on the filling sheet, as typed: the plan handed over by the weigh-in, and beside it what the scale said.
// Kept as a draft until the act is durable. What it reads as is reading.ts.

import type { ShapeKind } from '#engine/pail/shape.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { plainFigure } from '#engine/quantity/number.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { BatchPart } from '#journal/parts/contents.ts';
import type { FillOffers } from '#tasks/plot/fill.ts';
import { NO_TEXT } from '../parts/typed.ts';
import { USUAL_GAS_ROOM } from '../parts/usual-gas-room.ts';
import type { Field } from '../weigh-in/draft.ts';

/** What the weigh-in hands over, under the draft key 'weigh-in-plan'. */
export interface WeighInPlan {
  readonly vesselL?: number;
  readonly gasRoom?: number;
  readonly lid?: Body<'peg.filled'>['lid'];
  readonly shape?: ShapeKind;
  readonly plants?: readonly {
    readonly material: string;
    readonly name?: string;
    readonly massKg: number;
    readonly typed?: string;
    readonly treated?: BatchPart['treated'];
  }[];
  readonly waterL?: number;
  readonly waterTyped?: string;
  readonly alkalinityMeqPerL?: number;
  readonly sugar?: { readonly product: string; readonly massKg: number; readonly typed?: string };
}

export const PLAN_KEY = 'weigh-in-plan';

/** One lot on the sheet. */
export interface FillRow {
  readonly key: number;
  readonly lot: string | undefined;
  readonly material: string | undefined;
  readonly name: string | undefined;
  readonly treated: BatchPart['treated'];
  readonly plannedKg: number | undefined;
  readonly plannedTyped: string | undefined;
  readonly amount: Field;
}

export interface FillDraft {
  /** The plan these rows were made from, as text; a newer one replaces them. */
  readonly planText: string | undefined;
  /** Id of a described vessel, or 'new'. */
  readonly vessel: string | undefined;
  readonly newName: Field;
  readonly newVolume: Field;
  /** As chosen; undefined where it goes by the litres. */
  readonly newShape: ShapeKind | undefined;
  readonly gasRoom: Field;
  readonly lid: Body<'peg.filled'>['lid'];
  readonly place: Field;
  readonly warmth: Field;
  readonly rows: readonly FillRow[];
  readonly water: Field;
  readonly waterPlannedL: number | undefined;
  readonly waterPlannedTyped: string | undefined;
  readonly alkalinityMeqPerL: number | undefined;
  /** Id of a water report; undefined where it was not said. */
  readonly waterFrom: string | undefined;
  /** Id of a product, or 'none'. */
  readonly sugarProduct: string;
  readonly sugar: Field;
  readonly sugarPlannedKg: number | undefined;
  readonly sugarPlannedTyped: string | undefined;
  /** Id of a bottle or batch, 'elsewhere' or 'none'. */
  readonly starterFrom: string;
  readonly starter: Field;
  readonly peg: Field;
  readonly countries: Countries | undefined;
  /** Reasons for passing over stops, by the id of the rule. */
  readonly passed: { readonly [rule: string]: string };
}

export const EMPTY_FILL: FillDraft = {
  passed: {},
  planText: undefined,
  vessel: undefined,
  newName: NO_TEXT,
  newVolume: NO_TEXT,
  newShape: undefined,
  gasRoom: { text: USUAL_GAS_ROOM, settled: USUAL_GAS_ROOM },
  lid: undefined,
  place: NO_TEXT,
  warmth: NO_TEXT,
  rows: [],
  water: NO_TEXT,
  waterPlannedL: undefined,
  waterPlannedTyped: undefined,
  alkalinityMeqPerL: undefined,
  waterFrom: undefined,
  sugarProduct: 'none',
  sugar: NO_TEXT,
  sugarPlannedKg: undefined,
  sugarPlannedTyped: undefined,
  starterFrom: 'none',
  starter: NO_TEXT,
  peg: NO_TEXT,
  countries: undefined,
};

/** A field that holds a text already read. */
export function readField(text: string): Field {
  return { text, settled: text };
}

/** The sheet as the plan has it: everything planned, nothing weighed yet. */
export function fromPlan(plan: WeighInPlan, offers: FillOffers): Partial<FillDraft> {
  const vessel = offers.vessels.find(
    (one) => one.peg === undefined && plan.vesselL !== undefined && Math.abs(one.volumeL - plan.vesselL) < 0.05,
  );
  return {
    planText: JSON.stringify(plan),
    ...(plan.vesselL === undefined
      ? {}
      : vessel === undefined
        ? { vessel: 'new', newVolume: readField(`${plainFigure(plan.vesselL)} L`), newShape: plan.shape }
        : { vessel: vessel.id, place: readField(vessel.place ?? '') }),
    ...(plan.gasRoom === undefined ? {} : { gasRoom: readField(`${Math.round(plan.gasRoom * 100)} %`) }),
    lid: plan.lid ?? vessel?.lid,
    rows: (plan.plants ?? []).map((one, i) => {
      const lots = offers.lots.filter((lot) => lot.material === one.material && lot.leftKg >= one.massKg - 1e-9);
      const lot = lots.length === 1 ? lots[0] : undefined;
      return {
        key: i + 1,
        lot: lot?.id,
        material: one.material,
        name: lot?.name ?? one.name,
        treated: one.treated ?? lot?.treated,
        plannedKg: one.massKg,
        plannedTyped: one.typed,
        amount: NO_TEXT,
      };
    }),
    waterPlannedL: plan.waterL,
    waterPlannedTyped: plan.waterTyped,
    alkalinityMeqPerL: plan.alkalinityMeqPerL,
    sugarProduct: plan.sugar?.product ?? 'none',
    sugarPlannedKg: plan.sugar?.massKg,
    sugarPlannedTyped: plan.sugar?.typed,
  };
}

/** A field that stands empty while the plan has something for it. */
const isWaiting = (planned: number | undefined, { text }: FillDraft['water']): planned is number =>
  planned !== undefined && text === '';

/** Whether the plan has something that the scale has not yet. */
export function waitsForPlan({ rows, water, sugar, waterPlannedL, sugarPlannedKg }: FillDraft): boolean {
  return (
    rows.some(({ plannedKg, amount }) => isWaiting(plannedKg, amount)) ||
    isWaiting(waterPlannedL, water) ||
    isWaiting(sugarPlannedKg, sugar)
  );
}

/** What the plan has and the scale has not yet: all of it went in as planned. */
export function allAsPlanned(draft: FillDraft): Partial<FillDraft> {
  const { rows, water, sugar, waterPlannedL, waterPlannedTyped, sugarPlannedKg, sugarPlannedTyped } = draft;
  const kg = (massKg: number, typed: string | undefined) => readField(typed ?? `${plainFigure(massKg)} kg`);
  return {
    rows: rows.map((row) =>
      isWaiting(row.plannedKg, row.amount) ? { ...row, amount: kg(row.plannedKg, row.plannedTyped) } : row,
    ),
    water: isWaiting(waterPlannedL, water) ? readField(waterPlannedTyped ?? `${plainFigure(waterPlannedL)} L`) : water,
    sugar: isWaiting(sugarPlannedKg, sugar) ? kg(sugarPlannedKg, sugarPlannedTyped) : sugar,
  };
}
