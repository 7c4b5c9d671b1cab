// The answers of a plot only ever make rules stricter, and what is not known speaks.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NOTHING_TOLD, type Profile } from '../scraps/profile.ts';
import { careRules, fillAirRules } from './care.ts';
import { bottleProfileRules, fillProfileRules, handsRules } from './profile.ts';
import { judge } from './rule.ts';

const SEED = 5;
const YES_NO = ['sells', 'school', 'immuneWeak', 'pregnant', 'children', 'pets', 'hens'] as const;
const profiles = fc
  .subarray([...YES_NO])
  .map((told): Profile => ({ ...NOTHING_TOLD, ...Object.fromEntries(told.map((one) => [one, true])) }));

function spoken(profile: Profile): readonly string[] {
  return [
    ...judge(fillProfileRules, { profile, kitchenScraps: true }),
    ...judge(handsRules, { profile }),
    ...judge(bottleProfileRules, { profile, poisonLineTold: false }),
  ].map(({ rule }) => rule);
}

describe('the answers of a plot', () => {
  it('say nothing where nothing was told', () => {
    expect(spoken(NOTHING_TOLD)).toEqual([]);
  });

  it('silence no rule when one more is a yes', () => {
    const yes = fc.constantFrom(...YES_NO);
    fc.assert(
      fc.property(profiles, yes, (before, more) => {
        const after = spoken({ ...before, [more]: true });
        expect(after).toEqual(expect.arrayContaining([...spoken(before)]));
      }),
      { seed: SEED },
    );
  });
});

describe('care at a batch', () => {
  it('asks for gloves where neither day nor acidity is known', () => {
    const found = judge(careRules, { act: 'look', day: Number.NaN, ph: Number.NaN });
    expect(found.map(({ rule }) => rule)).toEqual(['care-gloves-first-days']);
    expect(judge(careRules, { act: 'look' })).toHaveLength(1);
  });

  it('asks for moving air where the sugar is not known', () => {
    expect(judge(fillAirRules, { hexoseG: Number.NaN })).toHaveLength(1);
  });
});
