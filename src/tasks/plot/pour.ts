// One bed at the tap: its litres as cans, each with its dose, the tools for it and the mark on the jug; the band of
// holds; and the entry that is written once the last can is poured. Rules and arithmetic are the engine's.

import type { Cans } from '#engine/can/cans.ts';
import { type Measure, measuresFor, SYRINGE_ML, type TwoStep, twoStepFor } from '#engine/can/measures.ts';
import { type PourOrder, pour } from '#engine/can/pour.ts';
import type { Countries } from '#engine/quantity/ask.ts';
import { formatIn } from '#engine/quantity/format.ts';
import { parseAmount } from '#engine/quantity/parse.ts';
import { SPOON_COUNTRIES, type SpoonCountry } from '#engine/quantity/units.ts';
import { careRules } from '#engine/rules/care.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { workCan } from '#engine/working/can.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { CanFacts } from '#journal/parts/described.ts';
import { sayTyped } from '#words/quantity.ts';
import { isReason } from '../caution.ts';
import { counted, plotsThatMayBe } from './counted.ts';
import { type HoursAsk, hourFindings } from './hours.ts';
import type { Liquid } from './liquid.ts';
import { HOLD_SHOWN } from './passed-over.ts';
import { bedOfRound, type NextPick, nextPickAnswers, ofPour, orderFor, type RoundAsk, type RoundBed } from './round.ts';
import { type StrengthOf, workStrength } from './strength.ts';

export interface PourAsk extends RoundAsk, Pick<HoursAsk, 'sun' | 'soil' | 'airSeen'> {
  readonly bed: string;
  /** What it is poured with. */
  readonly canL: number | undefined;
  readonly can?: string | undefined;
  readonly spoon?: SpoonCountry | undefined;
  /** Reasons given for passing over stops that are a matter of judgement, by the id of the rule. */
  readonly passed?: Readonly<Record<string, string>> | undefined;
}

/** A stop passed over, and why. */
export interface PassedOver {
  readonly finding: Finding;
  readonly reason: string;
}

/** One can as it is filled, with all that measures its dose. */
export interface CanToFill {
  readonly volumeL: number;
  readonly concentrateMl: number;
  /** Whether it is filled to its own mark. */
  readonly full: boolean;
  readonly measures: readonly Measure[];
  readonly twoStep: TwoStep | undefined;
  /** What is drawn: a syringe for a small dose where there is one, or where no jug can be read. */
  readonly drawn: 'jug' | 'syringe' | 'none';
}

/** Why there is no dose: nothing chosen, or reasons that stop or hold the bed. */
export type Missing = 'bed' | 'liquid' | 'strength' | 'size' | 'can' | 'sprayer' | 'reasons';

export interface PourCard {
  readonly bed: RoundBed | undefined;
  readonly way: 'soil' | 'leaf';
  /** Whether the leaves of the bed may be wetted at all. */
  readonly leafAllowed: boolean;
  readonly liquid: Liquid | undefined;
  readonly strength: StrengthOf | undefined;
  readonly canL: number | undefined;
  readonly can: string | undefined;
  readonly missing: Missing | undefined;
  /** Empty without a dose. */
  readonly cans: readonly CanToFill[];
  readonly totalL: number;
  readonly concentrateL: number;
  /** False where less is left than the bed wants. */
  readonly enough: boolean;
  /** Stops and holds that take the dose away. */
  readonly barred: readonly Finding[];
  /** Whether a reason for each would give the dose: all that bars is a matter of judgement. */
  readonly passable: boolean;
  /** Answers to when the bed is picked next, where that settles a hold or was said; none where a stop stays anyhow. */
  readonly picking: readonly NextPick[];
  /** Stops that a reason has passed over. */
  readonly passedOver: readonly PassedOver[];
  /** Holds that are a matter of judgement, and cautions. */
  readonly beware: readonly Finding[];
  readonly notes: readonly Finding[];
  readonly workings: readonly Working[];
}

