// A batch from filling to its end, each act by itself: filled, topped up, split, moved, joined, spilled, looked at,
// strained, tipped. A batch goes by the id of the act that made it; the peg number is what hangs on the vessel.

import * as z from 'zod/mini';
import {
  acidity,
  analysis,
  anyOf,
  ecDsPerM,
  fields,
  figuresShown,
  id,
  lid,
  listOf,
  mass,
  massOrVolume,
  material,
  name,
  note,
  number,
  oneOf,
  overrode,
  positive,
  temperatureC,
  text,
  volume,
  whole,
  yesNo,
} from '../bounds.ts';
import { says } from '../problem.ts';

const peg = whole(1, 99_999);
const place = text(80);
const vesselNow = {
  vessel: z.optional(id),
  vesselName: z.optional(name),
  lid: z.optional(lid),
  place: z.optional(place),
};

/** One lot of plants put in: from the stock by its id, or named on the spot. */
const part = fields({
  lot: z.optional(id),
  material: z.optional(material),
  name: z.optional(name),
  mass,
  treated: z.optional(oneOf(['no', 'unknown', 'yes'])),
  analysis: z.optional(analysis),
}).check(
  z.refine((p) => p.lot !== undefined || p.material !== undefined || p.name !== undefined, {
    path: ['material'],
    error: says('is missing', 'a lot of the stock, an id of the materials list, or a name'),
  }),
);
const water = fields({ volume, water: z.optional(id), source: z.optional(text(40)) });
const sugar = fields({ product: text(80), mass, bought: z.optional(id) });
/** Liquid of an earlier batch: `from` is that batch or a bottle of it. */
const starter = fields({ volume, from: z.optional(id) });
const putIn = {
  parts: z.optional(listOf(part, 1, 60)),
  water: z.optional(listOf(water, 1, 20)),
  sugar: z.optional(listOf(sugar, 1, 20)),
  starter: z.optional(listOf(starter, 1, 20)),
};
const putInNames = ['parts', 'water', 'sugar', 'starter'] as const;

/** What was meant to go in, kept beside what went in. */
const plan = fields({
  parts: z.optional(listOf(fields({ name, massKg: positive(1000, 'kg') }), 0, 60)),
  waterL: z.optional(number(0, 2000, 'L')),
  sugarKg: z.optional(number(0, 1000, 'kg')),
  starterL: z.optional(number(0, 2000, 'L')),
});

export const pegFilled = fields({
  peg,
  ...vesselNow,
  ...putIn,
  temperatureC: z.optional(temperatureC),
  plan: z.optional(plan),
  overrode: z.optional(overrode),
  note: z.optional(note),
}).check(anyOf(putInNames));

export const pegToppedUp = fields({
  batch: id,
  ...putIn,
  overrode: z.optional(overrode),
  note: z.optional(note),
}).check(anyOf(putInNames));

/** A share moved to a vessel and peg of its own; the new batch goes by this entry's id. */
export const pegSplit = fields({ batch: id, peg, taken: massOrVolume, ...vesselNow, note: z.optional(note) });

export const pegMoved = fields({
  batch: id,
  ...vesselNow,
  temperatureC: z.optional(temperatureC),
  note: z.optional(note),
}).check(anyOf(['vessel', 'vesselName', 'lid', 'place', 'temperatureC']));

/** `from` is poured into `batch`, which goes on; without an amount, all of it. */
export const pegJoined = fields({ batch: id, from: id, taken: z.optional(massOrVolume), note: z.optional(note) }).check(
  z.refine((b) => b.batch !== b.from, { path: ['from'], error: says('is the same batch', 'another batch') }),
);

export const pegSpilled = fields({ batch: id, lost: massOrVolume, onto: z.optional(text(80)), note: z.optional(note) });

/** One look: four strips, each of which may be skipped. */
export const pegLooked = fields({
  batch: id,
  acidity: z.optional(acidity),
  smell: z.optional(
    oneOf([
      ...(['grassy', 'sour', 'yeasty', 'vinegar', 'butter-gone-off', 'ammonia', 'egg', 'sewage'] as const),
      'cannot-smell',
    ]),
  ),
  surface: z.optional(oneOf(['clear', 'bubbles', 'flat-white', 'fuzzy-white', 'coloured-fuzz', 'larvae'])),
  temperatureC: z.optional(temperatureC),
  lidBulged: z.optional(yesNo),
  ecDsPerM: z.optional(ecDsPerM),
  /** Tag of whoever read the strip, where it was not the one who signs. */
  readBy: z.optional(text(40)),
  note: z.optional(note),
});

/** Liquid and wet solids taken off; `rest` says whether anything stays in the vessel. */
const strained = {
  batch: id,
  drained: volume,
  solids: z.optional(mass),
  rest: oneOf(['nothing', 'stays']),
  meshMm: z.optional(positive(50, 'mm')),
  acidity: z.optional(acidity),
  ecDsPerM: z.optional(ecDsPerM),
  solidsTo: z.optional(oneOf(['heap', 'pile-apart', 'bed', 'trench', 'out'])),
  note: z.optional(note),
};
export const pegStrained = fields({ ...strained, figuresShown: z.optional(figuresShown) });
/** Version 1 kept no figure that was shown. */
export const pegStrainedV1 = fields(strained);

/** Poured away, all or an amount; never onto a bed that is eaten from. */
export const pegTipped = fields({
  batch: id,
  lost: z.optional(massOrVolume),
  to: oneOf(['heap', 'soil', 'out']),
  why: z.optional(note),
});
