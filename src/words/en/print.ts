// What stands on the prints: jar tags, the can card for the shed wall, the shed sheet. Short lines; what a stranger who
// finds a bottle has to know comes first.

import { formatIn } from '#engine/quantity/format.ts';
import type { Ratio } from '#engine/quantity/ratio.ts';
import type { State } from '#engine/souring/reason.ts';
import { material } from '#engine/tables/index.ts';
import { counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';
import { sayDate } from './app.ts';

const NBSP = '\u00a0';

export const print = {
  print: 'Print',
  back: 'Back to the line',
  tags: 'Jar tags',
  can: 'Can card',
  shed: 'Shed sheet',
  tagsNote: '62 by 40 mm, one to a label. The number is drawn in outline, to be filled in with pencil or marker.',
  canNote: 'A6, for the shed wall.',
  shedNote: 'A4, for the shed door: what stands here now, and lines for pencil.',
  onlyShown: (shown: number, all: number) => `${shown} of ${all} are shown here. Only those are printed.`,
  noTags: 'A tag for each bottle and each standing peg will be here.',
  noTagsAct: 'Fill a peg',
  noCans: 'The plot’s cans with their doses will stand here.',
  noCansAct: 'Tell the cans',
  noShed: 'Pegs, bottles and the pick list will stand here.',
  noShedAct: 'Tell the plot',
  notADrink: 'Not a drink',
  tagWarning: (of: 'bottle' | 'vessel') => (of === 'bottle' ? 'Plant feed: not a drink' : 'Souring: not a drink'),
  peg: 'peg',
  qr: (peg: PegName) => `Square code that opens peg ${peg}`,
  pegNumber: (peg: PegName) => `Peg ${peg}`,
} as const;

interface TagFacts {
  readonly of: 'bottle' | 'vessel';
  readonly plants: readonly { readonly material: string | undefined; readonly name: string | undefined }[];
  readonly morePlants: boolean;
  readonly filledOn: string;
  readonly strainedOn: string | undefined;
  readonly state: State;
  readonly held: boolean;
  readonly useFirstOn: string | undefined;
  readonly ratio: Ratio | undefined;
  readonly ventOn: string | undefined;
  readonly rawBeds: readonly string[];
}

/** Beds named on a tag; more than that and it says which kind they are. */
const MOST_LETTERS_OF_BEDS = 20;

/** The lines of a tag under its number. */
export function tagLines(tag: TagFacts): readonly string[] {
  const plants = tag.plants.map(({ material: id, name }) => plantName(id, name)).join(', ');
  const what = plants === '' ? 'plants not told' : `${plants}${tag.morePlants ? ' and more' : ''}`;
  const strained = tag.strainedOn;
  const when =
    strained === undefined
      ? `filled ${withYear(tag.filledOn)}`
      : `filled ${brief(tag.filledOn)}, strained ${withYear(strained)}`;
  const lines = [what, when];
  if (tag.of === 'vessel') return [...lines, 'Loose lid. Pour nothing from it before its peg says ready.'];
  const first = tag.useFirstOn === undefined ? undefined : `use first by ${withYear(tag.useFirstOn)}`;
  const vent = tag.ventOn === undefined ? undefined : `vent ${brief(tag.ventOn)}`;
  lines.push([first, vent].filter((text) => text !== undefined).join(' · '));
  lines.push(strength(tag));
  const beds = tag.rawBeds.join(', ');
  const isLong = beds.length > MOST_LETTERS_OF_BEDS;
  lines.push(beds === '' || isLong ? 'not on leaves that are eaten raw' : `not on leaves of ${beds} (eaten raw)`);
  return lines.filter((text) => text !== '');
}

function strength({ state, held, ratio }: Pick<TagFacts, 'state' | 'held' | 'ratio'>): string {
  if (state !== 'ready') return `${state}: pour nothing from it`;
  const amount = ratio === undefined ? 'strength not known: see its peg' : ratioSaid(ratio);
  return held ? `${amount}, held` : `${amount}, not held: cooked crops only`;
}

/** "1 L to 40 L of water". */
export function ratioSaid({ n, reading }: Ratio): string {
  return reading === 'to' ? `1${NBSP}L to ${figure(n)}${NBSP}L of water` : `1${NBSP}L in ${figure(n)}${NBSP}L`;
}

function plantName(id: string | undefined, name: string | undefined): string {
  const row = id === undefined ? undefined : material(id);
  return name ?? row?.name.split(/[,(]/)[0]?.trim() ?? 'plants';
}

/** "20 June". */
function brief(on: string): string {
  return sayDate(on).split(' ').slice(1).join(' ');
}

/** "20 June 2026". */
function withYear(on: string): string {
  return `${brief(on)}${NBSP}${on.slice(0, 4)}`;
}

/** Letters that stand beside the jug for a can's name and the jugs before its mark; the table has all of the name. */
const MOST_LETTERS_OF_NAME = 13;

/** The card of the plot's cans. */
export const canCard = {
  title: 'Can card',
  from: (peg: PegName, held: boolean) => `from peg ${peg}, ${held ? 'held' : 'not held: cooked crops only'}`,
  can: 'can',
  concentrate: 'concentrate',
  thenFill: 'then fill to',
  dose: (volumeMl: number) => withUnit(volumeMl, 'mL', 0),
  litres: (volumeL: number, typed: string | undefined) => typed ?? formatIn(volumeL, 'L').text,
  /** What goes to the mark; full jugs before it are said too: "10 L…: 1 jug + 238 mL". */
  mark: (name: string, fills: { readonly full: number; readonly restMl: number }) => {
    const before = fills.full > 0 ? `${counted(fills.full, 'jug')} + ` : '';
    const letters = MOST_LETTERS_OF_NAME - before.length;
    const short = name.length > letters ? `${name.slice(0, letters - 1)}…` : name;
    return `${short}: ${before}${withUnit(fills.restMl, 'mL', 0)}`;
  },
  jug: (jugMl: number) => `Jug of ${withUnit(jugMl, 'mL', 0)} with the mark for each can`,
  jugScale: 'jug not at full size: read its own marks',
  soil: 'On moist soil, not on leaves. Use it today; tip the rest on soil.',
  raw: (beds: readonly string[]) =>
    beds.length === 0 ? '' : `Before ${beds.join(', ')} (eaten raw): look at the pick list on the shed sheet.`,
} as const;

/** The shed sheet. */
export const shedSheet = {
  title: 'Shed sheet',
  standsOn: (on: string) => `as it stands on ${sayDate(on)}`,
  pick: 'Can I take this home?',
  pegs: 'Pegs',
  bottles: 'Bottles',
  pencil: 'Written here, to be typed in later',
  head: {
    bed: 'bed',
    crop: 'crop',
    answer: 'answer',
    last: 'last feed',
    picked: 'picked',
    peg: 'peg',
    state: 'state',
    vessel: 'vessel',
    next: 'next look',
    litres: 'litres',
    first: 'use first by',
    vent: 'last vented',
    looked: 'looked',
    on: 'date',
    who: 'who',
    what: 'what was done, how much',
  },
  answer: (answer: 'pick' | 'wait' | 'cook', till: string | undefined) =>
    answer === 'pick'
      ? 'Pick'
      : answer === 'cook'
        ? 'Cook'
        : till === undefined
          ? 'Wait'
          : `Wait till ${sayDate(till)}`,
  feed: (days: number | undefined, pegs: readonly PegName[]) =>
    days === undefined
      ? 'never fed'
      : `${days === 0 ? 'today' : withUnit(days, days === 1 ? 'day ago' : 'days ago', 0)}, peg${NBSP}${pegs.join(', ')}`,
  state: (state: State, held: boolean) => (state === 'ready' && held ? 'ready, held' : state),
  day: (day: number) => `day ${day}`,
  date: (on: string | undefined) => (on === undefined ? '' : sayDate(on)),
  litres: (volumeL: number) => withUnit(volumeL, 'L'),
  none: 'none',
  poison: (line: string) => `Poison line: ${line}`,
  noPoison: 'Poison line, to be written in:',
  notADrink: 'Nothing in these pails and bottles is a drink.',
} as const;
