// What the bed and the hour say about a pour on the soil: a bed that gets no feed, whose crop or size was not told,
// that was fed just now; dry soil, heat, wind, rain. Whether the batch may go there is batch.ts, the can is can.ts.

import type { Rule } from './rule.ts';

/** A bed as described, and when it was last fed. */
export interface BedSituation {
  readonly feed?: 'soil' | 'leaf-and-soil' | 'none' | undefined;
  readonly eaten?: string | undefined;
  /** False once it was cleared. */
  readonly grows: boolean;
  /** Whether an area or pots were told. */
  readonly sized: boolean;
  readonly fedDays?: number | undefined;
}

/** The hour: the soil as seen, the day's weather as typed. */
export interface HourSituation {
  readonly soil?: 'dry' | 'moist' | undefined;
  readonly highC?: number | undefined;
  readonly windMPerS?: number | undefined;
  readonly rainMm?: number | undefined;
  /** Whether any weather was typed for the day. */
  readonly weatherTold: boolean;
}

/** A bed fed less than so many days ago may be fed twice by two people. @practice our caution, no source */
const JUST_FED_DAYS = 2;
/** From here on a bed is watered morning or evening. @practice our caution, no source */
const HOT_C = 25;
/** 15 km/h: what leaves a rose at height does not land where it is meant to. @practice our caution, no source */
const WINDY_M_PER_S = 15 / 3.6;
/** Rain that may wash a feed on. @practice our caution, no source */
const WASHING_RAIN_MM = 10;

export const bedRules: readonly Rule<BedSituation>[] = [
  {
    id: 'bed-gets-none',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'what feeding was set for the bed',
    speaksFor: 'general',
    override: 'reason',
    when: ({ feed, eaten }) => (feed === 'none' ? { leaf: eaten === 'raw-leaf' } : false),
  },
  {
    id: 'bed-nothing-grows',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'whether anything grows on the bed',
    speaksFor: 'general',
    when: ({ grows }) => (grows ? false : {}),
  },
  {
    id: 'bed-size-not-told',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'whether an area or pots were told',
    speaksFor: 'general',
    when: ({ sized }) => (sized ? false : {}),
  },
  {
    id: 'bed-eaten-not-told',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'whether the crop of a bed is said to be eaten raw or cooked',
    speaksFor: 'general',
    when: ({ eaten, grows }) => (eaten === undefined && grows ? {} : false),
  },
  {
    id: 'bed-fed-just-now',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'days since the bed was last fed',
    speaksFor: 'general',
    when: ({ fedDays }) => (fedDays === undefined || fedDays >= JUST_FED_DAYS ? false : { fedDays }),
  },
];

export const hourRules: readonly Rule<HourSituation>[] = [
  {
    id: 'hour-soil-dry',
    level: 'hold',
    source: 'practice',
    looksAt: 'the soil as seen',
    speaksFor: 'general',
    when: ({ soil }) => (soil === 'dry' ? {} : false),
  },
  {
    id: 'hour-hot',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the warmest hour of the day, as typed',
    speaksFor: 'general',
    when: ({ highC }) => (highC === undefined || highC < HOT_C ? false : { highC }),
  },
  {
    id: 'hour-rain',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'rain of the day, as typed',
    speaksFor: 'general',
    when: ({ rainMm }) => (rainMm === undefined || rainMm < WASHING_RAIN_MM ? false : { rainMm }),
  },
  {
    id: 'hour-windy',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'wind of the day, as typed',
    speaksFor: 'general',
    when: ({ windMPerS }) =>
      windMPerS === undefined || windMPerS <= WINDY_M_PER_S ? false : { windKmPerH: windMPerS * 3.6 },
  },
  {
    id: 'hour-weather-not-told',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether any weather was typed',
    speaksFor: 'general',
    when: ({ weatherTold }) => (weatherTold ? false : { highC: HOT_C }),
  },
];
