// The water that goes in: how much acid it can take up, in the seven units that reports use, and what its
// chlorine asks for. Advice leaves here as codes with values; the sentences stand in words/en/water.ts, the
// cautions about where water comes from in rules/water.ts. The pail counts the alkalinity in its own balance.

import { type Range, range } from '../quantity/range.ts';
import { GALLON_L, GRAIN_MG } from '../quantity/units.ts';
import { balancePh, chargeSurplus, MOLAR_MASS_G } from './acid.ts';

/** Molar masses, g/mol (sums of atomic weights). @memory */
const CACO3_G = 100.0869;
const CAO_G = 56.0774;
/** Two charges on each: half a mole takes up one equivalent of acid. */
const CACO3_MG_PER_MEQ = CACO3_G / 2;

export type AlkalinityUnit = 'mg/L CaCO3' | 'mmol/L' | 'meq/L' | 'dH' | 'fH' | 'clark' | 'gpg';

/**
 * meq/L in one of each unit. dH: 10 mg CaO/L. fH: 10 mg CaCO3/L. clark: 1 grain CaCO3 per imperial gallon.
 * gpg: 1 grain CaCO3 per US gallon. mmol/L is read as bicarbonate, one equivalent each.
 * @arithmetic definitions of the degrees
 * @checked published/gnu-units.test.ts
 */
export const MEQ_PER_UNIT: Readonly<Record<AlkalinityUnit, number>> = {
  'mg/L CaCO3': 1 / CACO3_MG_PER_MEQ,
  'mmol/L': 1,
  'meq/L': 1,
  dH: 10 / (CAO_G / 2),
  fH: 10 / CACO3_MG_PER_MEQ,
  clark: GRAIN_MG / GALLON_L.imperial / CACO3_MG_PER_MEQ,
  gpg: GRAIN_MG / GALLON_L.us / CACO3_MG_PER_MEQ,
};

/** Acid that a litre of water takes up before it turns sour. @returns meq/L @arithmetic MEQ_PER_UNIT */
export function alkalinityMeqPerL(reported: { readonly value: number; readonly unit: AlkalinityUnit }): number {
  return reported.value * MEQ_PER_UNIT[reported.unit];
}

/**
 * Lactic acid that the alkalinity of a water uses up.
 *
 *   m = V · K · 90.08 mg
 *
 * One mole of acid for each equivalent; a sour batch turns all of its carbonate to gas.
 * @returns g
 * @arithmetic
 */
export function lacticAcidEatenG(water: { readonly volumeL: number; readonly alkalinityMeqPerL: number }): number {
  return (water.volumeL * water.alkalinityMeqPerL * MOLAR_MASS_G.lactic) / 1000;
}

/** mg of ascorbic acid for 1 mg of chlorine. @source land-2005 */
export const ASCORBIC_MG_PER_MG = 2.5;
/** mg of thiosulfate pentahydrate for 1 mg of chlorine: two moles to one, 2 · 248.18 / 70.91. @arithmetic */
export const THIOSULFATE_MG_PER_MG = 7;
/** A printed field figure for thiosulfate; whether of the dry salt or the hydrate is not said. @memory */
export const THIOSULFATE_FIELD_MG_PER_MG = 1.9;

/** Loss of free chlorine from standing water, per hour: in an open vessel indoors, and in full sun. @memory */
export const LOSS_PER_H = { indoors: range(0.02, 0.032, 0.05), sun: range(0.3, 0.77, 2) } as const;

/** Hours until half is gone, ln 2 / k. @arithmetic first-order loss */
function halvingH(lossPerH: Range): Range {
  return range(Math.LN2 / lossPerH.high, Math.LN2 / lossPerH.likely, Math.LN2 / lossPerH.low);
}

/** Acid one kilogram of mixed clippings and trimmings takes from pH 6.2 to 3.9: 0.328 eq in 3 kg. @memory */
export const PLANT_ACID_EQ_PER_KG = 0.109;
/** Below this share of the plants' own demand, or this alkalinity where no plants are named, it is ignored. */
const IGNORED = { percent: 10, meqPerL: 5 } as const;

/** A finished batch at pH 3.9, as it is diluted. Lactic 5.2 g/L, acetic 1.8 g/L, plant buffer. @memory */
const SOUR_LIQUID = { lacticMolPerL: 5.2 / MOLAR_MASS_G.lactic, aceticMolPerL: 1.8 / MOLAR_MASS_G.acetic } as const;
const SOUR_LIQUID_BUFFER_EQ_PER_L_PER_PH = 0.0115;
const PLANT_PH = 6.2;
const SOUR_PH = 3.9;

