// Every safety value that is held, in the order of the work, and the twelve that once moved together unnoticed.

import { beanValues } from './beans.ts';
import { bottleValues } from './bottle.ts';
import { canValues, cropSaltValues } from './can.ts';
import { careValues } from './care.ts';
import { eatingValues } from './eating.ts';
import { fillValues } from './fill.ts';
import { gasValues } from './gas.ts';
import { heapValues, sanitationValues } from './heap.ts';
import { lineValues } from './lines.ts';
import { souringValues } from './souring.ts';
import { cressValues, sprayValues } from './spray.ts';
import type { Value } from './value.ts';

/** The values by the file they are held in. */
export const valueFiles: readonly { readonly file: string; readonly values: readonly Value[] }[] = [
  { file: 'test/values/beans.ts', values: beanValues },
  { file: 'test/values/fill.ts', values: fillValues },
  { file: 'test/values/souring.ts', values: souringValues },
  { file: 'test/values/lines.ts', values: lineValues },
  { file: 'test/values/gas.ts', values: gasValues },
  { file: 'test/values/bottle.ts', values: bottleValues },
  { file: 'test/values/can.ts', values: [...canValues, ...cropSaltValues] },
  { file: 'test/values/eating.ts', values: eatingValues },
  { file: 'test/values/spray.ts', values: [...sprayValues, ...cressValues] },
  { file: 'test/values/heap.ts', values: [...heapValues, ...sanitationValues] },
  { file: 'test/values/care.ts', values: careValues },
];

export const values: readonly Value[] = valueFiles.flatMap((one) => one.values);

/** Twelve that were once moved together, and no test of what the program does noticed. */
export const TWELVE: readonly string[] = [
  'salt a drench may add for seedlings',
  'salt a drench may add for grown plants',
  'salt of a spray',
  'acid of a spray',
  'pour pH, the sour end',
  'raw-manure days where the part that is eaten touches the soil',
  'raw-manure days where it does not touch the soil',
  'strip pad',
  'drift allowed for ready',
  "the brake's line",
  'hydrogen sulphide is judged by its high end',
  'a liquid of which nobody told counts as not sour long enough',
];
