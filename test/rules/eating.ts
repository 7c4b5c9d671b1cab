// Those who eat: each rule on both sides of its line. Lettuce touches the soil (120 days), a staked tomato does not (90).

import type { PourOrder } from '#engine/can/pour.ts';
import { eatingRules } from '#engine/rules/eating.ts';
import { NOTHING_TOLD } from '#engine/scraps/profile.ts';
import { examplesOf } from './example.ts';

const held: NonNullable<PourOrder['batch']> = { peg: 14, state: 'ready', held: true, animalOrigin: 'no' };
const sound: PourOrder = {
  strength: { kind: 'ratio', ratio: { n: 100, reading: 'in' } },
  canL: 10,
  spoon: null,
  way: 'soil',
  batch: held,
  crop: 'lettuce',
  eaten: 'raw',
  eatenPart: 'raw-leaf',
  toPickDays: 14,
  profile: NOTHING_TOLD,
};
const order = (change: Partial<PourOrder>): PourOrder => ({ ...sound, ...change });
const from = (animalOrigin: 'no' | 'possible' | 'yes', change: Partial<PourOrder> = {}) =>
  order({ batch: { ...held, animalOrigin }, ...change });
const tomato = { crop: 'tomatoes', eatenPart: 'raw-fruit' } as const;
const kale = { crop: 'kale', eaten: 'cooked', eatenPart: 'cooked' } as const;
const sells = { profile: { ...NOTHING_TOLD, sells: true } };
const school = { profile: { ...NOTHING_TOLD, school: true } };
const immuneWeak = { profile: { ...NOTHING_TOLD, immuneWeak: true } };

export const eatingExamples = examplesOf(eatingRules, {
  'eating-animal-on-leaves': [from('yes', { ...kale, way: 'leaf' }), from('yes', kale)],
  'eating-animal-possible-on-leaves': [
    from('possible', { ...kale, way: 'leaf' }),
    from('no', { ...kale, way: 'leaf' }),
  ],
  'eating-immune-weak-raw-bed': [order(immuneWeak), order({ ...kale, ...immuneWeak })],
  // 120 days for a leaf, 90 for a staked tomato; cooked or not
  'eating-manure-picked-soon': [from('yes', { ...kale, toPickDays: 119 }), from('yes', { ...tomato, toPickDays: 90 })],
  'eating-animal-possible-picked-soon': [
    from('possible', { ...tomato, toPickDays: 89 }),
    from('possible', { ...tomato, toPickDays: 90 }),
  ],
  'eating-sold-picked-soon': [order({ ...sells, toPickDays: 119 }), order({ ...sells, toPickDays: 120 })],
  'eating-school-picked-soon': [order({ ...school, toPickDays: 20 }), order({ ...school, toPickDays: 21 })],
  // kale is not on the list of 112.2(a)(1), collards are
  'eating-sold-counts-raw': [order({ ...kale, ...sells }), order({ ...kale, crop: 'collards', ...sells })],
  'eating-cooked-but-usually-raw': [order({ ...kale, crop: 'lettuce' }), order(kale)],
  'eating-raw-but-rarely-raw': [order({ crop: 'potatoes', eatenPart: 'raw-root' }), order({ crop: 'carrots' })],
});
