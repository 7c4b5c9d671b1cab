// The examples of all rules, and in which file each stands.

import { bottleExamples } from './bottle.ts';
import { canExamples } from './can.ts';
import { eatingExamples } from './eating.ts';
import type { Example } from './example.ts';
import { groundExamples } from './ground.ts';
import { heapExamples } from './heap.ts';
import { pailExamples } from './pail.ts';
import { profileExamples } from './profile.ts';
import { rescueExamples } from './rescue.ts';
import { slipExamples } from './slip.ts';
import { sprayExamples } from './spray.ts';
import { vesselExamples } from './vessel.ts';
import { waterAndScraps } from './water-and-scraps.ts';

export const exampleFiles: readonly { readonly file: string; readonly examples: readonly Example[] }[] = [
  { file: 'test/rules/water-and-scraps.ts', examples: waterAndScraps },
  { file: 'test/rules/slip.ts', examples: slipExamples },
  { file: 'test/rules/pail.ts', examples: pailExamples },
  { file: 'test/rules/vessel.ts', examples: vesselExamples },
  { file: 'test/rules/rescue.ts', examples: rescueExamples },
  { file: 'test/rules/profile.ts', examples: profileExamples },
  { file: 'test/rules/bottle.ts', examples: bottleExamples },
  { file: 'test/rules/can.ts', examples: canExamples },
  { file: 'test/rules/eating.ts', examples: eatingExamples },
  { file: 'test/rules/spray.ts', examples: sprayExamples },
  { file: 'test/rules/heap.ts', examples: heapExamples },
  { file: 'test/rules/ground.ts', examples: groundExamples },
];

export const examples: readonly Example[] = exampleFiles.flatMap((one) => one.examples);
