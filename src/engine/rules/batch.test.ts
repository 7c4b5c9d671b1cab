// Which state of a batch stops a pour, which holds it, and what is said when nothing is known.
import { describe, expect, it } from 'vitest';
import type { PourOrder } from '../can/pour.ts';
import { batchRules } from './batch.ts';
import { judge } from './rule.ts';

const order: PourOrder = {
  strength: { kind: 'ratio', ratio: { n: 200, reading: 'in' } },
  canL: 9,
  spoon: null,
  way: 'soil',
  eaten: 'cooked',
};
const said = (batch: PourOrder['batch']) =>
  judge(batchRules, { ...order, batch }).map(({ rule, level }) => `${level} ${rule}`);

describe('rules about a batch', () => {
  it.each([
    ['lost', 'stop batch-lost'],
    ['unknown', 'stop batch-unknown'],
    ['souring', 'hold batch-souring'],
    ['slow', 'hold batch-slow'],
    ['doubtful', 'hold batch-doubtful'],
  ] as const)('answer a %s batch with %s', (state, expected) => {
    expect(said({ peg: 14, state, held: true })).toEqual([expected]);
  });
  it('hold a ready batch that is not held, or does not say', () => {
    expect(said({ peg: 14, state: 'ready', held: false })).toEqual(['hold batch-not-held']);
    expect(said({ peg: 14, state: 'ready' })).toEqual(['hold batch-not-held']);
  });
  it('are silent for a held batch on a cooked bed', () => {
    expect(said({ peg: 0, state: 'ready', held: true })).toEqual([]);
  });
  it('stop a batch whose state is not told, and a jar without a peg twice over', () => {
    expect(said({ peg: 14 })).toEqual(['stop batch-unknown']);
    expect(said({})).toEqual(['stop batch-no-peg', 'stop batch-unknown']);
    expect(said({ peg: Number.NaN, state: 'ready', held: true })).toEqual(['stop batch-no-peg']);
  });
  it('note that no batch was named', () => {
    expect(said(undefined)).toEqual(['note batch-none']);
  });
});
