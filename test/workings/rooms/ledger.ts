// The workings of what the beds got by hand.

import type { Working } from '#engine/working/working.ts';
import {
  all,
  asBand,
  atLeast,
  atMost,
  type Band,
  each,
  likely,
  minus,
  one,
  over,
  plus,
  point,
  type Redo,
  times,
} from '../by-hand.ts';

const BEFORE_SOIL = 'for the crops, before the soil’s share';

interface ListedCrop {
  /** Its own figure: nitrogen over a season, or the content of the harvest. */
  readonly own: Band;
  /** What else is listed of it, by the rest of the label. */
  readonly more: ReadonlyMap<string, Band>;
}

/** The crops in the order listed; each begins with its own figure. */
function crops({ inputs }: Working): readonly ListedCrop[] {
  const list: { own: Band; more: Map<string, Band> }[] = [];
  for (const { label, value } of inputs) {
    if (label === BEFORE_SOIL) break;
    const what = label.slice(label.lastIndexOf(': ') + 2);
    if (!label.includes(': ') || typeof value === 'string') continue;
    if (what === 'to be had over a season' || what === 'in the harvest')
      list.push({ own: asBand(value), more: new Map() });
    else list.at(-1)?.more.set(what, asBand(value));
  }
  return list;
}

/** Nitrogen on a square metre, moved to the harvest aimed at where the table tells by how much. */
function target({ own, more }: ListedCrop): Band {
  const [goal, at, step] = ['harvest aimed at', 'harvest of that figure', 'for 20 % of that harvest'].map(
    (what) => more.get(what)?.likely,
  );
  if (goal === undefined || at === undefined || step === undefined) return own;
  const moved = Math.max(0, own.likely + (step * (goal / at - 1)) / 0.2);
  return each(own, (value) => (value * moved) / own.likely);
}

function need(working: Working): Band {
  const listed = crops(working);
  const nitrogen = working.figure.endsWith('.n');
  const area = likely(working, 'area') / listed.length;
  const perM2 = listed.map((crop) =>
    nitrogen ? target(crop) : times(crop.own, crop.more.get('harvest') ?? point(Number.NaN)),
  );
  const whole = plus(...perM2.map((band) => each(band, (value) => value * area)));
  const after = working.inputs.findIndex(({ label }) => label === BEFORE_SOIL);
  const soil = working.inputs.slice(after + 1);
  if (!nitrogen) return soil.some(({ value }) => value === 'high' || value === 'excessive') ? point(0) : whole;
  const credits = soil.map(({ value }) => asBand(typeof value === 'string' ? Number.NaN : value));
  return atLeast(minusAll(whole, credits), 0);
}

/** All at once: each errs by itself. */
function minusAll(whole: Band, credits: readonly Band[]): Band {
  return credits.length === 0 ? whole : minus(whole, plus(...credits));
}

function share(working: Working): Band {
  const liquid = one(working, 'the liquid');
  const [most] = all(working, 'no more than');
  const part = liquid.high === 0 ? point(0) : each(over(liquid, one(working, 'needed')), (value) => 100 * value);
  return most === undefined ? part : atMost(part, most.likely);
}

export const ledgerRoom: readonly Redo[] = [
  { figure: /^beds\[\d+\]\.needG\.[npk]$/, redo: need },
  {
    figure: /^beds\[\d+\]\.givenG\.[npk]$/,
    redo: ({ inputs }) => plus(...inputs.map(({ value }) => asBand(typeof value === 'string' ? Number.NaN : value))),
  },
  { figure: /^beds\[\d+\]\.liquidSharePercent\.[npk]$/, redo: share },
];
