// One pail for cases of their own: a vessel, two lots of clippings on the scale, a recipe of 2.1 kg of them, 5.2 L of water
// and sugar; planned at the weigh-in, or filled.

import type { Countries } from '#engine/quantity/ask.ts';
import type { Batch } from '#journal/parts/batch.ts';
import { fillOffers } from '#tasks/plot/fill.ts';
import { allAsPlanned } from '#web/fill/draft.ts';
import { type FillReading, readFill } from '#web/fill/reading.ts';
import type { Draft } from '#web/weigh-in/draft.ts';
import type { Amount } from './amounts.ts';
import { Grower } from './grower.ts';
import { fillSheet, handedOver, planned, type Recipe } from './vessel.ts';

export const PLANTS_KG = 2.1;
export const WATER_L = 5.2;
const CLIPPINGS = 'grass-clippings-fresh';

const kg = (massKg: number): Amount => ({ text: `${massKg} kg`, si: massKg });
const typedKg = (massKg: number) => ({ typed: `${massKg} kg`, massKg });
export const typedL = (volumeL: number) => ({ typed: `${volumeL} L`, volumeL });

/** A grower with a vessel and two lots, and what is meant to go in. */
export interface Pail {
  readonly grower: Grower;
  readonly recipe: Recipe;
}

export function pail({ name = 'bucket', volumeL = 12, sugarKg = 0.15 } = {}): Pail {
  const grower = new Grower({ units: 'metric', decimals: 'point', language: 'en' }, '2026-06-01');
  const vessel = grower.did('vessel.described', {
    name,
    volume: typedL(volumeL),
    lid: 'loose',
    gasRoomFraction: 0.25,
  });
  const lots = [6.4, 5].map((massKg) => {
    const { id } = grower.did('scraps.weighed', {
      material: CLIPPINGS,
      mass: typedKg(massKg),
      slip: { whose: 'own', cameFrom: 'garden', treated: 'no' },
      condition: 'fresh',
    });
    return { id, material: CLIPPINGS, weighedKg: massKg, usedKg: 0 };
  });
  const recipe: Recipe = {
    vessel: { id: vessel.id, name, volumeL, gasRoom: 0.25, lid: 'loose' },
    lid: 'loose',
    plants: lots.slice(0, 1).map((lot) => ({ lot, amount: kg(PLANTS_KG), bowl: undefined })),
    water: { text: `${WATER_L} L`, si: WATER_L },
    sugar: { product: 'white-sugar', amount: kg(sugarKg) },
  };
  return { grower, recipe };
}

/** The weigh-in with the recipe typed in. */
export const weighIn = ({ grower, recipe }: Pail): Draft => planned(grower, recipe, '');

/** The filling sheet of a weigh-in after "All went in as planned", read by a keyholder's habits. */
export function asPlanned({ grower, recipe }: Pail, draft: Draft, habits: Countries = {}): FillReading {
  const open = fillSheet(grower, recipe, handedOver(draft));
  return readFill({ ...open, ...allAsPlanned(open) }, fillOffers(grower), habits);
}

/** The same pail filled, and its batch. */
export function filled(of: Parameters<typeof pail>[0] = {}): { readonly grower: Grower; readonly batch: Batch } {
  const { grower, recipe } = pail(of);
  const { id } = grower.did('peg.filled', {
    peg: 1,
    vessel: recipe.vessel.id,
    lid: 'loose',
    temperatureC: 20,
    parts: [{ material: CLIPPINGS, treated: 'no', mass: typedKg(PLANTS_KG) }],
    water: [{ volume: typedL(WATER_L) }],
    sugar: [{ product: 'white-sugar', mass: typedKg(recipe.sugar?.amount.si ?? 0) }],
  });
  const batch = grower.plot.batches.get(id);
  if (batch === undefined) throw new Error('a pail without a batch');
  return { grower, batch };
}
