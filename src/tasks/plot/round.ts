// One round over the beds: in walking order, each with yes, hold or never and every reason with its source, and the
// litres and concentrate it wants. The rules are the engine's; here the plot's facts are put before them.

import { countsAs } from '#engine/can/eating.ts';
import { LONGEST_WAIT_DAYS, RAW_MANURE_DAYS, RAW_SOIL_DAYS, SCHOOL_RAW_DAYS, type Way } from '#engine/can/limits.ts';
import { type PourBatch, type PourOrder, pour } from '#engine/can/pour.ts';
import type { CanWater } from '#engine/can/strength.ts';
import { TAP_PH } from '#engine/can/strength.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { bedRules } from '#engine/rules/bed.ts';
import { canRules } from '#engine/rules/can.ts';
import { eatingRules } from '#engine/rules/eating.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import { lastRoundOn, spaced } from './between-feeds.ts';
import { bedsThatMayBe, counted } from './counted.ts';
import { type Liquid, liquidsOf } from './liquid.ts';
import { profileOf } from './profile.ts';
import { type StrengthChoice, type StrengthOf, strengthFor } from './strength.ts';

/** Litres poured on a square metre, and on a pot. @practice */
export const LITRES_PER = { m2: 2, pot: 1 } as const;

/** yes: feed it · hold: not now, and why · never: not this bed. */
export type Verdict = 'yes' | 'hold' | 'never';

/** What a keyholder says of the next picking at the tap; undefined while nobody said. */
export type NextPick = 'soon' | 'later' | 'after-21' | 'after-90' | 'far';
/** Days that each answer stands for, on the careful side. */
const NEXT_PICK_DAYS: Readonly<Record<NextPick, number>> = {
  soon: 0,
  later: RAW_SOIL_DAYS,
  'after-21': SCHOOL_RAW_DAYS,
  'after-90': RAW_MANURE_DAYS.otherwise,
  far: LONGEST_WAIT_DAYS + 1,
};

/** The answers worth asking for: the usual three, and any other that is just as long as something waits for. */
export function nextPickAnswers(waiting: readonly Finding[]): readonly NextPick[] {
  const asked = new Set(waiting.map(({ values }) => values.days));
  const all: readonly NextPick[] = ['soon', 'later', 'after-21', 'after-90', 'far'];
  return all.filter((one) => !one.startsWith('after-') || asked.has(NEXT_PICK_DAYS[one]));
}

export interface RoundAsk {
  readonly plot: Plot;
  /** Local date and time. */
  readonly now: string;
  /** Id of the liquid to pour; without one the round is judged without a batch. */
  readonly liquid?: string | undefined;
  readonly strength?: StrengthChoice | undefined;
  /** Litres for a square metre or a pot, where a bed's is not the usual one; by the bed's id. */
  readonly litresPer?: Readonly<Record<string, number>> | undefined;
  readonly way?: Way | undefined;
  /** What was said of the next picking, by the bed's id. */
  readonly nextPick?: Readonly<Record<string, NextPick>> | undefined;
}

/** What is fed of a bed: square metres or pots, and litres for each. */
export interface Portion {
  readonly unit: keyof typeof LITRES_PER;
  readonly count: number;
  readonly litresPer: number;
  readonly totalL: number;
}

export interface RoundBed {
  readonly bed: string;
  readonly name: string;
  readonly tag: string | undefined;
  readonly crop: string | undefined;
  readonly eaten: Bed['eaten'];
  readonly verdict: Verdict;
  readonly reasons: readonly Finding[];
  /** Undefined where no size was told. */
  readonly portion: Portion | undefined;
  /** Concentrate it wants, mL; undefined where nothing is poured on it. */
  readonly concentrateMl: number | undefined;
  /** Days since the last pour that counts or may count. */
  readonly fedDays: number | undefined;
  /** Local date of the last pour that was a whole feed. */
  readonly lastRoundOn: string | undefined;
  /** Where nothing but the days since its last feed speaks against it: the date of its next round, today or later. */
  readonly nextOn: string | undefined;
}

export interface Round {
  readonly liquid: Liquid | undefined;
  readonly strength: StrengthOf | undefined;
  readonly beds: readonly RoundBed[];
  /** Sums over the beds that say yes; nothing where there is nothing to pour. */
  readonly totalL: number;
  readonly concentrateL: number;
}

/** The usual choice of strength. */
export const MATCHED: StrengthChoice = { kind: 'matched' };

/** Beds in the order one walks past them; those without a place in it last, by tag or name. */
export function inWalkingOrder(plot: Plot): readonly Bed[] {
  const place = ({ facts }: Bed) => facts.walkingOrder ?? Number.POSITIVE_INFINITY;
  const label = ({ facts }: Bed) => facts.tag ?? facts.name ?? '';
  return [...plot.beds.values()]
    .filter(({ facts }) => facts.gone !== true)
    .sort((a, b) => compare(place(a), place(b)) || compare(label(a), label(b)) || compare(a.id, b.id));
}

