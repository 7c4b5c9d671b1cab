// How each figure of a water came about. The numbers are those of scraps/water.ts, handed over; nothing is
// computed here.

import {
  ASCORBIC_MG_PER_MG,
  LOSS_PER_H,
  MEQ_PER_UNIT,
  PLANT_ACID_EQ_PER_KG,
  THIOSULFATE_FIELD_MG_PER_MG,
  THIOSULFATE_MG_PER_MG,
  type WaterAnswer,
  type WaterAsked,
} from '../scraps/water.ts';
import type { Input, Working } from './working.ts';

/** What was given of the chlorine, as inputs. */
function chlorineInputs(asked: WaterAsked): readonly Input[] {
  const inputs: Input[] = [{ label: 'water', value: asked.volumeL, unit: 'L' }];
  if (asked.freeChlorineMgPerL !== undefined)
    inputs.push({ label: 'free chlorine', value: asked.freeChlorineMgPerL, unit: 'mg/L' });
  if (asked.chloramineMgPerL !== undefined)
    inputs.push({ label: 'chloramine, as chlorine', value: asked.chloramineMgPerL, unit: 'mg/L' });
  return inputs;
}

function workChlorine(asked: WaterAsked, answer: WaterAnswer): readonly Working[] {
  const { chlorineMg, ascorbicAcidMg, thiosulfatePentahydrateMg, halvingIndoorsH, halvingInSunH } = answer;
  const workings: Working[] = [];
  if (chlorineMg !== undefined)
    workings.push({
      figure: 'chlorineMg',
      label: 'chlorine in the water',
      unit: 'mg',
      formula: 'water × chlorine, free and bound',
      value: chlorineMg,
      inputs: chlorineInputs(asked),
      sources: [],
      doubts: [],
    });
  const disputed =
    (asked.chloramineMgPerL ?? 0) > 0 ? ['one kinetic study found that it does not act on monochloramine'] : [];
  if (ascorbicAcidMg !== undefined)
    workings.push({
      figure: 'ascorbicAcidMg',
      label: 'ascorbic acid for the chlorine',
      unit: 'mg',
      formula: 'water × chlorine × 2.5 mg per mg',
      value: ascorbicAcidMg,
      inputs: [
        ...chlorineInputs(asked),
        { label: 'ascorbic acid per mg of chlorine', value: ASCORBIC_MG_PER_MG, unit: 'mg', source: 'land-2005' },
      ],
      sources: disputed.length > 0 ? ['land-2005', 'basu-desouza-2011'] : ['land-2005'],
      doubts: disputed,
    });
  if (thiosulfatePentahydrateMg !== undefined)
    workings.push({
      figure: 'thiosulfatePentahydrateMg',
      label: 'thiosulfate (pentahydrate) for the chlorine',
      unit: 'mg',
      formula: 'water × chlorine × 7.0 mg per mg: two moles of thiosulfate, 248.18 g each, to one of chlorine, 70.91 g',
      value: thiosulfatePentahydrateMg,
      inputs: [
        ...chlorineInputs(asked),
        { label: 'thiosulfate per mg of chlorine', value: THIOSULFATE_MG_PER_MG, unit: 'mg', source: 'memory' },
      ],
      sources: ['memory'],
      doubts: [`a printed field figure is ${THIOSULFATE_FIELD_MG_PER_MG} mg per mg; its basis is not known`],
    });
  const standing = 'ln 2 / loss per hour';
  const unsure = ['pages disagree widely; water with much organic matter loses it sooner'];
  if (halvingIndoorsH !== undefined)
    workings.push({
      figure: 'halvingIndoorsH',
      label: 'half the free chlorine gone, open vessel indoors',
      unit: 'h',
      formula: standing,
      value: halvingIndoorsH,
      inputs: [{ label: 'loss per hour', value: LOSS_PER_H.indoors, unit: '1/h', source: 'memory' }],
      sources: ['memory'],
      doubts: unsure,
    });
  if (halvingInSunH !== undefined)
    workings.push({
      figure: 'halvingInSunH',
      label: 'half the free chlorine gone, full sun',
      unit: 'h',
      formula: standing,
      value: halvingInSunH,
      inputs: [{ label: 'loss per hour', value: LOSS_PER_H.sun, unit: '1/h', source: 'memory' }],
      sources: ['memory', 'nowell-hoigne-1992'],
      doubts: unsure,
    });
  return workings;
}

function workAcid(asked: WaterAsked, answer: WaterAnswer): readonly Working[] {
  const { alkalinity } = asked;
  const { alkalinityMeqPerL, lacticAcidEatenG, plantAcidPercent } = answer;
  if (alkalinity === undefined || alkalinityMeqPerL === undefined || lacticAcidEatenG === undefined) return [];
  const acidInputs: readonly Input[] = [
    { label: 'water', value: asked.volumeL, unit: 'L' },
    { label: 'alkalinity', value: alkalinityMeqPerL, unit: 'meq/L' },
  ];
  const workings: Working[] = [
    {
      figure: 'alkalinityMeqPerL',
      label: 'alkalinity',
      unit: 'meq/L',
      formula: 'reported figure × meq/L in one of its unit',
      value: alkalinityMeqPerL,
      inputs: [
        { label: 'reported', value: alkalinity.value, unit: alkalinity.unit },
        {
          label: `meq/L in one ${alkalinity.unit}`,
          value: MEQ_PER_UNIT[alkalinity.unit],
          unit: 'meq/L',
          source: 'memory',
        },
      ],
      sources: ['nist-sp811-2008', 'memory'],
      doubts: alkalinity.unit === 'mmol/L' ? ['read as bicarbonate; mmol/L of CaCO3 would be twice as much'] : [],
    },
    {
      figure: 'lacticAcidEatenG',
      label: 'lactic acid that the water uses up',
      unit: 'g',
      formula: 'water × alkalinity × 90.08 mg of lactic acid per meq',
      value: lacticAcidEatenG,
      inputs: acidInputs,
      sources: ['memory'],
      doubts: [],
    },
  ];
  if (plantAcidPercent !== undefined && asked.plantsKg !== undefined)
    workings.push({
      figure: 'plantAcidPercent',
      label: 'share of the acid the plants themselves take up',
      unit: '%',
      formula: 'water × alkalinity / (plants × acid per kg of plants)',
      value: plantAcidPercent,
      inputs: [
        ...acidInputs,
        { label: 'plants', value: asked.plantsKg, unit: 'kg' },
        { label: 'acid per kg of mixed plants', value: PLANT_ACID_EQ_PER_KG, unit: 'eq/kg', source: 'memory' },
      ],
      sources: ['memory'],
      doubts: ['a rough figure for clippings with trimmings; the weigh-in works with the lots themselves'],
    });
  return workings;
}

/** Workings of every figure that the answer holds. @arithmetic hands over numbers of scraps/water.ts */
export function workWater(asked: WaterAsked, answer: WaterAnswer): readonly Working[] {
  return [...workChlorine(asked, answer), ...workAcid(asked, answer)];
}
