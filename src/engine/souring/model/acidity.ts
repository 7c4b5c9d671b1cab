// The pH of a state of the model: the charge balance of scraps/acid.ts with butyric acid, solved by Newton from the
// last pH found, because a run asks for it thousands of times.

import { PKA } from '../../scraps/acid.ts';
import type { Mixture } from './mixture.ts';
import { AT } from './state.ts';

export const KA_LACTIC = 10 ** -PKA.lactic;
export const KA_ACETIC = 10 ** -PKA.acetic;
/** Butyric acid, pKa 4.82. @memory */
export const KA_BUTYRIC = 10 ** -4.82;
const KA_CARBONIC = 10 ** -PKA.carbonic;
const LN10 = Math.LN10;
export const LACTIC_G = 90.08;
export const ACETIC_G = 60.05;
export const BUTYRIC_G = 88.11;

/** The pH that balances the charges of a state. */
export type SourOf = (y: Float64Array) => number;

/**
 * The pH of a state by charge balance, found by Newton from the last pH found.
 *
 *   L·aL + A·aA + Bu·aB − N − B(p0 − p) − K[f(p) − f(pw)] − (10^−p − 10^−p0) = 0
 *
 * @range 2.2-9; a liquid beyond answers that end
 * @arithmetic Newton on the balance of scraps/acid.ts with butyric acid added; strictly increasing, so one root
 * @checked souring/model/rates.test.ts against balancePh
 */
export function sourOf(mixture: Mixture): SourOf {
  const buffer = mixture.bufferEqPerLPerPh;
  const alkalinity = mixture.alkalinityEqPerL;
  const fixed =
    alkalinity / (1 + 10 ** (mixture.waterPh - PKA.carbonic)) + 10 ** -mixture.startPh - buffer * mixture.startPh;
  let ph = mixture.startPh;
  return (y) => {
    const lactic = ((y[AT.lactic] ?? 0) / LACTIC_G) * KA_LACTIC;
    const acetic = ((y[AT.acetic] ?? 0) / ACETIC_G) * KA_ACETIC;
    const butyric = ((y[AT.butyric] ?? 0) / BUTYRIC_G) * KA_BUTYRIC;
    const constant = fixed - (y[AT.ammonia] ?? 0);
    for (let round = 0; round < 40; round++) {
      const h = Math.exp(-LN10 * ph);
      const toLactic = 1 / (KA_LACTIC + h);
      const toAcetic = 1 / (KA_ACETIC + h);
      const toButyric = 1 / (KA_BUTYRIC + h);
      const toCarbonic = 1 / (KA_CARBONIC + h);
      const surplus =
        lactic * toLactic +
        acetic * toAcetic +
        butyric * toButyric +
        buffer * ph -
        alkalinity * h * toCarbonic -
        h +
        constant;
      const slope =
        LN10 *
          h *
          (lactic * toLactic * toLactic +
            acetic * toAcetic * toAcetic +
            butyric * toButyric * toButyric +
            alkalinity * KA_CARBONIC * toCarbonic * toCarbonic +
            1) +
        buffer;
      let step = surplus / slope;
      if (step > 1) step = 1;
      else if (step < -1) step = -1;
      ph -= step;
      if (ph < 2.2) ph = 2.2;
      else if (ph > 9) ph = 9;
      if (step < 1e-7 && step > -1e-7) break;
    }
    return ph;
  };
}
