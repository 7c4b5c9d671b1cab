// Labels, headings and short words of the weigh-in screen in plain English. What the answer says stands in
// weigh-in.ts.

import type { ShapeKind } from '#engine/pail/shape.ts';
import type { AlkalinityUnit } from '#engine/scraps/water.ts';
import { withUnit } from '../figures.ts';

/** Headings, labels and blocks of the sheet. */
export const sheet = {
  title: 'Weigh-in',
  fillNow: 'Fill it now',
  toSay: 'to say',
  emptyStart:
    'Your pail will stand here, drawn to scale, once three things are told: which vessel, which scraps, how much water.',
  showExample: 'Show me an example',
  exampleMark: 'example, all invented',
  ownMark: 'your own figures',
  clearExample: 'Clear the example',
  startAgain: 'Start again',
  why: 'why?',
  whyHeading: 'The working',
  close: 'Close',
  takeBack: 'Undo',
  toCures: 'See what would mend it',
  vesselQuestion: 'Which vessel?',
  ownVessels: 'One of your own',
  vesselVolume: 'Vessel holds',
  vesselHint: 'to the rim: 12\u00a0L, 3\u00a0gal',
  shapeQuestion: 'Its shape',
  gasRoom: 'Gas room',
  gasRoomHint: 'left empty for froth',
  gasRoomNote: 'A quarter for gas room is common practice, no source.',
  lidQuestion: 'Its lid',
  lids: { loose: 'loose', vent: 'lets gas out', tight: 'tight' } as const,
  scrapsQuestion: 'Which scraps?',
  findScrap: 'Find one by name',
  chooseScrap: 'Kind of scraps',
  pickOne: 'choose a kind',
  addScrap: 'Put it in',
  nothingFound: 'Nothing in the list has that name.',
  waterQuestion: 'How much water?',
  waterVolume: 'Water',
  waterHint: 'such as 7\u00a0L',
  weightHint: 'such as 2.4\u00a0kg or 5\u00a0lb 4\u00a0oz',
  sugarHint: 'such as 250\u00a0g or 6\u00a0tbsp',
  hardness: 'Acid the water takes up (alkalinity), if you know it',
  hardnessUnit: 'Unit on the water report',
  hardnessUnknown: 'Not told: counted as 4\u00a0meq/L, a hard water (200\u00a0mg/L as CaCO₃); our caution, no source.',
  hardnessMore: 'Hard or soft water',
  weighed: 'weighed',
  bowl: 'bowl',
  out: 'out',
  bowlWeighs: 'The empty bowl weighs',
  bowlIsOn: 'Only the bowl is on the scale now',
  bowlOff: 'No bowl',
  treatedQuestion: 'Weedkiller there in the last two years?',
  treated: { no: 'no', unknown: 'not known', yes: 'yes' } as const,
  sugarQuestion: 'Sugar for souring',
  sugarProduct: 'Kind of sugar',
  noProduct: 'none chosen yet',
  sugarWeight: 'Sugar',
  sugarBefore: 'Once the scraps and the water are told, this says how much sugar it would take.',
  curesFor: 'What would mend it',
  curesMore: 'What would use the room',
  besides: 'Also worth knowing',
  assumedHeading: 'What was assumed',
  nutrientsHeading: 'What goes in with the scraps',
  nutrientsNote: 'All that goes into the pail. Less than this comes out in the liquid.',
  notLoaded:
    'A part of this sheet could not be fetched. Load the page again when there is a signal; what was typed is not kept.',
  noScale: 'no scale yet',
  scaleNext: 'Next on the scale',
  scaleOf: 'Weight to reach',
  scaleForward: 'It is in; next',
  scaleBack: 'Back',
  scaleNone: 'Nothing to weigh yet. Turn the phone upright and say what goes in.',
  scaleDone: 'All is in.',
  wholeSheet: 'Show the whole sheet',
  layByScale: 'Lay it by the scale',
  stopHeading: 'Stop',
  levels: { stop: 'Stop', hold: 'Hold', caution: 'With care', note: 'Worth knowing' },
  standsForSugar: 'Shown as white sugar until you choose a kind.',
  drawn: 'Drawn as a usual vessel of that size; yours may be wider.',
} as const;

/** Names of the shapes, as asked and as named in sentences. */
export const shapeNames: Readonly<Record<ShapeKind, string>> = { pail: 'pail', drum: 'drum', barrel: 'barrel' };

