// The record: one plain sentence for each kind of entry, the words around searching, correcting and taking back, and
// those of the file that carries it all to another phone.

import { counted } from '../figures.ts';
import type { PegName } from '../peg-name.ts';

const NBSP = '\u00a0';

/** Fields of an entry as texts; a field that was not told is absent. */
export type Values = Readonly<Record<string, string | undefined>>;

const list = (...some: readonly (string | undefined | false)[]) => some.filter(Boolean).join(', ');
const after = (text: string, more: string) => (more === '' ? `${text}.` : `${text}: ${more}.`);
const putIn = (v: Values) => {
  const water = v.water && `${v.water} of water`;
  return list(v.parts, water, v.sugar, v.starter && `${v.starter} of starter`);
};

/** One sentence for each kind of entry. */
export const sentences = {
  'plot.described': (v: Values) => {
    const about = v.present === undefined ? undefined : v.present === '' ? 'nobody about' : `${v.present} about`;
    return after(
      'The plot',
      list(v.name, v.siteRule && 'its rule', about, v.keyholders && 'its keyholders') || 'told anew',
    );
  },
  'bed.described': (v: Values) =>
    after(`Bed ${v.name ?? v.bed ?? ''}`, list(v.gone === 'yes' && 'gone', v.area, v.pots, v.crop, v.eaten)),
  'vessel.described': (v: Values) =>
    after(`Vessel ${v.name ?? v.vessel ?? ''}`, list(v.gone === 'yes' && 'gone', v.volume, v.place)),
  'can.described': (v: Values) =>
    after(`${v.kind ?? 'can'} ${v.name ?? v.can ?? ''}`, list(v.gone === 'yes' && 'gone', v.volume)),
  'water.reported': (v: Values) =>
    after(
      `Water, ${v.name ?? v.source}`,
      list(v.alkalinity && `alkalinity ${v.alkalinity}`, v.ph && `pH${NBSP}${v.ph}`),
    ),
  'scraps.weighed': (v: Values) => `${v.mass} of ${v.name ?? v.material} weighed${v.goes ? `: ${v.goes}` : ''}.`,
  'lot.tested': (v: Values) => `${v.test} test of ${v.lot}: ${v.outcome}.`,
  'product.bought': (v: Values) => `${list(v.mass, v.volume) || 'Some'} of ${v.name} bought.`,
  'peg.filled': (v: Values) => after(`Peg ${v.peg} filled`, putIn(v)),
  'peg.toppedUp': (v: Values) => after(`${v.batch} topped up`, putIn(v)),
  'peg.split': (v: Values) => `${v.taken} of ${v.batch} moved to peg ${v.peg}.`,
  'peg.moved': (v: Values) => after(`${v.batch} moved`, list(v.vessel, v.vesselName, v.place, v.lid && `lid ${v.lid}`)),
  'peg.joined': (v: Values) => `${v.from} poured into ${v.batch}${v.taken ? `: ${v.taken}` : ', all of it'}.`,
  'peg.spilled': (v: Values) => `${v.lost} of ${v.batch} spilled.`,
  'peg.looked': (v: Values) =>
    after(
      `Look at ${v.batch}`,
      list(
        v.acidity && `pH${NBSP}${v.acidity}`,
        v.smell && `nose ${v.smell}`,
        v.surface && `top ${v.surface}`,
        v.temperatureC && `${v.temperatureC}${NBSP}°C`,
        v.lidBulged === 'yes' && 'lid bulged',
      ) || 'nothing told',
    ),
  'peg.strained': (v: Values) =>
    `${v.batch} strained: ${v.drained} drained${v.solids ? `, ${v.solids} of wet solids` : ''}.`,
  'peg.tipped': (v: Values) => `${v.batch} tipped out${v.lost ? `, ${v.lost}` : ''}: ${v.to}.`,
  'bottle.filled': (v: Values) => `${v.count ?? '1'} × ${v.filled} of ${v.batch} bottled, cap ${v.cap}.`,
  'bottle.vented': (v: Values) => `Bottles of ${v.bottle} vented${v.found ? `: ${v.found}` : ''}.`,
  'bottle.emptied': (v: Values) => `Bottles of ${v.bottle} tipped out${v.lost ? `, ${v.lost}` : ''}: ${v.to}.`,
  'bed.fed': (v: Values) => `${v.bed} fed: ${v.poured}${v.from ? `, ${v.from} in it` : ', plain water'}, ${v.way}.`,
  'bed.dressed': (v: Values) => {
    const of = v.product ?? v.heap ?? v.batch ?? v.lot ?? v.material;
    return `${v.bed} dressed: ${list(v.amount, v.what)}${of ? ` of ${of}` : ''}.`;
  },
  'bed.picked': (v: Values) => `${v.bed} picked: ${list(v.mass, v.count, v.crop) || 'some'}.`,
  'bed.planted': (v: Values) => `${v.bed} ${v.act}${v.crop ? `: ${v.crop}` : ''}.`,
  'soil.tested': (v: Values) => after(`Soil report of ${v.bed ?? 'the plot'}`, list(v.figures, v.laboratory)),
  'product.labelled': (v: Values) => `The label of ${v.product}: ${v.release}.`,
  'goal.told': (v: Values) => `Hoped to pick on ${v.bed}: ${v.goal}${v.crop ? ` of ${v.crop}` : ''}.`,
  'crop.described': (v: Values) => `Own crop ${v.name}, from: ${v.source}.`,
  'heap.fed': (v: Values) => after(`Heap ${v.heap} fed`, v.ingredients ?? ''),
  'heap.looked': (v: Values) =>
    after(`Look at heap ${v.heap}`, list(v.temperatureC && `${v.temperatureC}${NBSP}°C`, v.moisture, v.smell)),
  'weather.typed': (v: Values) => (v.what === 'forecast' ? 'A forecast was typed in.' : 'The weather was typed in.'),
  'feed.tested': (v: Values) => `Cress test of ${v.bottle ?? v.batch ?? 'a feed'}.`,
  'heap.tested': (v: Values) => `Cress test of the compost of ${v.heap}.`,
  'photo.taken': (v: Values) => `A photo of ${v.of}.`,
  'trial.laid': (v: Values) => after('Trial laid', list(v.name, v.treatments)),
  'trial.weighed': (v: Values) => `${v.trial}: ${v.block}, ${v.treatment}, ${v.mass ?? 'nothing to weigh'}.`,
  'question.answered': (v: Values) => `A question of the record was answered${v.note ? `: ${v.note}` : ''}.`,
  'lessons.reset': (v: Values) => `What finished batches taught was set back: ${v.group}.`,
} as const;

