// What several words of the contract take in: a lot of scraps, a water, a sugar. Each is one schema, used
// by the command line, the forms and the server alike, so that all three name the same problems.

import * as z from 'zod/mini';
import { sugarIds } from '#engine/scraps/sugar.ts';
import { material, materials } from '#engine/tables/index.ts';
import { alkalinityMeqPerL, banded, massKg, number, oneOf, ph, text, volumeL } from './fields.ts';
import { says } from './problem.ts';

const A_MATERIAL = 'an id of the materials list (see help materials)';

/** An id of the materials list. */
export const materialId = text(80).check(
  z.refine((id) => material(id) !== undefined, {
    error: (issue) =>
      says('is not a material known here', typeof issue.input === 'string' ? allowedNear(issue.input) : A_MATERIAL),
  }),
);

/** One lot of scraps: a material of the table, the grower's own analysis, or both (the analysis wins). */
export const portion = z
  .strictObject(
    {
      material: z.optional(materialId),
      name: z.optional(text(80)),
      massKg,
      dryMatter: z.optional(banded(0.01, 1, 'as a fraction of wet mass')),
      sugarsGPerKgDm: z.optional(banded(0, 1000, 'g per kg dry matter')),
      bufferEqPerKgDmPerPh: z.optional(banded(0, 2, 'eq per kg dry matter and pH unit')),
      ph: z.optional(banded(2, 12, 'pH')),
      nPercentDm: z.optional(banded(0, 15, '% of dry matter')),
      pPercentDm: z.optional(banded(0, 5, '% of dry matter')),
      kPercentDm: z.optional(banded(0, 15, '% of dry matter')),
      caPercentDm: z.optional(banded(0, 45, '% of dry matter')),
      mgPercentDm: z.optional(banded(0, 5, '% of dry matter')),
      cn: z.optional(banded(1, 1000, '')),
      ammoniaMolPerKgDm: z.optional(number(0, 2, 'mol per kg dry matter')),
      treated: z.optional(oneOf(['no', 'unknown', 'yes'])),
    },
    { error: () => says('is not a lot of scraps', LOT) },
  )
  .check((context) => {
    const lot = context.value;
    if (lot.material !== undefined || lot.dryMatter !== undefined) return;
    context.issues.push({
      code: 'custom',
      path: ['material'],
      input: lot,
      message: says('is missing, and so is dryMatter', LOT),
    });
  });

const LOT = 'an id of the materials list (see help materials), or dryMatter from an analysis of your own';

/** A water: how much, how much acid it can take up, and its own pH. */
export const waterIn = z.strictObject(
  { volumeL, alkalinityMeqPerL: z.optional(alkalinityMeqPerL), ph: z.optional(ph) },
  { error: () => says('is not a water', 'an object with volumeL, and alkalinityMeqPerL where it is known') },
);

/** A sugar source by mass; 0 kg says which product is at hand when none has been added yet. */
export const sugarIn = z.strictObject(
  { product: oneOf(sugarIds), massKg: number(0, 200, 'kg') },
  { error: () => says('is not a sugar', 'an object with product and massKg') },
);

export type PortionIn = z.infer<typeof portion>;
export type WaterIn = z.infer<typeof waterIn>;
export type SugarIn = z.infer<typeof sugarIn>;

/** The ids most like the one typed, or where the list stands. */
function allowedNear(typed: string): string {
  const near = nearestIds(typed);
  return near.length > 0 ? `${near.join(', ')} (see help materials)` : A_MATERIAL;
}

/** Up to three ids with a word like one that was typed, the likest and first-named first. */
export function nearestIds(typed: string): readonly string[] {
  const words = typed
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word.length >= 3);
  const scored = materials.map(({ id }, order) => {
    const parts = id.split('-');
    let score = 0;
    for (const word of words) {
      const best = parts.map((part, place) => likeness(word, part) - place / 10);
      score += Math.max(0, ...best);
    }
    return { id, score, order };
  });
  return scored
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score || a.order - b.order)
    .slice(0, 3)
    .map(({ id }) => id);
}

/** 3 for the same word, 2 where one begins the other, 1 within a slip of the finger for every three letters, else 0. */
function likeness(word: string, part: string): number {
  if (word === part) return 3;
  if (part.startsWith(word) || (word.startsWith(part) && part.length >= 3)) return 2;
  return editDistance(word, part) <= Math.floor(word.length / 3) ? 1 : 0;
}

/** Letters to insert, drop or change between two short texts. */
function editDistance(a: string, b: string): number {
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(change, (last[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    last = next;
  }
  return last[b.length] ?? 0;
}
