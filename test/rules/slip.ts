// Source slips: one of a lot that may go in, changed in one answer; every plant of the list beside a carrot; and
// bean tests that show harm, none, or nothing.

import { bioassayRules } from '#engine/rules/bioassay.ts';
import { excludedRules, type SlipSituation, slipRules } from '#engine/rules/slip.ts';
import { type BioassayReading, bioassayVerdict } from '#engine/scraps/bioassay.ts';
import { excludedRuleId, type SourceSlip } from '#engine/scraps/slip.ts';
import { excluded } from '#engine/tables/index.ts';
import { examplesOf, type Sides } from './example.ts';

const own: SourceSlip = {
  whose: 'own',
  from: 'garden',
  treated: 'no',
  condition: 'fresh',
  species: 'carrot tops',
  site: { outside: 'allowed' },
};
const slip = (change: Partial<SourceSlip>): SlipSituation => ({ slip: { ...own, ...change } });
const fine = slip({});
const peelings = slip({ from: 'kitchen', kitchen: 'raw', species: 'carrot peelings' });
const kitchen = (state: SourceSlip['kitchen']) => slip({ from: 'kitchen', kitchen: state, species: 'leftovers' });

const slips = examplesOf(slipRules, {
  'slip-weedkiller': [slip({ treated: 'yes', weedkiller: 'lasting', labelAllows: 'yes' }), fine],
  'slip-label-allows': [
    slip({ treated: 'yes', weedkiller: 'other', labelAllows: 'yes' }),
    slip({ treated: 'yes', weedkiller: 'other', labelAllows: 'no' }),
  ],
  'slip-beans-harmed': [slip({ beans: 'harmed' }), slip({ beans: 'clear' })],
  'slip-treatment-unknown': [slip({ treated: undefined }), fine],
  'slip-site-forbids': [
    slip({ whose: 'neighbour', site: { outside: 'forbidden' } }),
    slip({ whose: 'own', site: { outside: 'forbidden' } }),
  ],
  'slip-site-not-known': [slip({ whose: 'neighbour', site: { outside: 'unknown' } }), slip({ whose: 'neighbour' })],
  'slip-source-unknown': [slip({ whose: 'unknown' }), fine],
  'slip-from-the-street': [slip({ from: 'street' }), fine],
  'slip-off-the-plate': [kitchen('plate'), peelings],
  'slip-cooked': [kitchen('cooked'), peelings],
  'slip-kitchen-not-told': [kitchen(undefined), peelings],
  'slip-slimy': [slip({ condition: 'slimy' }), fine],
  'slip-condition-not-told': [slip({ condition: undefined }), fine],
  'slip-plant-not-named': [slip({ species: undefined }), fine],
});

const plants = examplesOf(
  excludedRules,
  Object.fromEntries(
    excluded.map((row): [string, Sides<SlipSituation>] => [
      excludedRuleId(row),
      [slip({ species: row.names[0] ?? '' }), fine],
    ]),
  ),
);

const pots = { potCount: 4, sownCount: 12, germinatedCount: 12, deformedCount: 0 };
const reading: BioassayReading = { test: pots, control: pots, sinceSownDays: 28, leavesCount: 3 };
const clear = bioassayVerdict(reading);
// 10 of 12 against 0 of 12: far below one chance in twenty
const affected = bioassayVerdict({ ...reading, test: { ...pots, deformedCount: 10 } });
const early = bioassayVerdict({ ...reading, leavesCount: 2 });
const beans = examplesOf(bioassayRules, {
  'bean-test-affected': [affected, clear],
  'bean-test-repeat': [early, clear],
  'bean-test-clear': [clear, early],
});

export const slipExamples = [...slips, ...plants, ...beans];
