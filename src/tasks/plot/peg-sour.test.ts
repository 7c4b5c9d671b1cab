import { describe, expect, it } from 'vitest';
import { fold, type Plot } from '#journal/fold.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { DEMO_PLOT, gardenEntries } from '../demo/garden.ts';
import { openSour } from '../sour.ts';
import { pegView } from './peg.ts';
import { pegSour } from './peg-sour.ts';

function asked(plot: Plot, peg: number, now: string) {
  const batch = [...plot.batches.values()].find((one) => one.peg === peg);
  if (batch === undefined) throw new Error(`no peg ${peg}`);
  const sour = pegSour({ plot, batch, view: pegView({ plot, batch, now }) });
  return { sour, ask: sour.ok ? sour.ask : undefined };
}

const garden = (on: string) => fold(gardenEntries(on), DEMO_PLOT);

describe('the question about a peg of the demo garden', () => {
  it('has what was weighed into peg 14, its starter, its looks and the straining, and can be opened', () => {
    const { ask } = asked(garden('2026-06-26'), 14, '2026-06-26T11:00');
    expect(ask?.plants.map(({ material, massKg }) => [material, massKg])).toEqual([
      ['grass-clippings-fresh', 2.1],
      ['cabbage-leaves', 0.7],
      ['kitchen-trimmings', 0.4],
    ]);
    expect(ask).toMatchObject({
      vessel: { volumeL: 12, gasRoom: 0.25 },
      water: { volumeL: 5.2 },
      sugar: { product: 'white-sugar', massKg: 0.15 },
      starterL: 0.2,
      lid: 'loose',
    });
    // 212 mg/L as CaCO3 at 50.04 mg per milliequivalent
    expect(ask?.water.alkalinityMeqPerL).toBeCloseTo(212 / 50.04, 2);
    expect(ask?.looks?.map(({ ph }) => ph)).toEqual([6.3, 5.2, 4.5, 4.1, 3.8, 3.7, 3.7]);
    // 20 °C from the filling, 22 on day 2, 20 on day 4, 18 on day 7, 20 on day 9, the shelf's 18 from day 10
    expect(ask?.temperatureC).toEqual([
      [0, 20, 20],
      [2, 22, 22],
      [4, 20, 20],
      [7, 18, 18],
      [9, 20, 20],
      [10, 18, 18],
    ]);
    expect(openSour(ask)).toMatchObject({ ok: true });
  });
  it('has peg 15 at the 11 °C of its wall, told once however often it was read, without a starter', () => {
    const { ask } = asked(garden('2026-06-26'), 15, '2026-06-26T11:00');
    expect(ask).toMatchObject({
      vessel: { volumeL: 30 },
      water: { volumeL: 14 },
      sugar: { massKg: 0.35 },
      starterL: 0,
    });
    expect(ask?.temperatureC).toEqual([[0, 11, 11]]);
    // Filled on 11 June at half past ten: 15 days and half an hour, counted in steps of six hours.
    expect(ask?.today).toBe(15);
    expect(openSour(ask)).toMatchObject({ ok: true });
  });
  it('has peg 16 under its tight lid without sugar, foul words and all', () => {
    const { ask } = asked(garden('2026-05-29'), 16, '2026-05-29T11:00');
    expect(ask).toMatchObject({ vessel: { volumeL: 60 }, lid: 'tight', sugar: { massKg: 0 } });
    expect(ask?.looks?.map(({ smell }) => smell)).toEqual(['grassy', undefined, 'egg', 'sewage']);
    expect(openSour(ask)).toMatchObject({ ok: true });
  });
  it('is not asked once all of it was tipped', () => {
    expect(asked(garden('2026-06-01'), 16, '2026-06-01T11:00').sour).toEqual({ ok: false, why: 'nothing-in-it' });
  });
});

describe('what was done to a batch', () => {
  function plotOf(
    more: (rake: ReturnType<typeof recorder>, batch: string) => readonly unknown[],
    temperatureC?: number,
  ) {
    const rake = recorder();
    const filled = rake.did('peg.filled', '2026-06-01T10:00', {
      peg: 3,
      parts: [{ material: 'grass-clippings-fresh', mass: kg(2) }],
      water: [{ volume: litres(6) }],
      ...(temperatureC !== undefined && { temperatureC }),
    });
    return fold([filled, ...(more(rake, filled.id) as readonly (typeof filled)[])]);
  }
  it('is in the question: a spill takes an even share, a top-up adds, and is said', () => {
    // 2 kg and 6 L, a quarter of it spilled, then half a kilogram put in.
    const plot = plotOf(
      (rake, batch) => [
        rake.did('peg.spilled', '2026-06-02T10:00', { batch, lost: kg(2) }),
        rake.did('peg.toppedUp', '2026-06-03T10:00', {
          batch,
          parts: [{ material: 'grass-clippings-fresh', mass: kg(0.5) }],
        }),
      ],
      15,
    );
    const { sour, ask } = asked(plot, 3, '2026-06-04T10:00');
    expect(ask?.plants.map(({ massKg }) => massKg)).toEqual([2]);
    expect(ask?.water.volumeL).toBeCloseTo(4.5, 9);
    expect(sour).toMatchObject({ ok: true, changedMix: true, vesselTold: false });
  });
  it('rests on the weather where nobody measured, and on nothing where no weather was typed', () => {
    const cold = plotOf((rake) => [
      rake.did('weather.typed', '2026-06-02', {
        what: 'forecast',
        days: [
          { on: '2026-06-02', lowC: 1, highC: 2 },
          { on: '2026-06-03', lowC: 8, highC: 16 },
        ],
      }),
      rake.did('weather.typed', '2026-06-03', { what: 'seen', days: [{ on: '2026-06-02', lowC: 9, highC: 15 }] }),
    ]);
    expect(asked(cold, 3, '2026-06-04T10:00').ask?.temperatureC).toEqual([
      [1, 9, 15],
      [2, 8, 16],
    ]);
    expect(asked(cold, 3, '2026-06-04T10:00').sour).toMatchObject({ warmthFrom: 'weather' });
    const untold = plotOf((rake, batch) => [rake.did('peg.looked', '2026-06-02', { batch, acidity: meter(6) })]);
    expect(asked(untold, 3, '2026-06-04T10:00').sour).toEqual({ ok: false, why: 'no-warmth' });
  });
  it('never asks for plants where only water was put in', () => {
    const rake = recorder();
    const plot = fold([
      rake.did('peg.filled', '2026-06-01T10:00', { peg: 3, water: [{ volume: litres(6) }], temperatureC: 15 }),
    ]);
    expect(asked(plot, 3, '2026-06-02T10:00').sour).toEqual({ ok: false, why: 'no-plants' });
  });
});
