// The pick list in plain English: one answer word a bed, the last feed behind it, and why, one touch below.

import type { Range } from '#engine/quantity/range.ts';
import { citation } from '#engine/tables/index.ts';
import { figure, withUnit } from '../figures.ts';
import { sayDate } from './app.ts';

type Why =
  | 'never-fed'
  | 'waited-long-enough'
  | 'held-raw'
  | 'not-held-raw'
  | 'source-not-known'
  | 'sprayed-raw'
  | 'cooked';

/** One pour as the line tells it. */
interface FeedSaid {
  readonly days: number;
  readonly way: 'soil' | 'leaf';
  readonly pegs: readonly number[];
  readonly held: boolean;
}

export const pick = {
  empty: 'Each bed will stand here with one word: pick, wait or cook.',
  start: 'Tell the beds of the plot',
  pick: 'Pick',
  cook: 'Cook',
  wait: (till: string, today: string) => `Wait till ${sayDate(till, today)}`,
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
  feed: ({ days, way, pegs, held }: FeedSaid) => {
    const ago = days === 0 ? 'today' : days === 1 ? 'yesterday' : `${days} days ago`;
    const from = pegs.length === 0 ? 'from what is not known' : pegs.map((peg) => `peg ${peg}`).join(', ');
    return `${way === 'leaf' ? 'leaves' : 'soil'}, ${ago}, ${from}, ${held ? 'held' : 'not held'}`;
  },
} as const;

/** Why the answer is what it is, in one sentence or two; `days` is what is waited from pour to picking. */
export const pickWhy: Readonly<Record<Why, (days: number) => string>> = {
  'never-fed': () => 'No feed was ever written down for this bed, so there is nothing to wait for.',
  'waited-long-enough': (days) => `${withUnit(days, 'days', 0)} from pour to picking have passed.`,
  'held-raw': (days) =>
    `Eaten raw, and fed on the soil from a held batch: ${withUnit(days, 'days', 0)} from pour to picking.`,
  'not-held-raw': (days) =>
    `Eaten raw, and fed from a batch that was not held when it was poured, or is lost now: ${withUnit(days, 'days', 0)}.`,
  'source-not-known': (days) =>
    `Eaten raw, and nobody wrote down which batch was poured: ${withUnit(days, 'days', 0)}. Name the batch in the record.`,
  'sprayed-raw': (days) => `Eaten raw, and sprayed on the leaves: ${withUnit(days, 'days', 0)}.`,
  cooked: () => 'Entered as cooked. Cook it, whatever was poured.',
};
