// A batch strained: the question that the word `strain` is asked, made from the batch's own contents and looks, and what
// the liquid may be used for. The bottles and the acts are straining-acts.ts; every figure is the engine's.

import { NOT_HELD_DAYS, RAW_SOIL_DAYS } from '#engine/can/limits.ts';
import { careRules } from '#engine/rules/care.ts';
import { handsRules } from '#engine/rules/profile.ts';
import { judge } from '#engine/rules/rule.ts';
import type { Assumed } from '#engine/scraps/part.ts';
import { assumedUsual, usual } from '#engine/scraps/usual.ts';
import type { Judgement } from '#engine/souring/judge.ts';
import type { ReadBy } from '#engine/souring/look.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { daysIn, type Moment, momentOf } from '#journal/moment.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { LIQUID_KG_PER_L } from '#journal/parts/contents.ts';
import { assumedIn, isKnown } from '#plot/batch/recipe.ts';
import { strainedEntered } from '#plot/batch/strained.ts';
import { sugarLeftGPerL } from '#plot/batch/sugar-left.ts';
import { careCautions } from '#words/en/care.ts';
import { profileCautions } from '#words/en/profile.ts';
import { type Caution, spoken } from '../caution.ts';
import type { Problem } from '../problem.ts';
import { explainStrain, type StrainResult, strain } from '../strain.ts';
import { onDay } from './dates.ts';
import { bottleCare } from './facts.ts';
import {
  digestOf,
  type Figures,
  figureOf,
  keepEntered,
  type LiquidEntered,
  liquidEntered,
  litreFigures,
} from './figures-shown.ts';
import { type PegView, pegView } from './peg.ts';
import { profileOf } from './profile.ts';

/** Below this what is left in the pail is what clings to it. @practice */
const LEAST_TO_BOTTLE_L = 0.05;

/** The bottles a liquid is meant for, all filled alike. */
export interface BottlePlan {
  readonly sizeL: number;
  readonly filledL: number;
  readonly count: number;
  readonly cap: Body<'bottle.filled'>['cap'];
  readonly material: Body<'bottle.filled'>['material'];
  readonly temperatureC?: number | undefined;
}

/** What was measured at the straining; nothing of it for a batch that was strained before and waits for bottles. */
export interface StrainingAsk {
  readonly plot: Plot;
  readonly batch: Batch;
  readonly now: string;
  readonly drainedL?: number | undefined;
  readonly solidsKg?: number | undefined;
  readonly acidity?: { readonly ph: number; readonly by: ReadBy } | undefined;
  /** Tag of whoever reads it. */
  readonly by?: string | undefined;
  readonly bottle?: BottlePlan | undefined;
}

/** What the liquid may be used for. */
export interface LiquidUse {
  readonly kind:
    | 'lost'
    | 'lot-not-for-liquid'
    | 'unknown'
    | 'doubtful'
    | 'not-sour'
    | 'not-ready'
    | 'cooked-only'
    | 'held';
  /** When it counts as held if nothing turns, while that clock runs. */
  readonly heldOn: string | undefined;
  readonly notHeldDays: number;
  readonly rawDays: number;
}

/** One thing of the sum, kilograms. */
export interface SumPart {
  readonly kind: 'plants' | 'water' | 'sugar' | 'starter' | 'liquid' | 'solids' | 'missing' | 'too-much';
  readonly massKg: number;
}

export interface StrainingAnswer {
  readonly day: number;
  readonly strain: StrainResult;
  readonly inParts: readonly SumPart[];
  readonly outParts: readonly SumPart[];
  /** Positive: missing. Negative: more came out than went in. */
  readonly missingKg: number;
  readonly ph: { readonly ph: number; readonly from: 'now' | 'before' };
  readonly temperatureC: number;
  readonly temperatureTold: boolean;
  readonly judgement: Judgement;
  readonly use: LiquidUse;
  /** Sugar that may be left, at most; undefined where it cannot be told. */
  readonly sugarLeftGPerL: number | undefined;
  /** Use it first by, from today. */
  readonly useFirst: { readonly low: string; readonly likely: string; readonly high: string };
  /** The figures that are shown, to be kept beside what is written. */
  readonly shown: { readonly strained: Figures; readonly bottled: Figures };
  readonly toBottleL: number;
  /** What the batch and the bottles make the rules say. */
  readonly cautions: readonly Caution[];
  readonly stops: readonly Caution[];
  /** What nobody told and was taken as something, of the batch and of its bottles. */
  readonly assumed: readonly Assumed[];
  /** Parts that no table knows, whose dry matter was taken as something. */
  readonly unknownParts: readonly string[];
}

export type Strained =
  | { readonly ok: true; readonly value: StrainingAnswer }
  | { readonly ok: false; readonly needs: readonly ('drained' | 'ph')[]; readonly problems: readonly Problem[] };

