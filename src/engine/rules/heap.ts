// What to mind about a heap: what must stay out of it, a mix that is too wet, too dry, too rich or too poor, and what a
// look and a log say. The arithmetic is heap/; what the published rules on heat say of a log is heap/sanitation.ts.

import { RAW_MANURE_DAYS } from '../can/limits.ts';
import { ACCEPTABLE, heapFigure } from '../heap/figures.ts';
import type { Ingredient } from '../heap/ingredient.ts';
import type { HeapSmell, TurningAdvice } from '../heap/turning.ts';
import type { Rule, Values } from './rule.ts';

/** A mix as it would be built. */
export interface HeapMixSituation {
  readonly ingredients: readonly Ingredient[];
  /** C:N and moisture with the water to be added; undefined where not known. */
  readonly cn: number | undefined;
  readonly moisturePercent: number;
  /** Share of coffee grounds in the loose volume; NaN where it cannot be told, 0 without any. */
  readonly coffeePercent: number;
  /** Rows whose C:N nobody knows. */
  readonly withoutCn: readonly string[];
}

/** A heap as it is looked at. */
export interface HeapLookSituation {
  readonly advice: TurningAdvice;
  readonly smell: HeapSmell | undefined;
  /** A log of temperatures is there to be judged. */
  readonly logged: boolean;
  /** Whether fresh material came after the heap was built, and on which day. */
  readonly fedDay: number | undefined;
  /** Manure is in it: undefined where its rows are not told. */
  readonly manure: boolean | undefined;
  readonly volumeM3: number | undefined;
}

const MOST_COFFEE = heapFigure('coffee-grounds', 'mostVolumePercent');
const STALLS = heapFigure('stalls', 'moisturePercent');
const SELF_HEATS_M3 = heapFigure('heap', 'selfHeatsM3').likely;

/** Names of the rows that a test picks, as one text; false where it picks none. */
function named(ingredients: readonly Ingredient[], picks: (one: Ingredient) => boolean): false | { materials: string } {
  const materials = ingredients.filter(picks).map(({ name }) => name);
  return materials.length > 0 && { materials: materials.join(', ') };
}

export const heapMixRules: readonly Rule<HeapMixSituation>[] = [
  {
    id: 'heap-keep-out',
    level: 'stop',
    override: 'none',
    source: 'our-caution',
    looksAt: 'the kind of each row: animal matter, plate scraps, waste of pets or people, diseased haulm',
    speaksFor: 'general',
    when: ({ ingredients }) => named(ingredients, ({ into }) => into === 'out'),
  },
  {
    id: 'heap-weedkiller',
    level: 'stop',
    override: 'none',
    source: 'npic-herbicides-in-compost',
    locator: 'composting does not break them down',
    looksAt: 'what was told of weedkiller for each row',
    speaksFor: 'general',
    when: ({ ingredients }) => named(ingredients, ({ treated }) => treated === 'yes'),
  },
  {
    id: 'heap-weedkiller-not-known',
    level: 'hold',
    source: 'npic-herbicides-in-compost',
    locator: 'bioassay',
    looksAt: 'rows of which nobody knows whether weedkiller was used',
    speaksFor: 'general',
    when: ({ ingredients }) => named(ingredients, ({ treated, into }) => treated === 'unknown' || into === 'set-aside'),
  },
  {
    id: 'heap-manure',
    level: 'caution',
    source: 'cfr-7-205-203',
    locator: '(c)(1) and (c)(2)',
    looksAt: 'rows that are manure',
    speaksFor: ['us'],
    when: ({ ingredients }) => {
      const found = named(ingredients, ({ group }) => group === 'manure');
      return found && { ...found, daysOffSoil: RAW_MANURE_DAYS.otherwise, daysOnSoil: RAW_MANURE_DAYS.touchesSoil };
    },
  },
  {
    id: 'heap-too-wet',
    level: 'caution',
    source: 'composting-handbook',
    locator: 'chapter 4 table 4.2',
    looksAt: 'the moisture of the mix above the range in which a heap works',
    speaksFor: 'general',
    when: ({ moisturePercent }) =>
      moisturePercent <= ACCEPTABLE.moisturePercent.most
        ? false
        : { moisturePercent, mostPercent: ACCEPTABLE.moisturePercent.most },
  },
  {
    id: 'heap-too-dry',
    level: 'caution',
    source: 'composting-handbook',
    locator: 'chapter 4 table 4.2',
    looksAt: 'the moisture of the mix below the range in which a heap works',
    speaksFor: 'general',
    when: ({ moisturePercent }) =>
      moisturePercent < ACCEPTABLE.moisturePercent.least && {
        moisturePercent,
        leastPercent: ACCEPTABLE.moisturePercent.least,
        stopsPercent: STALLS.low,
      },
  },
  {
    id: 'heap-too-rich',
    level: 'caution',
    source: 'composting-handbook',
    locator: 'chapter 4 table 4.2',
    looksAt: 'C:N of the mix below the range in which a heap works',
    speaksFor: 'general',
    when: ({ cn }) => cn !== undefined && cn < ACCEPTABLE.cn.least && { cn, leastCn: ACCEPTABLE.cn.least },
  },
  {
    id: 'heap-too-poor',
    level: 'caution',
    source: 'composting-handbook',
    locator: 'chapter 4 table 4.2',
    looksAt: 'C:N of the mix above the range in which a heap works',
    speaksFor: 'general',
    when: ({ cn }) => cn !== undefined && !(cn <= ACCEPTABLE.cn.most) && { cn, mostCn: ACCEPTABLE.cn.most },
  },
  {
    id: 'heap-cn-not-known',
    level: 'note',
    source: 'our-caution',
    looksAt: 'rows whose carbon and nitrogen nobody knows',
    speaksFor: 'general',
    when: ({ withoutCn }) => withoutCn.length > 0 && { materials: withoutCn.join(', ') },
  },
  {
    id: 'heap-coffee-grounds',
    level: 'note',
    source: 'our-caution',
    looksAt: 'the share of coffee grounds in the loose volume',
    speaksFor: 'general',
    when: ({ coffeePercent }): false | Values => {
      if (coffeePercent <= MOST_COFFEE.low) return false;
      const limits = { leastPercent: MOST_COFFEE.low, mostPercent: MOST_COFFEE.high };
      return Number.isFinite(coffeePercent) ? { ...limits, coffeePercent } : limits;
    },
  },
  {
    id: 'heap-sour-solids',
    level: 'note',
    source: 'practice',
    looksAt: 'strained solids of a sour batch among the rows',
    speaksFor: 'general',
    when: ({ ingredients }) => named(ingredients, ({ id }) => id === 'strained-solids'),
  },
];

