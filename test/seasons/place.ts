// The first visit: who writes and how, the plot, its beds, vessels, cans and the water, told in the forms of the facts sheet.

import { readKeyholder, readThing, readWater } from '#tasks/plot/facts.ts';
import type { Typed } from '#tasks/plot/form.ts';
import { area, between, type Draw, figure, mostly, pick, volume } from './amounts.ts';
import type { Book } from './book.ts';
import { type Grower, TAG, taken } from './grower.ts';

const LONG = 'under the old pear tree, Bohnenrankgerüstbeetreihe';
const CROPS = ['tomato', 'kale', 'lettuce', 'carrot', 'squash', 'potato', '8 tomatoes', 'cabbage, onion', undefined];
const VESSELS = ['bucket', 'tall tub', 'old barrel', 'Regentonne hinter dem Gewächshaus am Zaun', 'blue drum'];

/** Milliequivalents for one of each unit of a water report, by their definitions. */
const MEQ = { 'mg/L CaCO3': 1 / 50.043, dH: 10 / 28.039 } as const;

const told = (fields: Readonly<Record<string, string | undefined>>): Typed =>
  Object.fromEntries(Object.entries(fields).filter((pair): pair is [string, string] => pair[1] !== undefined));

function thing(grower: Grower, form: Parameters<typeof readThing>[0], typed: Typed) {
  const { act } = taken(form, readThing(form, typed, { countries: grower.countries, now: grower.now }), typed);
  if (act === undefined) throw new Error(`${form}: nothing to write`);
  return grower.did(act.kind, act.body);
}

/** Everything of the first visit. */
export function firstVisit(draw: Draw, grower: Grower, book: Book): void {
  const { hand } = grower;
  const south = between(draw, 1, 4) === 1;
  const latitude = figure(draw, hand, (south ? -1 : 1) * (30 + between(draw, 0, 250) / 10), 1);
  book.sells = between(draw, 1, 6) === 1;
  const plot = told({
    name: mostly(draw) ? 'Lower plot' : `between the railway bank and Kleingartenanlage`,
    hemisphere: south ? 'south' : 'north',
    latitudeDeg: latitude.text,
    sells: book.sells ? 'yes' : undefined,
  });
  signs(grower);
  thing(grower, 'plot', plot);
  grower.meant('latitude', grower.plot.facts.latitudeDeg, latitude);
  for (let i = between(draw, 1, 5); i > 0; i--) bed(draw, grower, book);
  for (let i = between(draw, 1, 2); i > 0; i--) vessel(draw, grower, book);
  for (let i = between(draw, 1, 2); i > 0; i--) can(draw, grower, book);
  if (mostly(draw)) tap(draw, grower, book);
}

/** Who signs, and whose gallon, spoon and mark before decimals is meant. */
function signs(grower: Grower): void {
  const { units, decimals, language } = grower.hand;
  const typed = told({
    tag: TAG,
    units,
    gallon: units === 'metric' ? undefined : units === 'us' ? 'us' : 'uk',
    spoon: units === 'metric' ? 'metric' : units === 'us' ? 'us' : 'uk',
    decimals,
    language,
  });
  const { act } = taken('keyholder', readKeyholder(typed, grower.plot, undefined), typed);
  if (act !== undefined) grower.did(act.kind, act.body);
}

