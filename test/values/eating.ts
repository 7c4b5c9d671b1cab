// Days between a pour and picking, and what counts against a bed where nobody told.

import { type EatingAsk, eatingWait } from '#engine/can/eating.ts';
import type { PourOrder } from '#engine/can/pour.ts';
import { resolveIngredient } from '#engine/heap/ingredient.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { bedRules } from '#engine/rules/bed.ts';
import { eatingAskOf, eatingRules } from '#engine/rules/eating.ts';
import { heapMixRules } from '#engine/rules/heap.ts';
import { scrapsRules } from '#engine/rules/scraps.ts';
import { waterRules } from '#engine/rules/water.ts';
import { NOTHING_TOLD, type Profile } from '#engine/scraps/profile.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { all, answers, speaks, type Value, valuesOf } from './value.ts';

const told = (change: Partial<Profile>): Profile => ({ ...NOTHING_TOLD, ...change });
/** A sour batch of plants and tap water, held, on the soil of a bed of lettuce. */
const lettuce: EatingAsk = {
  crop: 'lettuce',
  eaten: 'raw-leaf',
  animalOrigin: 'no',
  held: true,
  way: 'soil',
  profile: NOTHING_TOLD,
};
const waits = (change: Partial<EatingAsk>) => eatingWait({ ...lettuce, ...change }).days;

const order: PourOrder = {
  strength: { kind: 'ratio', ratio: { n: 100, reading: 'in' } },
  canL: 10,
  spoon: null,
  way: 'soil',
  eaten: 'raw',
  eatenPart: 'raw-leaf',
  crop: 'lettuce',
  profile: NOTHING_TOLD,
  batch: { peg: 14, state: 'ready', held: true, animalOrigin: 'no' },
};
const aubergine: Partial<PourOrder> = { crop: 'aubergine', eatenPart: 'raw-fruit' };
const manured: Partial<PourOrder> = { batch: { ...order.batch, animalOrigin: 'yes' } };
const picked = (change: Partial<PourOrder>) => (toPickDays: number) => ({ ...order, ...change, toPickDays });
const sevenCfr = { source: 'cfr-7-205-203', locator: '(c)(1)(ii) and (iii)' } as const;

/** What the rules on raw manure say of days, in each place that says it. */
const manureDays = {
  scraps: () =>
    valuesOf(
      scrapsRules,
      'raw-manure',
    )({ part: resolvePart({ material: 'horse-manure', massKg: 1 }), treated: undefined }),
  heap: () =>
    valuesOf(
      heapMixRules,
      'heap-manure',
    )({
      ingredients: [resolveIngredient({ material: 'horse-manure' })],
      cn: 30,
      moisturePercent: 55,
      coffeePercent: 0,
      withoutCn: [],
    }),
  water: () => valuesOf(waterRules, 'water-of-animal-origin-possible')({ source: 'roof', volumeL: 10 }),
};
const said = (place: keyof typeof manureDays, days: string) => {
  return manureDays[place]()?.[days];
};

