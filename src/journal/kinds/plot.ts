// What stands on the plot before anything is poured: the plot, its beds, vessels and cans, and its water.
// A second description of the same thing tells only what changed; the first names it. What the facts forbid
// is judged by the rules, not here.

import * as z from 'zod/mini';
import { NUMBER_STYLES } from '#engine/quantity/number.ts';
import {
  anyOf,
  area,
  date,
  eaten,
  ecDsPerM,
  fields,
  id,
  lid,
  listOf,
  mass,
  name,
  note,
  number,
  oneOf,
  positive,
  text,
  volume,
  whole,
  yesNo,
} from '../bounds.ts';
import { says } from '../problem.ts';

const ZONE = /^[A-Za-z][A-Za-z0-9_+-]*(?:\/[A-Za-z0-9_+-]+){0,2}$/;
const zoneName = text(64).check(
  z.refine((value) => ZONE.test(value), says('is no time zone', 'a name such as Area/City')),
);

/** A keyholder goes by a tag, never by a name. */
const keyholder = fields({
  tag: text(40),
  units: z.optional(oneOf(['metric', 'us', 'imperial'])),
  gallon: z.optional(oneOf(['us', 'uk'])),
  spoon: z.optional(oneOf(['us', 'metric', 'uk', 'au'])),
  /** Which mark stands before decimals: 1.5 or 1,5. */
  decimals: z.optional(oneOf(NUMBER_STYLES)),
  language: z.optional(text(20)),
  cannotSmell: z.optional(yesNo),
});

/** The plot: its zone and hemisphere, its rules, who eats and who is about. Each description tells what it changes. */
export const plotDescribed = fields({
  name: z.optional(name),
  timeZone: z.optional(zoneName),
  hemisphere: z.optional(oneOf(['north', 'south'])),
  /** Where it lies, for sunrise and sunset: north and east count up. */
  latitudeDeg: z.optional(number(-90, 90, 'degrees')),
  longitudeDeg: z.optional(number(-180, 180, 'degrees')),
  outsideScraps: z.optional(yesNo),
  kitchenScraps: z.optional(yesNo),
  cookedFood: z.optional(yesNo),
  siteRule: z.optional(fields({ text: note, on: z.optional(date) })),
  present: z.optional(listOf(oneOf(['children', 'dog', 'cat', 'hens', 'immune-weak', 'pregnant']), 0, 6)),
  neighboursM: z.optional(number(0, 10_000, 'm')),
  sells: z.optional(yesNo),
  school: z.optional(yesNo),
  poisonLine: z.optional(text(60)),
  keyholders: z.optional(listOf(keyholder, 0, 60)),
  note: z.optional(note),
}).check(
  anyOf([
    ...(['name', 'timeZone', 'hemisphere', 'outsideScraps', 'kitchenScraps', 'cookedFood', 'siteRule'] as const),
    ...(['latitudeDeg', 'longitudeDeg'] as const),
    ...(['present', 'neighboursM', 'sells', 'school', 'poisonLine', 'keyholders', 'note'] as const),
  ]),
);

/** Descriptions of the same thing by other devices that whoever wrote this one saw; each replaces those it names. */
const over = z.optional(listOf(id, 1, 60));

const firstNames = (known: string) =>
  says('is missing, and so is the thing it describes', `a name for a new one, or ${known} with the id of a known one`);

/** A bed, a row of pots or a trial strip. */
export const bedDescribed = fields({
  bed: z.optional(id),
  over,
  name: z.optional(name),
  tag: z.optional(text(8)),
  area: z.optional(area),
  /** The part that is fed, where it is not the whole. */
  fedArea: z.optional(area),
  pots: z.optional(fields({ count: whole(1, 10_000), volumeL: positive(2000, 'L') })),
  lengthM: z.optional(positive(1000, 'm')),
  crop: z.optional(text(80)),
  eaten: z.optional(eaten),
  feed: z.optional(oneOf(['soil', 'leaf-and-soil', 'none'])),
  walkingOrder: z.optional(whole(1, 1000)),
  gone: z.optional(yesNo),
  note: z.optional(note),
}).check(z.refine((b) => b.bed !== undefined || b.name !== undefined, { path: ['name'], error: firstNames('bed') }));

/** A pail, drum, barrel or butt. */
export const vesselDescribed = fields({
  vessel: z.optional(id),
  over,
  name: z.optional(name),
  volume: z.optional(volume),
  gasRoomFraction: z.optional(number(0, 0.9, 'as a fraction of the volume')),
  lid: z.optional(lid),
  shape: z.optional(
    fields({ topDiameterM: positive(3, 'm'), bottomDiameterM: positive(3, 'm'), heightM: positive(3, 'm') }),
  ),
  /** The kind of vessel it is drawn as, where it was chosen. */
  drawnAs: z.optional(oneOf(['pail', 'drum', 'barrel'])),
  emptyMass: z.optional(mass),
  tap: z.optional(yesNo),
  place: z.optional(text(80)),
  gone: z.optional(yesNo),
  note: z.optional(note),
}).check(
  z.refine((v) => v.vessel !== undefined || v.name !== undefined, { path: ['name'], error: firstNames('vessel') }),
);

/** What feed is measured and poured with. The country of a gallon stands in `typed`. */
export const canDescribed = fields({
  can: z.optional(id),
  over,
  name: z.optional(name),
  kind: z.optional(oneOf(['can', 'jug', 'syringe', 'sprayer', 'spoon'])),
  volume: z.optional(volume),
  nozzleMm: z.optional(positive(10, 'mm')),
  rose: z.optional(yesNo),
  gone: z.optional(yesNo),
  note: z.optional(note),
}).check(z.refine((c) => c.can !== undefined || c.name !== undefined, { path: ['name'], error: firstNames('can') }));

/** A water of the plot as a report or a strip told it. */
export const waterReported = fields({
  source: oneOf(['tap', 'butt', 'well', 'ditch', 'pond', 'bought', 'other']),
  name: z.optional(name),
  chlorine: z.optional(
    fields({ kind: oneOf(['free', 'chloramine', 'none', 'unknown']), mgPerL: z.optional(number(0, 20, 'mg/L')) }),
  ),
  alkalinity: z.optional(fields({ typed: text(80), alkalinityMeqPerL: number(0, 20, 'meq/L') })),
  hardness: z.optional(fields({ typed: text(80), hardnessMgPerLCaCo3: number(0, 2000, 'mg/L CaCO3') })),
  ecDsPerM: z.optional(ecDsPerM),
  ph: z.optional(number(0, 14, 'pH')),
  stoodH: z.optional(number(0, 10_000, 'h')),
  droppings: z.optional(yesNo),
  reportOn: z.optional(date),
  note: z.optional(note),
});