/** Names of kinds, for the list to search by. */
export const kindNames: Readonly<Record<keyof typeof sentences, string>> = {
  'plot.described': 'plot',
  'bed.described': 'bed described',
  'vessel.described': 'vessel described',
  'can.described': 'can described',
  'water.reported': 'water',
  'scraps.weighed': 'scraps weighed',
  'lot.tested': 'bean test',
  'product.bought': 'bought',
  'peg.filled': 'peg filled',
  'peg.toppedUp': 'peg topped up',
  'peg.split': 'peg split',
  'peg.moved': 'peg moved',
  'peg.joined': 'pegs joined',
  'peg.spilled': 'peg spilled',
  'peg.looked': 'look',
  'peg.strained': 'strained',
  'peg.tipped': 'peg tipped out',
  'bottle.filled': 'bottled',
  'bottle.vented': 'bottle vented',
  'bottle.emptied': 'bottle tipped out',
  'bed.fed': 'bed fed',
  'bed.dressed': 'bed dressed',
  'bed.picked': 'picked',
  'bed.planted': 'planted',
  'soil.tested': 'soil test',
  'product.labelled': 'label of a product',
  'goal.told': 'hoped to pick',
  'crop.described': 'own crop',
  'heap.fed': 'heap fed',
  'heap.looked': 'heap look',
  'weather.typed': 'weather',
  'feed.tested': 'cress test',
  'heap.tested': 'cress test of compost',
  'photo.taken': 'photo',
  'trial.laid': 'trial laid',
  'trial.weighed': 'trial weighed',
  'question.answered': 'question answered',
  'lessons.reset': 'lessons set back',
};

/** What a soil report measures. */
export const soilNames: Readonly<Record<string, string>> = {
  p: 'phosphorus',
  k: 'potassium',
  n: 'total nitrogen',
  nitrate: 'nitrate nitrogen',
  ca: 'calcium',
  mg: 'magnesium',
  ph: 'pH',
  'organic-matter': 'organic matter',
  ec: 'salt',
  other: 'another figure',
};