/**
 * About where a can stands when one part in n of it is a sour batch of pH 3.9; for advice only, the can's
 * own figure comes from its batch.
 * @arithmetic balancePh of the diluted liquid and the water
 */
export function sourCanPh(can: {
  readonly alkalinityMeqPerL: number;
  readonly waterPh: number;
  readonly n: number;
}): number {
  const bare = { baseEqPerL: 0, alkalinityEqPerL: 0, startPh: PLANT_PH, waterPh: can.waterPh };
  const undiluted = { ...SOUR_LIQUID, ...bare, bufferEqPerLPerPh: SOUR_LIQUID_BUFFER_EQ_PER_L_PER_PH };
  return balancePh({
    lacticMolPerL: SOUR_LIQUID.lacticMolPerL / can.n,
    aceticMolPerL: SOUR_LIQUID.aceticMolPerL / can.n,
    bufferEqPerLPerPh: SOUR_LIQUID_BUFFER_EQ_PER_L_PER_PH / can.n,
    baseEqPerL: chargeSurplus(undiluted, SOUR_PH) / can.n,
    startPh: PLANT_PH,
    alkalinityEqPerL: ((can.alkalinityMeqPerL / 1000) * (can.n - 1)) / can.n,
    waterPh: can.waterPh,
  });
}

export type WaterUse = 'pail' | 'can' | 'raw-crop';
export type WaterSource = 'tap' | 'rain' | 'roof' | 'ditch' | 'pond' | 'well';

/** A water as asked about; what is not known is absent, never 0. Chlorine and chloramine as mg/L Cl2. */
export interface WaterAsked {
  readonly volumeL: number;
  readonly freeChlorineMgPerL?: number | undefined;
  readonly chloramineMgPerL?: number | undefined;
  readonly alkalinity?: { readonly value: number; readonly unit: AlkalinityUnit } | undefined;
  readonly use?: WaterUse | undefined;
  readonly source?: WaterSource | undefined;
  readonly plantsKg?: number | undefined;
}

/** One piece of advice: a code that words knows, and the numbers its sentence needs. */
export interface WaterAdvice {
  readonly code: WaterAdviceCode;
  readonly values: Readonly<Record<string, number | string>>;
}

export type WaterAdviceCode =
  | 'tap-straight'
  | 'chlorine-not-given'
  | 'no-chlorine'
  | 'pail-hardly-matters'
  | 'can-optional'
  | 'dose-either'
  | 'dose-thiosulfate'
  | 'standing-free'
  | 'standing-not-chloramine'
  | 'alkalinity-not-given'
  | 'alkalinity-ignore'
  | 'alkalinity-counts'
  | 'can-hardly-sour'
  | 'can-stays-sour';

/** What is known of a water, and what to do about it. A figure that needs what was not given is absent. */
export interface WaterAnswer {
  /** Chlorine of both kinds in the whole volume. */
  readonly chlorineMg?: number;
  readonly ascorbicAcidMg?: number;
  readonly thiosulfatePentahydrateMg?: number;
  readonly alkalinityMeqPerL?: number;
  readonly lacticAcidEatenG?: number;
  /** Share of the plants' own acid demand, where their mass is given. */
  readonly plantAcidPercent?: number;
  /** Hours until half the free chlorine is gone; only for free chlorine. */
  readonly halvingIndoorsH?: Range;
  readonly halvingInSunH?: Range;
  readonly advice: readonly WaterAdvice[];
}

/** Most chlorine that US drinking water may hold, mg/L as Cl2 (40 CFR 141.65). @memory */
export const MOST_DRINKING_MG_PER_L = 4;
/** Waters that no one adds chlorine to. */
const NEVER_CHLORINATED: readonly (WaterSource | undefined)[] = ['rain', 'roof', 'ditch', 'pond'];

/** Usual dilution, for the advice about a can. @practice */
const USUAL_N = 200;
/** From this pH up a can is hardly sour. @our-caution */
const HARDLY_SOUR_PH = 6;

/**
 * What a water asks for before it goes into pail or can.
 * @arithmetic doses and acid from the figures above
 * @checked worked/water.csv
 */
