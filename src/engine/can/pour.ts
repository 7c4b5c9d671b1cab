// One pour as a whole: how strong, how much in a can, how many cans, with what to measure it, and what the can is
// like. Whether it may be poured is for rules/batch.ts and rules/can.ts to say; a stop takes the dose away there.

import { asRange, product, type Range, range, scale } from '../quantity/range.ts';
import type { Ratio } from '../quantity/ratio.ts';
import type { SpoonCountry } from '../quantity/units.ts';
import type { Profile } from '../scraps/profile.ts';
import type { State } from '../souring/reason.ts';
import { type Cans, cansFor } from './cans.ts';
import { type Share, type Strength, shareFor, type TwoVolumes, twoVolumes } from './dilute.ts';
import type { AnimalOrigin, Eaten } from './eating.ts';
import type { Growth, Way } from './limits.ts';
import { type Measure, measuresFor, type TwoStep, twoStepFor } from './measures.ts';
import { addedEc, type CanWater, canEc, canPh } from './strength.ts';

/** The batch as its keyholder names it; everything may be missing, and what is missing counts against it. */
export interface PourBatch {
  readonly peg?: number | string | null | undefined;
  readonly state?: State | undefined;
  readonly held?: boolean | undefined;
  /** Local date from which it will count as held, where that clock runs. */
  readonly heldOn?: string | undefined;
  readonly ph?: number | undefined;
  readonly ecDsPerM?: number | Range | undefined;
  readonly nGPerL?: number | Range | undefined;
  readonly kGPerL?: number | Range | undefined;
  /** What animals may have left in it, where the record tells. */
  readonly animalOrigin?: AnimalOrigin | undefined;
  /** Acids in all, whatever their protons do. */
  readonly lacticMmolPerL?: number | undefined;
  readonly aceticMmolPerL?: number | undefined;
  readonly ethanolPercent?: number | undefined;
}

/** Everything one pour may be told. */
export interface PourOrder {
  readonly batch?: PourBatch | undefined;
  readonly strength: Strength;
  readonly canL: number;
  readonly areaM2?: number | undefined;
  readonly depthLPerM2?: number | undefined;
  readonly spoon: SpoonCountry | null;
  readonly water?: CanWater | undefined;
  /** Everything that grows there, as told. */
  readonly crop?: string | undefined;
  readonly growth?: Growth | undefined;
  readonly way: Way;
  readonly eaten?: 'raw' | 'cooked' | undefined;
  /** The part that is eaten, as told; `eaten` is what the bed counts as. */
  readonly eatenPart?: Eaten | undefined;
  readonly profile?: Profile | undefined;
  readonly toPickDays?: number | undefined;
  readonly nozzleMm?: number | undefined;
  readonly strainedMm?: number | undefined;
  readonly soil?: 'dry' | 'moist' | undefined;
}

/** The dose: volumes for one can and for the bed. */
export interface Dose {
  readonly concentrateFraction: number;
  readonly perCan: TwoVolumes;
  readonly bed?: Cans;
  readonly measures: readonly Measure[];
  /** For the smallest dose under 2 mL: of a full can, or of the part-can of `canL` litres. */
  readonly twoStep?: TwoStep & { readonly canL: number };
  /** The same figure read the other way, for whoever typed a colon. */
  readonly otherReading?: TwoVolumes & Ratio;
}

/** One pour: the share, the dose where there is one, the can's acidity and salt, and what a square metre gets. */
export interface Pour {
  readonly share: Share;
  readonly dose?: Dose;
  readonly diluted: { readonly ph?: Range; readonly ecDsPerM?: Range; readonly addedEcDsPerM?: Range };
  readonly given: { readonly nGPerM2?: Range; readonly kGPerM2?: Range };
}

/** Error of jug and can together. @practice a jug is read to 2-5 % */
const JUG: Range = range(0.95, 1, 1.05);

/**
 * One pour from what is known of batch, can, bed and water.
 * @arithmetic puts the rooms of can/ together
 */
export function pour(order: PourOrder): Pour {
  const share = shareFor(order.strength);
  if (!share.reachable) return { share, diluted: {}, given: {} };
  const { concentrateFraction } = share;
  return {
    share,
    dose: doseOf(order, concentrateFraction),
    diluted: dilutedOf(order, concentrateFraction),
    given: givenOf(order, concentrateFraction),
  };
}

function doseOf(order: PourOrder, concentrateFraction: number): Dose {
  const { canL, areaM2, depthLPerM2, spoon, strength } = order;
  const perCan = twoVolumes({ mixtureL: canL, concentrateFraction });
  const bed =
    areaM2 === undefined || depthLPerM2 === undefined
      ? undefined
      : cansFor({ areaM2, depthLPerM2, canL, concentrateFraction });
  const small = [{ volumeL: canL, concentrateMl: perCan.concentrateMl }, ...(bed?.cans ?? [])].find(
    (can) => twoStepFor(can.concentrateMl) !== undefined,
  );
  const twoStep = small && twoStepFor(small.concentrateMl);
  const other: Ratio | undefined =
    strength.kind === 'ratio'
      ? { n: strength.ratio.n, reading: strength.ratio.reading === 'in' ? 'to' : 'in' }
      : undefined;
  const otherShare = other && shareFor({ kind: 'ratio', ratio: other });
  return {
    concentrateFraction,
    perCan,
    ...(bed && { bed }),
    measures: measuresFor({ volumeMl: perCan.concentrateMl, canL, spoon }),
    ...(small && twoStep && { twoStep: { ...twoStep, canL: small.volumeL } }),
    ...(other &&
      otherShare?.reachable && {
        otherReading: {
          ...other,
          ...twoVolumes({ mixtureL: canL, concentrateFraction: otherShare.concentrateFraction }),
        },
      }),
  };
}

function dilutedOf(order: PourOrder, concentrateFraction: number): Pour['diluted'] {
  const { batch, water } = order;
  const batchEcDsPerM = batch?.ecDsPerM;
  const waterEcDsPerM = water?.ecDsPerM;
  return {
    ...(water && { ph: canPh({ liquorPh: batch?.ph, concentrateFraction, water }) }),
    ...(batchEcDsPerM !== undefined &&
      waterEcDsPerM !== undefined && { ecDsPerM: canEc({ batchEcDsPerM, waterEcDsPerM, concentrateFraction }) }),
    ...(batchEcDsPerM !== undefined && {
      addedEcDsPerM: addedEc({ batchEcDsPerM, waterEcDsPerM, concentrateFraction }),
    }),
  };
}

function givenOf(order: PourOrder, concentrateFraction: number): Pour['given'] {
  const { batch, depthLPerM2 } = order;
  if (depthLPerM2 === undefined) return {};
  const gramsOf = (gPerL: number | Range) => scale(product([asRange(gPerL), JUG]), concentrateFraction * depthLPerM2);
  return {
    ...(batch?.nGPerL !== undefined && { nGPerM2: gramsOf(batch.nGPerL) }),
    ...(batch?.kGPerL !== undefined && { kGPerM2: gramsOf(batch.kGPerL) }),
  };
}
