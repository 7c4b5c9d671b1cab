// Can I take this home? Every bed with its answer: pick, wait till a day, or cook; the last feed behind it; and what is
// still to be told. What was laid on counts like a pour (dressed-wait.ts). A feed may have been told twice: it counts here as if it was poured. The days to wait are the
// engine's (can/eating.ts), by the same function that judges a pour; here it is told what was poured, and when.

import { type AnimalOrigin, type EatingReason, type EatingWait, eatingWait } from '#engine/can/eating.ts';
import { LONGEST_WAIT_DAYS } from '#engine/can/limits.ts';
import type { Range } from '#engine/quantity/range.ts';
import { guardsEaters } from '#engine/rules/eating.ts';
import type { Origin as Cited } from '#engine/rules/rule.ts';
import type { Profile } from '#engine/scraps/profile.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { Feed } from '#journal/parts/feeds.ts';
import type { Question } from '#journal/question.ts';
import type { PegName } from '#words/peg-name.ts';
import { bedsThatMayBe, counted } from './counted.ts';
import { onDay } from './dates.ts';
import { type DressedWait, dressedWaits } from './dressed-wait.ts';
import { type StateOf, sourcesOf } from './liquid.ts';
import { wasHeldThen } from './moved-hold.ts';
import { type OriginWhy, ofWater } from './origin.ts';
import { profileOf } from './profile.ts';
import { inWalkingOrder } from './round.ts';

export type PickAnswer = 'pick' | 'wait' | 'cook';

/** Why an answer is what it is. */
export type PickWhy = 'never-fed' | 'waited-long-enough' | EatingReason;

/** One pour as the list tells it. */
export interface PickFeed {
  readonly id: string;
  readonly on: string;
  readonly days: number;
  readonly way: 'soil' | 'leaf';
  readonly pegs: readonly PegName[];
  /** Whether every liquid in it was held when it was poured, and none is lost now. */
  readonly held: boolean;
  /** Set where it was held by the rule of its day and is not by today's: the wait is today's, and nobody did wrong. */
  readonly heldThen?: true;
  /** What animals may have left in it, and how it came in; undefined where it is not known what was poured. */
  readonly animalOrigin: AnimalOrigin | undefined;
  readonly animalWhy: readonly OriginWhy[];
  /** Rules that guard those who eat and were overridden for it, each with the reason that was given. */
  readonly overrode: readonly { readonly rule: string; readonly reason: string }[];
  readonly by: string;
  readonly pouredL: number;
  /** Set where it was laid on the bed, not poured. */
  readonly laid?: DressedWait['what'];
}

export interface PickBed {
  readonly bed: string;
  readonly name: string;
  readonly tag: string | undefined;
  readonly crop: string | undefined;
  readonly eaten: Bed['eaten'];
  readonly answer: PickAnswer;
  /** First day on which it may be picked raw, where it waits. */
  readonly tillOn: string | undefined;
  readonly why: PickWhy;
  readonly source: Cited;
  /** Where the days come from, where that is another source. */
  readonly daysSource: Cited;
  /** Whether a part that is eaten touches the soil, by crop and answer. */
  readonly touchesSoil: boolean;
  /** Feeds whose guard was overridden, the last one last. */
  readonly overridden: readonly PickFeed[];
  /** The feed, or what was laid on, that it waits for: not always the last. */
  readonly waitsFor: PickFeed | undefined;
  /** Days from pour to picking that the answer rests on; undefined where none is waited for. */
  readonly waitDays: number | undefined;
  readonly last: PickFeed | undefined;
  /** Litres of the last day on which it was fed: a range while it may have been told twice. */
  readonly lastL: Range | undefined;
  /** Told twice, perhaps: the question that is still open. */
  readonly question: Question | undefined;
  readonly eatenNotTold: boolean;
  /** First picking as told at planting. */
  readonly firstPickOn: string | undefined;
  readonly working: Working | undefined;
}

export interface PickAsk {
  readonly plot: Plot;
  readonly now: string;
}

/** The list, what can be taken now first, then what waits shortest. Beds that nobody eats from are left out. */
export function pickList({ plot: of, now }: PickAsk): readonly PickBed[] {
  const plot = counted(of, now);
  const today = momentOf(now).dateDay;
  const states = sourcesOf(plot);
  const profile = profileOf(plot);
  const beds = inWalkingOrder(plot)
    .map((bed) => bedsThatMayBe(bed).filter(isEatenFrom))
    .flatMap((mayBe) => strictest(mayBe.map((bed) => pickBed(plot, bed, { today, states, profile }))));
  return beds
    .map((bed, i) => ({ bed, i, key: orderKey(bed, today) }))
    .sort((a, b) => a.key - b.key || a.i - b.i)
    .map(({ bed }) => bed);
}

