// The list of all rules is whole, every rule can be audited, a test names it, and the page of rules is current.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { allRules } from '#engine/rules/index.ts';
import { instead, naming, rulesPage, testFiles } from '../rules/report.ts';
import { rulesIn } from './cautions.ts';
import { codeUnder, root } from './code.ts';
import { type AuditedRule, auditFaults, NEVER_OVERRIDDEN } from './rules.ts';

const files = testFiles();
const ruleFiles = codeUnder('src/engine/rules').filter(({ file }) => !file.endsWith('/index.ts'));
const modules = await Promise.all(ruleFiles.map(({ file }) => import(path.join(root, file))));
const offered = [...new Set(modules.flatMap((one) => rulesIn({ ...one })))];

describe('the list of all rules', () => {
  it('holds every rule that a file offers, once', () => {
    expect(offered.length).toBeGreaterThan(100);
    const ids = (rules: readonly { readonly id: string }[]) => rules.map(({ id }) => id).toSorted();
    expect(ids(allRules)).toEqual(ids(offered));
  });

  it('says of each rule what an auditor asks', () => {
    expect(auditFaults({ rules: allRules, instead })).toEqual([]);
  });

  it('holds every stop that no reason overrides', () => {
    const ids = allRules.map(({ id }) => id);
    expect(NEVER_OVERRIDDEN.filter((id) => !ids.includes(id))).toEqual([]);
  });

  it('has no rule that no test names', () => {
    expect(allRules.filter(({ id }) => naming(id, files).length === 0).map(({ id }) => id)).toEqual([]);
  });

  it('is what docs/rules.md shows; if not, run node --import tsx scripts/rules.ts', () => {
    const standing = readFileSync(path.join(root, 'docs/rules.md'), 'utf8');
    expect(firstDifference(standing, rulesPage(files))).toBeUndefined();
  });

  it('leaves no gap in what a rule says', () => {
    expect(rulesPage(files).match(/.*\b(undefined|NaN|Infinity|\[object).*/g)).toBeNull();
  });
});

/** The first line in which two texts differ, as it is in each. */
function firstDifference(one: string, other: string): object | undefined {
  const [ones, others] = [one.split('\n'), other.split('\n')];
  const at = Array.from({ length: Math.max(ones.length, others.length) }, (_, line) => line).find(
    (line) => ones[line] !== others[line],
  );
  return at === undefined ? undefined : { line: at + 1, standing: ones[at], expected: others[at] };
}

describe('the check of the page', () => {
  it('finds a line that is changed, missing or too many', () => {
    expect(firstDifference('a\nb', 'a\nb')).toBeUndefined();
    expect(firstDifference('a\nb', 'a\nc')).toEqual({ line: 2, standing: 'b', expected: 'c' });
    expect(firstDifference('a', 'a\n')).toEqual({ line: 2, standing: undefined, expected: '' });
    expect(firstDifference('a\n', 'a')).toEqual({ line: 2, standing: '', expected: undefined });
  });
});

describe('the audit of rules', () => {
  const stop: AuditedRule = {
    id: 'lid',
    level: 'stop',
    source: 'practice',
    looksAt: 'the lid',
    speaksFor: 'general',
    override: 'reason',
  };
  const note: AuditedRule = { id: 'tag', level: 'note', source: 'practice', looksAt: 'the tag', speaksFor: ['us'] };
  const sound = { rules: [stop, note], instead: { lid: 'Lay it on loose.' } };
  const changed = (change: object) => ({ ...sound, rules: [{ ...stop, ...change }, note] });

  it('is content when all is there', () => {
    expect(auditFaults(sound)).toEqual([]);
  });

  it.each([
    ['a stop with nothing to do instead', { ...sound, instead: {} }],
    ['an alternative that is no sentence', { ...sound, instead: { lid: 'Loose' } }],
    ['an alternative to no stop', { ...sound, instead: { ...sound.instead, tag: 'Write it.' } }],
    ['a stop that does not say whether it gives way', changed({ override: undefined })],
    ['a rule that does not say what it looks at', changed({ looksAt: ' ' })],
    ['a rule that speaks for no place', changed({ speaksFor: [] })],
    ['a rule on a code that speaks for all', changed({ source: 'cfr-21-112' })],
    ['a rule on a code of another place', changed({ source: 'apha-home-compost', speaksFor: ['us'] })],
    ['a note with an override', { ...sound, rules: [stop, { ...note, override: 'reason' }] }],
    [
      'a stop overridden that never may be',
      { rules: [{ ...stop, id: 'batch-lost' }], instead: { 'batch-lost': 'Tip it.' } },
    ],
  ])('finds %s', (_, planted) => {
    expect(auditFaults(planted)).toHaveLength(1);
  });

  it('finds the files that name a rule, and not those that name a longer one', () => {
    const text = (id: string) => ({ file: `${id}.test.ts`, text: `expect(said).toEqual(['hold ${id}']);` });
    expect(naming('salt', [text('salt'), text('salt-over'), text('sea-salt')])).toEqual(['salt.test.ts']);
  });
});
