// The sheet of one peg in plain English: what stands in it, what may be done with it, what was seen, what its mass adds
// up to. The verdict and its reasons are those of the look.

import { counted, figure, withUnit } from '../figures.ts';
import type { PegName } from '../peg-name.ts';

/** Names of the lids, as the sheet says them. */
const lids = { vent: 'lid lets gas out', loose: 'lid loose', tight: 'lid tight', none: 'no lid' } as const;

export const pegWords = {
  title: (peg: PegName) => `Peg ${peg}`,
  noPeg: 'No peg of this plot has that address. Fill a vessel, and its peg stands on the line.',
  toFill: 'Fill a vessel',
  lineHeading: 'Sour line',
  heldFrom: (on: string) => `Held from ${on}, if it stays at 4.0 or below.`,
  endedOn: (on: string) => `Emptied on ${on}. Its record stays.`,
  actsHeading: 'What was done with it',
  actsNote: 'Each is an entry of its own, and none of them is lost when another follows.',
  looksHeading: 'Looks so far',
  noLooks: 'No look yet. Nose, top, warmth and above all the acidity, on the day it was filled, begin its sour line.',
  insideHeading: 'What is in it',
  massHeading: 'What went in and out',
  look: 'Look at it now',
  strain: 'Strain it',
  feed: 'Pour from it: the can card',
  shelf: 'Its bottles',
  forms: {
    topUp: 'Topped up',
    move: 'Moved, or under another lid',
    split: 'Part of it moved to a peg of its own',
    join: 'Another peg poured in',
    spill: 'Spilled',
    tip: 'Tipped out',
  },
  fields: {
    'parts.0.name': 'Scraps: what',
    'parts.0.mass': 'Scraps: weight',
    'water.0.volume': 'Water',
    'sugar.0.product': 'Sugar: which',
    'sugar.0.mass': 'Sugar: weight',
    'starter.0.volume': 'Starter',
    vessel: 'Into which vessel',
    lid: 'Lid',
    place: 'Place',
    temperatureC: 'How warm it is there, °C',
    taken: 'How much, by litres or by weight',
    peg: 'Number of the new peg',
    from: 'Which peg',
    lost: 'How much, by litres or by weight',
    onto: 'Onto what',
    to: 'Where to',
    why: 'Why',
  } as Readonly<Record<string, string>>,
  /** Where leaving the amount empty means all of it. */
  allOfIt: 'How much; left empty: all of it',
  write: 'Write it down',
  disposalHeading: 'What to do with it',
  disposal: (ventFirst: boolean): readonly string[] => [
    ...(ventFirst
      ? ['Let the pressure off first, outdoors: loosen the lid slowly, turned away from your face and from others.']
      : []),
    'Pour nothing of it on any bed, and take no starter from it.',
    'Layer it into the heap with twice its volume of dry leaves, away from ditches, wells and beds of food. How far away, your local rules say.',
    'Gloves on; wash hands, vessel and tools afterwards. Then write below that it was tipped out: its record stays.',
  ],
  disposalSource: 'Our caution, no source; where local rules differ, they hold.',
  sums: {
    filledKg: 'filled',
    toppedUpKg: 'topped up',
    joinedInKg: 'poured in from another peg',
    splitOffKg: 'moved to a peg of its own',
    joinedAwayKg: 'poured into another peg',
    spilledKg: 'spilled',
    strainedKg: 'strained off',
    tippedKg: 'tipped out',
    leftKg: 'left in the vessel',
  } as const,
  nothing: 'nothing',
  changes: {
    toppedUp: 'topped up',
    split: 'part of it moved to a peg of its own',
    moved: 'moved',
    joined: 'another peg poured in',
    spilled: 'spilled',
    tipped: 'tipped out',
    'poured-away': 'poured into another peg',
  } as const,
  lookBy: (day: number, who: string) => `day ${day}, ${who}`,
  lidBulged: 'lid bulged',
  noVessel: 'How large its vessel is was not told, so it is not drawn. Tell it on the sheet of the plot.',
  toPlot: 'To the plot',
  drawn: 'Drawn in layers as it was weighed in; in truth it is mixed.',
} as const;

/** Lines on where it stands: vessel, lid, place, warmth. */
export function standsLine(of: {
  readonly vessel: string | undefined;
  readonly lid: keyof typeof lids | undefined;
  readonly place: string | undefined;
  readonly mean: string | undefined;
  readonly filled: string;
}): string {
  return [of.vessel, of.lid && lids[of.lid], of.place, of.mean && `${of.mean} on the whole`, `filled ${of.filled}`]
    .filter(Boolean)
    .join(', ')
    .replace(/^[a-z]/, (letter) => letter.toUpperCase());
}

/** Names and figures beside the vessel's drawing. */
export const pegDrawing = {
  usable: (usableL: number) => withUnit(usableL, 'L', 1),
  over: (overL: number) => withUnit(overL, 'L', 1),
  rim: (vesselL: number) => `rim ${withUnit(vesselL, 'L')}`,
  gasRoom: 'gas room',
  alternative: (of: { peg: PegName; presentL: number; vesselL: number; layers: readonly string[] }) =>
    `Peg ${of.peg} to scale: ${withUnit(of.presentL, 'L', 1)} in a vessel of ${withUnit(of.vesselL, 'L')}; ${of.layers.join(', ')}.`,
  scale: (denominator: number) => `1 : ${figure(denominator)}`,
};

/** "3 looks". */
export function looksCount(count: number): string {
  return counted(count, 'look');
}
