// Classes of soil tests by scales as recalled and by hand, readings that are questioned, and a report as typed.

import { describe, expect, it } from 'vitest';
import {
  brayOfMehlich3Ppm,
  readMethod,
  readSoilTest,
  readSoilUnit,
  type SoilMethod,
  type SoilUnit,
  type TestedElement,
} from '#engine/ground/soil-test.ts';
import { worked } from '../published/rows.ts';

describe('the class of a soil test', () => {
  it.each(worked('soil-tests.csv'))('$case', (row) => {
    const found = readSoilTest({
      element: row.element as TestedElement,
      value: Number(row.value),
      unit: row.unit as SoilUnit,
      method: row.method as SoilMethod,
    });
    expect(found).toMatchObject({ kind: 'class', class: row.expected });
  });

  it('is not given without the method, with one for something else, in a unit it has no scale in, or against the pH', () => {
    const p = { element: 'p', value: 20, unit: 'ppm' } as const;
    expect(readSoilTest(p)).toEqual({ kind: 'question', why: 'method-missing' });
    expect(readSoilTest({ ...p, element: 'k', method: 'bray-1' })).toEqual({
      kind: 'question',
      why: 'method-not-for-element',
    });
    expect(readSoilTest({ ...p, method: 'bray-1', unit: 'mg-per-l' })).toEqual({
      kind: 'question',
      why: 'unit-not-for-method',
    });
    expect(readSoilTest({ ...p, method: 'bray-1', soilPh: 7.9 })).toEqual({
      kind: 'question',
      why: 'method-against-ph',
    });
    expect(readSoilTest({ ...p, method: 'olsen', soilPh: 5.2 })).toEqual({
      kind: 'question',
      why: 'method-against-ph',
    });
    expect(readSoilTest({ ...p, value: Number.NaN, method: 'bray-1' }).kind).toBe('question');
  });

  it('tells where scales of other places call it something else', () => {
    // 18 ppm Bray: 15 to 24 medium in the first table, below 20 low in the second, below 35 to 40 short in the third
    expect(readSoilTest({ element: 'p', value: 18, unit: 'ppm', method: 'bray-1' })).toMatchObject({
      class: 'medium',
      others: [
        { scale: 'bray-1-p-western-oregon', class: 'low' },
        { scale: 'bray-1-p-midwest', class: 'low' },
      ],
    });
  });
});

describe('Mehlich-3 turned into Bray', () => {
  it('is 10.224 of 22', () => {
    expect(brayOfMehlich3Ppm(22)).toBeCloseTo(10.224, 9); // -8.08 + 0.832 · 22
  });
});

describe('a report as typed', () => {
  it.each([
    ['Mehlich III', 'mehlich-3'],
    ['M3', 'mehlich-3'],
    ['Bray P-1', 'bray-1'],
    ['Olsen', 'olsen'],
    ['NaHCO3', 'olsen'],
    ['ammonium acetate', 'ammonium-acetate'],
    ['Bray P2', undefined],
    ['a look', undefined],
  ])('reads the method %s', (typed, method) => {
    expect(readMethod(typed)).toBe(method);
  });

  it.each([
    ['ppm', 'ppm'],
    ['mg/kg', 'ppm'],
    ['lb/acre', 'lb-per-acre'],
    ['lbs/A', 'lb-per-acre'],
    ['mg/L', 'mg-per-l'],
    ['Index', 'index'],
    ['%', undefined],
  ])('reads the unit %s', (typed, unit) => {
    expect(readSoilUnit(typed)).toBe(unit);
  });
});
