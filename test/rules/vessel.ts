// Lids, rooms, warmth and foul gas: each on both sides of its line.

import { foulGasRules, lidGasRules, roomGasRules } from '#engine/rules/gas.ts';
import { type BottleUse, bottleUseRules, lidRules, liftRules } from '#engine/rules/vessel.ts';
import { warmthRules } from '#engine/rules/warmth.ts';
import { examplesOf } from './example.ts';

const lids = examplesOf(lidRules, {
  'lid-tight-no-vent': [
    { lid: 'tight', vesselL: 12, liquidL: 9 },
    { lid: 'loose', vesselL: 12, liquidL: 9 },
  ],
});
const lidGas = examplesOf(lidGasRules, {
  'gas-behind-a-tight-lid': [
    { lid: 'tight', mostPressureAtm: 2, pastDay: 3, lidDiameterM: 0.2 },
    { lid: 'vent', mostPressureAtm: 2, pastDay: 3, lidDiameterM: 0.2 },
  ],
});

// 24 L a day is 1 L an hour: in 1 m3, so many changes of air leave 1,000 / changes ppm above the air outside
const room = { gasLPerDay: 24, roomM3: 1, totalGasL: 1000 };
const rooms = examplesOf(roomGasRules, {
  // limits 30,000 ppm for 15 minutes, 5,000 ppm for a day
  'room-gas-past-short-limit': [
    { ...room, airChangesPerH: 0.03 },
    { ...room, airChangesPerH: 0.04 },
  ],
  'room-gas-past-day-limit': [
    { ...room, airChangesPerH: 0.2 },
    { ...room, airChangesPerH: 0.25 },
  ],
  'room-gas-not-known': [
    { ...room, airChangesPerH: Number.NaN },
    { ...room, airChangesPerH: 1 },
  ],
});

const lost = { state: 'lost', foulSmell: false, likelyPpm: 1600, highPpm: 6000, lid: 'loose' } as const;
const foul = examplesOf(foulGasRules, {
  'foul-closed-open-it-outdoors': [lost, { ...lost, state: 'souring' }],
  'foul-open-keep-off': [{ ...lost, lid: 'cloth' }, lost],
  // ceiling of ten minutes: 10 ppm; the silent one stays just under it
  'foul-gas-under-the-lid': [
    { ...lost, likelyPpm: 20, highPpm: 60 },
    { ...lost, likelyPpm: 2, highPpm: 9.9 },
  ],
  'foul-gas-nose-fails': [lost, { ...lost, lid: 'none' }],
});

const warmth = examplesOf(warmthRules, {
  'too-hot-to-sour': [
    { hottestC: 35, meanC: 20 },
    { hottestC: 34.9, meanC: 20 },
  ],
  'warm-look-daily': [
    { hottestC: 30, meanC: 25 },
    { hottestC: 30, meanC: 24.9 },
  ],
  'too-cold-for-a-hold': [
    { hottestC: 12, meanC: 9 },
    { hottestC: 12, meanC: 10 },
  ],
});

const lifting = examplesOf(liftRules, { 'empty-it-with-a-jug': [{ massKg: 15.1 }, { massKg: 15 }] });

const bottle: BottleUse = {
  volumeL: 1,
  filledL: 0.95,
  cap: 'vent',
  material: 'plastic',
  sugarLeftGPerL: 5,
  temperatureC: 20,
  pressureAtm: 1.2,
};
const sweet: BottleUse = { ...bottle, sugarLeftGPerL: 5.1 };
const bottles = examplesOf(bottleUseRules, {
  'bottle-made-for-drink': [{ ...bottle, material: 'drink-bottle' }, bottle],
  // 5 g/L of sugar left is the most for a closed cap
  'bottle-of-glass': [
    { ...sweet, material: 'glass' },
    { ...bottle, material: 'glass' },
  ],
  'bottle-cap-turned-down': [
    { ...sweet, cap: 'screw' },
    { ...bottle, cap: 'screw' },
  ],
  'bottle-glass-or-tight-cap-later': [
    { ...bottle, cap: 'screw' },
    { ...sweet, cap: 'screw' },
  ],
  'bottle-still-gassing': [sweet, bottle],
});

export const vesselExamples = [...lids, ...lidGas, ...rooms, ...warmth, ...foul, ...lifting, ...bottles];
