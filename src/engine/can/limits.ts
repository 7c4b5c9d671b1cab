// What plants bear: salt added by a drench, salt a crop's yield holds up to, acidity, what a nozzle passes.
// Crop figures are data/salt-tolerance.csv; which of these speak up is rules/can.ts.

import { figures } from '../tables/index.ts';
import { habitOf } from './crop-names.ts';

export type Growth = 'seedling' | 'established';
export type Way = 'soil' | 'leaf';

/**
 * Conductivity that a feed may add, dS/m; the last is never passed: above it water is severely restricted for irrigation.
 * @source ayers-westcot-1985 table 1, for the last alone
 * @memory the first two, within the 0.7 to 3.0 dS/m of slight to moderate restriction
 */
export const ADDED_EC_DS_PER_M = { seedling: 1.0, established: 2.0, never: 3.0 } as const;
/** Conductivity of a spray, dS/m. @memory */
export const LEAF_EC_DS_PER_M = 1.5;
/** Acid that has kept its proton, acetic and lactic together, and alcohol, that a spray may hold. @memory */
export const LEAF_ACID_MMOL_PER_L = 5;
export const LEAF_ETHANOL_PERCENT = 0.5;
/** pH between which a can is poured; below the last, only on moist soil. @memory */
export const POUR_PH = { low: 5.0, high: 7.5, moistOnly: 4.5 } as const;
/** A mesh passes what a nozzle twice as wide lets through. @practice */
export const MESH_PER_NOZZLE_FRACTION = 0.5;
/**
 * Days from a soil pour to picking for raw eating; not a published figure for such a feed.
 * @practice our caution, no source
 * @checked worked/die-off.test.ts, against what is asked of waste water
 */
export const RAW_SOIL_DAYS = 14;
/** Days from an unheld batch to harvest, as asked of teas that failed or skipped their tests. @source nosb-2004 90 and 120 days */
export const NOT_HELD_DAYS = 120;
/**
 * Days before harvest for raw manure: where the part that is eaten touches the soil or its particles, and elsewhere.
 * Borrowed for a batch that may hold what animals leave.
 * @source cfr-7-205-203 (c)(1)
 */
export const RAW_MANURE_DAYS = { touchesSoil: 120, otherwise: 90 } as const;
/** No reason asks for more days between pour and picking. @arithmetic the longest of the waits here */
export const LONGEST_WAIT_DAYS = Math.max(NOT_HELD_DAYS, RAW_MANURE_DAYS.touchesSoil, RAW_MANURE_DAYS.otherwise);
/** Days from a soil pour to raw eating by a class: the longer of two cautious figures, since many eat and few wash. @practice our caution, no source */
export const SCHOOL_RAW_DAYS = 21;
/**
 * Saltiest concentrate reckoned with when it was not measured: the highest of six molasses-and-slop liquids
 * measured by Phibunwatthanawong and Riddech 2019, Int. J. Recycl. Org. Waste Agric. 8:369, abstract (25-33 dS/m).
 * @practice our caution, no source, that such a liquid stands for the worst of ours
 */
export const UNMEASURED_EC_DS_PER_M = 33;

/** Up to where a crop's yield holds, and what it loses beyond, percent for each dS/m. */
export interface SaltTolerance {
  readonly crop: string;
  readonly thresholdEcDsPerM: number;
  readonly slopePercentPerDsPerM: number;
  readonly source: string;
}

/**
 * Salt tolerance of what grows on a bed, by the words as typed: of several crops that of the one that bears least;
 * undefined where no figure is published here for any of them.
 * The threshold is for the soil's own extract over a season; a can is held to it as it is poured.
 * @source maas-1990 vegetables and fruit crops
 * @source maas-hoffman-1977 the plateau and the slope beyond it
 */
export function saltTolerance(crop: string): SaltTolerance | undefined {
  const known = habitOf(crop).crops.flatMap((id): readonly SaltTolerance[] => {
    const { thresholdEcDsPerM: threshold, slopePercentPerDsPerM: slope } = figures('salt-tolerance').get(id) ?? {};
    if (threshold === undefined || slope === undefined) return [];
    return [
      {
        crop: id,
        thresholdEcDsPerM: threshold.likely,
        slopePercentPerDsPerM: slope.likely,
        source: threshold.source,
      },
    ];
  });
  return known.toSorted((one, other) => one.thresholdEcDsPerM - other.thresholdEcDsPerM)[0];
}

/** Salt that a feed may add here: plants of unknown age are taken for seedlings. @memory */
export function addedEcLimit(growth: Growth | undefined): number {
  return growth === 'established' ? ADDED_EC_DS_PER_M.established : ADDED_EC_DS_PER_M.seedling;
}
