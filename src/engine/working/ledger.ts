// How each figure of a bed's sum came about. The ground's rooms hand their numbers over; nothing is computed here.

import type { Crop } from '../ground/crops.ts';
import type { BedLedger } from '../ground/ledger.ts';
import { type BedAsk, NUTRIENTS, type Nutrient } from '../ground/need.ts';
import type { SoilReadAs } from '../ground/soil-test.ts';
import type { Input, Working } from './working.ts';

const NAMES = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' } as const;
const KINDS = {
  pour: 'the liquid',
  compost: 'compost',
  mulch: 'mulch',
  solids: 'strained solids',
  product: 'bought feed',
  'cover-crop': 'cover crop',
} as const;
const CREDITS = {
  nitrate: 'nitrate in the soil',
  'organic-matter': 'set free by organic matter',
  residues: 'left by residues',
  'year-before': 'left by the crop of the year before',
} as const;

/** What the workings are made from: each bed with its crops, in the order of the answer. */
export interface LedgerWorked {
  readonly beds: readonly BedWorked[];
}

/** One bed with its crops, what harvest was aimed at, and what its soil test was read as. */
export interface BedWorked {
  readonly ledger: BedLedger;
  readonly crops: readonly Crop[];
  readonly asked: Pick<BedAsk, 'yieldGoalKgPerM2' | 'yieldGoalsKgPerM2'>;
  readonly read: Readonly<Record<'p' | 'k', SoilReadAs | undefined>>;
}

/** Every shown figure of every bed, in the order of the answer. @arithmetic hands over numbers of ground/ */
export function workLedger({ beds }: LedgerWorked): readonly Working[] {
  return beds.flatMap((bed, i) =>
    NUTRIENTS.flatMap((element) => {
      const asked = { ...bed, element, at: `beds[${i}]` };
      return [...workNeed(asked), ...workGiven(asked), ...workShare(asked)];
    }),
  );
}

interface Asked extends BedWorked {
  readonly element: Nutrient;
  /** Path of the bed in the answer. */
  readonly at: string;
}

/** The harvest aimed at, and by how much it moves the nitrogen of the table, where the table tells. */
function aimInputs(crop: Crop, goalKgPerM2: number | undefined): readonly Input[] {
  const { needYieldKgPerM2: tableYield, nPer20PercentGPerM2: step, nNeedGPerM2: need } = crop;
  if (goalKgPerM2 === undefined || step === undefined || !(need && need.likely > 0 && tableYield && tableYield > 0))
    return [];
  return [
    { label: `${crop.name}: harvest aimed at`, value: goalKgPerM2, unit: 'kg/m²' },
    { label: `${crop.name}: harvest of that figure`, value: tableYield, unit: 'kg/m²' },
    { label: `${crop.name}: for 20 % of that harvest`, value: step, unit: 'g/m²' },
  ];
}

