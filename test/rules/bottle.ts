// Straining: one batch of which all is well, and one for each thing that can be amiss.

import type { StrainedBatch } from '#engine/bottle/liquid.ts';
import { strainedBatch } from '#engine/bottle/strained.ts';
import { type StrainSituation, strainRules } from '#engine/rules/bottle.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { ALWAYS, examplesOf } from './example.ts';

const product = sugarProduct('white-sugar');
if (product === undefined) throw new Error('sugar table incomplete');

/** 2 kg of plants, 8 L of water: 10 kg in; 8 L out and 1.9 kg of solids: 9.9 kg. */
const sound: StrainedBatch = {
  plants: [
    resolvePart({
      name: 'clippings',
      massKg: 2,
      dryMatter: 0.2,
      nPercentDm: 3,
      pPercentDm: 0.4,
      kPercentDm: 2,
      caPercentDm: 1,
      mgPercentDm: 0.3,
    }),
  ],
  waterL: 8,
  sugar: { product, massKg: 0 },
  starterL: 0,
  days: 10,
  finalPh: 3.8,
  drainedL: 8,
  solidsKg: 1.9,
};

function strained(change: Partial<StrainedBatch>, state = 'ready'): StrainSituation {
  const batch = { ...sound, ...change };
  return { batch, strained: strainedBatch(batch), state };
}
const well = strained({});
const bare = resolvePart({ name: 'hedge', massKg: 2, dryMatter: 0.2 });

export const bottleExamples = examplesOf(strainRules, {
  'strained-batch-lost': [strained({}, 'lost'), well],
  'strained-batch-unknown': [strained({}, 'unknown'), well],
  'strained-batch-doubtful': [strained({}, 'doubtful'), well],
  'strained-lot-not-for-liquid': [
    strained({ plants: [...sound.plants, resolvePart({ material: 'rhubarb-leaves', massKg: 0.1 })] }),
    strained({ plants: [...sound.plants, resolvePart({ material: 'eggshell', massKg: 0.1 })] }),
  ],
  'strained-lot-of-the-heap': [
    strained({ plants: [...sound.plants, resolvePart({ material: 'eggshell', massKg: 0.1 })] }),
    strained({ plants: [...sound.plants, resolvePart({ material: 'rhubarb-leaves', massKg: 0.1 })] }),
  ],
  // 21 CFR 114.3: 4.6; ready from 4.2 down
  'strained-not-sour': [strained({ finalPh: 4.7 }), strained({ finalPh: 4.6 })],
  'strained-before-ready': [strained({ finalPh: 4.3 }), strained({ finalPh: 4.2 })],
  // 8 + 2 × 0.8 = 9.6 L of liquid in all
  'strained-more-than-could': [strained({ drainedL: 9.7 }), strained({ drainedL: 9.6 })],
  // 10 kg in; out 8.2 and 8.6 kg, where 15 % may be missing
  'strained-sum-open': [strained({ drainedL: 7, solidsKg: 1.2 }), strained({ drainedL: 7, solidsKg: 1.6 })],
  'strained-tag-not-a-drink': [well, ALWAYS],
  'strained-figures-too-low': [strained({ plants: [bare] }), well],
  'strained-starter-not-counted': [strained({ starterL: 0.5 }), well],
});
