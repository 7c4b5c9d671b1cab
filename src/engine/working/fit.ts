// How each figure of the weigh-in came about. The pail's rooms hand their numbers over; nothing is computed here.

import { pailFigure } from '../pail/figures.ts';
import type { Fit } from '../pail/fit.ts';
import type { Recipe } from '../pail/recipe.ts';
import { asRange } from '../quantity/range.ts';
import type { Assumed, Part } from '../scraps/part.ts';
import type { Input, Working } from './working.ts';

/** Assumptions about some of a lot's figures, as doubts a person can read. */
function doubts(plants: readonly Part[], fields: readonly string[]): readonly string[] {
  const all: Assumed[] = plants.flatMap((part) => part.assumed.filter((a) => fields.includes(a.field)));
  return all.map(
    (a) => `${a.material}: ${a.field} not known, taken as ${a.value.likely} (${a.value.low} to ${a.value.high})`,
  );
}

/** Inputs of the recipe that shape the volume. */
function volumeInputs(recipe: Recipe, { settled }: { readonly settled: boolean }): readonly Input[] {
  const { water, sugar, plants } = recipe;
  return [
    { label: 'water', value: water.volumeL, unit: 'L' },
    ...plants.map((part) => ({ label: part.name, value: part.massKg, unit: 'kg' })),
    ...(settled ? plants : []).map((part) => ({
      label: `${part.name}, settled`,
      value: part.displacementLPerKg,
      unit: 'L/kg',
      source: 'memory',
    })),
    { label: sugar.product.name, value: sugar.massKg, unit: 'kg' },
    {
      label: `${sugar.product.name}, dissolved`,
      value: sugar.product.displacementLPerKg,
      unit: 'L/kg',
      source: 'memory',
    },
  ];
}

/** Mass and dry share of each lot, for sums over the lots. */
function dryInputs(plants: readonly Part[]): readonly Input[] {
  return plants.flatMap((part) => [
    { label: `${part.name}, mass`, value: part.massKg, unit: 'kg' },
    { label: `${part.name}, dry share`, value: part.dryMatter, unit: '' },
  ]);
}

/**
 * Workings of the volume, the fill line, the lift and the mass.
 * @arithmetic hands over numbers of pail/volume.ts
 */
export function workFill(recipe: Recipe, fit: Fit): readonly Working[] {
  const { vessel } = recipe;
  const gas = pailFigure('float', 'gasLiftFactor');
  const float = pailFigure('float', 'floatLPerKg');
  return [
    {
      figure: 'fill.volumeL',
      label: 'settled volume',
      unit: 'L',
      formula:
        'water + each plant mass × its settled volume per kg + sugar mass × its dissolved volume per kg; ranges of the plants add straight',
      value: fit.fill.volumeL,
      inputs: volumeInputs(recipe, { settled: true }),
      sources: ['memory'],
      doubts: doubts(recipe.plants, ['displacementLPerKg']),
    },
    {
      figure: 'fill.usableL',
      label: 'up to the fill line',
      unit: 'L',
      formula: 'vessel × (1 − gas room)',
      value: fit.fill.usableL,
      inputs: [
        { label: 'vessel', value: vessel.volumeL, unit: 'L' },
        { label: 'gas room', value: vessel.gasRoom, unit: 'share of the vessel', source: 'practice' },
      ],
      sources: ['practice'],
      doubts: [],
    },
    {
      figure: 'fill.overL',
      label: 'too much',
      unit: 'L',
      formula: 'likely settled volume − volume up to the fill line, not below 0',
      value: fit.fill.overL,
      inputs: [
        { label: 'settled volume', value: fit.fill.volumeL, unit: 'L' },
        { label: 'up to the fill line', value: fit.fill.usableL, unit: 'L' },
      ],
      sources: [],
      doubts: [],
    },
    {
      figure: 'lift.highL',
      label: 'highest stand while it gasses',
      unit: 'L',
      formula:
        'low: likely settled volume × least gas lift; high: the larger of likely settled volume × most gas lift and water + sugar × its dissolved volume per kg + plants × floating volume per kg; likely: halfway',
      value: { low: fit.lift.lowL, likely: (fit.lift.lowL + fit.lift.highL) / 2, high: fit.lift.highL },
      inputs: [
        { label: 'settled volume', value: fit.fill.volumeL, unit: 'L' },
        { label: 'gas lift', value: asRange(gas), unit: 'times', source: gas.source },
        { label: 'floating mat on day 0', value: asRange(float), unit: 'L/kg', source: float.source },
        ...volumeInputs(recipe, { settled: false }),
      ],
      sources: [gas.source],
      doubts: [],
    },
    {
      figure: 'fill.massKg',
      label: 'mass to lift',
      unit: 'kg',
      formula: 'plants + water at 1 kg/L + sugar + empty vessel where given',
      value: fit.fill.massKg,
      inputs: [
        { label: 'water', value: recipe.water.volumeL, unit: 'L' },
        ...recipe.plants.map((part) => ({ label: part.name, value: part.massKg, unit: 'kg' })),
        { label: recipe.sugar.product.name, value: recipe.sugar.massKg, unit: 'kg' },
        {
          label: 'empty vessel',
          value: vessel.emptyMassKg ?? 'not given, left out',
          unit: vessel.emptyMassKg ? 'kg' : '',
        },
      ],
      sources: [],
      doubts: [],
    },
  ];
}

