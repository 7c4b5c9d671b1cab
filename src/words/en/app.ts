// What stands on every sheet: titles of the sheets, the short stream, undo, the demo mark, and how dates are said.

/** Titles as they stand in the head of each sheet. */
export const titles = {
  line: 'From scraps to beds',
  plot: 'The plot',
  scraps: 'Scraps',
  weighIn: 'Weigh-in',
  fill: 'Fill',
  peg: 'Peg',
  look: 'Look',
  strain: 'Strain',
  shelf: 'Shelf',
  unknownJar: 'Jar without a peg',
  can: 'Can card',
  pick: 'Pick day',
  heap: 'Heap',
  record: 'Record',
  print: 'Print',
} as const;

/** The short stream: each stretch with the sheet it leads to. */
export const stretches = [
  { id: 'scraps', word: 'scraps', to: '/scraps' },
  { id: 'pail', word: 'pail', to: '/weigh-in' },
  { id: 'bottle', word: 'bottle', to: '/shelf' },
  { id: 'can', word: 'can', to: '/can' },
  { id: 'bed', word: 'bed', to: '/pick' },
] as const;

export type Stretch = (typeof stretches)[number]['id'];

export const app = {
  stream: 'Way around',
  nightPaper: 'Night paper',
  back: 'all of it',
  demo: 'demo, all invented',
  own: 'your own plot',
  takeBack: 'Undo',
  /** After a reload, when no minutes are counted any more. */
  cancelEntry: 'Cancel this entry',
  /** What the last act was, by its kind. */
  took: {
    'plot.described': 'what was told of the plot',
    'bed.described': 'what was told of a bed',
    'vessel.described': 'what was told of a vessel',
    'can.described': 'what was told of a can',
    'water.reported': 'a water report',
    'scraps.weighed': 'scraps weighed in',
    'peg.filled': 'the filling',
    'peg.looked': 'the look',
    'peg.strained': 'the straining',
    'bottle.filled': 'the bottling',
    'bottle.vented': 'the venting',
    'bed.fed': 'the pour',
    'bed.picked': 'the picking',
    'photo.taken': 'the photo',
    'bed.dressed': 'the dressing',
    'product.bought': 'what was bought',
    'product.labelled': 'what the label says',
    'soil.tested': 'the soil report',
    'goal.told': 'what you hope to pick',
    'crop.described': 'your own crop',
  } as Readonly<Record<string, string>>,
  tookOther: 'the last entry',
  /** What the last act was, and how long it can be undone from here. */
  lastAct: (kind: string, minutesLeft?: number): string => {
    const what = app.took[kind] ?? app.tookOther;
    return minutesLeft === undefined ? what : `${what}, ${minutesLeft} min left`;
  },
  unshown: 'Your entry is written down. This page could not show it. Please load the page again.',
  loadAgain: 'Load the page again',
  notSaved: 'Not written down yet: the browser refused to keep it. Nothing is lost from this sheet; try again.',
  draftsUnkept: 'This browser does not keep half-filled forms. Save each form before you close or reload this page.',
  tabsUnheard: 'This browser does not tell one tab what another tab saved. Reload a tab before you go on in it.',
  hideNote: 'Hide this note',
  failedPlainly: 'This page failed. Please reload it. What you saved is not touched.',
  reload: 'Reload this page',
  tryAgain: 'Try again',
  showMore: (count: number) => `Show ${count} more`,
  opening: 'Opening the record',
  newer: 'A newer version is here. Take it when nothing is half typed.',
  takeNewer: 'Take it now',
  how: 'how?',
  howHeading: 'How it is done',
  why: 'why?',
  close: 'Close',
} as const;

/** What a phone that knows nothing yet is told, and the acts that start it. */
export const beginning = {
  empty:
    'Clippings and kitchen scraps sour in a pail and feed your beds. Here a line will run from your scraps through pail, bottle and can to your beds, with today’s amounts on it, and a mark where something wants a hand.',
  begin: 'Set up your plot',
  weigh: 'Weigh scraps in',
  demoNote: 'An invented plot with a season in it. It never mixes with yours.',
} as const;

const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'June', 'July', 'Aug', 'Sept', 'Oct', 'Nov', 'Dec'];

/** "June" of a local date. */
export function monthName(on: string): string {
  return MONTHS[Number(on.slice(5, 7)) - 1] ?? '';
}

/** "Thu 18 June" of a local date; the year is named where it is not the reader's own. */
export function sayDate(on: string, today?: string): string {
  const [year = 0, month = 1, day = 1] = on.slice(0, 10).split('-').map(Number);
  const weekday = WEEKDAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()];
  const text = `${weekday} ${day}\u00a0${MONTHS[month - 1]}`;
  return today !== undefined && today.slice(0, 4) !== on.slice(0, 4) ? `${text} ${year}` : text;
}

/** "Thu 18 June, 14:20". */
export function sayMoment(on: string, today?: string): string {
  return on.length > 10 ? `${sayDate(on, today)}, ${on.slice(11, 16)}` : sayDate(on, today);
}
