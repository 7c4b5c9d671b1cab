// A heap in plain English: cautions, why a mix does or does not meet its goals, the rows, what is left at the end, and
// what each published rule says of its log. Nothing is computed here.

import type { Partner } from '#engine/heap/mends.ts';
import type { Missing, Verdict } from '#engine/heap/sanitation.ts';
import type { Goals, Kind } from '#engine/heap/solve.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { Values } from '#engine/rules/rule.ts';
import { band, besideLimit, counted, figure, withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** One sentence or two for each rule about a heap. */
export const heapCautions: Readonly<Record<string, (values: Values) => string>> = {
  'heap-keep-out': (v) => `Keep out of this heap: ${v.materials}.`,
  'heap-weedkiller': (v) =>
    `Weedkiller was used on ${v.materials}. Some kinds stay active through a heap for months or years and harm beans, tomatoes and lettuce: keep it out.`,
  'heap-weedkiller-not-known': (v) =>
    `Nobody knows whether weedkiller was used on ${v.materials}. Wait with it until a bean test has cleared it, or give it a pile of its own.`,
  'heap-manure': (v) =>
    `With ${v.materials} in it this heap counts as raw manure until a rule on heat is met: ${withUnit(n(v, 'daysOffSoil'), 'days', 0)} before harvest, ${withUnit(n(v, 'daysOnSoil'), 'days', 0)} where the edible part touches soil. These are the days of United States organic growers; local codes come first.`,
  'heap-too-wet': (v) =>
    `At ${besideLimit(n(v, 'moisturePercent'), n(v, 'mostPercent'), '%', 0)} water the mix is too wet for air (a heap works up to ${besideLimit(n(v, 'mostPercent'), n(v, 'moisturePercent'), '%', 0)}): add something dry and coarse.`,
  'heap-too-dry': (v) =>
    `At ${besideLimit(n(v, 'moisturePercent'), n(v, 'leastPercent'), '%', 0)} water the mix is too dry (at least ${besideLimit(n(v, 'leastPercent'), n(v, 'moisturePercent'), '%', 0)}); below ${withUnit(n(v, 'stopsPercent'), '%', 0)} a heap stands still. Water it while you build it.`,
  'heap-too-rich': (v) =>
    `C:N ${besideLimit(n(v, 'cn'), n(v, 'leastCn'), '', 0)} is under ${besideLimit(n(v, 'leastCn'), n(v, 'cn'), '', 0)}: nitrogen leaves as ammonia. Add browns such as leaves, straw or cardboard.`,
  'heap-too-poor': (v) =>
    `C:N ${besideLimit(n(v, 'cn'), n(v, 'mostCn'), '', 0)} is over ${besideLimit(n(v, 'mostCn'), n(v, 'cn'), '', 0)}: it will rot slowly and stay cold. Add greens such as clippings or scraps.`,
  'heap-cn-not-known': (v) => `Carbon and nitrogen are not known for ${v.materials}: counted for moisture alone.`,
  'heap-coffee-grounds': (v) =>
    v.coffeePercent === undefined
      ? `The share of coffee grounds cannot be told here. Keep them to ${figure(n(v, 'leastPercent'), 0)} to ${besideLimit(n(v, 'mostPercent'), n(v, 'coffeePercent'), '%', 0)} of the volume, well mixed in.`
      : `Coffee grounds are about ${besideLimit(n(v, 'coffeePercent'), n(v, 'mostPercent'), '%', 0)} of the volume. Keep them to ${figure(n(v, 'leastPercent'), 0)} to ${besideLimit(n(v, 'mostPercent'), n(v, 'coffeePercent'), '%', 0)}, well mixed in.`,
  'heap-sour-solids': (v) =>
    `${v.materials}: wet and sour. Layer it with dry browns; it needs no lime, since its acid is gone within days once air gets in.`,
  'heap-core-too-hot': (v) =>
    `The core is at ${besideLimit(n(v, 'coreC'), n(v, 'mostC'), '°C', 0)}, over ${besideLimit(n(v, 'mostC'), n(v, 'coreC'), '°C', 0)}: turn it or open it to let heat out.`,
  'heap-foul': (v) =>
    v.wet === true
      ? 'Too wet or short of air: turn it and mix in something dry and coarse, such as straw or twigs.'
      : 'The smell says that air is short: turn it and mix in something dry and coarse, such as straw or twigs.',
  'heap-ammonia': () =>
    'Ammonia is nitrogen going into the air: mix in browns such as leaves, straw or cardboard, and cover it.',
  'heap-dry': () =>
    'Too dry to work: turn it and water it layer by layer, until a squeezed handful just holds together.',
  'heap-cooled': (v) =>
    `The core has cooled to ${besideLimit(n(v, 'coreC'), n(v, 'leastC'), '°C', 0)}. Turn it, outside in: it heats again if there is food left in it (below ${besideLimit(n(v, 'leastC'), n(v, 'coreC'), '°C', 0)} it hardly works).`,
  'heap-fed-since': (v) =>
    `Fresh material came in on day ${figure(n(v, 'fedDay'), 0)}: the days of heat are counted from there, since none before it heated what is new.`,
  'heap-core-only': () =>
    'A probe at the core proves the core only. The edge stays cooler, which is why turning counts; wash what is eaten raw.',
  'heap-plants-only': () =>
    'With nothing of animals in it, United States organic rules ask no days of heat of this heap; heat is good practice all the same. Local codes come first.',
  'heap-too-small-to-heat': (v) =>
    `About ${besideLimit(n(v, 'volumeM3'), n(v, 'leastM3'), 'm³', 2)}: under ${besideLimit(n(v, 'leastM3'), n(v, 'volumeM3'), 'm³', 0)} a heap loses its heat quickly and may never get hot. It becomes compost all the same, slowly.`,
};

/** What may be done in place of what a stop stops. */
export const heapInstead: Readonly<Record<string, string>> = {
  'heap-keep-out':
    'Use the food-waste or garden-waste collection, or do as your local rules say; build the heap of the other rows.',
  'heap-weedkiller': 'Leave it where it grew, as the label of the product says, and build the heap of the other rows.',
};

/** What the sentence about the goals is made from. */
export interface WhySaid {
  readonly kind: Kind;
  readonly met: boolean;
  readonly goals: Goals;
  readonly soughtNames: readonly string[];
  readonly waterL: number;
  readonly workable: boolean;
  readonly cnAlone?: { readonly moisturePercent: number } | undefined;
  readonly moistureAlone?: { readonly cn: number } | undefined;
  readonly partners: readonly Partner[];
  readonly waterOffL?: number | undefined;
  readonly acceptable: { readonly cn: Span; readonly moisturePercent: Span };
}

interface Span {
  readonly least: number;
  readonly most: number;
}

const HOW: Readonly<Record<Kind, string>> = {
  'nothing-sought': '',
  exact: 'As many masses were to be found as there are goals: there is one answer.',
  spread: 'More masses were to be found than there are goals: of the mixes that meet them this one needs least.',
  fewer: 'Fewer masses were to be found than there are goals: found by least squares.',
};

/** Why the mix is as it is: one text. */
export function sayWhy(said: WhySaid): string {
  const { goals, kind, met } = said;
  if (goals.cn === undefined && goals.moisturePercent === undefined) {
    const { cn, moisturePercent } = said.acceptable;
    const range = `C:N ${cn.least} to ${cn.most} and ${moisturePercent.least} to ${withUnit(moisturePercent.most, '%')} water`;
    return met ? `It lies where a heap works: ${range}.` : `It lies outside of where a heap works: ${range}.`;
  }
  if (met) {
    const water = said.waterL > 0 ? ' The water is part of it.' : '';
    return `${HOW[kind]}${water}`.trim() || 'Every goal is met.';
  }
  return [conflict(said), HOW[kind], ...waysOut(said)].filter((one) => one !== '').join(' ');
}

function conflict({ goals, soughtNames, cnAlone, moistureAlone, kind }: WhySaid): string {
  const both = goals.cn !== undefined && goals.moisturePercent !== undefined;
  const goal = both
    ? `C:N ${figure(goals.cn ?? 0)} and ${withUnit(goals.moisturePercent ?? 0, '%')} water`
    : goals.cn === undefined
      ? `${withUnit(goals.moisturePercent ?? 0, '%')} water`
      : `C:N ${figure(goals.cn)}`;
  if (kind === 'nothing-sought') return `These masses do not meet ${goal}.`;
  const by = soughtNames.join(', ');
  if (!both) return `No amount of ${by} within its limits gives ${goal}.`;
  const gives = [
    ...(cnAlone === undefined
      ? [`no amount gives C:N ${figure(goals.cn ?? 0)}`]
      : [`at C:N ${figure(goals.cn ?? 0)} the mix holds ${withUnit(cnAlone.moisturePercent, '%', 0)} water`]),
    ...(moistureAlone === undefined
      ? [`no amount gives ${withUnit(goals.moisturePercent ?? 0, '%')} water`]
      : [`at ${withUnit(goals.moisturePercent ?? 0, '%')} water its C:N is ${figure(moistureAlone.cn, 0)}`]),
  ];
  return `${goal} cannot both be met with ${by}: ${gives.join('; ')}.`;
}

function waysOut({ partners, waterOffL, workable, kind }: WhySaid): readonly string[] {
  const nearest = workable
    ? 'The nearest mix with which a heap still works is given.'
    : 'The nearest mix is given; no amounts of these rows bring it to where a heap works.';
  const added = partners.map(({ ingredient, massKg }) => `${withUnit(massKg, 'kg')} of ${ingredient.name}`);
  return [
    ...(kind === 'nothing-sought' ? [] : [nearest]),
    ...(added.length > 0 ? [`Both are met with ${added.join(', or with ')} besides.`] : []),
    ...(waterOffL === undefined
      ? []
      : [`Or drain or dry the wet rows first, by about ${withUnit(waterOffL, 'L', 1)} of water, and meet C:N.`]),
  ];
}

/** The answer as it is said. */
export interface HeapSaid {
  readonly masses: readonly {
    readonly name: string;
    readonly massKg: number;
    readonly massKgRange: Range;
    readonly found: boolean;
    readonly volumeL: Range | null;
    readonly container?: { readonly of: string; readonly litresEach: number; readonly count: Range };
  }[];
  readonly cn: number | null;
  readonly cnRange: Range | null;
  readonly moisturePercentRange: Range;
  readonly waterL: number;
  readonly moistureWithWaterPercent: number;
  readonly why: string;
  readonly dryToAdd: readonly { readonly name: string; readonly massKg: number }[];
  readonly left: {
    readonly massKg: Range;
    readonly carbonKg: Range;
    readonly nitrogenKg: Range;
    readonly potassiumKg: Range | null;
    readonly volumeL: Range | null;
  };
  readonly heat?: HeatSaid;
}

/** What a log comes to. */
export interface HeatSaid {
  readonly verdicts: readonly Verdict[];
  readonly cooling: { readonly tauDays: number; readonly readingsCount: number } | null;
}

interface LeftSaid {
  readonly massKg: Range;
  readonly carbonKg: Range;
  readonly nitrogenKg: Range;
  readonly potassiumKg?: Range | null | undefined;
  readonly volumeL?: Range | null | undefined;
}

/** What is left of a heap at the end. */
export function sayLeft({ massKg, carbonKg, nitrogenKg, potassiumKg, volumeL }: LeftSaid): string {
  const litres = volumeL ? `, ${band(volumeL, 'L', 0)}` : '';
  const potassium = potassiumKg ? ` and ${band(inGrams(potassiumKg), 'g', 0)} of potassium` : '';
  return `Left at the end, roughly: ${band(massKg, 'kg')} of compost${litres}, with ${band(carbonKg, 'kg')} of carbon and ${band(inGrams(nitrogenKg), 'g', 0)} of nitrogen${potassium}.`;
}

/** A heap, sentence by sentence. */
export function sayHeap(said: HeapSaid): readonly string[] {
  return [
    ...said.masses.map(sayRow),
    `C:N of the mix: ${said.cnRange === null ? 'not known' : band(said.cnRange, '', 0)}. Water in it: ${band(said.moisturePercentRange, '%', 0)}.`,
    ...(said.waterL > 0
      ? [
          `Add ${withUnit(said.waterL, 'L', 1)} of water, layer by layer: it then holds ${withUnit(said.moistureWithWaterPercent, '%', 0)}.`,
        ]
      : []),
    ...(said.dryToAdd.length > 0
      ? [
          `Too wet for its goal. Any one of these would dry it: ${said.dryToAdd.map(({ name, massKg }) => `${withUnit(massKg, 'kg')} of ${name}`).join('; ')}.`,
        ]
      : []),
    ...(said.why === '' ? [] : [said.why]),
    sayLeft(said.left),
    ...(said.heat === undefined ? [] : sayHeat(said.heat)),
  ];
}

function sayRow(row: HeapSaid['masses'][number]): string {
  const { container } = row;
  const amount = container
    ? `${band(container.count, container.litresEach > 0 ? `${container.of}s of ${withUnit(container.litresEach, 'L', 0)}` : container.of, 1)}, ${band(row.massKgRange, 'kg')}`
    : `${band(row.massKgRange, 'kg')}${row.volumeL === null ? '' : `, loose about ${band(row.volumeL, 'L', 0)}`}`;
  return `${row.name}${row.found ? ' (found)' : ''}: ${amount}.`;
}

function inGrams({ low, likely, high }: Range): Range {
  return { low: 1000 * low, likely: 1000 * likely, high: 1000 * high };
}

const RULE_NAMES: Readonly<Record<Verdict['rule'], string>> = {
  'cfr-7': 'United States organic rule (7 CFR 205.203)',
  'cfr-21': 'United States produce rule (21 CFR 112.54)',
  'cfr-40': 'United States sludge rule, stronger class (40 CFR 503)',
  'cfr-40-slight': 'United States sludge rule, weaker class (40 CFR 503)',
  nosb: 'United States organic board 2006, all of the material hot',
};
const WAY_NAMES: Readonly<Record<Verdict['way'], string>> = {
  still: ', closed vessel or aerated pile',
  turned: ', turned heap',
  any: '',
};

/** What each rule says of the log, and the cooling. */
export function sayHeat({ verdicts, cooling }: HeatSaid): readonly string[] {
  return [
    ...verdicts.map(sayVerdict),
    ...(cooling === null
      ? []
      : [
          `Cooling, fitted to ${counted(cooling.readingsCount, 'reading')} of this heap: the gap to the air shrinks to about a third in ${withUnit(cooling.tauDays, 'days', 1)}.`,
        ]),
  ];
}

/** The name of a rule as a table and a drawing call it. */
export function ruleName({ rule, way }: Pick<Verdict, 'rule' | 'way'>): string {
  return RULE_NAMES[rule] + WAY_NAMES[way];
}

/** One rule: met by the log, or what is still missing. */
export function sayVerdict(verdict: Verdict): string {
  const name = ruleName(verdict);
  const { span } = verdict;
  const days = span === undefined ? '' : ` (days ${figure(span.fromDay, 0)} to ${figure(span.toDay, 0)})`;
  return verdict.met
    ? `${name}: its days of heat are in the log${days}.`
    : `${name}: not met; missing: ${verdict.missing.map(sayMissing).join(', ')}.`;
}

/** One thing still missing. */
export function sayMissing(missing: Missing): string {
  switch (missing.what) {
    case 'days':
      return `${counted(missing.count, 'hot day', missing.inARow ? 'more hot days in a row' : 'more hot days')}`;
    case 'turnings':
      return counted(missing.count, 'turning while hot', 'turnings while hot');
    case 'start-cn-not-told':
      return 'C:N at the start';
    case 'start-cn-outside':
      return `a C:N of ${missing.least} to ${missing.most} at the start (it was ${figure(missing.cn, 0)})`;
    case 'method':
      return missing.way === 'still' ? 'a closed vessel or a pile with air led through' : 'a heap that is turned';
    case 'curing':
      return 'curing after the heat';
    case 'hours':
      return `${withUnit(missing.count, 'h', 0)} at ${withUnit(missing.leastC, '°C', 0)} or more in one of those days, told by the hour`;
    case 'edge':
      return 'as many days as hot at the edge';
  }
}
