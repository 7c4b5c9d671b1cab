// Figures of sheets beside those of the engine: what differs is gathered as a sentence, so that one run names all of it.

import type { Range } from '#engine/quantity/range.ts';
import { alike } from '../grower.ts';

type Figure = number | string | boolean | null | undefined;

/** What differs on one day of a season. */
export class Differences {
  readonly found: string[] = [];

  /** One figure or word. */
  same(what: string, shown: Figure, engine: Figure): void {
    const equal = typeof shown === 'number' && typeof engine === 'number' ? alike(shown, engine) : shown === engine;
    if (!equal) this.found.push(`${what}: shown ${shown}, the engine says ${engine}`);
  }

  /** A figure with its range. */
  range(what: string, shown: Range | null | undefined, engine: Range | null | undefined): void {
    for (const end of ['low', 'likely', 'high'] as const) this.same(`${what}, ${end}`, shown?.[end], engine?.[end]);
  }

  /** A list in its order. */
  list(what: string, shown: readonly Figure[], engine: readonly Figure[]): void {
    this.same(`${what}, how many`, shown.length, engine.length);
    shown.forEach((one, i) => {
      this.same(`${what} ${i + 1}`, one, engine[i]);
    });
  }
}
