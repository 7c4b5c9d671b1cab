// What stands beside the flow: the heap, the weather as typed, photos, trials, the answer to a question that the fold
// raised, and what was learned set back. A heap goes by a short name; a photo's bytes are kept by the store, never in
// an entry.

import * as z from 'zod/mini';
import {
  analysis,
  date,
  fields,
  id,
  listOf,
  mass,
  massOrVolume,
  material,
  moment,
  name,
  note,
  number,
  oneOf,
  temperatureC,
  text,
  volume,
  whole,
  yesNo,
} from '../bounds.ts';
import { says } from '../problem.ts';

const heap = text(40);

/** One row per ingredient, by barrow, bucket or weight. */
const ingredient = fields({
  lot: z.optional(id),
  batch: z.optional(id),
  material: z.optional(material),
  name: z.optional(name),
  amount: massOrVolume,
  analysis: z.optional(analysis),
}).check(
  z.refine((i) => i.lot !== undefined || i.batch !== undefined || i.material !== undefined || i.name !== undefined, {
    path: ['material'],
    error: says('is missing', 'a lot, a batch, an id of the materials list, or a name'),
  }),
);

export const heapFed = fields({
  heap,
  ingredients: listOf(ingredient, 1, 60),
  water: z.optional(volume),
  note: z.optional(note),
});

export const heapLooked = fields({
  heap,
  temperatureC: z.optional(temperatureC),
  moisture: z.optional(oneOf(['dry', 'right', 'wet'])),
  smell: z.optional(oneOf(['earthy', 'sour', 'ammonia', 'egg', 'sewage', 'cannot-smell'])),
  turned: z.optional(yesNo),
  note: z.optional(note),
});

/** One hour of a day, from its full hour on. */
const weatherHour = fields({
  hour: whole(0, 23),
  temperatureC: z.optional(temperatureC),
  windMPerS: z.optional(number(0, 120, 'm/s')),
  rainMm: z.optional(number(0, 500, 'mm')),
  humidityPercent: z.optional(number(0, 100, '%')),
  cloudPercent: z.optional(number(0, 100, '%')),
});

const CLOCK = /^([01]\d|2[0-3]):[0-5]\d$/;
const clock = text(5).check(z.refine((value) => CLOCK.test(value), says('is no time of day', 'a time such as 05:10')));

const weatherDay = fields({
  on: date,
  lowC: z.optional(temperatureC),
  highC: z.optional(temperatureC),
  rainMm: z.optional(number(0, 2000, 'mm')),
  windMPerS: z.optional(number(0, 120, 'm/s')),
  /** Sunrise and sunset by the local clock, as a calendar or a neighbour tells them. */
  sunrise: z.optional(clock),
  sunset: z.optional(clock),
  hours: z.optional(listOf(weatherHour, 1, 24)),
}).check(
  z.refine((d) => d.lowC === undefined || d.highC === undefined || d.lowC <= d.highC, {
    path: ['highC'],
    error: says('is below the low', 'no less than lowC'),
  }),
);

export const weatherTyped = fields({
  what: oneOf(['seen', 'forecast']),
  /** When the forecast was made, local date and time. */
  issuedAt: z.optional(moment),
  days: listOf(weatherDay, 1, 400),
});

/** Dishes of a cress test, all of one strength or of the water alone: seeds laid, seeds with a root, mean root. */
const dishes = fields({
  sown: whole(1, 1000),
  germinated: whole(0, 1000),
  meanRootMm: z.optional(number(0, 300, 'mm')),
});

/** The cress test of a feed: each strength, 1 part in n of the mixture, against the diluting water alone. */
export const feedTested = fields({
  bottle: z.optional(id),
  batch: z.optional(id),
  sownOn: z.optional(date),
  control: dishes,
  samples: listOf(fields({ n: number(1, 100_000, ''), dishes }), 1, 20),
  note: z.optional(note),
}).check(
  z.refine((t) => (t.bottle === undefined) !== (t.batch === undefined), {
    path: ['bottle'],
    error: says('needs exactly one of bottle and batch', 'the id of a bottle, or of a batch'),
  }),
);

/** A cress test of a heap's compost: water that stood on it, one part in so many, against the water alone. */
export const heapTested = fields({
  heap: text(40),
  sownOn: z.optional(date),
  control: dishes,
  samples: listOf(fields({ n: number(1, 100_000, ''), dishes }), 1, 20),
  note: z.optional(note),
});

/** A photo kept by the store under its id; `of` is the look, bed or bottle it shows. */
export const photoTaken = fields({
  photo: id,
  of: id,
  type: oneOf(['image/jpeg', 'image/webp', 'image/png']),
  bytes: whole(1, 20_000_000),
  widthPx: whole(1, 20_000),
  heightPx: whole(1, 20_000),
  note: z.optional(note),
});

export const trialLaid = fields({
  name,
  measure: z.optional(text(80)),
  treatments: listOf(text(40), 2, 20),
  plots: listOf(
    fields({ block: text(40), treatment: text(40), bed: z.optional(id), place: z.optional(text(40)) }),
    2,
    400,
  ),
  seed: z.optional(whole(0, 4_294_967_295)),
  note: z.optional(note),
});

/** One plot weighed; without a mass the plot is missing, and `note` says why. */
export const trialWeighed = fields({
  trial: id,
  block: text(40),
  treatment: text(40),
  mass: z.optional(mass),
  note: z.optional(note),
});

/** Which of the entries a question is about stand. */
export const questionAnswered = fields({ question: text(120), stands: listOf(id, 1, 200), note: z.optional(note) });

/** What finished batches taught counts no more from here on: for one group of the materials list, or for `all`. */
export const lessonsReset = fields({ group: text(40), note: z.optional(note) });