export function assessWater(asked: WaterAsked): WaterAnswer {
  const chlorine = chlorineOf(asked);
  const acid = acidOf(asked);
  const straight: WaterAdvice[] = asked.use === 'raw-crop' ? [{ code: 'tap-straight', values: {} }] : [];
  return { ...chlorine.figures, ...acid.figures, advice: [...straight, ...chlorine.advice, ...acid.advice] };
}

type Part = { readonly figures: Omit<WaterAnswer, 'advice'>; readonly advice: readonly WaterAdvice[] };

function chlorineOf({ volumeL, freeChlorineMgPerL, chloramineMgPerL, use, source, plantsKg }: WaterAsked): Part {
  if (freeChlorineMgPerL === undefined && chloramineMgPerL === undefined)
    return {
      figures: {},
      advice: NEVER_CHLORINATED.includes(source) ? [] : [{ code: 'chlorine-not-given', values: {} }],
    };
  const free = freeChlorineMgPerL ?? 0;
  const bound = chloramineMgPerL ?? 0;
  const chlorineMg = volumeL * (free + bound);
  const doses = {
    chlorineMg,
    ascorbicAcidMg: chlorineMg * ASCORBIC_MG_PER_MG,
    thiosulfatePentahydrateMg: chlorineMg * THIOSULFATE_MG_PER_MG,
  };
  if (chlorineMg === 0) return { figures: doses, advice: [{ code: 'no-chlorine', values: {} }] };
  const advice: WaterAdvice[] = [];
  const values = { ...doses, fieldMg: chlorineMg * THIOSULFATE_FIELD_MG_PER_MG };
  const asDrunk = free + bound <= MOST_DRINKING_MG_PER_L;
  if (use !== 'can' && asDrunk)
    advice.push({
      code: 'pail-hardly-matters',
      values: { chlorineMg, ...(plantsKg === undefined ? {} : { plantsKg }) },
    });
  if (use !== 'pail' && asDrunk) advice.push({ code: 'can-optional', values: { chlorineMg } });
  if (use !== 'raw-crop' || !asDrunk) advice.push({ code: bound > 0 ? 'dose-thiosulfate' : 'dose-either', values });
  if (bound > 0) {
    advice.push({ code: 'standing-not-chloramine', values: {} });
    return { figures: doses, advice };
  }
  const halvingIndoorsH = halvingH(LOSS_PER_H.indoors);
  const halvingInSunH = halvingH(LOSS_PER_H.sun);
  const hours = {
    indoorsLowH: halvingIndoorsH.low,
    indoorsHighH: halvingIndoorsH.high,
    sunLowH: halvingInSunH.low,
    sunHighH: halvingInSunH.high,
  };
  if (use !== 'raw-crop') advice.push({ code: 'standing-free', values: hours });
  return { figures: { ...doses, halvingIndoorsH, halvingInSunH }, advice };
}

function acidOf({ volumeL, alkalinity, use, plantsKg }: WaterAsked): Part {
  if (alkalinity === undefined) return { figures: {}, advice: [{ code: 'alkalinity-not-given', values: {} }] };
  const meqPerL = alkalinityMeqPerL(alkalinity);
  const acidG = lacticAcidEatenG({ volumeL, alkalinityMeqPerL: meqPerL });
  const percent =
    plantsKg === undefined ? undefined : ((volumeL * meqPerL) / 1000 / (plantsKg * PLANT_ACID_EQ_PER_KG)) * 100;
  const advice: WaterAdvice[] = [];
  if (use !== 'can') {
    const small = percent === undefined ? meqPerL <= IGNORED.meqPerL : percent <= IGNORED.percent;
    const values = { acidG, ...(percent === undefined ? {} : { percent }) };
    advice.push({ code: small ? 'alkalinity-ignore' : 'alkalinity-counts', values });
  }
  if (use !== 'pail') {
    const ph = sourCanPh({ alkalinityMeqPerL: meqPerL, waterPh: 7.6, n: USUAL_N });
    advice.push({ code: ph < HARDLY_SOUR_PH ? 'can-stays-sour' : 'can-hardly-sour', values: { n: USUAL_N } });
  }
  const figures = { alkalinityMeqPerL: meqPerL, lacticAcidEatenG: acidG };
  return { figures: percent === undefined ? figures : { ...figures, plantAcidPercent: percent }, advice };
}
