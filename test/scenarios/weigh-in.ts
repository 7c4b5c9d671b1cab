// The weigh-in of the overfull pail, shared by the scenarios: amounts as a grower would type them.

import { type FitResult, fit as weighIn } from '#tasks/fit.ts';

/** 7.0 L water, 2.4 kg clippings, 0.8 kg trimmings, 0.3 kg wet grounds, 250 g white sugar. */
export const overfull = {
  plants: [
    { material: 'grass-clippings-fresh', massKg: 2.4, treated: 'no' },
    { material: 'kitchen-trimmings', massKg: 0.8 },
    { material: 'coffee-grounds', massKg: 0.3 },
  ],
  water: { volumeL: 7, alkalinityMeqPerL: 4.24 },
  sugar: { product: 'white-sugar', massKg: 0.25 },
};

/** The answer, or a thrown list of problems. */
export function answer(input: unknown): FitResult {
  const said = weighIn(input);
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}
