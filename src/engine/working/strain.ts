// How each figure of a strained batch came about. The bottle's rooms hand their numbers over; nothing is
// computed here.

import { CLOSES_WITHIN_PERCENT } from '../bottle/balance.ts';
import { fermentAt, releaseFigures } from '../bottle/extraction.ts';
import { bottleFigure } from '../bottle/figures.ts';
import type { UseFirst } from '../bottle/keep.ts';
import { drainedFraction, type ElementFate, type StrainedBatch } from '../bottle/liquid.ts';
import type { Strained } from '../bottle/strained.ts';
import { asRange } from '../quantity/range.ts';
import { gasFigure } from '../souring/gas/figures.ts';
import { type Closed, CO2_MOL_PER_MOL_HEXOSE } from '../souring/gas/pressure.ts';
import type { Input, Working } from './working.ts';

const NAMES = { n: 'nitrogen', p: 'phosphorus', k: 'potassium', ca: 'calcium', mg: 'magnesium' } as const;

/** What the workings of one strained batch are made from. */
export interface StrainTrace {
  readonly batch: StrainedBatch;
  readonly strained: Strained;
  readonly useFirst: UseFirst;
  /** The word for the batch, where it was given. */
  readonly state?: string | undefined;
  /** The bottle, when one was given and the sugar left in it is known. */
  readonly closed?: { readonly bottle: Closed; readonly pressureAtm: number } | undefined;
}

/** Every shown figure of a strained batch, in the order of the answer. @arithmetic hands over numbers of bottle/ */
export function workStrain(trace: StrainTrace): readonly Working[] {
  const { n, p, k } = trace.strained.fates;
  return [
    ...workBalance(trace),
    ...[n, p, k].flatMap((fate) => (fate.known ? workElement(trace, fate) : [])),
    ...workConductivity(trace),
    ...workCn(trace),
    workUseFirst(trace),
    ...workPressure(trace),
  ];
}

function workBalance({ batch, strained }: StrainTrace): readonly Working[] {
  const density = bottleFigure('liquid', 'densityKgPerL');
  const heavy: Input = {
    label: 'mass of a litre drained',
    value: density.likely,
    unit: 'kg/L',
    source: density.source,
  };
  return [
    {
      figure: 'balance.inKg',
      label: 'mass put in',
      unit: 'kg',
      formula: 'plants + water (1 kg a litre) + sugar + starter × mass of a litre drained',
      value: strained.balance.inKg,
      inputs: [
        ...batch.plants.map((part) => ({ label: part.name, value: part.massKg, unit: 'kg' })),
        { label: 'water', value: batch.waterL, unit: 'L' },
        { label: batch.sugar.product.name, value: batch.sugar.massKg, unit: 'kg' },
        { label: 'starter', value: batch.starterL, unit: 'L' },
        heavy,
      ],
      sources: [density.source],
      doubts: [],
    },
    {
      figure: 'balance.outKg',
      label: 'mass that came out',
      unit: 'kg',
      formula: 'drained litres × mass of a litre drained + wet solids',
      value: strained.balance.outKg,
      inputs: [
        { label: 'drained', value: batch.drainedL, unit: 'L' },
        heavy,
        { label: 'wet solids', value: batch.solidsKg, unit: 'kg' },
      ],
      sources: [density.source],
      doubts: ['gas and what dried off are not weighed'],
    },
    {
      figure: 'balance.unexplainedPercent',
      label: 'unexplained',
      unit: '%',
      formula: '(put in − came out) ÷ put in; below 0 more came out than went in',
      value: strained.balance.unexplainedPercent,
      inputs: [
        { label: 'put in', value: strained.balance.inKg, unit: 'kg' },
        { label: 'came out', value: strained.balance.outKg, unit: 'kg' },
        { label: 'closes within', value: CLOSES_WITHIN_PERCENT, unit: '%', source: 'practice' },
      ],
      sources: ['practice'],
      doubts: [],
    },
  ];
}

