// Peg 14 of the demo plot, strained on day 10: the sum closes and the nitrogen is mostly still in the solids.

import { describe, expect, it } from 'vitest';
import { explainStrain, strain } from '#tasks/strain.ts';
import { sayStrain } from '#words/en/strain.ts';

/** Analyses that hold 15.7 g of nitrogen: 12.6 + 1.96 + 1.14 g. */
const peg14 = {
  plants: [
    { material: 'grass-clippings-fresh', massKg: 2.1, dryMatter: 0.22, nPercentDm: 12.6 / (2.1 * 2.2), treated: 'no' },
    { material: 'cabbage-leaves', massKg: 0.7, dryMatter: 0.08, nPercentDm: 1.96 / (0.7 * 0.8) },
    { material: 'kitchen-trimmings', massKg: 0.4, dryMatter: 0.12, nPercentDm: 1.14 / (0.4 * 1.2) },
  ],
  water: { volumeL: 5.2, alkalinityMeqPerL: 4.24 },
  sugar: { product: 'white-sugar', massKg: 0.15 },
  starterL: 0.2,
  days: 10,
  temperatureC: 20,
  finalPh: 3.7,
  drainedL: 6.3,
  solidsKg: 2.1,
  state: 'ready',
};

const answer = strain(peg14);
if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
const { value } = answer;

describe('peg 14, strained on day 10', () => {
  it('closes: 8.75 kg in, 8.46 kg out, 0.3 kg lost', () => {
    // in 2.1 + 0.7 + 0.4 + 5.2 + 0.15 + 0.2 × 1.01 = 8.752; out 6.3 × 1.01 + 2.1 = 8.463
    expect(value.balance.inKg).toBeCloseTo(8.752, 6);
    expect(value.balance.outKg).toBeCloseTo(8.463, 6);
    expect(value.balance.inKg - value.balance.outKg).toBeCloseTo(0.3, 1);
    expect(value.balance.closes).toBe(true);
  });

  it('has 15.7 g of nitrogen in the pail and 1.6 to 4.3 g of it in the liquid', () => {
    expect(value.inputs.nG?.likely).toBeCloseTo(15.7, 6);
    // V_e = 5.2 + 0.2 + 2.1 × 0.78 + 0.7 × 0.92 + 0.4 × 0.88 = 8.034 L; F(10 d) = Finf (1 − e^−1), 0.20 to 0.55
    const share = (finf: number) => 15.7 * finf * (1 - Math.exp(-0.1 * 10)) * (6.3 / 8.034);
    expect(value.drained.nG?.low).toBeCloseTo(share(0.2), 6);
    expect(value.drained.nG?.likely).toBeCloseTo(share(0.35), 6);
    expect(value.drained.nG?.high).toBeCloseTo(share(0.55), 6);
    expect(value.drained.nG?.low).toBeCloseTo(1.6, 1);
    expect(value.drained.nG?.high).toBeCloseTo(4.3, 1);
  });

  it('has the rest of the nitrogen in the solids', () => {
    expect((value.drained.nG?.likely ?? 0) + (value.solids.nG?.likely ?? 0)).toBeCloseTo(15.7, 6);
  });

  it('asks for the tag and holds nothing back', () => {
    const levels = value.cautions.map((caution) => caution.level);
    expect(levels).not.toContain('stop');
    expect(levels).not.toContain('hold');
    expect(value.cautions.find((caution) => caution.rule === 'strained-tag-not-a-drink')?.text).toMatch(/not a drink/);
  });

  it('says each figure with its band, and no promise', () => {
    // 15.7 × Finf × 0.6321 / 8.034, Finf 0.35 (0.20 to 0.55); no more than 15.7 / 8.034
    const said = sayStrain(value).join(' ');
    expect(said).toMatch(/The sum closes\./);
    expect(said).toMatch(/Nitrogen in a litre, an estimate: 0\.43.g \(0\.25 to 0\.68\); no more than 1\.95.g/);
    expect(said).toMatch(/none of it is a promise/);
  });

  it('has a working for each figure shown', () => {
    const figures = explainStrain(peg14).map((working) => working.figure);
    for (const figure of [
      'balance.inKg',
      'balance.outKg',
      'balance.unexplainedPercent',
      'liquid.nGPerL',
      'liquid.pGPerL',
      'liquid.kGPerL',
      'liquid.ecDsPerM',
      'ceiling.nGPerL',
      'ceiling.pGPerL',
      'ceiling.kGPerL',
      'solids.nG',
      'solids.kG',
      'solids.cn',
      'useFirst.days',
    ]) {
      expect(figures).toContain(figure);
    }
  });
});
