// The line from scraps to beds in plain words: what stands at each stretch, what wants a hand, what hangs below. Figures
// come from the task; here they get their units and their sentence. Nothing is computed.

import { formatAmount, type Manner } from '#engine/quantity/format.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Ratio } from '#engine/quantity/ratio.ts';
import type { State } from '#engine/souring/reason.ts';
import { counted, figure } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';

const NBSP = '\u00a0';

/** One stretch as it stands on the sheet: name, largest figure, notes beneath, and the whole of it for reading aloud. */
export interface Said {
  readonly name: string;
  readonly figure: string;
  readonly notes: readonly string[];
  /** Wants a hand: stands in the marking colour with its triangle. */
  readonly hand?: string | undefined;
  readonly label: string;
}

/** Nothing is said as the large unit: "0 kg", never "0 mg". */
const kg = (massKg: number, manner: Manner) =>
  massKg > 0
    ? formatAmount({ value: massKg, dimension: 'mass' }, manner).text
    : manner === 'metric'
      ? `0${NBSP}kg`
      : `0${NBSP}lb`;
const litres = (volumeL: number, manner: Manner) => formatAmount({ value: volumeL, dimension: 'volume' }, manner).text;
const area = (areaM2: number, manner: Manner) => formatAmount({ value: areaM2, dimension: 'area' }, manner).text;

/** A figure too long to stand large keeps its number; a unit with its country goes beneath. */
function largeAndUnit(amount: string): readonly [large: string, unit: string | undefined] {
  const [, number, unit] = /^([\d.,]+)\u00a0((?:US|imperial)\u00a0.*|.*\u00a0(?:US|imperial))$/.exec(amount) ?? [];
  return number === undefined ? [amount, undefined] : [number, unit];
}

function said(
  name: string,
  amount: string,
  notes: readonly (string | undefined)[],
  rest: { hand?: string | undefined; to: string },
): Said {
  const kept = notes.filter((note) => note !== undefined);
  const label = [`${name}: ${amount}`, ...kept, ...(rest.hand === undefined ? [] : [rest.hand]), rest.to].join('. ');
  const [large, unit] = largeAndUnit(amount);
  const beneath = unit === undefined ? kept : [unit, ...kept];
  return { name, figure: large, notes: beneath, hand: rest.hand, label: `${label}.` };
}

/** The stock of scraps. */
export function scrapsSaid(
  scraps: {
    readonly inKg: number;
    readonly asideKg: number;
    readonly asideDays: number | undefined;
    readonly heapOnlyKg: number;
  },
  manner: Manner,
): Said {
  const days = scraps.asideDays === undefined ? '' : `, ${counted(scraps.asideDays, 'day')}`;
  return said(
    'Scraps',
    kg(scraps.inKg, manner),
    [
      scraps.asideKg > 0 ? `${kg(scraps.asideKg, manner)} set aside${days}` : undefined,
      scraps.heapOnlyKg > 0 ? `${kg(scraps.heapOnlyKg, manner)} for the heap alone` : undefined,
    ],
    { to: 'Weigh in' },
  );
}

/** The pails, when none stands. */
export const pailName = 'Pail';
export const noPeg: Said = {
  name: pailName,
  figure: '',
  notes: ['no peg stands'],
  label: 'Pail: no peg stands. Fill one.',
};

export interface PegSaid {
  readonly peg: string;
  readonly word: string;
  readonly note: string;
  readonly hand: string | undefined;
  readonly label: string;
}

/** One peg: its number, the word for it, its day, when to look. */
export function pegSaid(
  peg: {
    readonly peg: PegName;
    /** What is drawn on the stake, where it is said with more. */
    readonly number?: number;
    readonly day: number;
    readonly state: State;
    readonly held: boolean;
    readonly nextLookOn: string | undefined;
    readonly hand: 'lost' | 'too-warm' | 'ask-again' | 'look-due' | undefined;
  },
  today: string,
): PegSaid {
  const word = peg.state;
  const look = peg.nextLookOn === undefined ? '' : `, look ${briefDay(peg.nextLookOn, today)}`;
  const hand = peg.hand === undefined ? undefined : pegHands[peg.hand];
  const day = `${peg.held ? 'held, ' : ''}day${NBSP}${peg.day}`;
  const told = hand === undefined ? day + look : day;
  const note = typeof peg.peg === 'string' ? `${peg.peg}, ${told}` : told;
  return {
    peg: String(peg.number ?? peg.peg),
    word,
    note,
    hand,
    label: `Peg ${peg.peg}: ${word}, ${told}${hand === undefined ? '' : `, ${hand}`}.`,
  };
}

