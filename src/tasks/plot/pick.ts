// Can I take this home? Every bed with its answer: pick, wait till a day, or cook; the last feed behind it; and what is
// still to be told. A feed may have been told twice: it counts here as if it was poured. The days to wait are the
// engine's; which of them holds follows from how the crop is eaten and from what the batch was when it was poured.

import { NOT_HELD_DAYS, RAW_SOIL_DAYS } from '#engine/can/limits.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Origin } from '#engine/rules/rule.ts';
import type { Working } from '#engine/working/working.ts';
import type { Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import type { Bed } from '#journal/parts/beds.ts';
import type { Feed } from '#journal/parts/feeds.ts';
import type { Question } from '#journal/question.ts';
import { onDay } from './dates.ts';
import { type LiquidState, sourceAt } from './liquid.ts';
import { inWalkingOrder } from './round.ts';

export type PickAnswer = 'pick' | 'wait' | 'cook';

/** Why an answer is what it is. */
export type PickWhy =
  | 'never-fed'
  | 'waited-long-enough'
  | 'held-raw'
  | 'not-held-raw'
  | 'source-not-known'
  | 'sprayed-raw'
  | 'cooked';

/** One pour as the list tells it. */
export interface PickFeed {
  readonly id: string;
  readonly on: string;
  readonly days: number;
  readonly way: 'soil' | 'leaf';
  readonly pegs: readonly number[];
  /** Whether every liquid in it was held when it was poured, and none is lost now. */
  readonly held: boolean;
  readonly by: string;
  readonly pouredL: number;
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
  readonly source: Origin;
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
export function pickList({ plot, now }: PickAsk): readonly PickBed[] {
  const today = momentOf(now).dateDay;
  const states = remembered(plot);
  const beds = inWalkingOrder(plot)
    .filter((bed) => bed.eaten !== 'not-eaten' && bed.plantings.at(-1)?.body.act !== 'cleared')
    .map((bed) => pickBed(plot, bed, today, states));
  return beds
    .map((bed, i) => ({ bed, i, key: orderKey(bed, today) }))
    .sort((a, b) => a.key - b.key || a.i - b.i)
    .map(({ bed }) => bed);
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

type Source = Feed['act']['body']['from'][number];
type StateOf = (source: Source, at: string) => (LiquidState & { readonly peg: number }) | undefined;

/** The word for a source on a date, asked once: a season's feeds come from a few pegs on a few dates. */
function remembered(plot: Plot): StateOf {
  const known = new Map<string, ReturnType<StateOf>>();
  return (source, at) => {
    const key = `${source.bottle ?? ''} ${source.batch ?? ''} ${at}`;
    if (!known.has(key)) known.set(key, sourceAt(plot, source, at));
    return known.get(key);
  };
}

function pickBed(plot: Plot, bed: Bed, today: number, states: StateOf): PickBed {
  const feeds = bed.feeds.filter(({ counts, act }) => counts !== 'no' && act.when.dateDay <= today);
  const told = feeds.map((feed) => feedOf(feed, today, states));
  const last = told.at(-1);
  const base = {
    bed: bed.id,
    name: bed.facts.name ?? '',
    tag: bed.facts.tag,
    crop: bed.crop,
    eaten: bed.eaten,
    last,
    lastL: last && litresOn(feeds, last.on),
    question: plot.questions.find(
      ({ kind, about }) => kind === 'twin-feeds' && about.some((id) => feeds.some((feed) => feed.id === id)),
    ),
    eatenNotTold: bed.eaten === undefined,
    firstPickOn: bed.plantings.at(-1)?.body.firstPickOn,
  };
  if (bed.eaten === 'cooked') return { ...base, answer: 'cook', ...NO_WAIT, why: 'cooked' };
  if (last === undefined) return { ...base, answer: 'pick', ...NO_WAIT, why: 'never-fed' };
  const waits = told.map((feed) => ({ feed, ...waitFor(feed) }));
  const longest = waits.reduce((a, b) => (b.days - b.feed.days >= a.days - a.feed.days ? b : a));
  const leftDays = longest.days - longest.feed.days;
  const waited = {
    source: longest.source,
    waitDays: longest.days,
    working: workWait(longest.feed, longest.days, longest.source),
  };
  if (leftDays <= 0) return { ...base, ...waited, answer: 'pick', tillOn: undefined, why: 'waited-long-enough' };
  return { ...base, ...waited, answer: 'wait', tillOn: onDay(today + leftDays), why: longest.why };
}

const NO_WAIT = { tillOn: undefined, source: 'our-caution', waitDays: undefined, working: undefined } as const;

/** Days from one pour to picking for raw eating. What is not known is waited for the longest. */
function waitFor({ way, held, pegs }: PickFeed): {
  readonly days: number;
  readonly why: PickWhy;
  readonly source: Origin;
} {
  if (way === 'leaf') return { days: NOT_HELD_DAYS, why: 'sprayed-raw', source: 'nosb-2004' };
  if (held) return { days: RAW_SOIL_DAYS, why: 'held-raw', source: 'our-caution' };
  return { days: NOT_HELD_DAYS, why: pegs.length === 0 ? 'source-not-known' : 'not-held-raw', source: 'nosb-2004' };
}

function feedOf({ id, act, pouredL }: Feed, today: number, states: StateOf): PickFeed {
  const then = act.body.from.map((source) => states(source, act.when.on));
  const now = act.body.from.map((source) => states(source, onDay(today)));
  const held =
    then.length > 0 &&
    then.every((state) => state?.held === true) &&
    now.every((state) => state !== undefined && state.state !== 'lost');
  return {
    id,
    on: onDay(act.when.dateDay),
    days: today - act.when.dateDay,
    way: act.body.way,
    pegs: [...new Set(then.flatMap((state) => state?.peg ?? []))],
    held,
    by: act.by,
    pouredL,
  };
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

function workWait(feed: PickFeed, days: number, source: Origin): Working {
  return {
    figure: 'tillOn',
    label: 'days to wait before it is picked',
    unit: 'days',
    formula: 'days from pour to picking − days since the pour, not below 0',
    value: Math.max(0, days - feed.days),
    inputs: [
      { label: 'days from pour to picking', value: days, unit: 'days', source },
      { label: 'days since the pour', value: feed.days, unit: 'days' },
      { label: 'poured on', value: feed.on, unit: '' },
    ],
    sources: [source],
    doubts:
      source === 'nosb-2004'
        ? ['that report speaks of compost teas that were not tested; we take it for a feed that is not held']
        : ['no trial of such a feed stands behind this figure; local rules may ask for more'],
  };
}
