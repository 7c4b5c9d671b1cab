// What to say of the warmth a batch stands in: too hot for the bacteria that sour it, so warm that it wants a look
// every day, too cold for any time of holding. The lines of alarm and the hold are souring/lines.ts.

import { COLDEST_HOLD_C } from '../souring/lines.ts';
import { LOOK_DAILY_C } from '../souring/outlook.ts';
import type { Rule } from './rule.ts';

/** Warmest it is told or reckoned to get, air or liquid, and the mean of the liquid. NaN where it is not known. */
export interface WarmthOfBatch {
  readonly hottestC: number;
  readonly meanC: number;
}

/** Above this, other microbes than those of souring are at home. Our caution, no source. */
export const TOO_HOT_C = 35;

/** Warmth: what is not known speaks as too cold to hold. */
export const warmthRules: readonly Rule<WarmthOfBatch>[] = [
  {
    id: 'too-hot-to-sour',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'the warmest it gets, told or reckoned',
    speaksFor: 'general',
    when: ({ hottestC }) => (hottestC < TOO_HOT_C ? false : { hottestC, limitC: TOO_HOT_C }),
  },
  {
    id: 'warm-look-daily',
    level: 'note',
    source: 'our-caution',
    looksAt: 'the mean warmth: warm enough to turn within days',
    speaksFor: 'general',
    when: ({ meanC }) => (meanC < LOOK_DAILY_C ? false : { meanC }),
  },
  {
    id: 'too-cold-for-a-hold',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'the mean warmth: too cold for any known time of holding',
    speaksFor: 'general',
    when: ({ meanC }) => (meanC >= COLDEST_HOLD_C ? false : { meanC, limitC: COLDEST_HOLD_C }),
  },
];