function workElement(trace: StrainTrace, fate: ElementFate): readonly Working[] {
  const { batch, strained } = trace;
  const name = NAMES[fate.element];
  const { finf, kPerDay } = releaseFigures(fate.element, fermentAt(batch.finalPh));
  const doubts = fate.unknownIn.map((lot) => `not known for ${lot}: the figure is too low`);
  if (batch.starterL > 0) doubts.push('the starter’s own nutrients are not known and not counted');
  const liquid: Input = { label: 'water, starter and the plants’ own water', value: strained.batchLiquidL, unit: 'L' };
  const plants: Input = { label: `${name} in the plants`, value: fate.plantsG, unit: 'g' };
  const sugar: readonly Input[] =
    fate.element === 'k'
      ? [{ label: 'potassium in the sugar, dissolved from the first day', value: fate.sugarG, unit: 'g' }]
      : [];
  const released: Input = { label: 'share given up by then', value: fate.releasedFraction, unit: '' };
  const drained: Input = { label: 'share of the liquid drained', value: drainedFraction(batch), unit: '' };
  const workings: Working[] = [
    {
      figure: `liquid.${fate.element}GPerL`,
      label: `${name} in a litre`,
      unit: 'g/L',
      formula:
        '(in the plants × share given up + in the sugar) ÷ liquid, never above the ceiling; share given up = final share × (1 − e^(−rate × days))',
      value: fate.gPerL,
      inputs: [
        plants,
        ...sugar,
        { label: 'final share', value: asRange(finf), unit: '', source: finf.source },
        { label: 'rate', value: asRange(kPerDay), unit: 'per day', source: kPerDay.source },
        { label: 'days', value: batch.days, unit: 'd' },
        { label: 'pH at straining', value: batch.finalPh, unit: '' },
        released,
        liquid,
        { label: 'no more than', value: fate.ceilingGPerL, unit: 'g/L' },
      ],
      sources: [...new Set([finf.source, kPerDay.source])],
      doubts,
    },
    {
      figure: `ceiling.${fate.element}GPerL`,
      label: `${name}: no more than`,
      unit: 'g/L',
      formula: 'high end of all that went in ÷ liquid',
      value: fate.ceilingGPerL,
      inputs: [{ label: `${name} put in`, value: fate.inG, unit: 'g' }, liquid],
      sources: [],
      doubts,
    },
  ];
  if (fate.element === 'p') return workings;
  return [
    ...workings,
    {
      figure: `solids.${fate.element}G`,
      label: `${name} left in the solids`,
      unit: 'g',
      formula:
        'in the plants × (1 − share given up × share drained) + in the sugar × (1 − share drained), never more than the high end of all that went in',
      value: fate.solidsG,
      inputs: [plants, ...sugar, released, drained, { label: `${name} put in`, value: fate.inG, unit: 'g' }],
      sources: [...new Set([finf.source, kPerDay.source])],
      doubts,
    },
  ];
}

function workConductivity({ strained }: StrainTrace): readonly Working[] {
  if (strained.ecDsPerM === undefined) return [];
  const { n, k, ca, mg } = strained.fates;
  const ions = [k, n, ca, mg].filter((fate) => fate.known);
  const error = bottleFigure('conductivity', 'factor');
  return [
    {
      figure: 'liquid.ecDsPerM',
      label: 'conductivity, undiluted',
      unit: 'dS/m',
      formula: '(K ÷ 39 + NH4-N ÷ 14 + Ca ÷ 20 + Mg ÷ 12.2) ÷ 10, in mg a litre',
      value: strained.ecDsPerM,
      inputs: [
        ...ions.map((fate) => ({ label: `${NAMES[fate.element]} in a litre`, value: fate.gPerL, unit: 'g/L' })),
        {
          label: 'ammonium and nitrate in the dissolved nitrogen',
          value: strained.ammoniumFraction,
          unit: '',
          source: 'memory',
        },
        { label: 'the rule may be wrong by', value: asRange(error), unit: 'times', source: error.source },
      ],
      sources: [error.source],
      doubts: [
        'sodium is not counted: salty scraps read higher',
        ...[n, k, ca, mg]
          .filter((fate) => fate.unknownIn.length > 0)
          .map((fate) => `${NAMES[fate.element]} not known for ${fate.unknownIn.join(', ')}: the figure is too low`),
      ],
    },
  ];
}