/**
 * Workings of the sugar window, term by term.
 * @arithmetic hands over numbers of pail/sugar.ts
 */
export function workSugar(recipe: Recipe, fit: Fit): readonly Working[] {
  const { sugar } = fit;
  const { terms } = sugar;
  const acidYield = pailFigure('souring', 'acidYieldMolPerMol');
  const share = pailFigure('souring', 'lacticShareFraction');
  const safety = pailFigure('souring', 'safetyFactor');
  const access = pailFigure('souring', 'ownSugarAccessFraction');
  const most = pailFigure('souring', 'mostHexoseGPerL');
  const demand: readonly Input[] = [
    { label: 'acid the plants take', value: terms.demand.plantEq, unit: 'eq' },
    { label: 'acid the water takes', value: terms.demand.waterEq, unit: 'eq' },
    { label: 'free acid at the target', value: terms.demand.freeEq, unit: 'eq' },
    { label: 'acid that ammonia takes', value: terms.demand.ammoniaEq, unit: 'eq' },
    { label: 'target pH', value: recipe.targetPh, unit: '' },
  ];
  const buffers: readonly Input[] = recipe.plants.flatMap((part) => [
    { label: `${part.name}, dry share`, value: part.dryMatter, unit: '' },
    { label: `${part.name}, buffer`, value: part.bufferEqPerKgDmPerPh, unit: 'eq/kg dry/pH' },
    { label: `${part.name}, own pH`, value: part.ph, unit: '' },
  ]);
  return [
    {
      figure: 'sugar.ownHexoseG',
      label: 'own sugar of the plants',
      unit: 'g',
      formula: 'reach × sum of (mass × dry share × sugar per kg dry)',
      value: sugar.ownHexoseBandG,
      inputs: [
        { label: 'reach of the bacteria, chopped', value: asRange(access), unit: 'share', source: access.source },
        ...dryInputs(recipe.plants),
        ...recipe.plants.map((part) => ({
          label: `${part.name}, sugar`,
          value: part.sugarsGPerKgDm,
          unit: 'g/kg dry',
        })),
      ],
      sources: [access.source],
      doubts: doubts(recipe.plants, ['sugarsGPerKgDm']),
    },
    {
      figure: 'sugar.neededHexoseG',
      label: 'sugar the acid takes, no margin',
      unit: 'g',
      formula:
        '180.16 g/mol × acid demand ÷ (protons a mole of acid gives at the target × moles of acid from a mole of sugar) + least sugar to add × own need of the product',
      value: sugar.neededHexoseBandG,
      inputs: [
        ...demand,
        ...buffers,
        { label: 'protons per mole of acid', value: terms.protonsPerMol, unit: '' },
        { label: 'lactic share of the acid', value: asRange(share), unit: 'share', source: share.source },
        { label: 'acid from a mole of sugar', value: asRange(acidYield), unit: 'mol', source: acidYield.source },
        { label: 'least sugar to add', value: sugar.leastHexoseG, unit: 'g' },
        { label: 'own need of the product', value: terms.productSelfFraction, unit: 'g per g' },
      ],
      sources: [acidYield.source],
      doubts: doubts(recipe.plants, ['bufferEqPerKgDmPerPh', 'ph']),
    },
    {
      figure: 'sugar.leastHexoseG',
      label: 'least sugar to add',
      unit: 'g',
      formula:
        '(safety factor × sugar the acid takes − own sugar, not below 0) ÷ (1 − likely safety factor × own need of the product); no amount does where that is 0 or less',
      value: sugar.leastHexoseG,
      inputs: [
        { label: 'safety factor', value: asRange(safety), unit: 'times', source: safety.source },
        { label: 'sugar the acid takes, without the product’s own need', value: terms.bareHexoseG, unit: 'g' },
        { label: 'own sugar of the plants', value: sugar.ownHexoseBandG, unit: 'g' },
        { label: 'own need of the product', value: terms.productSelfFraction, unit: 'g per g' },
      ],
      sources: [safety.source],
      doubts: [],
    },
    {
      figure: 'sugar.mostHexoseG',
      label: 'most sugar to add',
      unit: 'g',
      formula: '20 g (15 to 25) for each litre the acid must sour: water + the plants’ own water',
      value: sugar.mostHexoseBandG,
      inputs: [
        { label: 'most per litre', value: asRange(most), unit: 'g/L', source: most.source },
        { label: 'liquid to sour', value: terms.liquidL, unit: 'L' },
      ],
      sources: [most.source],
      doubts: [],
    },
    {
      figure: 'sugar.asProductG',
      label: `least as ${recipe.sugar.product.name}`,
      unit: 'g',
      formula: 'likely least sugar to add ÷ likely fermentable sugar in a gram of the product',
      value: sugar.asProductG,
      inputs: [
        { label: 'least sugar to add', value: sugar.leastHexoseG, unit: 'g' },
        { label: 'sugar in the product', value: recipe.sugar.product.hexoseGPerKg, unit: 'g/kg' },
      ],
      sources: recipe.sugar.product.sources,
      doubts: [],
    },
  ];
}