export const eatingValues: readonly Value[] = [
  {
    name: 'days from a pour on the soil to picking for raw eating',
    at: 'can/limits.ts RAW_SOIL_DAYS',
    stated: '14 days',
    source: 'our-caution',
    holds: all(
      answers(waits, [{}, 14]),
      answers(
        (days: number) => speaks(batchRules, 'raw-bed-picked-soon')(picked({})(days)),
        [13, true],
        [14, false],
        [15, false],
      ),
    ),
  },
  {
    name: 'days to wait after a batch that was not sour long enough',
    at: 'can/limits.ts NOT_HELD_DAYS',
    stated: '120 days',
    source: 'nosb-2004',
    locator: '90 and 120 days before harvest; the longer for all',
    holds: all(
      answers(
        waits,
        [{ held: false }, 120],
        [{ held: false, crop: 'tomato', eaten: 'raw-fruit' }, 120],
        [{ way: 'leaf' }, 120],
        [{ animalOrigin: undefined }, 120],
        [{ overridden: true, eaten: 'cooked' }, 120],
        [{ profile: told({ immuneWeak: true }), crop: 'tomato', eaten: 'raw-fruit' }, 120],
      ),
      answers(
        (days: number) =>
          speaks(batchRules, 'batch-not-held-raw-bed')(picked({ batch: { ...order.batch, held: false } })(days)),
        [119, true],
        [120, true],
        [121, false],
      ),
    ),
  },
  {
    name: 'raw-manure days where the part that is eaten touches the soil',
    at: 'can/limits.ts RAW_MANURE_DAYS.touchesSoil',
    stated: '120 days',
    ...sevenCfr,
    holds: all(
      answers(waits, [{ animalOrigin: 'yes' }, 120], [{ animalOrigin: 'yes', way: 'leaf', crop: 'tomato' }, 120]),
      answers(
        (days: number) => speaks(eatingRules, 'eating-manure-picked-soon')(picked(manured)(days)),
        [119, true],
        [120, false],
        [121, false],
      ),
      () => answers((place: 'scraps' | 'heap') => said(place, 'daysOnSoil'), ['scraps', 120], ['heap', 120])(),
      () => answers((place: 'water') => said(place, 'touchesSoil'), ['water', 120])(),
    ),
  },
  {
    name: 'raw-manure days where it does not touch the soil',
    at: 'can/limits.ts RAW_MANURE_DAYS.otherwise',
    stated: '90 days',
    ...sevenCfr,
    holds: all(
      answers(waits, [{ animalOrigin: 'yes', crop: 'aubergine', eaten: 'raw-fruit' }, 90]),
      answers(
        (days: number) => speaks(eatingRules, 'eating-manure-picked-soon')(picked({ ...manured, ...aubergine })(days)),
        [89, true],
        [90, false],
        [91, false],
      ),
      () => answers((place: 'scraps' | 'heap') => said(place, 'daysOffSoil'), ['scraps', 90], ['heap', 90])(),
      () => answers((place: 'water') => said(place, 'otherwise'), ['water', 90])(),
    ),
  },
  {
    name: 'days from a pour on the soil to raw eating by a class',
    at: 'can/limits.ts SCHOOL_RAW_DAYS',
    stated: '21 days',
    source: 'our-caution',
    holds: all(
      answers(waits, [{ profile: told({ school: true }) }, 21]),
      answers(
        (days: number) =>
          speaks(eatingRules, 'eating-school-picked-soon')(picked({ profile: told({ school: true }) })(days)),
        [20, true],
        [21, false],
        [22, false],
      ),
    ),
  },
  {
    name: 'a liquid of which nobody told counts as not sour long enough',
    at: 'can/eating.ts eatingReasons',
    stated: 'only what is known to be sour long enough counts as such',
    source: 'our-caution',
    turned: ['ask.held !== true', 'ask.held === false'],
    holds: answers(waits, [{ held: true }, 14], [{ held: undefined }, 120], [{ held: false }, 120]),
  },
  {
    name: 'a batch of which nobody told waits as one that is not sour long enough',
    at: 'rules/batch.ts batch-not-held',
    stated: 'only what is known to be sour long enough is poured',
    source: 'our-caution',
    turned: [
      "order.batch?.state !== 'ready' || order.batch.held === true",
      "order.batch?.state !== 'ready' || order.batch.held !== false",
    ],
    holds: answers(
      (held: boolean | undefined) =>
        speaks(batchRules, 'batch-not-held')({ ...order, batch: { ...order.batch, held } }),
      [true, false],
      [undefined, true],
      [false, true],
    ),
  },
  {
    name: 'a pour of a batch of which nobody told counts as not sour long enough',
    at: 'rules/eating.ts eatingAskOf',
    stated: 'only what is known to be sour long enough counts as such',
    source: 'our-caution',
    turned: [
      "order.batch?.state === 'ready' && order.batch.held === true",
      "order.batch?.state === 'ready' && order.batch.held !== false",
    ],
    holds: answers(
      (held: boolean | undefined) => eatingWait(eatingAskOf({ ...order, batch: { ...order.batch, held } })).days,
      [true, 14],
      [undefined, 120],
      [false, 120],
    ),
  },
  {
    name: 'a bed of which nobody told is eaten raw',
    at: 'can/eating.ts countsAs',
    stated: 'raw, where it was not told',
    source: 'our-caution',
    turned: ["eaten !== 'cooked'", "eaten !== 'cooked' && eaten !== undefined"],
    holds: answers(
      (eaten: EatingAsk['eaten']) => eatingWait({ ...lettuce, eaten }).countsAs,
      [undefined, 'raw'],
      ['cooked', 'cooked'],
      ['not-eaten', 'not-eaten'],
    ),
  },
  {
    name: 'days since a bed was fed',
    at: 'rules/bed.ts JUST_FED_DAYS',
    stated: '2 days',
    source: 'our-caution',
    holds: answers(
      (fedDays: number) => speaks(bedRules, 'bed-fed-just-now')({ grows: true, sized: true, fedDays }),
      [1, true],
      [1.9, true],
      [2, false],
    ),
  },
];
