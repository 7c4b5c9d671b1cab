// What stands on the filling sheet, as typed: the plan handed over by the weigh-in, and beside it what the scale said.
// Kept as a draft until the act is durable. What it reads as is reading.ts.

import type { ShapeKind } from '#engine/pail/shape.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import type { AmountRead } from '#engine/quantity/kept.ts';
import { plainFigure } from '#engine/quantity/number.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { BatchPart } from '#journal/parts/contents.ts';
import type { FillOffers } from '#tasks/plot/fill.ts';
import { NO_TEXT } from '../parts/typed.ts';
import { USUAL_GAS_ROOM } from '../parts/usual-gas-room.ts';
import type { Field } from '../weigh-in/draft.ts';

/** What the weigh-in hands over, under the draft key 'weighed-plan'. */
export interface WeighInPlan {
  readonly vessel?: AmountRead | undefined;
  readonly gasRoom?: number;
  readonly lid?: Body<'peg.filled'>['lid'];
  readonly shape?: ShapeKind;
  readonly plants?: readonly {
    /** The lot's key on the weigh-in. */
    readonly key: number;
    readonly material: string;
    readonly name?: string;
    /** What is in the bowl. */
    readonly amount: AmountRead | undefined;
    readonly treated?: BatchPart['treated'];
  }[];
  readonly water?: AmountRead | undefined;
  readonly alkalinityMeqPerL?: number;
  readonly sugar?: { readonly product: string; readonly amount: AmountRead | undefined };
  /** What was answered once for the whole weigh-in. */
  readonly countries?: Countries;
}

export const PLAN_KEY = 'weighed-plan';

/** One lot on the sheet. */
export interface FillRow {
  readonly key: number;
  readonly lot: string | undefined;
  readonly material: string | undefined;
  readonly name: string | undefined;
  readonly treated: BatchPart['treated'];
  readonly planned: AmountRead | undefined;
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
  readonly waterPlanned: AmountRead | undefined;
  readonly alkalinityMeqPerL: number | undefined;
  /** Id of a water report; undefined where it was not said. */
  readonly waterFrom: string | undefined;
  /** Id of a product, or 'none'. */
  readonly sugarProduct: string;
  readonly sugar: Field;
  readonly sugarPlanned: AmountRead | undefined;
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
  waterPlanned: undefined,
  alkalinityMeqPerL: undefined,
  waterFrom: undefined,
  sugarProduct: 'none',
  sugar: NO_TEXT,
  sugarPlanned: undefined,
  starterFrom: 'none',
  starter: NO_TEXT,
  peg: NO_TEXT,
  countries: undefined,
};

/** A field that holds a text that is to be read here. */
export function readField(text: string): Field {
  return { text, settled: text };
}

/** A field that holds an amount as it was read on another sheet. */
export function takenField(read: AmountRead): Field {
  return { text: read.asTyped, settled: read.asTyped, read };
}

/** The sheet as the plan has it: everything planned, nothing weighed yet. */
export function fromPlan(plan: WeighInPlan, offers: FillOffers): Partial<FillDraft> {
  const vessel = offers.vessels.find(
    (one) => one.peg === undefined && plan.vessel !== undefined && Math.abs(one.volumeL - plan.vessel.value) < 0.05,
  );
  return {
    planText: JSON.stringify(plan),
    ...(plan.vessel === undefined
      ? {}
      : vessel === undefined
        ? { vessel: 'new', newVolume: takenField(plan.vessel), newShape: plan.shape }
        : { vessel: vessel.id, place: readField(vessel.place ?? '') }),
    ...(plan.gasRoom === undefined
      ? {}
      : { gasRoom: readField(`${plainFigure(Number((plan.gasRoom * 100).toFixed(4)))} %`) }),
    lid: plan.lid ?? vessel?.lid,
    rows: (plan.plants ?? []).map((one) => {
      const lots = offers.lots.filter(
        (lot) => lot.material === one.material && lot.leftKg >= (one.amount?.value ?? 0) - 1e-9,
      );
      const lot = lots.length === 1 ? lots[0] : undefined;
      return {
        key: one.key,
        lot: lot?.id,
        material: one.material,
        name: lot?.name ?? one.name,
        treated: one.treated ?? lot?.treated,
        planned: one.amount,
        amount: NO_TEXT,
      };
    }),
    waterPlanned: plan.water,
    alkalinityMeqPerL: plan.alkalinityMeqPerL,
    sugarProduct: plan.sugar?.product ?? 'none',
    sugarPlanned: plan.sugar?.amount,
    ...(Object.keys(plan.countries ?? {}).length === 0 ? {} : { countries: plan.countries }),
  };
}

/** A field that stands empty while the plan has something for it. */
const isWaiting = (planned: AmountRead | undefined, { text }: Field): planned is AmountRead =>
  planned !== undefined && text === '';

/** Whether the plan has something that the scale has not yet. */
export function waitsForPlan({ rows, water, sugar, waterPlanned, sugarPlanned }: FillDraft): boolean {
  return (
    rows.some(({ planned, amount }) => isWaiting(planned, amount)) ||
    isWaiting(waterPlanned, water) ||
    isWaiting(sugarPlanned, sugar)
  );
}

/** What the plan has and the scale has not yet: all of it went in as planned, as it was read at the weigh-in. */
export function allAsPlanned({ rows, water, sugar, waterPlanned, sugarPlanned }: FillDraft): Partial<FillDraft> {
  const filled = (planned: AmountRead | undefined, field: Field) =>
    isWaiting(planned, field) ? takenField(planned) : field;
  return {
    rows: rows.map((row) => ({ ...row, amount: filled(row.planned, row.amount) })),
    water: filled(waterPlanned, water),
    sugar: filled(sugarPlanned, sugar),
  };
}
