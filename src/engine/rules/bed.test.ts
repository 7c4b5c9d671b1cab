// The bed and the hour: where each line lies, and that what cannot be read as a number speaks as if it were past it.
import { describe, expect, it } from 'vitest';
import { type BedSituation, bedRules, type HourSituation, hourRules } from './bed.ts';
import { judge } from './rule.ts';

const bed: BedSituation = { feed: 'soil', eaten: 'raw', grows: true, sized: true };
const hour: HourSituation = { soil: 'moist', highC: 20, windMPerS: 1, rainMm: 0, weatherTold: true };
const ofBed = (change: Partial<BedSituation>) =>
  judge(bedRules, { ...bed, ...change }).map(({ rule, level }) => `${level} ${rule}`);
const ofHour = (change: Partial<HourSituation>) =>
  judge(hourRules, { ...hour, ...change }).map(({ rule, level }) => `${level} ${rule}`);

describe('a bed', () => {
  it.each<[string, Partial<BedSituation>, readonly string[]]>([
    ['that was never fed is fed', {}, []],
    ['that the plot gives no feed gets none', { feed: 'none' }, ['stop bed-gets-none']],
    ['where nothing grows waits', { grows: false }, ['hold bed-nothing-grows']],
    ['without a size waits', { sized: false }, ['hold bed-size-not-told']],
    ['whose crop nobody described waits', { eaten: undefined }, ['hold bed-eaten-not-told']],
    ['that is empty is not asked how it is eaten', { eaten: undefined, grows: false }, ['hold bed-nothing-grows']],
    ['fed yesterday waits', { fedDays: 1 }, ['hold bed-fed-just-now']],
    ['fed two days ago is fed', { fedDays: 2 }, []],
    ['fed nobody knows when waits', { fedDays: Number.NaN }, ['hold bed-fed-just-now']],
  ])('%s', (_, change, expected) => {
    expect(ofBed(change)).toEqual(expected);
  });
});

describe('an hour', () => {
  it.each<[string, Partial<HourSituation>, readonly string[]]>([
    ['of mild, still, dry weather on moist soil is silent', {}, []],
    ['on dry soil waits for water', { soil: 'dry' }, ['hold hour-soil-dry']],
    ['of 24.9 °C is silent', { highC: 24.9 }, []],
    ['of 25 °C waits', { highC: 25 }, ['hold hour-hot']],
    ['with 10 mm of rain to come waits', { rainMm: 10 }, ['hold hour-rain']],
    ['with 9.9 mm is silent', { rainMm: 9.9 }, []],
    ['with 15 km/h of wind is silent', { windMPerS: 15 / 3.6 }, []],
    ['with 16 km/h asks for care', { windMPerS: 16 / 3.6 }, ['caution hour-windy']],
    ['of which no weather was typed says so', { weatherTold: false }, ['note hour-weather-not-told']],
    [
      'whose figures cannot be read waits for all of them',
      { highC: Number.NaN, rainMm: Number.NaN, windMPerS: Number.NaN },
      ['hold hour-hot', 'hold hour-rain', 'caution hour-windy'],
    ],
  ])('%s', (_, change, expected) => {
    expect(ofHour(change)).toEqual(expected);
  });
});
