// How each figure of a pour came about. The can's rooms hand their numbers over; nothing is computed here.

import type { Strength } from '../can/dilute.ts';
import type { Dose, Pour, PourOrder } from '../can/pour.ts';
import { LIQUOR, LIQUOR_SPREAD, METER_PH, UNMEASURED_PH } from '../can/strength.ts';
import type { Range } from '../quantity/range.ts';
import { MOLAR_MASS_G, PKA } from '../scraps/acid.ts';
import type { Input, Working } from './working.ts';

/** Every shown figure of one pour, in the order of the answer; without a dose only what the can is like. @arithmetic hands over numbers of can/ */
export function workCan(order: PourOrder, pour: Pour): readonly Working[] {
  const { dose } = pour;
  return [
    ...(dose ? [...workPerCan(order, dose), ...workBed(order, dose), ...workTwoStep(dose)] : []),
    ...workDiluted(order, pour),
    ...workGiven(order, pour),
  ];
}

function strengthInputs(strength: Strength): readonly Input[] {
  switch (strength.kind) {
    case 'ratio':
      return [
        {
          label: `parts, read as "1 ${strength.ratio.reading} n"`,
          value: strength.ratio.n,
          unit: '',
          source: 'practice',
        },
      ];
    case 'nutrient':
      return [
        { label: 'wanted on a square metre', value: strength.aimGPerM2, unit: 'g/m²' },
        { label: 'in a litre of the batch', value: strength.contentGPerL, unit: 'g/L' },
        { label: 'depth poured', value: strength.depthLPerM2, unit: 'L/m²' },
      ];
    case 'conductivity':
      return [
        { label: 'limit of the can', value: strength.maxEcDsPerM, unit: 'dS/m' },
        { label: 'batch', value: strength.batchEcDsPerM, unit: 'dS/m' },
        { label: 'water', value: strength.waterEcDsPerM, unit: 'dS/m' },
      ];
  }
}

function strengthFormula(strength: Strength): string {
  switch (strength.kind) {
    case 'ratio':
      return strength.ratio.reading === 'in' ? 'can ÷ n' : 'can ÷ (n + 1)';
    case 'nutrient':
      return 'can × grams wanted ÷ (grams in a litre of the batch × depth poured)';
    case 'conductivity':
      return 'can × (limit − water) ÷ (batch − water), conductivities mixed by volume; all of it where the batch is no saltier than the limit';
  }
}

function workPerCan(order: PourOrder, dose: Dose): readonly Working[] {
  const can: Input = { label: 'can', value: order.canL, unit: 'L' };
  const sources = order.strength.kind === 'ratio' ? ['practice'] : [];
  return [
    {
      figure: 'perCan.concentrateMl',
      label: 'concentrate in one can',
      unit: 'mL',
      formula: strengthFormula(order.strength),
      value: dose.perCan.concentrateMl,
      inputs: [can, ...strengthInputs(order.strength)],
      sources,
      doubts: order.strength.kind === 'ratio' ? ['the ratio is common practice and rests on no trial'] : [],
    },
    {
      figure: 'perCan.waterMl',
      label: 'water in one can',
      unit: 'mL',
      formula: 'can − concentrate',
      value: dose.perCan.waterMl,
      inputs: [can, { label: 'concentrate', value: dose.perCan.concentrateMl, unit: 'mL' }],
      sources: [],
      doubts: [],
    },
  ];
}

function workBed(order: PourOrder, dose: Dose): readonly Working[] {
  const { bed } = dose;
  if (!bed) return [];
  return [
    {
      figure: 'totalL',
      label: 'litres for the bed',
      unit: 'L',
      formula: 'area × depth',
      value: bed.totalL,
      inputs: [
        { label: 'area', value: order.areaM2 ?? 'not given', unit: 'm²' },
        { label: 'depth poured', value: order.depthLPerM2 ?? 'not given', unit: 'L/m²' },
      ],
      sources: [],
      doubts: [],
    },
    {
      figure: 'concentrateL',
      label: 'concentrate for the bed',
      unit: 'L',
      formula: 'litres for the bed × share of concentrate',
      value: bed.concentrateL,
      inputs: [
        { label: 'litres for the bed', value: bed.totalL, unit: 'L' },
        { label: 'share of concentrate', value: dose.concentrateFraction, unit: '' },
      ],
      sources: [],
      doubts: [],
    },
    ...bed.cans.slice(-1).map((can) => ({
      figure: `cans[${bed.cans.length - 1}].concentrateMl`,
      label: 'concentrate in the last can',
      unit: 'mL',
      formula: 'its litres × share of concentrate; its litres are what full cans leave over',
      value: can.concentrateMl,
      inputs: [
        { label: 'litres in the last can', value: can.volumeL, unit: 'L' },
        { label: 'share of concentrate', value: dose.concentrateFraction, unit: '' },
      ],
      sources: [],
      doubts: [],
    })),
  ];
}

