// A bag found on the street, slimy, nobody's: several reasons at once, and the worst one decides.

import { describe, expect, it } from 'vitest';
import { ownClippings, read } from './slip.ts';

describe('a slimy bag', () => {
  it('of the own lawn goes to the heap, not to the pail', () => {
    const said = read({ ...ownClippings, condition: 'slimy' });
    expect([said.outcome, said.goes, said.by]).toEqual(['compost-only', 'heap', 'slip-slimy']);
    expect(said.cautions).toHaveLength(1);
  });

  it('of the street is set aside first of all, because nobody knows how it was treated', () => {
    const said = read({ ...ownClippings, whose: 'found', from: 'street', treated: 'unknown', condition: 'slimy' });
    expect([said.outcome, said.by]).toEqual(['set-aside', 'slip-treatment-unknown']);
    expect(said.cautions.map(({ rule }) => rule).toSorted()).toEqual([
      'slip-from-the-street',
      'slip-slimy',
      'slip-treatment-unknown',
    ]);
  });

  it('is looked at before it goes in where its state was not told', () => {
    const said = read({ ...ownClippings, condition: undefined });
    expect([said.outcome, said.cautions[0]?.level]).toEqual(['compost-only', 'hold']);
  });
});
