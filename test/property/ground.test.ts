// The ground's sums, whatever is given: nothing gives more than it brought, beds add up to the plot, water changes
// nothing, and what is missing and what is too much never stand together.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { panPercent, releasedFraction } from '#engine/ground/available.ts';
import { cropIds } from '#engine/ground/crop-names.ts';
import { cropOf } from '#engine/ground/crops.ts';
import { type DegreeDayWay, degreeDays } from '#engine/ground/degree-days.ts';
import { bedLedger, type LedgerBed, plotLedger } from '#engine/ground/ledger.ts';
import { takenUpFraction } from '#engine/ground/need.ts';
import { freeNitrogenG, matterSupply, pourSupply, productSupply, type Supply } from '#engine/ground/supply.ts';
import { point, type Range } from '#engine/quantity/range.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { materials } from '#engine/tables/index.ts';
import { ledger } from '#tasks/ledger.ts';

const SEED = 20260634;
const run = { seed: SEED, numRuns: 300 };
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const day = fc.integer({ min: 0, max: 179 });
const bandOf = (max: number) =>
  fc.tuple(within(0, max), within(0, max), within(0, max)).map((ends): Range => {
    const [low = 0, likely = 0, high = 0] = ends.toSorted((a, b) => a - b);
    return { low, likely, high };
  });

const matter = fc
  .record({
    id: fc.constantFrom(...materials.map(({ id }) => id)),
    massKg: within(0.1, 500),
    kind: fc.constantFrom('compost', 'mulch', 'solids', 'cover-crop'),
    dugIn: fc.boolean(),
    day,
  })
  .map(({ id, massKg, ...rest }): Supply => matterSupply({ ...rest, part: resolvePart({ material: id, massKg }) }));
const pour = fc.record({ litres: bandOf(50), n: bandOf(5), k: bandOf(10), day }).map(
  ({ litres, n, k, day: on }): Supply =>
    pourSupply({
      what: 'a peg',
      day: on,
      concentrateL: litres,
      liquid: { gPerL: { n, k }, ceilingGPerL: { n: n.high * 1.5, k: k.high * 1.5 } },
    }),
);
const product = fc
  .record({
    massKg: within(0.01, 20),
    nPercent: within(0, 50),
    p2o5Percent: within(0, 50),
    k2oPercent: within(0, 50),
    release: fc.constantFrom('at-once', 'slow'),
    day,
  })
  .map((told): Supply => productSupply({ ...told, name: 'a feed' }));
const supply = fc.oneof(matter, pour, product);
const warmth = (fromDay: number, toDay: number) => ({
  low: 10 * (toDay - fromDay),
  likely: 15 * (toDay - fromDay),
  high: 20 * (toDay - fromDay),
});
const season = { fromDay: 0, toDay: 180 };
const bed = fc
  .record({
    areaM2: within(0.5, 100),
    crop: fc.constantFrom(...cropIds),
    organicMatterPercent: fc.option(within(0, 12), { nil: undefined }),
    supplies: fc.array(supply, { maxLength: 5 }),
  })
  .map(({ areaM2, crop, organicMatterPercent, supplies }): LedgerBed => {
    const found = cropOf(crop);
    return { name: crop, areaM2, crops: found === undefined ? [] : [found], soil: { organicMatterPercent }, supplies };
  });

describe('an act on a bed', () => {
  it('never sets more nitrogen free than it brought, at either end, at any time', () => {
    fc.assert(
      fc.property(supply, within(0, 20_000), (one, degrees) => {
        const free = freeNitrogenG(one, point(degrees));
        const total = one.totalG.n;
        if (free === undefined || total === undefined) return;
        expect(free.high).toBeLessThanOrEqual(total.high * (1 + 1e-12));
        expect(free.low).toBeLessThanOrEqual(free.likely + 1e-9);
        expect(free.likely).toBeLessThanOrEqual(free.high + 1e-9);
      }),
      run,
    );
  });

  it('lets go of no less as days go by', () => {
    fc.assert(
      fc.property(fc.constantFrom('fresh', 'compost'), within(0, 9000), within(0, 9000), (pace, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(releasedFraction(pace, point(more)).likely).toBeGreaterThanOrEqual(
          releasedFraction(pace, point(less)).likely,
        );
        expect(releasedFraction(pace, point(more)).high).toBeLessThanOrEqual(1);
      }),
      run,
    );
  });

  it('gives no smaller share for more nitrogen in the dry matter', () => {
    fc.assert(
      fc.property(within(1.5, 14), within(1.5, 14), (a, b) => {
        expect(panPercent(Math.max(a, b)).likely).toBeGreaterThanOrEqual(panPercent(Math.min(a, b)).likely - 1e-9);
      }),
      run,
    );
  });
});

