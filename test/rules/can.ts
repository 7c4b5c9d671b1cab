// The batch, the can and the bed: each rule on both sides of its line. A concentrate of 10 dS/m in water
// without salt adds 10/n dS/m at 1 in n.

import { type PourOrder, pour } from '#engine/can/pour.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { type BedSituation, bedRules, type Spacing, spacingRules } from '#engine/rules/bed.ts';
import { type CanSituation, canRules } from '#engine/rules/can.ts';
import { examplesOf } from './example.ts';

const held: NonNullable<PourOrder['batch']> = { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 10 };
const order = (n: number, change: Partial<PourOrder> = {}): PourOrder => ({
  strength: { kind: 'ratio', ratio: { n, reading: 'in' } },
  canL: 10,
  spoon: null,
  way: 'soil',
  eaten: 'cooked',
  growth: 'established',
  batch: held,
  water: { alkalinityMeqPerL: 5, ph: 7.6, ecDsPerM: 0 },
  ...change,
});
const sound = order(100);
const batchIs = (change: Partial<typeof held>): PourOrder => ({ ...sound, batch: { ...held, ...change } });

const batches = examplesOf(batchRules, {
  'batch-none': [{ ...sound, batch: undefined }, sound],
  'batch-no-peg': [batchIs({ peg: ' ' }), sound],
  'batch-lost': [batchIs({ state: 'lost' }), sound],
  'batch-unknown': [batchIs({ state: undefined }), sound],
  'batch-souring': [batchIs({ state: 'souring' }), sound],
  'batch-slow': [batchIs({ state: 'slow' }), sound],
  'batch-doubtful': [batchIs({ state: 'doubtful' }), sound],
  'batch-not-held': [batchIs({ held: undefined }), sound],
  // more than 120 days, so 120 is not enough
  'batch-not-held-raw-bed': [
    { ...batchIs({ held: false }), eaten: 'raw', toPickDays: 120 },
    { ...batchIs({ held: false }), eaten: 'raw', toPickDays: 121 },
  ],
  // 14 days or more
  'raw-bed-picked-soon': [
    { ...sound, eaten: 'raw', toPickDays: 13 },
    { ...sound, eaten: 'raw', toPickDays: 14 },
  ],
});

const poured = (asked: PourOrder): CanSituation => ({ order: asked, pour: pour(asked) });
const can = (n: number, change: Partial<PourOrder> = {}) => poured(order(n, change));
const seedling = (n: number) => can(n, { growth: 'seedling' });
const bean = (n: number) => can(n, { crop: 'bean' });
const unmeasured = { ...held, ecDsPerM: undefined };
const rain = { alkalinityMeqPerL: 0.05, ph: 6, ecDsPerM: 0.02 };
const known = { ...held, lacticMmolPerL: 100, aceticMmolPerL: 50, ethanolPercent: 2 };
const leaf = (n: number) => can(n, { way: 'leaf', batch: known });
/** 1 g/L of nitrogen, 4 L on a square metre: 4 g/m² undiluted. */
const aim = (aimGPerM2: number) =>
  can(1, { strength: { kind: 'nutrient', element: 'n', aimGPerM2, contentGPerL: 1, depthLPerM2: 4 } });
const upTo = (maxEcDsPerM: number) =>
  can(1, { strength: { kind: 'conductivity', maxEcDsPerM, batchEcDsPerM: 10, waterEcDsPerM: 0.6 } });

const cans = examplesOf(canRules, {
  'leaf-eaten-raw': [can(100, { way: 'leaf', eaten: 'raw' }), can(100, { way: 'leaf', eaten: 'cooked' })],
  'aim-too-weak': [aim(4.1), aim(4)],
  'aim-water-too-salty': [upTo(0.6), upTo(1)],
  // never more than 3 dS/m: 3.33 and 2.5
  'salt-never': [can(3), can(4)],
  // seedlings 1.0 dS/m: 1.11 and, with the band of pen and jug, 0.5
  'salt-over': [seedling(9), seedling(20)],
  'salt-near': [seedling(10.5), seedling(20)],
  // beans lose yield beyond 1.0 dS/m
  'crop-salt-over': [bean(8), bean(20)],
  'crop-salt-near': [bean(10.5), bean(20)],
  'crop-salt-not-known': [can(100, { crop: 'chard' }), bean(100)],
  // 33 dS/m at worst against 1.0 for seedlings: 1 in 33
  'salt-not-measured-strong': [
    can(32, { growth: 'seedling', batch: unmeasured }),
    can(33, { growth: 'seedling', batch: unmeasured }),
  ],
  'salt-not-measured': [
    can(33, { growth: 'seedling', batch: unmeasured }),
    can(32, { growth: 'seedling', batch: unmeasured }),
  ],
  'too-sour-for-dry-soil': [can(100, { water: rain }), can(100, { water: rain, soil: 'moist' })],
  'outside-pour-ph': [can(100, { water: rain }), can(100)],
  // 50 mmol/L of acetic acid in 1 in 2 stand far over 5, in 1 in 100 far under
  'leaf-acid-over': [leaf(2), leaf(100)],
  // 2 % in 1 in 4 is the 0.5 % it stays under
  'leaf-alcohol-over': [leaf(4), leaf(5)],
  'leaf-acid-not-known': [can(100, { way: 'leaf' }), leaf(100)],
  // a mesh half as wide as the nozzle
  'nozzle-clogs': [can(100, { nozzleMm: 1, strainedMm: 0.51 }), can(100, { nozzleMm: 1, strainedMm: 0.5 })],
  'eaten-not-told': [can(100, { eaten: undefined }), can(100)],
  'can-water-not-told': [can(100, { water: undefined }), can(100)],
  'ratio-is-practice': [can(100), aim(2)],
  'use-today': [can(100), aim(4.1)],
});

const bed: BedSituation = { feed: 'soil', eaten: 'cooked', grows: true, sized: true, fedDays: 2 };
const beds = examplesOf(bedRules, {
  'bed-gets-none': [{ ...bed, feed: 'none', eaten: 'raw-leaf' }, bed],
  'bed-nothing-grows': [{ ...bed, grows: false }, bed],
  'bed-size-not-told': [{ ...bed, sized: false }, bed],
  'bed-eaten-not-told': [{ ...bed, eaten: undefined }, bed],
  'bed-fed-just-now': [{ ...bed, fedDays: 1 }, bed],
});

const spacing: Spacing = { fedDays: 2, nextDays: 12, on: '2026-07-19', today: '2026-07-07' };
const spacings = examplesOf(spacingRules, {
  'bed-fed-lately': [spacing, { ...spacing, fedDays: 14, nextDays: 0, on: '2026-07-07' }],
});

export const canExamples = [...batches, ...cans, ...beds, ...spacings];
