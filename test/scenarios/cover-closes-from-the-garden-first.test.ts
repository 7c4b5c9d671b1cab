// A shortfall on three beds, closed with what the garden has before anything is bought, and told in sentences that name
// a bed, a material and an amount.

import { describe, expect, it } from 'vitest';
import type { CoverInput, CoverSource } from '#engine/ground/cover/input.ts';
import { type CoverPlan, planCover } from '#engine/ground/cover/plan.ts';
import { mulchFraction, waysOf } from '#engine/ground/cover/ways.ts';
import { point, range, scale } from '#engine/quantity/range.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import { sayBinds, sayCover, sayNotKnown, sayOpen } from '#words/en/cover.ts';
import { sayWays } from '#words/en/scrap-ways.ts';

const solve = await loadSolver();

/** Half water, 1.5 % N of which 5 % is free, 0.35 % P, 1 % K of dry matter. */
const compost: CoverSource = {
  id: 'compost',
  name: 'compost',
  kind: 'compost',
  perKg: { nG: range(0, 0.375, 0.75), nTotalG: 7.5, pG: point(1.75), kG: point(5), saltG: 1 },
  haveKg: 120,
  minutesPerKg: 0.2,
  unit: { one: 'barrow', many: 'barrows', massKg: 40 },
};
/** 82 % water, 3.4 % N, 0.4 % P, 2 % K of dry matter. */
const clippings: CoverSource = {
  id: 'clippings',
  name: 'clippings',
  kind: 'clippings-mulch',
  perKg: { nG: scale(mulchFraction(3.4), 6.12), nTotalG: 6.12, pG: point(0.72), kG: point(3.6), saltG: 0 },
  haveKg: 30,
  minutesPerKg: 0.5,
  mostKgPerM2: 4.5,
  fresh: true,
  unit: { one: 'bucket', many: 'buckets', massKg: 3 },
};
const hornMeal: CoverSource = {
  id: 'horn-meal',
  name: 'horn meal',
  kind: 'bought-organic',
  perKg: { nG: range(70, 80, 90), pG: point(0), kG: point(0), saltG: 0 },
  costPerKg: 4,
  packKg: 1,
};

const beds: CoverInput['beds'] = [
  {
    id: 'G',
    name: 'Gate',
    areaM2: 5.76,
    missingG: { n: range(35, 45, 55), p: point(0), k: point(30) },
    roomG: { p: 30, k: 200 },
    mostSaltG: 500,
  },
  {
    id: 'M',
    name: 'Middle',
    areaM2: 5.76,
    missingG: { n: range(30, 40, 50), p: point(0), k: point(0) },
    roomG: { p: 0, k: 200 },
    mostSaltG: 500,
  },
  { id: 'T', name: 'Tunnel', areaM2: 10, missingG: { n: range(60, 80, 100), p: point(8), k: point(90) } },
];

const sources = [compost, clippings, hornMeal];

function planOf(input: CoverInput): CoverPlan {
  const answer = planCover(input, solve);
  if (!answer.ok) throw new Error(`${answer.stage}: ${answer.why} ${answer.told}`);
  return answer.plan;
}

const KEPT_OFF = /\b(dual|constraint|objective|optim\w*|shadow|infeasible|feasible)\b/i;

/** Each sentence names a bed, a material and an amount. */
function expectPlain(sentences: readonly string[]): void {
  for (const sentence of sentences) {
    expect(sentence).toMatch(/Gate|Middle|Tunnel/);
    expect(sentence).toMatch(/compost|clippings|horn meal/);
    expect(sentence).toMatch(/\d/);
    expect(sentence.match(/[.!?](\s|$)/g)).toHaveLength(1);
    expect(sentence).not.toMatch(KEPT_OFF);
  }
}

describe('three beds short of nitrogen', () => {
  const plan = planOf({ beds, sources, limits: { money: 60, minutes: 600 }, aim: 'least-cost' });

  it('are covered, with horn meal for what the garden cannot bring', () => {
    expect(plan.status).toBe('covered');
    expect(plan.buys.map(({ source }) => source.id)).toEqual(['horn-meal']);
  });

  it('take all clippings before anything is bought, and no clippings or compost where P is full', () => {
    const clippingsKg = plan.uses.reduce((sum, one) => (one.source === clippings ? sum + one.massKg : sum), 0);
    expect(clippingsKg).toBeCloseTo(30, 2);
    const onMiddle = plan.uses.filter(({ bed }) => bed.id === 'M').map(({ source }) => source.id);
    expect(onMiddle).toEqual(['horn-meal']);
  });

  it('cost whole packs, and a range from the rich to the lean figures', () => {
    for (const { massKg, packCount } of plan.buys) expect(massKg).toBe(packCount);
    expect(plan.cost.low).toBeLessThan(plan.cost.likely);
    expect(plan.cost.high).toBeGreaterThan(plan.cost.likely);
  });

  it('are told in sentences of a bed, a material and an amount', () => {
    const said = sayCover(plan);
    expect(said.length).toBeGreaterThan(4);
    expectPlain(said);
  });

  it('are told that the room of the Tunnel is not known', () => {
    expect(sayNotKnown(plan.notKnown).join(' ')).toMatch(/phosphorus Tunnel may still get is not known/);
  });

  it('are told that one more bucket of clippings saves what its nitrogen costs as horn meal', () => {
    // 3 kg × 6.12 g × 36 % = 6.6 g N; horn meal: 4 for 80 g N.
    const bind = plan.binds.find((one) => one.kind === 'stock' && one.source === clippings);
    expect(bind?.kind === 'stock' && bind.oneMore.savedCost).toBeCloseTo((3 * 6.12 * 0.36 * 4) / 80, 2);
  });
});

