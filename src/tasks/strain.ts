// The word `strain`: what came out, how long it keeps, what a closed bottle would come to. Schema, call and
// result; the same for form and command line.

import * as z from 'zod/mini';
import { type UseFirst, useFirst } from '#engine/bottle/keep.ts';
import type { ElementFate } from '#engine/bottle/liquid.ts';
import { type Strained, strainedBatch } from '#engine/bottle/strained.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import { strainRules } from '#engine/rules/bottle.ts';
import { judge } from '#engine/rules/rule.ts';
import { scrapsRules } from '#engine/rules/scraps.ts';
import { bottleUseRules, lidRules, liftRules } from '#engine/rules/vessel.ts';
import type { Assumed } from '#engine/scraps/part.ts';
import { barOfAtm, type Closed, pressureAtm } from '#engine/souring/gas/pressure.ts';
import { type StrainTrace, workStrain } from '#engine/working/strain.ts';
import type { Working } from '#engine/working/working.ts';
import { strainedOf } from '#plot/batch/strained.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { strainCautions } from '#words/en/strain.ts';
import { vesselCautions } from '#words/en/vessel.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import { isMore, listOf, number, object, oneOf, ph, positive, temperatureC } from './fields.ts';
import { portion, sugarIn, waterIn } from './portion.ts';
import { type Problem, read, says } from './problem.ts';

/** The bottle the liquid is meant for; a bottle made for drink is answered with a stop. */
const bottle = z
  .strictObject(
    {
      volumeL: positive(200, 'L'),
      filledL: positive(200, 'L'),
      cap: oneOf(['vent', 'screw', 'loose']),
      material: oneOf(['plastic', 'glass', 'drink-bottle']),
      sugarLeftGPerL: z.optional(number(0, 500, 'g/L')),
      temperatureC: z.optional(temperatureC),
    },
    { error: () => says('is not a bottle', 'an object with volumeL, filledL, cap and material') },
  )
  .check(
    z.refine((told) => !isMore(told?.filledL, told?.volumeL), {
      path: ['filledL'],
      error: says('is more than the bottle holds', 'more than 0, up to its volumeL'),
      // Also when another field is wrong, so that all problems are told at once.
      when: () => true,
    }),
  );

export const strainSchema = object(
  {
    plants: listOf(portion, 1, 40),
    water: waterIn,
    sugar: z.optional(sugarIn),
    starterL: z._default(number(0, 500, 'L'), 0),
    days: number(0, 400, 'days'),
    temperatureC,
    finalPh: ph,
    drainedL: number(0, 2000, 'L'),
    solidsKg: number(0, 2000, 'kg'),
    state: z.optional(oneOf(['souring', 'slow', 'ready', 'doubtful', 'lost', 'unknown'])),
    bottle: z.optional(bottle),
    vesselLid: z.optional(oneOf(['loose', 'vent', 'tight'])),
  },
  'an object',
);

/** Pressure of the bottle if it were closed; null where the sugar left is not known. */
export interface BottlePressure {
  /** All the sugar left to yeast, above the air outside. */
  readonly upToAtm: number | null;
  readonly upToBar: number | null;
  /** All the sugar left to bacteria that make acid and gas; those that make acid alone add nothing. */
  readonly heterolacticAtm: number | null;
  readonly sugarLeftG: number | null;
  readonly gasRoomL: number;
  readonly temperatureC: number;
}

/** The contract's answer; null stands for "not known for any lot". */
export interface StrainResult {
  readonly balance: Strained['balance'];
  readonly liquid: {
    readonly nGPerL: Range | null;
    readonly pGPerL: Range | null;
    readonly kGPerL: Range | null;
    readonly ecDsPerM: Range | null;
  };
  readonly ceiling: { readonly nGPerL: number | null; readonly pGPerL: number | null; readonly kGPerL: number | null };
  readonly solids: { readonly nG: Range | null; readonly kG: Range | null; readonly cn: Range | null };
  /** What went in and what was drained off, grams. */
  readonly inputs: { readonly nG: Range | null; readonly pG: Range | null; readonly kG: Range | null };
  readonly drained: { readonly nG: Range | null; readonly pG: Range | null; readonly kG: Range | null };
  readonly useFirst: UseFirst;
  readonly pressure?: BottlePressure;
  /** Lots whose figure is not known: what is shown misses them and is too low. */
  readonly unknown: readonly { readonly element: ElementFate['element']; readonly materials: readonly string[] }[];
  /** What was not told and was taken as something else. */
  readonly assumed: readonly Assumed[];
  readonly cautions: readonly Caution[];
}

