// How the figures of a cover came about: each bed's grams by material, and the money. Numbers are the plan's.

import type { CoverPlan } from '../ground/cover/plan.ts';
import type { Nutrient } from '../ground/need.ts';
import type { Input, Working } from './working.ts';

const NAMES: Readonly<Record<Nutrient, string>> = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' };
const PER_KG = { n: 'nG', p: 'pG', k: 'kG' } as const;

/** Every bed and nutrient that something is put on for, then what it costs. @arithmetic hands over numbers of ground/cover */
export function workCover(plan: CoverPlan): readonly Working[] {
  const grams = plan.balance.flatMap(({ bed, nutrient, missingG, givenG, leftG }): readonly Working[] => {
    const uses = plan.uses.filter((use) => use.bed === bed && use.source.perKg[PER_KG[nutrient]] !== undefined);
    if (uses.length === 0) return [];
    const inputs = uses.flatMap(({ source, massKg }): readonly Input[] => [
      { label: source.name, value: massKg, unit: 'kg' },
      {
        label: `${source.name}: ${NAMES[nutrient]} for this season`,
        value: source.perKg[PER_KG[nutrient]] ?? Number.NaN,
        unit: 'g/kg',
      },
    ]);
    return [
      {
        figure: `cover.${bed.name}.${nutrient}`,
        label: `${bed.name}: ${NAMES[nutrient]} brought`,
        unit: 'g',
        formula: 'sum over materials of kilograms × grams in a kilogram; still short = missing − brought, not below 0',
        value: givenG,
        inputs: [
          ...inputs,
          { label: 'missing before', value: missingG, unit: 'g' },
          { label: 'still short', value: leftG, unit: 'g' },
        ],
        sources: [],
        doubts: ['Planned with the likely figures; the lean and the rich ones give the range of the cost.'],
      },
    ];
  });
  return plan.buys.length === 0 ? grams : [...grams, costOf(plan)];
}

function costOf({ buys, cost }: CoverPlan): Working {
  return {
    figure: 'cover.cost',
    label: 'what it costs',
    unit: '',
    formula: 'sum over what is bought of kilograms, in whole packs, × price of a kilogram',
    value: cost,
    inputs: buys.flatMap(({ source, massKg }): readonly Input[] => [
      { label: `${source.name}: bought`, value: massKg, unit: 'kg' },
      { label: `${source.name}: price of a kilogram, as told`, value: source.costPerKg ?? Number.NaN, unit: '' },
    ]),
    sources: [],
    doubts: ['The range is by weight, with the rich and with the lean figures; the likely value is in whole packs.'],
  };
}
