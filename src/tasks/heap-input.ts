// What the word `heap` takes in: rows by weight, by barrows and buckets or to be found; goals; a log of temperatures.
// What is computed of it stands in heap.ts.

import * as z from 'zod/mini';
import { BELIEVED } from '#engine/quantity/parse.ts';
import { material } from '#engine/tables/index.ts';
import { banded, listOf, massKg, number, object, oneOf, text } from './fields.ts';
import { materialId } from './portion.ts';
import { says } from './problem.ts';

const ROW = 'an id of the materials list (see help materials), or moisturePercent or dryMatter of your own';
const AMOUNT = 'massKg in kg, massKg null for "find it", or volume with count and litresEach';
/** More carbon than dry plant matter holds, with room for rounding. */
const MOST_CARBON_PERCENT = 60;

/** Masses that are found at once: more kinds than a heap is built of, and few enough that the search soon ends. @practice */
const MOST_SOUGHT = 12;

const optionalMassKg = z.optional(number(0, 1000, 'kg'));

/** So many barrows or buckets, filled loosely. */
const volume = z.strictObject(
  {
    of: z._default(oneOf(['barrow', 'bucket', 'bag', 'litre']), 'bucket'),
    count: number(0.001, 1000, ''),
    litresEach: z._default(number(BELIEVED.volume.least, 500, 'L'), 10),
  },
  { error: () => says('is not a volume', 'an object with count, and of and litresEach where they are told') },
);

type Told = {
  readonly material?: string | undefined;
  readonly massKg?: number | null | undefined;
  readonly volume?: unknown;
  readonly [field: string]: unknown;
};

const ingredient = z
  .strictObject(
    {
      material: z.optional(materialId),
      name: z.optional(text(80)),
      massKg: z.optional(z.nullable(massKg)),
      volume: z.optional(volume),
      leastKg: optionalMassKg,
      mostKg: optionalMassKg,
      moisturePercent: z.optional(banded(0, 99, '% of wet mass')),
      dryMatter: z.optional(banded(0.01, 1, 'as a fraction of wet mass')),
      nPercentDm: z.optional(banded(0, 15, '% of dry matter')),
      kPercentDm: z.optional(banded(0, 15, '% of dry matter')),
      cn: z.optional(banded(1, 1000, '')),
      cPercentDm: z.optional(number(1, MOST_CARBON_PERCENT, '% of dry matter')),
      bulkKgPerM3: z.optional(banded(5, 2000, 'kg/m³')),
      treated: z.optional(oneOf(['no', 'unknown', 'yes'])),
    },
    { error: () => says('is not a row of a heap', ROW) },
  )
  .check((context) => {
    const row = context.value as Told;
    const wrong = (path: string, what: string, allowed: string) =>
      context.issues.push({ code: 'custom', path: [path], input: row, message: says(what, allowed) });
    if (row.material === undefined && row.moisturePercent === undefined && row.dryMatter === undefined) {
      wrong('material', 'is missing, and so is moisturePercent', ROW);
    }
    if (row.moisturePercent !== undefined && row.dryMatter !== undefined) {
      wrong('dryMatter', 'tells the water a second time', 'moisturePercent or dryMatter, not both');
    }
    if (row.massKg === undefined && row.volume === undefined) wrong('massKg', 'is missing', AMOUNT);
    if (row.massKg !== undefined && row.volume !== undefined) wrong('volume', 'stands beside massKg', AMOUNT);
    if (row.volume !== undefined && row.bulkKgPerM3 === undefined && !hasBulk(row.material)) {
      wrong('bulkKgPerM3', 'is missing', 'kg/m³ of this material as it lies, 5 to 2000, or its mass in kg');
    }
    const carbon = Number(likely(row.nPercentDm)) * Number(likely(row.cn));
    if (carbon > MOST_CARBON_PERCENT) {
      wrong('cn', 'times nPercentDm is more carbon than dry matter holds', `up to ${MOST_CARBON_PERCENT} % together`);
    }
    if (Number(row.leastKg) > Number(row.mostKg)) wrong('leastKg', 'is more than mostKg', 'no more than mostKg');
  });

function hasBulk(id: string | undefined): boolean {
  return id !== undefined && material(id)?.figures.bulkKgPerM3 !== undefined;
}

function likely(value: unknown): unknown {
  return typeof value === 'object' && value !== null ? (value as { likely?: unknown }).likely : value;
}

const logEntry = z.strictObject(
  {
    day: number(0, 1000, 'days since it was built'),
    temperatureC: z.optional(number(-30, 100, '°C')),
    edgeC: z.optional(number(-30, 100, '°C')),
    hotHours: z.optional(number(0, 24, 'h')),
    turned: z.optional(z.boolean({ error: () => says('is not yes or no', 'true, false') })),
    fed: z.optional(z.boolean({ error: () => says('is not yes or no', 'true, false') })),
  },
  { error: () => says('is not a line of the log', 'an object with day, and temperatureC or turned') },
);

const log = z.strictObject(
  {
    entries: listOf(logEntry, 1, 2000),
    method: z.optional(oneOf(['closed-vessel', 'aerated-pile', 'turned'])),
    airC: z.optional(number(-30, 50, '°C')),
    startCn: z.optional(number(1, 1000, '')),
    curedDays: z.optional(number(0, 2000, 'days')),
    moisture: z.optional(oneOf(['dry', 'right', 'wet'])),
    smell: z.optional(oneOf(['earthy', 'sour', 'ammonia', 'egg', 'sewage', 'cannot-smell'])),
  },
  { error: () => says('is not a log', 'an object with entries, and method, airC, curedDays where they are told') },
);

export const heapSchema = object(
  {
    ingredients: listOf(ingredient, 1, 60),
    target: z.optional(
      z.strictObject(
        {
          cn: z.optional(number(5, 500, '')),
          moisturePercent: z.optional(number(5, 95, '%')),
        },
        { error: () => says('is not a target', 'an object with cn, moisturePercent or both') },
      ),
    ),
    log: z.optional(log),
  },
  'an object',
).check((context) => {
  const { ingredients, target } = context.value as { ingredients?: unknown; target?: Told };
  if (!Array.isArray(ingredients)) return;
  const rows = ingredients as readonly Told[];
  const sought = rows.filter((row) => row?.massKg === null);
  const wrong = (path: string, what: string, allowed: string) =>
    context.issues.push({ code: 'custom', path: [path], input: context.value, message: says(what, allowed) });
  if (sought.length > MOST_SOUGHT) {
    wrong('ingredients', `has ${sought.length} masses to be found`, `up to ${MOST_SOUGHT} rows with massKg null`);
  }
  if (sought.length > 0 && sought.length === rows.length) {
    wrong('ingredients', 'has no row of a known mass', 'at least one row with massKg or volume');
  }
  if (sought.length > 0 && target?.cn === undefined && target?.moisturePercent === undefined) {
    wrong('target', 'is missing where a mass is to be found', 'an object with cn, moisturePercent or both');
  }
});

export type HeapInput = z.infer<typeof heapSchema>;
