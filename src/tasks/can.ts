// The word `can`: what to pour. Schema, call and result; the same for form and command line.

import * as z from 'zod/mini';
import type { Strength } from '#engine/can/dilute.ts';
import type { Measure, TwoStep } from '#engine/can/measures.ts';
import { type Dose, type Pour, type PourOrder, pour } from '#engine/can/pour.ts';
import { TAP_PH } from '#engine/can/strength.ts';
import { asRange, type Range } from '#engine/quantity/range.ts';
import { BELIEVED_N, type Ratio } from '#engine/quantity/ratio.ts';
import { SPOON_COUNTRIES } from '#engine/quantity/units.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { canRules } from '#engine/rules/can.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { workCan } from '#engine/working/can.ts';
import type { Working } from '#engine/working/working.ts';
import { canCautions, sayMeasure } from '#words/en/can.ts';
import { type Caution, spoken, unreadCaution } from './caution.ts';
import { alkalinityMeqPerL, banded, number, object, oneOf, ph, positive, text } from './fields.ts';
import { type Problem, read, says } from './problem.ts';

const MOST_CANS = 1000;
const ecDsPerM = number(0, 200, 'dS/m');

const batch = z.strictObject(
  {
    peg: z.optional(
      z.nullable(
        z.union([number(0, 1_000_000, ''), text(40)], {
          error: () => says('is not a peg', 'a number, or a text of up to 40 characters'),
        }),
      ),
    ),
    state: z.optional(oneOf(['souring', 'slow', 'ready', 'doubtful', 'lost', 'unknown'])),
    held: z.optional(z.boolean({ error: () => says('is neither yes nor no', 'true or false') })),
    ecDsPerM: z.optional(banded(0, 200, 'dS/m')),
    ph: z.optional(ph),
    nGPerL: z.optional(banded(0, 50, 'g/L')),
    kGPerL: z.optional(banded(0, 150, 'g/L')),
  },
  { error: () => says('is not a batch', 'an object with peg, state and held') },
);

const ratio = z.strictObject(
  { n: number(BELIEVED_N.least, BELIEVED_N.most, ''), reading: oneOf(['in', 'to']) },
  { error: () => says('is not a ratio', 'an object with n and reading, such as { "n": 200, "reading": "in" }') },
);

const aim = z.strictObject(
  {
    nGPerM2: z.optional(positive(100, 'g/m²')),
    kGPerM2: z.optional(positive(100, 'g/m²')),
    maxEcDsPerM: z.optional(positive(20, 'dS/m')),
  },
  { error: () => says('is not an aim', 'an object with one of nGPerM2, kGPerM2, maxEcDsPerM') },
);

const water = z.strictObject(
  { alkalinityMeqPerL, ecDsPerM: z.optional(ecDsPerM), ph: z._default(ph, TAP_PH) },
  { error: () => says('is not a water', 'an object with alkalinityMeqPerL and ecDsPerM') },
);

const shape = object(
  {
    batch: z.optional(batch),
    ratio: z.optional(ratio),
    aim: z.optional(aim),
    canL: number(0.1, 1000, 'L'),
    areaM2: z.optional(number(0.01, 5000, 'm²')),
    depthLPerM2: z.optional(number(0.01, 100, 'L/m²')),
    spoon: z._default(z.nullable(oneOf(SPOON_COUNTRIES)), null),
    water: z.optional(water),
    crop: z.optional(text(60)),
    growth: z.optional(oneOf(['seedling', 'established'])),
    way: z._default(oneOf(['soil', 'leaf']), 'soil'),
    eaten: z.optional(oneOf(['raw', 'cooked'])),
    daysToPick: z.optional(number(0, 1000, 'days')),
    nozzleMm: z.optional(positive(20, 'mm')),
    strainedMm: z.optional(positive(20, 'mm')),
    soil: z.optional(oneOf(['dry', 'moist'])),
  },
  'an object',
);

type CanInput = z.infer<typeof shape>;

