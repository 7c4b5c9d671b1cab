// The acts that stand, kept up as entries come in. An entry that corrects nothing, is not corrected and answers no question
// takes its place among the acts; with any other, everything is followed anew (standing.ts).

import { type Act, type ActOf, actOf, actsOf, type ByKind, byDoing } from './act.ts';
import { isSealed, type Kept } from './entry.ts';
import type { Kind, KindTable } from './kinds/index.ts';
import { type Standing, standing } from './standing.ts';

export interface Followed extends Omit<Standing, 'plain' | 'lines'> {
  /** In the order they were done. */
  readonly acts: readonly Act[];
  /** Acts of a kind, in their order: the same list as before where no act of the kind came. */
  readonly by: ByKind;
}

/** More entries than these at once are followed as a whole: that is then no slower. */
export const MOST_FRESH = 100;
const NONE: readonly never[] = [];

interface Known {
  readonly entries: readonly Kept[];
  readonly followed: Followed;
  readonly groups: ReadonlyMap<Kind, readonly Act[]>;
  /** Ids that an entry bears or replaces; made when they are asked for first. */
  readonly taken: () => Set<string>;
}

/** Follows the entries of one plot, in steps; called again with more of them, it takes the way from there where it may. */
export function following(table: KindTable): (entries: readonly Kept[]) => Generator<void, Followed> {
  let known: Known | undefined;
  return function* (entries) {
    const fresh = known && freshIn(known, entries);
    known =
      known !== undefined && fresh !== undefined ? further(known, entries, fresh, table) : yield* anew(entries, table);
    return known.followed;
  };
}

/** What came in since, where each of them simply takes its place; undefined where all is to be followed anew. */
function freshIn({ entries: before, taken }: Known, entries: readonly Kept[]): readonly Kept[] | undefined {
  const count = entries.length - before.length;
  if (count < 0 || count > MOST_FRESH || before.some((kept, i) => kept !== entries[i])) return undefined;
  const fresh = entries.slice(before.length);
  const isPlain = (kept: Kept) =>
    !isSealed(kept) && kept.replaces === undefined && kept.kind !== 'question.answered' && !taken().has(kept.id);
  const ids = new Set(fresh.map(({ id }) => id));
  return ids.size === fresh.length && fresh.every(isPlain) ? fresh : undefined;
}

function* anew(entries: readonly Kept[], table: KindTable): Generator<void, Known> {
  const { plain, lines, ...rest } = standing(entries, table);
  yield;
  const acts = actsOf({ plain, lines }, table);
  yield;
  const groups = new Map<Kind, Act[]>();
  for (const act of acts) {
    const group = groups.get(act.kind);
    if (group === undefined) groups.set(act.kind, [act]);
    else group.push(act);
  }
  let taken: Set<string> | undefined;
  const ask = () => {
    if (taken !== undefined) return taken;
    taken = new Set();
    for (const { id, replaces } of entries) {
      taken.add(id);
      if (replaces !== undefined) taken.add(replaces);
    }
    return taken;
  };
  return { entries, followed: { ...rest, acts, by: byIn(groups) }, groups, taken: ask };
}

function further(known: Known, entries: readonly Kept[], fresh: readonly Kept[], table: KindTable): Known {
  if (fresh.length === 0) return { ...known, entries };
  const acts = [...known.followed.acts];
  const groups = new Map(known.groups);
  const taken = known.taken();
  for (const kept of fresh) {
    if (isSealed(kept)) throw new Error('further: a sealed entry is followed anew');
    const act = actOf(kept, kept, table);
    taken.add(kept.id);
    put(acts, act);
    const group = [...(groups.get(act.kind) ?? [])];
    put(group, act);
    groups.set(act.kind, group);
  }
  return { entries, followed: { ...known.followed, acts, by: byIn(groups) }, groups, taken: () => taken };
}

/** Puts an act in its place: nearly always the last. */
function put(acts: Act[], act: Act): void {
  let at = acts.length;
  while (at > 0 && byDoing(acts[at - 1] as Act, act) > 0) at--;
  acts.splice(at, 0, act);
}

function byIn(groups: ReadonlyMap<Kind, readonly Act[]>): ByKind {
  return <K extends Kind>(kind: K) => (groups.get(kind) ?? NONE) as unknown as readonly ActOf<K>[];
}
