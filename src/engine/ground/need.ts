// What a bed needs over a season for the crops on it: nitrogen from the crop's target less what the soil and the crop
// before bring, phosphorus and potassium by the class of the soil test. An unknown crop or figure makes the need unknown.

import { floorAt, point, product, type Range, scale, sum } from '../quantity/range.ts';
import type { Crop } from './crops.ts';
import { plain, releaseFigure } from './figures.ts';
import type { SoilClass } from './soil-test.ts';

export type Nutrient = 'n' | 'p' | 'k';
export const NUTRIENTS: readonly Nutrient[] = ['n', 'p', 'k'];

/** What is known of the soil of a bed. */
export interface SoilTold {
  readonly organicMatterPercent?: number | undefined;
  /** Nitrate nitrogen in the soil now. */
  readonly nitrateNGPerM2?: number | undefined;
  readonly p?: SoilClass | undefined;
  readonly k?: SoilClass | undefined;
  /** Nitrogen that residues of the crop before or a legume leave; from the tables or from the grower. */
  readonly residueNGPerM2?: Range | undefined;
  /** Nitrogen that the crop of the year before leaves. */
  readonly yearBeforeNGPerM2?: Range | undefined;
}

export interface BedAsk {
  /** Crops of the table or the grower's own, in equal shares of the bed. */
  readonly crops: readonly Crop[];
  readonly areaM2: number;
  readonly yieldGoalKgPerM2?: number | undefined;
  /** Goals of single crops, by their ids, from the area each crop has; these come before the goal of the bed. */
  readonly yieldGoalsKgPerM2?: Readonly<Record<string, number>> | undefined;
  readonly soil: SoilTold;
}

/** What takes from the nitrogen target. */
export interface Credit {
  readonly kind: 'nitrate' | 'organic-matter' | 'residues' | 'year-before';
  readonly nG: Range;
}

/** The need of a bed, grams; an element is absent where it is not known. */
export interface BedNeed {
  /** What the crops take up or carry away, before the soil's share. */
  readonly cropG: Readonly<Partial<Record<Nutrient, Range>>>;
  /** What has to be given. */
  readonly needG: Readonly<Partial<Record<Nutrient, Range>>>;
  readonly credits: readonly Credit[];
  /** Figures that no crop table and no grower gave: "kale: nNeedGPerM2". */
  readonly unknown: readonly string[];
}

/**
 * Nitrogen target of a crop, g/m², for a yield goal.
 *
 *   target = N + s · (goal / Y − 1) / 0.2
 *
 * N for the harvest Y and s, more or less for 20 % of it, are of the table. Without a goal the target of the table stands:
 * that of a good field crop, and a garden crop may take less.
 * @range clipped at 0
 * @source duev-2017 appendix 4 tables 4 and 5
 */
export function nitrogenTargetGPerM2(crop: Crop, yieldGoalKgPerM2?: number): Range | undefined {
  const { nNeedGPerM2: need, needYieldKgPerM2: at, nPer20PercentGPerM2: step } = crop;
  if (need === undefined || yieldGoalKgPerM2 === undefined) return need;
  if (at === undefined || step === undefined || !(at > 0) || !(need.likely > 0)) return need;
  const moved = Math.max(0, need.likely + (step * (yieldGoalKgPerM2 / at - 1)) / 0.2);
  return scale(need, moved / need.likely);
}

/**
 * Phosphorus or potassium that the harvest carries away, g/m²: yield · content.
 * @source longvah-2017 and the other sources of data/crops.csv
 * @checked published/removal.csv
 */
export function removalGPerM2(crop: Crop, nutrient: Nutrient, yieldGoalKgPerM2?: number): Range | undefined {
  const content = { n: crop.nGPerKg, p: crop.pGPerKg, k: crop.kGPerKg }[nutrient];
  const harvest = yieldGoalKgPerM2 === undefined ? crop.yieldKgPerM2 : point(yieldGoalKgPerM2);
  return content && harvest && product([harvest, content]);
}

/**
 * Nitrogen that organic matter lets go in a year, g/m²: 2.24 for each percent, 1.12 to 4.48.
 * @source uvm-nitrogen the low end; @memory the likely value and the high end
 */
