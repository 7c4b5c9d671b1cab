// Acids, carbonate and a linear plant buffer: the charge balance every room uses, from the pail's sugar
// window to the pH of a diluted can. Concentrations are mol (or eq) per litre of the liquid in question.

/** pKa at 25 °C; they move by less than 0.02 between 10 and 30 °C. @memory */
export const PKA = { lactic: 3.86, acetic: 4.76, carbonic: 6.35 } as const;

/** Dissociation constants, 10^−pKa. */
const KA = { lactic: 10 ** -PKA.lactic, acetic: 10 ** -PKA.acetic, carbonic: 10 ** -PKA.carbonic } as const;

/** Molar masses, g/mol (sums of standard atomic weights). */
export const MOLAR_MASS_G = { lactic: 90.08, acetic: 60.05, hexose: 180.16 } as const;

/** Share of a weak acid that has given its proton away at this pH, 1/(1+10^(pKa−pH)). @arithmetic Henderson-Hasselbalch */
export function dissociatedFraction(at: { readonly ph: number; readonly pka: number }): number {
  return 1 / (1 + 10 ** (at.pka - at.ph));
}

/** Share of bicarbonate that has become CO2 at this pH, f(p) = 1/(1+10^(p−6.35)). @arithmetic Henderson-Hasselbalch */
export function carbonateLostFraction(ph: number): number {
  return 1 / (1 + 10 ** (ph - PKA.carbonic));
}

/** What a litre of liquid holds, for the charge balance. */
export interface ChargeBalance {
  readonly lacticMolPerL: number;
  readonly aceticMolPerL: number;
  /** Ammonia and any other base already there, net, eq/L (may be negative: a surplus of strong acid). */
  readonly baseEqPerL: number;
  /** Linear plant buffer B, eq/L per pH unit. */
  readonly bufferEqPerLPerPh: number;
  /** pH of the plant matter before any acid. */
  readonly startPh: number;
  /** Alkalinity of the water, eq/L, and the water's own pH. */
  readonly alkalinityEqPerL: number;
  readonly waterPh: number;
}

/**
 * Surplus of acid at a trial pH; strictly increasing in pH, zero at the pH of the liquid.
 *
 *   F(p) = L·aL(p) + A·aA(p) − N − B(p0 − p) − K[f(p) − f(pw)] − (10^−p − 10^−p0)
 *
 * @arithmetic electroneutrality with a linear buffer
 */
export function chargeSurplus(liquid: ChargeBalance, ph: number): number {
  return surplusAt(liquid)(ph);
}

/** F(p) with the terms that do not change with p worked out once; one power of ten a call serves all acids. */
function surplusAt(liquid: ChargeBalance): (ph: number) => number {
  const { lacticMolPerL, aceticMolPerL, bufferEqPerLPerPh, startPh, alkalinityEqPerL } = liquid;
  const fixed = alkalinityEqPerL * carbonateLostFraction(liquid.waterPh) + 10 ** -startPh - liquid.baseEqPerL;
  return (ph) => {
    const hydrogen = 10 ** -ph;
    return (
      (lacticMolPerL * KA.lactic) / (KA.lactic + hydrogen) +
      (aceticMolPerL * KA.acetic) / (KA.acetic + hydrogen) -
      bufferEqPerLPerPh * (startPh - ph) -
      (alkalinityEqPerL * hydrogen) / (KA.carbonic + hydrogen) -
      hydrogen +
      fixed
    );
  };
}

/**
 * pH at which the charges balance, by bisection on [2.2, 9] to 1e-6.
 * @range a liquid more acid than 2.2 or more alkaline than 9 answers that end
 * @arithmetic bisection of chargeSurplus
 * @checked worked/charge-balance.csv
 */
export function balancePh(liquid: ChargeBalance): number {
  let low = 2.2;
  let high = 9;
  const surplus = surplusAt(liquid);
  if (!(surplus(low) < 0)) return low;
  if (!(surplus(high) > 0)) return high;
  while (high - low > 1e-6) {
    const middle = (low + high) / 2;
    if (surplus(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
