// What the word `ledger` takes in: beds with their crops and soil, acts on them, the batches poured from, crops of the
// grower's own, the temperatures of the days. Whether an act names a bed and a batch that are there is checked here too.

import * as z from 'zod/mini';
import { date, yesNo } from '#journal/bounds.ts';
import {
  areaM2,
  banded,
  isMore,
  listOf,
  massKg,
  number,
  object,
  oneOf,
  ph,
  positive,
  temperatureC,
  text,
} from './fields.ts';
import { materialId, portion, sugarIn, waterIn } from './portion.ts';
import { says } from './problem.ts';

const gPerM2 = (max: number) => banded(0, max, 'g/m²');
const soilValue = object(
  { value: number(0, 1_000_000, ''), unit: text(20), method: z.optional(text(80)) },
  'a line of a soil test',
);

const soil = object(
  {
    ph: z.optional(number(2, 12, 'pH')),
    organicMatterPercent: z.optional(number(0, 100, '%')),
    nitrate: z.optional(
      object(
        {
          value: number(0, 10_000, ''),
          unit: oneOf(['ppm', 'lb-per-acre', 'kg-per-ha', 'g-per-m2']),
          depthCm: z.optional(positive(200, 'cm')),
        },
        'a nitrate test',
      ),
    ),
    p: z.optional(soilValue),
    k: z.optional(soilValue),
  },
  'a soil test',
);

const bed = object(
  {
    name: text(80),
    areaM2,
    crop: z.optional(text(80)),
    yieldKgPerM2: z.optional(positive(100, 'kg/m²')),
    plantedOn: z.optional(date),
    soil: z.optional(soil),
    /** The crop that stood there before in the same year. */
    previousCrop: z.optional(text(80)),
    /** The crop of the year before. */
    cropYearBefore: z.optional(text(80)),
    /** Nitrogen that residues or a legume leave, where the grower knows better. */
    residueNGPerM2: z.optional(gPerM2(100)),
  },
  'a bed',
);

const act = { bed: text(80), on: z.optional(date) };
const gPerL = z.optional(banded(0, 200, 'g/L'));
const pour = object(
  {
    ...act,
    kind: z.literal('pour'),
    concentrateL: z.optional(number(0, 2000, 'L')),
    concentrateMl: z.optional(number(0, 2_000_000, 'mL')),
    /** Diluted feed, with the ratio it was thinned at. */
    pouredL: z.optional(number(0, 100_000, 'L')),
    ratio: z.optional(object({ n: positive(100_000, ''), reading: oneOf(['in', 'to']) }, 'a ratio')),
    batch: z.optional(text(80)),
    nGPerL: gPerL,
    pGPerL: gPerL,
    kGPerL: gPerL,
  },
  'a pour',
);

const matter = {
  ...act,
  material: z.optional(materialId),
  name: z.optional(text(80)),
  massKg: z.optional(massKg),
  volumeL: z.optional(positive(20_000, 'L')),
  dryMatter: z.optional(banded(0.01, 1, 'as a fraction of wet mass')),
  nPercentDm: z.optional(banded(0, 15, '% of dry matter')),
  pPercentDm: z.optional(banded(0, 5, '% of dry matter')),
  kPercentDm: z.optional(banded(0, 15, '% of dry matter')),
  caPercentDm: z.optional(banded(0, 45, '% of dry matter')),
  mgPercentDm: z.optional(banded(0, 5, '% of dry matter')),
  cn: z.optional(banded(1, 1000, '')),
  dugIn: z.optional(yesNo),
  /** Strained solids: the batch they came from. */
  batch: z.optional(text(80)),
};
const dressing = (kind: 'compost' | 'mulch' | 'solids' | 'cover-crop') =>
  object({ ...matter, kind: z.literal(kind) }, 'a dressing');

/** What closes a gap: what the garden has of it, or what it costs. */
const offered = {
  name: text(80),
  haveKg: z._default(number(0, 1_000_000, 'kg'), 0),
  costPerKg: z.optional(number(0, 10_000, 'for a kilogram')),
  packKg: z.optional(number(0.001, 1000, 'kg')),
  minutesPerKg: z.optional(number(0, 600, 'minutes')),
  mostKgPerM2: z.optional(positive(1000, 'kg/m²')),
};
const { bed: _bed, on: _on, massKg: _mass, volumeL: _volume, batch: _batch, name: _name, ...content } = matter;
const ownMatter = (kind: 'compost' | 'mulch' | 'solids' | 'cover-crop') =>
  object({ ...offered, ...content, kind: z.literal(kind) }, 'a source');

const percent = z._default(number(0, 100, '%'), 0);
const product = object(
  {
    ...act,
    kind: z.literal('product'),
    name: z.optional(text(80)),
    massKg: positive(1000, 'kg'),
    nPercent: percent,
    p2o5Percent: percent,
    k2oPercent: percent,
    release: z._default(oneOf(['at-once', 'slow']), 'at-once'),
  },
  'a product',
);

