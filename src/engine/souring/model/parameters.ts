// The numbers of the ferment model as data/ferment.csv gives them, each a band. Who they belong to: the plant, two
// guilds of lactic bacteria (early: hetero, first to grow; late: homo, acid-hardy), yeast, enterobacteria, the foul
// branch (clostridia) and film yeast. A run of the model takes one value of each; draws.ts takes many.

import type { Range } from '../../quantity/range.ts';
import { figures } from '../../tables/index.ts';

/** What every microbe that grows on sugar has. */
export interface Guild {
  readonly muPerH: number;
  readonly temperatureMinC: number;
  readonly temperatureBestC: number;
  readonly temperatureMaxC: number;
  readonly minPh: number;
  readonly bestPh: number;
  readonly maxPh: number;
  readonly lacticMostMolPerL: number;
  readonly aceticMostMolPerL: number;
  readonly waterActivityMinFraction: number;
  readonly startLog10CountPerG: number;
}

/** One value of every parameter; the names are the ids and quantities of data/ferment.csv. */
export interface Parameters {
  readonly plant: {
    readonly releasePerH: number;
    readonly accessFraction: number;
    readonly slowSugarGPerKgDm: number;
    readonly slowReleasePerH: number;
    readonly ammoniaPerH: number;
    readonly ammoniaByEnteroPerH: number;
    readonly ammoniaByFoulPerH: number;
    readonly labileNFraction: number;
    readonly foulNFraction: number;
    readonly waterActivitySlopeFraction: number;
    readonly halfSugarGPerL: number;
    readonly mostCellsGPerL: number;
    readonly cellsPerNitrogenGPerG: number;
  };
  readonly early: Guild & {
    readonly acidPerGrowthGPerG: number;
    readonly acidAtRestGPerGPerH: number;
    readonly restBearsFactor: number;
    readonly aceticFraction: number;
    readonly mannitolFraction: number;
  };
  readonly late: Guild & {
    readonly acidPerGrowthGPerG: number;
    readonly acidAtRestGPerGPerH: number;
    readonly restBearsFactor: number;
    readonly mannitolPaceFraction: number;
  };
  readonly yeast: Guild & {
    readonly atRestGPerGPerH: number;
    readonly mostGPerL: number;
    readonly cellsPerNitrogenGPerG: number;
  };
  readonly entero: Guild & {
    readonly mostGPerL: number;
    readonly atRestGPerGPerH: number;
    readonly deathPerH: number;
  };
  readonly foul: {
    readonly lacticTurnedPerH: number;
    readonly temperatureMinC: number;
    readonly temperatureBestC: number;
    readonly temperatureMaxC: number;
    readonly criticalPhAt15PercentDm: number;
    readonly criticalPhRiseFactor: number;
    readonly growthPerH: number;
    readonly startFraction: number;
    readonly aceticFraction: number;
  };
  readonly film: {
    readonly lacticMostGPerLPerDay: number;
    readonly growthPerH: number;
    readonly startFraction: number;
  };
}

type Bands = { readonly [group in keyof Parameters]: { readonly [name in keyof Parameters[group]]: Range } };

function read(): Bands {
  const table = figures('ferment');
  const groups: Record<string, Record<string, Range>> = {};
  for (const [id, row] of table) {
    const group: Record<string, Range> = {};
    for (const [quantity, figure] of Object.entries(row)) if (figure) group[quantity] = figure;
    groups[id] = group;
  }
  return groups as unknown as Bands;
}

/** Every parameter as a band, 10th to 90th percentile. @memory each figure names its own source in data/ferment.csv */
export const parameterBands: Bands = read();

/** The parameters with a value taken from each band. @arithmetic */
export function parametersBy(take: (band: Range, group: string, name: string) => number): Parameters {
  const groups: Record<string, Record<string, number>> = {};
  for (const [group, bands] of Object.entries(parameterBands)) {
    const values: Record<string, number> = {};
    for (const [name, band] of Object.entries(bands as Record<string, Range>)) values[name] = take(band, group, name);
    groups[group] = values;
  }
  return groups as unknown as Parameters;
}

/** The likely value of every parameter. @memory each figure names its own source in data/ferment.csv */
export const likelyParameters: Parameters = parametersBy((band) => band.likely);