/** What an aim needs beside itself: field, allowed. */
function neededBy(input: Loose): readonly (readonly [string, string])[] {
  const { nGPerM2, kGPerM2, maxEcDsPerM } = input.aim ?? {};
  const bed = [
    ['areaM2', '0.01 to 5000 m², needed by an aim in grams'],
    ['depthLPerM2', '0.01 to 100 L/m², needed by an aim in grams'],
  ] as const;
  return [
    ...(nGPerM2 === undefined
      ? []
      : ([['batch.nGPerL', '0 to 50 g/L, needed by an aim in grams of nitrogen'], ...bed] as const)),
    ...(kGPerM2 === undefined
      ? []
      : ([['batch.kGPerL', '0 to 150 g/L, needed by an aim in grams of potassium'], ...bed] as const)),
    ...(maxEcDsPerM === undefined
      ? []
      : ([
          ['batch.ecDsPerM', '0 to 200 dS/m, needed by an aim in conductivity'],
          ['water.ecDsPerM', '0 to 200 dS/m, needed by an aim in conductivity'],
        ] as const)),
    ...(input.areaM2 === undefined ? [] : ([['depthLPerM2', '0.01 to 100 L/m², needed beside areaM2']] as const)),
  ];
}

/** What fields ask of each other. Runs beside the checks of single fields, so that all problems come at once. */
function acrossFields(input: Loose): readonly (readonly [string, string])[] {
  const found: (readonly [string, string])[] = [];
  const one = 'one of ratio { n, reading } or aim { nGPerM2 or kGPerM2 or maxEcDsPerM }';
  if (input.ratio === undefined && input.aim === undefined) found.push(['ratio', says('is missing', one)]);
  if (input.ratio !== undefined && input.aim !== undefined) found.push(['aim', says('stands beside a ratio', one)]);
  const aims = Object.values(input.aim ?? {}).filter((value) => value !== undefined).length;
  if (input.aim !== undefined && aims !== 1)
    found.push(['aim', says('is not one aim', 'just one of nGPerM2, kGPerM2, maxEcDsPerM')]);
  const asked = new Map(neededBy(input));
  for (const [field, allowed] of asked)
    if (reach(input, field) === undefined) found.push([field, says('is missing', allowed)]);
  const { areaM2, depthLPerM2, canL } = input;
  if (typeof areaM2 === 'number' && typeof depthLPerM2 === 'number' && typeof canL === 'number' && canL > 0)
    if ((areaM2 * depthLPerM2) / canL > MOST_CANS)
      found.push(['canL', says('is too small for so many litres', `at least a thousandth of areaM2 × depthLPerM2`)]);
  return found;
}

/** The input before its fields are known to be right. */
interface Loose {
  readonly batch?: object;
  readonly ratio?: object;
  readonly aim?: { readonly nGPerM2?: unknown; readonly kGPerM2?: unknown; readonly maxEcDsPerM?: unknown };
  readonly areaM2?: unknown;
  readonly depthLPerM2?: unknown;
  readonly canL?: unknown;
}

function reach(input: unknown, field: string): unknown {
  let here = input;
  for (const key of field.split('.')) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Readonly<Record<string, unknown>>)[key];
  }
  return here;
}

const across = z.check<CanInput>((context) => {
  const input = context.value as unknown;
  if (typeof input !== 'object' || input === null || Array.isArray(input)) return;
  for (const [field, message] of acrossFields(input as Loose))
    context.issues.push({ code: 'custom', path: field.split('.'), input: reach(input, field), message });
});
across._zod.def.when = () => true;

/** The full contract of this word. */
export const canSchema = shape.check(across);

/** One tool to measure the dose with, as the contract has it. `count`: spoons, cans of one mix, or mL of jug and syringe. */
export interface MeasureSaid {
  readonly tool: Measure['tool'];
  readonly count: number;
  readonly text: string;
  readonly errorPercent: number;
}

interface Volumes {
  readonly concentrateMl: number;
  readonly waterMl: number;
}

/** The contract's answer; without a dose the volumes are absent and `noDose` says why. */
export interface CanResult {
  readonly canL: number;
  readonly perCan?: Volumes;
  readonly otherReading?: Volumes & Ratio;
  readonly cans?: readonly { readonly volumeL: number; readonly concentrateMl: number }[];
  readonly totalL?: number;
  readonly concentrateL?: number;
  readonly measures?: readonly MeasureSaid[];
  readonly twoStep?: TwoStep & { readonly canL: number };
  readonly diluted: { readonly ph?: Range; readonly ecDsPerM?: Range };
  readonly given?: Pour['given'];
  readonly noDose?: readonly string[];
  readonly cautions: readonly Caution[];
}

