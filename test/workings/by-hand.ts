// What a reader needs to redo a working: its inputs by their labels, and bands combined as the docs state it. Written
// anew from that statement and from the formulas' own words; nothing here or in rooms/ calls the engine.

import type { Working } from '#engine/working/working.ts';

/** A figure with its band, as a working lists it. */
export interface Band {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

type Given = Working['inputs'][number];

/** How one figure is redone, or why it is not. */
export type Redo = {
  /** Which figures of the room it is for. */
  readonly figure: RegExp;
} & (
  | { readonly redo: (working: Working) => number | Band }
  /** The result of a solver or of model runs: the reason stands for it. */
  | { readonly exempt: string }
  /** The likely value is redone; the ends are not, for this reason. */
  | { readonly redoLikely: (working: Working) => number; readonly endsExempt: string }
);

export function point(value: number): Band {
  return { low: value, likely: value, high: value };
}

export function asBand(value: number | Band): Band {
  return typeof value === 'number' ? point(value) : value;
}

function read({ label, value }: Given, figure: string): Band {
  if (typeof value === 'string') throw new Error(`${figure}: "${label}" is no number but "${value}"`);
  return asBand(value);
}

/** Every input whose label is this one or fits, in the order listed. */
export function all({ inputs, figure }: Working, label: string | RegExp): readonly Band[] {
  return inputs
    .filter((one) => (typeof label === 'string' ? one.label === label : label.test(one.label)))
    .map((one) => read(one, figure));
}

/** The one input of this label; a working that does not list it cannot be redone. */
export function one(working: Working, label: string | RegExp): Band {
  const found = all(working, label);
  const [only] = found;
  if (only === undefined || found.length > 1)
    throw new Error(`${working.figure}: ${found.length} inputs are called ${label}`);
  return only;
}

/** The likely value of the one input of this label. */
export function likely(working: Working, label: string | RegExp): number {
  return one(working, label).likely;
}

/** The input of this label as a word; undefined where it is a number or is not listed. */
export function word({ inputs }: Working, label: string): string | undefined {
  const value = inputs.find((input) => input.label === label)?.value;
  return typeof value === 'string' ? value : undefined;
}

/** Inputs as they lie, one after the other, for a list of lots whose names may be anything. */
export function inTurn(working: Working, from: number, count: number): readonly Band[] {
  return working.inputs.slice(from, from + count).map((input) => read(input, working.figure));
}

/** Sum of what errs by itself: distances of the ends add as squares. */
export function plus(...bands: readonly Band[]): Band {
  const middle = bands.reduce((total, { likely: at }) => total + at, 0);
  const side = (of: (band: Band) => number) => Math.hypot(...bands.map(of));
  return { low: middle - side((b) => b.likely - b.low), likely: middle, high: middle + side((b) => b.high - b.likely) };
}

/** Sum of what errs together: ends add straight. */
export function together(...bands: readonly Band[]): Band {
  const of = (end: keyof Band) => bands.reduce((total, band) => total + band[end], 0);
  return { low: of('low'), likely: of('likely'), high: of('high') };
}

export function minus(from: Band, take: Band): Band {
  return plus(from, { low: -take.high, likely: -take.likely, high: -take.low });
}

/** Each of the three values by itself, the ends turned round where the function falls. */
export function each(band: Band, of: (value: number) => number): Band {
  const ends = [of(band.low), of(band.high)];
  return { low: Math.min(...ends), likely: of(band.likely), high: Math.max(...ends) };
}

/** Product of what errs by itself: the ends' proportions add as squares of their logarithms. */
export function times(...bands: readonly Band[]): Band {
  const middle = bands.reduce((total, { likely: at }) => total * at, 1);
  if (middle === 0) return { low: 0, likely: 0, high: bands.reduce((total, { high }) => total * high, 1) };
  const side = (end: 'low' | 'high') => Math.hypot(...bands.map((b) => Math.log(b[end] / b.likely)));
  return { low: middle / Math.exp(side('low')), likely: middle, high: middle * Math.exp(side('high')) };
}

export function over(band: Band, by: Band): Band {
  return times(band, { low: 1 / by.high, likely: 1 / by.likely, high: 1 / by.low });
}

export function atMost(band: Band, most: number): Band {
  return { low: Math.min(band.low, most), likely: Math.min(band.likely, most), high: Math.min(band.high, most) };
}

export function atLeast(band: Band, least: number): Band {
  return { low: Math.max(band.low, least), likely: Math.max(band.likely, least), high: Math.max(band.high, least) };
}