/** Words of the record sheet. */
export const record = {
  yes: 'yes',
  no: 'no',
  peg: (peg: PegName) => `peg${NBSP}${peg}`,
  bed: (name: string, tag: string | undefined) => (tag === undefined || tag === name ? name : `${tag}${NBSP}${name}`),
  of: (amount: string, name: string) => `${amount} of ${name}`,
  aLot: 'a lot of scraps',
  notHere: 'something not in this record',
  /** What stands as typed once a figure was corrected by itself. */
  typedAnew: (figure: string, told: Readonly<Record<string, unknown>>) =>
    figure === 'value'
      ? `${told.value}`
      : figure === 'yieldKgPerM2'
        ? `${told.yieldKgPerM2}${NBSP}kg/m²`
        : told.low === told.high
          ? `${told.likely}`
          : `${told.likely} (${told.low} to ${told.high})`,
  /** A line of a soil report: "phosphorus 30 ppm, Mehlich-3". */
  soilLine: (what: string, typed: string, unit: string, method: string | undefined) =>
    `${soilNames[what] ?? what} ${typed}${unit === 'pH' ? '' : `${NBSP}${unit}`}${method === undefined ? '' : ` by ${method}`}`,
  readBy: (typed: string, by: string) => `${typed} (${by})`,
  /** Answers that only the record names. */
  answers: {
    'butter-gone-off': 'butter gone off',
    'flat-white': 'flat white',
    'fuzzy-white': 'fuzzy white',
    'coloured-fuzz': 'coloured fuzz',
    'cannot-smell': 'cannot smell',
    'set-aside': 'set aside',
    'compost-only': 'compost only',
    'cover-crop': 'cover crop',
    soluble: 'dissolves, at hand at once',
    slow: 'has to rot first',
    in: 'goes in',
    out: 'out',
    heap: 'onto the heap',
    leaf: 'on the leaf',
    'drink-bottle': 'drink bottle',
    'pile-apart': 'onto a pile apart',
  } as Readonly<Record<string, string>>,
  empty: 'Here will stand every act of your plot, the newest first. It starts with naming the plot.',
  toPlot: 'Name the plot',
  searchHeading: 'Search',
  text: 'A word in it',
  moreToSearchBy: 'By kind, peg, bed or day',
  kind: 'Kind',
  pegField: 'Peg',
  bedField: 'Bed',
  day: 'Day',
  all: 'all',
  /** While the words of a long record are being read. */
  searching: 'Searching the record …',
  found: (shown: number, total: number) =>
    `${shown === total ? '' : `${shown} of `}${total} ${total === 1 ? 'entry' : 'entries'}`,
  nothingFound: 'No entry is like that.',
  more: (count: number) => `Show ${count} more`,
  states: { stands: 'stands', corrected: 'corrected', withdrawn: 'taken back', 'in-question': 'in question' },
  fields: 'As it was typed',
  versions: 'Every version, the first one first',
  version: (index: number, by: string, when: string) => `${index === 0 ? 'First' : 'Then'}, by ${by}, written ${when}`,
  takenBack: 'Taken back.',
  takenBackBy: (by: string, when: string) => `taken back by ${by} on ${when}`,
  writtenBy: (by: string) => `by ${by}`,
  correct: 'Correct it',
  correctNote: 'The first entry stays readable; the correction stands beside it.',
  writeCorrection: 'Write the correction down',
  withdraw: 'Take it back',
  withdrawNote: 'It stays readable here and counts no more.',
  withdrawSure: 'Yes, take it back',
  keep: 'Leave it',
  date: 'Date',
  time: 'Time, if known',
  badDate: 'This is not a date; allowed: a day of the calendar.',
  restored: 'What was taken back is told anew by a correction.',
  sealedHeading: 'Written by a newer program',
  sealed: (kind: string) => `"${kind}": kept to the letter and passed on, but not counted here.`,
  waiting: (count: number) =>
    `${count}${NBSP}${count === 1 ? 'entry waits' : 'entries wait'} for something that is not in this record yet; kept, and counted nowhere.`,
  field: (names: Readonly<Record<string, string>>, path: string) => fieldName(names, path),
} as const;

/** "mass, 2" for a field of a list, by the name of the field where it has one. */
function fieldName(names: Readonly<Record<string, string>>, path: string): string {
  const numbers = path.match(/\d+/g)?.map((n) => Number(n) + 1) ?? [];
  const plain = path.replace(/\.\d+/g, '');
  const last = plain.split('.').at(-1) ?? plain;
  const name = own[plain] ?? names[plain] ?? own[last] ?? names[last] ?? spaced(last);
  return numbers.length > 0 ? `${name}, ${numbers.join(' of ')}` : name;
}

