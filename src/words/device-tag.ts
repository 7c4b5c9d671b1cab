// A short name for a phone, made of its id: two plain words that a person can read out, so that files of two phones are
// told apart. Two phones of a plot seldom share one (1 pair in 1,024); nothing but names rests on it.

const FIRST = [
  ...[
    'broad',
    'brown',
    'calm',
    'cold',
    'damp',
    'dark',
    'deep',
    'dry',
    'early',
    'even',
    'fresh',
    'green',
    'grey',
    'high',
  ],
  ...['late', 'light', 'long', 'low', 'mild', 'new', 'old', 'pale', 'plain', 'quiet', 'red', 'round', 'short', 'small'],
  ...['soft', 'tall', 'warm', 'white'],
] as const;
const SECOND = [
  ...[
    'bean',
    'beet',
    'bench',
    'bloom',
    'bough',
    'bucket',
    'clod',
    'clover',
    'cress',
    'dibber',
    'fern',
    'fork',
    'furrow',
  ],
  ...[
    'gate',
    'hedge',
    'hoe',
    'hop',
    'leaf',
    'marl',
    'moss',
    'nettle',
    'path',
    'peg',
    'pot',
    'rake',
    'rill',
    'root',
    'seed',
  ],
  ...['sieve', 'spade', 'trowel', 'twine'],
] as const;

/** "early-fork": the same for one device, on every phone. */
export function deviceTag(device: string): string {
  let mixed = 0x811c9dc5;
  for (let i = 0; i < device.length; i++) mixed = Math.imul(mixed ^ device.charCodeAt(i), 0x01000193);
  const bits = (mixed ^ (mixed >>> 15)) >>> 0;
  return `${FIRST[bits % FIRST.length]}-${SECOND[(bits >>> 8) % SECOND.length]}`;
}
