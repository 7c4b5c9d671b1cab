// The days of souring, straining, the bottle, the can and the hour.

import { readGermination } from '#engine/can/germination.ts';
import type { Case } from './speaks.ts';

const pail = {
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants: [
    { material: 'grass-clippings-fresh', massKg: 1.4, treated: 'no' },
    { material: 'cabbage-leaves', massKg: 0.7 },
  ],
  water: { volumeL: 5.2, alkalinityMeqPerL: 4.24 },
  sugar: { product: 'white-sugar', massKg: 0.13 },
  lid: 'vent',
  temperatureC: 20,
  draws: 60,
};
const good = [
  { day: 0, ph: 6.3, by: 'meter', smell: 'grassy' },
  { day: 2, ph: 4.6, by: 'meter', smell: 'sour' },
  { day: 4, ph: 4.0, by: 'meter', smell: 'sour' },
  { day: 7, ph: 3.8, by: 'meter', smell: 'sour' },
  { day: 9, ph: 3.7, by: 'meter', smell: 'sour' },
];
const gone = [
  { day: 0, ph: 6.1, by: 'meter', smell: 'grassy' },
  { day: 3, ph: 6.3, by: 'meter', smell: 'grassy' },
  { day: 6, ph: 6.9, by: 'meter', smell: 'egg' },
];

const strained = {
  plants: pail.plants,
  water: pail.water,
  sugar: pail.sugar,
  days: 10,
  temperatureC: 20,
  finalPh: 3.7,
  drainedL: 5.6,
  solidsKg: 1.6,
  state: 'ready',
};

const held = { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 4 };
const card = {
  batch: held,
  ratio: { n: 40, reading: 'in' },
  canL: 10,
  areaM2: 5.76,
  depthLPerM2: 2,
  spoon: null,
  water: { alkalinityMeqPerL: 4.24, ecDsPerM: 0.58 },
  eaten: 'cooked',
  growth: 'established',
  soil: 'moist',
};
const raw = { ...card, eaten: 'raw' };
const batch = (change: object) => ({ ...card, batch: { ...held, ...change } });

const bottle = {
  volumeL: 1,
  filledL: 0.95,
  cap: 'vent',
  material: 'plastic',
  sugarLeftGPerL: 2,
  temperatureC: 18,
  pressureAtm: 0.5,
};

const hour = {
  hour: {
    windMPerS: 8 / 3.6,
    temperatureC: 20,
    humidityPercent: 55,
    untilRainH: 24,
    sinceSunriseH: 3,
    untilSunsetH: 9,
  },
  forecastAgeH: 1,
};
const at = (change: object) => ({ ...hour, hour: { ...hour.hour, ...change } });

const water = { sownCount: 30, germinatedCount: 27, meanRootMm: 20 };
const foul = { state: 'lost', foulSmell: true, lid: 'loose', likelyPpm: 2, highPpm: 9 };

