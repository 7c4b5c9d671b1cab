// What the hour says about a spray or a pour, and what the cress test says about a strength. The limits and the
// arithmetic are can/spray-window.ts and can/germination.ts; whether a crop may be sprayed at all is can.ts here.

import { GERMINATION, type GerminationReading } from '../can/germination.ts';
import { sprayFigure } from '../can/spray-figures.ts';
import {
  type PourHour,
  pourWindow,
  SPRAY_LIMITS,
  type SprayHour,
  type SprayReason,
  sprayWindow,
  windKmPerHOf,
} from '../can/spray-window.ts';
import type { MildRule, Values } from './rule.ts';

/** The hour to spray in, and how old the forecast is that it was read from. */
export interface SpraySituation {
  readonly hour: SprayHour;
  readonly forecastAgeH?: number | undefined;
}

const OLD_FORECAST_H = sprayFigure('forecast', 'oldH').likely;

type About = Pick<MildRule<SpraySituation>, 'id' | 'source' | 'looksAt' | 'locator'>;

/** A rule for one reason that closes the window. */
function closes(reason: SprayReason, about: About, values: (hour: SprayHour) => Values): MildRule<SpraySituation> {
  const when = ({ hour }: SpraySituation) => sprayWindow(hour).reasons.includes(reason) && values(hour);
  return { ...about, level: 'hold', speaksFor: 'general', when };
}

const windOf = ({ windMPerS }: SprayHour): Values =>
  windMPerS === undefined || Number.isNaN(windMPerS) ? {} : { windKmPerH: windKmPerHOf(windMPerS) };
const dryingOf = (hour: SprayHour): Values => ({
  deltaTC: sprayWindow(hour).deltaTC?.likely ?? Number.NaN,
  leastC: SPRAY_LIMITS.leastDeltaTC,
  mostC: SPRAY_LIMITS.mostDeltaTC,
  cautionMostC: SPRAY_LIMITS.cautionMostDeltaTC,
});

export const sprayRules: readonly MildRule<SpraySituation>[] = [
  closes(
    'windy',
    {
      id: 'spray-windy',
      source: 'grdc-spray-manual-drying',
      locator: 'module 10',
      looksAt: 'the wind as told or as the air was seen, against the most for a spray',
    },
    (hour) => ({ ...windOf(hour), limitKmPerH: SPRAY_LIMITS.mostWindKmPerH }),
  ),
  closes(
    'still-air',
    {
      id: 'spray-still-air',
      source: 'grdc-spray-manual-drying',
      locator: 'module 10',
      looksAt: 'the wind as told or as the air was seen, against the least for a spray',
    },
    (hour) => ({ ...windOf(hour), limitKmPerH: SPRAY_LIMITS.leastWindKmPerH }),
  ),
  closes(
    'inversion',
    {
      id: 'spray-inversion',
      source: 'grdc-spray-manual-2025',
      locator: '10.8, about one hour after sunrise; half an hour more is our caution',
      looksAt: 'the hours since sunrise and until sunset, with cloud, wind of the night and warming where told',
    },
    () => ({ afterSunriseH: SPRAY_LIMITS.afterSunriseH, beforeSunsetH: SPRAY_LIMITS.beforeSunsetH }),
  ),
  closes(
    'hot',
    { id: 'spray-hot', source: 'our-caution', looksAt: 'the temperature of the hour against the line for a spray' },
    ({ temperatureC }) => ({ temperatureC: temperatureC ?? Number.NaN, belowC: SPRAY_LIMITS.belowC }),
  ),
  closes(
    'frost',
    { id: 'spray-frost', source: 'our-caution', looksAt: 'the temperature of the hour: at or below freezing' },
    ({ temperatureC }) => ({ temperatureC: temperatureC ?? Number.NaN }),
  ),
  closes(
    'hot-by-the-hour',
    {
      id: 'spray-past-the-cool-morning',
      source: 'our-caution',
      looksAt: 'the hours since sunrise, where no temperature was told',
    },
    () => ({ mostAfterSunriseH: SPRAY_LIMITS.coolMorningH, belowC: SPRAY_LIMITS.belowC }),
  ),
  closes(
    'rain-soon',
    { id: 'spray-rain-soon', source: 'our-caution', looksAt: 'the hours until the next rain' },
    ({ untilRainH }) => ({ untilRainH: untilRainH ?? Number.NaN, dryH: SPRAY_LIMITS.dryH }),
  ),
  closes(
    'dries-too-slowly',
    {
      id: 'spray-dries-too-slowly',
      source: 'grdc-spray-manual-drying',
      locator: 'module 10',
      looksAt: 'delta-T from temperature and humidity: too small',
    },
    dryingOf,
  ),
  closes(
    'dries-too-fast',
    {
      id: 'spray-dries-too-fast',
      source: 'grdc-spray-manual-drying',
      locator: 'module 10',
      looksAt: 'delta-T from temperature and humidity: too large',
    },
    dryingOf,
  ),
  {
    id: 'spray-hour-not-known',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'what nobody told of wind, warmth, rain and sun, where nothing known closes the hour',
    speaksFor: 'general',
    when: ({ hour }) => {
      const { answer, notTold } = sprayWindow(hour);
      return answer === 'open' || answer === 'closed'
        ? false
        : { notTold: notTold.filter((input) => input !== 'humidity').join(' ') };
    },
  },
  {
    id: 'spray-drying-near-limit',
    level: 'caution',
    source: 'grdc-spray-manual-drying',
    locator: 'module 10',
    looksAt: 'delta-T near its limits, with the error of its formula',
    speaksFor: 'general',
    when: ({ hour }) => {
      const { answer, dryingNearLimit } = sprayWindow(hour);
      return answer !== 'closed' && dryingNearLimit && dryingOf(hour);
    },
  },
  {
    id: 'spray-humidity-not-told',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether humidity and temperature were told, in an hour not closed',
    speaksFor: 'general',
    when: ({ hour }) => {
      const { answer, notTold } = sprayWindow(hour);
      return answer !== 'closed' && notTold.includes('humidity') ? {} : false;
    },
  },
  {
    id: 'spray-by-rule-of-thumb',
    level: 'note',
    source: 'our-caution',
    looksAt: 'which of wind and warmth were judged by a rule of thumb, as no weather was told',
    speaksFor: 'general',
    when: ({ hour }) => {
      const byThumb = sprayWindow(hour).byThumb.filter((input) => input !== 'sun');
      return byThumb.length > 0 ? { byThumb: byThumb.join(' ') } : false;
    },
  },
  {
    id: 'spray-forecast-old',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'how old the forecast is that the hour was read from',
    speaksFor: 'general',
    when: ({ forecastAgeH }) =>
      forecastAgeH === undefined || forecastAgeH < OLD_FORECAST_H ? false : { ageH: forecastAgeH },
  },
  {
    id: 'spray-window-open',
    level: 'note',
    source: 'our-caution',
    looksAt: 'an hour that nothing closes and of which all was told',
    speaksFor: 'general',
    when: ({ hour }) => (sprayWindow(hour).answer === 'open' ? { belowC: SPRAY_LIMITS.belowC } : false),
  },
];

