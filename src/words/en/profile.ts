// What the answers of a plot make stricter, in plain English: a sentence for each rule, what may be done in place of its
// stops, and for the sheet of the plot one line for each answer that says what changes.

import { SCHOOL_RAW_DAYS } from '#engine/can/limits.ts';
import type { Values } from '#engine/rules/rule.ts';
import type { Profile } from '#engine/scraps/profile.ts';

function whoIsAbout({ children, pets }: Values): string {
  if (children) return pets ? 'Children and pets are about' : 'Children are about';
  return 'Pets are about';
}

/** One sentence or two for each rule about the answers of the plot. */
export const profileCautions: Readonly<Record<string, (values: Values) => string>> = {
  'fill-hens-about': () =>
    'Hens are on the site: keep out any scrap that may have touched meat or dairy, and keep the hens off bucket, heap and the soil the feed goes on.',
  'fill-children-or-pets-about': (v) =>
    `${whoIsAbout(v)}: keep the lid on, write "not a drink" on it, and stand it where they cannot reach it or fall in.`,
  'hands-of-somebody-else': (v) =>
    `${v.pregnant ? (v.immuneWeak ? 'Someone pregnant and someone who falls ill easily are' : 'Someone pregnant is') : 'Someone who falls ill easily is'} about: let somebody else look, strain and spray.`,
  'hands-of-grown-ups': () => 'A school plot: grown-ups open, strain, mix and spray; pupils watch from a step away.',
  'bottle-poison-line-not-told': () =>
    'Children are about and no poison line is told. Write its number on the sheet of the plot, so that it stands on the shed sheet.',
  'bottle-out-of-reach': (v) => `${whoIsAbout(v)}: keep bottles locked away or above their reach, each with its tag.`,
};

/** The answers that make rules stricter. */
export type Stricter =
  | 'sells'
  | 'school'
  | 'immuneWeak'
  | 'pregnant'
  | 'children'
  | 'pets'
  | 'hens'
  | 'noKitchenScraps'
  | 'noOutsideScraps'
  | 'noCookedFood';

/** Heading over what the answers change on the sheet of the plot. */
export const stricterHeading = 'What these answers make stricter';

/** What each answer changes, in one line. */
export const stricter: Readonly<Record<Stricter, string>> = {
  sells:
    'Food is sold or handed on: on beds eaten raw the can card holds, and measures by the United States rule on agricultural tea. Your buyer’s programme and local codes come first.',
  school: `A school plot: grown-ups open, strain and spray; a bed eaten raw is fed at least ${SCHOOL_RAW_DAYS} days before it is picked. Our caution, no source.`,
  immuneWeak:
    'Someone falls ill easily: no feed on any bed eaten raw; somebody else looks, strains and sprays. Our caution, no source.',
  pregnant: 'Someone pregnant: somebody else looks, strains and sprays. Our caution, no source.',
  children: 'Children: lids on, bottles out of reach, the poison line at hand.',
  pets: 'A dog or a cat: lids on, bottles and buckets out of reach.',
  hens: 'Hens: no scraps that touched meat or dairy, and hens kept off bucket, heap and fed soil.',
  noKitchenScraps: 'No kitchen scraps: the site does not let them in, so they stay out of pail and heap here.',
  noOutsideScraps: 'No scraps from outside: only what grew on the site goes in.',
  noCookedFood: 'No cooked food: it stays out of pail and heap here.',
};

/** The answers of a profile that make rules stricter, in the order they are asked. @arithmetic a list */
export function stricterOf(profile: Profile): readonly Stricter[] {
  const all: Readonly<Record<Stricter, boolean>> = {
    sells: profile.sells,
    school: profile.school,
    immuneWeak: profile.immuneWeak,
    pregnant: profile.pregnant,
    children: profile.children,
    pets: profile.pets,
    hens: profile.hens,
    noKitchenScraps: profile.kitchenScraps === false,
    noOutsideScraps: profile.outsideScraps === false,
    noCookedFood: profile.cookedFood === false,
  };
  return (Object.keys(all) as readonly Stricter[]).filter((answer) => all[answer]);
}

/** What each stop is about that gives way to a reason, as a mark names it. */
export const passableNames: Readonly<Record<string, string>> = {
  'bed-gets-none': 'no feed on this bed',
  'eating-animal-possible-on-leaves': 'animals may have reached the water, on leaves',
  'eating-immune-weak-raw-bed': 'weak immunity and a bed eaten raw',
  'salt-never': 'too much salt for any plant',
  'seeds-in-the-liquid': 'weeds with seed in the pail',
  'compost-in-the-liquid': 'compost in the pail',
  'lime-in-the-liquid': 'lime in the pail',
  'dry-and-woody': 'dry and woody scraps in the pail',
};

/** What is said where a stop may be passed over. */
export const passWords = {
  passAsk: (what: string) => `Pass over "${what}"? Only with a reason that another keyholder can judge.`,
  passBecause: 'Because',
  passTooShort: 'Give the reason in words: three at least. It is kept in the record and marks the bed.',
  passAct: 'Pass over it',
  passTakeBack: 'Do not pass over it',
  passedHere: (what: string, reason: string) => `Passed over: ${what}, because ${reason}`,
  passedMark: (what: string, reason: string, on: string) => `Passed over on ${on}: ${what}, because ${reason}`,
};
