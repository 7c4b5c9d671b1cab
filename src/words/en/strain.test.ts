// The sentences about straining, bottles and lids: plain, whole, and free of words that stay off the screens.

import { describe, expect, it } from 'vitest';
import { type StrainSaid, sayStrain, strainCautions } from './strain.ts';
import { vesselCautions } from './vessel.ts';

/** Words of hype and false comfort, and loose measures. */
const OFF =
  /\b(safe|safely|sterile|guaranteed?|proven|perfect|optimal|exact|immune|kills?|cures?|magic|miracle|boosts?|brew|tea|tonic|probiotic|natural|replaces?|feeds the|capful|splash|cool place|a few weeks|smart|level|score)\b|100.%/i;
const band = (low: number, likely: number, high: number) => ({ low, likely, high });
const said: StrainSaid = {
  balance: { inKg: 8.75, outKg: 8.46, unexplainedPercent: 3.3, closes: true },
  liquid: { nGPerL: band(0.2, 0.4, 0.7), pGPerL: null, kGPerL: band(0.5, 0.7, 0.9), ecDsPerM: null },
  ceiling: { nGPerL: 2, pGPerL: null, kGPerL: 1 },
  solids: { nG: band(10, 12, 14), kG: band(1, 2, 3), cn: null },
  useFirst: { days: band(20, 85, 365), keeping: 'keeps' },
  pressure: { upToAtm: 2.7, heterolacticAtm: 1.35, temperatureC: 20 },
};
const values = {
  lots: 'peel',
  elements: 'calcium',
  ph: 4.9,
  sourPh: 4.6,
  readyPh: 4.2,
  drainedL: 12,
  couldL: 9,
  inKg: 9,
  outKg: 7,
  unexplainedPercent: 22,
  withinPercent: 15,
  starterL: 0.2,
  vesselL: 12,
  liquidL: 9,
  sugarG: 4,
  lidDiameterM: 0.2,
  pressureAtm: 0.09,
  forceKgf: 30,
  sugarLeftGPerL: 10,
  temperatureC: 20,
  mostGPerL: 5,
  massKg: 20,
  mostKg: 15,
};
const cautions = { ...strainCautions, ...vesselCautions };
const sentences = [
  ...Object.values(cautions).map((say) => say(values)),
  ...sayStrain(said),
  ...sayStrain({ ...said, useFirst: { days: band(0, 10, 20), keeping: 'short' } }),
  ...sayStrain({ ...said, useFirst: { days: band(0, 0, 0), keeping: 'none' } }),
];

describe('sentences about straining', () => {
  it('hold no word that stays off the screens', () => {
    for (const sentence of sentences) expect(sentence).not.toMatch(OFF);
  });

  it('are whole: no gap where a value is missing, and a full stop at the end', () => {
    for (const sentence of sentences) {
      expect(sentence).not.toMatch(/undefined|NaN|null|\[object/);
      expect(sentence).toMatch(/[.?]$/);
    }
  });

  it('show no nutrient without its band', () => {
    for (const sentence of sayStrain(said).filter((line) => /in a litre, an estimate/.test(line))) {
      expect(sentence).toMatch(/\(\d[\d.]* to \d[\d.]*\)/);
    }
  });

  it('say so where an element is not known', () => {
    expect(sayStrain(said).join(' ')).toMatch(/Phosphorus: not known for any lot/);
  });

  it('tell what is missing from what is too much', () => {
    const open = strainCautions['strained-sum-open'];
    expect(open?.({ ...values, unexplainedPercent: 22 })).toMatch(/22.% is missing/);
    expect(open?.({ ...values, unexplainedPercent: -22 })).toMatch(/22.% more than went in/);
  });
});