function compare<T extends number | string>(a: T, b: T): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Which beds a round would feed, and what it would take. */
export function roundOver(asked: RoundAsk): Round {
  const ask = { ...asked, plot: counted(asked.plot, asked.now) };
  const liquid = liquidsOf(ask.plot, ask.now).find(({ id }) => id === ask.liquid);
  const strength = strengthFor(ask.strength ?? MATCHED, liquid?.plantsGPerL);
  const judged = inWalkingOrder(ask.plot).map((bed) => strictestBed(bed, liquid, strength, ask));
  const beds = spaced(judged, ask.now).map(({ findings, ...bed }) => withReasons(bed, findings));
  const isPouring = liquid !== undefined && strength !== undefined;
  const fed = isPouring ? beds.filter(({ verdict }) => verdict === 'yes') : [];
  return {
    liquid,
    strength,
    beds,
    totalL: fed.reduce((sum, { portion }) => sum + (portion?.totalL ?? 0), 0),
    concentrateL: fed.reduce((sum, { concentrateMl }) => sum + (concentrateMl ?? 0), 0) / 1000,
  };
}

/** One bed as a round sees it, and what it is fed from. */
export function bedOfRound(
  asked: RoundAsk,
  id: string,
): Pick<Round, 'liquid' | 'strength'> & { readonly bed?: RoundBed } {
  const { liquid, strength, beds } = roundOver(asked);
  const bed = beds.find((one) => one.bed === id);
  return { liquid, strength, ...(bed && { bed }) };
}

/** A bed with more reasons, and the verdict that they come to. */
function withReasons<B extends Judged>(bed: B, more: readonly Finding[]): B {
  if (more.length === 0) return bed;
  const reasons = [...bed.reasons, ...more];
  return { ...bed, reasons, verdict: verdictOf(reasons) };
}

/** A bed before its round is set beside those of the others. */
type Judged = Omit<RoundBed, 'nextOn'>;

const STRICT: readonly Verdict[] = ['never', 'hold', 'yes'];

/** A bed as it is and as it may be already: the answer that feeds least. */
function strictestBed(bed: Bed, liquid: Liquid | undefined, strength: StrengthOf | undefined, ask: RoundAsk): Judged {
  const rank = ({ verdict }: Judged) => STRICT.indexOf(verdict);
  return bedsThatMayBe(bed)
    .map((one) => roundBed(one, liquid, strength, ask))
    .reduce((strictest, one) => (rank(one) < rank(strictest) ? one : strictest));
}

function roundBed(bed: Bed, liquid: Liquid | undefined, strength: StrengthOf | undefined, ask: RoundAsk): Judged {
  const { facts, crop, eaten } = bed;
  const portion = portionOf(bed, ask.litresPer?.[bed.id]);
  const fedDays = daysSinceFed(bed, ask.now);
  const reasons = [
    ...judge(bedRules, {
      feed: facts.feed,
      eaten,
      grows: grows(bed),
      sized: portion !== undefined,
      fedDays,
    }),
    ...(liquid === undefined || strength === undefined ? [] : ofPour(orderFor(bed, portion, liquid, strength, ask))),
  ];
  const verdict = verdictOf(reasons);
  const poured = strength === undefined || portion === undefined ? undefined : pourOf(portion, strength);
  return {
    bed: bed.id,
    name: facts.name ?? '',
    tag: facts.tag,
    crop,
    eaten,
    verdict,
    reasons,
    portion,
    concentrateMl: verdict === 'never' ? undefined : poured,
    fedDays,
    lastRoundOn: lastRoundOn(bed, portionOf(bed)?.totalL, ask.now),
  };
}

/** Millilitres of concentrate in so many litres. @arithmetic */
function pourOf({ totalL }: Portion, { ratio }: StrengthOf): number {
  const { dose } = pour({ strength: { kind: 'ratio', ratio }, canL: totalL, way: 'soil', spoon: null });
  return dose?.perCan.concentrateMl ?? Number.NaN;
}

function grows(bed: Bed): boolean {
  return bed.plantings.at(-1)?.body.act !== 'cleared';
}

/** What is fed of a bed: the part that is fed where it is told, else the whole, else its pots. @arithmetic */
export function portionOf({ facts }: Bed, litresPer?: number): Portion | undefined {
  const areaM2 = facts.fedArea?.areaM2 ?? facts.area?.areaM2;
  const unit = facts.pots === undefined ? 'm2' : 'pot';
  const count = facts.pots?.count ?? areaM2;
  if (count === undefined) return undefined;
  const each = litresPer ?? LITRES_PER[unit];
  return { unit, count, litresPer: each, totalL: Number((count * each).toPrecision(12)) };
}

