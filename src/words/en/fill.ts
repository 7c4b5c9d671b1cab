// Filling a vessel in plain English: plan against actual, what may not go in, the peg and its tag, the first looks.
// What the answer itself says is fit.ts and weigh-in.ts.

import { counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';

export const fillSheet = {
  empty:
    'The filled vessel will stand here, drawn to scale, once something is in it: weigh scraps in first, or put one in below.',
  toWeighIn: 'To the weigh-in',
  vesselQuestion: 'Which vessel?',
  another: 'another one',
  newName: 'Its name',
  newNameHint: 'such as 12 L pail',
  newVolume: 'It holds',
  volumeHint: 'to the rim, such as 12 L',
  gasRoom: 'Gas room',
  gasRoomHint: 'left empty for froth',
  shapeQuestion: 'Its shape',
  lidQuestion: 'Its lid',
  lids: { loose: 'laid on loose', vent: 'lets gas out', none: 'none, a cloth', tight: 'tight' } as const,
  place: 'Where it stands',
  placeHint: 'such as shed window',
  warmth: 'Warmth there',
  warmthHint: 'such as 20 °C',
  scrapsQuestion: 'What went in?',
  fromPlan: 'From the weigh-in. Type what the scale really says; the plan stays beside it.',
  noPlan: 'No weigh-in is waiting. Put in what lies in the stock, or a kind from the list.',
  stockHeading: 'In the stock',
  putIn: 'Put it in',
  fromList: 'From the list',
  kept: 'Not for this vessel',
  keptWhy: {
    'set-aside': 'set aside: it waits for its bean test',
    'compost-only': 'compost only',
    out: 'out: neither pail nor heap',
    'kind-not-known': 'its kind is not in the list: weigh it in under one that is',
  } as const,
  asPlanned: 'as planned',
  allAsPlanned: 'All went in as planned',
  out: 'out',
  waterQuestion: 'Which water, how much?',
  water: 'Water',
  waterHint: 'such as 5.2 L',
  weightHint: 'such as 2.1 kg',
  waterFrom: 'From',
  sources: {
    tap: 'tap',
    butt: 'butt',
    well: 'well',
    ditch: 'ditch',
    pond: 'pond',
    bought: 'bought',
    other: 'other',
  } as const,
  noReport: 'not said',
  alkalinityUntold:
    'How much acid the water takes up was not told: counted as 4 meq/L, a hard water; our caution, no source.',
  sugarQuestion: 'Sugar',
  noSugar: 'none',
  sugar: 'Sugar',
  sugarHint: 'such as 150 g',
  starterQuestion: 'Starter from an earlier batch',
  noStarter: 'none',
  starterOther: 'from elsewhere',
  starter: 'Starter',
  starterHint: 'such as 0.2 L',
  starterNote: 'Only batches that were ready are offered.',
  pegQuestion: 'Which peg?',
  peg: 'Peg number',
  pegHint: 'next free',
  act: 'Peg it',
  stopped: 'Cannot be finished while a stop stands. Change what it names.',
  barred: 'Cannot be finished while this is in it:',
  holdsStand: 'Not yet, says a caution above. What went in is written down as it is; mend it first where you can.',
  done: (peg: PegName) => `Peg ${peg} hangs.`,
  doneRest: 'That is written down.',
  tagHeading: 'On the tag',
  notDrink: 'not a drink',
  looksHeading: 'The first looks',
  looksNote: 'Our caution, no source.',
  toPeg: 'To the peg',
  toLook: 'First look now',
  toPrint: 'Print the tag',
  fillAnother: 'Fill another',
  scale: (denominator: number) => `1\u00a0:\u00a0${figure(denominator)}`,
  planned: (text: string) => `planned ${text}`,
  notPlanned: 'not planned',
  drawn: 'Drawn as a usual vessel of that size; yours may be wider.',
} as const;

/** Why a part from the list, and not from the stock, may not go in. */
export const fillBars = {
  untold: (name: string) => `${upperFirst(name)}: was weedkiller used where it grew? "Not known" is an answer.`,
  notKnown: (name: string) =>
    `${upperFirst(name)}: it may hold weedkiller, so it goes into no batch. Take it out here; weigh it in on the sheet of scraps, where a bean test can clear it.`,
} as const;

const upperFirst = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** What still has to be told before it can be pegged. */
export function fillNeeds(needs: readonly FillNeed[]): string {
  const list = needs.map((need) => NEEDS[need]);
  const last = list.pop() ?? '';
  return `Still to tell: ${list.length > 0 ? `${list.join(', ')} and ${last}` : last}.`;
}

export type FillNeed = 'vessel' | 'lid' | 'scraps' | 'weights' | 'water' | 'sugar' | 'starter' | 'peg' | 'unread';

const NEEDS: Readonly<Record<FillNeed, string>> = {
  vessel: 'which vessel',
  lid: 'its lid',
  scraps: 'what went in',
  weights: 'what each weighs, or that it stays out',
  water: 'how much water',
  sugar: 'how much sugar, or none',
  starter: 'how much starter, or none',
  peg: 'a peg number that is free',
  unread: 'what is marked above and cannot be read yet',
};

/** The answer while some things are not weighed yet. */
export function countedAsPlanned(count: number): string {
  return `${counted(count, 'thing')} not weighed yet ${count === 1 ? 'counts' : 'count'} as planned.`;
}

/** How far the scale is from the plan, beside the actual figure. */
export function offPlan(actualKg: number, plannedKg: number, unit: 'kg' | 'L'): string {
  const off = actualKg - plannedKg;
  if (Math.abs(off) < 0.005) return 'as planned';
  const size = withUnit(Math.abs(off), unit, Math.abs(off) < 1 ? 2 : 1);
  return off > 0 ? `${size} more than planned` : `${size} less than planned`;
}

/** A lot of the stock, as offered. */
export function lotWords(lot: { readonly name: string; readonly leftKg: number }): string {
  return `${lot.name}, ${withUnit(lot.leftKg, 'kg')} left`;
}

/** More taken from a lot than lies in it. */
export function lotShort(leftKg: number): string {
  return `The stock holds only ${withUnit(leftKg, 'kg')} of it by the record. Weighed is weighed: the record will ask.`;
}

/** A vessel, as offered. */
export function vesselWords(vessel: {
  readonly name: string;
  readonly volumeL: number;
  readonly peg: PegName | undefined;
}): string {
  const size = vessel.name.includes(figure(vessel.volumeL)) ? '' : `, ${withUnit(vessel.volumeL, 'L')}`;
  return `${vessel.name}${size}${vessel.peg === undefined ? '' : ` (peg ${vessel.peg} stands in it)`}`;
}

export function vesselTaken(peg: PegName): string {
  return `Peg ${peg} still stands in this vessel. Strain or move it first, or take another.`;
}

export function starterWords(starter: {
  readonly peg: PegName;
  readonly leftL: number;
  readonly in: 'bottle' | 'pail';
}): string {
  return `peg ${starter.peg}, ${starter.in}, ${withUnit(starter.leftL, 'L', 1)}`;
}

export function pegTaken(peg: PegName): string {
  return `Peg ${peg} hangs on another vessel now. Take a number that is free.`;
}

/** One line of the first looks. */
export function lookLine(look: {
  readonly on: string;
  readonly day: number;
  readonly belowPh: number | undefined;
}): string {
  const when = look.day === 0 ? `Today, ${sayDate(look.on)}` : sayDate(look.on);
  const what =
    look.belowPh !== undefined
      ? `, pH below ${figure(look.belowPh, 1)} by then`
      : look.day === 0
        ? ', the first reading'
        : ', the next';
  return `${when}: day ${look.day}${what}`;
}

/** What stands on the tag. */
export function tagLines(tag: {
  readonly names: readonly string[];
  readonly on: string;
  readonly by: string;
  readonly place: string | undefined;
}): readonly string[] {
  return [
    `liquid feed: ${tag.names.join(', ')}`,
    `filled ${sayDate(tag.on)} by ${tag.by}`,
    ...(tag.place === undefined || tag.place === '' ? [] : [tag.place]),
  ];
}

/** A bare figure that cannot be read. */
export function unreadFigure(typed: string, allowed: string): string {
  return `"${typed}" is not a number; allowed: ${allowed}.`;
}

/** Names on the drawing of what is no scrap. */
export const fillLayers = { water: 'water', sugar: 'sugar' } as const;
