// What a rule must hold before it compiles, and the order in which findings come.
import { describe, expect, it } from 'vitest';
import { judge, type Rule } from './rule.ts';

const rest = { source: 'practice', looksAt: 'nothing', speaksFor: 'general', when: () => ({}) } as const;

describe('a rule', () => {
  it('that stops says whether it gives way, and no other does', () => {
    // The compiler keeps this: each line below must be an error to it, or the build fails.
    // @ts-expect-error a stop without override
    const silentStop: Rule<object> = { ...rest, id: 'a', level: 'stop' };
    // @ts-expect-error a note with one
    const note: Rule<object> = { ...rest, id: 'b', level: 'note', override: 'reason' };
    // @ts-expect-error a rule that speaks for no place
    const nowhere: Rule<object> = { ...rest, id: 'c', level: 'note', speaksFor: [] };
    expect(judge([note, nowhere, silentStop], {}).map(({ rule }) => rule)).toEqual(['a', 'b', 'c']);
  });
});

describe('findings', () => {
  it('come stops first, then holds, cautions and notes, each in the order of the list', () => {
    const rules: readonly Rule<object>[] = [
      { ...rest, id: 'note', level: 'note' },
      { ...rest, id: 'caution', level: 'caution' },
      { ...rest, id: 'hold 1', level: 'hold' },
      { ...rest, id: 'stop', level: 'stop', override: 'none' },
      { ...rest, id: 'hold 2', level: 'hold' },
      { ...rest, id: 'silent', level: 'stop', override: 'none', when: () => false },
    ];
    expect(judge(rules, {}).map(({ rule }) => rule)).toEqual(['stop', 'hold 1', 'hold 2', 'caution', 'note']);
  });
});
