// Laws of any pour: volumes add up, the two readings of a ratio stand as (n + 1) to n, the pH solver undoes a titration
// worked backwards, and no caution falls silent as a danger grows.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cansFor } from '#engine/can/cans.ts';
import { shareFor, twoVolumes } from '#engine/can/dilute.ts';
import { measuresFor, twoStepFor } from '#engine/can/measures.ts';
import { type PourOrder, pour } from '#engine/can/pour.ts';
import { canEc, canPh, LIQUOR, mixturePh } from '#engine/can/strength.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { canRules } from '#engine/rules/can.ts';
import { judge, type Level } from '#engine/rules/rule.ts';
import { carbonateLostFraction, dissociatedFraction, MOLAR_MASS_G, PKA } from '#engine/scraps/acid.ts';
import { STATES } from '#engine/souring/reason.ts';
import { can } from '#tasks/can.ts';

const SEED = 20260412;
const runs = { seed: SEED, numRuns: 1000 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe(`any dilution (seed ${SEED})`, () => {
  it('has its two readings as (n + 1) to n', () => {
    fc.assert(
      fc.property(between(1, 10000), between(0.1, 200), (n, mixtureL) => {
        const of = (reading: 'in' | 'to') => {
          const share = shareFor({ kind: 'ratio', ratio: { n, reading } });
          return share.reachable
            ? twoVolumes({ mixtureL, concentrateFraction: share.concentrateFraction }).concentrateMl
            : Number.NaN;
        };
        expect(of('in') / of('to')).toBeCloseTo((n + 1) / n, 9);
      }),
      runs,
    );
  });

  it('fills cans that add up to area × depth, each at one strength, at most one of them a part-can', () => {
    fc.assert(
      fc.property(
        between(0.1, 200),
        between(0.1, 20),
        between(1, 20),
        between(0.0001, 1),
        (areaM2, depthLPerM2, canL, concentrateFraction) => {
          const { cans, totalL, concentrateL } = cansFor({ areaM2, depthLPerM2, canL, concentrateFraction });
          const sum = (of: (c: (typeof cans)[number]) => number) => cans.reduce((a, c) => a + of(c), 0);
          expect(Math.abs(sum((c) => c.volumeL) / (areaM2 * depthLPerM2) - 1)).toBeLessThan(1e-5);
          expect(totalL / (areaM2 * depthLPerM2)).toBeCloseTo(1, 9);
          expect(Math.abs(sum((c) => c.concentrateMl) / (concentrateL * 1000) - 1)).toBeLessThan(1e-5);
          expect(cans.filter((c) => c.volumeL !== canL).length).toBeLessThanOrEqual(1);
          for (const c of cans) expect(c.volumeL).toBeLessThanOrEqual(canL);
        },
      ),
      runs,
    );
  });

  it('offers no measure further than 5 % off, and two steps just below 2 mL, exact', () => {
    fc.assert(
      fc.property(
        between(0.01, 3000),
        between(0.5, 20),
        fc.constantFrom('us', 'metric', 'uk', 'au', null),
        (volumeMl, canL, spoon) => {
          const measures = measuresFor({ volumeMl, canL, spoon });
          for (const m of measures) expect(Math.abs(m.errorPercent)).toBeLessThanOrEqual(5);
          const step = twoStepFor(volumeMl);
          expect(step !== undefined).toBe(volumeMl < 2);
          if (!step) return;
          expect(measures).toEqual([]);
          const back = (step.thenMl * step.firstConcentrateMl) / (step.firstConcentrateMl + step.firstWaterMl);
          expect(back / volumeMl).toBeCloseTo(1, 9);
        },
      ),
      runs,
    );
  });
});

describe(`the pH of any can (seed ${SEED})`, () => {
  it('is the pH whose share of liquor follows from a titration worked backwards', () => {
    // x·G(p) = (1 − x)·K·[f(p) − f(pw)] + h(p) is linear in the share x: choose p, work out x, and ask for p again.
    fc.assert(
      fc.property(between(3.95, 7.3), between(0.5, 8), (ph, alkalinityMeqPerL) => {
        const acid = (at: number) =>
          (LIQUOR.lacticGPerL / MOLAR_MASS_G.lactic) * dissociatedFraction({ ph: at, pka: PKA.lactic }) +
          (LIQUOR.aceticGPerL / MOLAR_MASS_G.acetic) * dissociatedFraction({ ph: at, pka: PKA.acetic }) +
          LIQUOR.bufferEqPerLPerPh * at;
        const free = (at: number) => 10 ** -at - 10 ** -LIQUOR.startPh;
        const gained = acid(ph) - acid(3.9) + free(3.9);
        const water = (alkalinityMeqPerL / 1000) * (carbonateLostFraction(ph) - carbonateLostFraction(7.6));
        const x = (water + free(ph)) / (gained + water);
        fc.pre(x > 0 && x < 1);
        expect(
          mixturePh({ liquorPh: 3.9, factor: 1, concentrateFraction: x, alkalinityMeqPerL, waterPh: 7.6 }),
        ).toBeCloseTo(ph, 4);
      }),
      runs,
    );
  });

  it('rises with the water’s alkalinity and with thinning, and its band is in order', () => {
    fc.assert(
      fc.property(
        between(3.3, 4.6),
        between(1, 900),
        between(0.1, 8),
        between(0.01, 2),
        (liquorPh, n, alkalinityMeqPerL, more) => {
          const at = (parts: number, meq: number) =>
            canPh({ liquorPh, concentrateFraction: 1 / parts, water: { alkalinityMeqPerL: meq, ph: 7.6 } });
          const here = at(n, alkalinityMeqPerL);
          expect(here.low).toBeLessThanOrEqual(here.likely);
          expect(here.likely).toBeLessThanOrEqual(here.high);
          expect(at(n, alkalinityMeqPerL + more).likely).toBeGreaterThanOrEqual(here.likely - 1e-5);
          expect(at(n * (1 + more), alkalinityMeqPerL).likely).toBeGreaterThanOrEqual(here.likely - 1e-5);
        },
      ),
      runs,
    );
  });

  it('and its salt lie between those of batch and water, the band in order', () => {
    fc.assert(
      fc.property(
        between(0.1, 40),
        between(0, 3),
        between(0.0001, 1),
        (batchEcDsPerM, waterEcDsPerM, concentrateFraction) => {
          const ec = canEc({ batchEcDsPerM, waterEcDsPerM, concentrateFraction });
          expect(ec.likely).toBeGreaterThanOrEqual(Math.min(batchEcDsPerM, waterEcDsPerM) - 1e-9);
          expect(ec.likely).toBeLessThanOrEqual(Math.max(batchEcDsPerM, waterEcDsPerM) + 1e-9);
          expect(ec.low).toBeLessThanOrEqual(ec.likely);
          expect(ec.likely).toBeLessThanOrEqual(ec.high);
        },
      ),
      runs,
    );
  });
});

const order: fc.Arbitrary<PourOrder> = fc
  .record({
    n: between(1, 400),
    peg: fc.constantFrom(14, 'A', '', undefined),
    state: fc.constantFrom(...STATES, undefined),
    held: fc.constantFrom(true, false, undefined),
    ecDsPerM: fc.option(between(0.1, 40), { nil: undefined }),
    water: fc.option(fc.record({ alkalinityMeqPerL: between(0, 8), ph: fc.constant(7.6), ecDsPerM: between(0, 2) }), {
      nil: undefined,
    }),
    crop: fc.constantFrom('bean', 'tomatoes', 'chard', undefined),
    growth: fc.constantFrom('seedling' as const, 'established' as const, undefined),
    way: fc.constantFrom('soil' as const, 'leaf' as const),
    eaten: fc.constantFrom('raw' as const, 'cooked' as const, undefined),
    toPickDays: fc.option(between(0, 200), { nil: undefined }),
    soil: fc.constantFrom('dry' as const, 'moist' as const, undefined),
    noBatch: fc.boolean(),
  })
  .map(({ n, peg, state, held, ecDsPerM, noBatch, ...rest }) => ({
    ...rest,
    strength: { kind: 'ratio' as const, ratio: { n, reading: 'in' as const } },
    canL: 10,
    spoon: null,
    batch: noBatch ? undefined : { peg, state, held, ecDsPerM },
  }));

const findings = (asked: PourOrder) => [
  ...judge(batchRules, asked),
  ...judge(canRules, { order: asked, pour: pour(asked) }),
];
const count = (asked: PourOrder, levels: readonly Level[]) =>
  findings(asked).filter(({ level }) => levels.includes(level)).length;
const speaks = (asked: PourOrder, levels: readonly Level[]) => count(asked, levels) > 0;

/** If it may not be poured before, it may not be poured after the change for the worse. */
function neverMilder(before: PourOrder, after: PourOrder): void {
  if (speaks(before, ['stop'])) expect(speaks(after, ['stop'])).toBe(true);
  if (speaks(before, ['stop', 'hold'])) expect(speaks(after, ['stop', 'hold'])).toBe(true);
}

describe(`the cautions of any pour (seed ${SEED})`, () => {
  it('never grow milder when the batch is saltier or the can stronger', () => {
    fc.assert(
      fc.property(order, between(1, 5), (before, times) => {
        const { batch, strength } = before;
        if (batch?.ecDsPerM !== undefined && typeof batch.ecDsPerM === 'number')
          neverMilder(before, { ...before, batch: { ...batch, ecDsPerM: batch.ecDsPerM * times } });
        const n = strength.kind === 'ratio' ? Math.max(1, strength.ratio.n / times) : 1;
        const same = before.batch?.ecDsPerM ?? 33;
        fc.pre(typeof same === 'number' && same >= (before.water?.ecDsPerM ?? 0));
        neverMilder(before, { ...before, strength: { kind: 'ratio', ratio: { n, reading: 'in' } } });
      }),
      runs,
    );
  });

  it('never grow milder when picking is nearer or its day is not told', () => {
    fc.assert(
      fc.property(order, between(0, 200), (before, sooner) => {
        fc.pre(before.toPickDays !== undefined);
        neverMilder(before, { ...before, toPickDays: Math.max(0, (before.toPickDays ?? 0) - sooner) });
        neverMilder(before, { ...before, toPickDays: undefined });
        neverMilder(before, { ...before, toPickDays: Number.NaN });
      }),
      runs,
    );
  });

  it('never grow milder when something about the batch is left out', () => {
    fc.assert(
      fc.property(order, (before) => {
        const { batch } = before;
        fc.pre(batch !== undefined);
        for (const field of ['peg', 'state', 'held'] as const)
          neverMilder(before, { ...before, batch: { ...batch, [field]: undefined } });
      }),
      runs,
    );
  });

  it('never grow milder when it is not told how the crop is eaten and it goes on leaves', () => {
    fc.assert(
      fc.property(order, (before) => {
        neverMilder(before, { ...before, way: 'leaf', eaten: undefined });
        neverMilder(before, { ...before, way: 'leaf', eaten: 'raw' });
      }),
      runs,
    );
  });

  it('speak up for every number that is not one', () => {
    fc.assert(
      fc.property(order, (before) => {
        const batch = { ...before.batch, peg: 14, state: 'ready' as const, held: true };
        const salty: PourOrder = { ...before, way: 'soil', batch: { ...batch, ecDsPerM: Number.NaN } };
        expect(speaks(salty, ['stop'])).toBe(true);
        const raw: PourOrder = { ...before, way: 'soil', eaten: 'raw', toPickDays: Number.NaN };
        expect(findings(raw).map(({ rule }) => rule)).toContain('raw-bed-picked-soon');
        const sprayed: PourOrder = { ...before, nozzleMm: Number.NaN, strainedMm: 0.1 };
        expect(findings(sprayed).map(({ rule }) => rule)).toContain('nozzle-clogs');
        const water = { alkalinityMeqPerL: Number.NaN, ph: 7.6 };
        const wet: PourOrder = { ...before, way: 'soil', soil: 'dry', water };
        expect(findings(wet).map(({ rule }) => rule)).toContain('outside-pour-ph');
      }),
      runs,
    );
  });

  it('never leave a dose beside a stop', () => {
    fc.assert(
      fc.property(order, (asked) => {
        const { strength, water, batch, toPickDays, ...rest } = asked;
        const got = can({
          ...rest,
          daysToPick: toPickDays,
          ratio: strength.kind === 'ratio' ? strength.ratio : undefined,
          water,
          batch,
        });
        if (!got.ok) throw new Error(JSON.stringify(got.problems));
        const stopped = got.value.cautions.some(({ level }) => level === 'stop');
        expect(got.value.perCan === undefined).toBe(stopped);
        if (stopped)
          for (const field of ['cans', 'measures', 'twoStep', 'concentrateL', 'otherReading'] as const)
            expect(got.value[field]).toBeUndefined();
        expect((got.value.noDose ?? []).length > 0).toBe(stopped);
      }),
      runs,
    );
  });
});