/** Holds that no judgement at the tap passes: they guard those who eat, or wait for a fact. */
const BARRING = [
  ...['batch-souring', 'batch-slow', 'batch-doubtful', 'batch-not-held', 'batch-not-held-raw-bed'],
  ...['eating-manure-picked-soon', 'eating-animal-possible-picked-soon', 'eating-sold-picked-soon'],
  ...['eating-school-picked-soon'],
  ...['raw-bed-picked-soon', 'bed-nothing-grows', 'bed-size-not-told', 'bed-eaten-not-told'],
  // It would drift onto beds that are eaten raw, and over the fence.
  'spray-windy',
] as const;

/** The card for one bed; of a bed that may be planted already, the one that gives no dose. */
export function pourCard(asked: PourAsk): PourCard {
  const cards = plotsThatMayBe(counted(asked.plot, asked.now), asked.bed).map((plot) => cardFor({ ...asked, plot }));
  const [first = cardFor(asked)] = cards;
  return cards.find(({ missing }) => missing !== undefined) ?? first;
}

function cardFor(asked: PourAsk): PourCard {
  const way = asked.way ?? 'soil';
  const ask = way === 'leaf' ? { ...asked, litresPer: { [asked.bed]: LEAF_L_PER } } : asked;
  const { bed: here, liquid, strength } = bedOfRound(ask, ask.bed);
  const bed = ask.plot.beds.get(ask.bed);
  const { canL, can } = ask;
  const base = { bed: here, way, leafAllowed: bed !== undefined && mayWetLeaves(bed), liquid, strength, canL, can };
  const lacking = missingOf(here, liquid, strength, canL);
  const missing = lacking === 'can' && way === 'leaf' ? 'sprayer' : lacking;
  if (here === undefined || bed === undefined) return { ...base, ...NOTHING, missing: 'bed' };
  const order = liquid &&
    strength && {
      ...orderFor(bed, here.portion, liquid, strength, ask),
      canL: canL ?? 1,
      soil: soilOf(ask.soil),
      ...(way === 'leaf' && { strainedMm: liquid.meshMm, nozzleMm: ask.plot.cans.get(can ?? '')?.nozzleMm }),
    };
  const found = [
    ...here.reasons.filter(({ rule }) => rule.startsWith('bed-')),
    ...(order ? ofPour({ ...order, spoon: ask.spoon ?? null }) : []),
    ...judge(careRules, { act: way === 'leaf' ? 'spray' : 'pour' }),
    ...hourFindings(ask, way),
  ];
  const passedOver = found.flatMap((finding) => {
    const reason = ask.passed?.[finding.rule]?.trim();
    return finding.override === 'reason' && isReason(reason) ? [{ finding, reason }] : [];
  });
  const isPassed = (one: Finding) => passedOver.some(({ finding }) => finding === one);
  const barred = found.filter(
    (one) => !isPassed(one) && (one.level === 'stop' || BARRING.some((id) => id === one.rule)),
  );
  const passable = barred.length > 0 && barred.every(({ override }) => override === 'reason');
  const beware = found.filter((one) => !barred.includes(one) && !isPassed(one) && one.level !== 'note');
  const notes = found.filter(({ level }) => level === 'note');
  const picking = askedOfPicking(ask, order || undefined, barred);
  const why = missing ?? (barred.length > 0 ? 'reasons' : undefined);
  if (why !== undefined || !order || canL === undefined)
    return {
      ...base,
      ...NOTHING,
      missing: why,
      barred,
      passable,
      picking,
      passedOver,
      beware: barred.length > 0 ? [] : beware,
    };
  const poured = pour(order);
  const whole = poured.dose?.bed;
  if (whole === undefined) throw new Error('pourCard: a sized bed without cans');
  return {
    ...base,
    ...NOTHING,
    missing: undefined,
    cans: cansToFill(whole, ask),
    totalL: whole.totalL,
    concentrateL: whole.concentrateL,
    enough: liquid.leftL.likely >= whole.concentrateL,
    barred,
    picking,
    passedOver,
    beware,
    notes,
    workings: [...workStrength(liquid.plantsGPerL, strength), ...workCan(order, poured)],
  };
}

