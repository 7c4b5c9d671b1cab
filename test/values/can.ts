// Salt, acid, alcohol and pH of a can, what a nozzle passes, and what crops bear.

import type { Way } from '#engine/can/limits.ts';
import { type Pour, type PourOrder, pour } from '#engine/can/pour.ts';
import { type CanSituation, canRules } from '#engine/rules/can.ts';
import { answers, speaks, type Value, valuesOf } from './value.ts';

const order: PourOrder = {
  strength: { kind: 'ratio', ratio: { n: 100, reading: 'in' } },
  canL: 10,
  spoon: null,
  way: 'soil',
  eaten: 'cooked',
  batch: { peg: 14, state: 'ready', held: true },
};
const even = (figure: number) => ({ low: figure, likely: figure, high: figure });
/** A can as it is when its own figures are known to the last digit. */
const can = (diluted: Pour['diluted'], change: Partial<PourOrder> = {}): CanSituation => {
  const asked = { ...order, ...change };
  return { order: asked, pour: { ...pour(asked), diluted } };
};
const adds =
  (growth: PourOrder['growth'], way: Way = 'soil') =>
  (ecDsPerM: number) =>
    can({ addedEcDsPerM: even(ecDsPerM) }, { growth, way });

const overSalt = speaks(canRules, 'salt-over');
const nearSalt = speaks(canRules, 'salt-near');
const outsidePh = speaks(canRules, 'outside-pour-ph');
const ph = (low: number, high: number) => can({ ph: { low, likely: (low + high) / 2, high } });
const onDry = (likely: number) => can({ ph: even(likely) });
const onMoist = (likely: number) => can({ ph: even(likely) }, { soil: 'moist' });
/** A spray of 1 in 100 at a pH at which hardly any acid has lost its proton. */
const sprayOf = (batch: object) =>
  can({ ph: even(0) }, { way: 'leaf', batch: { ...order.batch, lacticMmolPerL: 0, aceticMmolPerL: 0, ...batch } });

