// The lines of alarm by days and warmth, the hold, and what holds a batch back.

import { warmthRules } from '#engine/rules/warmth.ts';
import { brakeOf } from '#engine/souring/brake.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import { holdDays } from '#engine/souring/lines.ts';
import type { DayExpected, Forecast } from '#engine/souring/model/forecast.ts';
import { answers, speaks, type Value } from './value.ts';

const caution = { source: 'our-caution' } as const;

/** Whether a batch with one reading is slow on the day of it. */
const slow = (day: number, ph: number, temperatureC: number) =>
  judgeBatch({ looks: [{ day, ph, by: 'meter' }], temperatureC, today: day }).state === 'slow';

const line = (
  ph: number,
  days: number,
  temperatureC: 20 | 12,
  at: string,
): readonly [name: string, at: string, stated: string, holds: () => void] => [
  `alarm line of pH ${ph.toFixed(1)} at ${temperatureC} °C`,
  `souring/lines.ts LINES.${at}`,
  `${days} days`,
  answers(
    ([day, above]: readonly [number, number]) => slow(day, ph + above, temperatureC),
    [[days - 0.01, 0.001], false],
    [[days - 1e-6, 0.001], false],
    [[days + 0.01, 0.001], true],
    [[days + 0.01, 0], false],
  ),
];

const LINES = [
  line(5, 3, 20, '0.daysAt20C'),
  line(5, 5, 12, '0.daysAt12C'),
  line(4.6, 5, 20, '1.daysAt20C'),
  line(4.6, 9, 12, '1.daysAt12C'),
];

/** A batch held by two readings a month apart at this pH and 20 °C. */
const held = (ph: number) =>
  judgeBatch({
    looks: [3, 12, 21, 30].map((day) => ({ day, ph, by: 'meter' as const })),
    temperatureC: 20,
    today: 30,
  }).held;

/** Whether a batch that stands at pH 3.9 from its third day is held so many days later, at one warmth. */
const heldAfter = (days: number, temperatureC: number) =>
  judgeBatch({
    looks: Array.from({ length: 11 }, (_, i) => 4 * i).map((day) => ({ day: 3 + day, ph: 3.9, by: 'meter' as const })),
    temperatureC,
    today: 3 + days,
  }).held;
const HOLD = [
  [0, 10, 39],
  [1, 15, 24],
  [2, 20, 15],
] as const;
const BRINES = {
  source: 'breidt-caldwell-2011',
  locator:
    'abstract: 3 to 24 days from pH 3.2 to 4.6; the days by warmth are our reading, with breidt-2007: 5.7 days at 10 °C for 1.4 at 25',
};

const even = (likely: number) => ({ low: likely, likely, high: likely });
/** What holds a batch back that ends at a pH with so much sugar. */
function brake({ ph = 3.8, sugarGPerL = 5, meanC = 20, dryMatterFraction = 0.07 }) {
  const none = even(0);
  const day: DayExpected = {
    day: 21,
    ph: even(ph),
    sugarGPerL: even(sugarGPerL),
    lacticGPerL: none,
    aceticGPerL: none,
    ethanolGPerL: none,
    co2GPerL: none,
    ammoniaNMgPerL: none,
  };
  const band = { reachedFraction: 0 };
  const reach = { '4.6': band, '4.2': band, '4.0': band };
  const expected: Forecast = { days: [day], reach, ready: band, held: band, plateauPh: even(ph) };
  return brakeOf({ expected, meanC, dryMatterFraction });
}

