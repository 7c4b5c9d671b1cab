// The engine is pure: the same input gives the same answer, anywhere and at any time.

import { describe, expect, it } from 'vitest';
import { codeUnder } from './code.ts';
import { purityFaults } from './purity.ts';

describe('the engine', () => {
  it('uses no clock, no chance, no locale and nothing of the outside world', () => {
    const files = codeUnder('src/engine');
    expect(files.length).toBeGreaterThan(5);
    expect(files.flatMap(purityFaults)).toEqual([]);
  });
});

describe('the rule on purity', () => {
  it.each([
    'Math.random()',
    'Math["random"]()',
    'const { random } = globalThis.Math',
    'new Date()',
    'Date.now()',
    'console.log(1)',
    'process.env.HOME',
    'const now = performance.now',
    '(1.5).toLocaleString()',
    '"a".localeCompare("b")',
    'fetch("a")',
    'typeof document',
  ])('finds %s', (text) => {
    expect(purityFaults({ file: 'planted.ts', text })).toHaveLength(1);
  });

  it.each(['Math.max(1, 2)', 'const a = { process: 1 }; a.process', 'interface A { Date: string }', '"Date"'])(
    'is content with %s',
    (text) => {
      expect(purityFaults({ file: 'planted.ts', text })).toEqual([]);
    },
  );
});