/**
 * Workings of the nutrients put in.
 * @arithmetic hands over numbers of pail/inputs.ts
 */
export function workInputs(recipe: Recipe, fit: Fit): readonly Working[] {
  const names = { n: 'nitrogen', p: 'phosphorus', k: 'potassium' } as const;
  return (['n', 'p', 'k'] as const).map((element) => ({
    figure: `inputs.${element}G`,
    label: `${names[element]} put in`,
    unit: 'g',
    formula:
      element === 'k'
        ? 'sum of (mass × dry share × percent of dry matter × 10) + sugar × its potassium'
        : 'sum of (mass × dry share × percent of dry matter × 10)',
    value: fit.inputs[`${element}G`],
    inputs: [
      ...dryInputs(recipe.plants),
      ...recipe.plants.map((part) => ({
        label: `${part.name}, ${names[element]}`,
        value: part[`${element}PercentDm`] ?? 'not known',
        unit: '% of dry matter',
      })),
      ...(element === 'k'
        ? [
            { label: 'sugar added', value: recipe.sugar.massKg, unit: 'kg' },
            { label: 'potassium of the sugar product', value: recipe.sugar.product.kGPerKg, unit: 'g/kg' },
          ]
        : []),
    ],
    sources: [],
    doubts: fit.unknown
      .filter((gap) => gap.element === element)
      .map((gap) => `not known for ${gap.materials.join(', ')}: the total is too low`),
  }));
}