type Answer =
  | { readonly ok: true; readonly value: CanResult }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const likely = (value: number | Range | undefined) => (value === undefined ? Number.NaN : asRange(value).likely);

function strengthOf({ ratio: asked, aim: wanted, batch: from, water: by, depthLPerM2 }: CanInput): Strength {
  if (asked) return { kind: 'ratio', ratio: asked };
  if (wanted?.maxEcDsPerM !== undefined)
    return {
      kind: 'conductivity',
      maxEcDsPerM: wanted.maxEcDsPerM,
      batchEcDsPerM: likely(from?.ecDsPerM),
      waterEcDsPerM: likely(by?.ecDsPerM),
    };
  const isNitrogen = wanted?.nGPerM2 !== undefined;
  return {
    kind: 'nutrient',
    element: isNitrogen ? 'n' : 'k',
    aimGPerM2: likely(isNitrogen ? wanted.nGPerM2 : wanted?.kGPerM2),
    contentGPerL: likely(isNitrogen ? from?.nGPerL : from?.kGPerL),
    depthLPerM2: likely(depthLPerM2),
  };
}

function orderOf(input: CanInput): PourOrder {
  const { daysToPick, ...rest } = input;
  return { ...rest, toPickDays: daysToPick, strength: strengthOf(input) };
}

/** Findings of batch and can. Where something stops the pour, the notes on how to pour are left out. */
function findingsOf(order: PourOrder, poured: Pour): readonly Finding[] {
  const ofBatch = judge(batchRules, order);
  const ofCan = judge(canRules, { order, pour: poured });
  const stopped = [...ofBatch, ...ofCan].some(({ level }) => level === 'stop');
  return [...ofBatch, ...ofCan.filter(({ level }) => !stopped || level !== 'note')];
}

/** Millilitres as they are told: four significant digits, hundredths at most. */
function told(volumeMl: number): number {
  return Number(volumeMl >= 10 ? volumeMl.toFixed(2) : volumeMl.toPrecision(4));
}

function toldVolumes({ concentrateMl, waterMl }: Volumes): Volumes {
  return { concentrateMl: told(concentrateMl), waterMl: told(waterMl) };
}

function measureSaid(measure: Measure): MeasureSaid {
  const { tool, count, errorPercent } = measure;
  return { tool, count, text: sayMeasure(measure), errorPercent: Math.round(errorPercent * 10) / 10 + 0 };
}

function doseSaid({ perCan, bed, measures, twoStep, otherReading }: Dose): Partial<CanResult> {
  return {
    perCan: toldVolumes(perCan),
    ...(otherReading && {
      otherReading: { n: otherReading.n, reading: otherReading.reading, ...toldVolumes(otherReading) },
    }),
    ...(bed && {
      cans: bed.cans.map(({ volumeL, concentrateMl }) => ({ volumeL, concentrateMl: told(concentrateMl) })),
      totalL: bed.totalL,
      concentrateL: told(bed.concentrateL * 1000) / 1000,
    }),
    measures: measures.map(measureSaid),
    ...(twoStep && { twoStep: { ...twoStep, thenMl: told(twoStep.thenMl) } }),
  };
}

/** What to pour: any input in, the contract's answer or all its problems out. */
export function can(input: unknown): Answer {
  const checked = read(canSchema, input);
  if (!checked.ok) return checked;
  const order = orderOf(checked.value);
  const poured = pour(order);
  const findings = findingsOf(order, poured);
  const cautions = [...spoken(findings, canCautions), ...unreadCaution(checked.unread)];
  const stops = cautions.filter(({ level }) => level === 'stop');
  const { addedEcDsPerM: _added, ...diluted } = poured.diluted;
  if (stops.length > 0 || poured.dose === undefined)
    return { ok: true, value: { canL: order.canL, diluted: {}, noDose: stops.map((stop) => stop.text), cautions } };
  return {
    ok: true,
    value: { canL: order.canL, ...doseSaid(poured.dose), diluted, given: poured.given, cautions },
  };
}

/** The workings of every figure of the answer; none when the input has problems or no dose is allowed. */
export function explainCan(input: unknown): readonly Working[] {
  const checked = read(canSchema, input);
  if (!checked.ok) return [];
  const order = orderOf(checked.value);
  const poured = pour(order);
  const stopped = findingsOf(order, poured).some(({ level }) => level === 'stop');
  return stopped ? [] : workCan(order, poured);
}