export const pourHourRules: readonly MildRule<PourHour>[] = [
  {
    id: 'pour-soil-dry',
    level: 'hold',
    source: 'practice',
    looksAt: 'soil felt dry or seen cracked',
    speaksFor: 'general',
    when: (hour) => pourWindow(hour).reasons.includes('soil-dry') && { cracked: hour.soil === 'cracked' },
  },
  {
    id: 'pour-soil-soaked',
    level: 'hold',
    source: 'practice',
    looksAt: 'soil that water stands on',
    speaksFor: 'general',
    when: (hour) => pourWindow(hour).reasons.includes('soil-soaked') && {},
  },
  {
    id: 'pour-heavy-rain-soon',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'rain told for the hours ahead',
    speaksFor: 'general',
    when: (hour) =>
      pourWindow(hour).reasons.includes('heavy-rain-soon') && {
        rainMm: hour.rainAheadMm ?? Number.NaN,
        withinH: SPRAY_LIMITS.heavyRainWithinH,
      },
  },
  {
    id: 'pour-hot',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the temperature of the hour, where it was told, against the line for a pour',
    speaksFor: 'general',
    when: (hour) =>
      pourWindow(hour).reasons.includes('hot') && {
        temperatureC: hour.temperatureC ?? Number.NaN,
        belowC: SPRAY_LIMITS.belowC,
      },
  },
  {
    id: 'pour-windy',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'the wind of the hour, where it was told, against the most for a spray',
    speaksFor: 'general',
    when: (hour) => pourWindow(hour).windy && { windKmPerH: windKmPerHOf(hour.windMPerS ?? Number.NaN) },
  },
  {
    id: 'pour-hour-not-known',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'whether soil and rain were told, where nothing known closes the hour',
    speaksFor: 'general',
    when: (hour) => {
      const { answer, notTold } = pourWindow(hour);
      return answer === 'open' || answer === 'closed'
        ? false
        : { notTold: notTold.join(' '), withinH: SPRAY_LIMITS.heavyRainWithinH };
    },
  },
];

const indexOf = ({ indexPercent }: GerminationReading): Values => ({ indexPercent });

export const germinationRules: readonly MildRule<GerminationReading>[] = [
  {
    id: 'germination-not-valid',
    level: 'hold',
    source: 'memory',
    looksAt: 'the cress test: its control, its counts and its seeds',
    speaksFor: 'general',
    when: ({ faults, class: found }) =>
      faults.length > 0 || found === undefined ? { faults: faults.join(' ') } : false,
  },
  {
    id: 'germination-harmful',
    level: 'hold',
    source: 'radhouani-composts',
    locator: 'abstract',
    looksAt: 'the germination index under the line of harm',
    speaksFor: 'general',
    when: (reading) => reading.class === 'harmful' && { ...indexOf(reading), harmPercent: GERMINATION.harmPercent },
  },
  {
    id: 'germination-doubtful',
    level: 'caution',
    source: 'zucconi-1981',
    looksAt: 'the germination index between harm and pass',
    speaksFor: 'general',
    when: (reading) =>
      reading.class === 'doubtful' && {
        ...indexOf(reading),
        harmPercent: GERMINATION.harmPercent,
        passPercent: GERMINATION.passPercent,
      },
  },
  {
    id: 'germination-no-harm',
    level: 'note',
    source: 'picon-toro-2012',
    locator: 'abstract',
    looksAt: 'the germination index over the line of passing',
    speaksFor: 'general',
    when: (reading) =>
      (reading.class === 'no-harm' || reading.class === 'above-water') && {
        ...indexOf(reading),
        passPercent: GERMINATION.passPercent,
      },
  },
  {
    id: 'germination-not-told-apart',
    level: 'note',
    source: 'memory',
    looksAt: 'a germination index too near that of water to be told from it',
    speaksFor: 'general',
    when: (reading) =>
      reading.class !== undefined &&
      !reading.apartFromWater && { ...indexOf(reading), apartPercent: GERMINATION.apartPercent },
  },
];
