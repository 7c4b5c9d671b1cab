// The workings of the weigh-in by hand. Lots are read by their place in the list: a lot may bear any name.

import type { Working } from '#engine/working/working.ts';
import {
  atLeast,
  type Band,
  each,
  inTurn,
  likely,
  minus,
  one,
  over,
  plus,
  point,
  type Redo,
  times,
  together,
} from '../by-hand.ts';

const scaled = (band: Band, by: number) => each(band, (value) => value * by);

/** Volume of each lot: masses stand first, then what each settles to, with so many inputs that are of no lot. */
function volumes(working: Working, from: number, others: number): readonly Band[] {
  const count = (working.inputs.length - others) / 2;
  const perKg = inTurn(working, from + count, count);
  return inTurn(working, from, count).map(({ likely: massKg }, i) => scaled(perKg[i] ?? point(Number.NaN), massKg));
}

/** Water, lots, what each settles to, sugar, what it dissolves to. */
function settled(working: Working): Band {
  const [water, ...rest] = inTurn(working, 0, working.inputs.length);
  const [sugar, dissolved] = rest.slice(-2);
  const fixed = (water?.likely ?? Number.NaN) + (sugar?.likely ?? Number.NaN) * (dissolved?.likely ?? Number.NaN);
  return together(point(fixed), ...volumes(working, 1, 3));
}

function lift(working: Working): Band {
  const stands = likely(working, 'settled volume');
  const gas = one(working, 'gas lift');
  const [water, ...rest] = inTurn(working, 3, working.inputs.length - 3).map(({ likely: value }) => value);
  const [sugar = Number.NaN, dissolved = Number.NaN] = rest.slice(-2);
  const plants = rest.slice(0, -2).reduce((sum, kg) => sum + kg, 0);
  const floating = (water ?? Number.NaN) + sugar * dissolved + plants * likely(working, 'floating mat on day 0');
  const [low, high] = [stands * gas.low, Math.max(stands * gas.high, floating)];
  return { low, likely: (low + high) / 2, high };
}

function mass({ inputs }: Working): number {
  return inputs.reduce((sum, { value }) => sum + (typeof value === 'number' ? value : 0), 0);
}

/** Inputs whose label ends so, with the lots in the order they are listed. */
function ofLots(working: Working, ending: string): readonly Band[] {
  return working.inputs
    .filter(({ label }) => label.endsWith(ending))
    .map(({ value }) => (typeof value === 'string' ? undefined : value))
    .map((value) => (value === undefined ? point(Number.NaN) : typeof value === 'number' ? point(value) : value));
}

/** Sum over lots of mass × dry share × a third figure; a lot of which it is not known is left out. */
function overLots(working: Working, ending: string, factor: number): readonly Band[] {
  const [masses, dry, third] = [', mass', ', dry share', ending].map((end) => ofLots(working, end));
  return (masses ?? []).flatMap((massKg, i) => {
    const [d, x] = [dry?.[i], third?.[i]];
    return d === undefined || x === undefined || Number.isNaN(x.likely)
      ? []
      : [scaled(times(d, x), massKg.likely * factor)];
  });
}

function ownSugar(working: Working): Band {
  const terms = overLots(working, ', sugar', 1);
  return times(atLeast(plus(...terms), 0), one(working, 'reach of the bacteria, chopped'));
}

/** Sugar for the acid, and for souring the product that is still to be added. */
function needed(working: Working): Band {
  const rest = ['acid the water takes', 'free acid at the target', 'acid that ammonia takes'];
  const acid = atLeast(together(one(working, 'acid the plants take'), ...rest.map((label) => one(working, label))), 0);
  const bare = scaled(
    over(acid, one(working, 'acid from a mole of sugar')),
    180.16 / likely(working, 'protons per mole of acid'),
  );
  const least = likely(working, 'least sugar to add');
  const own = least < Number.POSITIVE_INFINITY ? least * likely(working, 'own need of the product') : 0;
  return together(bare, point(own));
}

function least(working: Working): Band {
  const safety = one(working, 'safety factor');
  const without = one(working, 'sugar the acid takes, without the product’s own need');
  const missing = atLeast(minus(times(safety, without), one(working, 'own sugar of the plants')), 0);
  const left = 1 - safety.likely * likely(working, 'own need of the product');
  return each(missing, (grams) => (grams > 0 ? (left > 0 ? grams / left : Number.POSITIVE_INFINITY) : 0));
}

export const fitRoom: readonly Redo[] = [
  { figure: /^fill\.volumeL$/, redo: settled },
  { figure: /^fill\.usableL$/, redo: (w) => likely(w, 'vessel') * (1 - likely(w, 'gas room')) },
  {
    figure: /^fill\.overL$/,
    redo: (w) => Math.max(0, likely(w, 'settled volume') - likely(w, 'up to the fill line')),
  },
  { figure: /^lift\.highL$/, redo: lift },
  { figure: /^fill\.massKg$/, redo: mass },
  { figure: /^sugar\.ownHexoseG$/, redo: ownSugar },
  { figure: /^sugar\.neededHexoseG$/, redo: needed },
  { figure: /^sugar\.leastHexoseG$/, redo: least },
  { figure: /^sugar\.mostHexoseG$/, redo: (w) => scaled(one(w, 'most per litre'), likely(w, 'liquid to sour')) },
  {
    figure: /^sugar\.asProductG$/,
    redo: (w) => likely(w, 'least sugar to add') / (likely(w, 'sugar in the product') / 1000),
  },
  {
    figure: /^inputs\.[npk]G$/,
    redo: (w) => {
      const ending = { n: ', nitrogen', p: ', phosphorus', k: ', potassium' }[w.figure.charAt(7)] ?? '';
      const inSugar =
        w.figure === 'inputs.kG'
          ? scaled(one(w, 'potassium of the sugar product'), likely(w, 'sugar added'))
          : point(0);
      return plus(...overLots(w, ending, 10), inSugar);
    },
  },
];
