// The pick list in plain English: bed, crop, one answer and the last feed in six words a line at most; why, one touch
// below. A test counts the words of every line of the demo garden.

import type { EatingReason } from '#engine/can/eating.ts';
import type { Range } from '#engine/quantity/range.ts';
import { citation } from '#engine/tables/index.ts';
import { figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';
import { movedHoldWords } from './moved-hold.ts';

type Why = 'never-fed' | 'waited-long-enough' | EatingReason;
type HowIn =
  | 'manure'
  | 'meat'
  | 'plate'
  | 'droppings'
  | 'compost'
  | 'open-water'
  | 'water-not-told'
  | 'starter'
  | 'starter-not-told'
  | 'scraps-not-named';

/** One pour as the line tells it. */
interface FeedSaid {
  readonly days: number;
  readonly way: 'soil' | 'leaf';
  readonly pegs: readonly PegName[];
  readonly held: boolean;
  readonly heldThen?: true;
}

const ago = (days: number) => (days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`);

/** "18 July": short enough for the line, and no weekday that a printed list would outlive. */
function dayAndMonth(on: string, today: string): string {
  return sayDate(on, today).split(' ').slice(1).join(' ');
}

export const pick = {
  empty: 'Each bed will stand here with one word: pick, wait or cook.',
  start: 'Tell the beds of the plot',
  pick: 'Pick',
  cook: 'Cook',
  wait: (till: string, today: string) => `Wait till ${dayAndMonth(till, today)}`,
  waitDay: (till: string, today: string) => `First day to pick it raw: ${sayDate(till, today)}.`,
  ago: (feed: Pick<FeedSaid, 'days' | 'way'>) => `${feed.way === 'leaf' ? 'sprayed' : 'fed'} ${ago(feed.days)}`,
  neverFed: 'never fed',
  bed: 'bed',
  crop: 'crop',
  pencil: 'picked',
  noCrop: 'crop not told',
  whyOf: (bed: string) => `why? ${bed}`,
  why: 'why?',
  working: 'The working',
  source: (origin: string) => citation(origin),
  toldTwice: 'Told twice?',
  question: (litres: Range) =>
    `Two phones say they fed this bed within a day: ${figure(litres.low, 0)} to ${withUnit(litres.high, 'L', 0)}. It may be one pour or two. Until somebody answers, it counts as poured.`,
  answerIt: 'Answer it in the record',
  eatenNotTold: 'Eaten raw or cooked? Nobody has told; it counts as raw.',
  tell: 'Tell it on the sheet of the plot',
  notRipe: (on: string, today: string) => `first picking told for ${sayDate(on, today)}`,
  foot: 'Only feed poured or sprayed is counted here, not compost or mulch. Wash what is eaten raw. Local rules may ask for more.',
  print: 'Print this list',
  last: (text: string) => `Last feed: ${text}.`,
  waitsFor: (on: string, today: string) => `It waits for an earlier feed, of ${sayDate(on, today)}.`,
  waitsForLaid: (what: 'solids' | 'compost' | 'mulch', on: string, today: string) =>
    `It waits for the ${what === 'solids' ? 'strained solids' : what} put on ${sayDate(on, today)}.`,
  daysFrom: (origin: string) => `The days: ${citation(origin)}`,
  overrode: (reason: string, on: string, today: string) =>
    `A caution for those who eat was overridden for the feed of ${sayDate(on, today)}: “${reason}”. The longest wait holds.`,
  feed: ({ days, way, pegs, held, heldThen }: FeedSaid) => {
    const from = pegs.length === 0 ? 'from what is not known' : pegs.map((peg) => `peg ${peg}`).join(', ');
    return `${way === 'leaf' ? 'leaves' : 'soil'}, ${ago(days)}, ${from}, ${held ? 'held' : heldThen ? movedHoldWords.heldThen : 'not held'}`;
  },
} as const;

/** Why the answer is what it is, in one sentence or two; `days` is what is waited from pour to picking. */
export const pickWhy: Readonly<Record<Why, (days: number, touchesSoil: boolean) => string>> = {
  'never-fed': () => 'No feed was ever written down for this bed, so there is nothing to wait for.',
  'waited-long-enough': (days) => `${withUnit(days, 'days', 0)} from pour to picking have passed.`,
  'held-raw': (days) =>
    `Eaten raw, and fed on the soil from a held batch: ${withUnit(days, 'days', 0)} from pour to picking.`,
  'not-held-raw': (days) =>
    `Eaten raw, and fed from a batch that was not held when it was poured, or is lost now: ${withUnit(days, 'days', 0)}.`,
  'source-not-known': (days) =>
    `Eaten raw, and nobody wrote down which batch was poured: ${withUnit(days, 'days', 0)}. Name the batch in the record.`,
  'sprayed-raw': (days) => `Eaten raw, and sprayed on the leaves: ${withUnit(days, 'days', 0)}.`,
  'animal-origin': (days, touches) =>
    `Manure, meat, plate scraps or droppings went into the batch: ${withUnit(days, 'days', 0)} from pour to picking, cooked or not, ${onSoil(touches)}. Local codes may ask for more.`,
  'animal-origin-possible': (days, touches) =>
    `Eaten raw, and animals may have reached what is in the batch: ${withUnit(days, 'days', 0)} from pour to picking, ${onSoil(touches)}, as for raw manure. That is our caution.`,
  'sold-untreated': (days, touches) =>
    `Food is sold from here. A feed with sugar counts as untreated in the US produce rule, held or not; as a yardstick we ask for ${withUnit(days, 'days', 0)} from pour to picking, ${onSoil(touches)}.`,
  'immune-weak': (days) =>
    `Eaten raw, and someone who eats here has weak immunity: such a bed gets no feed, and what was poured waits the longest, ${withUnit(days, 'days', 0)}. That is our caution.`,
  overridden: (days) =>
    `A caution for those who eat was overridden when it was fed: the longest wait holds, ${withUnit(days, 'days', 0)}.`,
  school: (days) =>
    `Eaten raw by a class, and fed from a held batch: ${withUnit(days, 'days', 0)} from pour to picking. That is our caution.`,
  cooked: () => 'Entered as cooked. Cook it, whatever was poured.',
  'not-eaten': () => 'Nobody eats from this bed.',
};

function onSoil(touches: boolean): string {
  return touches
    ? 'since what is eaten touches the soil or is splashed from it'
    : 'since what is eaten is held off the soil';
}

/** How animals may have come into a batch. */
export const pickHowIn: Readonly<Record<HowIn, string>> = {
  manure: 'manure went into the batch',
  meat: 'meat, fish or dairy went into the batch',
  plate: 'cooked food or plate scraps went into the batch',
  droppings: 'droppings were seen in its water',
  compost: 'compost went into the batch',
  'open-water': 'its water came from a roof, a ditch, a pond or another open place',
  'water-not-told': 'nobody told where its water came from',
  starter: 'it was started with such a batch',
  'starter-not-told': 'nobody told which batch it was started with',
  'scraps-not-named': 'something in it is not in the list of scraps',
};
