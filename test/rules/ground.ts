// A season on a bed: soil reports that can be read and not, soil that is full, more than a harvest carries away, stuff
// that ties nitrogen up, beds and crops nobody told about.

import { cropOf } from '#engine/ground/crops.ts';
import { bedLedger, type LedgerBed } from '#engine/ground/ledger.ts';
import { matterSupply, pourSupply, productSupply } from '#engine/ground/supply.ts';
import { point } from '#engine/quantity/range.ts';
import {
  type GroundAnswerSituation,
  type GroundSituation,
  groundAnswerRules,
  groundRules,
  type SoilSituation,
  soilTestRules,
} from '#engine/rules/ground.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { examplesOf } from './example.ts';

const line: SoilSituation = { bed: 'Middle', element: 'p', typed: '20 ppm, Bray-1', class: 'medium', others: [] };
const asked = (question: SoilSituation['question']): SoilSituation => ({ ...line, class: undefined, question });

const soil = examplesOf(soilTestRules, {
  'soil-method-missing': [asked('method-missing'), line],
  'soil-method-not-for-element': [asked('method-not-for-element'), line],
  'soil-unit-not-for-method': [asked('unit-not-for-method'), line],
  'soil-method-against-ph': [{ ...asked('method-against-ph'), method: 'olsen', soilPh: 5.6 }, line],
  'soil-scales-differ': [{ ...line, others: ['low'] }, line],
});

const kale = cropOf('kale');
if (kale === undefined) throw new Error('the table has no kale');
const season = { fromDay: 0, toDay: 180 };
const warmth = (fromDay: number, toDay: number) => point(15 * (toDay - fromDay));

/** A bed of 10 m² of kale with what was given to it. */
function bed(supplies: LedgerBed['supplies'] = [], change: Partial<LedgerBed> = {}): GroundSituation {
  const asks: LedgerBed = {
    name: 'Middle',
    areaM2: 10,
    crops: kale === undefined ? [] : [kale],
    soil: {},
    supplies,
    ...change,
  };
  return {
    ledger: bedLedger(asks, season, warmth),
    unknownCrops: [],
    cropTold: true,
    releaseUntold: [],
    coffee: false,
  };
}
const feed = (massKg: number, [nPercent, p2o5Percent, k2oPercent]: readonly [number, number, number]) =>
  productSupply({ name: 'bought feed', day: 1, massKg, nPercent, p2o5Percent, k2oPercent, release: 'at-once' });
const straw = (dugIn: boolean) =>
  matterSupply({ kind: 'mulch', day: 1, part: resolvePart({ material: 'straw', massKg: 10 }), dugIn });
const unknownLiquid = pourSupply({
  what: 'a liquid',
  day: 1,
  concentrateL: point(1),
  liquid: { gPerL: {}, ceilingGPerL: {} },
});
const plain = bed();
// 10 m² of kale carry about 6.7 g of P and 36 g of K away and take up 200 g of N
const little = bed([feed(0.1, [10, 1, 10])]);

const beds = examplesOf(groundRules, {
  'ground-crop-not-told': [{ ...bed([], { crops: [] }), cropTold: false }, plain],
  'ground-crop-unknown': [{ ...bed([], { crops: [] }), unknownCrops: ['oca'] }, plain],
  'ground-figure-unknown': [bed([], { crops: [{ id: 'oca', name: 'oca', sources: {} }] }), plain],
  'ground-p-full': [
    { ...little, p: 'high' },
    { ...little, p: 'medium' },
  ],
  'ground-k-full': [
    { ...little, k: 'excessive' },
    { ...little, k: 'medium' },
  ],
  'ground-p-builds-up': [bed([feed(1, [0, 20, 0])]), little],
  'ground-k-builds-up': [bed([feed(1, [0, 0, 20])]), little],
  'ground-n-over': [bed([feed(3, [20, 0, 0])]), little],
  'ground-ties-up': [bed([straw(true)]), bed([straw(false)])],
  'ground-coffee-no-credit': [{ ...plain, coffee: true }, plain],
  'ground-release-untold': [{ ...little, releaseUntold: ['hoof meal'] }, little],
  'ground-low-soil': [
    { ...plain, p: 'low', k: 'low' },
    { ...plain, p: 'medium' },
  ],
  'ground-content-unknown': [bed([unknownLiquid]), little],
});

const told: GroundAnswerSituation = {
  untestedBeds: [],
  withoutGoal: [],
  warmthTold: true,
  rots: true,
  usualC: { low: 10, likely: 15, high: 20 },
};
const answers = examplesOf(groundAnswerRules, {
  'ground-no-soil-test': [{ ...told, untestedBeds: ['Middle', 'Gate'] }, told],
  'ground-no-yield-goal': [{ ...told, withoutGoal: ['Middle'] }, told],
  'ground-warmth-assumed': [{ ...told, warmthTold: false }, told],
});

export const groundExamples = [...soil, ...beds, ...answers];
