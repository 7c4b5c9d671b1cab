// How to close what is missing, in plain English: what goes on which bed, what to buy, what holds it back and what one
// more would do. Each sentence names a bed, a material and an amount. Numbers come from the engine.

import type { BedNutrient, Buy, Use } from '#engine/ground/cover/amounts.ts';
import type { Bind, OneMore } from '#engine/ground/cover/binds.ts';
import type { CoverBed, CoverSource, SpokenUnit } from '#engine/ground/cover/input.ts';
import type { Hindrance, OpenGap } from '#engine/ground/cover/open.ts';
import type { CoverPlan, NotKnown } from '#engine/ground/cover/plan.ts';
import type { Nutrient } from '#engine/ground/need.ts';
import { besideLimit, counted, figure, withUnit } from '../figures.ts';

/** The nutrients as a grower says them. */
export const nutrientNames: Readonly<Record<Nutrient, string>> = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' };
/** Where no plan was found. */
export const noCover = 'No plan could be worked out for what is missing. The sums of each bed stand as they are.';
const letters: Readonly<Record<Nutrient, string>> = { n: 'N', p: 'P', k: 'K' };
const ALL = ['n', 'p', 'k'] as const;

/** Grams below a kilogram, one decimal below ten. */
function mass(massKg: number): string {
  if (massKg < 0.9995) return withUnit(massKg * 1000, 'g', 0);
  return withUnit(massKg, 'kg', massKg < 10 ? 1 : 0);
}

const places = (grams: number) => (grams < 10 ? 1 : 0);
const grams = (value: number) => withUnit(value, 'g', places(value));
/** Under this many grams nothing is said: it would be written as none. */
const LEAST_SAID_G = 0.05;

/** "about 2.5 barrows (100 kg)": units to the half, the mass beside them. */
export function sayAmount(massKg: number, unit: SpokenUnit | undefined): string {
  const count = unit === undefined || !(unit.massKg > 0) ? 0 : Math.round((2 * massKg) / unit.massKg) / 2;
  if (unit === undefined || !(count >= 0.5)) return mass(massKg);
  const said = count === 0.5 ? `half a ${unit.one}` : `${figure(count)} ${count === 1 ? unit.one : unit.many}`;
  return `about ${said} (${mass(massKg)})`;
}

/** "a, b and c" */
function listed(words: readonly string[]): string {
  const once = [...new Set(words)];
  return once.length < 2 ? once.join('') : `${once.slice(0, -1).join(', ')} and ${once.at(-1)}`;
}

const money = (value: number) => figure(value, 2);

/** What to put on each bed, bed by bed. */
export function sayUses(uses: readonly Use[]): readonly string[] {
  return [...new Set(uses.map(({ bed }) => bed))].map((bed) => {
    const on = uses.filter((use) => use.bed === bed);
    return `On ${bed.name} put ${listed(on.map(({ source, massKg }) => `${sayAmount(massKg, source.unit)} of ${source.name}`))}.`;
  });
}

function bedsOf(uses: readonly Use[], source: CoverSource): string {
  return listed(uses.filter((use) => use.source === source).map(({ bed }) => bed.name));
}

/** What to buy, and for which beds. */
export function sayBuys(buys: readonly Buy[], uses: readonly Use[]): readonly string[] {
  return buys.map(({ source, usedKg, massKg, packCount, cost }) => {
    const left = massKg - usedKg > 0.05 * massKg ? `, of which ${mass(massKg - usedKg)} are left over` : '';
    const packs = packCount === undefined ? '' : ` (${counted(packCount, 'pack')})`;
    return `Buy ${mass(massKg)}${packs} of ${source.name} for ${bedsOf(uses, source)}${left}: it costs ${money(cost)}.`;
  });
}

/** What one more does: grams closed, money saved; nothing where it is too little to say. */
function sayMore({ closesG, savedCost, savedMinutes }: OneMore): string {
  const closes = ALL.filter((nutrient) => closesG[nutrient] >= LEAST_SAID_G).map(
    (nutrient) => `${grams(closesG[nutrient])} more of ${nutrientNames[nutrient]}`,
  );
  const gives = ALL.filter((nutrient) => closesG[nutrient] <= -LEAST_SAID_G).map(
    (nutrient) => `${grams(-closesG[nutrient])} of ${nutrientNames[nutrient]}`,
  );
  const does = [
    ...(closes.length > 0 ? [`bring ${listed(closes)}${gives.length > 0 ? ` but ${listed(gives)} less` : ''}`] : []),
    ...(savedCost >= 0.005 ? [`save ${money(savedCost)} of money`] : []),
    ...(savedCost < 0.005 && savedMinutes >= 0.5 ? [`save ${withUnit(savedMinutes, 'minutes', 0)} of work`] : []),
  ];
  return does.length > 0 ? `would ${listed(does)}` : 'would change next to nothing';
}

