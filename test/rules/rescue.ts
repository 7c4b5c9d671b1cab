// Rescues offered and not offered, and batches that are tipped.

import { type RescueSituation, rescueRules, type Tipping, tipRules } from '#engine/rules/rescue.ts';
import type { Rescue } from '#engine/souring/rescue.ts';
import { ALWAYS, examplesOf, type Sides } from './example.ts';

const option = (kind: Rescue['kind'], values: Rescue['values'] = {}): Rescue => ({
  kind,
  values,
  source: 'our-caution',
});
const slow: RescueSituation = {
  options: [option('wait'), option('tip')],
  state: 'slow',
  mayBeFoul: false,
  sugarRoomGPerL: 10,
  mostHexoseGPerL: 20,
};
/** Offered, and not. */
const offering = (kind: Rescue['kind'], values: Rescue['values'] = {}): Sides<RescueSituation> => [
  { ...slow, options: [option(kind, values)] },
  slow,
];
const dayBand = { low: 5, likely: 8, high: 12, reachedFraction: 0.9 };
const reach = { '4.2': dayBand, '4.0': dayBand };

const rescues = examplesOf(rescueRules, {
  'rescue-no-sugar-to-a-foul-one': [{ ...slow, mayBeFoul: true }, slow],
  'rescue-sugar-is-at-its-most': [
    { ...slow, sugarRoomGPerL: 0 },
    { ...slow, sugarRoomGPerL: 0.1 },
  ],
  'rescue-sugar-not-past-the-most': offering('sugar', { mostG: 60 }),
  'rescue-starter-from-a-good-batch': offering('starter'),
  'rescue-warm-not-hot': offering('warmth'),
  'rescue-skim-gently': offering('skim'),
  'rescue-never-seal': offering('close'),
  'rescue-is-an-estimate': [
    { ...slow, options: [{ ...option('warmth'), expects: { reach, asItIs: reach, untilDay: 21 } }] },
    slow,
  ],
});

const clear: Tipping = { state: 'lost', animalMatter: false, untestedClippings: false, volumeL: 8 };
const tipping = examplesOf(tipRules, {
  'tip-nothing-of-it-on-a-bed': [clear, { ...clear, state: 'slow' }],
  'tip-animal-matter-not-into-a-food-heap': [{ ...clear, animalMatter: undefined }, clear],
  'tip-untested-clippings-not-into-a-food-heap': [{ ...clear, untestedClippings: undefined }, clear],
  'tip-under-dry-leaves': [clear, ALWAYS],
});

export const rescueExamples = [...rescues, ...tipping];
