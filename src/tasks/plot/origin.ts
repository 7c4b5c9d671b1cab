// What animals may have left in a batch, and how it came in: manure, meat and plates among the scraps, the water, the
// starter of an earlier batch. What was topped up or joined is in the contents too. What nobody told is possible; what
// follows from it is the engine's (can/eating.ts).

import type { AnimalOrigin } from '#engine/can/eating.ts';
import { material } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import type { Batch } from '#journal/parts/batch.ts';
import type { BatchPart } from '#journal/parts/contents.ts';

/** How it came in, the surest first. */
export type OriginWhy =
  | 'manure'
  | 'meat'
  | 'plate'
  | 'droppings'
  | 'compost'
  | 'open-water'
  | 'water-not-told'
  | 'starter'
  | 'starter-not-told'
  | 'scraps-not-named';

/** What a batch holds of animals, and every reason; none for plants alone. */
export interface Origin {
  readonly animalOrigin: AnimalOrigin;
  readonly animalWhy: readonly OriginWhy[];
}

const CERTAIN: readonly OriginWhy[] = ['manure', 'meat', 'plate', 'droppings'];
/** Waters of drinking quality, and a well: whatever else was told is reached by animals, or is not known. */
const CLOSED_WATERS: readonly string[] = ['tap', 'bought', 'well', 'mains'];

/** What animals may have left in a batch, by everything that went into it and into what it was started with. */
export function originOf(plot: Plot, batch: Batch): Origin {
  const whys = [...new Set(whysOf(plot, batch, new Set()))];
  const animalOrigin = whys.some((why) => CERTAIN.includes(why)) ? 'yes' : whys.length > 0 ? 'possible' : 'no';
  return { animalOrigin, animalWhy: [...whys].sort((a, b) => rank(a) - rank(b)) };
}

function rank(why: OriginWhy): number {
  const at = CERTAIN.indexOf(why);
  return at < 0 ? CERTAIN.length : at;
}

function whysOf(plot: Plot, batch: Batch, seen: Set<string>): readonly OriginWhy[] {
  if (seen.has(batch.id)) return [];
  seen.add(batch.id);
  const { parts, waters, waterSources, starters } = batch.contents;
  return [
    ...parts.flatMap(ofPart),
    ...waters.flatMap((id) => ofWater(plot, id)),
    ...waterSources.flatMap((source) => ofSource(source)),
    ...starters.flatMap((id): readonly OriginWhy[] => {
      const from = plot.batches.get(plot.bottles.get(id)?.batch ?? id);
      if (from === undefined) return ['starter-not-told'];
      const inherited = whysOf(plot, from, seen);
      return inherited.length > 0 ? [...inherited.filter((why) => CERTAIN.includes(why)), 'starter'] : [];
    }),
  ];
}

/** A lot of scraps: by the table, by where it comes from, or because nobody named it. */
function ofPart({ material: id, origin }: BatchPart): readonly OriginWhy[] {
  if (origin === 'plate' || origin === 'cooked') return ['plate'];
  const group = id === undefined ? undefined : material(id)?.group;
  if (group === 'manure' || id === 'pet-waste') return ['manure'];
  if (group === 'animal') return ['meat'];
  if (id === 'cooked-food') return ['plate'];
  if (group === 'compost') return ['compost'];
  return group === undefined && origin !== 'garden' ? ['scraps-not-named'] : [];
}

/** A water as it was reported; one whose report is not here is not known. */
export function ofWater(plot: Plot, id: string): readonly OriginWhy[] {
  const report = plot.waters.find((one) => one.id === id)?.body;
  if (report === undefined) return ['water-not-told'];
  return report.droppings === true ? ['droppings'] : ofSource(report.source);
}

function ofSource(source: string): readonly OriginWhy[] {
  const told = source.trim().toLowerCase();
  if (told === '') return ['water-not-told'];
  return CLOSED_WATERS.includes(told) ? [] : ['open-water'];
}