function bed(draw: Draw, grower: Grower, book: Book): void {
  const { hand } = grower;
  const name = `${pick(draw, 'Gate', 'Middle', 'Sunny')} ${book.beds.length + 1}${mostly(draw) ? '' : ` ${LONG}`}`;
  const tag = mostly(draw) ? `B${book.beds.length + 1}` : undefined;
  const inPots = between(draw, 1, 5) === 1;
  const size = inPots ? undefined : area(draw, hand, 0.8, 14);
  const pots = inPots ? between(draw, 2, 12) : undefined;
  const pot = inPots ? volume(draw, hand, 3, 20) : undefined;
  const fed =
    size !== undefined && between(draw, 1, 5) === 1 ? area(draw, hand, 0.2 * size.si, 0.8 * size.si) : undefined;
  const crop = pick(draw, ...CROPS);
  const eaten = pick(draw, 'raw-leaf', 'raw-fruit', 'raw-root', 'cooked', 'cooked', 'cooked', 'not-eaten', undefined);
  const feed = pick(draw, 'soil', 'soil', 'soil', 'leaf-and-soil', 'none', undefined);
  const walkingOrder = mostly(draw) ? book.beds.length + 1 : undefined;
  const long = size !== undefined && mostly(draw) ? figure(draw, hand, 1 + between(draw, 0, 40) / 10, 1) : undefined;
  const { id, body } = thing(grower, 'bed', {
    ...told({
      name,
      tag,
      crop,
      eaten,
      feed,
      area: size?.text,
      lengthM: long?.text,
      fedArea: fed?.text,
      'pots.count': pots?.toString(),
      'pots.volumeL': pot?.text,
      walkingOrder: walkingOrder?.toString(),
    }),
  });
  const kept = grower.plot.beds.get(id)?.facts;
  if (size) grower.meant('area of a bed', kept?.area?.areaM2, size);
  if (long) grower.meant('length of a bed', kept?.lengthM, long);
  if (fed) grower.meant('fed area of a bed', kept?.fedArea?.areaM2, fed);
  if (pot) grower.meant('litres of a pot', kept?.pots?.volumeL, pot);
  if (kept === undefined) throw new Error(`no bed of ${JSON.stringify(body)}`);
  book.beds.push({
    id,
    name,
    tag,
    areaM2: size?.si,
    fedM2: fed?.si,
    pots,
    potL: pot?.si,
    crop,
    eaten,
    feed,
    walkingOrder,
  });
}

function vessel(draw: Draw, grower: Grower, book: Book): void {
  const { hand } = grower;
  const name = `${pick(draw, ...VESSELS)} ${book.vessels.length + 1}`;
  const size = volume(draw, hand, 10, 60);
  const gas = mostly(draw) ? undefined : figure(draw, hand, between(draw, 20, 40) / 100, 2);
  const lid = pick(draw, 'loose', 'vent', undefined);
  const { id } = thing(grower, 'vessel', told({ name, volume: size.text, lid, gasRoomFraction: gas?.text }));
  const kept = grower.plot.vessels.get(id);
  grower.meant('size of a vessel', kept?.volume?.volumeL, size);
  if (gas) grower.meant('gas room', kept?.gasRoomFraction, gas);
  book.vessels.push({ id, name, volumeL: size.si, gasRoom: gas?.si ?? 0.25, lid });
}

function can(draw: Draw, grower: Grower, book: Book): void {
  const size = volume(draw, grower.hand, 4, 12);
  const name = `${pick(draw, 'green can', 'zinc can with the long spout')} ${book.cans.length + 1}`;
  const { id } = thing(grower, 'can', told({ name, kind: pick(draw, 'can', undefined), volume: size.text }));
  grower.meant('size of a can', grower.plot.cans.get(id)?.volume?.volumeL, size);
  book.cans.push({ id, volumeL: size.si });
}

function tap(draw: Draw, grower: Grower, book: Book): void {
  const { hand } = grower;
  const unit = pick(draw, 'mg/L CaCO3' as const, 'dH' as const);
  const alkalinity = mostly(draw)
    ? figure(draw, hand, unit === 'dH' ? between(draw, 1, 24) : between(draw, 12, 400), 0)
    : undefined;
  const ph = mostly(draw) ? figure(draw, hand, 6.5 + between(draw, 0, 15) / 10, 1) : undefined;
  const typed = told({
    source: 'tap',
    alkalinity: alkalinity?.text,
    'alkalinity.unit': alkalinity === undefined ? undefined : unit,
    ph: ph?.text,
  });
  const { act } = taken('water', readWater(typed, grower.now), typed);
  if (act === undefined) throw new Error('water: nothing to write');
  const { id, body } = grower.did(act.kind, act.body);
  const meq = alkalinity && { text: `${alkalinity.text} ${unit}`, si: alkalinity.si * MEQ[unit] };
  // The report's units are equivalents of a salt: the last digits of its molar mass differ from book to book.
  const kept = (body as { readonly alkalinity?: { readonly alkalinityMeqPerL: number } }).alkalinity?.alkalinityMeqPerL;
  if (meq && !(kept !== undefined && Math.abs(kept / meq.si - 1) < 0.001)) grower.meant('alkalinity', kept, meq);
  book.tap = { id, alkalinityMeqPerL: kept, ph: ph?.si };
}
