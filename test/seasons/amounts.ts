// Amounts as growers write them, drawn at random: a figure in a unit of their country becomes a text, and beside it stands what
// it is in SI. The factors are typed from the definitions, not taken from the engine: what a form reads is held against them.

import fc from 'fast-check';

export type Draw = fc.GeneratorValue;

/** How a grower writes: units, mark before decimals, language. */
export interface Hand {
  readonly units: 'metric' | 'us' | 'imperial';
  readonly decimals: 'point' | 'comma';
  readonly language: 'en' | 'de';
}

/** A text and what it means in kg, L, m² or °C. */
export interface Amount {
  readonly text: string;
  readonly si: number;
}

const LB_KG = 0.453_592_37;
const GALLON_L = { us: 3.785_411_784, imperial: 4.546_09 } as const;
const FT2_M2 = 0.092_903_04;

export function between(draw: Draw, least: number, most: number): number {
  return draw(fc.integer, { min: least, max: most });
}

export function pick<T>(draw: Draw, ...of: readonly T[]): T {
  return of[between(draw, 0, of.length - 1)] as T;
}

/** Three of four times. */
export function mostly(draw: Draw): boolean {
  return between(draw, 1, 4) > 1;
}

/** A figure with so many decimals in the grower's own style; grouped where thousands may be. */
function written(draw: Draw, value: number, decimals: number, { decimals: style }: Hand): string {
  const [mark, group] = style === 'comma' ? [',', '.'] : ['.', ','];
  const [whole = '', part] = value.toFixed(decimals).split('.');
  const grouped = whole.length > 3 && mostly(draw) ? `${whole.slice(0, -3)}${group}${whole.slice(-3)}` : whole;
  return part === undefined ? grouped : `${grouped}${mark}${part}`;
}

const FRACTIONS: readonly (readonly [sign: string, plain: string, part: number])[] = [
  ['½', '1/2', 0.5],
  ['¼', '1/4', 0.25],
  ['¾', '3/4', 0.75],
];

/** So much of a unit, near a value of it, as a decimal, a whole figure or a fraction. */
function figureOf(
  draw: Draw,
  { near, least, most }: { readonly near: number; readonly least: number; readonly most: number },
  hand: Hand,
): { readonly text: string; readonly value: number } {
  const form = pick(draw, 'decimal', 'decimal', 'fine', 'fraction');
  const whole = Math.floor(near);
  const [sign, plain, part] = pick(draw, ...FRACTIONS);
  if (form === 'fraction' && near < 20 && whole + part >= least && whole + part <= most) {
    if (whole === 0) return { text: pick(draw, sign, plain), value: part };
    return { text: pick(draw, `${whole}${sign}`, `${whole} ${sign}`, `${whole} ${plain}`), value: whole + part };
  }
  const places = near >= 100 ? 0 : near >= 10 ? 1 : form === 'fine' ? 3 : 2;
  const value = Math.max(10 ** -places, Number(near.toFixed(places)));
  return { text: written(draw, value, places, hand), value };
}

const space = (draw: Draw) => pick(draw, ' ', ' ', '', '\u00a0');

function inUnits(
  draw: Draw,
  [leastSi, mostSi]: readonly [number, number],
  hand: Hand,
  units: readonly (readonly [name: string, factor: number])[],
): Amount {
  const nearSi = leastSi + ((mostSi - leastSi) * between(draw, 0, 1000)) / 1000;
  const fitting = units.filter(([, factor]) => nearSi / factor >= 0.2 && nearSi / factor < 9000);
  const [name, factor] = pick(draw, ...(fitting.length > 0 ? fitting : units.slice(-1)));
  const range = { near: nearSi / factor, least: leastSi / factor, most: mostSi / factor };
  const { text, value } = figureOf(draw, range, hand);
  return { text: `${text}${space(draw)}${name}`, si: value * factor };
}

/** A mass between two, kg. */
export function mass(draw: Draw, hand: Hand, leastKg: number, mostKg: number): Amount {
  if (hand.units === 'metric') {
    return inUnits(draw, [leastKg, mostKg], hand, [
      ['kg', 1],
      ['g', 0.001],
    ]);
  }
  const [least, most] = [Math.ceil((leastKg / LB_KG) * 16), Math.floor((mostKg / LB_KG) * 16)];
  const inOunces = between(draw, least, Math.max(least, most));
  if (least <= most && inOunces > 16 && inOunces % 16 > 0 && pick(draw, true, false)) {
    return { text: `${Math.floor(inOunces / 16)} lb ${inOunces % 16} oz`, si: (inOunces / 16) * LB_KG };
  }
  return inUnits(draw, [leastKg, mostKg], hand, [
    ['lb', LB_KG],
    ['oz', LB_KG / 16],
  ]);
}

/** A volume between two, L; a gallon or a pint without its country, as whoever lives there writes it. */
export function volume(draw: Draw, hand: Hand, leastL: number, mostL: number): Amount {
  if (hand.units === 'metric') {
    return inUnits(draw, [leastL, mostL], hand, [
      ['L', 1],
      ['l', 1],
      ['mL', 0.001],
    ]);
  }
  const gallonL = GALLON_L[hand.units];
  return inUnits(draw, [leastL, mostL], hand, [
    ['gal', gallonL],
    ['pt', gallonL / 8],
    ['fl oz', gallonL / (hand.units === 'us' ? 128 : 160)],
  ]);
}

/** An area between two, m². */
export function area(draw: Draw, hand: Hand, leastM2: number, mostM2: number): Amount {
  return inUnits(draw, [leastM2, mostM2], hand, hand.units === 'metric' ? [['m²', 1]] : [['sq ft', FT2_M2]]);
}

/** A temperature, °C. */
export function warmth(draw: Draw, hand: Hand, leastC: number, mostC: number): Amount {
  const celsius = between(draw, leastC, mostC);
  if (hand.units !== 'us') return { text: `${celsius} °C`, si: celsius };
  const fahrenheit = Math.round(celsius * 1.8 + 32);
  return { text: `${fahrenheit} °F`, si: (fahrenheit - 32) / 1.8 };
}

/** A bare figure as written, such as a pH. */
export function figure(draw: Draw, hand: Hand, value: number, decimals: number): Amount {
  return { text: written(draw, value, decimals, hand), si: Number(value.toFixed(decimals)) };
}
