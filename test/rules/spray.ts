// The hour of a spray and of a pour, and the cress test: each rule on both sides of its line.

import { readGermination } from '#engine/can/germination.ts';
import type { PourHour, SprayHour } from '#engine/can/spray-window.ts';
import { germinationRules, pourHourRules, type SpraySituation, sprayRules } from '#engine/rules/spray.ts';
import { examplesOf } from './example.ts';

const kmPerH = (value: number) => value / 3.6;
const fine: SprayHour = {
  windMPerS: kmPerH(8),
  temperatureC: 20,
  humidityPercent: 50,
  untilRainH: 24,
  sinceSunriseH: 3,
  untilSunsetH: 9,
};
const hour = (change: Partial<SprayHour>, forecastAgeH?: number): SpraySituation => ({
  hour: { ...fine, ...change },
  forecastAgeH,
});
const well = hour({});

const sprays = examplesOf(sprayRules, {
  'spray-windy': [hour({ windMPerS: kmPerH(16) }), hour({ windMPerS: kmPerH(15) })],
  'spray-still-air': [hour({ windMPerS: kmPerH(2) }), hour({ windMPerS: kmPerH(3) })],
  'spray-inversion': [hour({ sinceSunriseH: 1.4 }), hour({ sinceSunriseH: 1.5 })],
  'spray-hot': [hour({ temperatureC: 25 }), hour({ temperatureC: 24.9 })],
  'spray-frost': [hour({ temperatureC: 0 }), hour({ temperatureC: 5, humidityPercent: 60 })],
  'spray-past-the-cool-morning': [
    hour({ temperatureC: undefined, sinceSunriseH: 4.1 }),
    hour({ temperatureC: undefined, sinceSunriseH: 4 }),
  ],
  'spray-rain-soon': [hour({ untilRainH: 5 }), hour({ untilRainH: 6 })],
  // 15 °C and 90 %: delta-T 1.2; 24 °C and 20 %: over 10
  'spray-dries-too-slowly': [hour({ temperatureC: 15, humidityPercent: 90 }), well],
  'spray-dries-too-fast': [hour({ temperatureC: 24, humidityPercent: 20 }), well],
  'spray-hour-not-known': [hour({ untilRainH: undefined }), well],
  'spray-drying-near-limit': [hour({ temperatureC: 24, humidityPercent: 40 }), well],
  'spray-humidity-not-told': [hour({ humidityPercent: undefined }), well],
  'spray-by-rule-of-thumb': [hour({ windMPerS: undefined, airSeen: 'leaves-rustle' }), well],
  'spray-forecast-old': [hour({}, 6), hour({}, 5.9)],
  'spray-window-open': [well, hour({ untilRainH: undefined })],
});

const moist: PourHour = { soil: 'moist', rainAheadMm: 9 };
const pours = examplesOf(pourHourRules, {
  'pour-soil-dry': [{ ...moist, soil: 'cracked' }, moist],
  'pour-soil-soaked': [{ ...moist, soil: 'soaked' }, moist],
  'pour-heavy-rain-soon': [{ ...moist, rainAheadMm: 10 }, moist],
  'pour-hot': [
    { ...moist, temperatureC: 25 },
    { ...moist, temperatureC: 24.9 },
  ],
  'pour-windy': [
    { ...moist, windMPerS: kmPerH(16) },
    { ...moist, windMPerS: kmPerH(15) },
  ],
  'pour-hour-not-known': [{ ...moist, soil: undefined }, moist],
});

/** All 27 of 27 germinated as in the water: the index is 100 × root/20. */
const water = { sownCount: 30, germinatedCount: 27, meanRootMm: 20 };
const cress = (meanRootMm: number) => readGermination({ ...water, meanRootMm }, water);
const tests = examplesOf(germinationRules, {
  'germination-not-valid': [readGermination(water, { ...water, germinatedCount: 20 }), cress(20)],
  'germination-harmful': [cress(9), cress(10)],
  'germination-doubtful': [cress(16), cress(16.1)],
  'germination-no-harm': [cress(16.1), cress(16)],
  'germination-not-told-apart': [cress(24), cress(26)],
});

export const sprayExamples = [...sprays, ...pours, ...tests];
