// The overview, the shelf and the can card say the same of a round, on every day of some seasons.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lineView } from '#tasks/plot/line.ts';
import { liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { shelf } from '#tasks/plot/shelf.ts';
import { type Day, seasons } from './season.ts';
import { Differences } from './shown/difference.ts';

describe('an overview beside the can card and the shelf', () => {
  const days = fc.sample(seasons, { seed: 11, numRuns: 24 }).flatMap((season) => season.days);
  const differing = (compare: (day: Day, differ: Differences) => void): readonly string[] =>
    days.flatMap((day) => {
      const differ = new Differences();
      compare(day, differ);
      return differ.found;
    });
  /** The can's own round; undefined where there is nothing to pour. */
  const roundOf = ({ plot, now }: Day) => {
    const liquid = usualLiquid(liquidsOf(plot, now))?.id;
    return liquid === undefined ? undefined : roundOver({ plot, now, liquid });
  };
  const litres = differing((day, differ) => {
    const round = roundOf(day);
    if (round) differ.same('litres of a round', lineView(day).round.wantedL, round.totalL);
  });
  const tooSoon = differing((day, differ) => {
    const { on } = lineView(day).round;
    if (on === undefined || on <= day.now.slice(0, 10)) return;
    for (const { name, verdict, fedDays } of roundOf(day)?.beds ?? [])
      if (fedDays !== undefined) differ.same(`${name}, fed ${fedDays} days ago, yes`, verdict === 'yes', false);
  });
  const tooMany = differing(({ plot, now }, differ) => {
    const { bottles, round } = shelf({ plot, now });
    if (round?.rounds === undefined) return;
    const mostDays = Math.max(0, ...bottles.map(({ useFirst }) => useFirst.daysLeft));
    const fitting = Math.floor(mostDays / round.everyDays) + 1;
    differ.same(`${round.rounds} rounds within ${mostDays} days`, round.rounds <= fitting, true);
  });

  it('the overview counts the litres of the beds that the can feeds', () => {
    expect(litres).toEqual([]);
  });
  it('a bed is not fed before the day of the round that the overview names', () => {
    expect(tooSoon).toEqual([]);
  });
  it('covers on the shelf no more rounds than fall before its last date', () => {
    expect(tooMany).toEqual([]);
  });
});
