// What the acids of lucerne silage (Scientific Reports 2020, 10:17782, table 2, days 7 to 56) say about the plant's buffer,
// worked by hand: linear and constant in the sound silages; in the foul ones the excess is the ammonia found.

import { describe, expect, it } from 'vitest';
import { chargeSurplus, MOLAR_MASS_G } from '#engine/scraps/acid.ts';
import { num, published, type Row, worked } from '../published/rows.ts';

const table = published('buffer-constancy.csv');
/** pH of the lucerne as ensiled. */
const START_PH = 6.2;

/** Acid that gave its proton away, eq per kg dry matter: the charge balance of a liquid without buffer, base or water. */
function givenEqPerKgDm(row: Row): number {
  const acids = {
    lacticMolPerL: num(row, 'lacticGPerKgDm') / MOLAR_MASS_G.lactic,
    aceticMolPerL: num(row, 'aceticGPerKgDm') / MOLAR_MASS_G.acetic,
  };
  const nothingElse = { baseEqPerL: 0, bufferEqPerLPerPh: 0, alkalinityEqPerL: 0, waterPh: 7, startPh: START_PH };
  return chargeSurplus({ ...acids, ...nothingElse }, num(row, 'ph'));
}

const bufferMeq = (row: Row) => (1000 * givenEqPerKgDm(row)) / (START_PH - num(row, 'ph'));
const of = (...treatments: string[]) => table.filter((row) => treatments.includes(row.treatment ?? ''));

function silage(treatment: string | undefined, day: string | undefined): Row {
  const row = table.find((one) => one.treatment === treatment && one.day === day);
  if (!row) throw new Error(`no ${treatment} on day ${day}`);
  return row;
}

describe('the buffer of lucerne, from the acids of its silage', () => {
  it.each(worked('buffer-constancy.csv').map((row) => [row.case, row.expectedBufferMeqPerKgDmPerPh, row] as const))(
    '%s: %s meq per kg dry matter and pH',
    (_, __, row) => {
      const off = bufferMeq(silage(row.treatment, row.day)) - num(row, 'expectedBufferMeqPerKgDmPerPh');
      expect(Math.abs(off)).toBeLessThanOrEqual(num(row, 'tolerance'));
    },
  );

  it('stays within 6 % of its mean over the eight sound silages, pH 4.34 down to 3.98', () => {
    const found = of('sucrose', 'sucrose and culture').map(bufferMeq);
    const mean = found.reduce((a, b) => a + b, 0) / found.length;
    expect(found).toHaveLength(8);
    for (const one of found) expect(Math.abs(one / mean - 1)).toBeLessThan(0.06);
  });

  it('seems twice as large where the silage turned foul', () => {
    for (const row of of('untreated')) expect(bufferMeq(row)).toBeGreaterThan(2 * 255);
  });

  // Nitrogen of lucerne with 20 % crude protein, an assumption: 200 / 6.25 = 32 g per kg dry matter.
  it.each([
    ['7', 0.2],
    ['56', 0.3],
  ])('is exceeded on day %s of the foul silage by its ammonia, about %d eq per kg dry matter', (day, ammonia) => {
    const row = silage('untreated', day);
    const ammoniaMol = ((200 / 6.25) * num(row, 'ammoniaNGPerKgN')) / 1000 / 14.007;
    expect(ammoniaMol).toBeCloseTo(ammonia, 2);
    const soundBufferEq = 0.2565; // mean of the eight sound silages above, 0.242 to 0.271
    const excess = givenEqPerKgDm(row) - soundBufferEq * (START_PH - num(row, 'ph'));
    expect(Math.abs(excess - ammoniaMol)).toBeLessThan(0.03);
  });
});