function workTwoStep({ twoStep, concentrateFraction }: Dose): readonly Working[] {
  if (!twoStep) return [];
  return [
    {
      figure: 'twoStep.thenMl',
      label: 'first mix in the can',
      unit: 'mL',
      formula: 'dose × (first concentrate + first water) ÷ first concentrate',
      value: twoStep.thenMl,
      inputs: [
        { label: 'dose', value: twoStep.canL * 1000 * concentrateFraction, unit: 'mL' },
        { label: 'first concentrate', value: twoStep.firstConcentrateMl, unit: 'mL' },
        { label: 'first water', value: twoStep.firstWaterMl, unit: 'mL' },
      ],
      sources: [],
      doubts: [],
    },
  ];
}

/** What the balance of charges knows of the acids. */
const ACIDS: readonly Input[] = [
  { label: 'molar mass of lactic acid', value: MOLAR_MASS_G.lactic, unit: 'g/mol' },
  { label: 'molar mass of acetic acid', value: MOLAR_MASS_G.acetic, unit: 'g/mol' },
  { label: 'pKa of lactic acid', value: PKA.lactic, unit: '', source: 'memory' },
  { label: 'pKa of acetic acid', value: PKA.acetic, unit: '', source: 'memory' },
  { label: 'pKa of carbonic acid', value: PKA.carbonic, unit: '', source: 'memory' },
];

function workDiluted({ batch, water }: PourOrder, { dose, diluted }: Pour): readonly Working[] {
  const share: Input = { label: 'share of concentrate', value: dose?.concentrateFraction ?? 'none', unit: '' };
  const all: Working[] = [];
  if (diluted.ph && water) {
    const measured = batch?.ph !== undefined;
    all.push({
      figure: 'diluted.ph',
      label: 'pH of the can',
      unit: '',
      formula:
        'the pH at which charges balance: acids and buffer of the liquor thinned to their share, its net base set so that it balances at its own pH, and the water’s alkalinity; range: the lowest and highest of four, the pH of the batch at each of its ends with least and with most acid',
      value: diluted.ph,
      inputs: [
        share,
        {
          label: 'pH of the batch',
          value: batch?.ph ?? UNMEASURED_PH,
          unit: '',
          ...(measured ? {} : { source: 'memory' }),
        },
        ...(measured ? [{ label: 'a pH meter errs by', value: METER_PH, unit: '', source: 'practice' }] : []),
        { label: 'lactic acid', value: LIQUOR.lacticGPerL, unit: 'g/L', source: 'memory' },
        { label: 'acetic acid', value: LIQUOR.aceticGPerL, unit: 'g/L', source: 'memory' },
        { label: 'buffer', value: LIQUOR.bufferEqPerLPerPh, unit: 'eq/L/pH', source: 'memory' },
        { label: 'pH of the plants before souring', value: LIQUOR.startPh, unit: '', source: 'memory' },
        { label: 'acids and buffer against the usual', value: LIQUOR_SPREAD, unit: 'times', source: 'memory' },
        { label: 'alkalinity of the water', value: water.alkalinityMeqPerL, unit: 'meq/L' },
        { label: 'pH of the water', value: water.ph, unit: '' },
        ...ACIDS,
      ],
      sources: measured ? ['memory', 'practice'] : ['memory'],
      doubts: [
        'acids and buffer of this batch were not measured',
        ...(measured ? [] : ['the pH of the batch was not measured']),
      ],
    });
  }
  if (diluted.ecDsPerM)
    all.push({
      figure: 'diluted.ecDsPerM',
      label: 'salt of the can',
      unit: 'dS/m',
      formula: 'share × batch + (1 − share) × water; a pen errs by 5 %, and thinned salts conduct up to 15 % better',
      value: diluted.ecDsPerM,
      inputs: [share, ...salts(batch?.ecDsPerM, water?.ecDsPerM)],
      sources: ['practice', 'memory'],
      doubts: ['total salts only; which nutrient they are is not told'],
    });
  return all;
}

function salts(batchEcDsPerM: number | Range | undefined, waterEcDsPerM: number | undefined): readonly Input[] {
  return [
    { label: 'batch', value: batchEcDsPerM ?? 'not measured', unit: 'dS/m' },
    { label: 'water', value: waterEcDsPerM ?? 'not measured', unit: 'dS/m' },
  ];
}

function workGiven({ batch, depthLPerM2 }: PourOrder, { dose, given }: Pour): readonly Working[] {
  const names = { nGPerM2: ['nitrogen', batch?.nGPerL], kGPerM2: ['potassium', batch?.kGPerL] } as const;
  return (['nGPerM2', 'kGPerM2'] as const).flatMap((figure) => {
    const value = given[figure];
    const [name, gPerL] = names[figure];
    if (!value || gPerL === undefined) return [];
    return [
      {
        figure: `given.${figure}`,
        label: `${name} on a square metre`,
        unit: 'g/m²',
        formula: 'grams in a litre of the batch × share of concentrate × depth poured; a jug errs by 5 %',
        value,
        inputs: [
          { label: `${name} in the batch`, value: gPerL, unit: 'g/L' },
          { label: 'share of concentrate', value: dose?.concentrateFraction ?? 'none', unit: '' },
          { label: 'depth poured', value: depthLPerM2 ?? 'not given', unit: 'L/m²' },
        ],
        sources: ['practice'],
        doubts: ['total in the liquid, not what plants can take up this season'],
      },
    ];
  });
}
