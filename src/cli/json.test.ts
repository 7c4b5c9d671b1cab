// Our reading of JSON against Node's own (ECMA-404 as JSON.parse has it), and the places that it names.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstFault, parseJson } from './json.ts';

const SEED = 20_251;

function nodeReads(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('reading JSON', () => {
  it('gives what JSON.parse gives for anything JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 2), (value, indent) => {
        const text = JSON.stringify(value, undefined, indent);
        expect(parseJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
      }),
      { seed: SEED },
    );
  });

  it('refuses exactly what JSON.parse refuses, fields that stand twice apart', () => {
    const sign = fc.constantFrom(
      ...'{}[]:,"\\0123456789.-+eE tfn/au'.split(''),
      'true',
      'false',
      'null',
      '"a"',
      '"b"',
      '\n',
      '\t',
    );
    const broken = fc.tuple(fc.jsonValue(), fc.nat(), fc.nat(3), sign).map(([value, place, cut, sign]) => {
      const text = JSON.stringify(value);
      const at = place % (text.length + 1);
      return text.slice(0, at) + sign + text.slice(at + cut);
    });
    const garbled = fc.array(sign, { maxLength: 12 }).map((signs) => signs.join(''));
    fc.assert(
      fc.property(fc.oneof(broken, garbled), (text) => {
        const fault = firstFault(text);
        if (fault?.kind === 'twice') expect(nodeReads(text)).toBe(true);
        else expect(fault === undefined).toBe(nodeReads(text));
      }),
      { seed: SEED, numRuns: 5000 },
    );
  });

  it('calls every beginning of a text cut, and names its end', () => {
    const text = '{"plants": [{"name": "a\\u00e9b", "massKg": 2.5}, true, null], "water": {}}';
    for (let length = 1; length < text.length; length++) {
      const fault = firstFault(text.slice(0, length));
      expect(fault, text.slice(0, length)).toMatchObject({ kind: 'cut', line: 1 });
    }
  });

  it.each([
    ['{"a": 1,\n "b": x}', { kind: 'unexpected', line: 2, column: 7, wanted: 'a value' }],
    ['{"a": 1 "b": 2}', { kind: 'unexpected', line: 1, column: 9, wanted: 'a comma or }' }],
    ['{a: 1}', { kind: 'unexpected', line: 1, column: 2, wanted: 'a field name in double quotes' }],
    ['[1, 2] 3', { kind: 'unexpected', line: 1, column: 8, wanted: 'the end of the text' }],
    ['[1,\r\n2,\r\n]', { kind: 'unexpected', line: 3, column: 1, wanted: 'a value' }],
    ['["a\nb"]', { kind: 'unexpected', line: 1, column: 4 }],
    ['["\\x"]', { kind: 'unexpected', line: 1, column: 3 }],
    ['{"a": 1, "b": 2, "a": 3}', { kind: 'twice', line: 1, column: 18, found: 'a' }],
    ['['.repeat(5000), { kind: 'deep', line: 1, column: 201 }],
  ])('names the place of fault %#', (text, fault) => {
    expect(firstFault(text)).toMatchObject(fault);
  });

  it('reads a text of a megabyte', () => {
    expect(parseJson(JSON.stringify(['a'.repeat(1_000_000)])).ok).toBe(true);
  });
});
