// Care of the people at a batch: gloves in the first days, larvae, eyes and mouth, a sieve of its own, washed hands and
// kit, air in the room. Lids and bottles are vessel.ts, foul gas is gas.ts, who should not do it is profile.ts.

import { co2Mol } from '../souring/gas/pressure.ts';
import { CO2_LIMITS_PPM, OUTSIDE_PPM, shutRisePpm } from '../souring/gas/room.ts';
import { gasVolumeL } from '../souring/gas/solubility.ts';
import type { Surface } from '../souring/look.ts';
import type { Rule } from './rule.ts';

/** What is done at a batch or with its feed. */
export interface CareSituation {
  readonly act: 'look' | 'strain' | 'spray' | 'pour';
  /** Days since filling; undefined or NaN where not known. */
  readonly day?: number | undefined;
  /** Last acidity; undefined where none was read. */
  readonly ph?: number | undefined;
  readonly surface?: Surface | undefined;
}

/** Looks so many days after filling are the first ones. @practice our caution, no source */
const FIRST_DAYS = 3;
/** From here down Salmonella died within two days in published trials, and what grows before it does not. */
const SOUR_PH = 4;

export const careRules: readonly Rule<CareSituation>[] = [
  {
    id: 'care-gloves-first-days',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a look in the first days, before the batch is known to be sour',
    speaksFor: 'general',
    when: ({ act, day, ph }) => {
      if (act !== 'look' || (ph !== undefined && ph <= SOUR_PH)) return false;
      return day !== undefined && day > FIRST_DAYS ? false : { days: FIRST_DAYS };
    },
  },
  {
    id: 'care-larvae-cover',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'larvae seen on the surface',
    speaksFor: 'general',
    when: ({ act, surface }) => (act === 'look' && surface === 'larvae' ? {} : false),
  },
  {
    id: 'care-cover-eyes-and-mouth',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'straining and spraying, where the feed splashes or drifts',
    speaksFor: 'general',
    when: ({ act }) => (act === 'strain' || act === 'spray' ? { spray: act === 'spray' } : false),
  },
  {
    id: 'care-own-sieve',
    level: 'note',
    source: 'our-caution',
    looksAt: 'straining: what it is strained through',
    speaksFor: 'general',
    when: ({ act }) => (act === 'strain' ? {} : false),
  },
  {
    id: 'care-wash-before-picking',
    level: 'note',
    source: 'our-caution',
    looksAt: 'pouring and spraying: what comes after',
    speaksFor: 'general',
    when: ({ act }) => (act === 'pour' || act === 'spray' ? {} : false),
  },
];

/** Sugar that goes into a batch, g of hexose; NaN where not known. */
export interface SugarIn {
  readonly hexoseG: number;
}

/** A cupboard one might put a pail in, m3, on a warm day. @practice */
const CUPBOARD = { roomM3: 2, temperatureC: 20 } as const;

/** Where it will stand is a name, not a size: the rule speaks of the least room one might choose. */
export const fillAirRules: readonly Rule<SugarIn>[] = [
  {
    id: 'fill-air-the-room',
    level: 'note',
    source: 'niosh-1994',
    locator: 'NIOSH REL and OSHA PEL',
    looksAt: 'all the gas yeast could make of the sugar, in a shut cupboard, against the day limit of workplaces',
    speaksFor: ['us'],
    when: ({ hexoseG }) => {
      const { roomM3, temperatureC } = CUPBOARD;
      const gasL = gasVolumeL({ amountMol: co2Mol({ hexoseG, route: 'yeast' }), temperatureC });
      const ppm = OUTSIDE_PPM + shutRisePpm({ gasL, roomM3 });
      return ppm <= CO2_LIMITS_PPM.day ? false : { gasL, ppm, roomM3, limitPpm: CO2_LIMITS_PPM.day };
    },
  },
];