/** What may be said of the next picking: the same answers before one was given and after. */
function askedOfPicking(ask: PourAsk, order: PourOrder | undefined, barred: readonly Finding[]): readonly NextPick[] {
  const settles = ask.nextPick?.[ask.bed] !== undefined || barred.some(isOfPicking);
  const stays = barred.some(({ level, override }) => level === 'stop' && override !== 'reason');
  if (order === undefined || !settles || stays) return [];
  return nextPickAnswers(ofPour({ ...order, toPickDays: undefined }).filter(isOfPicking));
}

/** Whether an answer on the next picking may settle a hold. */
function isOfPicking({ rule }: Finding): boolean {
  return rule === 'batch-not-held-raw-bed' || rule.endsWith('-picked-soon');
}

/** Litres on a square metre or a pot until leaves drip. @practice 5 to 10 L on 100 m² of garden leaves */
const LEAF_L_PER = 0.1;

/** Whether the leaves of a bed may be wetted: only where the plot says so, and nothing of it is eaten raw. */
export function mayWetLeaves({ facts, eaten }: Bed): boolean {
  return facts.feed === 'leaf-and-soil' && (eaten === 'cooked' || eaten === 'not-eaten');
}

function soilOf(soil: PourAsk['soil']): 'dry' | 'moist' | undefined {
  if (soil === 'cracked') return 'dry';
  return soil === 'soaked' ? 'moist' : soil;
}

const NOTHING = {
  cans: [],
  totalL: 0,
  concentrateL: 0,
  enough: false,
  barred: [],
  passable: false,
  picking: [],
  passedOver: [],
  beware: [],
  notes: [],
  workings: [],
} as const;

function missingOf(
  here: RoundBed | undefined,
  liquid: Liquid | undefined,
  strength: StrengthOf | undefined,
  canL: number | undefined,
): Missing | undefined {
  if (here === undefined) return 'bed';
  if (liquid === undefined) return 'liquid';
  // Why a lost or unknown liquid gives none is told by its reasons, before a strength is asked for.
  if (strength === undefined) return liquid.state === 'lost' || liquid.state === 'unknown' ? undefined : 'strength';
  if (here.portion === undefined) return 'size';
  return canL === undefined ? 'can' : undefined;
}

function cansToFill({ cans }: Cans, ask: PourAsk): readonly CanToFill[] {
  const { syringe } = toolsOf(ask.plot);
  return cans.map(({ volumeL, concentrateMl }) => {
    const measures = measuresFor({ volumeMl: concentrateMl, canL: volumeL, spoon: ask.spoon ?? null });
    const has = (tool: Measure['tool']) => measures.some((measure) => measure.tool === tool);
    const drawn = has('syringe') && (syringe || !has('jug')) ? 'syringe' : has('jug') ? 'jug' : 'none';
    return {
      volumeL,
      concentrateMl,
      full: volumeL === ask.canL,
      measures,
      twoStep: twoStepFor(concentrateMl),
      drawn,
    };
  });
}

/** What one syringe holds, mL. */
export const syringeMl = SYRINGE_ML;

/**
 * How high a dose stands in a straight jug of a known bore: h = V / (π r²).
 * @returns mm from the floor of the jug
 * @arithmetic
 */
export function jugLevelMm(jug: { readonly volumeMl: number; readonly boreMm: number }): number {
  return (jug.volumeMl * 1000) / (Math.PI * (jug.boreMm / 2) ** 2);
}

/** Full jugs or syringes, and what goes to the mark after them; the last one is never left out. @arithmetic */
export function fillsFor(dose: { readonly volumeMl: number; readonly toolMl: number }): {
  readonly full: number;
  readonly restMl: number;
} {
  const full = Math.max(0, Math.ceil(dose.volumeMl / dose.toolMl - 1e-9) - 1);
  return { full, restMl: dose.volumeMl - full * dose.toolMl };
}

