// Conductivity of the undiluted liquid, from the ions it holds. A rough rule: it serves to compare batches
// and to hold back a can that is too salt. A pen in the bottle is better. The can's own is in can/.

import type { Element } from '../pail/recipe.ts';
import { product, type Range, scale, sum } from '../quantity/range.ts';
import { bottleFigure } from './figures.ts';

/** Grams of an ion for one mole of charge (standard atomic weights over charge). @arithmetic */
export const EQUIVALENT_G = { k: 39, n: 14, ca: 20, mg: 12.2 } as const;

/** What of the liquid carries charge, g/L; an element that is not known is absent. */
export type Ions = Readonly<Partial<Record<Exclude<Element, 'p'>, Range>>>;

/**
 * Electrical conductivity of the liquid.
 *
 *   EC = (K/39 + NH4-N/14 + Ca/20 + Mg/12.2) / 10   dS/m, mg/L, 25 % less to 41 % more
 *
 * Sodium is left out, since nobody knows it for a batch: salty scraps read higher. So is every element that
 * is not known: the caller says that the figure is too low. No can is held to it: one that was not measured counts as
 * the saltiest that is published (can/limits.ts).
 * @returns dS/m; undefined when no ion is known
 * @memory rule of thumb and its low end
 * @source wu-koch-pratt-1991 the high end: all of it potassium chloride
 * @checked published/conductivity.csv: potassium chloride; worked/conductivity.csv: lactate and acetate
 */
export function conductivityDsPerM(ions: Ions, ammoniumFraction: Range): Range | undefined {
  const terms: Range[] = [];
  if (ions.k) terms.push(scale(ions.k, 1000 / EQUIVALENT_G.k));
  if (ions.n) terms.push(scale(product([ions.n, ammoniumFraction]), 1000 / EQUIVALENT_G.n));
  if (ions.ca) terms.push(scale(ions.ca, 1000 / EQUIVALENT_G.ca));
  if (ions.mg) terms.push(scale(ions.mg, 1000 / EQUIVALENT_G.mg));
  if (terms.length === 0) return undefined;
  return product([scale(sum(terms), 1 / 10), bottleFigure('conductivity', 'factor')]);
}
