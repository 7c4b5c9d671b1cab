// The cress test in plain English: the form, what is wrong at a field, and the printed card around the steps of spray.ts.

import { counted, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';

export const cressForm = {
  title: 'Cress test',
  lead: (peg: PegName) => `Seeds on paper wet with peg ${peg}, diluted, beside seeds in the water alone.`,
  compostTitle: 'Cress test of compost',
  compostLead: (heap: string) =>
    `Seeds on paper wet with water that stood a day on compost of ${heap}, one part in ten, beside seeds in the water alone.`,
  compostNone: 'Nothing went onto a heap of that name yet.',
  toHeap: 'To the heap',
  noFeed: 'This feed is not on the plot. Choose one from the shelf.',
  toShelf: 'To the shelf',
  toCard: 'Print the card with the steps',
  row: (row: string) => (row === 'control' ? 'Water alone' : `1 in ${row}`),
  sown: 'Seeds laid',
  germinated: 'Seeds with a root',
  roots: 'Root lengths, mm',
  rootsHint: 'one for each root, such as 21 18 24, or their mean',
  write: 'Write the test down',
  written: 'Written down.',
  notWritten: 'Not written down: the browser refused to keep it. Try again.',
  noControl: 'The water alone is missing; allowed: its seeds with a root, and their lengths.',
  noSample: 'No strength is told; allowed: at least one of 1 in 10, 50, 100 and 200.',
  noCount: (value: string) => `"${value}" is no count; allowed: a whole number of seeds.`,
  tooMany: (germinated: number, sown: number) =>
    `"${germinated}" is more than was laid; allowed: 0 to ${counted(sown, 'seed')}.`,
  noLength: (value: string) =>
    `"${value}" holds no lengths; allowed: 0 to ${withUnit(300, 'mm')}, a space between two.`,
  otherCount: (lengths: number, germinated: number) =>
    `${counted(lengths, 'length')} for ${counted(germinated, 'root')}; allowed: one for each root, or their mean alone.`,
  results: 'Tests of this feed',
  link: 'Cress test',
  cardTitle: 'Cress test card',
  cardNote: 'A5, for the windowsill: the steps, and a table for pencil.',
  cardFeed: 'Feed, peg',
  cardSown: 'Laid on',
  cardRead: 'Read on',
} as const;
