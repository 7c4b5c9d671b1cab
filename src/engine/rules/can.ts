// What the can itself says: salt and acidity against what plants bear, leaves eaten raw, nozzles that clog,
// aims that cannot be met, and that a filled can is for today. The batch's state is batch.ts.

import {
  ADDED_EC_DS_PER_M,
  addedEcLimit,
  LEAF_ACID_MMOL_PER_L,
  LEAF_EC_DS_PER_M,
  LEAF_ETHANOL_PERCENT,
  MESH_PER_NOZZLE_FRACTION,
  POUR_PH,
  RAW_SOIL_DAYS,
  saltTolerance,
  UNMEASURED_EC_DS_PER_M,
} from '../can/limits.ts';
import type { Pour, PourOrder } from '../can/pour.ts';
import type { Range } from '../quantity/range.ts';
import { dissociatedFraction, PKA } from '../scraps/acid.ts';
import type { Rule } from './rule.ts';

export interface CanSituation {
  readonly order: PourOrder;
  readonly pour: Pour;
}

/** Where a salt figure stands to a limit: over it as likely, over it at the high end, or under. NaN is over. */
function against(ecDsPerM: Range, limitDsPerM: number): 'over' | 'near' | 'under' {
  if (!(ecDsPerM.likely <= limitDsPerM)) return 'over';
  return ecDsPerM.high <= limitDsPerM ? 'under' : 'near';
}

/** The salt that a way of pouring may add, or on a leaf hold in all. */
function salt({ order, pour }: CanSituation): { readonly ecDsPerM: Range; readonly limitDsPerM: number } | undefined {
  const { ecDsPerM, addedEcDsPerM } = pour.diluted;
  if (order.way === 'leaf') {
    const ec = ecDsPerM ?? addedEcDsPerM;
    return ec && { ecDsPerM: ec, limitDsPerM: LEAF_EC_DS_PER_M };
  }
  return addedEcDsPerM && { ecDsPerM: addedEcDsPerM, limitDsPerM: addedEcLimit(order.growth) };
}

function saltIs(situation: CanSituation, where: 'over' | 'near') {
  const found = salt(situation);
  if (found === undefined || against(found.ecDsPerM, found.limitDsPerM) !== where) return false;
  const { way, growth } = situation.order;
  return {
    ecDsPerM: found.ecDsPerM.likely,
    highEcDsPerM: found.ecDsPerM.high,
    limitDsPerM: found.limitDsPerM,
    way,
    growth: growth ?? '',
  };
}

function cropIs({ order, pour }: CanSituation, where: 'over' | 'near') {
  const tolerance = order.crop === undefined ? undefined : saltTolerance(order.crop);
  const ec = pour.diluted.ecDsPerM ?? pour.diluted.addedEcDsPerM;
  if (tolerance === undefined || ec === undefined || against(ec, tolerance.thresholdEcDsPerM) !== where) return false;
  return {
    crop: tolerance.crop,
    ecDsPerM: ec.likely,
    highEcDsPerM: ec.high,
    limitDsPerM: tolerance.thresholdEcDsPerM,
    slopePercentPerDsPerM: tolerance.slopePercentPerDsPerM,
  };
}

/** A concentrate that was not measured, reckoned as salty as any published: what it would add, and the limit. */
function unmeasured({ order, pour }: CanSituation) {
  if (pour.dose === undefined || order.batch?.ecDsPerM !== undefined) return undefined;
  const tolerance = order.crop === undefined ? undefined : saltTolerance(order.crop);
  const limitDsPerM = Math.min(
    order.way === 'leaf' ? LEAF_EC_DS_PER_M : addedEcLimit(order.growth),
    tolerance?.thresholdEcDsPerM ?? Number.POSITIVE_INFINITY,
  );
  const mostEcDsPerM = UNMEASURED_EC_DS_PER_M * pour.dose.concentrateFraction;
  const n = Math.ceil(UNMEASURED_EC_DS_PER_M / limitDsPerM);
  return { over: !(mostEcDsPerM <= limitDsPerM), values: { mostEcDsPerM, limitDsPerM, n } };
}

