// Holds a figure of the tables to what a publication prints: each end that is given, to 4.5 %, which no figure that is
// wrong by a tenth can pass. Nothing here knows what the table says.

import { expect } from 'vitest';
import { type Figures, figures, material, sugarRow } from '#engine/tables/index.ts';

/** The numbers that a publication gives for one figure; an end it does not give is not asked about. */
export interface Given {
  readonly low?: number | undefined;
  readonly likely?: number | undefined;
  readonly high?: number | undefined;
}

/** Rounding of the table and of the publication together. */
const WITHIN = 0.045;

/** Figures of one id of a table: `materials`, `sugars`, or a long table by its name. */
function figuresOf(table: string, id: string): Figures {
  const found =
    table === 'materials' ? material(id)?.figures : table === 'sugars' ? sugarRow(id)?.figures : figures(table).get(id);
  if (found === undefined) throw new Error(`${table} has no ${id}`);
  return found;
}

/** Fails, by name, where an end of the figure is not what is given. */
export function hold(table: string, id: string, quantity: string, given: Given): void {
  const figure = figuresOf(table, id)[quantity];
  if (figure === undefined) throw new Error(`${table} has no ${quantity} of ${id}`);
  for (const end of ['low', 'likely', 'high'] as const) {
    const wanted = given[end];
    if (wanted === undefined) continue;
    const name = `${id} ${quantity}, ${end}: ${figure[end]} for ${wanted}`;
    expect(Math.abs(figure[end] - wanted), name).toBeLessThanOrEqual(WITHIN * Math.abs(wanted));
  }
}

/** A band about one number, so wide each way. */
export const about = (likely: number, share: number): Given => ({
  low: likely * (1 - share),
  likely,
  high: likely * (1 + share),
});

/** A range of which the middle is the likely value. */
export const between = (low: number, high: number): Given => ({ low, likely: (low + high) / 2, high });

/** A number of a row, or nothing where the publication has none. */
export function given(row: Readonly<Record<string, string>>, column: string): number | undefined {
  const text = row[column];
  return text === undefined || text === '' ? undefined : Number(text);
}