export const pailToBed: readonly Case[] = [
  {
    when: 'a pail at 20 °C whose looks show it ready',
    place: 'watching',
    ask: { ...pail, looks: good, today: 9 },
    speaks: [],
    silent: ['too-hot-to-sour', 'gas-behind-a-tight-lid', 'tip-nothing-of-it-on-a-bed', 'foul-gas-nose-fails'],
  },
  {
    when: 'a pail stands at 36 °C',
    place: 'watching',
    ask: { ...pail, temperatureC: 36, looks: [] },
    speaks: ['too-hot-to-sour'],
    silent: ['too-cold-for-a-hold'],
  },
  {
    when: 'a pail stands at 8 °C',
    place: 'watching',
    ask: { ...pail, temperatureC: 8, looks: [] },
    speaks: ['too-cold-for-a-hold'],
    silent: ['too-hot-to-sour', 'warm-look-daily'],
  },
  {
    when: 'a pail under a tight lid',
    place: 'watching',
    ask: { ...pail, lid: 'tight', looks: [] },
    speaks: ['lid-tight-no-vent', 'gas-behind-a-tight-lid'],
    silent: ['foul-closed-open-it-outdoors'],
  },
  {
    when: 'acidity rises and an egg smell comes: lost, under a lid that only lies on',
    place: 'watching',
    ask: { ...pail, lid: 'loose', looks: gone, today: 6 },
    speaks: [
      'tip-nothing-of-it-on-a-bed',
      'tip-under-dry-leaves',
      'foul-closed-open-it-outdoors',
      'foul-gas-nose-fails',
      'foul-gas-under-the-lid',
    ],
    silent: ['tip-animal-matter-not-into-a-food-heap', 'tip-untested-clippings-not-into-a-food-heap'],
  },
  {
    when: 'a lost batch with manure in it is tipped from an open vessel',
    place: 'tipping',
    ask: { ...foul, lid: 'none', animalMatter: true, untestedClippings: false, volumeL: 40 },
    speaks: [
      'tip-nothing-of-it-on-a-bed',
      'tip-animal-matter-not-into-a-food-heap',
      'tip-under-dry-leaves',
      'foul-open-keep-off',
    ],
    silent: ['tip-untested-clippings-not-into-a-food-heap', 'foul-closed-open-it-outdoors'],
  },
  {
    when: 'a foul batch stands open in the air',
    place: 'foul batch',
    ask: { ...foul, lid: 'none' },
    speaks: ['foul-open-keep-off'],
    silent: ['foul-closed-open-it-outdoors', 'foul-gas-nose-fails'],
  },
  {
    when: 'a pail gasses under a vent',
    place: 'closed lid',
    ask: { lid: 'vent', mostPressureAtm: 0 },
    speaks: [],
    silent: ['gas-behind-a-tight-lid'],
  },
  {
    when: 'a barrel gasses in a shut cellar',
    place: 'room',
    ask: { gasLPerDay: 24, roomM3: 1, airChangesPerH: 0.03, totalGasL: 1000 },
    speaks: ['room-gas-past-short-limit'],
    silent: ['room-gas-not-known'],
  },
  {
    when: 'a pail gasses in an aired shed',
    place: 'room',
    ask: { gasLPerDay: 3, roomM3: 12, airChangesPerH: 2, totalGasL: 20 },
    speaks: [],
    silent: ['room-gas-past-day-limit', 'room-gas-not-known'],
  },
  {
    when: 'a ready batch is strained and the sum closes',
    place: 'straining',
    ask: strained,
    speaks: ['strained-tag-not-a-drink'],
    silent: ['strained-not-sour', 'strained-sum-open', 'strained-lot-not-for-liquid', 'bottle-made-for-drink'],
  },
  {
    when: 'a lost batch is strained',
    place: 'straining',
    ask: { ...strained, state: 'lost' },
    speaks: ['strained-batch-lost', 'strained-tag-not-a-drink'],
    silent: ['strained-batch-unknown', 'strained-batch-doubtful'],
  },
  {
    when: 'a batch is strained above the acid-food line',
    place: 'straining',
    ask: { ...strained, finalPh: 4.9, state: 'souring' },
    speaks: ['strained-not-sour', 'strained-tag-not-a-drink'],
    silent: ['strained-before-ready', 'strained-batch-lost'],
  },
  {
    when: 'more is drained than there was liquid',
    place: 'straining',
    ask: { ...strained, drainedL: 9 },
    speaks: ['strained-more-than-could', 'strained-sum-open', 'strained-tag-not-a-drink'],
    silent: ['strained-not-sour'],
  },
  {
    when: 'a bottle that once held a drink',
    place: 'bottle',
    ask: { ...bottle, material: 'drink-bottle' },
    speaks: ['bottle-made-for-drink'],
    silent: ['bottle-of-glass', 'bottle-still-gassing'],
  },
  {
    when: 'a glass bottle with 10 g/L of sugar left',
    place: 'bottle',
    ask: { ...bottle, material: 'glass', sugarLeftGPerL: 10, pressureAtm: 2.7 },
    speaks: ['bottle-of-glass'],
    silent: ['bottle-made-for-drink', 'bottle-glass-or-tight-cap-later'],
  },
  {
    when: 'an opaque plastic bottle under a venting cap, gassed out',
    place: 'bottle',
    ask: bottle,
    speaks: [],
    silent: ['bottle-still-gassing', 'bottle-cap-turned-down'],
  },
  {
    when: 'a screw cap is turned down on what still gasses',
    place: 'bottle',
    ask: { ...bottle, cap: 'screw', sugarLeftGPerL: 10, pressureAtm: 2.7 },
    speaks: ['bottle-cap-turned-down'],
    silent: ['bottle-of-glass'],
  },
  {
    when: 'a held batch goes on the soil of cooked kale',
    place: 'can',
    ask: card,
    speaks: [],
    silent: ['batch-not-held', 'raw-bed-picked-soon', 'salt-over', 'nozzle-clogs', 'leaf-eaten-raw'],
  },
  {
    when: 'a held batch goes on lettuce that is picked in three days',
    place: 'can',
    ask: { ...raw, daysToPick: 3 },
    speaks: ['raw-bed-picked-soon'],
    silent: ['batch-not-held', 'leaf-eaten-raw'],
  },
  {
    when: 'a held batch goes on lettuce that is picked in three weeks',
    place: 'can',
    ask: { ...raw, daysToPick: 21 },
    speaks: [],
    silent: ['raw-bed-picked-soon', 'batch-not-held-raw-bed'],
  },
  {
    when: 'lettuce is to be sprayed, whenever it is picked',
    place: 'can',
    ask: { ...raw, way: 'leaf', daysToPick: 200 },
    speaks: ['leaf-eaten-raw'],
    silent: ['raw-bed-picked-soon'],
  },
  {
    when: 'nobody said how the bed is eaten',
    place: 'can',
    ask: { ...card, eaten: undefined },
    speaks: ['eaten-not-told'],
    silent: ['raw-bed-picked-soon', 'leaf-eaten-raw'],
  },
  {
    when: 'a ready batch that was not held goes on a raw bed in four months less a day',
    place: 'can',
    ask: { ...raw, daysToPick: 119, batch: { ...held, held: false } },
    speaks: ['batch-not-held', 'batch-not-held-raw-bed'],
    silent: ['raw-bed-picked-soon', 'batch-lost'],
  },
  {
    when: 'a ready batch that was not held goes on cooked kale',
    place: 'can',
    ask: batch({ held: false }),
    speaks: ['batch-not-held'],
    silent: ['batch-not-held-raw-bed', 'raw-bed-picked-soon'],
  },
  {
    when: 'a lost batch',
    place: 'can',
    ask: batch({ state: 'lost' }),
    speaks: ['batch-lost'],
    silent: ['batch-unknown', 'batch-not-held'],
  },
  {
    when: 'nobody looked for ten days',
    place: 'can',
    ask: batch({ state: 'unknown' }),
    speaks: ['batch-unknown'],
    silent: ['batch-lost', 'batch-not-held'],
  },
  {
    when: 'a jar whose tag is empty',
    place: 'can',
    ask: batch({ peg: ' ' }),
    speaks: ['batch-no-peg'],
    silent: ['batch-unknown', 'batch-lost'],
  },
  {
    when: 'a slow batch',
    place: 'can',
    ask: batch({ state: 'slow', held: false }),
    speaks: ['batch-slow'],
    silent: ['batch-lost', 'batch-not-held'],
  },
  {
    when: 'a sprayer with a 0.4 mm nozzle and a liquid strained at 1 mm',
    place: 'can',
    ask: { ...card, way: 'leaf', nozzleMm: 0.4, strainedMm: 1 },
    speaks: ['nozzle-clogs', 'leaf-acid-not-known'],
    silent: ['leaf-eaten-raw', 'salt-over'],
  },
  {
    when: 'one in four of a strong liquid on beans',
    place: 'can',
    ask: { ...batch({ ecDsPerM: 14 }), ratio: { n: 4, reading: 'in' }, crop: 'bean' },
    speaks: ['salt-never', 'salt-over', 'crop-salt-over', 'outside-pour-ph'],
    silent: ['salt-near', 'crop-salt-near', 'nozzle-clogs'],
  },
  {
    when: 'a good hour for a spray',
    place: 'hour to spray',
    ask: hour,
    speaks: [],
    silent: ['spray-windy', 'spray-inversion', 'spray-hot', 'spray-hour-not-known'],
  },
  {
    when: 'wind of 16 km/h',
    place: 'hour to spray',
    ask: at({ windMPerS: 16 / 3.6 }),
    speaks: ['spray-windy'],
    silent: ['spray-still-air', 'spray-window-open'],
  },
  {
    when: 'still air an hour after sunrise',
    place: 'hour to spray',
    ask: at({ windMPerS: 1 / 3.6, sinceSunriseH: 1 }),
    speaks: ['spray-still-air', 'spray-inversion'],
    silent: ['spray-windy', 'spray-window-open'],
  },
  {
    when: '25 °C at noon',
    place: 'hour to spray',
    ask: at({ temperatureC: 25 }),
    speaks: ['spray-hot'],
    silent: ['spray-past-the-cool-morning', 'spray-window-open'],
  },
  {
    when: 'rain in five hours',
    place: 'hour to spray',
    ask: at({ untilRainH: 5 }),
    speaks: ['spray-rain-soon'],
    silent: ['spray-window-open', 'spray-windy'],
  },
  {
    when: 'moist soil and no heavy rain ahead',
    place: 'hour to pour',
    ask: { soil: 'moist', rainAheadMm: 2 },
    speaks: [],
    silent: ['pour-soil-dry', 'pour-heavy-rain-soon', 'pour-hour-not-known'],
  },
  {
    when: 'cracked soil',
    place: 'hour to pour',
    ask: { soil: 'cracked', rainAheadMm: 0 },
    speaks: ['pour-soil-dry'],
    silent: ['pour-soil-soaked', 'pour-hour-not-known'],
  },
  {
    when: 'a storm is forecast on moist soil',
    place: 'hour to pour',
    ask: { soil: 'moist', rainAheadMm: 30 },
    speaks: ['pour-heavy-rain-soon'],
    silent: ['pour-soil-dry'],
  },
  {
    when: 'cress roots half as long in the feed as in water',
    place: 'cress test',
    ask: readGermination({ ...water, meanRootMm: 9 }, water),
    speaks: ['germination-harmful'],
    silent: ['germination-doubtful', 'germination-not-valid'],
  },
  {
    when: 'cress that grows in the feed as in water',
    place: 'cress test',
    ask: readGermination({ ...water, meanRootMm: 19 }, water),
    speaks: [],
    silent: ['germination-harmful', 'germination-doubtful'],
  },
];
