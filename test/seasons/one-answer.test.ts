// One question, one answer: on every day of the demo season and of drawn seasons, the overview, the can card, the shelf, the
// tags, the card for the wall, pick day and the sheet for the shed are asked of the same beds and the same feed.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold, type Plot } from '#journal/fold.ts';
import { momentOf } from '#journal/moment.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { onDay } from '#tasks/plot/dates.ts';
import { lineView } from '#tasks/plot/line.ts';
import { liquidsOf, usualLiquid } from '#tasks/plot/liquid.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { canWallCard, shedSheet, tagsOf } from '#tasks/plot/prints.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { shelf } from '#tasks/plot/shelf.ts';
import { seasons } from './season.ts';
import { Differences } from './shown/difference.ts';

interface Asked {
  readonly plot: Plot;
  readonly now: string;
}

/** What the overview orders is what the can gives: bed by bed, litre by litre, on the same day. */
function overviewAndCan({ plot, now }: Asked, differ: Differences): void {
  const liquid = usualLiquid(liquidsOf(plot, now))?.id;
  const ask = { plot, now, liquid };
  const { beds, totalL, concentrateL } = roundOver(ask);
  const { round, hands } = lineView({ plot, now });
  differ.same('litres of today', round.wantedL, totalL);
  differ.same(
    'a round among what is to be done',
    hands.some(({ kind }) => kind === 'round'),
    round.due,
  );
  if (round.due) {
    differ.same('litres of a round that is due', round.dueL, totalL);
    differ.same('its concentrate', round.dueConcentrateL, concentrateL);
  }
  const yes = beds.filter(({ verdict }) => verdict === 'yes').map(({ tag, name }) => tag ?? name);
  if (yes.length > 0) differ.list('beds of the round', round.dueBeds, yes);
  for (const bed of beds) {
    const card = pourCard({ ...ask, bed: bed.bed, canL: 10 });
    differ.same(`${bed.name}, the can card`, card.bed?.verdict, bed.verdict);
    const gives = card.barred.length === 0;
    if (liquid !== undefined && bed.verdict === 'yes') differ.same(`${bed.name}, a dose`, gives, true);
    if (bed.verdict === 'never') differ.same(`${bed.name}, a dose`, gives, false);
    if (yes.length === 0 && bed.nextOn !== undefined && round.on !== undefined)
      differ.same(`${bed.name}, not before the round`, bed.nextOn >= round.on, true);
    const lately = bed.reasons.find(({ rule }) => rule === 'bed-fed-lately');
    if (lately && bed.nextOn !== undefined) differ.same(`${bed.name}, waits until`, lately.values.on, bed.nextOn);
  }
}

/** The shelf, the tags and the card for the wall count with the feed and the strength of the can. */
function bottlesAndCan({ plot, now }: Asked, differ: Differences): void {
  const { round } = lineView({ plot, now });
  const onShelf = shelf({ plot, now }).round;
  differ.same('shelf, litres of the next round', onShelf?.dilutedL ?? 0, round.dueL);
  differ.same('shelf, concentrate', onShelf?.concentrateL, onShelf && round.dueConcentrateL);
  const card = canWallCard({ plot, now });
  if (card.ratio) differ.same('wall card, parts of water', card.ratio.n, round.ratio?.n);
  const liquid = usualLiquid(liquidsOf(plot, now));
  for (const tag of tagsOf({ plot, now })) {
    if (tag.of !== 'bottle' || tag.batch !== liquid?.batch || tag.ratio === undefined) continue;
    differ.same('tag, parts of water', tag.ratio.n, round.ratio?.n);
    const onLeaves = roundOver({ plot, now, liquid: liquid.id, way: 'leaf' }).beds;
    for (const bed of onLeaves)
      if (tag.rawBeds.includes(bed.tag ?? bed.name)) differ.same(`${bed.name}, on leaves`, bed.verdict, 'never');
  }
}

/** Pick day and the sheet for the shed give one day; the day after it opens the bed. */
function picking({ plot, now }: Asked, differ: Differences): void {
  const onDoor = shedSheet({ plot, now }).picks;
  for (const { bed, name, answer, tillOn } of pickList({ plot, now })) {
    const door = onDoor.find((one) => one.bed === bed);
    differ.same(`${name}, on the shed sheet`, door?.answer, answer);
    differ.same(`${name}, until`, door?.tillOn, tillOn);
    differ.same(`${name}, a wait has its date`, tillOn !== undefined, answer === 'wait');
  }
}

const compared = (days: Iterable<Asked>): readonly string[] => {
  const found: string[] = [];
  for (const day of days) {
    const differ = new Differences();
    for (const compare of [overviewAndCan, bottlesAndCan, picking]) compare(day, differ);
    found.push(...differ.found.map((one) => `${day.now}: ${one}`));
  }
  return found;
};

function* demoDays(from: string, to: string): Generator<Asked> {
  for (let day = momentOf(from).dateDay; day <= momentOf(to).dateDay; day++) {
    const on = onDay(day);
    yield { plot: fold(gardenEntries(on)), now: `${on}T11:00` };
  }
}

describe('one question, one answer', () => {
  it('on every day of the demo season', { timeout: 180_000 }, () => {
    expect(compared(demoDays('2026-04-01', '2026-10-31'))).toEqual([]);
  });
  it('on 200 plots drawn at random', { timeout: 180_000 }, () => {
    const days = fc.sample(seasons, { seed: 14, numRuns: 60 }).flatMap((season) => season.days);
    expect(days.length).toBeGreaterThan(200);
    expect(compared(days)).toEqual([]);
  });
});
