// The fields that several kinds of entry share, each with its allowed range stated once. An amount is kept as
// typed beside what it was read as. The ranges are those of the forms: wide enough for any plot, narrow
// enough to catch a slipped decimal. A journal keeps facts: a tight lid is a fact, and rules judge it elsewhere.

import * as z from 'zod/mini';
import { NUMBER_STYLES } from '#engine/quantity/number.ts';
import { GALLON_COUNTRIES, SPOON_COUNTRIES, UNITS, type UnitId } from '#engine/quantity/units.ts';
import { isDate, isOn } from './moment.ts';
import { says } from './problem.ts';

/** A finite number between two limits, in a named unit. A zero below nothing is a zero: 1 divided by it would change its sign. */
export function number(min: number, max: number, unit: string) {
  const allowed = `${min} to ${max}${unit ? ` ${unit}` : ''}`;
  return z.number({ error: () => says('is not a number', allowed) }).check(
    z.gte(min, says('is too small', allowed)),
    z.lte(max, says('is too large', allowed)),
    z.overwrite((value) => value + 0),
  );
}

/** More than nothing, up to a limit. */
export function positive(max: number, unit: string) {
  const allowed = `more than 0, up to ${max}${unit ? ` ${unit}` : ''}`;
  return z
    .number({ error: () => says('is not a number', allowed) })
    .check(z.gt(0, says('must be more than 0', allowed)), z.lte(max, says('is too large', allowed)));
}

/** A whole number between two limits. */
export function whole(min: number, max: number) {
  return number(min, max, '').check(z.refine(Number.isInteger, says('is not a whole number', `${min} to ${max}`)));
}

/** One of a few words. */
export function oneOf<const T extends readonly string[]>(words: T) {
  return z.enum(words, { error: () => says('is not one of the words known here', words.join(', ')) });
}

/** A text of at least one sign; what it holds stays text. */
export function text(max = 80) {
  const allowed = `a text of 1 to ${max} characters`;
  return z
    .string({ error: () => says('is not a text', allowed) })
    .check(
      ofLength(z.minLength(1, says('is empty', allowed))),
      ofLength(z.maxLength(max, says('is too long', allowed))),
    );
}

/** A check of length that is held against texts and lists alone: an object may have a field `length` of its own. */
export function ofLength<T extends z.core.$ZodCheck>(check: T): T {
  check._zod.def.when = ({ value }) => typeof value === 'string' || Array.isArray(value);
  return check;
}

/** Yes or no. */
export const yesNo = z.boolean({ error: () => says('is not yes or no', 'true, false') });

/** A list with at least and at most so many items. */
export function listOf<T extends z.ZodMiniType>(item: T, min: number, max: number) {
  const allowed = `a list of ${min} to ${max}`;
  return z
    .array(item, { error: () => says('is not a list', allowed) })
    .check(
      ofLength(z.minLength(min, says('is too short a list', allowed))),
      ofLength(z.maxLength(max, says('is too long a list', allowed))),
    );
}

/** An object with these fields and no other. */
export function fields<T extends z.core.$ZodLooseShape>(shape: T) {
  return z.strictObject(shape, {
    // Only where it is no object at all: a field too many is told field by field.
    error: (issue) =>
      issue.code === 'invalid_type'
        ? says('is not an object', `an object with ${Object.keys(shape).join(', ')}`)
        : undefined,
  });
}

const ID = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/** Whether a text is an id as devices here make them. */
export function isId(value: string): boolean {
  return ID.test(value);
}

/** Id of an entry, a photo, or of what an entry made. */
export const id = z
  .string({ error: () => says('is not an id', 'a version 7 UUID in small letters') })
  .check(z.refine(isId, says('is not an id', 'a version 7 UUID in small letters')));

/** A calendar date, without a time. */
export const date = z
  .string({ error: () => says('is not a date', 'a date such as 2026-06-03') })
  .check(z.refine(isDate, says('is not a date', 'a date such as 2026-06-03')));

/** A local date and time. */
export const moment = z
  .string({ error: () => says('is not a date and time', 'such as 2026-06-03T06:00') })
  .check(
    z.refine((value) => value.length > 10 && isOn(value), says('is not a date and time', 'such as 2026-06-03T06:00')),
  );

