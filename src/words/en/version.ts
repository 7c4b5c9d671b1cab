// Which tables and formulas a figure came from, in words. What an update moved is figures-shown.ts.

import type { Version } from '#engine/tables/version.ts';
import { sayDate } from './app.ts';

/** "30 Nov 2026". */
export function versionDate(on: string): string {
  return `${sayDate(on).split(' ').slice(1).join(' ')}\u00a0${on.slice(0, 4)}`;
}

/** "Tables of 30 Nov 2026, 1a2b3c4d; model 3". */
export function madeWith({ tables, model }: Version): string {
  return `Tables of ${versionDate(tables.on)}, ${tables.digest}; model\u00a0${model}`;
}
