// Values and names that programs stumble over.

import type { Chance } from './chance.ts';
import { Members, type Node, Raw } from './node.ts';

const NUMBERS: readonly Node[] = [
  0,
  -0,
  1,
  -1,
  0.5,
  5e-324,
  1e-300,
  2.3e-308,
  1e-12,
  1e-6,
  0.001,
  1e6,
  1e15,
  2 ** 53,
  2 ** 53 + 2,
  1e300,
  1e308,
  -1e308,
  1.7976931348623157e308,
  -5e-324,
  0.1 + 0.2,
  1 / 3,
  1e21,
  123456789.12345679,
  new Raw('1e400'),
  new Raw('-1e400'),
  new Raw('1E-400'),
  new Raw('0.000000000000000000000000000000000001'),
  new Raw(`${'9'.repeat(400)}`),
];
export const NAMES = [
  '__proto__',
  'constructor',
  'prototype',
  'hasOwnProperty',
  'toString',
  'valueOf',
  'toJSON',
  'length',
  'then',
  'size',
  'name',
  '',
  ' ',
  '0',
  '-1',
  'null',
  '.',
  'a.b',
  'water.ph',
  'vessel.volumeL',
  'plants[0].massKg',
  'beds[0]',
  'batch.state',
  '[0]',
  '\u0000',
  '\u0007',
  '\u001b[2J',
  '\u009b31m',
  '\u202e',
  '\u2066x\u2069',
  '\u200b',
  '\ufeff',
  '\u2028',
  '\ud800',
  '\udfff\ud800',
  'é',
  'e\u0301',
  '🥬',
  '"',
  '\\',
  '<b>',
  '$x',
  '%s',
  '; allowed: ',
  ': ',
  '\n',
  '$&',
] as const;
const WORDS = [
  'NaN',
  'Infinity',
  '-Infinity',
  'undefined',
  'null',
  'true',
  '1',
  '1,5',
  '1e3',
  '12 kg',
  '0x10',
  '١٢',
  '12 °C',
  '2026-02-30',
  '2026-06-31',
  '0000-01-01',
  '9999-12-31',
  '2026-06-03T24:00',
  '-000001-01-01',
  '1:200',
  'deg',
  '°',
  'lettuce',
  'kale',
  'white-sugar',
  'grass-clippings-fresh',
  'memory',
  'practice',
  'our-caution',
  'note',
  'pnw-636',
  'lost',
  'ready',
  'tight',
  'raw',
] as const;
const WIDE = 100_000;
const HUGE = 64_000;

/** A name of a field, or a text. */
export function nastyText(chance: Chance): string {
  return chance.oneIn(400)
    ? chance.pick(['x', '\u202e', '\ud83d\ude00', '\\', '"']).repeat(1000 * chance.below(50))
    : chance.pick(chance.oneIn(2) ? NAMES : WORDS);
}

/** Any number, far out or near an end. */
export function nastyNumber(chance: Chance): Node {
  if (!chance.oneIn(3)) return chance.pick(NUMBERS);
  const size = 10 ** (chance.below(640) - 320);
  return (chance.oneIn(4) ? -1 : 1) * chance.uniform() * (chance.oneIn(2) ? size : 10 ** (chance.below(12) - 6));
}

/** Anything that JSON can say. */
export function nasty(chance: Chance, depth = 0): Node {
  const kind = chance.below(100);
  if (kind < 32) return nastyNumber(chance);
  if (kind < 56) return nastyText(chance);
  if (kind < 66) return chance.pick<Node>([null, true, false]);
  if (kind < 76) return band(chance);
  if (kind < 82) return new Members([]);
  if (kind < 86) return [];
  if (depth > 3) return chance.below(9);
  if (kind < 93)
    return new Members(
      Array.from({ length: 1 + chance.below(3) }, () => [nastyText(chance), nasty(chance, depth + 1)]),
    );
  if (kind < 99) return Array.from({ length: 1 + chance.below(4) }, () => nasty(chance, depth + 1));
  return vast(chance);
}

/** A band that may be out of order, not whole, or wider than any number. */
function band(chance: Chance): Node {
  const ends = ['low', 'likely', 'high'].filter(() => !chance.oneIn(12));
  return new Members(ends.map((end) => [end, chance.oneIn(3) ? nastyNumber(chance) : chance.below(200) / 10]));
}

/** Deep, long or wide: seldom the widest, so that many inputs can be tried. */
function vast(chance: Chance): Node {
  const deep = chance.pick([20, 150, 199, 200, 300, 3000]);
  switch (chance.below(6)) {
    case 0:
      return new Raw('['.repeat(deep) + ']'.repeat(deep));
    case 1:
      return new Raw('{"a":'.repeat(deep) + 1 + '}'.repeat(deep));
    case 2:
      return new Raw(`[${'0,'.repeat(chance.oneIn(20) ? WIDE : 500)}0]`);
    case 3:
      return manyFields(chance.oneIn(20) ? HUGE : 300);
    case 4:
      return 'ab'.repeat(chance.oneIn(20) ? WIDE : 2000);
    default:
      return Array.from({ length: 60 }, () => new Members([]));
  }
}

/** An object with so many fields that no word has. */
export function manyFields(count: number): Members {
  return new Members(Array.from({ length: count }, (_, i) => [`k${i}`, i]));
}
