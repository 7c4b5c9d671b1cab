// The look in plain English: its four strips, what is said of the batch afterwards, the steps of how it is done. A
// second language has the same keys (words/de/look.ts). Reasons and changes are those of souring.ts.

import type { Level, Values } from '#engine/rules/rule.ts';
import type { Smell, Surface } from '#engine/souring/look.ts';
import type { ChangeCode, ReasonCode, State } from '#engine/souring/reason.ts';
import { figure } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';
import { careCautions } from './care.ts';
import { gasCautions } from './gas.ts';
import { instead } from './instead.ts';
import { profileCautions } from './profile.ts';
import { changeSentences, reasonSentences, smellWords } from './souring.ts';

export type Strip = 'sour' | 'nose' | 'top' | 'warmth';
/** What a look saw, for the sentence about it. */
export interface SeenInLook {
  readonly reading?: { readonly ph: number; readonly errorPh: number; readonly by: 'meter' | 'strip' } | undefined;
  readonly readBy?: string | undefined;
  readonly smell?: Smell | undefined;
  readonly surface?: Surface | undefined;
  /** As this keyholder reads it. */
  readonly temperature?: string | undefined;
}

export interface LookWords {
  /** Sentences of every rule that may stand on the screen, and what may be done in place of what its stops stop. */
  readonly cautions: Readonly<Record<string, (values: Values) => string>>;
  readonly instead: Readonly<Record<string, string>>;
  readonly levels: Readonly<Record<Level, string>>;
  readonly moreCautions: (count: number) => string;
  readonly insteadLead: string;
  /** For the page, so that it is read aloud in the right tongue. */
  readonly lang: string;
  readonly title: string;
  readonly skip: string;
  readonly date: (on: string, today: string) => string;
  readonly day: (day: number) => string;
  readonly pegDay: (peg: PegName, day: number) => string;
  readonly strips: Readonly<Record<Strip, string>>;
  readonly asks: Readonly<Record<Strip, string>>;
  readonly stripPads: string;
  readonly pad: (ph: number) => string;
  readonly ph: (ph: number) => string;
  readonly meter: string;
  /** What stands on the block of a whole figure: the figure with its point, and which tenths follow. */
  readonly wholeBlock: (whole: number) => string;
  readonly meterWhole: (whole: number) => string;
  readonly meterTenths: (whole: number) => string;
  readonly meterBack: string;
  readonly meterOver: string;
  readonly lastReading: (ph: number, by: 'meter' | 'strip', on: string) => string;
  readonly someoneReads: string;
  readonly readByTag: (tag: string) => string;
  readonly somebody: string;
  readonly smells: Readonly<Record<Smell, string>>;
  readonly surfaces: Readonly<Record<Surface, string>>;
  readonly noseOfAnother: string;
  readonly noseNote: string;
  readonly about: string;
  readonly asLast: string;
  readonly save: string;
  readonly saveSkipping: (skipped: readonly Strip[]) => string;
  readonly nothingYet: string;
  readonly saving: string;
  readonly verdict: (peg: PegName, state: State, held: boolean) => { readonly lead: string; readonly word: string };
  readonly advice: (state: State, held: boolean) => string;
  readonly seen: (look: SeenInLook) => string;
  readonly tooWarm: (temperature: string) => string;
  readonly secondNose: string;
  readonly whyHeading: (state: State, held: boolean) => string;
  readonly changeHeading: string;
  readonly reason: (code: ReasonCode, values: Values) => string;
  readonly change: (code: ChangeCode, values: Values) => string;
  readonly nextLook: string;
  readonly today: string;
  readonly noNextLook: string;
  readonly lookAgain: string;
  readonly toPeg: (peg: PegName) => string;
  readonly toStrain: string;
  readonly line: {
    readonly ph: string;
    readonly day: string;
    readonly late: string;
    readonly limits: Readonly<Record<'food' | 'ready' | 'held', string>>;
    readonly table: readonly [string, string, string];
    readonly caption: (peg: PegName) => string;
    readonly error: (ph: number, errorPh: number) => string;
    readonly by: (by: 'meter' | 'strip', who: string) => string;
    readonly alternative: (peg: PegName, readings: readonly string[]) => string;
    readonly nothing: string;
    /** Names of what is expected, short enough to stand over the drawing. */
    readonly expected: string;
    readonly likely: string;
    readonly today: string;
    readonly asTable: string;
    readonly expectedCaption: (peg: PegName) => string;
    readonly expectedTable: readonly [string, string, string];
    readonly expectedHead: string;
    readonly between: (lowPh: number, highPh: number) => string;
    readonly warmth: string;
    readonly betweenC: (low: string, high: string) => string;
    readonly expectedToo: (lowPh: number, highPh: number) => string;
    /** "Held: Fri 12 June to Sun 14 June" and the like; the dates are said already. */
    readonly spans: Readonly<Record<'ready' | 'held', string>>;
    readonly span: (name: string, from: string, to: string) => string;
    readonly spanFrom: (name: string, from: string) => string;
    readonly spanNot: (name: string, until: string) => string;
    readonly spanWaits: (name: string) => string;
    readonly insideOf: (lowPh: number, highPh: number) => string;
    readonly outsideOf: (lowPh: number, highPh: number) => string;
  };
  readonly photo: {
    readonly add: (count: number) => string;
    readonly heading: string;
    readonly note: string;
    readonly alternative: (number: number) => string;
    readonly unread: string;
    readonly unkept: string;
  };
  readonly notKept: string;
  readonly noPeg: string;
  readonly toLine: string;
  readonly ended: (peg: PegName, on: string) => string;
  readonly why: string;
  readonly whyOf: string;
  readonly how: string;
  readonly howHeading: string;
  readonly close: string;
  readonly steps: readonly [string, string, string, string, string];
}

