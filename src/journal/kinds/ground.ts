// The ground's facts that a grower tells: what a soil report said, what a product's label says of how fast it lets go,
// what is hoped to be picked, and a crop the tables lack. Each is kept as typed beside what it was read as; what they mean
// for a bed is worked out by the tasks.

import * as z from 'zod/mini';
import { anyOf, fields, id, listOf, name, note, number, oneOf, positive, text } from '../bounds.ts';
import { says } from '../problem.ts';

const WHAT = ['n', 'nitrate', 'p', 'k', 'ca', 'mg', 'ph', 'organic-matter', 'ec', 'other'] as const;
const line = {
  what: oneOf(WHAT),
  typed: text(80),
  value: number(0, 1_000_000, ''),
  unit: text(40),
  method: z.optional(text(80)),
};
const report = <T extends z.ZodMiniType>(figure: T) =>
  fields({
    bed: z.optional(id),
    laboratory: z.optional(text(80)),
    figures: listOf(figure, 1, 60),
    note: z.optional(note),
  });

/** A report of a bed, or of the whole plot. The depth tells how much soil a figure stands for. */
export const soilTested = report(fields({ ...line, depthCm: z.optional(positive(300, 'cm')) }));
/** Version 1 told no depth. */
export const soilTestedV1 = report(fields(line));

/** How a product lets go, by its label: salts that dissolve, or meals and pellets that have to rot first. */
export const productLabelled = fields({ product: id, release: oneOf(['soluble', 'slow']), note: z.optional(note) });

/** What is hoped to be picked of a crop on a bed, over the season, from each square metre of that crop. */
export const goalTold = fields({
  bed: id,
  crop: z.optional(text(80)),
  goal: fields({ typed: text(80), yieldKgPerM2: positive(100, 'kg/m²') }),
  note: z.optional(note),
});

/** A figure that may be told as a band. */
const band = (max: number, unit: string) =>
  fields({
    typed: text(80),
    low: number(0, max, unit),
    likely: number(0, max, unit),
    high: number(0, max, unit),
  }).check(
    z.refine(
      (told) => told.low <= told.likely && told.likely <= told.high,
      says('is not in order', 'low, likely, high'),
    ),
  );

/** A crop the tables lack, or that the grower knows better, with the source they have it from. */
export const cropDescribed = fields({
  name,
  source: text(200),
  harvest: z.optional(band(100, 'kg/m²')),
  nNeed: z.optional(band(100, 'g/m²')),
  nContent: z.optional(band(60, 'g/kg')),
  pContent: z.optional(band(20, 'g/kg')),
  kContent: z.optional(band(60, 'g/kg')),
  note: z.optional(note),
}).check(anyOf(['harvest', 'nNeed', 'nContent', 'pContent', 'kContent']));
