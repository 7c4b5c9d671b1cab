// The sheet of scraps in stock: what is on the shelf, where it may go, and the slip each lot is weighed in with.

import type { Destination } from '#engine/scraps/part.ts';
import { withUnit } from '../figures.ts';
import { slipQuestions } from './slip.ts';

export const stock = {
  title: 'Scraps',
  empty: 'Every lot of scraps will stand here with its weight and where it may go. Weigh the first one in.',
  weigh: 'Weigh a lot',
  name: 'Kind of scraps',
  otherKind: 'another kind, by its name',
  plant: 'Which plant, by its name',
  plants: 'Plants in it, as far as you know them',
  plantHint: 'such as carrot tops',
  amount: 'It weighs',
  hint: 'such as 2.4 kg or 5 lb 4 oz',
  when: 'When was it treated? Leave it empty where nobody knows',
  treatedWith: 'With what, by the label',
  becomes: 'What becomes of it',
  put: 'Write it down',
  list: 'In stock, oldest first',
  toPail: 'Weigh some into a pail',
  nothingChosen: 'Choose a kind and type its weight; allowed: more than 0, up to 1000 kg.',
  stillOpen: (questions: readonly string[]) => `Still to be answered: ${questions.join(' ')} "Not known" is an answer.`,
  why: 'Why, and what may be done',
  more: 'More',
  answerSlip: 'Answer its slip again',
  answering: (name: string) => `The slip of ${name}, answered again`,
  leaveSlip: 'Leave it as it was',
  toHeap: (kg: string) => `All ${kg} to the heap`,
  noHeap: 'To the heap: not this one',
} as const;

/** The questions of the slip as the sheet asks them. */
export const asked = {
  name: stock.plant,
  place: 'Whose is it, and from where?',
  kitchen: slipQuestions.kitchen,
  treated: slipQuestions.treated,
  weedkiller: slipQuestions.weedkiller,
  labelAllows: slipQuestions.labelAllows,
  when: stock.when,
  condition: slipQuestions.condition,
} as const;

export const answers = {
  place: {
    'this-plot': 'this plot',
    'shared-ground': 'shared ground here',
    'home-garden': 'our garden at home',
    'own-kitchen': 'our kitchen',
    neighbour: 'a neighbour’s garden',
    'other-kitchen': 'another kitchen',
    bought: 'a shop',
    found: 'the street, or found',
    unknown: 'not known',
  },
  treated: { no: 'no', unknown: 'not known', yes: 'yes' },
  weedkiller: { lasting: 'a lasting one: clopyralid, aminopyralid, picloram', other: 'another', unknown: 'not known' },
  labelAllows: { yes: 'yes', no: 'no', unknown: 'not known' },
  condition: {
    fresh: 'fresh',
    wilted: 'wilted',
    dry: 'dry',
    frozen: 'frozen',
    slimy: 'slimy',
    unknown: 'not known',
  },
  kitchen: { raw: 'raw', cooked: 'cooked', plate: 'off the plate', unknown: 'not known' },
} as const;

/** What a site's rule greys in every list: all kitchen scraps, or the kinds named. */
export function siteClosed(
  names: readonly string[] | undefined,
  rule: { readonly text: string; readonly on?: string | undefined } | undefined,
): string {
  const what = names === undefined ? 'Kitchen scraps' : upperFirst(names.join(', '));
  const own =
    rule === undefined
      ? 'That is what the facts of this plot say.'
      : `Its rule${rule.on ? ` of ${rule.on}` : ''}: "${rule.text}"`;
  return `Greyed: ${what}. This site does not let ${names === undefined ? 'them' : 'that'} in. ${own}`;
}

const upperFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** A lot that a keyholder put somewhere stricter than the rules do. */
export function decidedSays(outcome: string): string {
  return `${outcome}: so it was decided at the scale.`;
}

export const unknownKindSays = 'Its kind is not in the list of materials here, so it waits for one that is.';

/** Lots in a batch that ought not to be in one. */
export function keptOutSays(lots: readonly { readonly name: string; readonly goes: Destination }[]): string {
  const list = lots.map(({ name, goes }) => `${name} (${places[goes]})`).join('; ');
  return `In this batch is what may not go into one: ${list}. The record keeps it as it was written. Pour none of it on a bed until that is cleared.`;
}

/** The result of a bean test, as it is typed in. */
export const beans = {
  card: 'Print the card of its bean test',
  enter: 'Write down what the beans showed',
  sownOn: 'Sown on',
  leaves: 'True leaves on the control',
  testPots: 'Test pots, with the lot',
  controlPots: 'Control pots, clean mix',
  counts: { potCount: 'pots', sownCount: 'beans sown', germinatedCount: 'came up', deformedCount: 'deformed' },
  deformedNote: 'Deformed: leaves cupped, fern-like or twisted.',
  working: 'How that was worked out',
  put: 'Write the verdict down',
  needs: 'Type the day of sowing and every count as a whole number; 0 is one.',
} as const;

export const beanCard = {
  title: 'Bean test',
  note: 'Prints on one A5 sheet. Set the day of sowing first; it stands on the card with the days to read between.',
  nothing: 'That lot is not in the stock, or needs no bean test.',
  toScraps: 'To the scraps',
  of: (name: string, typed: string, on: string) => `Lot: ${name}, ${typed}, weighed in ${on}`,
  readOn: 'Read on: ________________',
  leavesOnC: 'True leaves on C: ________',
  pot: 'Pot',
  sign: 'Test (T) and control (C) pots: sown, came up, deformed',
} as const;

/** Where a lot may go, as a heading over its group. */
export const places: Readonly<Record<Destination, string>> = {
  liquid: 'May go in a pail',
  'set-aside': 'Set aside: ask, or do the bean test',
  'compost-only': 'Heap only',
  out: 'Out: neither pail nor heap',
};

/** "2.4 kg, 3 days old, spoils in 1 to 2 days". */
export function lotLine(lot: {
  readonly leftKg: number;
  readonly ageDays: number;
  readonly spoilsInDays: { readonly low: number; readonly high: number } | undefined;
}): string {
  const age = lot.ageDays <= 0 ? 'today' : lot.ageDays === 1 ? '1 day old' : `${lot.ageDays} days old`;
  const { spoilsInDays: spoils } = lot;
  const left =
    spoils === undefined
      ? ''
      : spoils.high <= 0
        ? ', past its days: look and smell before it goes in'
        : `, spoils in ${Math.max(0, spoils.low)} to ${withUnit(spoils.high, 'days', 0)}`;
  return `${withUnit(lot.leftKg, 'kg')}, ${age}${left}`;
}
