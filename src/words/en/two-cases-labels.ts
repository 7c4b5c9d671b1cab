// Headings, labels and blocks of the sheet that holds two cases side by side, in plain English. What is said of the
// cases stands in two-cases.ts.

import { figure, withUnit } from '../figures.ts';

type Chop = 'coarse' | 'chopped' | 'fine';
type Lid = 'loose' | 'vent' | 'tight';

const chops: Readonly<Record<Chop, string>> = {
  coarse: 'torn',
  chopped: 'chopped',
  fine: 'fine',
};

/** Headings, labels and blocks of the sheet. */
export const twoCases = {
  title: 'Before you fill',
  whatIf: 'What if …? Two cases side by side',
  none: 'Two cases of a filling will stand here side by side. They start from a weigh-in: which vessel, which scraps, how much water.',
  toWeighIn: 'Weigh in first',
  both: 'Both cases',
  asItIs: 'As it is',
  ifYou: 'If you …',
  /** The same two names within a sentence, a drawing or a label. */
  names: { asItIs: 'as it is', ifYou: 'if you …' },
  warmth: 'Warmth where it stands',
  warmthHint: 'such as 18\u00a0°C',
  warmthUntold:
    'Not told yet: counted as 18\u00a0°C; our caution, no source. Step it to what it is where the vessel stands.',
  chop: 'The pieces',
  chopSizes:
    'Torn: over 3\u00a0cm, or left whole. Chopped: 1\u00a0to 3\u00a0cm. Fine: under 5\u00a0mm. How much it does is a guess: from memory, unverified.',
  chops,
  lid: 'Lid',
  lids: { loose: 'loose', vent: 'lets gas out', tight: 'tight' } satisfies Record<Lid, string>,
  sugarNone: 'no sugar',
  was: (text: string) => `as it is: ${text}`,
  allSame: 'Make it the same again',
  take: 'Take this one',
  keep: 'Keep it as it is',
  takeNote: 'Goes back to the weigh-in. There it can be taken back.',
  takenAct: 'taking the changed case',
  figures: 'Figures of both cases',
  rows: {
    sour: 'pH\u00a04.2',
    held: 'Held',
    plateau: 'Comes down to',
    sugar: (day: number) => `Sugar left, day\u00a0${day}`,
    gas: 'Most gas in a day',
    fill: 'Fills',
  },
  spansComing: 'The spans are being reckoned.',
  spans: 'Under each figure: where 8 in 10 runs of the model fall. Germs are not foretold.',
  spansNone: 'The spans could not be reckoned here. The figures alone are one run with likely values.',
  overFull: 'But then it stands above the fill line.',
  unreadable: 'An entry cannot be read yet. The sentence stands beside it; what was typed is kept.',
  ph: 'pH',
  day: 'day',
  limits: { food: '4.6 food', ready: '4.2 ready', held: '4.0 held' },
  caption: 'pH by day in both cases, likely values',
  cautionsOf: (what: string) => `What to mind, ${what}`,
  takenStands: (warmth: string, chop: Chop) => `From the two cases: it stands at ${warmth}, the pieces ${chops[chop]}.`,
} as const;

/** The room it will stand in. */
export const caseRoom = {
  heading: 'Where will it stand?',
  question: 'The place',
  places: { open: 'open air', shed: 'shed', cupboard: 'cupboard' },
  openAir:
    'In the open air the gas blows away. Shade, a lid that keeps flies out, and out of reach of children and the dog.',
  size: { shed: 'The shed holds', cupboard: 'The cupboard holds' },
  sizeHint: 'm³: long × wide × high',
  badSize: (typed: string) => `“${typed}” is not a room; allowed: 0.1 to 1,000 m³, such as 9 m³.`,
  airing: 'Its air',
  airings: { shut: 'shut tight', draughty: 'draughty', open: 'door open' },
  airingNote: (perH: number) =>
    `Counted as ${figure(perH)} changes of air an hour, the low end of a guess: from memory, unverified.`,
  of: (name: string) => `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
} as const;

/** What the last act was, for the block that takes it back. */
export const caseActs = {
  step: (name: string) => `the step on ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  typed: (name: string) => `what was typed for ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  answered: (name: string) => `the answer on ${name.charAt(0).toLowerCase()}${name.slice(1).replace('?', '')}`,
  same: 'making it the same again',
} as const;

/** One step, for blocks that show only a sign. */
export const stepWords = {
  warmth: (byC: number) => withUnit(byC, '°C', 0),
  room: (byM3: number) => withUnit(byM3, 'm³'),
  roomText: (m3: number) => withUnit(m3, 'm³'),
};

/** Where on the sheet a rule speaks: at the row that decides it. */
export function casePlaceOf(rule: string): 'warmth' | 'sugar' | 'lid' | 'fill' | 'scraps' {
  if (['too-hot-to-sour', 'warm-look-daily', 'too-cold-for-a-hold'].includes(rule)) return 'warmth';
  if (rule.includes('sugar') || rule.includes('sour')) return 'sugar';
  if (rule.includes('lid')) return 'lid';
  return ['past-the-fill-line', 'mat-rises-over-the-rim', 'fill-it-where-it-stands', 'more-than-the-beds-use'].includes(
    rule,
  )
    ? 'fill'
    : 'scraps';
}
