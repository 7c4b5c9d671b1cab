// How long a bottle may stand, how sour it must be, how much sugar it may hold, whether the sum of a straining closes.

import { balance } from '#engine/bottle/balance.ts';
import { useFirst } from '#engine/bottle/keep.ts';
import { strainedBatch } from '#engine/bottle/strained.ts';
import { strainRules } from '#engine/rules/bottle.ts';
import { type BottleUse, bottleUseRules } from '#engine/rules/vessel.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { answers, speaks, type Value } from './value.ts';

const bottle = { finalPh: 3.8, temperatureC: 20, sound: true };
const kept = (change: Partial<typeof bottle>) => useFirst({ ...bottle, ...change });
const days = (change: Partial<typeof bottle>) => {
  const { low, high } = kept(change).days;
  return [low, high].map((one) => Number(one.toFixed(6)));
};
const memory = { source: 'memory' } as const;

/** A straining of plants alone, by its last acidity. */
function strained(finalPh: number) {
  const product = sugarProduct('white-sugar');
  if (product === undefined) throw new Error('sugar table incomplete');
  const batch = {
    plants: [],
    waterL: 10,
    sugar: { product, massKg: 0 },
    starterL: 0,
    days: 10,
    temperatureC: 20,
    finalPh,
    drainedL: 9,
    solidsKg: 0,
  };
  return { batch, strained: strainedBatch(batch), state: 'ready' };
}

const stands: BottleUse = {
  volumeL: 1,
  filledL: 0.95,
  cap: 'screw',
  material: 'plastic',
  sugarLeftGPerL: 5,
  temperatureC: 20,
  pressureAtm: 1.2,
};

export const bottleValues: readonly Value[] = [
  {
    name: 'pH at which a feed keeps',
    at: 'bottle/keep.ts KEEPS_AT_PH',
    stated: 'pH 4.0',
    ...memory,
    step: 0.1,
    holds: answers((finalPh: number) => kept({ finalPh }).keeping, [3.99, 'keeps'], [4, 'keeps'], [4.01, 'short']),
  },
  {
    name: 'acid-food line',
    at: 'data/extraction.csv sour-limit.ph',
    stated: 'pH 4.6',
    source: 'cfr-21-114',
    locator: '114.3',
    holds: answers(
      (finalPh: number) => [kept({ finalPh }).keeping, speaks(strainRules, 'strained-not-sour')(strained(finalPh))],
      [4.59, ['short', false]],
      [4.6, ['short', false]],
      [4.61, ['none', true]],
    ),
  },
  {
    name: 'pH of ready as a straining asks it',
    at: 'souring/lines.ts READY_PH',
    stated: 'pH 4.2',
    source: 'our-caution',
    holds: answers(
      (finalPh: number) => speaks(strainRules, 'strained-before-ready')(strained(finalPh)),
      [4.19, false],
      [4.2, false],
      [4.21, true],
    ),
  },
  {
    name: 'longest a feed is kept',
    at: 'bottle/keep.ts NEXT_SUMMER_DAYS',
    stated: '365 days: to the next summer',
    source: 'rhs-fertilisers',
    locator: 'home-made liquid feeds',
    holds: answers(days, [{}, [20, 365]]),
  },
  {
    name: 'tenfold falls of the living bacteria that a feed is kept for at least',
    at: 'bottle/keep.ts useFirst.twice',
    stated: 'two',
    ...memory,
    // ten days for a fall at 20 °C
    holds: answers(days, [{}, [20, 365]], [{ finalPh: 4.2 }, [0, 20]]),
  },
  ...(
    [
      [0, 4, 30],
      [1, 20, 10],
      [2, 30, 4],
    ] as const
  ).flatMap(([place, warmthC, tenfold]): readonly Value[] => [
    {
      name: `days for the living bacteria to fall to a tenth at ${warmthC} °C`,
      at: `bottle/keep.ts TENFOLD_DAYS.${place}.days`,
      stated: `${tenfold} days`,
      ...memory,
      holds: answers((temperatureC: number) => days({ temperatureC })[0], [warmthC, 2 * tenfold]),
    },
    {
      name: `warmth at which that takes ${tenfold} days`,
      at: `bottle/keep.ts TENFOLD_DAYS.${place}.temperatureC`,
      stated: `${warmthC} °C`,
      ...memory,
      // half way from 4 to 20 °C the geometric mean of 30 and 10 days, twice
      holds: answers((temperatureC: number) => days({ temperatureC })[0], [warmthC, 2 * tenfold], [12, 34.641016]),
    },
  ]),
  {
    name: 'sugar left in a bottle that may be capped',
    at: 'rules/vessel.ts MOST_SUGAR_LEFT_G_PER_L',
    stated: '5 g/L',
    source: 'our-caution',
    step: 0.25,
    holds: answers(
      (sugarLeftGPerL: number) => speaks(bottleUseRules, 'bottle-cap-turned-down')({ ...stands, sugarLeftGPerL }),
      [4.99, false],
      [5, false],
      [5.01, true],
      [Number.NaN, true],
    ),
  },
  {
    name: 'mass that may be missing at a straining',
    at: 'bottle/balance.ts CLOSES_WITHIN_PERCENT',
    stated: '15 %',
    source: 'practice',
    holds: answers(
      (solidsKg: number) =>
        balance({ plantsKg: 100, waterL: 0, sugarKg: 0, starterL: 0, drainedL: 0, solidsKg }).closes,
      [84.9, false],
      [85, true],
      [85.1, true],
      [115.1, false],
    ),
  },
];