/** What holds the plan back. */
export function sayBinds(binds: readonly Bind[], uses: readonly Use[]): readonly string[] {
  return binds.map((bind) => sayBind(bind, uses));
}

function sayBind(bind: Bind, uses: readonly Use[]): string {
  switch (bind.kind) {
    case 'room':
      return `${letters[bind.nutrient]} is full on ${bind.bed.name}: ${noMore(bind, uses)}.`;
    case 'salt':
    case 'fresh':
    case 'coffee':
      return `${FULL[bind.kind]} on ${bind.bed.name}: ${noMore(bind, uses)}.`;
    case 'layer':
      return `No thicker layer of ${bind.source.name} on ${bind.bed.name} than ${sayAmount(bind.mostKg, bind.source.unit)}.`;
    case 'stock': {
      const more = bind.source.unit?.one ?? 'kilogram';
      const beds = bedsOf(uses, bind.source);
      return `All ${mass(bind.haveKg)} of ${bind.source.name} are used${beds ? `, on ${beds}` : ''}: one more ${more} (${mass(bind.moreKg)}) ${sayMore(bind.oneMore)}.`;
    }
    case 'money':
    case 'minutes': {
      const what =
        bind.kind === 'money' ? `money, ${money(bind.most)},` : `time, ${withUnit(bind.most, 'minutes', 0)},`;
      const one = bind.kind === 'money' ? 'one coin more' : 'one minute more';
      const into = uses.filter(({ source }) =>
        bind.kind === 'money' ? source.costPerKg !== undefined : (source.minutesPerKg ?? 0) > 0,
      );
      const goes =
        into.length > 0
          ? `All the ${what} goes into ${listed(into.map(({ source }) => source.name))} on ${listed(into.map(({ bed }) => bed.name))}`
          : `The ${what} buys nothing yet`;
      return `${goes}: ${one} ${sayMore(bind.oneMore)}.`;
    }
  }
}

/** "no more compost there than 40 kg", of the sources that came; of all that would come where none did. */
function noMore(
  { bed, kept }: { readonly bed: CoverBed; readonly kept: readonly CoverSource[] },
  uses: readonly Use[],
): string {
  const on = uses.filter((use) => use.bed === bed && kept.includes(use.source));
  if (on.length === 0) return `no ${listed(kept.map(({ name }) => name)).replace(' and ', ' or ')} there, ${mass(0)}`;
  const total = on.reduce((sum, { massKg }) => sum + massKg, 0);
  return `no more ${listed(on.map(({ source }) => source.name))} there than ${mass(total)}`;
}

const FULL = {
  salt: 'Salt has come to its limit',
  fresh: 'Fresh material has come to its limit',
  coffee: 'Coffee grounds have come to their limit',
} as const;

const HINDERED: Readonly<Record<Hindrance, string>> = {
  stock: 'used up',
  money: 'more than the money buys',
  minutes: 'more work than there is time',
  layer: 'as thick as it may lie',
  'room-p': 'would bring too much phosphorus',
  'room-k': 'would bring too much potassium',
  salt: 'would bring too much salt',
  fresh: 'fresh, of which there is enough',
  coffee: 'coffee grounds, of which there is enough',
  'not-known': 'holds an unknown amount of something limited here',
  'kept-off': 'does not go on this bed',
  robs: 'would leave more open elsewhere than it closes here',
};

