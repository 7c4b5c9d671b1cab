// What the rules say at a look: before the lid comes off, and once the look is told. Sentences are those of the
// keyholder's language; the state and its reasons are peg.ts.

import { careRules } from '#engine/rules/care.ts';
import { foulGasRules } from '#engine/rules/gas.ts';
import { handsRules } from '#engine/rules/profile.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import type { Plot } from '#journal/fold.ts';
import type { BatchLook } from '#journal/parts/batch.ts';
import type { PegView } from './peg.ts';
import { profileOf } from './profile.ts';

/** Words of a nose that mean sulphide may be there. */
const SULPHIDE = ['egg', 'sewage'];

/** Before a look: whether it may be opened where it stands, with what on the hands, and by whom. */
export function beforeLook(plot: Plot, view: PegView): readonly Finding[] {
  return [
    ...foul(view, view.looks),
    ...judge(careRules, { act: 'look', day: view.day, ph: view.readings.at(-1)?.ph }),
    ...judge(handsRules, { profile: profileOf(plot) }),
  ];
}

/** After a look: what this look saw. */
export function afterLook(view: PegView, look: BatchLook): readonly Finding[] {
  const { surface, acidity } = look.body;
  const told = judge(careRules, { act: 'look', day: look.day, ph: acidity?.ph, surface });
  // Gloves were for the look that is over.
  return [...foul(view, [look]), ...told.filter(({ rule }) => rule !== 'care-gloves-first-days')];
}

/** How much gas stands under the lid is not reckoned here: unknown counts as too much. */
function foul(view: PegView, looks: readonly BatchLook[]): readonly Finding[] {
  const smelt = looks.findLast(({ body: { smell } }) => smell !== undefined && smell !== 'cannot-smell');
  const last = looks.findLast(({ body }) => body.lidBulged !== undefined);
  return judge(foulGasRules, {
    state: view.state,
    foulSmell: SULPHIDE.includes(smelt?.body.smell ?? ''),
    lid: view.batch.lid,
    lidBulged: last?.body.lidBulged,
    likelyPpm: Number.NaN,
    highPpm: Number.NaN,
  });
}