function isEatenFrom({ eaten, plantings }: Bed): boolean {
  return eaten !== 'not-eaten' && plantings.at(-1)?.body.act !== 'cleared';
}

const STRICT: readonly PickAnswer[] = ['pick', 'cook', 'wait'];

/** Of a bed as it is and as it may be already, the answer that opens least: the longest wait, then cook. */
function strictest(answers: readonly PickBed[]): readonly PickBed[] {
  const rank = ({ answer, tillOn }: PickBed) => `${STRICT.indexOf(answer)} ${tillOn ?? ''}`;
  const [first] = answers.toSorted((a, b) => (rank(a) > rank(b) ? -1 : rank(a) < rank(b) ? 1 : 0));
  return first === undefined ? [] : [first];
}

const NOT_RIPE = 10_000;

/** Days until something can be taken; what is not ripe by its own date comes after what is. */
function orderKey({ answer, tillOn, firstPickOn }: PickBed, today: number): number {
  const ripe = firstPickOn === undefined ? 0 : Math.max(0, momentOf(firstPickOn).dateDay - today);
  const wait = tillOn === undefined ? 0 : momentOf(tillOn).dateDay - today;
  const first = Math.max(ripe, wait);
  if (first > 0) return first + (ripe > wait ? NOT_RIPE : 100);
  return answer === 'pick' ? 0 : 1;
}

interface Asked {
  readonly today: number;
  readonly states: StateOf;
  readonly profile: Profile;
}

function pickBed(plot: Plot, bed: Bed, { today, states, profile }: Asked): PickBed {
  // What lies ahead counts as given today already (counted.ts); what was entered twice counts once.
  const feeds = bed.feeds.filter(({ counts }) => counts !== 'no');
  const tell = (feed: Feed) => feedOf(plot, feed, today, states);
  // A feed older than the last by more than any wait never is the one that is waited for.
  const lastDay = feeds.at(-1)?.act.when.dateDay ?? 0;
  const told = feeds.filter(({ act }) => lastDay - act.when.dateDay <= LONGEST_WAIT_DAYS).map(tell);
  const last = told.at(-1);
  const ids = new Set(feeds.map(({ id }) => id));
  const of = { crop: bed.crop, eaten: bed.eaten, profile };
  const bare = eatingWait({ ...of, way: 'soil', animalOrigin: 'no', held: true });
  const base = {
    bed: bed.id,
    name: bed.facts.name ?? '',
    tag: bed.facts.tag,
    crop: bed.crop,
    eaten: bed.eaten,
    last,
    lastL: last && litresOn(feeds, last.on),
    question: plot.questions.find(({ kind, about }) => kind === 'twin-feeds' && about.some((id) => ids.has(id))),
    eatenNotTold: bed.eaten === undefined,
    firstPickOn: bed.plantings.at(-1)?.body.firstPickOn,
    touchesSoil: bare.touchesSoil,
    overridden: feeds.filter(({ act }) => guarded(act).length > 0).map(tell),
  };
  // The word for a bed that waits no more: only what was entered as cooked, and counts so, is cooked.
  const free: PickAnswer = bare.countsAs === 'cooked' ? 'cook' : 'pick';
  const laid = dressedWaits(plot, bed, today).map((one) => laidOf(one, today));
  const waits = [...told, ...laid].map((feed) => ({
    feed,
    wait: eatingWait({ ...of, ...feed, overridden: feed.overrode.length > 0 }),
  }));
  const left = ({ feed, wait }: (typeof waits)[number]) => wait.days - feed.days;
  const longest = waits.reduce<(typeof waits)[number] | undefined>(
    (most, one) => (most === undefined || left(one) >= left(most) ? one : most),
    undefined,
  );
  if (longest === undefined || longest.wait.days === 0)
    return { ...base, answer: free, ...NO_WAIT, why: free === 'cook' ? 'cooked' : 'never-fed' };
  const { feed, wait } = longest;
  const waited = {
    source: wait.source,
    daysSource: wait.daysSource,
    waitDays: wait.days,
    waitsFor: feed,
    working: workWait(feed, wait),
  };
  if (left(longest) <= 0) return { ...base, ...waited, answer: free, tillOn: undefined, why: 'waited-long-enough' };
  return { ...base, ...waited, answer: 'wait', tillOn: onDay(today + left(longest)), why: wait.reason };
}