const label = object(
  {
    ...offered,
    kind: z.literal('product'),
    nPercent: percent,
    p2o5Percent: percent,
    k2oPercent: percent,
    release: z._default(oneOf(['at-once', 'slow']), 'at-once'),
  },
  'a source',
);
const source = z.discriminatedUnion(
  'kind',
  [ownMatter('compost'), ownMatter('mulch'), ownMatter('solids'), ownMatter('cover-crop'), label],
  {
    error: () => says('is not a source', 'an object with name and a kind: compost, mulch, solids, product, cover-crop'),
  },
);

const KINDS = 'pour, compost, mulch, solids, product, cover-crop';
const acts = z.discriminatedUnion(
  'kind',
  [pour, dressing('compost'), dressing('mulch'), dressing('solids'), product, dressing('cover-crop')],
  { error: () => says('is not an act on a bed', `an object with bed and a kind: ${KINDS}`) },
);

const batch = object(
  {
    name: text(80),
    plants: listOf(portion, 1, 40),
    water: waterIn,
    sugar: z.optional(sugarIn),
    starterL: z._default(number(0, 500, 'L'), 0),
    days: number(0, 400, 'days'),
    finalPh: ph,
    drainedL: number(0, 2000, 'L'),
    solidsKg: z.optional(number(0, 2000, 'kg')),
  },
  'a batch',
);

/** A crop the table lacks, or one of its own figures, with a source the grower names. */
const ownCrop = object(
  {
    name: text(80),
    source: text(200),
    yieldKgPerM2: z.optional(banded(0, 100, 'kg/m²')),
    nNeedGPerM2: z.optional(gPerM2(100)),
    nGPerKg: z.optional(banded(0, 60, 'g/kg')),
    pGPerKg: z.optional(banded(0, 20, 'g/kg')),
    kGPerKg: z.optional(banded(0, 60, 'g/kg')),
  },
  'a crop',
);

const dayOf = object({ on: date, lowC: temperatureC, highC: temperatureC }, 'a day').check(
  z.refine((told) => !isMore(told?.lowC, told?.highC), {
    path: ['highC'],
    error: says('is below the low', 'no less than lowC'),
    when: () => true,
  }),
);

const shape = {
  beds: listOf(bed, 1, 1000),
  acts: z._default(listOf(acts, 0, 20_000), []),
  from: date,
  to: date,
  batches: z.optional(listOf(batch, 0, 200)),
  crops: z.optional(listOf(ownCrop, 0, 200)),
  /** Soil or air, day by day; days that are missing take meanC. */
  temperatures: z.optional(listOf(dayOf, 0, 4000)),
  meanC: z.optional(banded(-10, 40, '°C')),
  /** With these the answer says how to close what is missing. */
  sources: z.optional(listOf(source, 0, 200)),
  limits: z.optional(
    object(
      { money: z.optional(number(0, 1_000_000, '')), minutes: z.optional(number(0, 1_000_000, 'minutes')) },
      'limits',
    ),
  ),
  aim: z._default(oneOf(['least-cost', 'least-purchase']), 'least-cost'),
};

export const ledgerSchema = object(shape, 'an object').check(
  z.check((ctx) => {
    const told = ctx.value;
    const fault = (path: (string | number)[], message: string, input: unknown) =>
      ctx.issues.push({ code: 'custom', path, message, input });
    if (told.to < told.from) fault(['to'], says('is before from', 'from, or a later date'), told.to);
    const names = new Set<string>();
    for (const [i, { name }] of told.beds.entries()) {
      if (names.has(name)) fault(['beds', i, 'name'], says('stands twice', 'each bed once'), name);
      names.add(name);
    }
    const offers = new Set<string>();
    for (const [i, { name }] of (told.sources ?? []).entries()) {
      if (offers.has(name)) fault(['sources', i, 'name'], says('stands twice', 'each source once'), name);
      offers.add(name);
    }
    const batches = new Set((told.batches ?? []).map(({ name }) => name));
    for (const [i, one] of told.acts.entries()) {
      const path = ['acts', i];
      if (!names.has(one.bed))
        fault([...path, 'bed'], says('is no bed of this question', named(names, 'the name of one of beds')), one.bed);
      if ('batch' in one && one.batch !== undefined && !batches.has(one.batch)) {
        fault(
          [...path, 'batch'],
          says('is no batch of this question', named(batches, 'the name of one of batches')),
          one.batch,
        );
      }
      if (one.kind === 'pour') {
        const thinned = one.pouredL !== undefined && one.ratio !== undefined;
        if (one.concentrateL === undefined && one.concentrateMl === undefined && !thinned) {
          fault(
            [...path, 'concentrateL'],
            says('is missing', 'litres of concentrate, or pouredL with its ratio'),
            undefined,
          );
        }
      } else if (one.kind !== 'product' && one.massKg === undefined && one.volumeL === undefined) {
        fault([...path, 'massKg'], says('is missing, and so is volumeL', 'kg or litres of it'), undefined);
      }
    }
  }),
);

/** What may be named, while it is short enough to read. */
function named(names: ReadonlySet<string>, otherwise: string): string {
  return names.size > 0 && names.size <= 20 ? [...names].join(', ') : otherwise;
}

export type LedgerInput = z.infer<typeof ledgerSchema>;
export type SourceIn = NonNullable<LedgerInput['sources']>[number];
export type ActIn = LedgerInput['acts'][number];
export type BatchIn = NonNullable<LedgerInput['batches']>[number];