/** Acid on the leaf that has kept its proton, mmol/L, and the pH it was reckoned at; nothing where it was not told. */
function leafAcid({ order, pour }: CanSituation) {
  const { lacticMmolPerL, aceticMmolPerL } = order.batch ?? {};
  const phLow = pour.diluted.ph?.low;
  if (pour.dose === undefined || lacticMmolPerL === undefined || aceticMmolPerL === undefined || phLow === undefined)
    return undefined;
  const kept = (pka: number) => 1 - dissociatedFraction({ ph: phLow, pka });
  const whole = lacticMmolPerL * kept(PKA.lactic) + aceticMmolPerL * kept(PKA.acetic);
  return { acidMmolPerL: pour.dose.concentrateFraction * whole, phLow };
}

/** Alcohol of the spray, percent; nothing where it was not told. */
function leafEthanol({ order, pour }: CanSituation): number | undefined {
  const told = order.batch?.ethanolPercent;
  return pour.dose === undefined || told === undefined ? undefined : pour.dose.concentrateFraction * told;
}

export const canRules: readonly Rule<CanSituation>[] = [
  {
    id: 'leaf-eaten-raw',
    level: 'stop',
    source: 'ingram-millner-2007',
    locator: 'abstract',
    looksAt: 'a spray on leaves of a crop eaten raw, or not said to be cooked',
    speaksFor: 'general',
    override: 'none',
    when: ({ order }) => (order.way === 'leaf' && order.eaten !== 'cooked' ? { eaten: order.eaten ?? '' } : false),
  },
  {
    id: 'aim-too-weak',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'the amount aimed at against what the undiluted batch holds',
    speaksFor: 'general',
    override: 'none',
    when: ({ pour: { share } }) =>
      !share.reachable && share.why === 'too-weak'
        ? { aimGPerM2: share.aimGPerM2, mostGPerM2: share.mostGPerM2 }
        : false,
  },
  {
    id: 'aim-water-too-salty',
    level: 'stop',
    source: 'our-caution',
    looksAt: 'the salt of the water against the most asked for',
    speaksFor: 'general',
    override: 'none',
    when: ({ pour: { share } }) =>
      !share.reachable && share.why === 'water-too-salty'
        ? { maxEcDsPerM: share.maxEcDsPerM, waterEcDsPerM: share.waterEcDsPerM }
        : false,
  },
  {
    id: 'salt-never',
    level: 'stop',
    source: 'ayers-westcot-1985',
    locator: 'table 1, salinity',
    looksAt: 'salt that the can adds, against the line never passed',
    speaksFor: 'general',
    override: 'reason',
    when: ({ pour }) => {
      const added = pour.diluted.addedEcDsPerM;
      const limitDsPerM = ADDED_EC_DS_PER_M.never;
      return added && against(added, limitDsPerM) === 'over' ? { ecDsPerM: added.likely, limitDsPerM } : false;
    },
  },
  {
    id: 'salt-over',
    level: 'hold',
    source: 'memory',
    looksAt: 'salt that the can adds, or of a spray in all, against its limit',
    speaksFor: 'general',
    when: (situation) => saltIs(situation, 'over'),
  },
  {
    id: 'salt-near',
    level: 'caution',
    source: 'memory',
    looksAt: 'the high end of that salt against the same limit',
    speaksFor: 'general',
    when: (situation) => saltIs(situation, 'near'),
  },
  {
    id: 'crop-salt-over',
    level: 'hold',
    source: 'maas-1990',
    locator: 'vegetables and fruit crops',
    looksAt: 'salt of the can against what the crop bears',
    speaksFor: 'general',
    when: (situation) => cropIs(situation, 'over'),
  },
  {
    id: 'crop-salt-near',
    level: 'caution',
    source: 'maas-1990',
    locator: 'vegetables and fruit crops',
    looksAt: 'the high end of that salt against what the crop bears',
    speaksFor: 'general',
    when: (situation) => cropIs(situation, 'near'),
  },
  {
    id: 'crop-salt-not-known',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether the crop stands in the table of salt tolerance',
    speaksFor: 'general',
    when: ({ order }) => (order.crop !== undefined && !saltTolerance(order.crop) ? { crop: order.crop } : false),
  },
  {
    id: 'salt-not-measured-strong',
    level: 'hold',
    source: 'phibunwatthanawong-2019',
    looksAt: 'a concentrate not measured, reckoned as the saltiest published, against the limit: over',
    speaksFor: 'general',
    when: (situation) => {
      const found = unmeasured(situation);
      return found?.over ? found.values : false;
    },
  },
  {
    id: 'salt-not-measured',
    level: 'note',
    source: 'our-caution',
    looksAt: 'a concentrate not measured, reckoned as the saltiest published, against the limit: under',
    speaksFor: 'general',
    when: (situation) => {
      const found = unmeasured(situation);
      return found && !found.over ? found.values : false;
    },
  },
  {
    id: 'too-sour-for-dry-soil',
    level: 'hold',
    source: 'memory',
    looksAt: 'the pH of the can on soil that is not said to be moist',
    speaksFor: 'general',
    when: ({ order, pour }) => {
      const ph = pour.diluted.ph;
      if (ph === undefined || order.way !== 'soil' || order.soil === 'moist' || ph.likely >= POUR_PH.moistOnly)
        return false;
      return { ph: ph.likely, limitPh: POUR_PH.moistOnly };
    },
  },
  {
    id: 'outside-pour-ph',
    level: 'caution',
    source: 'memory',
    looksAt: 'the band of pH of the can against the usual one',
    speaksFor: 'general',
    when: ({ pour }) => {
      const ph = pour.diluted.ph;
      if (ph === undefined || (ph.low >= POUR_PH.low && ph.high <= POUR_PH.high)) return false;
      return { lowPh: ph.low, highPh: ph.high, fromPh: POUR_PH.low, toPh: POUR_PH.high };
    },
  },
  {
    id: 'leaf-acid-over',
    level: 'hold',
    source: 'memory',
    looksAt: 'acetic and lactic acid of a spray that have kept their proton, against what a leaf bears',
    speaksFor: 'general',
    when: (situation) => {
      const found = situation.order.way === 'leaf' ? leafAcid(situation) : undefined;
      if (found === undefined || found.acidMmolPerL <= LEAF_ACID_MMOL_PER_L) return false;
      return { ...found, limitMmolPerL: LEAF_ACID_MMOL_PER_L };
    },
  },
  {
    id: 'leaf-alcohol-over',
    level: 'hold',
    source: 'memory',
    looksAt: 'alcohol of a spray against what a leaf bears',
    speaksFor: 'general',
    when: (situation) => {
      const percent = situation.order.way === 'leaf' ? leafEthanol(situation) : undefined;
      if (percent === undefined || percent < LEAF_ETHANOL_PERCENT) return false;
      return { percent, limitPercent: LEAF_ETHANOL_PERCENT };
    },
  },
  {
    id: 'leaf-acid-not-known',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'whether acids and alcohol of a spray are known',
    speaksFor: 'general',
    when: (situation) => {
      const { order, pour } = situation;
      // A spray that is stopped needs no figure.
      if (order.way !== 'leaf' || order.eaten !== 'cooked' || pour.dose === undefined) return false;
      return leafAcid(situation) === undefined || leafEthanol(situation) === undefined ? {} : false;
    },
  },
  {
    id: 'nozzle-clogs',
    level: 'hold',
    source: 'practice',
    looksAt: 'the nozzle against how finely the liquid was strained',
    speaksFor: 'general',
    when: ({ order: { nozzleMm, strainedMm } }) => {
      if (nozzleMm === undefined) return false;
      const meshMm = nozzleMm * MESH_PER_NOZZLE_FRACTION;
      if (strainedMm !== undefined && strainedMm <= meshMm) return false;
      return { nozzleMm, meshMm, ...(strainedMm !== undefined && Number.isFinite(strainedMm) && { strainedMm }) };
    },
  },
  {
    id: 'eaten-not-told',
    level: 'caution',
    source: 'our-caution',
    looksAt: 'a pour on the soil: whether the bed is eaten raw or cooked was told',
    speaksFor: 'general',
    when: ({ order }) => (order.way === 'soil' && order.eaten === undefined ? { days: RAW_SOIL_DAYS } : false),
  },
  {
    id: 'can-water-not-told',
    level: 'note',
    source: 'our-caution',
    looksAt: 'whether the water of the can was described',
    speaksFor: 'general',
    when: ({ order }) => (order.water === undefined ? {} : false),
  },
  {
    id: 'ratio-is-practice',
    level: 'note',
    source: 'practice',
    looksAt: 'a strength given as a ratio',
    speaksFor: 'general',
    when: ({ order: { strength } }) =>
      strength.kind === 'ratio' ? { n: strength.ratio.n, reading: strength.ratio.reading } : false,
  },
  {
    id: 'use-today',
    level: 'note',
    source: 'our-caution',
    looksAt: 'every dose: how long a filled can keeps',
    speaksFor: 'general',
    when: ({ pour }) => (pour.dose ? {} : false),
  },
];
