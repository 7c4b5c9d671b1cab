import { describe, expect, it } from 'vitest';
import type * as z from 'zod/mini';
import { nearestIds, portion, sugarIn, waterIn } from './portion.ts';
import { problemLine, read } from './problem.ts';

const problems = (schema: z.ZodMiniType, input: unknown) => {
  const answer = read(schema, input);
  return answer.ok ? [] : answer.problems.map(problemLine);
};

describe('portion', () => {
  it('reads a material of the table, an analysis of your own, or both', () => {
    expect(problems(portion, { material: 'carrot', massKg: 1 })).toEqual([]);
    expect(problems(portion, { massKg: 1, dryMatter: 0.2 })).toEqual([]);
    expect(
      problems(portion, { material: 'carrot', massKg: 1, dryMatter: { low: 0.1, likely: 0.12, high: 0.13 } }),
    ).toEqual([]);
  });

  it('asks for a material or dry matter, in one sentence', () => {
    expect(problems(portion, { massKg: 1 })).toEqual([
      'material: is missing; allowed: an id of the materials list (see help materials), or dryMatter from an analysis of your own',
    ]);
  });

  it('names the ids nearest to one it does not know', () => {
    const [line = ''] = problems(portion, { material: 'grass clippings', massKg: 1 });
    expect(line).toContain('material: is not a material known here (got "grass clippings"); allowed: ');
    expect(line).toContain('grass-clippings-fresh, grass-clippings-wilted');
    expect(line).toContain('see help materials');
    expect(nearestIds('carot')).toContain('carrot');
    expect(nearestIds('manure')).toContain('horse-manure');
    expect(nearestIds('xyzzy')).toEqual([]);
  });

  it('reports every problem of a lot at once', () => {
    const lines = problems(portion, { material: 'moon', massKg: -1, dryMatter: 7, ph: 41, treated: 'perhaps' });
    expect(lines.map((line) => line.split(':')[0]).sort()).toEqual([
      'dryMatter',
      'massKg',
      'material',
      'ph',
      'treated',
    ]);
  });

  it('refuses masses that are nothing, below nothing, absurd or no number', () => {
    for (const massKg of [0, -2, 1e6, Number.NaN, Number.POSITIVE_INFINITY, '2 kg', null]) {
      expect(problems(portion, { material: 'carrot', massKg }), String(massKg)).toHaveLength(1);
    }
  });

  it('refuses a band out of order', () => {
    expect(problems(portion, { massKg: 1, dryMatter: { low: 0.3, likely: 0.2, high: 0.4 } })).toHaveLength(1);
  });
});

describe('waterIn', () => {
  it('leaves open a pH that is not given: what is usual is taken, and listed, by whoever asks', () => {
    const answer = read(waterIn, { volumeL: 10, alkalinityMeqPerL: 2.5 });
    expect(answer.ok && answer.value.ph).toBeUndefined();
  });

  it('names every field that is wrong', () => {
    const lines = problems(waterIn, { volumeL: -1, alkalinityMeqPerL: 99, ph: 41 });
    expect(lines.map((line) => line.split(':')[0])).toEqual(['volumeL', 'alkalinityMeqPerL', 'ph']);
  });
});

describe('sugarIn', () => {
  it('takes no sugar at all, but not less, and no product it does not know', () => {
    expect(problems(sugarIn, { product: 'white-sugar', massKg: 0 })).toEqual([]);
    expect(problems(sugarIn, { product: 'white-sugar', massKg: -1 })).toHaveLength(1);
    expect(problems(sugarIn, { product: 'syrup', massKg: 1 })[0]).toContain('allowed: white-sugar, ');
  });
});
