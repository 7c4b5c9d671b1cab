// At least sixty situations: the rules that must speak, and that all others stay silent. A caution that speaks where
// nothing is to be decided teaches people to read over cautions.

import { describe, expect, it } from 'vitest';
import { allRules } from '#engine/rules/index.ts';
import { pailToBed } from './pail-to-bed.ts';
import { scrapsAndWater } from './scraps-and-water.ts';
import { heard } from './speaks.ts';

const cases = [...scrapsAndWater, ...pailToBed];
const known = new Set(allRules.map(({ id }) => id));

describe('the right caution at the decision, and no other', () => {
  it('is tried in sixty situations or more, each told once', () => {
    expect(cases.length).toBeGreaterThanOrEqual(60);
    expect(new Set(cases.map(({ when, place }) => `${place}: ${when}`)).size).toBe(cases.length);
  });
  it('names only rules that exist', () => {
    for (const { speaks, silent, when } of cases)
      for (const id of [...speaks, ...silent]) expect(known.has(id), `${when}: ${id}`).toBe(true);
  });
  it.each(cases)('$place: $when', (one) => {
    const { asks, notes } = heard(one);
    expect(asks).toEqual([...one.speaks].sort());
    for (const id of one.silent) expect([...asks, ...notes]).not.toContain(id);
  });
});
