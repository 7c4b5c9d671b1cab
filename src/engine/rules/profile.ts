// What the answers of a plot make stricter at each decision: food that is sold or shared, a school, weak immunity,
// pregnancy, children, pets and hens. What a rule needs of the answers stands here; the answers are scraps/profile.ts.
// What a site forbids is slip.ts; the days between feeding and picking are the beds' own.

import type { Profile } from '../scraps/profile.ts';
import type { Rule } from './rule.ts';

/** A batch about to be filled. */
export interface FillSituation {
  readonly profile: Profile;
  /** Whether anything in it came from a kitchen. */
  readonly kitchenScraps: boolean;
}

/** Whose hands are at a batch that is opened, strained or sprayed. */
export interface HandsSituation {
  readonly profile: Profile;
}

/** Bottles that are filled or stand. */
export interface StandingBottles {
  readonly profile: Profile;
  /** Whether the plot tells the number of a poison line. */
  readonly poisonLineTold: boolean;
}

const little = ({ children, school }: Profile) => children || school;

export const fillProfileRules: readonly Rule<FillSituation>[] = [
  {
    id: 'fill-hens-about',
    level: 'caution',
    source: 'apha-home-compost',
    locator: 'poultry kept away from the heap and from land it is spread on',
    looksAt: 'hens on the site, and kitchen scraps in the batch',
    speaksFor: ['gb'],
    when: ({ profile, kitchenScraps }) => (profile.hens && kitchenScraps ? {} : false),
  },
  {
    id: 'fill-children-or-pets-about',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'children, a class or pets on the site of a batch that is filled',
    speaksFor: 'general',
    when: ({ profile }) =>
      little(profile) || profile.pets ? { children: little(profile), pets: profile.pets } : false,
  },
];

export const handsRules: readonly Rule<HandsSituation>[] = [
  {
    id: 'hands-of-somebody-else',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'someone pregnant or with weak immunity, where a batch is looked at, strained or sprayed',
    speaksFor: 'general',
    when: ({ profile: { pregnant, immuneWeak } }) => (pregnant || immuneWeak ? { pregnant, immuneWeak } : false),
  },
  {
    id: 'hands-of-grown-ups',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a school or class, where a batch is looked at, strained or sprayed',
    speaksFor: 'general',
    when: ({ profile }) => (profile.school ? {} : false),
  },
];

export const bottleProfileRules: readonly Rule<StandingBottles>[] = [
  {
    id: 'bottle-poison-line-not-told',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'children or a class about, and whether the number of a poison line is told',
    speaksFor: 'general',
    when: ({ profile, poisonLineTold }) => (little(profile) && !poisonLineTold ? {} : false),
  },
  {
    id: 'bottle-out-of-reach',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'children, a class or pets where bottles stand',
    speaksFor: 'general',
    when: ({ profile }) =>
      little(profile) || profile.pets ? { children: little(profile), pets: profile.pets } : false,
  },
];
