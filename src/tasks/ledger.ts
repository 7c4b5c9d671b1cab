// The word `ledger`: what each bed needed, what it was given and by what, what is missing or too much, and the share the
// liquid brought. Schema, call and result; the same for form and command line.

import type { Solve } from '#engine/ground/cover/program.ts';
import { yearBeforeNGPerM2 } from '#engine/ground/credits.ts';
import { readCrops } from '#engine/ground/crop-names.ts';
import { ownCropsByName } from '#engine/ground/crops.ts';
import { nitrateNGPerM2 } from '#engine/ground/soil-test.ts';
import { UNTOLD_SOIL_C } from '#engine/ground/usual-soil.ts';
import { asRange } from '#engine/quantity/range.ts';
import { workLedger } from '#engine/working/ledger.ts';
import type { Working } from '#engine/working/working.ts';
import { momentOf } from '#journal/moment.ts';
import { warmthOf } from '#plot/place/warmth.ts';
import { type AskedLedger, type LedgerResult, ledgerResult } from './ledger-answer.ts';
import { coverOf } from './ledger-cover.ts';
import { type LedgerInput, ledgerSchema } from './ledger-input.ts';
import { suppliesOf } from './ledger-supply.ts';
import { type Problem, read } from './problem.ts';
import { residuesOf } from './residues.ts';

export type { LedgerResult } from './ledger-answer.ts';
export { ledgerSchema } from './ledger-input.ts';

type Answer =
  | { readonly ok: true; readonly value: LedgerResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

function askedOf(input: LedgerInput, unread: readonly string[]): AskedLedger {
  const period = { fromDay: momentOf(input.from).dateDay, toDay: momentOf(input.to).dateDay + 1 };
  const supplies = suppliesOf(input);
  const meanC = input.meanC === undefined ? UNTOLD_SOIL_C : asRange(input.meanC);
  const days = (input.temperatures ?? []).map(({ on, ...day }) => ({ day: momentOf(on).dateDay, ...day }));
  const beds = input.beds.map((bed) => ({ ...bed, supplies: supplies(bed.name) }));
  const earliestDay = Math.min(period.fromDay, ...beds.flatMap((bed) => bed.supplies.map(({ day }) => day)));
  return {
    beds: beds.map((bed) => ({
      name: bed.name,
      areaM2: bed.areaM2,
      crop: bed.crop,
      yieldGoalKgPerM2: bed.yieldKgPerM2,
      plantedDay: bed.plantedOn === undefined ? undefined : momentOf(bed.plantedOn).dateDay,
      soilPh: bed.soil?.ph,
      organicMatterPercent: bed.soil?.organicMatterPercent,
      nitrateNGPerM2: bed.soil?.nitrate === undefined ? undefined : nitrateNGPerM2(bed.soil.nitrate),
      // As told, else by the table for the crop named.
      residueNGPerM2: bed.residueNGPerM2 === undefined ? residuesOf(bed.previousCrop) : asRange(bed.residueNGPerM2),
      yearBeforeNGPerM2: yearBeforeNGPerM2(readCrops(bed.cropYearBefore ?? '')),
      p: bed.soil?.p,
      k: bed.soil?.k,
      supplies: bed.supplies,
    })),
    period,
    warmth: warmthOf({ ...period, fromDay: earliestDay }, days, () => meanC),
    warmthTold: input.meanC !== undefined || days.length > 0,
    usualC: meanC,
    own: ownCropsByName(input.crops ?? []),
    unread,
  };
}

/**
 * What the ground got, and with sources told how to close the rest: any input in, the contract's answer or all its
 * problems out.
 * @param solve the linear solver, needed where sources are told
 */
export function ledger(input: unknown, solve?: Solve): Answer {
  const checked = read(ledgerSchema, input);
  if (!checked.ok) return checked;
  const asked = askedOf(checked.value, checked.unread);
  const { value } = ledgerResult(asked);
  const degreeDays = asked.warmth(asked.period.fromDay, asked.period.toDay);
  const cover = coverOf({ beds: value.beds, input: checked.value, degreeDays, solve });
  return { ok: true, value: cover === undefined ? value : { ...value, cover } };
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainLedger(input: unknown): readonly Working[] {
  const checked = read(ledgerSchema, input);
  return checked.ok ? workLedger(ledgerResult(askedOf(checked.value, checked.unread)).trace) : [];
}
