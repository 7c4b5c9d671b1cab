// A crop with what it takes: figures of data/crops.csv, or the grower's own with the source they name. A figure nobody
// gives is absent; what a bed needs of it is need.ts.

import { asRange, type Range } from '../quantity/range.ts';
import { figures } from '../tables/index.ts';
import type { Figure } from '../tables/types.ts';
import { cropName, formsOf } from './crop-names.ts';
import { plain } from './figures.ts';

const TABLE = figures('crops');

/** A crop as the sums take it. */
export interface Crop {
  readonly id: string;
  readonly name: string;
  /** Fresh harvest, from a low to a good crop. */
  readonly yieldKgPerM2?: Range | undefined;
  /** Taken off with the harvest. */
  readonly nGPerKg?: Range | undefined;
  readonly pGPerKg?: Range | undefined;
  readonly kGPerKg?: Range | undefined;
  /** Nitrogen to be had over the season, that of the soil with it, for the harvest of needYieldKgPerM2. */
  readonly nNeedGPerM2?: Range | undefined;
  readonly needYieldKgPerM2?: number | undefined;
  /** More or less of it for a harvest 20 % larger or smaller. */
  readonly nPer20PercentGPerM2?: number | undefined;
  /** What its residues leave to a crop that follows in the same year. */
  readonly residueNGPerM2?: number | undefined;
  /** Initial, development, mid and late stage. */
  readonly stagesDays?: readonly [number, number, number, number] | undefined;
  readonly maturityDays?: Range | undefined;
  readonly baseTemperatureC?: Range | undefined;
  /** Where each figure of the table comes from, by its name: an id of data/sources.csv, or a mark. */
  readonly sources: Readonly<Record<string, string>>;
  /** Where the figures of a grower's own crop come from, in their words: shown as it is, never looked up as an id. */
  readonly ownSource?: string | undefined;
}

/** A crop a grower adds, with a source of their own. */
export interface OwnCrop {
  readonly name: string;
  readonly source: string;
  readonly yieldKgPerM2?: number | Range | undefined;
  readonly nNeedGPerM2?: number | Range | undefined;
  readonly nGPerKg?: number | Range | undefined;
  readonly pGPerKg?: number | Range | undefined;
  readonly kGPerKg?: number | Range | undefined;
}

const ready = new Map<string, Crop>();

/** The crop of this id, or undefined where the table has none. @source duev-2017 and the other sources of data/crops.csv */
export function cropOf(id: string): Crop | undefined {
  const known = ready.get(id);
  if (known !== undefined) return known;
  const row = TABLE.get(id);
  if (row === undefined) return undefined;
  const band = (quantity: string): Range | undefined => {
    const figure = row[quantity];
    return figure && plain(figure);
  };
  const stages = ['initialDays', 'developmentDays', 'midDays', 'lateDays'].map((quantity) => row[quantity]?.likely);
  const [initial, development, mid, late] = stages;
  const crop: Crop = {
    id,
    name: cropName(id),
    yieldKgPerM2: band('yieldKgPerM2'),
    nGPerKg: band('nGPerKg'),
    pGPerKg: band('pGPerKg'),
    kGPerKg: band('kGPerKg'),
    nNeedGPerM2: band('nNeedGPerM2'),
    needYieldKgPerM2: row.needYieldKgPerM2?.likely,
    nPer20PercentGPerM2: row.nPer20PercentGPerM2?.likely,
    residueNGPerM2: row.residueNGPerM2?.likely,
    stagesDays:
      initial === undefined || development === undefined || mid === undefined || late === undefined
        ? undefined
        : [initial, development, mid, late],
    maturityDays: band('maturityDays'),
    baseTemperatureC: band('baseTemperatureC'),
    sources: Object.fromEntries(Object.entries(row).map(([quantity, figure]) => [quantity, sourceOf(figure)] as const)),
  };
  ready.set(id, crop);
  return crop;
}

/** A grower's own crop. Its nitrogen goes with the harvest in proportion. @arithmetic */
export function ownCrop(own: OwnCrop): Crop {
  const band = (value: number | Range | undefined) => (value === undefined ? undefined : asRange(value));
  const nNeedGPerM2 = band(own.nNeedGPerM2);
  const yieldKgPerM2 = band(own.yieldKgPerM2);
  return {
    id: own.name,
    name: own.name,
    yieldKgPerM2,
    nNeedGPerM2,
    needYieldKgPerM2: yieldKgPerM2?.likely,
    nPer20PercentGPerM2: nNeedGPerM2 && nNeedGPerM2.likely * 0.2,
    nGPerKg: band(own.nGPerKg),
    pGPerKg: band(own.pGPerKg),
    kGPerKg: band(own.kGPerKg),
    sources: {},
    ownSource: own.source,
  };
}

/** Crops of the grower's own by every form of their names; of one name the last counts. @arithmetic text alone */
export function ownCropsByName(crops: readonly OwnCrop[]): ReadonlyMap<string, Crop> {
  return new Map(crops.flatMap((own) => formsOf(own.name).map((form) => [form, ownCrop(own)] as const)));
}

function sourceOf(figure: Figure | undefined): string {
  return figure?.source ?? 'memory';
}
