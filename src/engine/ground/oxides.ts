// What a label calls phosphate and potash, in elements. A label reads N - P2O5 - K2O; the sums here are in N, P and K.

/** Relative atomic masses. @memory IUPAC, abridged */
const MASS_GPERMOL = { p: 30.974, k: 39.098, o: 15.999 };

/** Share of phosphorus in P2O5. @arithmetic 2 · 30.974 / (2 · 30.974 + 5 · 15.999) */
const P_IN_P2O5 = (2 * MASS_GPERMOL.p) / (2 * MASS_GPERMOL.p + 5 * MASS_GPERMOL.o);
/** Share of potassium in K2O. @arithmetic 2 · 39.098 / (2 · 39.098 + 15.999) */
const K_IN_K2O = (2 * MASS_GPERMOL.k) / (2 * MASS_GPERMOL.k + MASS_GPERMOL.o);

/** Phosphorus in a figure given as phosphate, P = 0.4364 P2O5. @arithmetic @checked worked/ground-units.csv */
export function phosphorusPercent(p2o5Percent: number): number {
  return p2o5Percent * P_IN_P2O5;
}

/** Potassium in a figure given as potash, K = 0.8301 K2O. @arithmetic @checked worked/ground-units.csv */
export function potassiumPercent(k2oPercent: number): number {
  return k2oPercent * K_IN_K2O;
}
