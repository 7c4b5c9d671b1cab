// The pH of lucerne silage, found from the acids and the ammonia that Scientific Reports 2020, 10:17782, table 2 prints
// beside it (days 7 to 56), by the charge balance and with the figures of our own table for lucerne. The buffer among
// them was taken from the sugared silages of this very table; the foul silages had no part in it.

import { describe, expect, it } from 'vitest';
import { balancePh, MOLAR_MASS_G } from '#engine/scraps/acid.ts';
import { material } from '#engine/tables/index.ts';
import { num, published, type Row } from './rows.ts';

/** pH of the lucerne as ensiled. */
const START_PH = 6.2;
const NITROGEN_G_PER_MOL = 14.007;

const table = published('buffer-constancy.csv');
const lucerne = material('lucerne')?.figures;

/** What a kilogram of dry matter holds stands for what a litre holds: the free acid between them is a ten-thousandth. */
function found(row: Row): number {
  const { bufferEqPerKgDmPerPh, nPercentDm } = lucerne ?? {};
  if (bufferEqPerKgDmPerPh === undefined || nPercentDm === undefined) throw new Error('no figures of lucerne');
  const ammoniaNGPerKgDm = (num(row, 'ammoniaNGPerKgN') / 1000) * nPercentDm.likely * 10;
  return balancePh({
    lacticMolPerL: num(row, 'lacticGPerKgDm') / MOLAR_MASS_G.lactic,
    aceticMolPerL: num(row, 'aceticGPerKgDm') / MOLAR_MASS_G.acetic,
    baseEqPerL: ammoniaNGPerKgDm / NITROGEN_G_PER_MOL,
    bufferEqPerLPerPh: bufferEqPerKgDmPerPh.likely,
    startPh: START_PH,
    alkalinityEqPerL: 0,
    waterPh: 7,
  });
}

describe('the pH of lucerne silage from its acids and ammonia', () => {
  it('is asked of four silages on four days', () => {
    expect(table).toHaveLength(16);
  });

  it.each(table.map((row) => [row.case, row.ph, row] as const))('%s: %s', (_, __, row) => {
    const sound = row.treatment?.startsWith('sucrose');
    expect(Math.abs(found(row) - num(row, 'ph'))).toBeLessThanOrEqual(sound ? 0.07 : 0.2);
  });
});
