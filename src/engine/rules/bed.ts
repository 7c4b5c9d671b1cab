// What the bed says about a pour: a bed that gets no feed, whose crop or size was not told, that was fed just now.
// Whether the batch may go there is batch.ts, the can is can.ts, the hour is spray.ts.

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

/** A bed fed less than so many days ago may be fed twice by two people. @practice our caution, no source */
export const JUST_FED_DAYS = 2;

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

/** When a bed got its last whole feed, and how long till its next round. */
export interface Spacing {
  readonly fedDays: number;
  readonly nextDays: number;
  /** Local dates of that round and of today. */
  readonly on: string;
  readonly today: string;
}

export const spacingRules: readonly Rule<Spacing>[] = [
  {
    id: 'bed-fed-lately',
    level: 'hold',
    source: 'practice',
    looksAt: 'days from the last whole feed of a bed to its next round; a patch test is no feed',
    speaksFor: 'general',
    when: ({ nextDays, ...said }) => (nextDays <= 0 ? false : said),
  },
];
