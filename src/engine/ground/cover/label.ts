// The analysis on a bag, N-P2O5-K2O, as grams of the elements in a kilogram. A label tells phosphorus and potassium as
// oxides; nothing else in the engine does.

/** Mass of phosphorus in one mass of P2O5: 2 · 30.974 / 141.943. */
export const P_IN_P2O5 = 0.4364;
/** Mass of potassium in one mass of K2O: 2 · 39.098 / 94.195. */
export const K_IN_K2O = 0.8301;

/** The three numbers of a label, per cent of the product. */
export interface LabelAnalysis {
  readonly nPercent: number;
  readonly p2o5Percent: number;
  readonly k2oPercent: number;
}

/**
 * What one kilogram holds, by its label.
 *
 *   P = 10 · P2O5 % · 0.4364,  K = 10 · K2O % · 0.8301
 *
 * All the nitrogen; how much of it a season frees is another matter (source.ts).
 * @range per cents 0-100
 * @arithmetic atomic masses
 */
export function elementsOfLabel(label: LabelAnalysis): {
  readonly nTotalGPerKg: number;
  readonly pGPerKg: number;
  readonly kGPerKg: number;
} {
  return {
    nTotalGPerKg: 10 * label.nPercent,
    pGPerKg: 10 * label.p2o5Percent * P_IN_P2O5,
    kGPerKg: 10 * label.k2oPercent * K_IN_K2O,
  };
}
