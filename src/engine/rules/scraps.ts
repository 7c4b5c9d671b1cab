// What may go into the pail at all, and what must be asked first: weedkiller, raw manure, meat, cooked
// food, disease, and the plain "this belongs in the heap". Rules look at one lot, resolved, and at the
// grower's answer about weedkiller. How full and how sweet the pail gets is fit.ts.

import type { Part, Treated } from '../scraps/part.ts';
import { material } from '../tables/index.ts';
import type { Rule, Values } from './rule.ts';

export interface ScrapsSituation {
  readonly part: Part;
  readonly treated: Treated | undefined;
}

/** Groups of the table that weedkiller comes in with: lawns, fields, and animals fed from them. */
const ASK_ABOUT_WEEDKILLER = ['clippings', 'hay-straw', 'manure', 'compost'];
/** The bean test: pots of each kind, weeks, and the leaves to wait for; the longer of the times published. */
const BEAN_TEST = { pots: 3, weeksLeast: 3, weeksMost: 4, trueLeaves: 3 };
/** Days between raw manure and harvest, edible part off the soil and touching it. */
const MANURE_DAYS = { daysOffSoil: 90, daysOnSoil: 120 };

const told = ({ part }: ScrapsSituation): Values => ({
  material: part.name,
  massKg: part.massKg,
});
const groupOf = (part: Part) => (part.id === undefined ? undefined : material(part.id)?.group);

/** A rule that stops one or more materials of the table by id. */
function stopFor(id: string, source: string, ids: readonly string[], locator?: string): Rule<ScrapsSituation> {
  return {
    id,
    level: 'stop',
    source,
    ...(locator === undefined ? {} : { locator }),
    when: (situation) => ids.includes(situation.part.id ?? '') && told(situation),
  };
}

/** A rule that stops every material of a group that may not go into the liquid. */
function stopForGroup(
  id: string,
  source: string,
  group: string,
  more: Values,
  locator?: string,
): Rule<ScrapsSituation> {
  return {
    id,
    level: 'stop',
    source,
    ...(locator === undefined ? {} : { locator }),
    when: (situation) =>
      groupOf(situation.part) === group && mayNotGoIn(situation.part) && { ...told(situation), ...more },
  };
}

function mayNotGoIn(part: Part): boolean {
  return part.id !== undefined && material(part.id)?.into !== 'liquid';
}

const named: readonly Rule<ScrapsSituation>[] = [
  stopFor('pet-waste', 'our-caution', ['pet-waste']),
  stopFor('meat-fish-dairy', 'apha-home-compost', ['meat-fish-dairy'], 'which animal by-products you can compost'),
  stopFor('cooked-food', 'cfr-21-112', ['cooked-food'], '112.3, table waste'),
  stopFor('diseased-haulm', 'practice', ['blighted-haulm']),
  stopForGroup('raw-manure', 'cfr-7-205-203', 'manure', MANURE_DAYS, '(c)(1)'),
  stopFor('seeds-in-the-liquid', 'our-caution', ['seeded-weeds']),
  stopFor('rhubarb-leaves', 'our-caution', ['rhubarb-leaves']),
  stopFor('compost-in-the-liquid', 'ingram-millner-2007', ['finished-compost'], 'abstract'),
  stopFor('lime-in-the-liquid', 'memory', ['eggshell']),
  stopForGroup('dry-and-woody', 'practice', 'browns', {}),
  stopFor('dry-and-woody', 'practice', ['straw']),
];

/** Every rule about a lot of scraps. One that the table keeps out always meets a stop, named or general. */
export const scrapsRules: readonly Rule<ScrapsSituation>[] = [
  {
    id: 'weedkiller-treated',
    level: 'stop',
    source: 'npic-herbicides-in-compost',
    when: (situation) => situation.treated === 'yes' && told(situation),
  },
  ...named,
  {
    id: 'not-in-the-liquid',
    level: 'stop',
    source: 'our-caution',
    when: (situation) => {
      const { part } = situation;
      if (!mayNotGoIn(part) || named.some((rule) => rule.when(situation) !== false)) return false;
      const row = material(part.id ?? '');
      return { ...told(situation), why: row?.why ?? '', compost: row?.into === 'compost-only' };
    },
  },
  {
    id: 'weedkiller-unknown',
    level: 'hold',
    source: 'wsu-bioassay',
    locator: 'general procedures',
    when: (situation) => situation.treated === 'unknown' && { ...told(situation), ...BEAN_TEST },
  },
  {
    id: 'weedkiller-not-answered',
    level: 'caution',
    source: 'npic-herbicides-in-compost',
    when: (situation) =>
      situation.treated === undefined &&
      ASK_ABOUT_WEEDKILLER.includes(groupOf(situation.part) ?? '') &&
      told(situation),
  },
  {
    id: 'lot-not-in-the-list',
    level: 'caution',
    source: 'our-caution',
    when: (situation) => situation.part.id === undefined && told(situation),
  },
  {
    id: 'salt-of-the-sea',
    level: 'caution',
    source: 'memory',
    when: (situation) => situation.part.id === 'seaweed' && told(situation),
  },
  {
    id: 'citrus-oil',
    level: 'note',
    source: 'memory',
    when: (situation) => situation.part.id === 'citrus-peel' && told(situation),
  },
];
