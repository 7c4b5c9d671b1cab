// The rules of the engine, all of them, against their sentences and sources.

import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { sources } from '#engine/tables/index.ts';
import { type AnyRule, idsWritten, ruleFaults, rulesIn } from './cautions.ts';
import { codeUnder, root } from './code.ts';

const ruleFiles = codeUnder('src/engine/rules');
const modules = await Promise.all(ruleFiles.map(({ file }) => import(path.join(root, file))));
const rules = [...new Set(modules.flatMap((one) => rulesIn({ ...one })))];

const wordModules = await Promise.all(codeUnder('src/words/en').map(({ file }) => import(path.join(root, file))));
const sentences = wordModules.flatMap((one: Record<string, unknown>) =>
  Object.entries(one)
    .filter(([name, value]) => /cautions$/i.test(name) && typeof value === 'object' && value !== null)
    .flatMap(([, value]) => Object.keys(value as object)),
);

describe('the rules of the engine', () => {
  it('are found', () => {
    expect(rules.length).toBeGreaterThan(10);
    expect(sentences.length).toBeGreaterThan(10);
  });

  it('each have one sentence, and a source that stands in the list of sources or one of the marks', () => {
    expect(ruleFaults({ rules, sentences, sourceIds: sources.map(({ id }) => id) })).toEqual([]);
  });

  it('are all offered by their files', () => {
    const offered = new Set(rules.map(({ id }) => id));
    expect(ruleFiles.flatMap(idsWritten).filter((id) => !offered.has(id))).toEqual([]);
  });
});

describe('the check of rules', () => {
  const good: AnyRule = { id: 'lid', level: 'stop', source: 'practice' };
  const sound = { rules: [good], sentences: ['lid'], sourceIds: ['some-2001'] };

  it('is content when all is there', () => {
    expect(ruleFaults(sound)).toEqual([]);
    expect(ruleFaults({ ...sound, rules: [{ ...good, source: 'some-2001' }] })).toEqual([]);
    expect(ruleFaults({ ...sound, rules: [good, { ...good }] })).toEqual([]);
  });

  it.each([
    ['a rule without a sentence', { sentences: [] }],
    ['a rule on a source that is not there', { rules: [{ ...good, source: 'gone-1999' }] }],
    ['a rule with an empty source', { rules: [{ ...good, source: '' }] }],
    ['two levels under one name', { rules: [good, { ...good, level: 'note' as const }] }],
    ['two sources under one name', { rules: [good, { ...good, source: 'some-2001' }] }],
    ['a sentence without a rule', { sentences: ['lid', 'gone'] }],
  ])('finds %s', (_, change) => {
    expect(ruleFaults({ ...sound, ...change })).toHaveLength(1);
  });

  it('finds rules alone, in lists and in records', () => {
    const rule = { ...good, when: () => false };
    expect(rulesIn({ rule, list: [rule], record: { of: [rule] }, other: 3 })).toHaveLength(3);
  });

  it('reads the ids that a text spells out', () => {
    const text = "const hidden = { id: 'hidden', level: 'stop', source: 'practice', when: () => false };";
    expect(idsWritten({ file: 'planted.ts', text })).toEqual(['hidden']);
  });
});