/** Litres on a square metre or in a pot, one step up or down. @arithmetic half litres, 0.5 to 10 */
export function steppedLitres(litresPer: number, by: -1 | 1): number {
  return Math.min(10, Math.max(0.5, (Math.round(litresPer * 2) + by) / 2));
}

function daysSinceFed(bed: Bed, now: string): number | undefined {
  const today = momentOf(now).dateDay;
  const fed = bed.feeds.filter(({ counts, act }) => counts !== 'no' && act.when.dateDay <= today).at(-1);
  return fed === undefined ? undefined : today - fed.act.when.dateDay;
}

/** The order for one bed as the engine takes it. What nobody told counts as eaten raw. */
export function orderFor(
  bed: Bed,
  portion: Portion | undefined,
  liquid: Liquid,
  strength: StrengthOf,
  ask: Pick<RoundAsk, 'plot' | 'now' | 'way' | 'nextPick'>,
): PourOrder {
  const profile = profileOf(ask.plot);
  return {
    batch: batchFor(liquid),
    strength: { kind: 'ratio', ratio: strength.ratio },
    canL: portion?.totalL ?? 1,
    areaM2: portion?.count,
    depthLPerM2: portion?.litresPer,
    spoon: null,
    water: waterOf(ask.plot),
    crop: bed.crop,
    way: ask.way ?? 'soil',
    eaten: countsAs({ eaten: bed.eaten, crop: bed.crop, profile }) === 'raw' ? 'raw' : 'cooked',
    eatenPart: bed.eaten,
    profile,
    toPickDays: toPickDays(bed, ask),
  };
}

function batchFor({ peg, state, held, heldOn, ph, ecDsPerM, animalOrigin }: Liquid): PourBatch {
  return { peg, state, held, heldOn, ph, ecDsPerM, animalOrigin };
}

/** Days to the next picking: as said at the tap, else as told at planting while nothing was picked yet. */
function toPickDays(bed: Bed, ask: Pick<RoundAsk, 'now' | 'nextPick'>): number | undefined {
  const said = ask.nextPick?.[bed.id];
  if (said !== undefined) return NEXT_PICK_DAYS[said];
  const firstPickOn = bed.plantings.at(-1)?.body.firstPickOn;
  if (firstPickOn === undefined) return undefined;
  const days = momentOf(firstPickOn).dateDay - momentOf(ask.now).dateDay;
  // Once the first picking has passed nobody has told when the next one is.
  return days > 0 ? days : undefined;
}

/** The water the can is filled with: the tap as last reported, else whatever was reported last with its alkalinity. */
function waterOf({ waters }: Plot): CanWater | undefined {
  const told = waters.filter(({ body }) => body.alkalinity !== undefined);
  const body = (told.findLast(({ body: { source } }) => source === 'tap') ?? told.at(-1))?.body;
  if (body?.alkalinity === undefined) return undefined;
  const { alkalinityMeqPerL } = body.alkalinity;
  return { alkalinityMeqPerL, ph: body.ph ?? TAP_PH, ecDsPerM: body.ecDsPerM };
}

/** Findings of batch and can on one order; where something stops the pour, the notes on how to pour are left out. */
export function ofPour(order: PourOrder): readonly Finding[] {
  const farOrCooked = order.eaten === 'cooked' || (order.toPickDays ?? 0) > NEXT_PICK_DAYS.far - 1;
  const ofBatch = longestWaits(
    judge([...batchRules, ...eatingRules], order).filter(
      // What it says of other beds is no hold on this one.
      ({ rule }) => !(rule === 'batch-not-held' && farOrCooked),
    ),
  );
  const ofCan = judge(canRules, { order, pour: pour(order) });
  const stopped = [...ofBatch, ...ofCan].some(({ level }) => level === 'stop');
  return [...ofBatch, ...ofCan.filter(({ level }) => !stopped || level !== 'note')];
}

/** Holds that wait for the same picking: the longest says it for all. */
const PICKED_SOON: readonly string[] = [
  ...['raw-bed-picked-soon', 'batch-not-held-raw-bed', 'eating-manure-picked-soon'],
  ...['eating-animal-possible-picked-soon', 'eating-sold-picked-soon', 'eating-school-picked-soon'],
];

function longestWaits(found: readonly Finding[]): readonly Finding[] {
  const days = ({ rule, values }: Finding) => (PICKED_SOON.includes(rule) ? Number(values.days) : Number.NaN);
  const most = Math.max(0, ...found.map(days).filter(Number.isFinite));
  return found.filter((one) => !(days(one) < most));
}

/** The worst of the reasons. */
export function verdictOf(reasons: readonly Finding[]): Verdict {
  if (reasons.some(({ level }) => level === 'stop')) return 'never';
  return reasons.some(({ level }) => level === 'hold') ? 'hold' : 'yes';
}