/** "firstPickOn" as "first pick on". */
function spaced(field: string): string {
  const text = field.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Names of fields as the record shows them, where the facts sheet has none or asks in other words. */
const own: Readonly<Record<string, string>> = {
  'parts.mass': 'Weight of scraps',
  'sugar.mass': 'Weight of sugar',
  'water.volume': 'Water',
  'starter.volume': 'Starter',
  'from.volume': 'Concentrate',
  acidity: 'Sour (pH)',
  smell: 'Nose',
  surface: 'Top',
  temperatureC: 'Warmth, °C',
  poured: 'Poured',
  drained: 'Drained',
  solids: 'Wet solids',
  filled: 'In each bottle',
  count: 'How many',
  mass: 'Weight',
  batch: 'Peg',
  bed: 'Bed',
  'ratio.n': 'Ratio, 1 to or in',
  'cans.volumeL': 'In the can, L',
  'cans.concentrateMl': 'Concentrate in the can, mL',
  'cans.pouredFraction': 'Share of the can poured',
  ecDsPerM: 'Conductivity, mS/cm',
  meshMm: 'Mesh, mm',
  rest: 'Rest in the vessel',
  figures: 'Line',
  goal: 'Hoped to pick',
  release: 'How it lets go',
  harvest: 'Harvest, kg/m²',
  nNeed: 'Nitrogen to be had, g/m²',
  nContent: 'Nitrogen in the harvest, g/kg',
  pContent: 'Phosphorus in the harvest, g/kg',
  kContent: 'Potassium in the harvest, g/kg',
  depthCm: 'Depth, cm',
  yieldKgPerM2: 'Hoped to pick, kg/m²',
  nPercent: 'Nitrogen on the label, %',
  p2o5Percent: 'Phosphate (P₂O₅) on the label, %',
  k2oPercent: 'Potash (K₂O) on the label, %',
  nPercentDm: 'Nitrogen, % of dry matter',
  pPercentDm: 'Phosphorus, % of dry matter',
  kPercentDm: 'Potassium, % of dry matter',
  cn: 'C:N',
  why: 'Why',
  lost: 'How much',
  present: 'Who is about',
};

/** The file that carries the record, and what the browser keeps. */
export const files = {
  heading: 'Files',
  move: 'Move to another phone',
  moveNote:
    'One file with every entry and every photo. On the other phone it is taken in below; the same file twice does no harm.',
  make: 'Make the file',
  lastFile: (date: string) => `Last checked file: ${date}.`,
  noFile: 'No file of this record was checked yet.',
  take: 'Take in a file',
  choose: 'Choose the file',
  takeNote: 'All of it or nothing: a line that cannot be read refuses the file, and nothing here changes.',
  taken: (fresh: number, already: number, sealed: number) =>
    `Taken in: ${counted(fresh, 'new entry', 'new entries')}; ${already} stood here already${sealed > 0 ? `; ${sealed} are of a newer program and kept as they are` : ''}.`,
  refused: (lines: number) =>
    `The file was refused; ${lines}${NBSP}${lines === 1 ? 'line' : 'lines'} cannot be read. Nothing here changed.`,
  refusedLine: (line: number, field: string, message: string, allowed: string) =>
    `Line ${line}, ${field}: ${message}; allowed: ${allowed}.`,
  moreLines: (count: number) => `and ${counted(count, 'more line', 'more lines')}`,
  otherPlot:
    'This file is of another plot, and this device keeps one plot. Forget this one first, or use another browser for it.',
  severalPlots: 'This file holds several plots, and none of them is the one kept here.',
  keepHeading: 'How well this browser keeps it',
  persisted: 'The browser says it keeps this record until you remove it.',
  notPersisted: 'The browser may clear this record away when space runs short or after weeks without use.',
  askPersist: 'Ask the browser to keep it',
  refusedPersist: 'The browser did not agree. It may once the page is installed on the home screen.',
  usage: (used: string, quota: string) => `${used} used of the ${quota} the browser allows.`,
  nearlyFull: 'The browser has little room left for this page: make a file now.',
  forget: 'Forget everything on this phone',
  forgetNote: 'Removes every entry, photo and draft from this browser. Files you made stay where you put them.',
  forgetNow: 'Forget it all',
  room: (bytes: number) =>
    bytes < 1e9 ? `${(bytes / 1e6).toFixed(bytes < 1e7 ? 1 : 0)}${NBSP}MB` : `${(bytes / 1e9).toFixed(1)}${NBSP}GB`,
} as const;

/** Why the browser did not keep something; nothing that stood before is lost. */
export const failures = {
  full: 'Not kept: the browser has no room left for this page. Make a file of the record, then make room. Nothing that stood before is lost.',
  refused: 'Not kept: this browser keeps nothing here, as in a private window. Open the page in an ordinary one.',
  blocked: 'Not kept: another tab with an older program holds the record. Close it and try again.',
  outdated: 'Not kept: another tab runs a newer program. Load this page again.',
  different: 'Not kept: an entry with that id stands here with another content.',
  unreadable: 'Not kept: it could not be read back.',
  closed: 'Not kept: the record was closed. Load the page again; what was typed stays.',
  deleted:
    'Not kept: the record was deleted from this browser while this page was open. This page still shows it: make a file now.',
  broken: 'Not kept: the browser failed to write. Try again; what was typed stays.',
} as const;