const NO_WAIT = {
  tillOn: undefined,
  source: 'our-caution',
  daysSource: 'our-caution',
  waitDays: undefined,
  waitsFor: undefined,
  working: undefined,
} as const;

function feedOf(plot: Plot, { id, act, pouredL }: Feed, today: number, states: StateOf): PickFeed {
  const { from, way, water } = act.body;
  const then = from.map((source) => states(source, act.when.on));
  const now = from.map((source) => states(source, onDay(today)));
  const held =
    then.length > 0 &&
    then.every((state) => state?.held === true) &&
    now.every((state) => state !== undefined && state.state !== 'lost');
  const inCan = water === undefined ? [] : ofWater(plot, water);
  const unknown = then.length === 0 || then.includes(undefined);
  const animal = worst([...then.map((state) => state?.animalOrigin ?? 'no'), ...inCan.map(originOfWater)]);
  return {
    id,
    on: onDay(act.when.dateDay),
    days: today - act.when.dateDay,
    way,
    pegs: [...new Set(then.flatMap((state) => state?.peg ?? []))],
    held,
    ...(!held && wasHeldThen(act, onDay(today), states) && { heldThen: true as const }),
    // What is known to be bad stays bad beside what is not known.
    animalOrigin: unknown && animal !== 'yes' ? undefined : animal,
    animalWhy: [...new Set([...then.flatMap((state) => state?.animalWhy ?? []), ...inCan])],
    overrode: guarded(act),
    by: act.by,
    pouredL,
  };
}

/** Rules that guard those who eat, as they were passed over for a pour. */
function guarded({ body }: Feed['act']): PickFeed['overrode'] {
  return (body.overrode ?? []).filter(({ rule }) => guardsEaters(rule));
}

/** What was laid on the soil, as the list tells it. */
function laidOf({ id, what, dateDay, ...left }: DressedWait, today: number): PickFeed {
  const when = { on: onDay(dateDay), days: today - dateDay };
  return { id, ...when, way: 'soil', pegs: [], overrode: [], pouredL: 0, laid: what, ...left };
}

const ORIGINS: readonly AnimalOrigin[] = ['no', 'possible', 'yes'];

function worst(of: readonly AnimalOrigin[]): AnimalOrigin {
  return of.reduce((most, one) => (ORIGINS.indexOf(one) > ORIGINS.indexOf(most) ? one : most), 'no');
}

function originOfWater(why: OriginWhy): AnimalOrigin {
  return why === 'droppings' ? 'yes' : 'possible';
}

/** Litres of all pours on one date: the least if every doubtful one was told twice, the most if none was. @arithmetic */
function litresOn(feeds: readonly Feed[], on: string): Range {
  const day = momentOf(on).dateDay;
  const sum = (counts: readonly string[]) =>
    feeds
      .filter((feed) => feed.act.when.dateDay === day && counts.includes(feed.counts))
      .reduce((total, { pouredL }) => total + pouredL, 0);
  const low = sum(['yes']);
  const high = sum(['yes', 'maybe']);
  return { low, likely: (low + high) / 2, high };
}

function workWait(feed: PickFeed, { days, source, daysSource, reason }: EatingWait): Working {
  const doubt: Readonly<Record<string, string>> = {
    'nosb-2004': 'that report speaks of compost teas that were not tested; we take it for this feed',
    'cfr-7-205-203': 'that code speaks of raw manure dug in; we take it for a feed that is poured',
    'our-caution': 'no trial of such a feed stands behind this figure; local rules may ask for more',
  };
  return {
    figure: 'tillOn',
    label: 'days to wait before it is picked',
    unit: 'days',
    formula: 'days from pour to picking − days since the pour, not below 0; of several pours and reasons the longest',
    value: Math.max(0, days - feed.days),
    inputs: [
      { label: 'days from pour to picking', value: days, unit: 'days', source: daysSource },
      { label: 'days since the pour', value: feed.days, unit: 'days' },
      { label: 'poured on', value: feed.on, unit: '' },
    ],
    sources: [...new Set([source, daysSource])],
    doubts: [
      doubt[daysSource] ?? '',
      ...(reason === 'sold-untreated'
        ? ['21 CFR 112.56 leaves the days open ("Reserved"); we take those of the report of 2004']
        : []),
    ].filter((text) => text !== ''),
  };
}
