import { describe, expect, it } from 'vitest';
import { sayCan } from '#words/en/can.ts';
import { card, rulesOf, textOf } from './can-card.ts';

describe('a jar with no peg on the shelf', () => {
  const ask = { ratio: { n: 200, reading: 'in' }, canL: 9, spoon: 'metric', areaM2: 9.6, depthLPerM2: 2.5 };

  it.each([{}, { peg: null }, { peg: '' }, { peg: '  ' }, { state: 'ready', held: true, ph: 3.7 }])(
    'gets no dose: %j',
    (batch) => {
      const said = card({ ...ask, batch });
      expect(rulesOf(said, 'stop')).toContain('batch-no-peg');
      for (const field of ['perCan', 'cans', 'measures', 'concentrateL', 'otherReading'] as const)
        expect(said[field]).toBeUndefined();
      expect(sayCan(said)).toEqual(['No dose: see why below.']);
    },
  );
  it('is offered pH, smell and the heap, and no tasting', () => {
    const text = textOf(card({ ...ask, batch: {} }));
    expect(text).toMatch(/pH/);
    expect(text).toMatch(/smell/);
    expect(text).toMatch(/compost it/);
    expect(text).toMatch(/never taste/);
  });
  it('is something else than naming no batch, which is noted and gets its volumes', () => {
    const said = card(ask);
    expect(rulesOf(said, 'note')).toContain('batch-none');
    expect(textOf(said)).toMatch(/no batch named/i);
    expect(said.perCan?.concentrateMl).toBe(45);
  });
});
