// A heap as it is built and as it is looked at: each rule on both sides of its line.

import { resolveIngredient } from '#engine/heap/ingredient.ts';
import { daysOf, type LogEntry } from '#engine/heap/log.ts';
import { type HeapLook, turningOf } from '#engine/heap/turning.ts';
import { type HeapLookSituation, type HeapMixSituation, heapLookRules, heapMixRules } from '#engine/rules/heap.ts';
import { examplesOf } from './example.ts';

const grass = resolveIngredient({ material: 'grass-clippings-fresh', treated: 'no' });
const leaves = resolveIngredient({ material: 'dry-leaves' });
const mix = (
  change: Partial<HeapMixSituation>,
  ...more: Parameters<typeof resolveIngredient>[0][]
): HeapMixSituation => ({
  ingredients: [grass, leaves, ...more.map(resolveIngredient)],
  cn: 30,
  moisturePercent: 55,
  coffeePercent: 0,
  withoutCn: [],
  ...change,
});
const good = mix({});

const mixes = examplesOf(heapMixRules, {
  'heap-keep-out': [mix({}, { material: 'pet-waste' }), good],
  'heap-weedkiller': [mix({}, { material: 'straw', treated: 'yes' }), mix({}, { material: 'straw', treated: 'no' })],
  'heap-weedkiller-not-known': [mix({}, { material: 'straw', treated: 'unknown' }), mix({}, { material: 'straw' })],
  'heap-manure': [mix({}, { material: 'horse-manure' }), mix({}, { material: 'finished-compost' })],
  'heap-too-wet': [mix({ moisturePercent: 65.1 }), mix({ moisturePercent: 65 })],
  'heap-too-dry': [mix({ moisturePercent: 39.9 }), mix({ moisturePercent: 40 })],
  'heap-too-rich': [mix({ cn: 19.9 }), mix({ cn: 20 })],
  'heap-too-poor': [mix({ cn: 60.1 }), mix({ cn: 60 })],
  'heap-cn-not-known': [mix({ withoutCn: ['eggshell, crushed'] }), good],
  'heap-coffee-grounds': [mix({ coffeePercent: 10.1 }), mix({ coffeePercent: 10 })],
  'heap-sour-solids': [mix({}, { material: 'strained-solids' }), good],
});

const look = (
  log: readonly LogEntry[],
  told: Omit<HeapLook, 'days'> = {},
  more: Partial<HeapLookSituation> = {},
): HeapLookSituation => ({
  advice: turningOf({ days: daysOf(log), ...told }),
  smell: told.smell,
  logged: false,
  fedDay: undefined,
  manure: undefined,
  volumeM3: undefined,
  ...more,
});
const warm = [{ day: 0, coreC: 58 }];
const logged = (more: Partial<HeapLookSituation> = {}) => look(warm, {}, { logged: true, ...more });

const looks = examplesOf(heapLookRules, {
  'heap-core-too-hot': [look([{ day: 0, coreC: 66.5 }]), look([{ day: 0, coreC: 66 }])],
  'heap-foul': [look(warm, { smell: 'egg' }), look(warm, { smell: 'earthy' })],
  'heap-ammonia': [look(warm, { smell: 'ammonia' }), look(warm, { smell: 'cannot-smell' })],
  'heap-dry': [look(warm, { feel: 'dry' }), look(warm, { feel: 'right' })],
  'heap-cooled': [look([...warm, { day: 5, coreC: 42 }]), look([...warm, { day: 5, coreC: 43 }])],
  'heap-fed-since': [logged({ fedDay: 6 }), logged()],
  'heap-core-only': [logged(), look(warm)],
  'heap-plants-only': [logged({ manure: false }), logged({ manure: undefined })],
  'heap-too-small-to-heat': [logged({ volumeM3: 0.9 }), logged({ volumeM3: 1 })],
});

export const heapExamples = [...mixes, ...looks];
