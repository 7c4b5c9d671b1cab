// What comes in: scraps weighed with their source slip, the bean test of a lot set aside, products bought.
// Where a lot may go is judged by the fold and the rules; `goes` is what the keyholder decided at the scale.

import * as z from 'zod/mini';
import {
  analysis,
  date,
  fields,
  id,
  mass,
  material,
  name,
  note,
  number,
  oneOf,
  text,
  volume,
  whole,
} from '../bounds.ts';
import { says } from '../problem.ts';

/** Whose it was and what it was treated with; 'unknown' is an answer, and of kitchen food weedkiller is not asked. */
const slip = fields({
  whose: oneOf(['own', 'household', 'neighbour', 'shared', 'bought', 'found', 'unknown']),
  /** Where it grew or stood, in the keyholder's words. */
  from: z.optional(text(80)),
  /** The same as one of a few words, for the rules. */
  cameFrom: z.optional(oneOf(['garden', 'kitchen', 'neighbour', 'street', 'shop', 'unknown'])),
  treated: z.optional(oneOf(['no', 'unknown', 'yes'])),
  treatedWith: z.optional(text(120)),
  weedkiller: z.optional(oneOf(['lasting', 'other', 'unknown'])),
  /** Whether the label of another weedkiller lets the lot leave the lawn. */
  labelAllows: z.optional(oneOf(['yes', 'no', 'unknown'])),
  treatedOn: z.optional(date),
  untreatedMonths: z.optional(number(0, 600, 'months')),
});

export const scrapsWeighed = fields({
  material: z.optional(material),
  name: z.optional(name),
  mass,
  slip: z.optional(slip),
  condition: z.optional(oneOf(['fresh', 'wilted', 'dry', 'frozen', 'slimy'])),
  origin: z.optional(oneOf(['garden', 'kitchen', 'cooked', 'plate'])),
  /** Of kitchen scraps that are neither told cooked nor off the plate. */
  kitchen: z.optional(oneOf(['raw', 'unknown'])),
  goes: z.optional(oneOf(['in', 'set-aside', 'compost-only', 'out'])),
  analysis: z.optional(analysis),
  place: z.optional(text(80)),
  note: z.optional(note),
}).check(
  z.refine((lot) => lot.material !== undefined || lot.name !== undefined, {
    path: ['material'],
    error: says('is missing, and so is a name', 'an id of the materials list, or a name'),
  }),
);

const seeds = z.optional(whole(0, 10_000));

/** A bean or cress test of a lot, test pots against control; the counts are of beans, in all pots of a kind. */
export const lotTested = fields({
  lot: id,
  test: oneOf(['bean', 'cress', 'other']),
  outcome: oneOf(['clear', 'harmed', 'unclear']),
  sownOn: z.optional(date),
  testPots: z.optional(whole(0, 1000)),
  testHarmed: z.optional(whole(0, 1000)),
  controlPots: z.optional(whole(0, 1000)),
  controlHarmed: z.optional(whole(0, 1000)),
  /** True leaves of the control. */
  leaves: z.optional(whole(0, 100)),
  testSown: seeds,
  testUp: seeds,
  testDeformed: seeds,
  controlSown: seeds,
  controlUp: seeds,
  controlDeformed: seeds,
  note: z.optional(note),
});

/** A sugar, a feed, lime: what the bag says, and what it cost. */
export const productBought = fields({
  name,
  what: oneOf(['sugar', 'feed', 'lime', 'compost', 'mulch', 'other']),
  sugar: z.optional(text(80)),
  mass: z.optional(mass),
  volume: z.optional(volume),
  nPercent: z.optional(number(0, 100, '%')),
  p2o5Percent: z.optional(number(0, 100, '%')),
  k2oPercent: z.optional(number(0, 100, '%')),
  cost: z.optional(fields({ typed: text(40), amount: number(0, 1_000_000, '') })),
  note: z.optional(note),
});