const stateWords: Readonly<Record<State, string>> = {
  souring: 'souring',
  slow: 'slow, not lost',
  ready: 'ready',
  doubtful: 'doubtful',
  lost: 'lost',
  unknown: 'unknown',
};

const strips: LookWords['strips'] = { sour: 'Sour', nose: 'Nose', top: 'Top', warmth: 'Warmth' };
const tool = { meter: 'by meter', strip: 'by strip' } as const;
const surfaces: LookWords['surfaces'] = {
  clear: 'clear',
  bubbles: 'bubbles',
  'flat-white': 'flat white',
  'fuzzy-white': 'fuzzy white',
  'coloured-fuzz': 'coloured fuzz',
  larvae: 'larvae',
};

/** "nose and warmth". */
function listed(words: readonly string[], and: string): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} ${and} ${words.at(-1)}`;
}

/** "4.2 to 4.6", or one figure where both are the same. */
function spread(low: string, high: string): string {
  return low === high ? low : `${low} to ${high}`;
}

/** Keeps "day 6" and "pH 5.1" on one line. */
export function unbroken(sentence: string): string {
  return sentence.replaceAll(/\b(day|pH) (?=\d)/g, '$1\u00a0');
}

export const look: LookWords = {
  cautions: { ...gasCautions, ...careCautions, ...profileCautions },
  instead,
  levels: { stop: 'Stop', hold: 'Hold', caution: 'With care', note: 'Worth knowing' },
  moreCautions: (count) => `${count} more worth knowing`,
  insteadLead: 'Instead:',
  lang: 'en-GB',
  title: 'Look',
  skip: 'leave out',
  date: sayDate,
  day: (day) => `day ${day}`,
  pegDay: (peg, day) => `peg ${peg}, day ${day}`,
  strips,
  asks: {
    sour: 'How sour is it?',
    nose: 'What does it smell of?',
    top: 'What is on top?',
    warmth: 'How warm is it?',
  },
  stripPads: 'Paper strip',
  pad: (ph) => `strip ${figure(ph, 1)}`,
  ph: (ph) => figure(ph, 1),
  meter: 'Meter',
  wholeBlock: (whole) => `${whole}.`,
  meterWhole: (whole) => `meter, ${whole} point something`,
  meterTenths: (whole) => `Meter, ${whole} point …`,
  meterBack: 'Back',
  meterOver: '8 or over',
  lastReading: (ph, by, on) => `last ${ph.toFixed(1)} ${tool[by]}, ${on}`,
  someoneReads: 'Somebody else reads it',
  readByTag: (tag) => `read by ${tag}`,
  somebody: 'somebody',
  smells: smellWords,
  surfaces,
  noseOfAnother: 'You told us that you cannot smell: let a second person say it.',
  noseNote: 'Nose of a second person.',
  about: 'about',
  asLast: 'same',
  save: 'Write it down',
  saveSkipping: (skipped) =>
    `Write it down, ${listed(
      skipped.map((one) => strips[one].toLowerCase()),
      'and',
    )} skipped`,
  nothingYet: 'Touch what you see. Whatever you leave out is skipped; after the fourth answer it is written down.',
  saving: 'Writing it down',
  verdict: (peg, state, held) => ({
    lead: `Peg ${peg} is`,
    word: state === 'ready' ? (held ? 'ready and held.' : 'ready, not held yet.') : `${stateWords[state]}.`,
  }),
  advice: (state, held) => {
    if (state === 'souring') return 'On its way. Pour nothing from it yet.';
    if (state === 'slow') return 'Later than it ought to be, and still on its way. Pour nothing from it yet.';
    if (state === 'doubtful') return 'Ask again within 24 hours, and pour nothing from it until then.';
    if (state === 'lost')
      return 'Pour nothing from it. Layer it into the heap with dry leaves, away from ditches and wells, as your local rules ask.';
    if (state === 'unknown')
      return 'Nobody can say what it is like now, and that never counts as good. Pour nothing from it.';
    return held ? 'The can card says where it may go.' : 'Cooked crops only; nothing eaten raw until it is held.';
  },
  seen: ({ reading, readBy, smell, surface, temperature }) =>
    [
      reading && `pH\u00a0${reading.ph.toFixed(1)}\u00a0±\u00a0${reading.errorPh.toFixed(1)} ${tool[reading.by]}`,
      readBy && `read by ${readBy}`,
      smell && (smell === 'cannot-smell' ? 'nose: cannot smell' : `nose ${smellWords[smell]}`),
      surface && `top ${surfaces[surface]}`,
      temperature,
    ]
      .filter(Boolean)
      .join(', ')
      .replace(/^[a-z](?!H)/, (letter) => letter.toUpperCase()),
  tooWarm: (temperature) =>
    `${temperature} is too warm: move it into the shade today. From 35 °C what sours it suffers; our caution, no source.`,
  secondNose: 'Nobody has smelled it yet: ask a second person to, and note it as a look of its own.',
  whyHeading: (state, held) => `Why ${state === 'ready' && held ? 'ready and held' : state}`,
  changeHeading: 'What would change this',
  reason: (code, values) => unbroken(reasonSentences[code](values)),
  change: (code, values) => unbroken(changeSentences[code](values)),
  nextLook: 'Next look',
  today: 'today',
  noNextLook: 'No further look is asked for.',
  lookAgain: 'Another look',
  toPeg: (peg) => `To the sheet of peg ${peg}`,
  toStrain: 'Strain it',
  line: {
    ph: 'pH',
    day: 'day',
    late: 'late from here on',
    limits: { food: '4.6 food line', ready: '4.2 ready if twice', held: '4.0 for held' },
    table: ['Day', 'pH', 'Read by'],
    caption: (peg) => `Readings of peg ${peg}`,
    error: (ph, errorPh) => `pH ${ph.toFixed(1)} ± ${errorPh.toFixed(1)}`,
    by: (by, who) => `${by}, ${who}`,
    alternative: (peg, readings) =>
      readings.length === 0
        ? `Sour line of peg ${peg}: nothing read yet.`
        : `Sour line of peg ${peg}: ${readings.join('; ')}.`,
    nothing: 'The sour line of this peg will stand here once its acidity was read.',
    expected: 'expected',
    likely: 'likely',
    today: 'today',
    asTable: 'as a table',
    expectedCaption: (peg) => `Expected of peg ${peg}, 8 times in 10`,
    expectedTable: ['Day', 'pH', 'Warmth'],
    expectedHead: 'Expected',
    between: (lowPh, highPh) => spread(figure(lowPh, 1), figure(highPh, 1)),
    warmth: 'Liquid',
    betweenC: spread,
    expectedToo: (lowPh, highPh) => ` Expected 8 times in 10: pH ${spread(figure(lowPh, 1), figure(highPh, 1))}.`,
    spans: { ready: 'Ready', held: 'Held' },
    span: (name, from, to) => (from === to ? `${name}: about ${from}` : `${name}: ${from} to ${to}`),
    spanFrom: (name, from) => `${name}: from ${from}, or later`,
    spanNot: (name, until) => `${name}: not likely by ${until}`,
    spanWaits: (name) => `${name}: being worked out`,
    insideOf: (lowPh, highPh) =>
      `That is where it was expected: pH\u00a0${spread(figure(lowPh, 1), figure(highPh, 1))}, 8 times in 10.`,
    outsideOf: (lowPh, highPh) =>
      `It was expected elsewhere: pH\u00a0${spread(figure(lowPh, 1), figure(highPh, 1))}, 8 times in 10. If in doubt, read it once more.`,
  },
  photo: {
    add: (count) => (count === 0 ? 'Add a photo' : `Add a photo (${count} of 3 so far)`),
    heading: 'Photos',
    note: 'Shrunk, and without the place it was taken at. It stays on this device and in your files.',
    alternative: (number) => `Photo ${number} of this look`,
    unread: 'That file is no picture that this browser can read; allowed: a photo as JPEG, PNG or WebP.',
    unkept: 'The photo could not be kept. The look itself is written down.',
  },
  notKept: 'Not written down yet: the browser refused to keep it. Your answers still stand here; try again.',
  noPeg: 'No peg of this plot has that address. Fill a vessel, and its peg stands on the line.',
  toLine: 'To the line',
  ended: (peg, on) => `Peg ${peg} was emptied on ${on}: there is nothing left to look at.`,
  why: 'why?',
  whyOf: 'why? days and limits',
  how: 'how?',
  howHeading: 'How a look is done',
  close: 'Close',
  steps: [
    'Outdoors or with the door open, lift the lid away from your face.',
    'Strip: dip it, shake it, wait as its packet says, hold it against the pads by daylight. Meter: rinse, dip, wait until it stands still.',
    'Fan the air to your nose with your hand. Never lean over it, never taste it.',
    'Look at the top from the side. Coloured fuzz: do not stir, put the lid back.',
    'Hold the thermometer a hand deep in the middle. Lid back on, loose; wash your hands.',
  ],
};