describe('the sum of a bed', () => {
  it('never has the liquid pass its ceiling share, nor less than nothing missing or too much', () => {
    fc.assert(
      fc.property(bed, (one) => {
        const found = bedLedger(one, season, warmth);
        for (const element of ['n', 'p', 'k'] as const) {
          const share = found.liquidSharePercent[element];
          const ceiling = found.ceilingSharePercent[element];
          if (share !== undefined && ceiling !== undefined) {
            expect(share.high).toBeLessThanOrEqual(ceiling * (1 + 1e-9) + 1e-12);
          }
          const [missing, excess] = [found.missingG[element], found.excessG[element]];
          expect(missing?.low ?? 0).toBeGreaterThanOrEqual(0);
          expect(excess?.low ?? 0).toBeGreaterThanOrEqual(0);
          expect((missing?.likely ?? 0) * (excess?.likely ?? 0)).toBe(0);
        }
      }),
      run,
    );
  });

  it('has weeks that add up to what was given, as likely', () => {
    fc.assert(
      fc.property(bed, (one) => {
        const found = bedLedger(one, season, warmth);
        const weeks = found.weeks.reduce((total, week) => total + week.givenNG.likely, 0);
        const given = found.givenG.n?.likely ?? 0;
        expect(Math.abs(weeks - given)).toBeLessThan(1e-6 * Math.max(1, Math.abs(given)));
      }),
      run,
    );
  });

  it('adds up over beds to the plot', () => {
    fc.assert(
      fc.property(fc.array(bed, { minLength: 1, maxLength: 6 }), (beds) => {
        const sums = beds.map((one) => bedLedger(one, season, warmth));
        const plot = plotLedger(sums);
        for (const element of ['n', 'p', 'k'] as const) {
          for (const end of ['low', 'likely', 'high'] as const) {
            for (const [whole, each] of [
              [plot.needG, sums.map(({ need }) => need.needG)],
              [plot.givenG, sums.map(({ givenG }) => givenG)],
              [plot.missingG, sums.map(({ missingG }) => missingG)],
              [plot.liquidG, sums.map(({ liquidG }) => liquidG)],
            ] as const) {
              const total = each.reduce((sum, grams) => sum + (grams[element]?.[end] ?? 0), 0);
              expect(Math.abs((whole[element]?.[end] ?? 0) - total)).toBeLessThan(1e-6 * Math.max(1, Math.abs(total)));
            }
          }
        }
      }),
      run,
    );
  });
});

describe('a pour', () => {
  it('brings the same twice as thin with twice the water', () => {
    fc.assert(
      fc.property(within(1, 100), within(1, 500), within(0.01, 5), (pouredL, n, nGPerL) => {
        const asked = (factor: number) => {
          const answer = ledger({
            beds: [{ name: 'A', areaM2: 10, crop: 'kale' }],
            acts: [
              { bed: 'A', kind: 'pour', pouredL: pouredL * factor, ratio: { n: n * factor, reading: 'in' }, nGPerL },
            ],
            from: '2026-04-01',
            to: '2026-04-08',
          });
          if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
          return answer.value.beds[0]?.givenG.n?.likely ?? Number.NaN;
        };
        expect(asked(2)).toBeCloseTo(asked(1), 9);
        expect(asked(1)).toBeCloseTo((pouredL / n) * nGPerL, 9);
      }),
      { ...run, numRuns: 60 },
    );
  });
});

describe('a crop over its season', () => {
  it('takes up no less as days go by, and all of it in the end', () => {
    fc.assert(
      fc.property(fc.constantFrom(...cropIds), within(0, 500), within(0, 500), (id, a, b) => {
        const crop = cropOf(id);
        if (crop === undefined) throw new Error(id);
        expect(takenUpFraction(crop, Math.max(a, b), 180)).toBeGreaterThanOrEqual(
          takenUpFraction(crop, Math.min(a, b), 180),
        );
        expect(takenUpFraction(crop, 1000, 180)).toBeCloseTo(1, 9);
      }),
      run,
    );
  });

  it('has a name, a need and a harvest in the table, each crop of the list', () => {
    expect(cropIds.length).toBeGreaterThanOrEqual(32);
    for (const id of cropIds) {
      const crop = cropOf(id);
      for (const figure of ['yieldKgPerM2', 'nGPerKg', 'pGPerKg', 'kGPerKg', 'nNeedGPerM2'] as const) {
        expect(crop?.[figure], `${id} ${figure}`).toBeDefined();
        expect(crop?.sources[figure], `${id} ${figure}`).toBeDefined();
      }
    }
  });
});

describe('degree days', () => {
  it('are never below nothing and never more than the warmest hour gives, by any way', () => {
    fc.assert(
      fc.property(within(-20, 40), within(0, 25), within(0, 15), (lowC, swing, baseC) => {
        const highC = lowC + swing;
        for (const way of ['mean-then-base', 'base-then-mean', 'single-sine', 'piecewise'] as DegreeDayWay[]) {
          const { degreeDays: found } = degreeDays({ lowC, highC, baseC, way });
          expect(found).toBeGreaterThanOrEqual(-1e-9);
          expect(found).toBeLessThanOrEqual(Math.max(0, highC - baseC) + 1e-9);
        }
      }),
      run,
    );
  });
});
