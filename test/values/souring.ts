// The words for a batch: when it is ready, slow, doubtful, lost or unknown, and when it is to be looked at again.

import { judgeBatch } from '#engine/souring/judge.ts';
import type { Look } from '#engine/souring/look.ts';
import { answers, type Value } from './value.ts';

const caution = { source: 'our-caution' } as const;
const meter = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });
const strip = (day: number, ph: number): Look => ({ day, ph, by: 'strip' });
const nose = (day: number, smell: Look['smell'], who = 'Rake'): Look => ({ day, smell, who });
const top = (day: number, surface: Look['surface']): Look => ({ day, surface });

/** The word for some looks on the day of the last of them, at 20 °C. */
const word = (...looks: readonly Look[]) => judged(looks).state;
const judged = (looks: readonly Look[], temperatureC = 20, today = Math.max(...looks.map(({ day }) => day))) =>
  judgeBatch({ looks, temperatureC, today });
const nextIn = (looks: readonly Look[], temperatureC = 20) => {
  const { nextLookDay = Number.NaN } = judged(looks, temperatureC);
  return nextLookDay - Math.max(...looks.map(({ day }) => day));
};

export const souringValues: readonly Value[] = [
  {
    name: 'pH at which a batch is ready',
    at: 'souring/lines.ts READY_PH',
    stated: 'pH 4.2',
    ...caution,
    holds: answers(
      (ph: number) => word(meter(2, ph), meter(4, ph)),
      [4.19, 'ready'],
      [4.2, 'ready'],
      [4.21, 'souring'],
    ),
  },
  {
    name: 'days between the readings that make a batch ready',
    at: 'souring/lines.ts READY_APART_DAYS',
    stated: '2 days',
    ...caution,
    holds: answers(
      (day: number) => word(meter(2, 4.1), meter(day, 4.1)),
      [3.99, 'souring'],
      [4, 'ready'],
      [4.01, 'ready'],
    ),
  },
  {
    name: 'drift allowed for ready',
    at: 'souring/findings.ts READY_DRIFT_PH',
    stated: '0.1 pH',
    ...caution,
    holds: answers(
      (ph: number) => word(meter(2, 4.05), meter(4, ph)),
      [4.149, 'ready'],
      [4.15, 'ready'],
      [4.151, 'souring'],
    ),
  },
  {
    name: 'days without a look after which nothing is known',
    at: 'souring/findings.ts UNKNOWN_AFTER_DAYS',
    stated: '10 days',
    ...caution,
    holds: answers(
      (today: number) => judged([meter(2, 4.1), meter(4, 4.1)], 20, today).state,
      [13.9, 'ready'],
      [14, 'unknown'],
      [14.1, 'unknown'],
    ),
  },
  {
    name: 'strip pad',
    at: 'souring/trend.ts PAD_PH',
    stated: '0.5 pH',
    ...caution,
    holds: answers(
      (ph: number) => word(strip(2, ph), strip(4, ph)),
      [3.69, 'ready'],
      [3.7, 'ready'],
      [3.71, 'souring'],
    ),
  },
  {
    name: 'a reading whose tool was not told counts as a strip',
    at: 'souring/trend.ts readingsOf',
    stated: 'as a strip',
    ...caution,
    turned: ["by !== 'meter'", "by === 'strip'"],
    holds: answers((ph: number) => word({ day: 2, ph }, { day: 4, ph }), [3.7, 'ready'], [3.71, 'souring']),
  },
  {
    name: 'climb by meter that raises a doubt',
    at: 'souring/trend.ts DOUBT_PH',
    stated: '0.2 pH',
    ...caution,
    holds: answers(
      (ph: number) => word(meter(2, 4.5), meter(4, ph)),
      [4.699, 'souring'],
      [4.7, 'doubtful'],
      [4.701, 'doubtful'],
    ),
  },
  {
    name: 'climb by meter beyond which a batch is lost',
    at: 'souring/trend.ts LOST_PH',
    stated: '0.3 pH',
    ...caution,
    holds: answers(
      (ph: number) => word(meter(2, 4.3), meter(4, ph)),
      [4.599, 'doubtful'],
      [4.6, 'doubtful'],
      [4.601, 'lost'],
    ),
  },
  {
    name: 'climb by strip: a pad is a doubt, two are the end',
    at: 'souring/trend.ts climbedTo',
    stated: 'doubt from one pad, lost from two',
    ...caution,
    holds: answers(
      (ph: number) => word(strip(1, 4), strip(2, ph)),
      [4.49, 'souring'],
      [4.5, 'doubtful'],
      [4.99, 'doubtful'],
      [5, 'lost'],
    ),
  },
  {
    name: 'days without a fall after which a slow batch is in doubt',
    at: 'souring/trend.ts STILL_FALLING_DAYS',
    stated: '3 days',
    ...caution,
    holds: answers(
      (day: number) => word(meter(6, 5.5), meter(day, 5.5)),
      [8.99, 'slow'],
      [9, 'doubtful'],
      [9.01, 'doubtful'],
    ),
  },
  {
    name: 'the same by strip: twice as long',
    at: 'souring/trend.ts stuckSince.old.days',
    stated: '6 days',
    ...caution,
    holds: answers(
      (day: number) => word(strip(6, 5.5), strip(day, 5.5)),
      [11.99, 'slow'],
      [12, 'doubtful'],
      [12.01, 'doubtful'],
    ),
  },
  {
    name: 'looks so close are one visit',
    at: 'souring/look.ts VISIT_DAYS#2',
    stated: 'an hour: 24 in a day',
    ...caution,
    holds: answers(
      (minutes: number) => word(meter(3, 4.5), top(3, 'fuzzy-white'), top(3 + minutes / 1440, 'fuzzy-white')),
      [59, 'souring'],
      [60, 'souring'],
      [61, 'lost'],
    ),
  },
  {
    name: 'foul words so far apart are two findings',
    at: 'souring/nose.ts TWICE_DAYS',
    stated: 'half a day',
    ...caution,
    holds: answers(
      (day: number) => word(meter(2, 4.5), nose(2, 'egg'), nose(day, 'egg')),
      [2.49, 'doubtful'],
      [2.5, 'lost'],
      [2.51, 'lost'],
    ),
  },
  {
    name: 'noses so close are compared',
    at: 'souring/nose.ts DIFFER_DAYS',
    stated: '1 day',
    ...caution,
    step: 0.05,
    holds: answers(
      (day: number) => word(meter(2, 4.5), nose(2, 'egg', 'Hoe'), nose(day, 'sour', 'Rake')),
      [2.99, 'doubtful'],
      [3, 'doubtful'],
      [3.01, 'souring'],
    ),
  },
  {
    name: 'acidity above which a foul word ends a batch that does not fall',
    at: 'souring/nose.ts FOUL_LINE_PH',
    stated: 'pH 4.6',
    ...caution,
    holds: answers(
      (ph: number) => word(meter(1, ph), meter(2, ph), nose(2, 'sewage')),
      [4.59, 'doubtful'],
      [4.6, 'doubtful'],
      [4.61, 'lost'],
    ),
  },
  ...(
    [
      ['souring', 2, [meter(1, 4.8), meter(2, 4.6)]],
      ['slow', 3, [meter(5, 5.6), meter(6, 5.4)]],
      ['ready', 7, [meter(2, 4.1), meter(4, 4.1)]],
      ['doubtful', 1, [meter(2, 4.5), nose(2, 'egg')]],
    ] as const
  ).map(
    ([state, days, looks]): Value => ({
      name: `days to the next look at a batch that is ${state}`,
      at: `souring/outlook.ts NEXT_DAYS.${state}`,
      stated: `${days} ${days === 1 ? 'day' : 'days'}`,
      ...caution,
      holds: answers((_: string) => [word(...looks), nextIn(looks)], [state, [state, days]]),
    }),
  ),
  {
    name: 'warmth from which a batch is looked at daily',
    at: 'souring/outlook.ts LOOK_DAILY_C',
    stated: '25 °C',
    ...caution,
    holds: answers(
      (temperatureC: number) => nextIn([meter(1, 4.8), meter(2, 4.6)], temperatureC),
      [24.9, 2],
      [25, 1],
      [25.1, 1],
    ),
  },
];
