// The kinds of lid and what each lets through: gas out, air in, insects in. The model takes the openness; what is
// said of each kind stands in words.

import type { Range } from '../../quantity/range.ts';
import { gasFigure } from './figures.ts';

/**
 * tight = closed, no way out · vent = closed, with a valve or water trap · loose = laid on · cloth = a cloth tied
 * over · none = open, and also what is entered where a cloth or nothing is meant.
 */
export const LIDS = ['tight', 'vent', 'loose', 'cloth', 'none'] as const;
export type LidKind = (typeof LIDS)[number];

/** What a lid of one kind lets through. */
export interface LidMeaning {
  readonly letsGasOut: boolean;
  /** How freely air gets at the surface, 0 airtight to 1 open. */
  readonly opennessFraction: Range;
  /** False also where it may or may not. */
  readonly keepsInsectsOut: boolean;
}

const LETS_GAS_OUT: Readonly<Record<LidKind, boolean>> = {
  tight: false,
  vent: true,
  loose: true,
  cloth: true,
  none: true,
};
const KEEPS_INSECTS_OUT: Readonly<Record<LidKind, boolean>> = {
  tight: true,
  vent: true,
  loose: false,
  cloth: true,
  none: false,
};

/** What a lid of this kind means. @memory how much air comes in is a guess of data/gas.csv, the rest common practice */
export function lidMeaning(lid: LidKind): LidMeaning {
  const { low, likely, high } = gasFigure(`lid-${lid}`, 'opennessFraction');
  return {
    letsGasOut: LETS_GAS_OUT[lid],
    opennessFraction: { low, likely, high },
    keepsInsectsOut: KEEPS_INSECTS_OUT[lid],
  };
}
