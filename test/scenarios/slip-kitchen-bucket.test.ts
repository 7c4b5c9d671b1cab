// The kitchen bucket: raw peelings go in without a word, what was cooked or on a plate does not.

import { describe, expect, it } from 'vitest';
import { peelings, read } from './slip.ts';

describe('the kitchen bucket', () => {
  it('goes in when it holds raw peelings, and is not asked about weedkiller', () => {
    expect(read(peelings)).toMatchObject({ outcome: 'in', cautions: [] });
  });

  it('goes to the food-waste collection when it was cooked or on a plate, each for its own reason', () => {
    const cooked = read({ ...peelings, kitchen: 'cooked' });
    const plate = read({ ...peelings, kitchen: 'plate' });
    expect([cooked.by, plate.by]).toEqual(['slip-cooked', 'slip-off-the-plate']);
    for (const said of [cooked, plate]) {
      expect([said.outcome, said.goes]).toEqual(['out', 'food-waste-collection']);
    }
    expect(plate.cautions[0]?.source).toMatch(/21 CFR|Produce Safety|Food and Drug/i);
  });

  it('counts as off the plate when nobody can say', () => {
    for (const kitchen of ['unknown', undefined] as const) {
      expect(read({ ...peelings, kitchen })).toMatchObject({ outcome: 'out', by: 'slip-kitchen-not-told' });
    }
  });

  it('stays out for meat, fish and dairy by the table of materials, with its source', () => {
    const said = read({ ...peelings, material: 'meat-fish-dairy' });
    expect([said.outcome, said.by, said.goes]).toEqual(['out', 'meat-fish-dairy', 'food-waste-collection']);
    expect(said.cautions[0]?.source).toContain('Animal and Plant Health Agency');
  });
});