/** Litres that were drained before and are in no bottle, bed or starter yet. */
export function waitingForBottlesL({ liquid }: Batch): number {
  return liquid.leftL >= LEAST_TO_BOTTLE_L ? liquid.leftL : 0;
}

/** What whoever strains puts on and keeps to, and whether it is somebody else's work. */
export function strainingCare(plot: Plot): readonly Caution[] {
  const findings = [...judge(careRules, { act: 'strain' }), ...judge(handsRules, { profile: profileOf(plot) })];
  return spoken(findings, careCautions, profileCautions);
}

/** What came out, and what for. */
export function straining(ask: StrainingAsk): Strained {
  const { batch } = ask;
  const ph = phOf(ask);
  const drainedL = drainedOf(ask);
  const needs = [...(drainedL > 0 ? [] : (['drained'] as const)), ...(ph === undefined ? (['ph'] as const) : [])];
  if (ph === undefined || needs.length > 0) return { ok: false, needs, problems: [] };
  const peg = pegOf(ask);
  const { judgement } = peg;
  const leftGPerL = sugarLeftGPerL(ask.plot, ask.batch, ph.ph);
  const question = questionOf(ask, { finalPh: ph.ph, peg, sugarLeftGPerL: leftGPerL });
  const answer = strain(question);
  if (!answer.ok) return { ok: false, needs: [], problems: answer.problems };
  const result = answer.value;
  const { balance } = result;
  const from = strainedAt(ask).dateDay;
  const on = (days: number) => onDay(from + Math.floor(days));
  const { low, likely, high } = result.useFirst.days;
  return {
    ok: true,
    value: {
      day: dayOf(ask),
      strain: result,
      ...sumOf(ask, balance),
      missingKg: balance.inKg - balance.outKg,
      ph,
      temperatureC: peg.temperature?.meanC ?? usual('bottle.temperatureC').likely,
      temperatureTold: peg.temperature !== undefined,
      judgement,
      use: useOf(peg, result),
      sugarLeftGPerL: leftGPerL,
      useFirst: { low: on(low), likely: on(likely), high: on(high) },
      shown: shownOf(question, result, {
        ph: ph.ph,
        temperatureC: ask.bottle?.temperatureC ?? question.temperatureC,
        state: peg.state,
      }),
      toBottleL: batch.liquid.leftL + (ask.drainedL ?? 0),
      cautions: [
        ...result.cautions,
        ...(ask.bottle === undefined ? [] : spoken(bottleCare(ask.plot), profileCautions)),
      ],
      stops: result.cautions.filter(({ level }) => level === 'stop'),
      assumed: [
        ...assumedIn(ask.plot, batch),
        ...(peg.temperature === undefined
          ? [assumedUsual('bottle.temperatureC', { field: 'temperatureC', material: 'batch' })]
          : []),
        ...result.assumed,
      ],
      unknownParts: batch.contents.parts
        .filter((part) => !isKnown(part))
        .map((part) => part.name ?? part.material ?? ''),
    },
  };
}

/** The workings of the answer. */
export function explainStraining(ask: StrainingAsk): readonly Working[] {
  const ph = phOf(ask);
  if (ph === undefined) return [];
  const told = { finalPh: ph.ph, peg: pegOf(ask), sugarLeftGPerL: sugarLeftGPerL(ask.plot, ask.batch, ph.ph) };
  return explainStrain(questionOf(ask, told));
}

/** What the sheet shows of the liquid and of the bottles, to be kept beside both acts. */
function shownOf(asked: LiquidEntered, { liquid, useFirst }: StrainResult, keeps: Parameters<typeof keepEntered>[0]) {
  const entered = liquidEntered(asked);
  const litre = litreFigures({ n: liquid.nGPerL, p: liquid.pGPerL, k: liquid.kGPerL });
  return {
    strained: { entered, figures: litre },
    bottled: {
      entered: digestOf([entered, keepEntered(keeps)]),
      figures: [...litre, ...figureOf('useFirstDays', useFirst.keeping === 'none' ? undefined : useFirst.days)],
    },
  };
}

interface Worked {
  readonly finalPh: number;
  readonly peg: PegView;
  readonly sugarLeftGPerL: number | undefined;
}

/** The question of the word `strain`, from what is known of the batch. */
function questionOf(ask: StrainingAsk, { finalPh, peg, sugarLeftGPerL }: Worked) {
  const { batch, bottle } = ask;
  return {
    ...strainedEntered(ask.plot, batch),
    days: dayOf(ask),
    temperatureC: peg.temperature?.meanC ?? usual('bottle.temperatureC').likely,
    finalPh,
    drainedL: drainedOf(ask),
    solidsKg: batch.strainings.reduce((total, one) => total + one.solidsKg, 0) + (ask.solidsKg ?? 0),
    state: peg.state,
    ...(bottle === undefined
      ? {}
      : {
          bottle: {
            volumeL: bottle.sizeL,
            filledL: bottle.filledL,
            cap: bottle.cap,
            material: bottle.material,
            ...(sugarLeftGPerL === undefined ? {} : { sugarLeftGPerL }),
            ...(bottle.temperatureC === undefined ? {} : { temperatureC: bottle.temperatureC }),
          },
        }),
  };
}

