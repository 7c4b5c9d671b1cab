// Zahlen auf Deutsch: figures and hours with a decimal comma.

import { besideLimit as besideLimitIn } from '../figures.ts';

/** A space that no line breaks at. */
export const NBSP = '\u00a0';

/** A figure with a decimal comma. */
export function figure(value: number, decimals?: number): string {
  if (!Number.isFinite(value)) return 'unbekannt';
  const places = decimals ?? (Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 10 ? 1 : 2);
  const text = value.toFixed(places);
  return (decimals === undefined && places > 0 ? text.replace(/\.?0+$/, '') : text).replace('.', ',');
}
/** A figure with its unit, never broken across lines. */
export const unit = (value: number, name: string, decimals?: number) => figure(value, decimals) + NBSP + name;
/** A figure said beside its limit, or the limit beside the figure: with as many digits as tell the two apart. */
export const besideLimit = (value: number, beside: number, name: string, decimals?: number) =>
  besideLimitIn(value, beside, name, decimals, figure);
/** Hours, one or many. */
export const stunden = (value: number) =>
  unit(value, value === 1 ? 'Stunde' : 'Stunden', Number.isInteger(value) ? 0 : 1);
