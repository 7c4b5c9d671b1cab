// A bed with everything that happened on it: pours, dressings, plantings, pickings, soil tests, goals. Sums of pours are
// ranges while a twin entry is open. What a pour brought and what may be picked is judged elsewhere.

import type { Range } from '#engine/quantity/range.ts';
import type { ActOf } from '../act.ts';
import type { Waiting } from '../standing.ts';
import type { BedFacts } from './described.ts';
import { type Feed, sumOfFeeds } from './feeds.ts';

export interface Bed {
  readonly id: string;
  readonly facts: BedFacts;
  /** Crop and how it is eaten as last planted, else as described; undefined once cleared. */
  readonly crop: string | undefined;
  readonly eaten: BedFacts['eaten'];
  readonly feeds: readonly Feed[];
  readonly pouredL: Range;
  readonly concentrateL: Range;
  readonly dressings: readonly ActOf<'bed.dressed'>[];
  readonly plantings: readonly ActOf<'bed.planted'>[];
  readonly picks: readonly ActOf<'bed.picked'>[];
  readonly soilTests: readonly ActOf<'soil.tested'>[];
  readonly goals: readonly ActOf<'goal.told'>[];
  /**
   * What may grow on it already, and be eaten from it: by each other telling while it is asked which stands, and after
   * each planting that lies ahead of whoever reads.
   */
  readonly mayBe?: readonly Growing[];
}

export interface OnBeds {
  readonly facts: ReadonlyMap<string, BedFacts>;
  readonly mayBe: ReadonlyMap<string, readonly BedFacts[]>;
  readonly feeds: readonly Feed[];
  readonly dressed: readonly ActOf<'bed.dressed'>[];
  readonly planted: readonly ActOf<'bed.planted'>[];
  readonly picked: readonly ActOf<'bed.picked'>[];
  readonly soilTested: readonly ActOf<'soil.tested'>[];
  readonly goalsTold: readonly ActOf<'goal.told'>[];
}

/** What a bed carries, and what is known of it. */
export type Growing = Pick<Bed, 'facts' | 'crop' | 'eaten' | 'plantings'>;

/** What grows on a bed after its plantings: the last one, else as the bed was described; nothing once cleared. */
export function growing(facts: BedFacts, plantings: Bed['plantings']): Growing {
  const last = plantings.at(-1)?.body;
  if (last?.act === 'cleared') return { facts, crop: undefined, eaten: undefined, plantings };
  return { facts, crop: last?.crop ?? facts.crop, eaten: last?.eaten ?? facts.eaten, plantings };
}

/** Every bed; an act on a bed that is not here waits, and is counted nowhere. */
export function bedsOf(on: OnBeds, lineOf: ReadonlyMap<string, string>, waiting: Waiting[]): ReadonlyMap<string, Bed> {
  const byBed = <T>(list: readonly T[], id: (item: T) => string, bed: (item: T) => string | undefined) => {
    const groups = new Map<string, T[]>();
    for (const item of list) {
      const named = bed(item);
      if (named === undefined) continue;
      const key = lineOf.get(named) ?? named;
      if (!on.facts.has(key)) waiting.push({ id: id(item), why: 'bed-not-here', of: key });
      const group = groups.get(key);
      if (group === undefined) groups.set(key, [item]);
      else group.push(item);
    }
    return groups;
  };
  const feeds = byBed(
    on.feeds,
    ({ id }) => id,
    ({ act }) => act.body.bed,
  );
  const dressings = byBed(
    on.dressed,
    ({ id }) => id,
    ({ body }) => body.bed,
  );
  const plantings = byBed(
    on.planted,
    ({ id }) => id,
    ({ body }) => body.bed,
  );
  const picks = byBed(
    on.picked,
    ({ id }) => id,
    ({ body }) => body.bed,
  );
  const soilTests = byBed(
    on.soilTested,
    ({ id }) => id,
    ({ body }) => body.bed,
  );
  const goals = byBed(
    on.goalsTold,
    ({ id }) => id,
    ({ body }) => body.bed,
  );
  const beds = new Map<string, Bed>();
  for (const [id, facts] of on.facts) {
    const own = feeds.get(id) ?? [];
    const planted = plantings.get(id) ?? [];
    const mayBe = on.mayBe.get(id)?.map((told) => growing(told, planted));
    beds.set(id, {
      id,
      ...growing(facts, planted),
      ...(mayBe && { mayBe }),
      feeds: own,
      pouredL: sumOfFeeds(own, ({ pouredL }) => pouredL),
      concentrateL: sumOfFeeds(own, ({ concentrateL }) => concentrateL),
      dressings: dressings.get(id) ?? [],
      picks: picks.get(id) ?? [],
      soilTests: soilTests.get(id) ?? [],
      goals: goals.get(id) ?? [],
    });
  }
  return beds;
}
