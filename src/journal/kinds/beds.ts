// What happens on a bed: fed (a pour or a spray), dressed (compost, mulch, solids, a product, a cover crop), planted,
// picked. Amounts are as poured: concentrate from its batch or bottle, litres from the can. What the soil itself says is
// ground.ts.

import * as z from 'zod/mini';
import {
  analysis,
  date,
  eaten,
  ecDsPerM,
  fields,
  figuresShown,
  id,
  listOf,
  mass,
  massOrVolume,
  material,
  note,
  number,
  oneOf,
  overrode,
  positive,
  text,
  volume,
  whole,
  yesNo,
} from '../bounds.ts';
import { says } from '../problem.ts';

/** Concentrate taken: from a bottle group, or straight from a batch. */
const concentrate = fields({ bottle: z.optional(id), batch: z.optional(id), volume }).check(
  z.refine((c) => (c.bottle === undefined) !== (c.batch === undefined), {
    path: ['bottle'],
    error: says('needs exactly one of bottle and batch', 'the id of a bottle, or of a batch'),
  }),
);

/** One can of the card; a can half poured has less `pouredFraction`. */
const canPoured = fields({
  can: z.optional(id),
  volumeL: positive(2000, 'L'),
  concentrateMl: number(0, 2_000_000, 'mL'),
  pouredFraction: number(0, 1, 'as a fraction of the can'),
});

const fed = {
  bed: id,
  from: listOf(concentrate, 0, 20),
  /** Diluted feed that reached the bed. */
  poured: volume,
  ratio: z.optional(fields({ n: positive(100_000, ''), reading: oneOf(['in', 'to']) })),
  way: oneOf(['soil', 'leaf']),
  cans: z.optional(listOf(canPoured, 1, 200)),
  water: z.optional(id),
  ecDsPerM: z.optional(ecDsPerM),
  ph: z.optional(number(0, 14, 'pH')),
  /** A hold that was a matter of judgement, and why it was passed. */
  overrode: z.optional(overrode),
  note: z.optional(note),
};
export const bedFed = fields({ ...fed, figuresShown: z.optional(figuresShown) });
/** Version 1 kept no figure that was shown. */
export const bedFedV1 = fields(fed);

export const bedDressed = fields({
  bed: id,
  what: oneOf(['compost', 'mulch', 'solids', 'product', 'cover-crop']),
  amount: z.optional(massOrVolume),
  /** What it was made of or from, where known. */
  material: z.optional(material),
  lot: z.optional(id),
  batch: z.optional(id),
  product: z.optional(id),
  heap: z.optional(text(40)),
  analysis: z.optional(analysis),
  note: z.optional(note),
});

export const bedPicked = fields({
  bed: id,
  crop: z.optional(text(80)),
  mass: z.optional(mass),
  count: z.optional(whole(1, 1_000_000)),
  last: z.optional(yesNo),
  note: z.optional(note),
});

/** Sown, planted or cleared. */
export const bedPlanted = fields({
  bed: id,
  act: oneOf(['sown', 'planted', 'cleared']),
  crop: z.optional(text(80)),
  eaten: z.optional(eaten),
  plants: z.optional(whole(1, 1_000_000)),
  firstPickOn: z.optional(date),
  note: z.optional(note),
});
