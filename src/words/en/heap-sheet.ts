// The sheet of a heap: names of its rows, what to do next, and the labels of its two forms. What a mix and a log come
// to is said in heap.ts.

import type { Range } from '#engine/quantity/range.ts';
import { band, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';

/** What a row is called that the record names only by its batch, or not at all. */
export const heapNames = {
  unnamed: 'a row without a name',
  solids: (peg: PegName) => `strained solids of peg ${peg}`,
  batch: (peg: PegName) => `peg ${peg}, tipped whole`,
} as const;

export type NextAct = 'turn' | 'browns' | 'greens' | 'water' | 'probe' | 'cure' | 'leave';

const NEXT: Readonly<Record<NextAct, string>> = {
  turn: 'Turn it next, outside in.',
  browns: 'Next: mix in something dry and brown, such as leaves, straw or cardboard.',
  greens: 'Next: mix in something green, such as clippings or scraps.',
  water: 'Water it next, layer by layer.',
  probe: 'Next: put the probe into the core and write down what it shows.',
  cure: 'Leave it to cure; a cress test tells when it is mild enough for seeds.',
  leave: 'Nothing to do today.',
};

/** The next act in one sentence. */
export function sayNext(act: NextAct): string {
  return NEXT[act];
}

/** Headings and lines of the sheet. */
export const heapSheet = {
  empty:
    'Nothing went onto a heap yet. What goes on is written down here, by barrows, buckets or weight, one row each.',
  choose: 'Which heap',
  ageSaid: (days: number) => (days === 1 ? '1 day old' : `${days} days old`),
  inIt: 'What is in it',
  rowHeads: ['Row', 'As told', 'Mass, kg', 'Loose, L'] as const,
  asTold: (typed: readonly string[]) => typed.join(', '),
  notCounted: (names: readonly string[]) =>
    `Not counted, since nobody knows what it holds or weighs: ${names.join(', ')}.`,
  mixSaid: (cn: Range | undefined, moisturePercent: Range | undefined) =>
    cn === undefined || moisturePercent === undefined
      ? 'C:N and water of what went in are not known.'
      : `As it went in: C:N ${band(cn, '', 0)}, water ${band(moisturePercent, '%', 0)}.`,
  sideAlternative: (heap: string) => `The heap ${heap} from the side, a layer for each row, as thick as its volume.`,
  heatHeading: 'Core temperature',
  heatNone: 'No temperature was read yet. A probe of half a metre, in the middle, tells most.',
  curveAlternative: (heap: string, count: number) =>
    `Core temperature of ${heap} by day, ${count} readings; the table below has them.`,
  works: 'a heap works',
  windows: 'Outlined: the days and temperatures that count best for a published rule.',
  ruleSpan: 'rules on heat count from here',
  degrees: (temperatureC: number) => withUnit(temperatureC, '°C', 0),
  dayTick: (day: number) => `day ${day}`,
  curveHeads: ['Date', 'Day', 'Core'] as const,
  turnedOn: (days: readonly number[]) => (days.length === 0 ? 'Not turned yet.' : `Turned on day ${days.join(', ')}.`),
  coolingSaid: (tauDays: number, readingsCount: number) =>
    `Cooling, fitted to ${readingsCount} readings of this heap: the gap to the air shrinks to about a third in ${withUnit(tauDays, 'days', 1)}.`,
  toCress: 'Cress test of its compost',
  rulesHeading: 'What the published rules on heat say',
  lookSummary: 'Write down a look',
  feedSummary: 'Put something on',
  addRow: 'Another row',
  write: 'Write it down',
  fields: {
    heap: 'Which heap',
    what: 'What',
    name: 'Its name, if it is not in the list',
    amount: 'How much (2 barrows, 3 buckets, 4.5 kg, 20 L)',
    barrow: 'One barrow holds, L',
    bucket: 'One bucket holds, L',
    water: 'Water poured on, such as 10 L',
    temperatureC: 'Core, °C',
    moisture: 'A squeezed handful',
    smell: 'Smell',
    turned: 'Turned now?',
    note: 'Note',
  } as Readonly<Record<string, string>>,
  notListed: 'not in the list',
  lotsHere: 'Scraps that lie here',
  solidsHere: 'Strained solids',
  listed: 'Materials of the list',
  offer: (name: string, leftKg: number) => `${name}, ${withUnit(leftKg, 'kg')} left`,
  usualHeap: 'the heap',
} as const;

/** Labels of the two forms. */
export const heapForms = {
  noRow: 'Say what went in, and how much.',
  noAmount: 'Say how much: kilograms, litres, barrows or buckets.',
  noLitres: (container: string) => `Say how many litres one ${container} holds.`,
  noWhat: 'Say what it is: a lot, a material of the list, or a name.',
  notOffered:
    'That may not go on a heap now: it is used up, set aside, or kept out. Choose again; the sheet of scraps says why.',
  barrow: 'barrow',
  bucket: 'bucket',
  moisture: { dry: 'dry', right: 'holds together', wet: 'drips' },
  smell: {
    earthy: 'earthy',
    sour: 'sour',
    ammonia: 'ammonia',
    egg: 'egg',
    sewage: 'sewage',
    'cannot-smell': 'cannot smell',
  },
} as const;
