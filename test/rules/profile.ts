// The answers of a plot, care at a batch, an open vessel and the air of its room: each rule on both sides of its line.

import { type CareSituation, careRules, fillAirRules } from '#engine/rules/care.ts';
import { bottleProfileRules, fillProfileRules, handsRules } from '#engine/rules/profile.ts';
import { insectRules } from '#engine/rules/vessel.ts';
import { NOTHING_TOLD, type Profile } from '#engine/scraps/profile.ts';
import { examplesOf } from './example.ts';

const told = (change: Partial<Profile>): Profile => ({ ...NOTHING_TOLD, ...change });

const fills = examplesOf(fillProfileRules, {
  'fill-hens-about': [
    { profile: told({ hens: true }), kitchenScraps: true },
    { profile: told({ hens: true }), kitchenScraps: false },
  ],
  'fill-children-or-pets-about': [
    { profile: told({ children: true, pets: true }), kitchenScraps: false },
    { profile: told({ sells: true, hens: true }), kitchenScraps: true },
  ],
});
const hands = examplesOf(handsRules, {
  'hands-of-somebody-else': [
    { profile: told({ pregnant: true }) },
    { profile: told({ children: true, school: true, sells: true }) },
  ],
  'hands-of-grown-ups': [{ profile: told({ school: true }) }, { profile: told({ children: true }) }],
});
const bottles = examplesOf(bottleProfileRules, {
  'bottle-poison-line-not-told': [
    { profile: told({ children: true }), poisonLineTold: false },
    { profile: told({ children: true }), poisonLineTold: true },
  ],
  'bottle-out-of-reach': [
    { profile: told({ pets: true }), poisonLineTold: true },
    { profile: told({ hens: true }), poisonLineTold: false },
  ],
});

const look: CareSituation = { act: 'look', day: 3, ph: 4.1, surface: 'bubbles' };
const care = examplesOf(careRules, {
  // days 0 to 3, until pH 4.0
  'care-gloves-first-days': [look, { ...look, day: 4 }],
  'care-larvae-cover': [{ ...look, surface: 'larvae' }, look],
  'care-cover-eyes-and-mouth': [{ act: 'strain' }, { act: 'pour' }],
  'care-own-sieve': [{ act: 'strain' }, { act: 'spray' }],
  'care-wash-before-picking': [{ act: 'pour' }, { act: 'look', day: 9 }],
});
const insects = examplesOf(insectRules, { 'vessel-open-to-insects': [{ lid: 'none' }, { lid: 'loose' }] });
// 2 mol of gas for a mol of hexose (180.16 g): 24.05 L a mol at 20 °C, so 0.267 L for each gram. Room for
// 5,000 ppm less the air outside in 2 m3 is about 9.2 L: between 34 and 35 g.
const air = examplesOf(fillAirRules, { 'fill-air-the-room': [{ hexoseG: 36 }, { hexoseG: 33 }] });

export const profileExamples = [...fills, ...hands, ...bottles, ...care, ...insects, ...air];
