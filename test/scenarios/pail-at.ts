// A 12 L pail of clippings and trimmings as it stands at different temperatures, shared by the scenarios of the forecast.

import { type SourResult, sour } from '#tasks/sour.ts';

/** 6 L water, 2 kg clippings, 0.8 kg trimmings, 200 g white sugar. */
export const pail = {
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants: [
    { material: 'grass-clippings-fresh', massKg: 2, treated: 'no' },
    { material: 'kitchen-trimmings', massKg: 0.8 },
  ],
  water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
  sugar: { product: 'white-sugar', massKg: 0.2 },
  lid: 'loose',
};

/** The answer from few draws, or a thrown list of problems. */
export function expectOf(input: object, draws = 60): SourResult {
  const said = sour({ ...pail, ...input }, { draws });
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}
