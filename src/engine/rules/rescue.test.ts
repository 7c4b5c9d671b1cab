// What is said beside a rescue and before a batch is tipped, and when. Unknown always speaks.
import { describe, expect, it } from 'vitest';
import { rescueCautions } from '#words/en/rescue.ts';
import type { Rescue } from '../souring/rescue.ts';
import { beforeTipping, type RescueSituation, rescueRules, tipRules } from './rescue.ts';
import { judge } from './rule.ts';

const ids = (found: readonly { readonly rule: string }[]) => found.map(({ rule }) => rule);
const option = (kind: Rescue['kind']): Rescue => ({ kind, values: {}, source: 'our-caution' });
const slow: RescueSituation = {
  options: [option('wait'), option('tip')],
  state: 'slow',
  mayBeFoul: false,
  sugarRoomGPerL: 10,
  mostHexoseGPerL: 20,
};

describe('the cautions of a rescue', () => {
  it('say nothing of what is not offered', () => {
    expect(judge(rescueRules, slow)).toEqual([]);
  });
  it('forbid sugar to a batch that may be foul, before anything else', () => {
    const [first] = judge(rescueRules, { ...slow, mayBeFoul: true });
    expect(first).toMatchObject({ rule: 'rescue-no-sugar-to-a-foul-one', level: 'stop' });
  });
  it.each([0, Number.NaN])('hold sugar when the room for it is %s', (sugarRoomGPerL) => {
    expect(ids(judge(rescueRules, { ...slow, sugarRoomGPerL }))).toEqual(['rescue-sugar-is-at-its-most']);
  });
  it.each([
    ['warmth', 'rescue-warm-not-hot'],
    ['skim', 'rescue-skim-gently'],
    ['close', 'rescue-never-seal'],
    ['sugar', 'rescue-sugar-not-past-the-most'],
    ['starter', 'rescue-starter-from-a-good-batch'],
  ] as const)('go with %s', (kind, rule) => {
    expect(ids(judge(rescueRules, { ...slow, options: [option(kind)] }))).toEqual([rule]);
  });
});

describe('tipping', () => {
  const lost = { state: 'lost', foulSmell: true, highPpm: 1600, likelyPpm: 400, volumeL: 55 };

  it('of a lost batch begins with the gas under its lid and keeps every bed out', () => {
    const said = ids(beforeTipping({ ...lost, animalMatter: false, untestedClippings: false }));
    expect(said[0]).toBe('foul-closed-open-it-outdoors');
    expect(said).toContain('tip-nothing-of-it-on-a-bed');
  });
  it('keeps meat, manure and untested clippings out of a food heap, and so does not knowing', () => {
    for (const told of [true, undefined]) {
      const said = ids(judge(tipRules, { ...lost, animalMatter: told, untestedClippings: told }));
      expect(said).toContain('tip-animal-matter-not-into-a-food-heap');
      expect(said).toContain('tip-untested-clippings-not-into-a-food-heap');
    }
    const clear = ids(judge(tipRules, { ...lost, animalMatter: false, untestedClippings: false }));
    expect(clear).toEqual(['tip-nothing-of-it-on-a-bed', 'tip-under-dry-leaves']);
  });
  it('asks for twice its volume of dry leaves', () => {
    const leaves = judge(tipRules, lost).find(({ rule }) => rule === 'tip-under-dry-leaves');
    // 55 L × 2, as the spring barrel of the demo plot was layered
    expect(leaves?.values.leavesL).toBe(110);
    expect(rescueCautions['tip-under-dry-leaves']?.(leaves?.values ?? {})).toContain('110\u00a0L');
  });
  it('of any other batch says where it goes, and no more', () => {
    const said = judge(tipRules, { state: 'slow', animalMatter: false, untestedClippings: false, volumeL: Number.NaN });
    expect(ids(said)).toEqual(['tip-under-dry-leaves']);
    expect(rescueCautions['tip-under-dry-leaves']?.(said[0]?.values ?? {})).toContain('twice its own volume');
  });
});
