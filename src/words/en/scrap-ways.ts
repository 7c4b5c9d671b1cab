// The best use of a lot of scraps, in plain English: one sentence for each way with its grams, then the advice.

import type { WayReason, WayShare, WaysOfLot } from '#engine/ground/cover/ways.ts';
import { band, figure, withUnit } from '../figures.ts';

const WAYS: Readonly<Record<WayShare['way'], string>> = {
  mulch: 'As mulch on a bed',
  ferment: 'Fermented, with the solids on the heap',
  heap: 'Through the heap',
  lawn: 'Left on the lawn',
};

const ADVICE: Readonly<Record<WayShare['way'], string>> = {
  mulch: 'Lay it on a bed as mulch, thin and dried first',
  ferment: 'Ferment it, and put the solids on the heap',
  heap: 'Put it on the heap',
  lawn: 'Leave it on the lawn',
};

const REASONS: Readonly<Record<WayReason, string>> = {
  'nothing-lost-on-the-way': 'it rots where the roots are',
  'ties-up': 'it ties nitrogen up while it rots',
  'most-stays-in-solids': 'most of it stays in the solids',
  'lost-and-slow': 'part of it goes into the air, and the rest comes over years',
  'stays-on-the-lawn': 'it feeds the lawn and no bed',
};

/** How much nitrogen reaches a bed by each way, best first, and which way to take. */
export function sayWays({ lot, holdsG, ways, best, isClose }: WaysOfLot): readonly string[] {
  if (!Number.isFinite(holdsG)) return [`How much nitrogen ${lot.name} holds is not known, so no way is put first.`];
  const holds = `${withUnit(lot.massKg, 'kg')} of ${lot.name} hold about ${withUnit(holdsG, 'g')} of nitrogen.`;
  const each = ways.map(({ way, seasonG, laterG, reasons }) => {
    const why = reasons.map((reason) => REASONS[reason]).join(' and ');
    if (way === 'lawn') return `${WAYS.lawn}, none of it reaches a bed: ${why}.`;
    const later = laterG.likely > 0 ? ` About ${figure(laterG.likely)}\u00a0g stay in the soil for later years.` : '';
    if (seasonG.likely < 0)
      return `${WAYS[way]}, it takes ${band(taken(seasonG), 'g')} from the bed this season: ${why}.`;
    return `${WAYS[way]}, ${band(seasonG, 'g')} can feed a bed this season: ${why}.${later}`;
  });
  if (best === undefined) return [holds, ...each, `No way of ${lot.name} feeds a bed this season.`];
  const close = isClose ? ' The next way may do as well: take the one that is less work.' : '';
  return [holds, ...each, `${ADVICE[best]}.${close}`];
}

/** A loss read as what is taken. */
function taken({ low, likely, high }: WayShare['seasonG']): WayShare['seasonG'] {
  return { low: Math.max(0, -high), likely: -likely, high: -low };
}