/** The entry for a bed fed: every can with the fraction that was poured. All that was mixed left the bottle. */
export function fedBody(
  card: PourCard,
  poured: readonly number[],
  saidOfPicking?: NextPick,
): Body<'bed.fed'> | undefined {
  const { liquid, strength, bed } = card;
  const used = card.cans.slice(0, poured.length);
  const sum = (of: (can: CanToFill, fraction: number) => number) =>
    used.reduce((total, can, i) => total + of(can, poured[i] ?? 0), 0);
  const pouredL = sum((can, fraction) => can.volumeL * fraction);
  if (liquid === undefined || strength === undefined || bed === undefined || !(pouredL > 0)) return undefined;
  const concentrateL = sum(({ concentrateMl }) => concentrateMl) / 1000;
  const overrode = [
    ...card.beware.filter(({ level }) => level === 'hold').map(({ rule }) => ({ rule, reason: HOLD_SHOWN })),
    ...card.passedOver.map(({ finding, reason }) => ({ rule: finding.rule, reason })),
  ];
  return {
    bed: bed.bed,
    from: [{ [liquid.kind]: liquid.id, volume: amount(concentrateL) }],
    poured: amount(pouredL),
    ratio: strength.ratio,
    way: card.way,
    cans: used.map(({ volumeL, concentrateMl }, i) => ({
      ...(card.can !== undefined && { can: card.can }),
      volumeL,
      concentrateMl,
      pouredFraction: poured[i] ?? 0,
    })),
    ...(overrode.length > 0 && { overrode }),
    ...(saidOfPicking !== undefined && { note: `next picking told at the tap: ${saidOfPicking}` }),
  };
}

function amount(volumeL: number) {
  return { typed: formatIn(volumeL, volumeL < 1 ? 'mL' : 'L').text, volumeL };
}

/** A can to choose, with its litres; without them its size is still to be told. */
export interface CanChoice {
  readonly id: string;
  readonly name: string;
  readonly typed: string | undefined;
  readonly volumeL: number | undefined;
}

/** Watering cans of the plot, the smallest first. */
export function cansOf(plot: Plot): readonly CanChoice[] {
  return [...plot.cans.values()]
    .filter((can: CanFacts) => can.gone !== true && (can.kind === undefined || can.kind === 'can'))
    .map(({ id, name, volume }) => ({
      id,
      name: name ?? '',
      typed: volume && sayTyped(volume),
      volumeL: volume?.volumeL,
    }))
    .sort((a, b) => (a.volumeL ?? Number.POSITIVE_INFINITY) - (b.volumeL ?? Number.POSITIVE_INFINITY));
}

/** Sprayers of the plot whose size is known, the smallest first. */
export function sprayersOf(plot: Plot): readonly CanChoice[] {
  return [...plot.cans.values()]
    .filter(({ gone, kind, volume }) => gone !== true && kind === 'sprayer' && volume !== undefined)
    .map(({ id, name, volume }) => ({
      id,
      name: name ?? '',
      typed: volume && sayTyped(volume),
      volumeL: volume?.volumeL,
    }))
    .sort((a, b) => (a.volumeL ?? 0) - (b.volumeL ?? 0));
}

/** What one would take without being asked: the largest can whose size is known. */
export function usualCan(cans: readonly CanChoice[]): CanChoice | undefined {
  return cans.findLast(({ volumeL }) => volumeL !== undefined);
}

/** What small doses are measured with: the jug, mL to its rim, a litre where none was told; whether there is a syringe. @practice */
export function toolsOf(plot: Plot): { readonly jugMl: number; readonly syringe: boolean } {
  const here = [...plot.cans.values()].filter(({ gone }) => gone !== true);
  const jug = here.findLast(({ kind }) => kind === 'jug');
  return { jugMl: (jug?.volume?.volumeL ?? 1) * 1000, syringe: here.some(({ kind }) => kind === 'syringe') };
}

/** What one keyholder set: whose spoon, whose gallon, which language and units. */
export function keyholderOf(plot: Plot, tag: string) {
  const found = plot.facts.keyholders?.find((one) => one.tag === tag);
  const spoon = SPOON_COUNTRIES.find((one) => one === found?.spoon);
  const gallon = found?.gallon === 'uk' ? ('imperial' as const) : found?.gallon;
  return { spoon, gallon, units: found?.units ?? ('metric' as const), language: found?.language };
}

/** A can's size as typed; whose gallon and which mark before decimals is asked where it is not said. */
export function readCanSize(typed: string, settled: Countries) {
  return parseAmount(typed, { dimension: 'volume', bareUnit: 'L', ...settled });
}
