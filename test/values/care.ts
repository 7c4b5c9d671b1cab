// Lifting, gloves, insects, chlorine, what the beds can use, what builds up, and how a lost batch is tipped.

import { doubles } from '#engine/ground/excess.ts';
import type { BedLedger } from '#engine/ground/ledger.ts';
import type { Fit } from '#engine/pail/fit.ts';
import { point } from '#engine/quantity/range.ts';
import { type CareSituation, careRules } from '#engine/rules/care.ts';
import { fitRules } from '#engine/rules/fit.ts';
import { tipRules } from '#engine/rules/rescue.ts';
import { insectRules, liftRules } from '#engine/rules/vessel.ts';
import { waterRules } from '#engine/rules/water.ts';
import { answers, speaks, type Value, valuesOf } from './value.ts';

const gloves = (change: Partial<CareSituation>) =>
  speaks(careRules, 'care-gloves-first-days')({ act: 'look', day: 1, ...change });

/** A weighed batch of which only one figure is looked at. */
const fitOf = (found: { readonly massKg?: number; readonly times?: number }) => ({
  fit: {
    fill: { fits: true, massKg: found.massKg ?? 1 },
    use: { timesTooMuch: found.times ?? 0, drainedL: point(1), usableL: 1, shelfDays: 90 },
  } as unknown as Fit,
  vessel: { volumeL: 12, gasRoom: 0.25 },
  sugarProduct: 'white sugar',
  addedKg: 0,
});

const given = (givenG: number) =>
  doubles({ givenG: { p: point(givenG) }, need: { needG: { p: point(10) } } } as unknown as BedLedger, 'p');
const insects = (key: 'leastDays' | 'mostDays') => {
  return valuesOf(insectRules, 'vessel-open-to-insects')({ lid: 'none' })?.[key];
};
const leaves = (volumeL: number) => {
  return valuesOf(
    tipRules,
    'tip-under-dry-leaves',
  )({ state: 'lost', animalMatter: false, untestedClippings: false, volumeL })?.leavesL;
};

export const careValues: readonly Value[] = [
  {
    name: 'mass that one person lifts',
    at: 'data/pail.csv lifting.mostLiftKg',
    stated: '15 kg',
    source: 'practice',
    step: 0.5,
    holds: answers(
      (massKg: number) => [
        speaks(fitRules, 'fill-it-where-it-stands')(fitOf({ massKg })),
        speaks(liftRules, 'empty-it-with-a-jug')({ massKg }),
      ],
      [14.9, [false, false]],
      [15, [false, false]],
      [15.1, [true, true]],
    ),
  },
  {
    name: 'batch against what the beds can use',
    at: 'rules/fit.ts TIMES_TOO_MUCH',
    stated: 'twice',
    source: 'our-caution',
    step: 0.1,
    holds: answers(
      (times: number) => speaks(fitRules, 'more-than-the-beds-use')(fitOf({ times })),
      [1.99, false],
      [2, false],
      [2.01, true],
    ),
  },
  {
    name: 'phosphorus and potassium that build up in a bed',
    at: 'ground/excess.ts MOST_FACTOR',
    stated: 'more than twice the need',
    source: 'our-caution',
    step: 0.1,
    holds: answers(given, [19.9, false], [20, false], [20.1, true]),
  },
  {
    name: 'first days in which gloves are asked for',
    at: 'rules/care.ts FIRST_DAYS',
    stated: '3 days',
    source: 'our-caution',
    holds: answers((day: number) => gloves({ day }), [2.9, true], [3, true], [3.1, false]),
  },
  {
    name: 'acidity from which a batch is looked at without gloves',
    at: 'rules/care.ts SOUR_PH',
    stated: 'pH 4.0',
    source: 'our-caution',
    step: 0.1,
    holds: answers((ph: number) => gloves({ ph }), [3.99, false], [4, false], [4.01, true]),
  },
  {
    name: 'days from egg to mosquito, the fewest',
    at: 'rules/vessel.ts MOSQUITO_DAYS.least',
    stated: '7 days',
    source: 'memory',
    holds: answers(insects, ['leastDays', 7]),
  },
  {
    name: 'days from egg to mosquito, the most',
    at: 'rules/vessel.ts MOSQUITO_DAYS.most',
    stated: '10 days',
    source: 'memory',
    holds: answers(insects, ['mostDays', 10]),
  },
  {
    name: 'chlorine in drinking water',
    at: 'scraps/water.ts MOST_DRINKING_MG_PER_L',
    stated: '4 mg/L',
    source: 'cfr-40-141-65',
    locator: '141.65',
    step: 0.1,
    holds: answers(
      (mgPerL: number) =>
        speaks(
          waterRules,
          'more-chlorine-than-drinking-water',
        )({
          volumeL: 10,
          freeChlorineMgPerL: mgPerL - 1,
          chloramineMgPerL: 1,
        }),
      [3.99, false],
      [4, false],
      [4.01, true],
    ),
  },
  {
    name: 'dry leaves under a batch that is tipped',
    at: 'rules/rescue.ts LEAVES_TIMES',
    stated: 'twice its volume',
    source: 'our-caution',
    step: 0.1,
    holds: answers(leaves, [10, 20]),
  },
];