export const lineValues: readonly Value[] = [
  ...LINES.map(([name, at, stated, holds]): Value => ({ name, at, stated, ...caution, holds })),
  {
    name: 'pH of the first alarm line',
    at: 'souring/lines.ts LINES.0.ph',
    stated: 'pH 5.0',
    ...caution,
    step: 0.1,
    holds: answers((ph: number) => slow(4, ph, 20), [4.99, false], [5, false], [5.01, true]),
  },
  {
    name: 'pH of the second alarm line',
    at: 'souring/lines.ts LINES.1.ph',
    stated: 'pH 4.6',
    ...caution,
    holds: answers((ph: number) => slow(6, ph, 20), [4.59, false], [4.6, false], [4.61, true]),
  },
  {
    name: 'warmth from which an alarm line grows no shorter',
    at: 'souring/lines.ts lineDays#2',
    stated: '20 °C',
    ...caution,
    // between 12 and 20 °C a constant factor a degree; above 20 °C as at 20
    holds: answers(
      (temperatureC: number) => [slow(2.99, 5.5, temperatureC), slow(3.01, 5.5, temperatureC)],
      [19, [false, false]],
      [20, [false, true]],
      [21, [false, true]],
      [30, [false, true]],
    ),
  },
  ...(
    [
      ['warmth from which the alarm lines are drawn', 'lineDays#1', '20 °C'],
      ['degrees over which the alarm lines are drawn', 'lineDays#3', '8 °C: from 20 to 12 °C'],
    ] as const
  ).map(
    ([name, at, stated]): Value => ({
      name,
      at: `souring/lines.ts ${at}`,
      stated,
      ...caution,
      // 3 days at 20 °C, 5 at 12 °C, half way between √15
      holds: answers(
        ([temperatureC, day]: readonly [number, number]) => slow(day, 5.5, temperatureC),
        [[20, 2.999], false],
        [[20, 3.001], true],
        [[16, 3.872], false],
        [[16, 3.874], true],
        [[12, 4.999], false],
        [[12, 5.001], true],
      ),
    }),
  ),
  {
    name: 'pH at which the clock of the hold runs',
    at: 'souring/lines.ts HELD_PH',
    stated: 'pH 4.0',
    source: 'breidt-caldwell-2011',
    locator: 'abstract: brines of pH 3.2 to 4.6',
    step: 0.1,
    holds: answers(held, [3.99, true], [4, true], [4.01, false]),
  },
  {
    name: 'coldest in which a hold is known',
    at: 'souring/lines.ts HOLD.0.temperatureC',
    stated: '10 °C',
    ...caution,
    holds: answers(
      (meanC: number) => [
        speaks(warmthRules, 'too-cold-for-a-hold')({ hottestC: meanC, meanC }),
        holdDays(meanC) < 100,
      ],
      [9.9, [true, false]],
      [10, [false, true]],
      [10.1, [false, true]],
    ),
  },
  ...HOLD.map(
    ([place, warmthC, days]): Value => ({
      name: `days of the hold at ${warmthC} °C`,
      at: `souring/lines.ts HOLD.${place}.days`,
      stated: `${days} days`,
      ...BRINES,
      holds: answers(
        (after: number) => heldAfter(after, warmthC),
        [days - 0.01, false],
        [days, true],
        [days + 0.01, true],
      ),
    }),
  ),
  ...HOLD.slice(1).map(
    ([place, warmthC, days]): Value => ({
      name: `warmth of the hold of ${days} days`,
      at: `souring/lines.ts HOLD.${place}.temperatureC`,
      stated: `${warmthC} °C`,
      ...BRINES,
      // straight lines between: 31.5 days at 12.5 °C, 19.5 at 17.5 °C
      holds: answers(holdDays, [warmthC, days], [12.5, 31.5], [17.5, 19.5], [20, 15], [21, 15]),
    }),
  ),
  {
    name: "the brake's line",
    at: 'souring/lines.ts HELD_PH',
    stated: 'pH 4.0',
    ...caution,
    step: 0.1,
    holds: answers((ph: number) => brake({ ph, sugarGPerL: 0.5 }), [3.99, 'acid'], [4, 'acid'], [4.01, 'sugar']),
  },
  {
    name: 'warmth above which the bacteria slow down',
    at: 'souring/brake.ts WARM_C',
    stated: '38 °C',
    source: 'memory',
    holds: answers((meanC: number) => brake({ meanC }), [37.9, 'acid'], [38, 'acid'], [38.1, 'warm']),
  },
  {
    name: 'warmth below which cold holds a batch back',
    at: 'souring/brake.ts COLD_C',
    stated: '15 °C',
    ...caution,
    holds: answers((meanC: number) => brake({ meanC }), [14.9, 'cold'], [15, 'acid'], [15.1, 'acid']),
  },
  {
    name: 'sugar below which there is none to speak of',
    at: 'souring/brake.ts GONE_G_PER_L',
    stated: '1 g/L',
    ...caution,
    step: 0.05,
    holds: answers(
      (sugarGPerL: number) => brake({ ph: 4.5, sugarGPerL }),
      [0.99, 'sugar'],
      [1, 'acid'],
      [1.01, 'acid'],
    ),
  },
  {
    name: 'share of dry matter above which a batch is too dry',
    at: 'souring/brake.ts DRY_FRACTION',
    stated: '0.35',
    ...caution,
    holds: answers(
      (dryMatterFraction: number) => brake({ ph: 4.5, dryMatterFraction }),
      [0.349, 'acid'],
      [0.35, 'acid'],
      [0.351, 'dry'],
    ),
  },
  {
    name: 'warmth from which it is too hot to sour',
    at: 'rules/warmth.ts TOO_HOT_C',
    stated: '35 °C',
    ...caution,
    holds: answers(
      (hottestC: number) => speaks(warmthRules, 'too-hot-to-sour')({ hottestC, meanC: 20 }),
      [34.9, false],
      [35, true],
      [35.1, true],
    ),
  },
];
