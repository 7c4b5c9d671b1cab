// A neighbour's clippings that nobody can speak for: set aside, tested with beans, and only then of any use.

import { describe, expect, it } from 'vitest';
import { bioassayRules } from '#engine/rules/bioassay.ts';
import { judge } from '#engine/rules/rule.ts';
import { bioassayVerdict, type PotsRead } from '#engine/scraps/bioassay.ts';
import { fold } from '#journal/fold.ts';
import { bioassayCard, bioassaySays } from '#words/en/bioassay.ts';
import { kg, recorder } from './recorder.ts';
import { ownClippings, read } from './slip.ts';

describe("a neighbour's clippings, treatment not known", () => {
  const said = read({ ...ownClippings, whose: 'neighbour', from: 'neighbour', treated: 'unknown' });

  it('are set aside, out of pail and shared heap, for a bean test', () => {
    expect(said.outcome).toBe('set-aside');
    expect(said.cautions.map(({ rule, level }) => [rule, level])).toEqual([['slip-treatment-unknown', 'hold']]);
    expect(said.cautions[0]?.text).toMatch(/out of pail and shared heap/);
    expect(said.cautions[0]?.source).toContain('Washington State University');
    expect(said.goes).toBe('bean-test');
  });

  it('come with a card: three pots of each kind, three beans in each, two days to read between', () => {
    const card = bioassayCard({ sownOn: '1 June', readFrom: '22 June', readBy: '29 June' }).join('\n');
    expect(card).toMatch(/3 pots or more with half lot, half clean potting mix/);
    expect(card).toMatch(/3 pots or more with clean potting mix alone/);
    expect(card).toMatch(/between 22 June and 29 June, once the C pots have 3 true leaves/);
  });

  const pots = (germinatedCount: number, deformedCount: number): PotsRead => ({
    potCount: 3,
    sownCount: 9,
    germinatedCount,
    deformedCount,
  });
  const outcomes = { clear: 'clear', affected: 'harmed', repeat: 'unclear' } as const;

  it.each([
    ['no plant deformed', pots(9, 0), 'liquid', 'bean-test-clear'],
    ['two of nine deformed', pots(9, 2), 'set-aside', 'bean-test-repeat'],
    ['six of nine deformed', pots(9, 6), 'out', 'bean-test-affected'],
  ] as const)('with %s', (_, test, place, rule) => {
    const reading = { test, control: pots(9, 0), sinceSownDays: 24, leavesCount: 3 };
    const verdict = bioassayVerdict(reading);
    expect(judge(bioassayRules, verdict).map((finding) => finding.rule)).toEqual([rule]);
    expect(bioassaySays(reading, verdict).join(' ')).toMatch(/of 9 in the test pots, 0 of 9 in the control/);

    const rake = recorder();
    const lot = rake.did('scraps.weighed', '2026-06-01', {
      material: 'grass-clippings-fresh',
      mass: kg(9),
      slip: { whose: 'neighbour', treated: 'unknown' },
    });
    expect([...fold([lot]).lots.values()].map(({ goes }) => goes)).toEqual(['set-aside']);
    const tested = rake.did('lot.tested', '2026-06-25', {
      lot: lot.id,
      test: 'bean',
      outcome: outcomes[verdict.verdict],
    });
    expect([...fold([lot, tested]).lots.values()].map(({ goes }) => goes)).toEqual([place]);
  });
});
