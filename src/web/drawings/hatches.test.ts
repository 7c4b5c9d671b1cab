import { describe, expect, it } from 'vitest';
import { materials } from '#engine/tables/index.ts';
import { groupNames } from '#words/en/weigh-in-labels.ts';
import { hatchOf } from './hatch-of.ts';

describe('every material of the table', () => {
  it('has a texture of its own group', () => {
    expect(materials.filter((row) => hatchOf(row) === undefined).map((row) => row.id)).toEqual([]);
  });

  it('stands under a named group of the list', () => {
    expect([...new Set(materials.map((row) => row.group))].filter((group) => !(group in groupNames))).toEqual([]);
  });
});
