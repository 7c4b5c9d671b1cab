// The facts sheet: headings, what each field is called, what each answer is called, and what is said where a field
// cannot be read. The record's corrections use the same names of fields and answers.

import { usual } from '#engine/scraps/usual.ts';
import { figure, withUnit } from '../figures.ts';

const NBSP = '\u00a0';

/** What is said at a field that cannot be read. */
export const form = {
  problem: (value: string, message: string, allowed: string) =>
    value === '' ? `This ${message}; allowed: ${allowed}.` : `"${value}" ${message}; allowed: ${allowed}.`,
  noFigure: (value: string) => `"${value}" is not a number; allowed: digits, with a point or a comma for decimals.`,
  twoReadings: (value: string) => `"${value}" can be read in two ways. Please choose the one you mean.`,
  nothingTold: 'Nothing is told here yet; tell at least this.',
  such: {
    mass: 'such as 2.4\u00a0kg',
    volume: 'such as 12\u00a0L',
    area: 'such as 5.76\u00a0m² or 1.2\u00a0×\u00a04.8\u00a0m',
  } as const,
  cannotEmpty: 'What was told once is not emptied here; take the entry back in the record, or tell it anew.',
  tagTaken: (tag: string) => `"${tag}" is taken by another keyholder; allowed: a tag of their own.`,
  write: 'Write it down',
  notTold: 'not told',
  yes: 'yes',
  no: 'no',
  nothingChanged: 'Nothing was changed, so nothing was written down.',
  written: 'Written down.',
  unit: 'Unit of the report',
  several: 'Several things need a look:',
} as const;

/** Names of fields; a field of a list is found by its last word. */
export const fieldNames: Readonly<Record<string, string>> = {
  name: 'Name',
  'siteRule.text': 'Site rule, as it is written',
  'siteRule.on': 'Date of the rule',
  outsideScraps: 'May scraps be brought in from outside?',
  kitchenScraps: 'Are kitchen scraps allowed?',
  cookedFood: 'Is cooked food allowed?',
  neighboursM: 'Nearest neighbour, m',
  hemisphere: 'Hemisphere, where you enter no latitude',
  timeZone: 'Time zone',
  latitudeDeg:
    'Latitude, degrees, south with a minus; for sunrise, sunset and the seasons. A tenth is enough; it is sent nowhere',
  longitudeDeg: 'Longitude, degrees, west with a minus; a tenth is enough; it is sent nowhere',
  sells: 'Is any of the harvest sold or handed on?',
  school: 'Is it a school plot, or does a class eat from it?',
  note: 'Note',
  present: 'Who is about',
  poisonLine: 'Number of the local poison line',
  tag: 'Tag',
  units: 'Units shown',
  gallon: 'Whose gallon',
  spoon: 'Whose spoons',
  decimals: 'Mark before decimals',
  language: 'Language at the bucket and the can',
  cannotSmell: 'No sense of smell?',
  area: 'Area',
  fedArea: 'Area that is fed, where it is not all',
  lengthM: 'Length, m',
  'pots.count': 'Pots',
  'pots.volumeL': 'Volume of one pot',
  crop: 'Crop',
  eaten: 'How it is eaten',
  feed: 'Feed goes',
  walkingOrder: 'Place in the walk',
  volume: 'Volume',
  lid: 'Lid',
  place: 'Where it stands',
  tap: 'Has it a tap?',
  gasRoomFraction: 'Gas room, as a fraction of the volume (a quarter is 0.25)',
  emptyMass: 'Weight when empty',
  kind: 'Kind',
  rose: 'Has it a rose?',
  nozzleMm: 'Nozzle, mm',
  source: 'Where the water comes from',
  'chlorine.kind': 'Chlorine in it',
  'chlorine.mgPerL': 'Chlorine, mg/L',
  alkalinity: 'Alkalinity',
  hardness: 'Hardness',
  ph: 'pH',
  ecDsPerM: 'Conductivity, mS/cm',
  droppings: 'Do droppings reach it (roof, birds)?',
  reportOn: 'Date of the report',
};

/** Answers, by their word in the record. */
export const answerNames: Readonly<Record<string, string>> = {
  north: 'northern',
  south: 'southern',
  children: 'children',
  dog: 'a dog',
  cat: 'a cat',
  hens: 'hens',
  'immune-weak': 'someone who falls ill easily',
  pregnant: 'someone pregnant',
  metric: 'metric',
  point: 'a point: 1.5',
  comma: 'a comma: 1,5',
  us: 'US',
  uk: 'UK (imperial)',
  imperial: 'imperial',
  au: 'Australian',
  en: 'English',
  de: 'Deutsch',
  'raw-leaf': 'raw, the leaf',
  'raw-fruit': 'raw, the fruit',
  'raw-root': 'raw, the root',
  cooked: 'cooked',
  'not-eaten': 'not eaten',
  soil: 'on the soil',
  'leaf-and-soil': 'on leaf and soil',
  none: 'none',
  vent: 'with a vent',
  loose: 'loose',
  tight: 'tight',
  can: 'can',
  jug: 'jug',
  syringe: 'syringe',
  sprayer: 'sprayer',
  tap: 'tap',
  butt: 'water butt',
  well: 'well',
  ditch: 'ditch',
  pond: 'pond',
  bought: 'bought',
  other: 'other',
  free: 'free chlorine',
  chloramine: 'chloramine',
  unknown: 'not known',
};