export function organicMatterNGPerM2(organicMatterPercent: number): Range {
  return scale(plain(releaseFigure('organic-matter', 'nGPerM2PerPercent')), organicMatterPercent);
}

/**
 * The need of a bed.
 *
 *   N: target − nitrate − organic matter − residues − the year before, not below 0
 *   P, K: removal by the harvest; 0 where the soil test is high or excessive
 *
 * At a low test the soil should be built up too; by how much no source here says, so the need is removal and the answer
 * says that it is not all.
 * @source duev-2017 appendix 4 table 1 the balance; nevmg-nutrients none where the test is above enough
 */
export function bedNeed({ crops, areaM2, yieldGoalKgPerM2, yieldGoalsKgPerM2, soil }: BedAsk): BedNeed {
  const unknown: string[] = [];
  const share = crops.length > 0 ? areaM2 / crops.length : 0;
  const over = (of: (crop: Crop) => Range | undefined, field: string): Range | undefined => {
    if (crops.length === 0) return undefined;
    const found: Range[] = [];
    for (const crop of crops) {
      const each = of(crop);
      if (each === undefined) unknown.push(`${crop.name}: ${field}`);
      else found.push(scale(each, share));
    }
    return found.length === crops.length ? sum(found) : undefined;
  };
  const goal = ({ id }: Crop) => yieldGoalsKgPerM2?.[id] ?? yieldGoalKgPerM2;
  const target = over((crop) => nitrogenTargetGPerM2(crop, goal(crop)), 'nitrogen need');
  const p = over((crop) => removalGPerM2(crop, 'p', goal(crop)), 'phosphorus in the harvest');
  const k = over((crop) => removalGPerM2(crop, 'k', goal(crop)), 'potassium in the harvest');
  const credits = creditsOf(soil, areaM2);
  const full = (found: SoilClass | undefined) => found === 'high' || found === 'excessive';
  return {
    cropG: { ...(target && { n: target }), ...(p && { p }), ...(k && { k }) },
    needG: {
      ...(target && { n: floorAt(sum([target, ...credits.map(({ nG }) => negative(nG))]), 0) }),
      ...(p && { p: full(soil.p) ? point(0) : p }),
      ...(k && { k: full(soil.k) ? point(0) : k }),
    },
    credits,
    unknown,
  };
}

function creditsOf(soil: SoilTold, areaM2: number): readonly Credit[] {
  const credits: Credit[] = [];
  const { nitrateNGPerM2: nitrate, organicMatterPercent: matter, residueNGPerM2: residues } = soil;
  if (nitrate !== undefined) credits.push({ kind: 'nitrate', nG: point(nitrate * areaM2) });
  if (matter !== undefined) credits.push({ kind: 'organic-matter', nG: scale(organicMatterNGPerM2(matter), areaM2) });
  if (residues !== undefined) credits.push({ kind: 'residues', nG: scale(residues, areaM2) });
  const { yearBeforeNGPerM2: before } = soil;
  if (before !== undefined) credits.push({ kind: 'year-before', nG: scale(before, areaM2) });
  return credits;
}

function negative({ low, likely, high }: Range): Range {
  return { low: -high, likely: -likely, high: -low };
}

/** Share of the nitrogen a crop takes up in each of its four stages. @practice little at first, most while it grows and bears */
const STAGE_FRACTIONS = [0.1, 0.4, 0.4, 0.1] as const;

/**
 * Share of its season's nitrogen a crop has taken up by a day since planting, 0 to 1.
 * @range a crop without stages in the table takes it up evenly over the season asked for
 * @source fao-56 table 11 the stages; @practice the shares
 */
export function takenUpFraction(crop: Crop, sincePlantingDays: number, seasonDays: number): number {
  if (!(sincePlantingDays > 0)) return 0;
  if (crop.stagesDays === undefined) return seasonDays > 0 ? Math.min(1, sincePlantingDays / seasonDays) : 1;
  let left = sincePlantingDays;
  let taken = 0;
  for (const [i, days] of crop.stagesDays.entries()) {
    const part = days > 0 ? Math.min(1, Math.max(0, left) / days) : 1;
    taken += part * (STAGE_FRACTIONS[i] ?? 0);
    left -= days;
  }
  return Math.min(1, taken);
}
