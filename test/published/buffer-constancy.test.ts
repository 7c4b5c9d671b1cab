// Scientific Reports 2020, 10:17782, Table 2 (lucerne silage, days 7 to 56): what the acids found there say about the
// plant's buffer. It is linear and constant in the sound silages; in the foul ones the excess is the ammonia found.
import { describe, expect, it } from 'vitest';
import { dissociatedFraction, MOLAR_MASS_G, PKA } from '#engine/scraps/acid.ts';
import { num, rows } from './rows.ts';

type Row = ReturnType<typeof rows>[number];
const table = rows('buffer-constancy.csv');
/** pH of the lucerne as ensiled. */
const START_PH = 6.2;

/** Acid that gave its proton away, eq per kg dry matter. */
function givenEqPerKgDm(row: Row): number {
  const ph = num(row, 'ph');
  return (
    (num(row, 'lacticGPerKgDm') / MOLAR_MASS_G.lactic) * dissociatedFraction({ ph, pka: PKA.lactic }) +
    (num(row, 'aceticGPerKgDm') / MOLAR_MASS_G.acetic) * dissociatedFraction({ ph, pka: PKA.acetic })
  );
}

const bufferMeq = (row: Row) => (1000 * givenEqPerKgDm(row)) / (START_PH - num(row, 'ph'));
const of = (...treatments: string[]) => table.filter((row) => treatments.includes(row.treatment ?? ''));

describe('the buffer of lucerne, from the acids of its silage', () => {
  it.each(
    table
      .filter((row) => row.expectedBufferMeqPerKgDmPerPh)
      .map((row) => [row.case, row.expectedBufferMeqPerKgDmPerPh, row] as const),
  )('%s: %s meq per kg dry matter and pH', (_, __, row) => {
    expect(Math.abs(bufferMeq(row) - num(row, 'expectedBufferMeqPerKgDmPerPh'))).toBeLessThanOrEqual(
      num(row, 'tolerance'),
    );
  });

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
    const row = of('untreated').find((one) => one.day === day);
    if (!row) throw new Error(`no day ${day}`);
    const ammoniaMol = ((200 / 6.25) * num(row, 'ammoniaNGPerKgN')) / 1000 / 14.007;
    expect(ammoniaMol).toBeCloseTo(ammonia, 2);
    const soundBufferEq = 0.2565; // mean of the eight sound silages above, 0.242 to 0.271
    const excess = givenEqPerKgDm(row) - soundBufferEq * (START_PH - num(row, 'ph'));
    expect(Math.abs(excess - ammoniaMol)).toBeLessThan(0.03);
  });
});