const pegHands = {
  lost: 'pour nothing',
  'too-warm': 'too warm',
  'ask-again': 'look again',
  'look-due': 'look today',
} as const;

/** "today", "tomorrow", "Thu" within a week, else the date. */
function briefDay(on: string, today: string): string {
  const days = Math.round((Date.parse(on.slice(0, 10)) - Date.parse(today.slice(0, 10))) / 86_400_000);
  if (days === 0) return 'today';
  if (days === 1) return 'tomorrow';
  const date = sayDate(on, today);
  return days > 0 && days < 7 ? (date.split(' ')[0] ?? date) : date.replace(' ', NBSP);
}

/** What stands in bottles. */
export function bottlesSaid(
  bottles: {
    readonly leftL: Range;
    readonly groups: readonly {
      readonly peg: PegName;
      readonly useFirstOn: string | undefined;
      readonly past: boolean;
      readonly ventDue: boolean;
    }[];
  },
  { manner, today }: { readonly manner: Manner; readonly today: string },
): Said {
  const first = bottles.groups[0];
  const more = bottles.groups.length - 1;
  const date = first?.useFirstOn;
  const until = date === undefined ? 'no feed to keep' : `use first by ${sayDate(date, today).replaceAll(' ', NBSP)}`;
  const hand = bottles.groups.some(({ past }) => past)
    ? 'past its date'
    : bottles.groups.some(({ ventDue }) => ventDue)
      ? 'let gas out'
      : undefined;
  return said(
    'Bottle',
    litres(bottles.leftL.likely, manner),
    [
      bottles.leftL.low === bottles.leftL.high
        ? undefined
        : `${litres(bottles.leftL.low, manner)} to ${litres(bottles.leftL.high, manner)}`,
      first === undefined ? 'no bottle stands' : `peg${NBSP}${first.peg}, ${until}`,
      more > 0 ? `and ${counted(more, 'more peg')}` : undefined,
    ],
    { hand, to: 'To the shelf' },
  );
}

interface RoundFacts {
  readonly dueL: number;
  readonly dueConcentrateL: number | undefined;
  readonly dueBeds: readonly string[];
  readonly later: number;
  readonly held: number;
  readonly ratio: Ratio | undefined;
  readonly on: string | undefined;
  readonly due: boolean;
}

/** What the next round wants. */
export function roundSaid(
  round: RoundFacts,
  { manner, today }: { readonly manner: Manner; readonly today: string },
): Said {
  const some = round.later + round.held > 0 && round.dueBeds.length > 0;
  const { ratio } = round;
  return said(
    'Can',
    litres(round.dueL, manner),
    [
      round.dueL > 0 ? undefined : round.held > 0 ? 'no bed may be fed now' : 'no bed is fed',
      some ? `for ${round.dueBeds.join(', ')}` : undefined,
      ratio === undefined
        ? undefined
        : ratio.reading === 'to'
          ? `1${NBSP}L to ${figure(ratio.n)}${NBSP}L water`
          : `1${NBSP}L in ${figure(ratio.n)}${NBSP}L`,
      round.on === undefined
        ? round.dueL > 0
          ? 'first round'
          : undefined
        : round.due
          ? undefined
          : sayDate(round.on, today),
      round.held > 0 ? `${counted(round.held, 'bed')} must wait` : undefined,
    ],
    { hand: round.due ? 'today' : undefined, to: 'To the can card' },
  );
}

/** Under the bottles: what the next round takes of them. */
export function takesSaid(
  round: RoundFacts,
  { manner, today }: { readonly manner: Manner; readonly today: string },
): string | undefined {
  if (round.dueConcentrateL === undefined || !(round.dueConcentrateL > 0)) return undefined;
  const when = round.on === undefined ? '' : ` ${briefDay(round.on, today)}`;
  return `${litres(round.dueConcentrateL, manner)}${when}`;
}

