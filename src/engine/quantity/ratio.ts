// Reads a dilution as growers write it. A colon hides two meanings: "1:10" is one part in ten of mixture on
// a printed page, and one part to ten of water to many who type it; 10 % apart at 1:10, 2-fold at 1:1.
// A typed colon is therefore asked, with both volumes shown, and the choice is kept as volumes.

import { plainText, readFigure } from './number.ts';

/** "in" = parts of the whole mixture; "to" = parts of water added to one part of concentrate. */
export type RatioReading = 'in' | 'to';

/** A dilution that says what it means. */
export interface Ratio {
  readonly n: number;
  readonly reading: RatioReading;
}

export type RatioProblemCode = 'empty' | 'not-a-ratio' | 'not-positive' | 'ambiguous-mark' | 'reversed' | 'too-large';

export type ParsedRatio =
  | { readonly ok: true; readonly clear: true; readonly ratio: Ratio; readonly asTyped: string }
  /** Two meanings: one of the two must be chosen. */
  | { readonly ok: true; readonly clear: false; readonly readings: readonly [Ratio, Ratio]; readonly asTyped: string }
  | {
      readonly ok: false;
      readonly problem: {
        readonly value: string;
        readonly message: RatioProblemCode;
        readonly allowed: { readonly least: number; readonly most: number };
      };
    };

/** Weakest and strongest dilution believed: 1 in 1 is undiluted. @our-caution */
export const BELIEVED_N = { least: 1, most: 10_000 } as const;

const FIGURE = String.raw`(\d+(?:[.,]\d+)?)`;
const FORMS: readonly (readonly [RegExp, RatioReading | 'either'])[] = [
  [new RegExp(`^${FIGURE} *in *${FIGURE}$`, 'i'), 'in'],
  [new RegExp(`^${FIGURE} *to *${FIGURE}$`, 'i'), 'to'],
  [new RegExp(`^${FIGURE} */ *${FIGURE}$`), 'in'],
  [new RegExp(`^${FIGURE} *: *${FIGURE}$`), 'either'],
];
const PERCENT = new RegExp(`^${FIGURE} *(?:%|per ?cent)$`, 'i');

/**
 * A dilution as typed or printed. "1 in 200", "1/200" and "0.5 %" are shares of the mixture; "1 to 40" is
 * parts to water; a bare colon is one part in n when printed and has to be asked when typed.
 * @range n 1 to 10,000
 * @arithmetic n = second / first, or 100 / percent
 */
export function parseRatio(typed: string, from: { readonly printed: boolean } = { printed: false }): ParsedRatio {
  const text = plainText(typed).replaceAll(/ +/g, ' ');
  const fail = (message: RatioProblemCode): ParsedRatio => ({
    ok: false,
    problem: { value: typed, message, allowed: BELIEVED_N },
  });
  if (text === '') return fail('empty');
  if (text.startsWith('-')) return fail('not-positive');
  const percent = PERCENT.exec(text);
  if (percent) return read(percent, ([share = 0]) => 100 / share, 'in');
  for (const [form, reading] of FORMS) {
    const found = form.exec(text);
    if (found) return read(found, ([first = 0, second = 0]) => second / first, reading);
  }
  return fail('not-a-ratio');

  function read(
    [, ...written]: readonly string[],
    nOf: (values: readonly number[]) => number,
    reading: RatioReading | 'either',
  ): ParsedRatio {
    const figures = written.map((one) => readFigure(one));
    if (figures.some((one) => !one.ok && one.why === 'ambiguous-mark')) return fail('ambiguous-mark');
    return answer(nOf(figures.map((one) => (one.ok ? one.value : Number.NaN))), reading);
  }

  function answer(n: number, reading: RatioReading | 'either'): ParsedRatio {
    if (!(n > 0) || !Number.isFinite(n)) return fail('not-positive');
    if (n < BELIEVED_N.least) return fail('reversed');
    if (n > BELIEVED_N.most) return fail('too-large');
    if (reading !== 'either') return { ok: true, clear: true, ratio: { n, reading }, asTyped: typed };
    if (from.printed) return { ok: true, clear: true, ratio: { n, reading: 'in' }, asTyped: typed };
    const readings = [
      { n, reading: 'in' },
      { n, reading: 'to' },
    ] as const;
    return { ok: true, clear: false, readings, asTyped: typed };
  }
}

/**
 * Concentrate's share of the mixture: 1/n for "in", 1/(n + 1) for "to".
 * @returns fraction
 * @arithmetic
 */
export function concentrateFraction(ratio: Ratio): number {
  return ratio.reading === 'in' ? 1 / ratio.n : 1 / (ratio.n + 1);
}

/**
 * A dilution as two volumes, the form in which a choice is kept.
 * @returns mL
 * @arithmetic share of the mixture and the rest
 */
export function ratioVolumes(wanted: { readonly ratio: Ratio; readonly mixtureL: number }): {
  readonly concentrateMl: number;
  readonly waterMl: number;
} {
  const mixtureMl = wanted.mixtureL * 1000;
  const concentrateMl = mixtureMl * concentrateFraction(wanted.ratio);
  return { concentrateMl, waterMl: mixtureMl - concentrateMl };
}
