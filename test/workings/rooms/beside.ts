// Workings of the sheets beside the words of the command line: the sour line, the forecast, the cover, the bean test, the
// strength of a pour, the wait until picking.

import type { Working } from '#engine/working/working.ts';
import { asBand, likely, type Redo } from '../by-hand.ts';

const BY_RUNS = 'percentiles over many runs of the ferment model, which a reader cannot redo by hand';

/** Of each value, and how long it was so: pairs in turn. */
function meanOverTime({ inputs }: Working): number {
  const values = inputs.map(({ value }) => (typeof value === 'string' ? Number.NaN : asBand(value).likely));
  let [sum, days] = [0, 0];
  for (let i = 0; i + 1 < values.length; i += 2) {
    const [value = Number.NaN, stood = Number.NaN] = values.slice(i, i + 2);
    sum += value * stood;
    days += stood;
  }
  return sum / days;
}

/** Days of the hold off the points that the formula names. */
function hold(working: Working): number {
  const points = [...working.formula.matchAll(/(\d+)(?: days)? at (\d+) °C/g)].map(([, days, celsius]) => ({
    days: Number(days),
    celsius: Number(celsius),
  }));
  const at = likely(working, 'mean temperature');
  const [warmest] = points;
  if (warmest === undefined) throw new Error(`${working.figure}: the formula names no days`);
  if (at >= warmest.celsius) return warmest.days;
  const under = points.findIndex(({ celsius }) => at >= celsius);
  const [warmer, colder] = [points[under - 1] ?? warmest, points[under] ?? warmest];
  return warmer.days + ((colder.days - warmer.days) * (warmer.celsius - at)) / (warmer.celsius - colder.celsius);
}

export const sourLine: readonly Redo[] = [
  { figure: /^temperature\.meanC$/, redo: meanOverTime },
  {
    figure: /^alarm\./,
    redo: (w) => {
      const at20 = likely(w, 'days at 20 °C and above');
      const colder = 20 - Math.min(20, likely(w, 'mean temperature'));
      return at20 * (likely(w, 'days at 12 °C') / at20) ** (colder / 8);
    },
  },
  { figure: /^hold\.days$/, redo: hold },
];

export const forecast: readonly Redo[] = [
  ...sourLine,
  { figure: /^(reach\.|readyDay$|heldDay$|plateauPh$)/, exempt: BY_RUNS },
  { figure: /^days\.\d+\.(gasRangeLPerDay|ethanolRangeGPerL)$/, exempt: BY_RUNS },
];

/** Amount times figure a kilogram, in pairs, before whatever follows. */
function pairs({ inputs }: Working, after: number): number {
  const values = inputs
    .slice(0, inputs.length - after)
    .map(({ value }) => asBand(typeof value === 'string' ? Number.NaN : value).likely);
  let sum = 0;
  for (let i = 0; i + 1 < values.length; i += 2) sum += (values[i] ?? Number.NaN) * (values[i + 1] ?? Number.NaN);
  return sum;
}

export const cover: readonly Redo[] = [
  {
    figure: /^cover\..+\.[npk]$/,
    redo: (w) => {
      const brought = pairs(w, 2);
      const short = Math.max(0, likely(w, 'missing before') - brought);
      if (Math.abs(short - likely(w, 'still short')) > 1e-6 * Math.max(1, short))
        throw new Error(`${w.figure}: still short is not what is missing less what is brought`);
      return brought;
    },
  },
  {
    figure: /^cover\.cost$/,
    redoLikely: (w) => pairs(w, 0),
    endsExempt: 'the ends are two further plans of the solver, with the lean and with the rich figures, by weight',
  },
];

/** Ways to choose some out of all, exact. */
function choose(all: bigint, some: bigint): bigint {
  if (some < 0n || some > all) return 0n;
  let ways = 1n;
  for (let i = 1n; i <= some; i++) ways = (ways * (all - some + i)) / i;
  return ways;
}

/** Chance of as many marked or more in the first pots, by counting the ways. */
function chance(marked: readonly [number, number], of: readonly [number, number]): number {
  const [a, k, n, all] = [marked[0], marked[0] + marked[1], of[0], of[0] + of[1]].map(BigInt) as [
    bigint,
    bigint,
    bigint,
    bigint,
  ];
  let ways = 0n;
  for (let x = a; x <= k && x <= n; x++) ways += choose(k, x) * choose(all - k, n - x);
  return Number((ways * 10n ** 18n) / choose(all, n)) / 1e18;
}

export const beans: readonly Redo[] = [
  {
    figure: /^deformed\.chance$/,
    redo: (w) =>
      chance(
        [likely(w, 'test pots, deformed'), likely(w, 'control, deformed')],
        [likely(w, 'test pots, come up'), likely(w, 'control, come up')],
      ),
  },
  {
    figure: /^missing\.chance$/,
    redo: (w) => {
      const [test, control] = ['test pots', 'control'].map(
        (pots) => [likely(w, `${pots}, sown`), likely(w, `${pots}, come up`)] as const,
      ) as [readonly [number, number], readonly [number, number]];
      return chance([test[0] - test[1], control[0] - control[1]], [test[0], control[0]]);
    },
  },
];

export const strength: readonly Redo[] = [
  {
    figure: /^strength\.leafGPerL$/,
    redo: (w) => likely(w, 'plants in a litre of the batch') * likely(w, 'share of concentrate'),
  },
];

export const wait: readonly Redo[] = [
  {
    figure: /^tillOn$/,
    redo: (w) => Math.max(0, likely(w, 'days from pour to picking') - likely(w, 'days since the pour')),
  },
];
