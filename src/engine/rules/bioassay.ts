// What the bean test of a lot says, as rules: affected, to be repeated, or no harm seen. The arithmetic stands in
// scraps/bioassay.ts; what the lot may do afterwards is decided where the lots are kept.

import { BIOASSAY, type BioassayVerdict } from '../scraps/bioassay.ts';
import type { Rule, Values } from './rule.ts';

const told = ({ reasons, deformed, missing, leastToShowCount }: BioassayVerdict): Values => ({
  reasons: reasons.join(' '),
  deformedTestFraction: deformed.testFraction,
  deformedControlFraction: deformed.controlFraction,
  deformedChance: deformed.chance,
  missingTestFraction: missing.testFraction,
  missingControlFraction: missing.controlFraction,
  missingChance: missing.chance,
  leastToShowCount,
  pots: BIOASSAY.leastPotCount,
  seeds: BIOASSAY.seedsPerPotCount,
  leaves: BIOASSAY.leavesCount,
  leastDays: BIOASSAY.leastDays,
  mostDays: BIOASSAY.mostDays,
});

/** Every rule about a bean test that was read. */
export const bioassayRules: readonly Rule<BioassayVerdict>[] = [
  {
    id: 'bean-test-affected',
    level: 'stop',
    source: 'wsu-bioassay',
    locator: 'general procedures',
    looksAt: 'the bean test: more harm in the test pots than chance would bring',
    speaksFor: 'general',
    override: 'none',
    when: (verdict) => verdict.verdict === 'affected' && told(verdict),
  },
  {
    id: 'bean-test-repeat',
    level: 'hold',
    source: 'our-caution',
    looksAt: 'the bean test: neither harm nor its absence shown',
    speaksFor: 'general',
    when: (verdict) => verdict.verdict !== 'affected' && verdict.verdict !== 'clear' && told(verdict),
  },
  {
    id: 'bean-test-clear',
    level: 'note',
    source: 'wsu-bioassay',
    locator: 'general procedures',
    looksAt: 'the bean test: no harm seen',
    speaksFor: 'general',
    when: (verdict) => verdict.verdict === 'clear' && told(verdict),
  },
];
