// The workings that the sheets give in the demo season, redone from their own inputs, on days from spring to autumn.

import { describe, expect, it } from 'vitest';
import type { Working } from '#engine/working/working.ts';
import { fold, type Plot } from '#journal/fold.ts';
import { DEMO_FIRST_DAY, DEMO_LAST_DAY, DEMO_TODAY, gardenEntries } from '#tasks/demo/garden.ts';
import { plotCover } from '#tasks/plot/cover.ts';
import { explainFill, type FillAsk, fillOffers } from '#tasks/plot/fill.ts';
import { explainPlotLedger } from '#tasks/plot/ledger.ts';
import { liquidsOf } from '#tasks/plot/liquid.ts';
import { standingPegs } from '#tasks/plot/peg.ts';
import { explainPeg } from '#tasks/plot/peg-working.ts';
import { pickList } from '#tasks/plot/pick.ts';
import { pourCard } from '#tasks/plot/pour.ts';
import { readBeanTest } from '#tasks/plot/slips.ts';
import { explainStraining } from '#tasks/plot/straining.ts';
import { typedChoice } from '#tasks/plot/strength.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import type { Redo } from './by-hand.ts';
import { faultsOf } from './compare.ts';
import { beans, cover, sourLine, strength, wait } from './rooms/beside.ts';
import { canRoom } from './rooms/can.ts';
import { fitRoom } from './rooms/fit.ts';
import { ledgerRoom } from './rooms/ledger.ts';
import { strainRoom } from './rooms/strain.ts';

const DAYS = [
  '2026-05-10',
  '2026-06-03',
  '2026-06-12',
  '2026-06-20',
  DEMO_TODAY,
  '2026-07-05',
  '2026-08-10',
  DEMO_LAST_DAY,
];
const solve = await loadSolver();
const plots = new Map(DAYS.map((on) => [on, fold(gardenEntries(on))]));

function held(gather: (plot: Plot, now: string) => readonly Working[], room: readonly Redo[]): void {
  const workings = [...plots].flatMap(([on, plot]) => gather(plot, `${on}T11:00`));
  expect(faultsOf(workings, room)).toEqual([]);
  expect(workings.length).toBeGreaterThan(0);
}

describe('every working of the demo season leads from its inputs to its result', () => {
  it('at the pegs', () => {
    held((plot, now) => standingPegs(plot, now).flatMap(explainPeg), sourLine);
  });

  it('of what the beds got', () => {
    held((plot, now) => explainPlotLedger({ plot, from: DEMO_FIRST_DAY, to: now.slice(0, 10) }), ledgerRoom);
  });

  it('on pick day', () => {
    held((plot, now) => pickList({ plot, now }).flatMap(({ working }) => working ?? []), wait);
  });

  it('on the can cards, matched and typed', () => {
    const choices = [undefined, typedChoice({ n: 2000, reading: 'in' })];
    const cards = (plot: Plot, now: string) =>
      liquidsOf(plot, now).flatMap(({ id: liquid }) =>
        [...plot.beds.keys()].flatMap((bed) =>
          choices.flatMap(
            (choice) => pourCard({ plot, now, bed, liquid, canL: 9, ...(choice && { strength: choice }) }).workings,
          ),
        ),
      );
    held(cards, [...canRoom, ...strength]);
  });

  it('at straining', () => {
    const told = { drainedL: 7, solidsKg: 2.5, acidity: { ph: 3.9, by: 'meter' } } as const;
    held(
      (plot, now) => standingPegs(plot, now).flatMap(({ batch }) => explainStraining({ plot, batch, now, ...told })),
      strainRoom,
    );
  });

  it('at filling', () => {
    const ask = (plot: Plot, now: string): FillAsk => ({
      vessel: { volumeL: 12, gasRoomFraction: 0.25 },
      parts: fillOffers({ plot, now }).lots.map(({ id }) => ({ lot: id, plannedKg: 0.8 })),
      water: { plannedL: 5, alkalinityMeqPerL: 4.2 },
      sugar: { product: 'cane-molasses', plannedKg: 0.2 },
    });
    held((plot, now) => explainFill(plot, ask(plot, now)), fitRoom);
  });

  it('of the cover, with something to buy', () => {
    const perKg = {
      nG: { low: 70, likely: 80, high: 90 },
      pG: { low: 0, likely: 0, high: 0 },
      kG: { low: 0, likely: 0, high: 0 },
    };
    const shop = [{ id: 'meal', name: 'horn meal', kind: 'bought-organic', perKg, costPerKg: 4 }] as const;
    const plot = fold(gardenEntries());
    const answer = plotCover({ plot, from: '2026-04-01', to: DEMO_TODAY, shop, solve });
    expect(faultsOf(answer.workings, cover)).toEqual([]);
    expect(answer.workings.some(({ figure }) => figure === 'cover.cost')).toBe(true);
  });

  it('of a bean test', () => {
    const pots = (germinatedCount: number, deformedCount: number) => ({
      potCount: 3,
      sownCount: 9,
      germinatedCount,
      deformedCount,
    });
    const ends = [0, 1, 5, 9].flatMap((up) => [0, 1, up].filter((bent) => bent <= up).map((bent) => pots(up, bent)));
    const workings = ends.flatMap((test) =>
      ends.flatMap(
        (control) =>
          readBeanTest({ lot: 'lot', sownOn: '2026-04-10', readOn: '2026-05-03', leavesCount: 3, test, control })
            .workings,
      ),
    );
    expect(faultsOf(workings, beans)).toEqual([]);
  });
});