/** What kind of material would close a gap, from what keeps the others away. */
function wouldTake({ nutrient, hindered }: OpenGap): string {
  const by = new Set(hindered.flatMap((one) => one.by));
  const without = [
    ...(by.has('room-p') && nutrient !== 'p' ? ['phosphorus'] : []),
    ...(by.has('room-k') && nutrient !== 'k' ? ['potassium'] : []),
    ...(by.has('salt') ? ['salt'] : []),
  ];
  const source = `a source of ${nutrientNames[nutrient]}`;
  if (without.length > 0) return `${source} that brings next to no ${listed(without)}`;
  const only = (kinds: readonly Hindrance[]) =>
    hindered.length > 0 && hindered.every((one) => one.by.every((kind) => kinds.includes(kind)));
  const names = listed(hindered.map((one) => one.source.name));
  if (only(['stock'])) return `more ${names}, or another source of ${nutrientNames[nutrient]}`;
  if (only(['stock', 'money'])) return `more money for ${names}, or another source of ${nutrientNames[nutrient]}`;
  if (only(['stock', 'money', 'minutes'])) return `more time or help with ${names}`;
  return hindered.length > 0 ? `another source of ${nutrientNames[nutrient]} than ${names}` : source;
}

const isSaid = ({ leftG }: OpenGap) => leftG >= LEAST_SAID_G;

/** What stays short, what it would take, and why what there is does not do. */
export function sayOpen(open: readonly OpenGap[]): readonly string[] {
  return open.filter(isSaid).map((gap) => {
    const { bed, nutrient, leftG, missingG, hindered } = gap;
    const why = hindered.map(({ source, by }) => `${source.name} (${listed(by.map((one) => HINDERED[one]))})`);
    const told =
      why.length > 0 ? `: ${why.join(', ')}` : `: no material named here brings any ${nutrientNames[nutrient]}`;
    return `${bed.name} stays ${besideLimit(leftG, missingG, 'g', places(leftG))} of ${nutrientNames[nutrient]} short of the ${besideLimit(missingG, leftG, 'g', places(missingG))} it misses, and that cannot be closed without ${wouldTake(gap)}${told}.`;
  });
}

/** What stays short, a sentence a bed: the grams alone. Why, and what it would take, is `sayOpen`. */
export function sayShort(open: readonly OpenGap[]): readonly string[] {
  const said = open.filter(isSaid);
  return [...new Set(said.map(({ bed }) => bed))].map((bed) => {
    const gaps = said.filter((gap) => gap.bed === bed);
    const left = gaps.map(({ nutrient, leftG }) => `${grams(leftG)} of ${nutrientNames[nutrient]}`);
    const takes = gaps.map((gap) => nutrientNames[gap.nutrient]);
    return `${bed.name} stays ${listed(left)} short. That cannot be closed without another source of ${listed(takes).replace(/ and ([^ ]+)$/, ' or $1')}.`;
  });
}

/** What comes past what a bed misses, and with which materials. */
export function sayExcess(balance: readonly BedNutrient[], uses: readonly Use[]): readonly string[] {
  return balance
    .filter(({ overG, missingG, bed }) => overG > Math.max(LEAST_SAID_G, 0.1 * missingG, 0.1 * bed.areaM2))
    .map(({ bed, nutrient, overG }) => {
      const key = `${nutrient}G` as const;
      const from = uses.filter((use) => use.bed === bed && (use.source.perKg[key]?.likely ?? 0) > 0);
      return `${bed.name} gets ${grams(overG)} of ${nutrientNames[nutrient]} more than it misses, with ${listed(from.map(({ source }) => source.name))}.`;
    });
}

/** The whole plan, in the order of the work. Nothing where nothing is missing. */
export function sayCover(plan: CoverPlan): readonly string[] {
  const { uses, buys, binds, open, balance } = plan;
  return [
    ...sayUses(uses),
    ...sayBuys(buys, uses),
    ...sayOpen(open),
    ...sayBinds(binds, uses),
    ...sayExcess(balance, uses),
  ];
}

/** What was not known, and what was done about it. */
export function sayNotKnown(notKnown: readonly NotKnown[]): readonly string[] {
  return notKnown.map(sayUnknown);
}

function sayUnknown(one: NotKnown): string {
  const name = nutrientNames[one.nutrient];
  switch (one.kind) {
    case 'missing':
      return `How much ${name} ${one.bed.name} misses is not known: none is counted.`;
    case 'room':
      return `How much ${name} ${one.bed.name} may still get is not known: a soil test would tell, and nothing is held back for it.`;
    case 'brings':
      return `How much ${name} ${one.source.name} brings is not known: it counts as none${one.nutrient === 'n' ? '' : `, and stays off beds where ${name} is limited`}.`;
  }
}