/** Headings and sentences of the sheet. */
export const plotWords = {
  emptyLead: 'Here will stand your plot: its rule, beds, vessels, cans and water. It starts with a name.',
  nameIt: 'Name your plot',
  zoneNote: (zone: string) => `Times are kept in ${zone}, as this device says; it can be changed below.`,
  firstStepsHeading: 'The shortest way to a first pail',
  firstSteps: { name: 'Name the plot', vessel: 'One vessel', bed: 'One bed' },
  stepDone: 'done',
  vesselName: 'Name of the vessel',
  bedName: 'Name of the bed',
  stepsDone: 'Enough for a first pail: go and weigh in.',
  toWeighIn: 'Weigh in',
  facts: 'The plot itself',
  about: 'Who is about',
  aboutNote: 'Children, animals and who eats decide what may stand where and go where.',
  wantsPoisonLine: 'Children are about: tell the number of your local poison line, so that it is at hand here.',
  keyholders: 'Keyholders',
  keyholdersNote: 'Each goes by a tag, never by a name.',
  addKeyholder: 'Add a keyholder',
  signsAs: 'On this device signs',
  beds: 'Beds',
  bedsEmpty: 'Here will stand your beds as strips in the order you walk them. Add the first one.',
  addBed: 'Add a bed',
  vessels: 'Vessels',
  vesselsEmpty: 'Here will stand your pails, drums and barrels, drawn to one scale. Add the first one.',
  addVessel: 'Add a vessel',
  cans: 'Cans, jugs and sprayers',
  cansEmpty: 'Here will stand what you measure and pour with. Add the first one.',
  addCan: 'Add a can, jug or sprayer',
  waters: 'Water',
  watersEmpty: 'Here will stand your waters and their reports. Add the first one; what is not known stays open.',
  addWater: 'Add a water or a new report',
  changeFacts: 'Change the plot’s facts',
  gone: 'It is gone',
  goneNote: 'It leaves the lists; what was done with it stays in the record.',
  toRecord: 'The record: every entry, files, corrections',
  toWeather: 'Type the weather of today and tomorrow',
  notDrawn: (names: readonly string[]) => `Without an area, so not drawn: ${names.join(', ')}.`,
  assumedWidth: `Dashed: the length was not told; drawn ${withUnit(usual('bed.widthM').likely, 'm', 1)} wide.`,
  scale: (denominator: number) => `1 : ${denominator}`,
  metres: (lengthM: number) => withUnit(lengthM, 'm', 1),
  pots: (count: number, volumeL: number) => `${count}${NBSP}pots of ${withUnit(volumeL, 'L')}`,
  usable: (litres: number) => `${figure(litres)}${NBSP}L to the fill line`,
  fillLineNote: 'Dashes: the fill line, below the gas room.',
  bedsDrawing: (names: readonly string[]) => `Beds in walking order, drawn to one scale: ${names.join(', ')}.`,
  vesselsDrawing: (names: readonly string[]) => `Vessels drawn to one scale: ${names.join(', ')}.`,
  hatchLegend: 'Hatch of a bed: how its crop is eaten',
  eatenUntold: 'not told',
} as const;

/** "Gate, 5.76 m², tomatoes, raw, the fruit; feed on the soil". */
export function bedLine(bed: {
  readonly area?: string | undefined;
  readonly pots?: string | undefined;
  readonly fedArea?: string | undefined;
  readonly crop?: string | undefined;
  readonly eaten?: string | undefined;
  readonly feed?: string | undefined;
}): string {
  const { area, pots, fedArea, crop, eaten, feed } = bed;
  const feeds = feed === undefined ? undefined : feed === 'none' ? 'no feed' : `feed ${answerNames[feed] ?? feed}`;
  return [
    pots,
    area,
    fedArea && `${fedArea} of it fed`,
    crop,
    eaten && `eaten ${answerNames[eaten] ?? eaten}`.replace('eaten not eaten', 'not eaten'),
    feeds,
  ]
    .filter(Boolean)
    .join(' · ');
}

/** "metric, gallon UK (imperial), spoons UK (imperial), Deutsch". */
export function keyholderLine(of: {
  readonly units: string | undefined;
  readonly gallon: string | undefined;
  readonly spoon: string | undefined;
  readonly decimals: string | undefined;
  readonly language: string | undefined;
  readonly cannotSmell: boolean;
}): string {
  return [
    of.units,
    of.gallon && `gallon ${of.gallon}`,
    of.spoon && `spoons ${of.spoon}`,
    of.decimals && `decimals with ${of.decimals}`,
    of.language,
    of.cannotSmell && 'no sense of smell: asks a second person',
  ]
    .filter(Boolean)
    .join(' · ');
}

/** "12 L · lid loose · shed window". */
export function vesselLine(of: {
  readonly volume: string | undefined;
  readonly lid: string | undefined;
  readonly place: string | undefined;
}): string {
  return [of.volume, of.lid && (of.lid === 'none' ? 'no lid' : `lid ${answerNames[of.lid] ?? of.lid}`), of.place]
    .filter(Boolean)
    .join(' · ');
}

/** "5 L · nozzle 0.4 mm". */
export function canLine(of: { readonly volume: string | undefined; readonly nozzleMm: number | undefined }): string {
  return [of.volume, of.nozzleMm && `nozzle ${withUnit(of.nozzleMm, 'mm')}`].filter(Boolean).join(' · ');
}