export const canValues: readonly Value[] = [
  {
    name: 'salt a drench may add for seedlings',
    at: 'can/limits.ts ADDED_EC_DS_PER_M.seedling',
    stated: '1.0 dS/m',
    source: 'memory',
    step: 0.05,
    holds: answers((ec: number) => overSalt(adds('seedling')(ec)), [0.999, false], [1, false], [1.001, true]),
  },
  {
    name: 'salt a drench may add for grown plants',
    at: 'can/limits.ts ADDED_EC_DS_PER_M.established',
    stated: '2.0 dS/m',
    source: 'memory',
    step: 0.05,
    holds: answers((ec: number) => overSalt(adds('established')(ec)), [1.999, false], [2, false], [2.001, true]),
  },
  {
    name: 'plants of untold age bear the salt of seedlings',
    at: 'can/limits.ts addedEcLimit',
    stated: 'counted as seedlings',
    source: 'our-caution',
    turned: ["growth === 'established'", "growth !== 'seedling'"],
    holds: answers((ec: number) => overSalt(adds(undefined)(ec)), [1, false], [1.001, true]),
  },
  {
    name: 'salt that no drench may pass',
    at: 'can/limits.ts ADDED_EC_DS_PER_M.never',
    stated: '3 dS/m',
    source: 'ayers-westcot-1985',
    locator: 'table 1: severe restriction above 3.0 dS/m',
    step: 0.05,
    holds: answers(
      (ec: number) => speaks(canRules, 'salt-never')(adds('established')(ec)),
      [2.999, false],
      [3, false],
      [3.001, true],
    ),
  },
  {
    name: 'salt of a spray',
    at: 'can/limits.ts LEAF_EC_DS_PER_M',
    stated: '1.5 dS/m',
    source: 'memory',
    holds: answers(
      (ec: number) => overSalt(adds('established', 'leaf')(ec)),
      [1.499, false],
      [1.5, false],
      [1.501, true],
    ),
  },
  {
    name: 'salt is judged by its high end as well',
    at: 'rules/can.ts against',
    stated: 'a warning where only the high end passes the limit',
    source: 'our-caution',
    turned: ['ecDsPerM.high <= limitDsPerM', 'ecDsPerM.likely <= limitDsPerM'],
    holds: answers(
      (high: number) => nearSalt(can({ addedEcDsPerM: { low: 0.8, likely: 0.9, high } }, { growth: 'seedling' })),
      [1, false],
      [1.001, true],
    ),
  },
  {
    name: 'acid of a spray',
    at: 'can/limits.ts LEAF_ACID_MMOL_PER_L',
    stated: '5 mmol/L that have kept their proton',
    source: 'memory',
    step: 0.25,
    // 1 in 100 of 500 mmol/L; at pH 0 all but a few of a hundred thousand keep their proton
    holds: answers(
      (aceticMmolPerL: number) => speaks(canRules, 'leaf-acid-over')(sprayOf({ aceticMmolPerL })),
      [499, false],
      [500, false],
      [501, true],
    ),
  },
  {
    name: 'alcohol of a spray',
    at: 'can/limits.ts LEAF_ETHANOL_PERCENT',
    stated: 'under 0.5 %',
    source: 'memory',
    holds: answers(
      (ethanolPercent: number) => speaks(canRules, 'leaf-alcohol-over')(sprayOf({ ethanolPercent })),
      [49, false],
      [50, true],
      [51, true],
    ),
  },
  {
    name: 'pour pH, the sour end',
    at: 'can/limits.ts POUR_PH.low',
    stated: 'pH 5.0',
    source: 'memory',
    step: 0.1,
    holds: answers((low: number) => outsidePh(ph(low, 7)), [4.99, true], [5, false], [5.01, false]),
  },
  {
    name: 'pour pH, the other end',
    at: 'can/limits.ts POUR_PH.high',
    stated: 'pH 7.5',
    source: 'memory',
    holds: answers((high: number) => outsidePh(ph(6, high)), [7.49, false], [7.5, false], [7.51, true]),
  },
  {
    name: 'pour pH under which the soil must be moist',
    at: 'can/limits.ts POUR_PH.moistOnly',
    stated: 'pH 4.5',
    source: 'memory',
    holds: answers(
      (likely: number) => [onDry, onMoist].map((soil) => speaks(canRules, 'too-sour-for-dry-soil')(soil(likely))),
      [4.49, [true, false]],
      [4.5, [false, false]],
      [4.51, [false, false]],
    ),
  },
  {
    name: 'mesh against nozzle',
    at: 'can/limits.ts MESH_PER_NOZZLE_FRACTION',
    stated: 'half as wide',
    source: 'practice',
    holds: answers(
      (strainedMm: number) => speaks(canRules, 'nozzle-clogs')(can({}, { nozzleMm: 1, strainedMm })),
      [0.49, false],
      [0.5, false],
      [0.51, true],
    ),
  },
  {
    name: 'salt of a concentrate that was not measured',
    at: 'can/limits.ts UNMEASURED_EC_DS_PER_M',
    stated: '33 dS/m',
    source: 'phibunwatthanawong-2019',
    locator: 'abstract: 25 to 33 dS/m',
    // 33 dS/m thinned 1 in 33 add the 1 dS/m of seedlings
    holds: answers(
      (n: number) =>
        speaks(
          canRules,
          'salt-not-measured-strong',
        )(can({}, { growth: 'seedling', strength: { kind: 'ratio', ratio: { n, reading: 'in' } } })),
      [32, true],
      [33, false],
      [34, false],
    ),
  },
];

/** Threshold, dS/m, and percent lost for each dS/m beyond, as Maas (1990) has them. */
const MAAS: readonly (readonly [crop: string, threshold: number, slope: number])[] = [
  ['bean', 1.0, 19],
  ['carrot', 1.0, 14],
  ['strawberry', 1.0, 33],
  ['onion', 1.2, 16],
  ['lettuce', 1.3, 13],
  ['pepper', 1.5, 14],
  ['potato', 1.7, 12],
  ['cabbage', 1.8, 9.7],
  ['tomato', 2.5, 9.9],
  ['courgette', 4.7, 9.4],
];
const PUBLISHED = { source: 'maas-1990', locator: 'vegetables and fruit crops' } as const;

const saltOn = (crop: string) => (ecDsPerM: number) =>
  can({ addedEcDsPerM: even(ecDsPerM) }, { crop, growth: 'established' });
const slopeOf = (crop: string) => valuesOf(canRules, 'crop-salt-over')(saltOn(crop)(10))?.slopePercentPerDsPerM;

export const cropSaltValues: readonly Value[] = MAAS.flatMap(([crop, threshold, slope]): readonly Value[] => [
  {
    name: `salt that ${crop} bears`,
    at: `data/salt-tolerance.csv ${crop}.thresholdEcDsPerM`,
    step: 0.05,
    stated: `${threshold.toFixed(1)} dS/m`,
    ...PUBLISHED,
    holds: answers(
      (ec: number) => speaks(canRules, 'crop-salt-over')(saltOn(crop)(ec)),
      [threshold - 0.01, false],
      [threshold, false],
      [threshold + 0.01, true],
    ),
  },
  {
    name: `what ${crop} loses beyond the salt it bears`,
    at: `data/salt-tolerance.csv ${crop}.slopePercentPerDsPerM`,
    stated: `${slope} % for each dS/m`,
    ...PUBLISHED,
    holds: answers(slopeOf, [crop, slope]),
  },
]);
