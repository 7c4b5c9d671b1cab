import { describe, expect, it } from 'vitest';
import { citation, materials } from '#engine/tables/index.ts';
import { scrapsCautions } from '#words/en/scraps.ts';
import type { Portion } from '../scraps/part.ts';
import { resolvePart } from '../scraps/resolve.ts';
import { judge, type Level } from './rule.ts';
import { scrapsRules } from './scraps.ts';

const found = (portion: Portion) => judge(scrapsRules, { part: resolvePart(portion), treated: portion.treated });
const levels = (portion: Portion): readonly Level[] => found(portion).map((f) => f.level);
const of = (portion: Portion) => found(portion).map((f) => f.rule);

describe('rules about scraps', () => {
  it('stops every material that the table keeps out of the liquid', () => {
    const passed = materials
      .filter((row) => row.into !== 'liquid')
      .filter((row) => !levels({ material: row.id, massKg: 1, treated: 'no' }).includes('stop'));
    expect(passed.map((row) => row.id)).toEqual([]);
  });

  it('stops no material that the table lets into the liquid, once weedkiller is ruled out', () => {
    const stopped = materials
      .filter((row) => row.into === 'liquid')
      .filter((row) =>
        levels({ material: row.id, massKg: 1, treated: 'no' }).some((l) => l === 'stop' || l === 'hold'),
      );
    expect(stopped.map((row) => row.id)).toEqual([]);
  });

  it('gives one reason for each material it stops, from a source that can be cited', () => {
    for (const row of materials.filter((r) => r.into !== 'liquid')) {
      const stops = found({ material: row.id, massKg: 1, treated: 'no' }).filter((f) => f.level === 'stop');
      expect(
        stops.map((f) => f.rule),
        row.id,
      ).toHaveLength(1);
      expect(citation(stops[0]?.source ?? '')).not.toBe('');
    }
  });

  it('names the same source for a stop as the table does for the material', () => {
    for (const row of materials.filter((r) => r.into !== 'liquid')) {
      const stop = found({ material: row.id, massKg: 1, treated: 'no' }).find((f) => f.level === 'stop');
      expect(stop?.source, row.id).toBe(row.whySource);
    }
  });

  it('stops every material that weedkiller was used on, whatever it is', () => {
    for (const row of materials) {
      expect(of({ material: row.id, massKg: 1, treated: 'yes' }), row.id).toContain('weedkiller-treated');
    }
  });

  it('holds a lot whose treatment is not known, and never lets it through', () => {
    for (const row of materials)
      expect(levels({ material: row.id, massKg: 1, treated: 'unknown' }), row.id).toContain('hold');
  });

  it('asks about weedkiller where nobody has answered, for clippings, hay, straw, manure and compost', () => {
    const asked = materials
      .filter((row) => of({ material: row.id, massKg: 1 }).includes('weedkiller-not-answered'))
      .map((row) => row.group);
    expect(new Set(asked)).toEqual(new Set(['clippings', 'hay-straw', 'compost', 'manure']));
    expect(of({ material: 'carrot', massKg: 1 })).toEqual([]);
  });

  it('warns of a lot that is not in the list, since no rule can tell what it is', () => {
    expect(of({ name: 'something from the shed', massKg: 1, dryMatter: 0.2 })).toEqual(['lot-not-in-the-list']);
  });

  it('has a sentence for each rule, with every value filled in', () => {
    for (const row of materials) {
      for (const treated of [undefined, 'no', 'unknown', 'yes'] as const) {
        for (const finding of found({ material: row.id, massKg: 1, treated })) {
          const text = scrapsCautions[finding.rule]?.(finding.values) ?? '';
          expect(text, `${row.id} ${finding.rule}`).toMatch(/\.$/);
          expect(text).not.toMatch(/undefined|NaN|\[object/);
        }
      }
    }
  });
});
