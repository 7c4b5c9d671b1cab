// What is still to come, as typed and as sources of the cover.

import { describe, expect, it } from 'vitest';
import { material } from '#engine/tables/index.ts';
import { EMPTY_EXPECTED, EXPECTED, expectedSource, readExpected } from './cover-expected.ts';

describe('what is still to come', () => {
  it('is read by weight or by volume; an empty line is none', () => {
    const { stuff, troubles } = readExpected([
      { material: 'grass-clippings-fresh', amount: '20 kg' },
      EMPTY_EXPECTED,
      { material: 'finished-compost', amount: '100 L' },
    ]);
    expect(troubles.size).toBe(0);
    // 100 L by the bulk of the table.
    const bulk = material('finished-compost')?.figures.bulkKgPerM3?.likely ?? Number.NaN;
    expect(stuff.map(({ massKg }) => massKg)).toEqual([20, bulk / 10]);
  });

  it.each([
    ['material', { material: '', amount: '20 kg' }, 'Say what is to come.'],
    ['material', { material: 'pet-waste', amount: '20 kg' }, 'Say what is to come.'],
    ['amount', { material: 'lucerne', amount: '' }, 'Say how much'],
    ['amount', { material: 'lucerne', amount: '0 kg' }, 'is nothing'],
    ['amount', { material: 'lucerne', amount: 'much' }, 'much'],
    ['amount', { material: 'lucerne', amount: '2 buckets' }, 'how many litres'],
  ] as const)('with a wrong %s is told there and not counted', (field, row, text) => {
    const { stuff, troubles } = readExpected([row]);
    expect(stuff).toEqual([]);
    expect(troubles.get(`0.${field}`)?.sentence).toContain(text);
  });

  it('is named as such, has no price and brings nitrogen', () => {
    for (const id of EXPECTED) {
      expect(material(id)?.figures.bulkKgPerM3?.likely).toBeGreaterThan(0);
      const source = expectedSource({ id: 'expected-0', material: id, massKg: 5 }, ['A']);
      expect(source.name).toMatch(/, still to come$/);
      expect(source.haveKg).toBe(5);
      expect(source.costPerKg).toBeUndefined();
      // Coffee grounds get no credit in their first season.
      expect(source.perKg.nTotalG).toBeGreaterThan(0);
      if (id !== 'coffee-grounds') expect(source.perKg.nG?.likely).toBeGreaterThan(0);
    }
  });

  it('keeps compost nobody can answer for off what is eaten raw, and lets a legume lie anywhere', () => {
    expect(expectedSource({ id: 'x', material: 'finished-compost', massKg: 5 }, ['A']).offBeds).toEqual(['A']);
    const legume = expectedSource({ id: 'x', material: 'legume-tops', massKg: 5 }, ['A']);
    expect(legume).toMatchObject({ kind: 'legume', fresh: true });
    expect(legume.offBeds).toBeUndefined();
  });
});
