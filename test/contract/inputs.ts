// Inputs within the contract's ranges, drawn for each word: what may be asked.

import fc from 'fast-check';
import type { Word } from '#tasks/index.ts';
import { materialList, sugarList } from '#tasks/lists.ts';

const within = (least: number, most: number) =>
  fc.oneof(
    fc.constant(least),
    fc.constant(most),
    fc.double({ min: least, max: most, noNaN: true, noDefaultInfinity: true }),
  );
const maybe = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const oneOf = <T>(...all: readonly T[]) => fc.constantFrom(...all);

const massKg = within(0.001, 1000);
const volumeL = within(0.01, 2000);
const known = fc.record({
  material: oneOf(...materialList().map(({ id }) => id)),
  massKg,
  treated: maybe(oneOf('no', 'unknown', 'yes')),
});
const analysed = fc.record({
  massKg,
  dryMatter: within(0.01, 1),
  sugarsGPerKgDm: maybe(within(0, 1000)),
  bufferEqPerKgDmPerPh: maybe(within(0, 2)),
  ph: maybe(within(2, 12)),
  nPercentDm: maybe(within(0, 15)),
  kPercentDm: maybe(within(0, 15)),
  cn: maybe(within(1, 1000)),
});
const bucketed = fc.record({
  material: oneOf('grass-clippings-fresh', 'coffee-grounds', 'dry-leaves', 'horse-manure', 'strained-solids'),
  volume: fc.record({ of: maybe(oneOf('barrow', 'bucket')), count: within(0.5, 100), litresEach: within(1, 200) }),
});
const analysedForHeap = fc.record({
  massKg,
  moisturePercent: within(0, 99),
  nPercentDm: maybe(within(0, 15)),
  cPercentDm: maybe(within(1, 60)),
});
const plants = fc.array(fc.oneof(known, analysed), { minLength: 1, maxLength: 5 });
const water = fc.record({ volumeL, alkalinityMeqPerL: within(0, 20), ph: maybe(within(2, 12)) });
const sugar = maybe(fc.record({ product: oneOf(...sugarList().map(({ id }) => id)), massKg: within(0, 200) }));
const state = oneOf('souring', 'slow', 'ready', 'doubtful', 'lost', 'unknown');

const soilLine = fc.record({
  value: within(0, 1000),
  unit: oneOf('ppm', 'lb/acre', 'mg/L', 'index', 'handfuls'),
  method: maybe(oneOf('Bray P1', 'Olsen', 'Mehlich-3', 'ammonium acetate', 'by eye')),
});
const ledgerBed = (name: string) =>
  fc.record({
    name: fc.constant(name),
    areaM2: within(0.01, 5000),
    crop: maybe(oneOf('kale', '8 tomatoes', 'kale, chard', 'oca', 'lettuce and rocket')),
    yieldKgPerM2: maybe(within(0.01, 100)),
    plantedOn: maybe(oneOf('2026-05-01', '2026-12-24')),
    soil: maybe(
      fc.record({
        ph: maybe(within(2, 12)),
        organicMatterPercent: maybe(within(0, 100)),
        nitrate: maybe(fc.record({ value: within(0, 1000), unit: oneOf('ppm', 'kg-per-ha'), depthCm: within(1, 200) })),
        p: maybe(soilLine),
        k: maybe(soilLine),
      }),
    ),
    previousCrop: maybe(oneOf('pea', 'cabbage', 'oca')),
    residueNGPerM2: maybe(within(0, 100)),
    cropYearBefore: maybe(fc.constantFrom('kale', 'broad beans, 2 leeks', 'clover', 'oca')),
  });
const onBed = { bed: oneOf('A', 'B'), on: maybe(oneOf('2026-04-01', '2026-05-19', '2027-01-01')) };
const ledgerPour = fc.record({
  ...onBed,
  kind: fc.constant('pour'),
  concentrateL: within(0, 2000),
  nGPerL: maybe(within(0, 200)),
  kGPerL: maybe(within(0, 200)),
});
const ledgerDressing = fc.record({
  ...onBed,
  kind: oneOf('compost', 'mulch', 'solids', 'cover-crop'),
  material: maybe(oneOf(...materialList().map(({ id }) => id))),
  massKg,
  nPercentDm: maybe(within(0, 15)),
  cn: maybe(within(1, 1000)),
  dugIn: maybe(fc.boolean()),
});
const ledgerSource = (name: string) =>
  fc.oneof(
    fc.record({
      name: fc.constant(name),
      kind: oneOf('compost', 'mulch', 'solids', 'cover-crop'),
      haveKg: within(0, 200),
      mostKgPerM2: maybe(within(0.1, 20)),
      minutesPerKg: maybe(within(0, 10)),
    }),
    fc.record({
      name: fc.constant(name),
      kind: fc.constant('product'),
      nPercent: within(0, 46),
      p2o5Percent: within(0, 20),
      costPerKg: maybe(within(0, 50)),
      packKg: maybe(within(0.5, 25)),
    }),
  );
const ledgerProduct = fc.record({
  ...onBed,
  kind: fc.constant('product'),
  massKg,
  nPercent: within(0, 100),
  p2o5Percent: within(0, 100),
  k2oPercent: within(0, 100),
  release: maybe(oneOf('at-once', 'slow')),
});

