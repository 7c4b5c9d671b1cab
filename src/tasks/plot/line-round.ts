// The next round over the beds as the overview and the shelf tell it: the beds that the can would feed then, with its
// litres and its concentrate, and how many others wait. Which those are is round.ts.

import type { Ratio } from '#engine/quantity/ratio.ts';
import type { Plot } from '#journal/fold.ts';
import { liquidsOf, usualLiquid } from './liquid.ts';
import { type RoundBed, roundOver } from './round.ts';

export interface Round {
  /** Diluted feed for the beds that may be fed today, as the can sums it. */
  readonly wantedL: number;
  /** The same for the beds of the next round, and the concentrate in it; today's where some may be fed today. */
  readonly dueL: number;
  readonly dueConcentrateL: number | undefined;
  /** Their tags. */
  readonly dueBeds: readonly string[];
  /** Beds that fall due later. */
  readonly later: number;
  /** Beds that wait for more than a day to come: the can says for what. */
  readonly held: number;
  /** As the can mixes it; undefined where there is nothing to pour. */
  readonly ratio: Ratio | undefined;
  /** Undefined while nothing was poured, or where no bed is fed. */
  readonly on: string | undefined;
  readonly due: boolean;
}

/** The next round, poured from what one would take without being asked. @arithmetic sums over the beds of the can's round */
export function roundOf(plot: Plot, now: string): Round {
  const liquid = usualLiquid(liquidsOf(plot, now))?.id;
  const { beds, strength, totalL } = roundOver({ plot, now, liquid });
  const coming = beds.filter(({ nextOn }) => nextOn !== undefined);
  const first = coming.reduce<string | undefined>((least, { nextOn }) => earlier(least, nextOn), undefined);
  const together = coming.filter(({ nextOn }) => nextOn === first);
  const sum = (of: (bed: RoundBed) => number) => together.reduce((total, bed) => total + of(bed), 0);
  const begun = beds.some(({ lastRoundOn }) => lastRoundOn !== undefined);
  return {
    wantedL: totalL,
    dueL: sum(({ portion }) => portion?.totalL ?? 0),
    dueConcentrateL: strength && sum(({ concentrateMl }) => (concentrateMl ?? Number.NaN) / 1000),
    dueBeds: together.map(({ tag, name }) => tag ?? name),
    later: coming.length - together.length,
    held: beds.filter(({ verdict, nextOn }) => verdict === 'hold' && nextOn === undefined).length,
    ratio: strength?.ratio,
    on: begun ? first : undefined,
    due: begun && totalL > 0,
  };
}

function earlier(one: string | undefined, other: string | undefined): string | undefined {
  return one === undefined || (other !== undefined && other < one) ? other : one;
}
