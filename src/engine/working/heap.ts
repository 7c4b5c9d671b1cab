// How each figure of a heap came about. The heap's room hands its numbers over; nothing is computed here.

import { heapFigure } from '../heap/figures.ts';
import { finishedDryMatter, type HeapPlan } from '../heap/heap.ts';
import type { Weighed } from '../heap/ingredient.ts';
import type { Figure } from '../tables/types.ts';
import type { Input, Working } from './working.ts';

/** Every shown figure of a heap, in the order of the answer. @arithmetic hands over numbers of heap/ */
export function workHeap(plan: HeapPlan): readonly Working[] {
  return [...workCn(plan), workMoisture(plan), ...workWater(plan), ...workLeft(plan)];
}

const tableOrOwn = ({ ingredient }: Weighed) => (ingredient.id === undefined ? {} : { source: 'rynk-1992' });

function rowInputs({ rows }: HeapPlan): readonly Input[] {
  return rows.flatMap((row) => {
    const { ingredient, massKg } = row;
    const { name, dryMatter, cn, cPercentDm } = ingredient;
    return [
      { label: `${name}: mass`, value: massKg, unit: 'kg' },
      { label: `${name}: dry matter`, value: dryMatter, unit: 'of wet mass', ...tableOrOwn(row) },
      ...(cn === undefined || cPercentDm === undefined
        ? []
        : [
            { label: `${name}: carbon`, value: cPercentDm, unit: '% of dry matter' },
            { label: `${name}: C:N`, value: cn, unit: '', ...tableOrOwn(row) },
          ]),
    ];
  });
}

function workCn(plan: HeapPlan): readonly Working[] {
  const { mix, rows } = plan;
  if (mix.cn === undefined) return [];
  const taken = rows.filter(({ ingredient }) => ingredient.carbonTaken).map(({ ingredient }) => ingredient.name);
  return [
    {
      figure: 'cn',
      label: 'C:N of the mix',
      unit: '',
      formula:
        'sum of mass × dry matter × carbon, divided by sum of mass × dry matter × nitrogen, which is carbon ÷ C:N; ratios are never averaged; range: each input moved to its ends by itself, the changes added as squares, within the rows’ own C:N',
      value: mix.cn,
      inputs: rowInputs(plan),
      sources: ['cornell-right-mix'],
      doubts: [
        ...mix.withoutCn.map((name) => `carbon and nitrogen are not known for ${name}: not counted`),
        ...taken.map(
          (name) =>
            `the carbon of ${name} is not known: taken as that of wood, ${heapFigure('carbon', 'woodPercentDm').likely} %`,
        ),
      ],
    },
  ];
}

function workMoisture(plan: HeapPlan): Working {
  return {
    figure: 'moisturePercent',
    label: 'water in the mix',
    unit: '%',
    formula:
      'sum of mass × (1 − dry matter), divided by sum of masses; range: each input moved to its ends by itself, the changes added as squares, within the wettest and driest row',
    value: plan.mix.moisturePercent,
    inputs: rowInputs(plan).filter(({ label }) => /mass$|dry matter$/.test(label)),
    sources: ['cornell-right-mix'],
    doubts: ['rain, and what dries off, are not in it'],
  };
}

function workWater({ waterL, mix, moistureWithWaterPercent }: HeapPlan): readonly Working[] {
  if (!(waterL > 0)) return [];
  return [
    {
      figure: 'waterL',
      label: 'water to add',
      unit: 'L',
      formula: 'likely mass × (goal − water in it) ÷ (100 − goal)',
      value: waterL,
      inputs: [
        { label: 'mass', value: mix.massKg, unit: 'kg' },
        { label: 'water in it', value: mix.moisturePercent, unit: '%' },
        { label: 'goal', value: moistureWithWaterPercent, unit: '%' },
      ],
      sources: ['cornell-right-mix'],
      doubts: [],
    },
  ];
}

function workLeft({ left, mix }: HeapPlan): readonly Working[] {
  const loss = (quantity: string): Input & { readonly source: string } => {
    const found: Figure = heapFigure('losses', quantity);
    const { low, likely, high, source } = found;
    return { label: 'share lost', value: { low, likely, high }, unit: '', source };
  };
  const carbon = loss('carbonFraction');
  const nitrogen = loss('nitrogenFraction');
  const dryIn: Input = { label: 'dry matter put in', value: mix.dryKg, unit: 'kg' };
  const carbonIn: Input = { label: 'carbon put in', value: mix.carbonKg, unit: 'kg' };
  const organic = heapFigure('carbon', 'organicPerCarbonFactor');
  return [
    {
      figure: 'left.carbonKg',
      label: 'carbon left at the end',
      unit: 'kg',
      formula: 'carbon put in × (1 − share lost), as unsure as the dry matter put in and never more than went in',
      value: left.carbonKg,
      inputs: [carbonIn, dryIn, carbon],
      sources: [carbon.source],
      doubts: [],
    },
    {
      figure: 'left.nitrogenKg',
      label: 'nitrogen left at the end',
      unit: 'kg',
      formula: 'nitrogen put in × (1 − share lost), never more than went in',
      value: left.nitrogenKg,
      inputs: [{ label: 'nitrogen put in', value: left.nitrogenInKg, unit: 'kg' }, nitrogen],
      sources: [nitrogen.source],
      doubts: ['heaps rich in grass lose most'],
    },
    {
      figure: 'left.massKg',
      label: 'compost at the end',
      unit: 'kg',
      formula:
        'dry matter put in × (1 − 1.8 × carbon put in × share lost ÷ likely dry matter put in), never more than went in, ÷ dry matter of finished compost',
      value: left.massKg,
      inputs: [
        dryIn,
        carbonIn,
        { label: 'organic matter over its carbon', value: organic.likely, unit: '', source: organic.source },
        carbon,
        { label: 'dry matter of finished compost', value: finishedDryMatter(), unit: 'of wet mass', source: 'memory' },
      ],
      sources: [carbon.source, organic.source],
      doubts: ['how wet the compost ends depends on rain and cover'],
    },
  ];
}
