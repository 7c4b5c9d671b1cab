// What those who eat from a bed have to say about a pour, in plain English: a sentence or two for each rule of
// rules/eating.ts, and the way out of each stop. German stands in de/eating.ts. The pick list is pick.ts.

import type { Values } from '#engine/rules/rule.ts';
import { withUnit } from '../figures.ts';

const n = (values: Values, key: string) => Number(values[key]);
const days = (v: Values) => withUnit(n(v, 'days'), 'days', 0);
const part = (v: Values) => (v.touches ? 'what is eaten touches the soil' : 'what is eaten is held off the soil');
const picked = (v: Values) =>
  v.toPickDays === undefined
    ? 'nobody told when it is picked'
    : `it is picked in ${withUnit(n(v, 'toPickDays'), 'days', 0)}`;

/** One sentence or two for each rule. */
export const eatingCautions: Readonly<Record<string, (values: Values) => string>> = {
  'eating-animal-on-leaves': () =>
    'Never on leaves: manure, meat, plate scraps or droppings went into this batch. Pour it on the soil, with the days before picking that the bed asks for.',
  'eating-animal-possible-on-leaves': () =>
    'Not on leaves: animals may have reached the water of this batch, or something in it was not named. Pour it on the soil.',
  'eating-immune-weak-raw-bed': () =>
    'No feed on this bed: it is eaten raw, and someone who eats here has weak immunity. That is our caution, not a rule.',
  'eating-manure-picked-soon': (v) =>
    `Not on this bed yet: manure, meat, plate scraps or droppings went into the batch, ${part(v)}, and ${picked(v)}. The US rule for raw manure (7 CFR 205.203) asks for ${days(v)}; local codes may ask for more.`,
  'eating-animal-possible-picked-soon': (v) =>
    `Not on this bed yet: it is eaten raw, ${picked(v)}, and animals may have reached what is in this batch. We ask for ${days(v)}, as for raw manure: our caution. A bed that is cooked may have it.`,
  'eating-sold-picked-soon': (v) =>
    `Not on this bed yet: food is sold from here, ${picked(v)}, and a feed with sugar counts as untreated in the US produce rule, held or not. As a yardstick we ask for ${days(v)} before picking; ask your own food rules.`,
  'eating-school-picked-soon': (v) =>
    `Wait with this bed: a class eats from it raw, and ${picked(v)}. We ask for ${days(v)} before picking: our caution, not a rule.`,
  'eating-sold-counts-raw': (v) =>
    `Food is sold from here, so ${v.crop || 'this bed'} counts as eaten raw: the buyer decides. The US produce rule lists the few crops that are rarely eaten raw.`,
  'eating-cooked-but-usually-raw': (v) =>
    `You told that ${v.crop || 'this bed'} is cooked; it is usually eaten raw. Cook all of it, or change it on the sheet of the plot.`,
  'eating-raw-but-rarely-raw': (v) =>
    `You told that ${v.crop || 'this bed'} is eaten raw; it rarely is. If all of it is cooked, change it on the sheet of the plot.`,
};

/** What may be done in place of what a rule stops. */
export const eatingInstead: Readonly<Record<string, string>> = {
  'eating-animal-on-leaves':
    'Pour it on the soil of a bed whose picking is 120 days off or more, or layer it into the heap as local rules allow.',
  'eating-animal-possible-on-leaves':
    'Pour it on the soil at the foot of what is cooked, or fill a batch with tap water.',
  'eating-immune-weak-raw-bed':
    'Water it plain and feed it with compost or mulch; pour the feed on beds that are cooked.',
};