/** One more and one less of a thing, for blocks that show only a sign. */
export function stepLabel(name: string, way: 'more' | 'less', step: string): string {
  return way === 'more' ? `${name}, ${step} more` : `${name}, ${step} less`;
}

/** What a block on an ingredient's row does, with the ingredient in it. */
export const rowLabels = {
  bowl: (name: string) => `bowl: take it off the weight of ${name}`,
  out: (name: string) => `out: leave out ${name}`,
  weight: (name: string) => `Weight of ${name}`,
  net: (netKg: string, bowl: string) => `${netKg} without the bowl of ${bowl}`,
  notWeighed: (names: readonly string[]) => `Not weighed yet, so not counted: ${names.join(', ')}.`,
};

/** What the last act was, for the block that takes it back. */
export const acts = {
  step: (name: string) => `the step on ${name}`,
  typed: (name: string) => `what was typed for ${name.charAt(0).toLowerCase()}${name.slice(1)}`,
  added: (name: string) => `putting in ${name}`,
  removed: (name: string) => `leaving out ${name}`,
  cure: (name: string) => name,
  example: 'loading the example',
  cleared: 'clearing the sheet',
  bowl: (name: string) => `the bowl of ${name}`,
  answered: (name: string) => `the answer on ${name.charAt(0).toLowerCase()}${name.slice(1).replace('?', '')}`,
};

/** Names of the groups in the list of scraps. */
export const groupNames: Readonly<Record<string, string>> = {
  clippings: 'Clippings and grass',
  'soft-green': 'Soft green plants and weeds',
  'leafy-veg': 'Leaf vegetables',
  'fruiting-veg': 'Fruiting vegetables',
  roots: 'Roots and bulbs',
  fruit: 'Fruit',
  kitchen: 'Kitchen',
  'hay-straw': 'Hay and straw',
  browns: 'Browns',
  compost: 'Compost',
  manure: 'Manure',
  animal: 'From animals',
};

/** What a kind may be used for, behind its name in the list. */
export const intoMarks: Readonly<Record<'liquid' | 'compost-only' | 'set-aside' | 'out', string>> = {
  liquid: '',
  'compost-only': ' (compost only)',
  'set-aside': ' (set aside)',
  out: ' (not wanted)',
};

/** Sentences for entries that this sheet reads by itself. */
export const troubles = {
  gasRoom: (typed: string) => `"${typed}" is not a share of the vessel; allowed: 0 to 90\u00a0%.`,
  bowl: (bowl: string, gross: string) =>
    `The bowl (${bowl}) weighs as much as all that is on the scale (${gross}); allowed: a bowl lighter than that.`,
  alkalinity: (typed: string) => `"${typed}" is not a number; allowed: 0 to 20 meq/L, or the same in the unit chosen.`,
  field: (value: string, message: string, allowed: string) => `"${value}" ${message}; allowed: ${allowed}.`,
};

/** One answer to whose gallon or spoon, with what it holds. */
export function choiceWords(choice: { readonly country: string; readonly mL: number }): string {
  const names: Readonly<Record<string, string>> = {
    us: 'US',
    imperial: 'imperial',
    metric: 'metric',
    uk: 'UK',
    au: 'Australian',
  };
  const size =
    choice.mL >= 1000 ? withUnit(choice.mL / 1000, 'L', 2) : withUnit(choice.mL, 'mL', choice.mL < 100 ? 1 : 0);
  return `${names[choice.country] ?? choice.country}, ${size}`;
}

/** Groups that may carry weedkiller and are asked about it. */
export function asksWeedkiller(group: string): boolean {
  return ['clippings', 'hay-straw', 'manure', 'compost'].includes(group);
}

/** Place on the sheet where a caution belongs: at the question that decides it. */
export function placeOf(rule: string): 'vessel' | 'scraps' | 'cures' | 'sugar' {
  if (rule.includes('sugar') || rule.includes('sour')) return 'sugar';
  if (rule === 'past-the-fill-line') return 'cures';
  return ['lid-tight-no-vent', 'mat-rises-over-the-rim', 'fill-it-where-it-stands'].includes(rule)
    ? 'vessel'
    : 'scraps';
}

/** Units in which a water report may give alkalinity or hardness. */
export const alkalinityUnits: Readonly<Record<AlkalinityUnit, string>> = {
  'mg/L CaCO3': 'mg/L as CaCO₃',
  'mmol/L': 'mmol/L (bicarbonate)',
  'meq/L': 'meq/L',
  dH: 'German degrees',
  fH: 'French degrees',
  clark: 'Clark (English) degrees',
  gpg: 'grains per US gallon',
};
