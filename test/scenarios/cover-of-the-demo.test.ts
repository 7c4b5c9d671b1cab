// The demo garden's shortfall: what lies there goes before anything is bought.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { DEMO_TODAY, gardenEntries } from '#tasks/demo/garden.ts';
import { plotCover } from '#tasks/plot/cover.ts';
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
});