describe('a bed whose P is full, with compost alone', () => {
  const plan = planOf({ beds: beds.slice(1, 2), sources: [compost], aim: 'least-cost' });

  it('gets none, stays short, and is told what kind of source would close it', () => {
    expect(plan.uses).toEqual([]);
    expect(plan.status).toBe('short');
    const said = [...sayOpen(plan.open), ...sayBinds(plan.binds, plan.uses)];
    expect(said.join(' ')).toMatch(/cannot be closed without a source of nitrogen that brings next to no phosphorus/);
    expect(said).toContain('P is full on Middle: no compost there, 0\u00a0g.');
    expectPlain(said);
  });
});

describe('too little money', () => {
  it('tells what one more coin would do', () => {
    const { packKg: _, ...loose } = hornMeal;
    const plan = planOf({ beds, sources: [compost, clippings, loose], limits: { money: 1 }, aim: 'least-cost' });
    expect(plan.cost.likely).toBeCloseTo(1, 4);
    const said = sayCover(plan);
    // A coin buys 250 g of horn meal at 4 a kilogram, with 20 g of nitrogen.
    expect(said.join(' ')).toMatch(/one coin more would bring 20\u00a0g more of nitrogen/);
    expectPlain(said);
  });

  it('is never passed by whole packs: two are bought where three would be wanted', () => {
    // 45 + 40 + 80 g of nitrogen at 80 g a kilogram: 2.06 kg.
    const plan = planOf({ beds, sources: [hornMeal], limits: { money: 10 }, aim: 'least-cost' });
    expect(plan.buys.map(({ packCount, cost }) => [packCount, cost])).toEqual([[2, 8]]);
    const nitrogen = plan.open.filter(({ nutrient }) => nutrient === 'n');
    expect(nitrogen.reduce((sum, { leftG }) => sum + leftG, 0)).toBeCloseTo(165 - 160, 3);
    for (const { hindered } of nitrogen) expect(hindered.map(({ by }) => by)).toEqual([['money']]);
    for (const sentence of sayCover(plan)) expect(sentence).not.toMatch(KEPT_OFF);
  });
});

describe('nothing missing', () => {
  it('says nothing', () => {
    const none = beds.map((bed) => ({ ...bed, missingG: { n: point(0), p: point(0), k: point(0) } }));
    const plan = planOf({ beds: none, sources, aim: 'least-cost' });
    expect(plan.status).toBe('nothing-missing');
    expect(sayCover(plan)).toEqual([]);
  });
});

describe('a solver that fails', () => {
  it('gives no plan of zeros', () => {
    const answer = planCover({ beds, sources, aim: 'least-cost' }, () => ({ status: 'broken', why: 'torn' }));
    expect(answer).toEqual({ ok: false, stage: 'short', why: 'broken', told: 'torn' });
  });
});

describe('ten kilograms of clean clippings', () => {
  const ways = waysOf({
    name: 'clippings',
    massKg: 10,
    nGPerKg: 6.12,
    nPercentDm: 3.4,
    open: ['lawn', 'heap', 'ferment', 'mulch'],
    ferment: { days: 10, finalPh: 3.8, drainedFraction: range(0.6, 0.7, 0.8) },
  });
  const of = (way: string) => ways.ways.find((one) => one.way === way)?.seasonFraction;

  it('bring most nitrogen to a bed as mulch, next fermented, least by the heap, none from the lawn', () => {
    expect(ways.ways.map(({ way }) => way)).toEqual(['mulch', 'ferment', 'heap', 'lawn']);
    // 15 × (3.4 − 1) = 36 %, 15 points either side; 65 % left × 5 % freed = 3.25 %.
    expect(of('mulch')?.likely).toBeCloseTo(0.36, 9);
    expect(of('mulch')?.low).toBeCloseTo(0.21, 9);
    expect(of('heap')?.likely).toBeCloseTo(0.65 * 0.05, 9);
    // 35 % given up in the end × (1 − e^−1) by day 10 × 70 % drained, and the solids through the heap.
    const liquid = 0.35 * (1 - Math.exp(-1)) * 0.7;
    expect(of('ferment')?.likely).toBeCloseTo(liquid + (1 - liquid) * 0.65 * 0.05, 9);
  });

  it('never bring a bed more than they hold', () => {
    for (const { seasonG } of ways.ways) expect(seasonG.high).toBeLessThanOrEqual(ways.holdsG);
  });

  it('are told with grams, reasons and one way to take', () => {
    const said = sayWays(ways);
    expect(said.join(' ')).toMatch(/10\u00a0kg of clippings hold about 61\.2\u00a0g/);
    expect(said.at(-1)).toMatch(/^Lay it on a bed as mulch/);
    for (const sentence of said) expect(sentence).not.toMatch(KEPT_OFF);
  });
});

describe('straw', () => {
  it('ties nitrogen up as mulch, and no way feeds a bed by it', () => {
    const ways = waysOf({
      name: 'straw',
      massKg: 10,
      nGPerKg: 6.2,
      nPercentDm: 0.7,
      open: ['mulch'],
      ferment: { days: 10, finalPh: 3.8, drainedFraction: point(0.7) },
    });
    expect(ways.best).toBeUndefined();
    expect(ways.ways[0]?.reasons).toEqual(['ties-up']);
  });
});