function workCn({ batch, strained }: StrainTrace): readonly Working[] {
  if (!strained.solidsCn.known) return [];
  const lost = bottleFigure('carbon', 'lostShare');
  return [
    {
      figure: 'solids.cn',
      label: 'C:N of the solids',
      unit: '',
      formula: 'C:N put in × (1 − carbon lost) ÷ (1 − nitrogen given up × share drained)',
      value: strained.solidsCn.cn,
      inputs: [
        { label: 'C:N put in, weighted by nitrogen', value: strained.solidsCn.putIn.cn, unit: '' },
        { label: 'carbon lost to acid, gas and liquid', value: asRange(lost), unit: '', source: lost.source },
        { label: 'nitrogen given up', value: strained.fates.n.releasedFraction, unit: '' },
        { label: 'share of the liquid drained', value: drainedFraction(batch), unit: '' },
      ],
      sources: [lost.source],
      doubts: ['the carbon lost is a guess'],
    },
  ];
}

function workUseFirst({ batch, useFirst, state }: StrainTrace): Working {
  return {
    figure: 'useFirst.days',
    label: 'use first, days from straining',
    unit: 'd',
    formula:
      'at pH 4.0 or below: from two tenfold falls of the living bacteria to the next summer (365 d), likely the geometric middle; up to pH 4.6: 0, 1 and 2 tenfold falls; above, and for a batch that is lost or unknown: none',
    value: useFirst.days,
    inputs: [
      { label: 'pH at straining', value: batch.finalPh, unit: '' },
      { label: 'state', value: state ?? 'not given', unit: '' },
      { label: 'tenfold fall of the living bacteria', value: useFirst.tenfoldDays, unit: 'd', source: 'memory' },
      { label: 'longest any source goes', value: 365, unit: 'd', source: 'rhs-fertilisers' },
    ],
    sources: ['rhs-fertilisers', 'memory', 'our-caution'],
    doubts: ['sources disagree, from weeks to the next summer', 'a rising pH or a film ends it at once'],
  };
}

function workPressure({ closed }: StrainTrace): readonly Working[] {
  if (closed === undefined) return [];
  const { bottle, pressureAtm } = closed;
  const solubility = gasFigure('co2', 'henryMolPerLAtm');
  const slope = gasFigure('co2', 'henrySlopeK');
  return [
    {
      figure: 'pressure.upToAtm',
      label: 'pressure if the bottle were closed, all sugar to yeast',
      unit: 'atm above the air outside',
      formula:
        'gas ÷ (gas room ÷ (R × temperature) + solubility × liquid); gas = sugar ÷ 180.16 g/mol × gas from a mole; R = 0.08206 L·atm/mol/K; solubility = that at 25 °C × e^(change × (1/T − 1/298.15)), T in K',
      value: pressureAtm,
      inputs: [
        { label: 'sugar left', value: bottle.hexoseG, unit: 'g' },
        { label: 'gas from a mole of sugar', value: CO2_MOL_PER_MOL_HEXOSE[bottle.route], unit: 'mol' },
        { label: 'gas room', value: bottle.gasRoomL, unit: 'L' },
        { label: 'liquid', value: bottle.liquidL, unit: 'L' },
        { label: 'temperature', value: bottle.temperatureC, unit: '°C' },
        { label: 'solubility at 25 °C', value: solubility.likely, unit: 'mol/L/atm', source: solubility.source },
        { label: 'its change with temperature', value: slope.likely, unit: 'K', source: slope.source },
      ],
      sources: ['sander-2015'],
      doubts: ['gas dissolved before closing and a warmer day come on top'],
    },
  ];
}
