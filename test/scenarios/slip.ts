// A lot at the scale, judged by its slip, as the grower reads it: shared by the scenarios about source slips.

import { judgeSlip, type SlipSituation } from '#engine/rules/slip.ts';
import type { SourceSlip } from '#engine/scraps/slip.ts';
import { spoken } from '#tasks/caution.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import { slipCautions, slipSays } from '#words/en/slip.ts';

/** Fresh clippings off the own lawn, never treated. */
export const ownClippings: SourceSlip = {
  whose: 'own',
  from: 'garden',
  treated: 'no',
  condition: 'fresh',
  material: 'grass-clippings-fresh',
};

/** Raw peelings of the own kitchen. */
export const peelings: SourceSlip = {
  whose: 'household',
  from: 'kitchen',
  kitchen: 'raw',
  condition: 'fresh',
  material: 'kitchen-trimmings',
};

/** What is read: the outcome, what to do with the lot, and every caution with its source. */
export function read(slip: SourceSlip, siteRule?: SlipSituation['siteRule']) {
  const judged = judgeSlip({ slip, siteRule });
  return { ...judged, says: slipSays(judged), cautions: spoken(judged.findings, slipCautions, scrapsCautions) };
}
