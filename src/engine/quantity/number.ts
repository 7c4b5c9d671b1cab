// Reads the figure at the front of what a grower typed: 2.4, 1,5, 1½, 1 1/2, 3/4, 1 250. Two styles read a single mark
// before exactly three digits ("1,250", "1.250") a thousandfold apart: unless the style was decided, both readings are
// told and neither is taken.

/** Which mark stands before the decimals: 1.5 or 1,5. */
export type NumberStyle = 'point' | 'comma';
export const NUMBER_STYLES: readonly NumberStyle[] = ['point', 'comma'];

/** A figure that two styles read differently. */
export interface TwoReadings {
  readonly written: string;
  readonly values: Readonly<Record<NumberStyle, number>>;
}

/** The figure read and what follows it, or why none could be read. */
export type Figure =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly why: 'not-a-number' | 'unclear-number' }
  | { readonly ok: false; readonly why: 'ambiguous-mark'; readonly readings: TwoReadings; readonly rest: string };

const VULGAR: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Spaces, minus signs and fraction signs in one form, so that what follows sees plain characters. @arithmetic */
export function plainText(typed: string): string {
  return typed
    .replaceAll(/[\u00a0\u2007\u2009\u202f]/g, ' ')
    .replaceAll(/[−–‐‑]/g, '-')
    .replaceAll('⁄', '/')
    .replaceAll('º', '°')
    .replaceAll(/[¼½¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
    .trim();
}

const MIXED = /^(\d+)(?: +| *- *)(\d+) *\/ *(\d+)(?![\d.,])/;
const FRACTION = /^(\d+) *\/ *(\d+)(?![\d.,/])/;
const GROUPED = /^[1-9]\d{0,2}(?: \d{3})+(?!\d)(?:[.,]\d+)?/;
const DECIMAL = /^\d[\d.,]*|^\.\d+/;

/**
 * The figure at the front of plain text; the text must not begin with a sign.
 * @param style the grower's own, where it was decided; it settles only what two styles read differently
 * @arithmetic
 */
export function readFigure(text: string, style?: NumberStyle): Figure {
  const mixed = MIXED.exec(text);
  if (mixed) {
    const [all, whole, top, bottom] = mixed;
    const part = Number(top) / Number(bottom);
    if (!(part > 0 && part < 1)) return { ok: false, why: 'unclear-number' };
    return { ok: true, value: Number(whole) + part, rest: text.slice(all.length) };
  }
  const fraction = FRACTION.exec(text);
  if (fraction) {
    const [all, top, bottom] = fraction;
    if (!(Number(bottom) > 0)) return { ok: false, why: 'unclear-number' };
    return { ok: true, value: Number(top) / Number(bottom), rest: text.slice(all.length) };
  }
  const found = (GROUPED.exec(text) ?? DECIMAL.exec(text))?.[0];
  if (found === undefined) return { ok: false, why: 'not-a-number' };
  const written = found.replace(/[.,]+$/, '');
  const rest = text.slice(written.length);
  if (/^ +\d/.test(rest) && (written.includes(' ') || (/^ +\d{3}(?!\d)/.test(rest) && !/[.,]/.test(written))))
    return { ok: false, why: 'unclear-number' };
  if (/^ *[/:%]/.test(rest) || /^ *- *\d/.test(rest) || /^e[+-]?\d/i.test(rest))
    return { ok: false, why: 'unclear-number' };
  const both = twoReadings(written);
  if (both === undefined) {
    const value = decimalValue(written.replaceAll(' ', ''));
    return value === undefined ? { ok: false, why: 'unclear-number' } : { ok: true, value, rest };
  }
  if (style === undefined) return { ok: false, why: 'ambiguous-mark', readings: both, rest };
  return { ok: true, value: both.values[style], rest };
}

/**
 * A text that is one figure and nothing else, with or without a sign. Of two readings the one within the limits is taken where
 * the other is impossible; where both could be, `undefined`, as where there is no figure.
 * @arithmetic none
 */
export function figureAlone(
  typed: string,
  {
    least = Number.NEGATIVE_INFINITY,
    most = Number.POSITIVE_INFINITY,
    style,
  }: {
    readonly least?: number;
    readonly most?: number;
    readonly style?: NumberStyle | undefined;
  } = {},
): number | undefined {
  const text = plainText(typed);
  const sign = text.startsWith('-') ? -1 : 1;
  const read = readFigure(text.replace(/^-/, ''), style);
  if (!('rest' in read) || read.rest.trim() !== '') return undefined;
  const values = read.ok ? [read.value] : Object.values(read.readings.values);
  const within = values.map((value) => sign * value).filter((value) => value >= least && value <= most);
  return within.length === 1 ? within[0] : undefined;
}

/** "1,250" and "1.250": one mark, exactly three digits after it, and a first digit that groups of thousands may have. */
function twoReadings(written: string): TwoReadings | undefined {
  const [, whole = '', mark, three = ''] = /^([1-9]\d{0,2})([.,])(\d{3})$/.exec(written) ?? [];
  if (mark === undefined) return undefined;
  const [decimal, thousands] = [Number(`${whole}.${three}`), Number(whole + three)];
  const values = mark === '.' ? { point: decimal, comma: thousands } : { point: thousands, comma: decimal };
  return { written, values };
}

/** What every style reads alike. */
function decimalValue(written: string): number | undefined {
  if (/^\d+$/.test(written) || /^\d*[.,]\d+$/.test(written)) return Number(written.replace(',', '.'));
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$/.test(written) || /^[1-9]\d{0,2}(,\d{3}){2,}$/.test(written))
    return Number(written.replaceAll(',', ''));
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(written) || /^[1-9]\d{0,2}(\.\d{3}){2,}$/.test(written))
    return Number(written.replaceAll('.', '').replace(',', '.'));
  return undefined;
}

/** A figure as a text that every style reads alike: 1250, 1.25, 12.3450. @arithmetic one zero more where three digits would follow the mark */
export function plainFigure(value: number): string {
  const text = String(value);
  return twoReadings(text) === undefined ? text : `${text}0`;
}

/** A text with every figure that two styles read differently written as one style reads it. @arithmetic none */
export function writtenPlainly(typed: string, style: NumberStyle): string {
  return typed.replaceAll(/(?<![\d.,])[1-9]\d{0,2}[.,]\d{3}(?![\d.,]*\d)/g, (written) =>
    plainFigure(twoReadings(written)?.values[style] ?? Number.NaN),
  );
}
