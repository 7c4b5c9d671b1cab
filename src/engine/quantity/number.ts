// Reads the figure at the front of what a grower typed: 2.4, 1,5, 1½, 1 1/2, 3/4. Where a mark can be read
// in two ways ("1,500") it says so and reads nothing; guessing would be wrong by a factor of a thousand.

/** The figure read and what follows it, or why none could be read. */
export type Figure =
  | { readonly ok: true; readonly value: number; readonly rest: string }
  | { readonly ok: false; readonly why: 'not-a-number' | 'ambiguous-comma' | 'unclear-number' };

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
const DECIMAL = /^\d[\d.,]*|^\.\d+/;

/** The figure at the front of plain text; the text must not begin with a sign. @arithmetic */
export function readFigure(text: string): Figure {
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
  const found = DECIMAL.exec(text)?.[0];
  if (found === undefined) return { ok: false, why: 'not-a-number' };
  const written = found.replace(/[.,]+$/, '');
  const rest = text.slice(written.length);
  if (/^ +\d{3}(?!\d)/.test(rest) && !/[.,]/.test(written)) return { ok: false, why: 'unclear-number' };
  if (/^ *[/:%]/.test(rest) || /^ *- *\d/.test(rest) || /^e[+-]?\d/i.test(rest))
    return { ok: false, why: 'unclear-number' };
  const value = decimalValue(written);
  return typeof value === 'number' ? { ok: true, value, rest } : { ok: false, why: value };
}

function decimalValue(written: string): number | 'ambiguous-comma' | 'unclear-number' {
  if (/^\d+$/.test(written) || /^\d*\.\d+$/.test(written)) return Number(written);
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) return 'ambiguous-comma';
  if (/^\d+,\d+$/.test(written)) return Number(written.replace(',', '.'));
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$/.test(written) || /^[1-9]\d{0,2}(,\d{3}){2,}$/.test(written))
    return Number(written.replaceAll(',', ''));
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(written)) return Number(written.replaceAll('.', '').replace(',', '.'));
  return 'unclear-number';
}
