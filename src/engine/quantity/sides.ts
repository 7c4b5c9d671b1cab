// An area told by its two sides ("1.2 × 2.5 m", "10 ft x 4 ft", "1,2 m auf 2,5 m"): each side a figure with a unit of length; where one
// side has none it has that of the other. Anything else is no pair of sides and is left to parse.ts.

import { type NumberStyle, readFigure, type TwoReadings } from './number.ts';
import { FOOT_M } from './units.ts';

/** Metres in one of each. @source nist-sp811-2008 Appendix B.8 */
const LENGTH_M: Readonly<Record<string, number>> = {
  ...Object.fromEntries('m metre metres meter meters'.split(' ').map((name) => [name, 1])),
  ...Object.fromEntries('cm centimetre centimetres centimeter centimeters'.split(' ').map((name) => [name, 0.01])),
  ...Object.fromEntries("ft foot feet ' ′".split(' ').map((name) => [name, FOOT_M])),
  ...Object.fromEntries('in inch inches " ″'.split(' ').map((name) => [name, FOOT_M / 12])),
  ...Object.fromEntries('yd yard yards'.split(' ').map((name) => [name, 3 * FOOT_M])),
};
const SYMBOLS = new Map([
  [1, 'm'],
  [0.01, 'cm'],
  [FOOT_M, 'ft'],
  [FOOT_M / 12, 'in'],
  [3 * FOOT_M, 'yd'],
]);
const TIMES = /\s*(?:[×x*]|\bby\b|\bmal\b|\bauf\b)\s*/i;

/** Two sides as read; the area in m². */
export interface Sides {
  readonly areaM2: number;
  readonly reading: string;
}

/**
 * The area of a text that gives two sides; undefined where it gives none. A figure that two styles read differently is told as
 * both readings.
 * @returns m²
 * @arithmetic product of the sides
 */
export function readSides(
  text: string,
  style: NumberStyle | undefined,
): Sides | { readonly ask: TwoReadings; readonly behind: string } | undefined {
  const [first, second, ...more] = text.split(TIMES);
  if (first === undefined || second === undefined || more.length > 0) return undefined;
  const sides = [readFigure(first, style), readFigure(second, style)];
  const units = sides.map((side) => ('rest' in side ? side.rest.trim().replace(/\.$/, '').toLowerCase() : undefined));
  const [near = '', far = ''] = units;
  const factors = [LENGTH_M[near || far], LENGTH_M[far || near]];
  let areaM2 = 1;
  const readings: string[] = [];
  for (const [i, side] of sides.entries()) {
    const factor = factors[i];
    if (!('rest' in side) || factor === undefined) return undefined;
    if (!side.ok) return { ask: side.readings, behind: units[i] || near || far };
    areaM2 *= side.value * factor;
    readings.push(`${Number(side.value.toPrecision(6))} ${SYMBOLS.get(factor) ?? ''}`);
  }
  return { areaM2, reading: readings.join(' × ') };
}
