// Classes of soil tests as their sources print them, and the conversion printed for Ohio.

import { describe, expect, it } from 'vitest';
import {
  brayOfMehlich3Ppm,
  readSoilTest,
  type SoilMethod,
  type SoilUnit,
  type TestedElement,
} from '#engine/ground/soil-test.ts';
import { published } from './rows.ts';

describe('the class of a soil test', () => {
  it.each(published('soil-tests.csv'))('$case', (row) => {
    const found = readSoilTest({
      element: row.element as TestedElement,
      value: Number(row.value),
      unit: row.unit as SoilUnit,
      method: row.method as SoilMethod,
    });
    expect(found).toMatchObject({ kind: 'class', class: row.expected });
  });
});

describe('Mehlich-3 turned into Bray', () => {
  it('makes 10 of 22, as printed', () => {
    expect(Math.round(brayOfMehlich3Ppm(22))).toBe(10);
  });
});
