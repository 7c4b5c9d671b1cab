// How a call is read: words, file, flags, and everything wrong with them at once.

import { describe, expect, it } from 'vitest';
import { readCall } from './call.ts';

describe('a call', () => {
  it.each([
    [['fit', 'a.json'], { kind: 'ask', word: 'fit', file: 'a.json', json: false, why: false }],
    [['--json', 'can', '-', '--why'], { kind: 'ask', word: 'can', file: '-', json: true, why: true }],
    [['water'], { kind: 'ask', word: 'water', file: '-', json: false, why: false }],
    [['help'], { kind: 'help', json: false }],
    [['help', 'fit', '--json'], { kind: 'help', about: 'fit', json: true }],
    [['help', 'materials'], { kind: 'help', about: 'materials', json: false }],
    [['beds', 'a.json'], { kind: 'ask', word: 'beds', file: 'a.json', json: false, why: false }],
    [['ledger', 'a.json'], { kind: 'ask', word: 'beds', file: 'a.json', json: false, why: false }],
    [['help', 'ledger'], { kind: 'help', about: 'beds', json: false }],
    [['strain', '--help'], { kind: 'help', about: 'strain', json: false }],
  ])('%j is understood', (args, call) => {
    expect(readCall(args)).toEqual({ ok: true, call });
  });

  it.each([
    [[], ['word']],
    [['brewed'], ['word']],
    [['constructor'], ['word']],
    [['fit', 'a.json', 'b.json'], ['arguments']],
    [
      ['fit', '--loud', 'a.json', 'b.json'],
      ['flag', 'arguments'],
    ],
    [
      ['fits', '--loud'],
      ['flag', 'word'],
    ],
    [['help', 'fits'], ['word']],
    [['help', 'fit', '--why'], ['flag']],
  ])('%j is refused at each thing wrong with it', (args, fields) => {
    const read = readCall(args);
    expect(read.ok ? [] : read.problems.map((one) => one.field)).toEqual(fields);
  });

  it('names the words there are when the word is not known', () => {
    const read = readCall(['fits']);
    expect(read.ok ? '' : read.problems[0]?.allowed).toBe('fit, can, water, strain, sour, heap, beds, help');
  });
});
