// Two places that only ever add: whatever is lost, refused, broken off or forgotten, at every opening the union of what was
// acknowledged and not forgotten is there, and nothing that was forgotten.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { run } from '../../scripts/faults/histories.ts';
import { history, live, type Step } from '../faults/histories.ts';

const HISTORIES = 1000;
const LONGEST_MS = 900_000;

describe('a store with two places', () => {
  it(
    `holds the union of both through ${HISTORIES} random histories`,
    async () => {
      await fc.assert(
        fc.asyncProperty(history, async (steps) => {
          expect((await live(steps)).openings).toBeGreaterThan(0);
        }),
        { numRuns: HISTORIES },
      );
    },
    LONGEST_MS,
  );
  it.each<[string, readonly Step[]]>([
    [
      'written down by the first place alone',
      [
        { act: 'file', plot: 0, count: 1 },
        { act: 'die', firstAfter: 3, secondAfter: 0, during: { act: 'forget', plot: undefined } },
        { act: 'lose', place: 'first', count: 4 },
      ],
    ],
    [
      'written down by the first place alone, which could not count it any more',
      [
        { act: 'die', firstAfter: 1, secondAfter: 0, during: { act: 'photo', plot: 0 } },
        { act: 'die', firstAfter: 2, secondAfter: 0, during: { act: 'forget', plot: undefined } },
        { act: 'lose', place: 'first', count: 2 },
      ],
    ],
  ])('forgets everything for good where that is %s, and its end is lost after the next opening', async (_, steps) => {
    expect((await live(steps)).forgettings).toBe(1);
  });
  it('is counted over the same histories each time', async () => {
    const found = await run({ scale: 0.02 });
    expect(found.failed, found.aside?.join('\n')).toBe(0);
    expect(found.lines[0]).toMatch(
      /^20 histories .*: [1-9]\d* entries and photos acknowledged, [1-9]\d* forgettings\.$/,
    );
    expect(found.lines[1]).toMatch(/^On the way [1-9]\d* times .*, and [1-9]\d* writes were refused or broken off\.$/);
  });
});
