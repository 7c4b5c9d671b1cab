// Drained liquid in bottles: filled, vented, emptied. One entry may stand for several bottles filled alike; the
// group goes by its entry's id. What is poured on beds is `bed.fed`. A drink bottle is a fact when it happened.

import * as z from 'zod/mini';
import { fields, figuresShown, id, note, oneOf, temperatureC, text, volume, whole } from '../bounds.ts';

const filled = {
  batch: id,
  /** Litres in each. */
  filled: volume,
  count: z.optional(whole(1, 500)),
  size: z.optional(volume),
  cap: oneOf(['vent', 'loose', 'screw']),
  material: oneOf(['plastic', 'glass', 'drink-bottle']),
  place: z.optional(text(80)),
  temperatureC: z.optional(temperatureC),
  label: z.optional(text(40)),
  note: z.optional(note),
};
export const bottleFilled = fields({ ...filled, figuresShown: z.optional(figuresShown) });
/** Version 1 kept no figure that was shown. */
export const bottleFilledV1 = fields(filled);

export const bottleVented = fields({
  bottle: id,
  found: z.optional(oneOf(['nothing', 'hiss', 'froth', 'bulged'])),
  note: z.optional(note),
});

/** Tipped out, all or an amount. */
export const bottleEmptied = fields({
  bottle: id,
  lost: z.optional(volume),
  to: oneOf(['heap', 'soil', 'out']),
  note: z.optional(note),
});