function workNeed({ ledger, crops, asked, read, element, at }: Asked): readonly Working[] {
  const needed = ledger.need.needG[element];
  const whole = ledger.need.cropG[element];
  if (needed === undefined || whole === undefined) return [];
  const field = element === 'n' ? 'nNeedGPerM2' : element === 'p' ? 'pGPerKg' : 'kGPerKg';
  const inputs = crops.flatMap((crop): readonly Input[] => {
    const source = crop.sources[field];
    const value = crop[field];
    const yieldSource = crop.sources.yieldKgPerM2;
    if (value === undefined) return [];
    const label = element === 'n' ? `${crop.name}: to be had over a season` : `${crop.name}: in the harvest`;
    const own: Input = { label, value, unit: element === 'n' ? 'g/m²' : 'g/kg', ...(source && { source }) };
    const goal = asked.yieldGoalsKgPerM2?.[crop.id] ?? asked.yieldGoalKgPerM2;
    if (element === 'n') return [own, ...aimInputs(crop, goal)];
    const harvestLabel = `${crop.name}: harvest`;
    if (goal !== undefined) return [own, { label: harvestLabel, value: goal, unit: 'kg/m²' }];
    if (crop.yieldKgPerM2 === undefined) return [own];
    const harvest: Input = { label: harvestLabel, value: crop.yieldKgPerM2, unit: 'kg/m²' };
    return [own, { ...harvest, ...(yieldSource && { source: yieldSource }) }];
  });
  const credits: readonly Input[] =
    element === 'n' ? ledger.need.credits.map(({ kind, nG }) => ({ label: CREDITS[kind], value: nG, unit: 'g' })) : [];
  const test = element === 'n' ? undefined : read[element];
  const soil: readonly Input[] =
    test?.kind === 'class' ? [{ label: 'class of the soil test', value: test.class, unit: '' }] : [];
  return [
    {
      figure: `${at}.needG.${element}`,
      label: `${ledger.name}: ${NAMES[element]} needed`,
      unit: 'g',
      formula:
        element === 'n'
          ? 'target a square metre × area, each crop on an equal share, less what the soil brings, not below 0; for a harvest aimed at, the target moves by the figure for 20 % as often as 20 % of the table’s harvest go into the difference'
          : 'harvest × content × area, each crop on an equal share; none where the soil test is high',
      value: needed,
      inputs: [
        { label: 'area', value: ledger.areaM2, unit: 'm²' },
        ...inputs,
        { label: 'for the crops, before the soil’s share', value: whole, unit: 'g' },
        ...credits,
        ...soil,
      ],
      sources: [...new Set(inputs.flatMap(({ source }) => source ?? []))],
      doubts: [
        'ends combine in quadrature',
        ...crops.flatMap(({ name, ownSource }) =>
          ownSource === undefined ? [] : [`${name}: by your own source, ${ownSource}`],
        ),
      ],
    },
  ];
}

function workGiven({ ledger, element, at }: Asked): readonly Working[] {
  const given = ledger.givenG[element];
  if (given === undefined) return [];
  return [
    {
      figure: `${at}.givenG.${element}`,
      label: `${ledger.name}: ${NAMES[element]} given`,
      unit: 'g',
      formula:
        element === 'n'
          ? 'sum of the kinds listed; liquid: litres of concentrate × g/L, all of it; other stuff: nitrogen in it × share free in a season × share released by the degree days over 0 °C'
          : 'sum of the kinds listed, all of it: mass × dry matter × content; litres of concentrate × g/L; label figures out of the oxides',
      value: given,
      inputs: ledger.byKind.flatMap(({ kind, givenG }) => {
        const value = givenG[element];
        return value === undefined ? [] : [{ label: KINDS[kind], value, unit: 'g' }];
      }),
      sources: element === 'n' ? ['pnw-636', 'clemson-compost'] : [],
      doubts: [
        'acts of one kind err together and their ends add straight; kinds combine in quadrature',
        ...ledger.unknownIn.filter((one) => one.element === element).map(({ what }) => `not known for ${what}`),
      ],
    },
  ];
}

function workShare({ ledger, element, at }: Asked): readonly Working[] {
  const share = ledger.liquidSharePercent[element];
  const needed = ledger.need.needG[element];
  if (share === undefined || needed === undefined) return [];
  const ceiling = ledger.ceilingSharePercent[element];
  return [
    {
      figure: `${at}.liquidSharePercent.${element}`,
      label: `${ledger.name}: ${NAMES[element]} the liquid brought, of what is needed`,
      unit: '%',
      formula: '100 × liquid ÷ need, never above “no more than”',
      value: share,
      inputs: [
        { label: 'the liquid', value: ledger.liquidG[element] ?? 0, unit: 'g' },
        { label: 'needed', value: needed, unit: 'g' },
        ...(ceiling === undefined || !Number.isFinite(ceiling)
          ? []
          : [{ label: 'no more than', value: ceiling, unit: '%' }]),
      ],
      sources: [],
      doubts: ['all the nitrogen of the liquid is counted; most of it has to rot first'],
    },
  ];
}