/** The beds. */
export function bedsSaid(
  beds: { readonly fedM2: number; readonly allM2: number; readonly pots: number },
  manner: Manner,
): Said {
  const pots = beds.pots > 0 ? counted(beds.pots, 'pot') : undefined;
  if (beds.allM2 === 0) return said('Bed', pots ?? area(0, manner), [], { to: 'What may be picked' });
  return said(
    'Bed',
    area(beds.fedM2, manner),
    [
      beds.fedM2 < beds.allM2 ? `to feed, of ${area(beds.allM2, manner)}` : 'to feed',
      pots === undefined ? undefined : `and ${pots}`,
    ],
    { to: 'What may be picked' },
  );
}

/** The heap beside the line. */
export function heapSaid(heap: { readonly fed: number; readonly lastOn: string | undefined }, today: string): Said {
  const note = heap.lastOn === undefined ? 'nothing on it yet' : `last fed ${sayDate(heap.lastOn, today)}`;
  return { name: 'Heap', figure: '', notes: [note, 'not to scale'], label: `Heap: ${note}.` };
}

/** What wants a hand, one sentence each. */
export function handSaid(
  hand: {
    readonly kind: string;
    readonly peg?: PegName;
    readonly litres?: number;
    readonly count?: number;
  },
  manner: Manner,
): string {
  const peg = `Peg ${hand.peg ?? ''}`;
  switch (hand.kind) {
    case 'lost':
      return `${peg} is lost: pour nothing from it, and see what to do with it.`;
    case 'lid-bulged':
      return `${peg}: the lid bulged. Let the gas out outdoors, face turned away.`;
    case 'too-warm':
      return `${peg} stands too warm: move it into the shade.`;
    case 'vent':
      return `Bottles of peg ${hand.peg ?? ''}: let the gas out.`;
    case 'doubtful':
      return `${peg} is doubtful: a second nose or reading decides.`;
    case 'unknown':
      return `${peg}: nobody knows what it is like now. Look.`;
    case 'look':
      return `${peg}: look today.`;
    case 'bottle':
      return `${peg}: ${litres(hand.litres ?? Number.NaN, manner)} drained and not in bottles.`;
    case 'strain':
      return `${peg} is held: it can be strained.`;
    case 'past-use-first':
      return `Bottles of peg ${hand.peg ?? ''} are past their date: on the heap with them.`;
    case 'round':
      return `A round is due: ${litres(hand.litres ?? Number.NaN, manner)}.`;
    case 'question':
      return `The record asks ${counted(hand.count ?? 0, 'question')}.`;
    default:
      return 'Some entries are in no checked file. Make a file and check it.';
  }
}

export function handsSaid(count: number): string {
  return count === 1 ? '1 thing wants a hand today' : `${count} things want a hand today`;
}

/** The list that hangs below the line. */
export const hanging = {
  list: 'Below the line',
  got: { name: 'What beds got', note: 'what each needs, was given and lacks' },
  season: { name: 'Season', note: 'not yet here' },
  trial: { name: 'Trial', note: 'not yet here' },
  heap: { name: 'The heap', note: 'what is in it, its heat, and what it wants next' },
  record: { name: 'Record', note: (on: string | null | undefined, today: string) => fileNote(on, today) },
  plot: {
    name: 'Plot',
    note: (beds: number, keyholders: number) =>
      keyholders > 0 ? `${counted(beds, 'bed')}, ${counted(keyholders, 'keyholder')}` : counted(beds, 'bed'),
  },
  print: { name: 'Print', tags: 'Jar tags', can: 'Can card', shed: 'Shed sheet' },
} as const;

function fileNote(on: string | null | undefined, today: string): string {
  if (on === undefined) return 'every act, to search and to correct';
  return on === null ? 'no file checked yet' : `last checked file ${sayDate(on, today)}`;
}

/** The sheet itself. */
export const line = {
  drawing: 'The line from scraps to beds',
  nothing: 'nothing wants a hand today',
  hands: 'What wants a hand',
  demoDays: 'Day of the demo',
  earlier: 'A day earlier',
  later: 'A day later',
  leave: 'Leave the demo',
  bedScale: 'beds',
  thingScale: 'pails, bottles, can',
  oneMetre: `1${NBSP}m`,
  fifthMetre: `20${NBSP}cm`,
  halfMetre: `50${NBSP}cm`,
  toHeap: 'to the heap: solids and losses',
  andMore: (count: number) => `and ${count} more`,
} as const;