/** Inputs within the contract's ranges, for each word; the ends of a range as likely as what lies between. */
export const inputs: Readonly<Record<Word, fc.Arbitrary<object>>> = {
  fit: fc.record({
    vessel: fc.record({ volumeL, gasRoom: within(0, 0.9), lid: maybe(oneOf('loose', 'vent', 'tight')) }),
    plants,
    water,
    sugar,
    targetPh: within(3.5, 4.6),
    beds: maybe(fc.array(fc.record({ areaM2: within(0.1, 5000) }), { maxLength: 3 })),
  }),
  can: fc.record({
    batch: maybe(
      fc.record({
        peg: maybe(oneOf<number | string>(14, '14 b')),
        state: maybe(state),
        held: maybe(fc.boolean()),
        ph: maybe(within(2, 12)),
        ecDsPerM: maybe(within(0, 200)),
      }),
    ),
    ratio: fc.record({ n: within(1, 2000), reading: oneOf('in', 'to') }),
    canL: within(5, 1000),
    areaM2: within(0.01, 50),
    depthLPerM2: within(0.01, 100),
    spoon: oneOf('us', 'metric', 'uk', 'au', null),
    water: fc.record({ alkalinityMeqPerL: within(0, 20), ecDsPerM: within(0, 200) }),
    way: maybe(oneOf('soil', 'leaf')),
    eaten: maybe(oneOf('raw', 'cooked')),
  }),
  water: fc.record({
    volumeL,
    freeChlorineMgPerL: maybe(within(0, 20)),
    alkalinity: maybe(
      fc.record({ value: within(0, 20), unit: oneOf('mg/L CaCO3', 'mmol/L', 'meq/L', 'dH', 'fH', 'clark', 'gpg') }),
    ),
    use: maybe(oneOf('pail', 'can', 'raw-crop')),
  }),
  strain: fc.record({
    plants,
    water,
    sugar,
    days: within(0, 400),
    temperatureC: within(-10, 60),
    finalPh: within(2, 12),
    drainedL: within(0, 2000),
    solidsKg: within(0, 2000),
    state: maybe(state),
  }),
  sour: fc.record({
    vessel: fc.record({ volumeL, gasRoom: within(0, 0.9) }),
    plants,
    water,
    sugar,
    temperatureC: fc.oneof(
      within(-60, 150),
      fc.array(fc.tuple(within(0, 20), within(-60, 150), within(-60, 150)), { minLength: 1, maxLength: 5 }),
    ),
    days: within(1, 9),
    lid: maybe(oneOf('tight', 'vent', 'loose', 'cloth', 'none')),
    looks: fc.oneof(
      fc.constant([]),
      fc.array(
        fc.record({
          day: within(-3, 12),
          ph: maybe(fc.oneof(within(3, 7), within(-1000, 1000))),
          by: maybe(oneOf('meter', 'strip')),
          smell: maybe(oneOf('grassy', 'sour', 'egg', 'cannot-smell')),
          surface: maybe(oneOf('clear', 'flat-white', 'fuzzy-white')),
          who: maybe(oneOf('Rake', 'Hoe')),
        }),
        { maxLength: 4 },
      ),
    ),
    today: maybe(within(0, 12)),
    starterL: maybe(within(0, 500)),
    saltKg: maybe(within(0, 50)),
    chop: maybe(oneOf('coarse', 'chopped', 'fine')),
    room: maybe(fc.record({ roomM3: within(0.01, 100_000), airChangesPerH: maybe(within(0, 100)) })),
    draws: fc.constant(20),
  }),
  heap: fc
    .record({
      known: fc.array(fc.oneof(known, bucketed, analysedForHeap), { minLength: 1, maxLength: 4 }),
      sought: fc.array(
        fc.record({
          material: oneOf('dry-leaves', 'straw', 'cardboard', 'sawdust', 'eggshell'),
          massKg: fc.constant(null),
        }),
        { maxLength: 3 },
      ),
      target: fc.record({ cn: maybe(within(5, 500)), moisturePercent: within(5, 95) }),
      log: maybe(
        fc.record({
          entries: fc.array(
            fc.record({
              day: within(0, 60),
              temperatureC: maybe(within(-30, 100)),
              turned: maybe(fc.boolean()),
              fed: maybe(fc.boolean()),
            }),
            { minLength: 1, maxLength: 12 },
          ),
          airC: maybe(within(-30, 50)),
          method: maybe(oneOf('closed-vessel', 'aerated-pile', 'turned')),
          smell: maybe(oneOf('ammonia', 'egg', 'earthy')),
          moisture: maybe(oneOf('dry', 'right', 'wet')),
        }),
      ),
    })
    .map(({ known: rows, sought, ...rest }) => ({ ingredients: [...rows, ...sought], ...rest })),
  beds: fc.record({
    beds: fc.tuple(ledgerBed('A'), ledgerBed('B')),
    acts: fc.array(fc.oneof(ledgerPour, ledgerDressing, ledgerProduct), { maxLength: 6 }),
    batches: fc.constant([]),
    from: fc.constant('2026-04-01'),
    to: oneOf('2026-04-01', '2026-05-20', '2026-10-31'),
    meanC: maybe(within(-10, 40)),
    sources: maybe(fc.tuple(ledgerSource('first'), ledgerSource('second'))),
    limits: maybe(fc.record({ money: maybe(within(0, 500)), minutes: maybe(within(0, 5000)) })),
    aim: maybe(oneOf('least-cost', 'least-purchase')),
  }),
};
