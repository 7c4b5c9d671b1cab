// Figures that a grower types are read by the number reader of the engine alone: what two styles read a thousandfold apart is asked
// about, and not taken for one of them by a comma turned into a point.

import { describe, expect, it } from 'vitest';
import { codeUnder } from './code.ts';

const READER = 'src/engine/quantity/number.ts';
const BY_HAND = /replace(?:All)?\(\s*(?:','|\/,\/g?|\/\[\.,\]\/g?)\s*,\s*'\.'\s*\)|parseFloat\(/;

describe('a figure as typed', () => {
  it('is read in one place', () => {
    const files = codeUnder('src');
    expect(files.length).toBeGreaterThan(400);
    expect(files.filter(({ file, text }) => file !== READER && BY_HAND.test(text)).map(({ file }) => file)).toEqual([]);
  });
});