/** Mass of one lot; 1,000 kg is more than any bucket garden lifts. */
export const massKg = positive(1000, 'kg');
/** Volume of a vessel or of water; 2,000 L covers any butt. */
export const volumeL = positive(2000, 'L');

const typed = text(80);
/** A mass between low and high where it came by volume, in kg. */
const bandKg = z
  .strictObject({ low: number(0, 1000, 'kg'), likely: number(0, 1000, 'kg'), high: number(0, 1000, 'kg') })
  .check(z.refine((r) => r.low <= r.likely && r.likely <= r.high, says('is not in order', 'low, likely, high')));

/** What an amount was read with; without it a text is never read again. */
const readWith = z.optional(
  fields({
    reader: whole(1, 1_000_000),
    unitShown: z.optional(oneOf([...(Object.keys(UNITS) as UnitId[]), 'C', 'F'])),
    style: z.optional(oneOf(NUMBER_STYLES)),
    gallon: z.optional(oneOf(GALLON_COUNTRIES)),
    spoon: z.optional(oneOf(SPOON_COUNTRIES)),
    bulkKgPerL: z.optional(
      fields({ low: positive(100, 'kg/L'), likely: positive(100, 'kg/L'), high: positive(100, 'kg/L') }),
    ),
  }),
);

/** A mass as typed and as read. */
export const mass = fields({ typed, massKg, bandKg: z.optional(bandKg), readWith });
/** A volume as typed and as read. */
export const volume = fields({ typed, volumeL, readWith });
/** An area as typed and as read. */
export const area = fields({ typed, areaM2: positive(5000, 'm²'), readWith });
/** A mass or a volume, as it was measured. */
export const massOrVolume = z.union([mass, volume], {
  error: () => says('is no amount', 'an object with typed, and massKg or volumeL'),
});
/** What a reading of acidity was taken with; a number outside 2 to 12 was asked about and is kept as read. */
export const acidity = fields({ typed, ph: number(0, 14, 'pH'), by: oneOf(['meter', 'strip']) });

export const temperatureC = number(-30, 100, '°C');
export const ecDsPerM = number(0, 200, 'dS/m');
export const note = text(2000);
export const name = text(80);
export const material = text(80);
export const lid = oneOf(['vent', 'loose', 'tight', 'none']);
export const eaten = oneOf(['raw-leaf', 'raw-fruit', 'raw-root', 'cooked', 'not-eaten']);

/** The grower's own analysis of a lot, under the names of the contract. */
export const analysis = fields({
  dryMatter: z.optional(number(0.01, 1, 'as a fraction of wet mass')),
  sugarsGPerKgDm: z.optional(number(0, 1000, 'g per kg dry matter')),
  bufferEqPerKgDmPerPh: z.optional(number(0, 2, 'eq per kg dry matter and pH unit')),
  ph: z.optional(number(2, 12, 'pH')),
  nPercentDm: z.optional(number(0, 15, '% of dry matter')),
  pPercentDm: z.optional(number(0, 5, '% of dry matter')),
  kPercentDm: z.optional(number(0, 15, '% of dry matter')),
  cn: z.optional(number(1, 1000, '')),
});

/** A check that at least one of some fields is there. */
export function anyOf<T extends object>(names: readonly (keyof T & string)[]) {
  return z.refine<T>(
    (value) => names.some((one) => value[one] !== undefined),
    says('says nothing', `at least one of ${names.join(', ')}`),
  );
}

/** Rules that said no as a matter of judgement, each with why it was passed over all the same. */
export const overrode = listOf(fields({ rule: text(80), reason: note }), 1, 20);

/** One figure as it was shown, with its range. */
const figureShown = fields({
  what: oneOf(['nGPerL', 'pGPerL', 'kGPerL', 'nG', 'pG', 'kG', 'useFirstDays']),
  low: number(0, 1_000_000, ''),
  likely: number(0, 1_000_000, ''),
  high: number(0, 1_000_000, ''),
});

/**
 * What was shown of an act when it was written down, and by which tables and formulas: a remark that nothing computes
 * from. `entered` is a digest of what the figures were computed from, so that a later entry is told from a new table.
 */
export const figuresShown = fields({
  tables: fields({ number: whole(1, 1_000_000), on: date, digest: text(16) }),
  model: whole(1, 1_000_000),
  entered: text(32),
  figures: listOf(figureShown, 1, 20),
});
