// Which materials a site does not let in, so that every list of scraps greys the same ones in the site's own words.
// Only what comes from kitchens by its kind is greyed; what may have grown on the plot stays, and its slip asks.

import { answerSlip, type SourceSlip } from '#engine/scraps/slip.ts';
import { material, materials } from '#engine/tables/index.ts';
import type { Plot } from '#journal/fold.ts';
import { siteOf } from '#journal/parts/slip-of-lot.ts';
import { siteClosed } from '#words/en/scraps-stock.ts';
import { siteRuleSaid } from './slips.ts';

/** Kitchen scraps by their kind. */
const KITCHEN_GROUP = 'kitchen';

export interface ClosedHere {
  /** Ids of the materials table that are greyed. */
  readonly ids: ReadonlySet<string>;
  /** What is greyed and why, in the site's words with its date; undefined where nothing is. */
  readonly says: string | undefined;
}

const NOTHING: ClosedHere = { ids: new Set(), says: undefined };

/** The materials that this plot's site rule keeps out, whoever brings them. */
export function closedHere(facts: Plot['facts']): ClosedHere {
  const site = siteOf(facts);
  if (site === undefined) return NOTHING;
  const slip = { whose: 'household', from: 'kitchen', kitchen: 'raw', site } as const;
  const forbidden = (asked: SourceSlip) => answerSlip(asked).reasons.some(({ rule }) => rule === 'slip-site-forbids');
  const ids = materials
    .filter(({ id, group }) => group === KITCHEN_GROUP && forbidden({ ...slip, material: id }))
    .map(({ id }) => id);
  if (ids.length === 0) return NOTHING;
  const names = forbidden(slip) ? undefined : ids.map((id) => material(id)?.name ?? id);
  return { ids: new Set(ids), says: siteClosed(names, siteRuleSaid(facts)) };
}
