// An act as the fold works with it: the version that stands, its body in the newest version, its moment. Acts are
// sorted by when they were done, then by when they were recorded, so that arrival never matters.

import type { Entry } from './entry.ts';
import { type Body, type Kind, type KindTable, kinds } from './kinds/index.ts';
import { type Moment, momentOf } from './moment.ts';
import type { Standing } from './standing.ts';
import { newestBody } from './upgrade.ts';

/** One act that stands. */
export interface ActOf<K extends Kind> {
  /** Id of its line: the first entry, through all corrections. */
  readonly id: string;
  readonly kind: K;
  readonly body: Body<K>;
  readonly when: Moment;
  readonly by: string;
  readonly device: string;
  readonly at: string;
  readonly entry: Entry;
}

export type Act = { [K in Kind]: ActOf<K> }[Kind];

/** The acts of a kind, in their order. */
export type ByKind = <K extends Kind>(kind: K) => readonly ActOf<K>[];

/** The acts that stand, in the order they were done. */
export function actsOf({ plain, lines }: Pick<Standing, 'plain' | 'lines'>, table: KindTable = kinds): readonly Act[] {
  const acts: Act[] = [];
  for (const entry of plain) acts.push(actOf(entry, entry, table));
  for (const { shown, original } of lines) if (shown !== undefined) acts.push(actOf(shown, original, table));
  return acts.sort(byDoing);
}

/** A correction is signed by whoever made it; the act stays that of the one who did it. */
export function actOf(shown: Entry, { id, by, device, at }: Entry, table: KindTable): Act {
  const body = newestBody(shown, table);
  return { id, kind: shown.kind, body, when: momentOf(shown.on), by, device, at, entry: shown } as Act;
}

/** In the order they were done; of two at one time the one recorded first. */
export function byDoing(a: Act, b: Act): number {
  if (a.when.wallMinute !== b.when.wallMinute) return a.when.wallMinute - b.when.wallMinute;
  if (a.at !== b.at) return a.at < b.at ? -1 : 1;
  return a.id < b.id ? -1 : a.id === b.id ? 0 : 1;
}