export const heapLookRules: readonly Rule<HeapLookSituation>[] = [
  {
    id: 'heap-core-too-hot',
    level: 'caution',
    source: 'composting-handbook',
    locator: 'chapter 4 table 4.2',
    looksAt: 'the last reading of the core above the range in which a heap works',
    speaksFor: 'general',
    when: ({ advice: { reasons, coreC } }) =>
      reasons.includes('too-hot') && { coreC: coreC ?? Number.NaN, mostC: ACCEPTABLE.temperatureC.most },
  },
  {
    id: 'heap-foul',
    level: 'caution',
    source: 'practice',
    looksAt: 'a smell of egg, sewage or sour, or a handful that drips',
    speaksFor: 'general',
    when: ({ advice: { reasons }, smell }) =>
      (reasons.includes('foul') || reasons.includes('wet')) && { smell: smell ?? 'none', wet: reasons.includes('wet') },
  },
  {
    id: 'heap-ammonia',
    level: 'caution',
    source: 'practice',
    looksAt: 'a smell of ammonia',
    speaksFor: 'general',
    when: ({ advice }) => advice.reasons.includes('ammonia') && {},
  },
  {
    id: 'heap-dry',
    level: 'caution',
    source: 'practice',
    looksAt: 'a handful that feels dry',
    speaksFor: 'general',
    when: ({ advice }) => advice.reasons.includes('dry') && {},
  },
  {
    id: 'heap-cooled',
    level: 'note',
    source: 'practice',
    looksAt: 'a core that was hot and has cooled, some days after the last turning',
    speaksFor: 'general',
    when: ({ advice: { reasons, coreC } }) =>
      reasons.includes('cooled') && { coreC: coreC ?? Number.NaN, leastC: ACCEPTABLE.temperatureC.least },
  },
  {
    id: 'heap-fed-since',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'fresh material put in after the heap was built',
    speaksFor: 'general',
    when: ({ logged, fedDay }) => logged && fedDay !== undefined && { fedDay },
  },
  {
    id: 'heap-core-only',
    level: 'note',
    source: 'our-caution',
    looksAt: 'a log of core temperatures that is held against the published rules',
    speaksFor: 'general',
    when: ({ logged }) => logged && {},
  },
  {
    id: 'heap-plants-only',
    level: 'note',
    source: 'cfr-7-205-203',
    locator: '(c)(2) and (c)(3)',
    looksAt: 'a logged heap whose rows hold no manure',
    speaksFor: ['us'],
    when: ({ logged, manure }) => logged && manure === false && {},
  },
  {
    id: 'heap-too-small-to-heat',
    level: 'note',
    source: 'practice',
    looksAt: 'the volume of a logged heap against that which heats by itself',
    speaksFor: 'general',
    when: ({ logged, volumeM3 }) =>
      logged && volumeM3 !== undefined && !(volumeM3 >= SELF_HEATS_M3) && { volumeM3, leastM3: SELF_HEATS_M3 },
  },
];
