// The hour of a pour: where each line lies, and that what cannot be read as a number speaks as if it were past it.
import { describe, expect, it } from 'vitest';
import type { PourHour } from '../can/spray-window.ts';
import { judge } from './rule.ts';
import { pourHourRules } from './spray.ts';

const mild: PourHour = { soil: 'moist', temperatureC: 20, windMPerS: 1, rainAheadMm: 0 };
const of = (change: PourHour) =>
  judge(pourHourRules, { ...mild, ...change }).map(({ rule, level }) => `${level} ${rule}`);

describe('an hour to pour on the soil', () => {
  it.each<[string, PourHour, readonly string[]]>([
    ['on moist soil in mild weather is silent', {}, []],
    ['of which neither warmth nor wind was told is silent', { temperatureC: undefined, windMPerS: undefined }, []],
    ['on dry soil waits for water', { soil: 'dry' }, ['hold pour-soil-dry']],
    ['of 24.9 °C is silent', { temperatureC: 24.9 }, []],
    ['of 25 °C waits', { temperatureC: 25 }, ['hold pour-hot']],
    ['with 10 mm of rain to come waits', { rainAheadMm: 10 }, ['hold pour-heavy-rain-soon']],
    ['with 9.9 mm is silent', { rainAheadMm: 9.9 }, []],
    ['with 15 km/h of wind is silent', { windMPerS: 15 / 3.6 }, []],
    ['with 16 km/h asks for care', { windMPerS: 16 / 3.6 }, ['caution pour-windy']],
    ['of which no rain was told asks for a look', { rainAheadMm: undefined }, ['caution pour-hour-not-known']],
    [
      'whose figures cannot be read asks for care with each',
      { temperatureC: Number.NaN, rainAheadMm: Number.NaN, windMPerS: Number.NaN },
      ['hold pour-hot', 'caution pour-windy'],
    ],
  ])('%s', (_, change, expected) => {
    expect(of(change)).toEqual(expected);
  });
});
