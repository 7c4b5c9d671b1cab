// Care of the people at a batch, and insects at an open vessel, in plain English. Each sentence says what to do first.

import type { Values } from '#engine/rules/rule.ts';
import { figure, withUnit } from '../figures.ts';
import { more } from './weigh-in.ts';
import { sheet } from './weigh-in-labels.ts';

const n = (values: Values, key: string) => Number(values[key]);

/** One sentence or two for each rule about care. */
export const careCautions: Readonly<Record<string, (values: Values) => string>> = {
  'care-gloves-first-days': (v) =>
    `Wear gloves for the looks of the first ${figure(n(v, 'days'))} days, and wash your hands after: it is not sour yet.`,
  'care-larvae-cover': () =>
    'Larvae: flies get in. Skim them off, and tie a fine cloth over the vessel under its loose lid.',
  'care-cover-eyes-and-mouth': (v) =>
    v.spray
      ? 'Cover eyes and mouth while you spray, and keep out of the drift.'
      : 'Cover eyes and mouth while you strain: it splashes.',
  'care-own-sieve': () =>
    'Keep a sieve, a cloth and a jug for this alone; they never go back to the kitchen. Wash hands and kit after.',
  'care-wash-before-picking': () => 'Wash hands, can and jug before you pick anything.',
  'vessel-open-to-insects': (v) =>
    `Tie a cloth or a fine mesh over it: flies lay in it, and in warm standing water mosquitoes hatch within ${figure(n(v, 'leastDays'))} to ${figure(n(v, 'mostDays'))} days.`,
  'fill-air-the-room': (v) =>
    Number.isFinite(n(v, 'gasL'))
      ? `Stand it where air moves, not in a cupboard: if yeast turned all the sugar it would give off ${withUnit(n(v, 'gasL'), 'L', 0)} of carbon dioxide, more than a shut ${withUnit(n(v, 'roomM3'), 'm³', 0)} may hold by the limit of workplaces for a day.`
      : 'Stand it where air moves, not in a cupboard: how much carbon dioxide it will give off is not known.',
};

/** What stands around cautions on a sheet. */
export const cautionWords = { levels: sheet.levels, moreCautions: more, insteadLead: 'Instead:' } as const;
