// The demo garden's shortfall: what lies there goes before anything is bought.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_TODAY, gardenEntries } from '#tasks/demo/garden.ts';
import { coverInput, plotCover } from '#tasks/plot/cover.ts';
import { loadSolver } from '#tasks/solver/highs.ts';

const KEPT_OFF = /dual|constraint|objective|optim|shadow|feasible/i;

const solve = await loadSolver();

describe('the cover of the demo garden', () => {
  const ask = { plot: fold(gardenEntries()), from: '2026-04-01', to: DEMO_TODAY, solve };
  const perKg = {
    nG: { low: 80, likely: 80, high: 80 },
    pG: { low: 0, likely: 0, high: 0 },
    kG: { low: 0, likely: 0, high: 0 },
  };
  const meal = { id: 'meal', name: 'horn meal', kind: 'bought-organic', perKg, costPerKg: 4 } as const;

  it('buys nothing where no price was told, and says what stays open', () => {
    const { plan, says } = plotCover(ask);
    expect(plan?.buys).toEqual([]);
    expect(says.open.length).toBeGreaterThan(0);
  });

  it('takes all clippings that may go before horn meal is bought, in sentences with amounts', () => {
    const { plan, says } = plotCover({ ...ask, shop: [meal] });
    const bare = plotCover({ ...ask, plot: { ...ask.plot, lots: new Map() }, shop: [meal] });
    expect(plan?.cost.likely).toBeLessThanOrEqual((bare.plan?.cost.likely ?? Number.NaN) + 1e-6);
    // To the gram: 4.3 kg of clippings may go and lie there still; 9 kg more are set aside and stay where they are.
    const clippingsKg = (plan?.uses ?? [])
      .filter(({ source }) => source.kind === 'clippings-mulch')
      .reduce((sum, { massKg }) => sum + massKg, 0);
    expect(clippingsKg).toBeCloseTo(4.3, 3);
    expect(says.buys.join(' ')).toMatch(/horn meal for Gate/);
    for (const sentence of [...says.uses, ...says.buys]) {
      expect(sentence).toMatch(/\d/);
      expect(sentence).not.toMatch(KEPT_OFF);
    }
  });

  it('takes what is still to come before anything is bought, and less stays open', () => {
    const expected = [
      { id: 'expected-0', material: 'grass-clippings-fresh', massKg: 30 },
      { id: 'expected-1', material: 'legume-tops', massKg: 20 },
    ];
    const [without, with2] = [plotCover(ask), plotCover({ ...ask, expected })];
    const openG = ({ plan }: typeof without) =>
      (plan?.balance ?? []).reduce((sum, { nutrient, leftG }) => sum + (nutrient === 'n' ? leftG : 0), 0);
    expect(openG(with2)).toBeLessThan(openG(without) - 1);
    expect(with2.says.uses.join(' ')).toMatch(/of grass clippings, fresh, still to come/);
    expect(with2.says.uses.join(' ')).toMatch(/of legume tops .*, still to come/);
    const bought = ({ plan }: typeof without) => plan?.cost.likely ?? Number.NaN;
    expect(bought(plotCover({ ...ask, expected, shop: [meal] }))).toBeLessThan(
      bought(plotCover({ ...ask, shop: [meal] })),
    );
  });

  it('keeps within the time there is, and says what one minute more would do', () => {
    const ample = plotCover({ ...ask, bucketMinutes: 10 });
    // A bucket of clippings, 2.5 kg, takes ten minutes: all 4.3 kg take 17 and more with the rest.
    const { plan, says } = plotCover({ ...ask, bucketMinutes: 10, limits: { minutes: 5 } });
    const minutes = (of: typeof plan) =>
      (of?.uses ?? []).reduce((sum, { source, massKg }) => sum + massKg * (source.minutesPerKg ?? 0), 0);
    expect(minutes(ample.plan)).toBeGreaterThan(17);
    expect(minutes(plan)).toBeLessThanOrEqual(5 + 1e-6);
    expect(says.binds.join(' ')).toMatch(/All the time, 5.minutes, goes into .*: one minute more would bring/);
  });

  it('puts nothing raw on top of a salad: solids keep off beds that are eaten raw, and spoilt ones out of the plan', () => {
    const input = coverInput(ask);
    const raw = new Set(['Gate', 'Shed', 'Tunnel', 'Roots', 'Pots']);
    for (const source of input.sources.filter(({ kind }) => kind === 'solids'))
      expect(new Set(source.offBeds)).toEqual(raw);
    const late = coverInput({ ...ask, to: '2026-10-30' });
    expect(late.sources.filter(({ kind }) => kind === 'solids')).toEqual([]);
  });

  it('works out each figure in the open: brought is the sum over materials of kilograms times grams', () => {
    const { workings } = plotCover({ ...ask, shop: [meal] });
    expect(workings.length).toBeGreaterThan(3);
    for (const { inputs, value, unit } of workings.filter((one) => one.unit === 'g')) {
      const likely = (of: (typeof inputs)[number]['value']) => (typeof of === 'object' ? of.likely : Number(of));
      const pairs = inputs.filter((one) => one.unit === 'kg' || one.unit === 'g/kg');
      let sum = 0;
      for (let i = 0; i < pairs.length; i += 2)
        sum += likely(pairs[i]?.value ?? Number.NaN) * likely(pairs[i + 1]?.value ?? Number.NaN);
      expect(sum).toBeCloseTo(likely(value), 6);
      expect(unit).toBe('g');
    }
  });
});