/** When it was strained: now, or the last time for a batch that stands empty. */
function strainedAt({ batch, drainedL, now }: StrainingAsk): Moment {
  return drainedL === undefined ? (batch.strainings.at(-1)?.when ?? momentOf(now)) : momentOf(now);
}

/** Day of the batch on which it is strained, or was last. @arithmetic */
export function dayOf(ask: StrainingAsk): number {
  return Math.max(0, daysIn(ask.plot.facts.timeZone)(ask.batch.filled, strainedAt(ask)));
}

/** The same as the calendar counts it, as the peg's own sheet says it. @arithmetic */
export function calendarDayOf(ask: StrainingAsk): number {
  return strainedAt(ask).dateDay - ask.batch.filled.dateDay;
}

function drainedOf({ batch, drainedL }: StrainingAsk): number {
  return batch.liquid.drainedL + (drainedL ?? 0);
}

/** Acidity as read now, else as read at the last straining or the last look. */
function phOf({ batch, acidity }: StrainingAsk): StrainingAnswer['ph'] | undefined {
  if (acidity !== undefined) return { ph: acidity.ph, from: 'now' };
  const strained = batch.strainings.at(-1)?.body.acidity?.ph;
  const looked = batch.looks.findLast(({ body }) => body.acidity !== undefined)?.body.acidity?.ph;
  const ph = strained ?? looked;
  return ph === undefined ? undefined : { ph, from: 'before' };
}

/** The peg as its own sheet has it, with the reading taken now as one more of the straining. */
function pegOf(ask: StrainingAsk): PegView {
  const { plot, batch, acidity, now } = ask;
  if (acidity === undefined) return pegView({ plot, batch, now });
  const when = momentOf(now);
  const body: Body<'peg.strained'> = {
    batch: batch.id,
    drained: { typed: '', volumeL: ask.drainedL ?? 0 },
    rest: 'stays',
    acidity: { typed: '', ...acidity },
  };
  const reading = {
    id: '',
    day: dayOf(ask),
    when,
    by: ask.by ?? '',
    drainedL: 0,
    solidsKg: 0,
    unexplainedKg: undefined,
  };
  return pegView({ plot, now, batch: { ...batch, strainings: [...batch.strainings, { ...reading, body }] } });
}

function sumOf(
  { batch, solidsKg }: StrainingAsk,
  balance: StrainResult['balance'],
): Pick<StrainingAnswer, 'inParts' | 'outParts'> {
  const { contents } = batch;
  const total = (list: readonly { readonly massKg: number }[]) => list.reduce((sum, { massKg }) => sum + massKg, 0);
  const missingKg = balance.inKg - balance.outKg;
  const offKg = batch.strainings.reduce((sum, one) => sum + one.solidsKg, 0) + (solidsKg ?? 0);
  const seen = (part: SumPart) => part.massKg > 0;
  return {
    inParts: [
      { kind: 'plants' as const, massKg: total(contents.parts) },
      { kind: 'water' as const, massKg: contents.waterL },
      { kind: 'sugar' as const, massKg: total(contents.sugar) },
      { kind: 'starter' as const, massKg: contents.starterL * LIQUID_KG_PER_L },
      { kind: 'too-much' as const, massKg: -missingKg },
    ].filter(seen),
    outParts: [
      { kind: 'liquid' as const, massKg: balance.outKg - offKg },
      { kind: 'solids' as const, massKg: offKg },
      { kind: 'missing' as const, massKg: missingKg },
    ].filter(seen),
  };
}

function useOf(peg: PegView, result: StrainResult): LiquidUse {
  const rules = new Set(result.cautions.map(({ rule }) => rule));
  const { state, held, heldOn } = peg;
  const kind = (): LiquidUse['kind'] => {
    if (state === 'lost') return 'lost';
    if (rules.has('strained-lot-not-for-liquid') || rules.has('weedkiller-unknown')) return 'lot-not-for-liquid';
    if (state === 'unknown') return 'unknown';
    if (state === 'doubtful') return 'doubtful';
    if (rules.has('strained-not-sour')) return 'not-sour';
    if (state !== 'ready' || rules.has('strained-before-ready')) return 'not-ready';
    return held ? 'held' : 'cooked-only';
  };
  return { kind: kind(), heldOn, notHeldDays: NOT_HELD_DAYS, rawDays: RAW_SOIL_DAYS };
}
