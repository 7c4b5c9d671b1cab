// What may go into the pail at all, and what must be asked first: weedkiller, raw manure, meat, cooked
// food, disease, and the plain "this belongs in the heap". Rules look at one lot, resolved, and at the
// grower's answer about weedkiller. How full and how sweet the pail gets is fit.ts.

import { RAW_MANURE_DAYS } from '../can/limits.ts';
import { BIOASSAY } from '../scraps/bioassay.ts';
import type { Part, Treated } from '../scraps/part.ts';
import { material } from '../tables/index.ts';
import type { Rule, StopRule, Values } from './rule.ts';

export interface ScrapsSituation {
  readonly part: Part;
  readonly treated: Treated | undefined;
}

const WEEK_DAYS = 7;
/** Groups of the table that weedkiller comes in with: lawns, fields, and animals fed from them. */
const ASK_ABOUT_WEEDKILLER = ['clippings', 'hay-straw', 'manure', 'compost'];
/** The bean test as a sentence has it; its layout and days stand in scraps/bioassay.ts. */
const BEAN_TEST = {
  pots: BIOASSAY.leastPotCount,
  weeksLeast: BIOASSAY.leastDays / WEEK_DAYS,
  weeksMost: BIOASSAY.mostDays / WEEK_DAYS,
  trueLeaves: BIOASSAY.leavesCount,
};

const told = ({ part }: ScrapsSituation): Values => ({
  material: part.name,
  massKg: part.massKg,
});
const groupOf = (part: Part) => (part.id === undefined ? undefined : material(part.id)?.group);

type Stop = Pick<StopRule<ScrapsSituation>, 'id' | 'source' | 'locator' | 'looksAt' | 'speaksFor' | 'override'>;

/** A rule that stops one or more materials of the table by id. */
function stopFor(ids: readonly string[], stop: Stop): Rule<ScrapsSituation> {
  return { ...stop, level: 'stop', when: (situation) => ids.includes(situation.part.id ?? '') && told(situation) };
}

/** A rule that stops every material of a group that may not go into the liquid. */
function stopForGroup(group: string, stop: Stop, more: Values = {}): Rule<ScrapsSituation> {
  return {
    ...stop,
    level: 'stop',
    when: (situation) =>
      groupOf(situation.part) === group && mayNotGoIn(situation.part) && { ...told(situation), ...more },
  };
}

function mayNotGoIn(part: Part): boolean {
  return part.id !== undefined && material(part.id)?.into !== 'liquid';
}

const dryAndWoody: Stop = {
  id: 'dry-and-woody',
  source: 'practice',
  looksAt: 'the kind of the lot: dry leaves, wood, paper, straw',
  speaksFor: 'general',
  override: 'reason',
};

const named: readonly Rule<ScrapsSituation>[] = [
  stopFor(['pet-waste'], {
    id: 'pet-waste',
    source: 'our-caution',
    looksAt: 'the kind of the lot: waste of cats, dogs or people',
    speaksFor: 'general',
    override: 'none',
  }),
  stopFor(['meat-fish-dairy'], {
    id: 'meat-fish-dairy',
    source: 'apha-home-compost',
    locator: 'which animal by-products you can compost',
    looksAt: 'the kind of the lot: meat, fish or dairy',
    speaksFor: ['gb'],
    override: 'none',
  }),
  stopFor(['cooked-food'], {
    id: 'cooked-food',
    source: 'cfr-21-112',
    locator: '112.3, table waste',
    looksAt: 'the kind of the lot: cooked, or off the plate',
    speaksFor: ['us'],
    override: 'none',
  }),
  stopFor(['blighted-haulm'], {
    id: 'diseased-haulm',
    source: 'practice',
    looksAt: 'the kind of the lot: haulm with blight or disease',
    speaksFor: 'general',
    override: 'none',
  }),
  stopForGroup(
    'manure',
    {
      id: 'raw-manure',
      source: 'cfr-7-205-203',
      locator: '(c)(1)',
      looksAt: 'the kind of the lot: raw manure',
      speaksFor: ['us'],
      override: 'none',
    },
    { daysOffSoil: RAW_MANURE_DAYS.otherwise, daysOnSoil: RAW_MANURE_DAYS.touchesSoil },
  ),
  stopFor(['seeded-weeds'], {
    id: 'seeds-in-the-liquid',
    source: 'our-caution',
    looksAt: 'the kind of the lot: weeds with seed or flower heads',
    speaksFor: 'general',
    override: 'reason',
  }),
  stopFor(['rhubarb-leaves'], {
    id: 'rhubarb-leaves',
    source: 'our-caution',
    looksAt: 'the kind of the lot: rhubarb leaves',
    speaksFor: 'general',
    override: 'none',
  }),
  stopFor(['finished-compost'], {
    id: 'compost-in-the-liquid',
    source: 'ingram-millner-2007',
    locator: 'abstract',
    looksAt: 'the kind of the lot: finished compost',
    speaksFor: 'general',
    override: 'reason',
  }),
  stopFor(['eggshell'], {
    id: 'lime-in-the-liquid',
    source: 'memory',
    looksAt: 'the kind of the lot: eggshell',
    speaksFor: 'general',
    override: 'reason',
  }),
  stopForGroup('browns', dryAndWoody),
  stopFor(['straw'], dryAndWoody),
];

/** Every rule about a lot of scraps. One that the table keeps out always meets a stop, named or general. */
export const scrapsRules: readonly Rule<ScrapsSituation>[] = [
  {
    id: 'weedkiller-treated',
    level: 'stop',
    source: 'npic-herbicides-in-compost',
    looksAt: 'the answer about weedkiller: yes',
    speaksFor: 'general',
    override: 'none',
    when: (situation) => situation.treated === 'yes' && told(situation),
  },
  ...named,
  {
    id: 'not-in-the-liquid',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'a lot that the table of materials keeps out, or does not know, and no other rule names',
    speaksFor: 'general',
    override: 'none',
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
    looksAt: 'the answer about weedkiller: not known',
    speaksFor: 'general',
    when: (situation) => situation.treated === 'unknown' && { ...told(situation), ...BEAN_TEST },
  },
  {
    id: 'weedkiller-not-answered',
    level: 'caution',
    source: 'npic-herbicides-in-compost',
    looksAt: 'clippings, hay, straw, manure or compost with no answer about weedkiller',
    speaksFor: 'general',
    when: (situation) =>
      situation.treated === undefined &&
      ASK_ABOUT_WEEDKILLER.includes(groupOf(situation.part) ?? '') &&
      told(situation),
  },
  {
    id: 'lot-not-in-the-list',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a lot entered under a name of its own',
    speaksFor: 'general',
    when: (situation) => situation.part.id === undefined && told(situation),
  },
  {
    id: 'salt-of-the-sea',
    level: 'caution',
    source: 'memory',
    looksAt: 'the kind of the lot: seaweed',
    speaksFor: 'general',
    when: (situation) => situation.part.id === 'seaweed' && told(situation),
  },
  {
    id: 'citrus-oil',
    level: 'note',
    source: 'memory',
    looksAt: 'the kind of the lot: citrus peel',
    speaksFor: 'general',
    when: (situation) => situation.part.id === 'citrus-peel' && told(situation),
  },
];
