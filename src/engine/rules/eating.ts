// What those who eat from a bed say about a pour: manure, meat and plates in the batch, water that animals reach, food
// that is sold or eaten by a class, weak immunity, and a crop told to be eaten otherwise than it usually is. The days
// and ways are can/eating.ts; a batch not held and the plain wait of a bed eaten raw are batch.ts.

import { type EatingAsk, type EatingReason, eatingReasons, eatingWait } from '../can/eating.ts';
import type { PourOrder } from '../can/pour.ts';
import { NOTHING_TOLD } from '../scraps/profile.ts';
import { canRules } from './can.ts';
import type { MildRule, Rule, Values } from './rule.ts';

/** A pour as the eaters ask of it. @arithmetic renaming */
export function eatingAskOf(order: PourOrder): EatingAsk {
  return {
    crop: order.crop,
    eaten: order.eatenPart ?? order.eaten,
    animalOrigin: order.batch?.animalOrigin,
    held: order.batch?.state === 'ready' && order.batch.held === true,
    way: order.way,
    profile: order.profile ?? NOTHING_TOLD,
  };
}

/** The values of a wait that is not over by the next picking; a day that nobody told is not far enough off. */
function tooSoon(order: PourOrder, ...reasons: readonly EatingReason[]): false | Values {
  if (order.batch === undefined) return false;
  const ask = eatingAskOf(order);
  const found = eatingReasons(ask).find(({ reason }) => reasons.includes(reason));
  const { toPickDays } = order;
  if (found === undefined || (toPickDays !== undefined && toPickDays >= found.days)) return false;
  return {
    days: found.days,
    touches: eatingWait(ask).touchesSoil,
    ...(toPickDays !== undefined && Number.isFinite(toPickDays) && { toPickDays }),
  };
}

type Soon = Pick<MildRule<PourOrder>, 'id' | 'source' | 'locator' | 'looksAt' | 'speaksFor'>;

/** A rule that waits because of some reasons to wait. */
function soon(rule: Soon, ...reasons: readonly EatingReason[]): Rule<PourOrder> {
  return { ...rule, level: 'hold', when: (order) => tooSoon(order, ...reasons) };
}

export const eatingRules: readonly Rule<PourOrder>[] = [
  {
    id: 'eating-animal-on-leaves',
    level: 'stop',
    override: 'none',
    source: 'nosb-2004',
    locator: 'extracts of raw manure: on the soil alone',
    looksAt: 'a spray from a batch with manure, meat or plate scraps in it, or droppings in its water',
    speaksFor: ['us'],
    when: ({ batch, way }) => (way === 'leaf' && batch?.animalOrigin === 'yes' ? {} : false),
  },
  {
    id: 'eating-animal-possible-on-leaves',
    level: 'stop',
    override: 'reason',
    source: 'our-caution',
    looksAt: 'a spray from a batch with water that animals reach, or with something nobody named in it',
    speaksFor: 'general',
    when: ({ batch, way }) =>
      way === 'leaf' && batch !== undefined && (batch.animalOrigin ?? 'possible') === 'possible' ? {} : false,
  },
  {
    id: 'eating-immune-weak-raw-bed',
    level: 'stop',
    override: 'reason',
    source: 'our-caution',
    looksAt: 'a bed eaten raw where someone of weak immunity eats',
    speaksFor: 'general',
    when: (order) => (eatingWait(eatingAskOf(order)).how === 'never' ? {} : false),
  },
  soon(
    {
      id: 'eating-manure-picked-soon',
      source: 'cfr-7-205-203',
      locator: '(c)(1)(ii) and (iii)',
      looksAt: 'a batch with manure, meat, plate scraps or droppings: days to picking, raw or cooked',
      speaksFor: ['us'],
    },
    'animal-origin',
  ),
  soon(
    {
      id: 'eating-animal-possible-picked-soon',
      source: 'our-caution',
      locator: 'days borrowed from 7 CFR 205.203(c)(1)',
      looksAt: 'a batch that may hold what animals leave, on a bed eaten raw: days to picking',
      speaksFor: 'general',
    },
    'animal-origin-possible',
    'source-not-known',
  ),
  soon(
    {
      id: 'eating-sold-picked-soon',
      source: 'cfr-21-112',
      locator: '112.51(b), 112.56(a)(1)',
      looksAt: 'food that is sold from a bed eaten raw: days to picking, held or not',
      speaksFor: ['us'],
    },
    'sold-untreated',
  ),
  soon(
    {
      id: 'eating-school-picked-soon',
      source: 'our-caution',
      looksAt: 'a bed eaten raw by a class: days to picking',
      speaksFor: 'general',
    },
    'school',
  ),
  {
    id: 'eating-sold-counts-raw',
    level: 'caution',
    source: 'cfr-21-112',
    locator: '112.2(a)(1)',
    looksAt: 'food that is sold, told to be cooked, and not on the list of those rarely eaten raw',
    speaksFor: ['us'],
    when: (order) => {
      const ask = eatingAskOf(order);
      return ask.eaten === 'cooked' && eatingWait(ask).countsAs === 'raw' ? { crop: ask.crop ?? '' } : false;
    },
  },
  {
    id: 'eating-cooked-but-usually-raw',
    level: 'note',
    source: 'our-caution',
    looksAt: 'a crop told to be cooked that is usually eaten raw',
    speaksFor: 'general',
    when: (order) => {
      const ask = eatingAskOf(order);
      const { countsAs, habit } = eatingWait(ask);
      return countsAs === 'cooked' && habit.raw === 'usually' ? { crop: ask.crop ?? '' } : false;
    },
  },
  {
    id: 'eating-raw-but-rarely-raw',
    level: 'note',
    source: 'cfr-21-112',
    locator: '112.2(a)(1)',
    looksAt: 'a crop told to be eaten raw that is rarely eaten so',
    speaksFor: ['us'],
    when: (order) => {
      const ask = eatingAskOf(order);
      const told = ask.eaten !== undefined && ask.eaten !== 'cooked' && ask.eaten !== 'not-eaten';
      return told && eatingWait(ask).habit.raw === 'rarely' ? { crop: ask.crop ?? '' } : false;
    },
  },
];

/** Rules of the can that guard those who eat; the others guard plants and nozzles. */
const OF_THE_CAN = ['leaf-eaten-raw', 'eaten-not-told'];
/** Rules that guard plants, nozzles and weather, or wait for a fact or for another hand. */
const OTHERS = new Set([
  ...canRules.map(({ id }) => id).filter((id) => !OF_THE_CAN.includes(id)),
  ...['bed-nothing-grows', 'bed-size-not-told', 'bed-fed-just-now', 'bed-fed-lately'],
]);
const OF_THE_HOUR = /^(hour|spray|pour)-/;

/** Whether a rule guards those who eat: a feed that overrode one marks its bed. A rule nobody here knows is taken for one. @practice our caution, no source */
export function guardsEaters(rule: string): boolean {
  return !(OTHERS.has(rule) || OF_THE_HOUR.test(rule));
}