type StrainInput = z.infer<typeof strainSchema>;
type Answer =
  | { readonly ok: true; readonly value: StrainResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The bottle as a closed vessel with all its sugar to yeast; the batch's own warmth where none is told. */
function closedBottle(input: StrainInput): Closed | undefined {
  if (input.bottle === undefined) return undefined;
  const { volumeL, filledL, sugarLeftGPerL } = input.bottle;
  return {
    gasRoomL: volumeL - filledL,
    liquidL: filledL,
    hexoseG: sugarLeftGPerL === undefined ? Number.NaN : sugarLeftGPerL * filledL,
    route: 'yeast',
    temperatureC: input.bottle.temperatureC ?? input.temperatureC,
  };
}

function traceOf(input: StrainInput): StrainTrace {
  const batch = strainedOf(input);
  const closed = closedBottle(input);
  return {
    batch,
    strained: strainedBatch(batch),
    state: input.state,
    useFirst: useFirst({
      finalPh: input.finalPh,
      temperatureC: input.bottle?.temperatureC ?? input.temperatureC,
      sound: input.state !== 'lost' && input.state !== 'unknown',
    }),
    ...(closed && Number.isFinite(closed.hexoseG)
      ? { closed: { bottle: closed, pressureAtm: pressureAtm(closed) } }
      : {}),
  };
}

/** A bottle whose place is not told is taken to stand as warm as the batch did. */
function assumedOf(input: StrainInput): readonly Assumed[] {
  if (input.bottle === undefined || input.bottle.temperatureC !== undefined) return [];
  const value = point(input.temperatureC);
  return [{ field: 'bottle.temperatureC', material: 'bottle', value, source: 'our-caution' }];
}

function pressureOf(closed: Closed): BottlePressure {
  const finite = (value: number) => (Number.isFinite(value) ? value : null);
  const upTo = pressureAtm(closed);
  return {
    upToAtm: finite(upTo),
    upToBar: finite(barOfAtm(upTo)),
    heterolacticAtm: finite(pressureAtm({ ...closed, route: 'heterolactic' })),
    sugarLeftG: finite(closed.hexoseG),
    gasRoomL: closed.gasRoomL,
    temperatureC: closed.temperatureC,
  };
}

function cautionsOf(input: StrainInput, trace: StrainTrace, unread: readonly string[]): readonly Caution[] {
  const closed = closedBottle(input);
  const findings = [
    ...judge(lidRules, { lid: input.vesselLid, temperatureC: input.temperatureC }),
    ...(input.bottle && closed
      ? judge(bottleUseRules, {
          ...input.bottle,
          sugarLeftGPerL: input.bottle.sugarLeftGPerL ?? Number.NaN,
          temperatureC: closed.temperatureC,
          pressureAtm: pressureAtm(closed),
        })
      : []),
    ...trace.batch.plants.flatMap((part, i) => judge(scrapsRules, { part, treated: input.plants[i]?.treated })),
    ...judge(strainRules, { batch: trace.batch, strained: trace.strained, state: input.state }),
    ...judge(liftRules, { massKg: trace.strained.balance.inKg }),
  ];
  return [...spoken(findings, scrapsCautions, vesselCautions, strainCautions), ...unreadCaution(unread)];
}

/** What came out: any input in, the contract's answer or all its problems out. */
export function strain(input: unknown): Answer {
  const checked = read(strainSchema, input);
  if (!checked.ok) return checked;
  const trace = traceOf(checked.value);
  const { balance, fates, ecDsPerM, solidsCn } = trace.strained;
  const closed = closedBottle(checked.value);
  const of = <Value>(fate: ElementFate, value: Value): Value | null => (fate.known ? value : null);
  const { n, p, k } = fates;
  return {
    ok: true,
    value: {
      balance,
      liquid: {
        nGPerL: of(n, n.gPerL),
        pGPerL: of(p, p.gPerL),
        kGPerL: of(k, k.gPerL),
        ecDsPerM: ecDsPerM ?? null,
      },
      ceiling: { nGPerL: of(n, n.ceilingGPerL), pGPerL: of(p, p.ceilingGPerL), kGPerL: of(k, k.ceilingGPerL) },
      solids: { nG: of(n, n.solidsG), kG: of(k, k.solidsG), cn: solidsCn.known ? solidsCn.cn : null },
      inputs: { nG: of(n, n.inG), pG: of(p, p.inG), kG: of(k, k.inG) },
      drained: { nG: of(n, n.drainedG), pG: of(p, p.drainedG), kG: of(k, k.drainedG) },
      useFirst: trace.useFirst,
      ...(closed ? { pressure: pressureOf(closed) } : {}),
      unknown: Object.values(fates)
        .filter((fate) => fate.unknownIn.length > 0)
        .map((fate) => ({ element: fate.element, materials: fate.unknownIn })),
      assumed: assumedOf(checked.value),
      cautions: cautionsOf(checked.value, trace, checked.unread),
    },
  };
}

/** The workings of every figure of the answer; none when the input has problems. */
export function explainStrain(input: unknown): readonly Working[] {
  const checked = read(strainSchema, input);
  return checked.ok ? workStrain(traceOf(checked.value)) : [];
}
