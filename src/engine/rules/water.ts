// What to say about a water: where it comes from, what it must not touch, and figures that are disputed or
// easily mistaken. Doses and acid are worked out in scraps/water.ts.

import { RAW_MANURE_DAYS } from '../can/limits.ts';
import {
  MOST_DRINKING_MG_PER_L,
  THIOSULFATE_FIELD_MG_PER_MG,
  THIOSULFATE_MG_PER_MG,
  type WaterAsked,
} from '../scraps/water.ts';
import type { Rule } from './rule.ts';

const OPEN_WATERS: readonly unknown[] = ['roof', 'ditch', 'pond'];
const DEGREES: readonly unknown[] = ['dH', 'fH', 'clark', 'gpg'];

/** Every caution about a water; each speaks for itself. */
export const waterRules: readonly Rule<WaterAsked>[] = [
  {
    id: 'water-of-animal-origin-possible',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'where the water comes from: roof, ditch or pond',
    speaksFor: ['us'],
    when: ({ source, use }) =>
      OPEN_WATERS.includes(source) ? { source: String(source), raw: use === 'raw-crop', ...RAW_MANURE_DAYS } : false,
  },
  {
    id: 'water-source-not-named',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'water for crops eaten raw whose source was not told',
    speaksFor: 'general',
    when: ({ source, use }) => (source === undefined && use === 'raw-crop' ? {} : false),
  },
  {
    id: 'rain-not-boiled',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'where the water comes from: caught rain',
    speaksFor: 'general',
    when: ({ source, use }) => (source === 'rain' ? { raw: use === 'raw-crop' } : false),
  },
  {
    id: 'well-not-tested',
    level: 'caution',
    source: 'cfr-21-112',
    locator: '112.51',
    looksAt: 'where the water comes from: a well',
    speaksFor: ['us'],
    when: ({ source, use }) => (source === 'well' ? { raw: use === 'raw-crop' } : false),
  },
  {
    id: 'more-chlorine-than-drinking-water',
    level: 'caution',
    source: 'cfr-40-141-65',
    locator: '141.65',
    looksAt: 'chlorine and chloramine against the limit of drinking water',
    speaksFor: ['us'],
    when: ({ freeChlorineMgPerL, chloramineMgPerL }) => {
      const mgPerL = (freeChlorineMgPerL ?? 0) + (chloramineMgPerL ?? 0);
      return mgPerL <= MOST_DRINKING_MG_PER_L ? false : { mgPerL, mostMgPerL: MOST_DRINKING_MG_PER_L };
    },
  },
  {
    id: 'ascorbic-acid-disputed',
    level: 'caution',
    source: 'basu-desouza-2011',
    looksAt: 'whether the water holds chloramine',
    speaksFor: 'general',
    when: ({ chloramineMgPerL }) => (chloramineMgPerL === undefined || chloramineMgPerL === 0 ? false : {}),
  },
  {
    id: 'thiosulfate-two-figures',
    level: 'note',
    source: 'memory',
    looksAt: 'whether the water holds chlorine or chloramine',
    speaksFor: 'general',
    when: ({ freeChlorineMgPerL, chloramineMgPerL }) =>
      (freeChlorineMgPerL ?? 0) + (chloramineMgPerL ?? 0) === 0
        ? false
        : { mgPerMg: THIOSULFATE_MG_PER_MG, fieldMgPerMg: THIOSULFATE_FIELD_MG_PER_MG },
  },
  {
    id: 'hardness-is-not-alkalinity',
    level: 'note',
    source: 'practice',
    looksAt: 'an alkalinity given in degrees of hardness',
    speaksFor: 'general',
    when: ({ alkalinity }) => (DEGREES.includes(alkalinity?.unit) ? { unit: String(alkalinity?.unit) } : false),
  },
  {
    id: 'mmol-read-as-bicarbonate',
    level: 'note',
    source: 'practice',
    looksAt: 'an alkalinity given in mmol/L',
    speaksFor: 'general',
    when: ({ alkalinity }) => (alkalinity?.unit === 'mmol/L' ? { value: alkalinity.value } : false),
  },
];
