// What must hold for any strained batch: ceilings, sums, signs and the direction of time.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { releasedFraction } from '#engine/bottle/extraction.ts';
import { useFirst } from '#engine/bottle/keep.ts';
import { elementFate, type StrainedBatch } from '#engine/bottle/liquid.ts';
import { strainedBatch } from '#engine/bottle/strained.ts';
import type { Element } from '#engine/pail/recipe.ts';
import type { Range } from '#engine/quantity/range.ts';
import type { SugarProduct } from '#engine/scraps/part.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarIds, sugarProduct } from '#engine/scraps/sugar.ts';
import { pressureAtm } from '#engine/souring/gas/pressure.ts';
import { materials } from '#engine/tables/index.ts';

const SEED = 20261125;
const RUNS = { seed: SEED, numRuns: 500 };
const ELEMENTS: readonly Element[] = ['n', 'p', 'k', 'ca', 'mg'];
/** Room for the last bits of a floating sum. */
const SLACK = 1 + 1e-9;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const percent = (max: number) => fc.option(fc.oneof(printed(max), band(max)), { nil: undefined });

/** Nothing, or an amount a laboratory could print; three of them in order. */
const printed = (max: number) =>
  fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 9, arbitrary: between(0.001, max) });

function band(max: number): fc.Arbitrary<Range> {
  return fc.tuple(printed(max), printed(max), printed(max)).map((three) => {
    const [low, likely, high] = [...three].sort((a, b) => a - b) as [number, number, number];
    return { low, likely, high };
  });
}

const own = fc.record({
  massKg: between(0.01, 100),
  dryMatter: between(0.01, 1),
  nPercentDm: percent(10),
  pPercentDm: percent(2),
  kPercentDm: percent(10),
  caPercentDm: percent(10),
  mgPercentDm: percent(3),
  cn: fc.option(between(5, 200), { nil: undefined }),
});
const listed = fc.record({
  material: fc.constantFrom(...materials.map((row) => row.id)),
  massKg: between(0.01, 100),
});
const batch: fc.Arbitrary<StrainedBatch> = fc.record({
  plants: fc.array(fc.oneof(own, listed).map(resolvePart), { minLength: 1, maxLength: 5 }),
  waterL: between(0.1, 200),
  sugar: fc.record({
    product: fc.constantFrom(...sugarIds).map((id) => sugarProduct(id) as SugarProduct),
    massKg: between(0, 5),
  }),
  starterL: between(0, 5),
  days: printed(200),
  finalPh: between(2.5, 8),
  drainedL: printed(400),
  solidsKg: between(0, 200),
});

describe(`a strained batch (seed ${SEED})`, () => {
  it('holds nothing in a litre above what went in for that litre', () => {
    fc.assert(
      fc.property(batch, (b) => {
        for (const element of ELEMENTS) {
          const { gPerL, ceilingGPerL } = elementFate(element, b);
          for (const end of [gPerL.low, gPerL.likely, gPerL.high]) expect(end).toBeLessThanOrEqual(ceilingGPerL);
        }
      }),
      RUNS,
    );
  });

  it('has its bands in order, and no amount below nothing', () => {
    fc.assert(
      fc.property(batch, (b) => {
        for (const fate of Object.values(strainedBatch(b).fates)) {
          for (const r of [fate.inG, fate.gPerL, fate.drainedG, fate.solidsG, fate.releasedFraction]) {
            expect(r.low).toBeGreaterThanOrEqual(-1e-9);
            expect(r.low).toBeLessThanOrEqual(r.likely * SLACK);
            expect(r.likely).toBeLessThanOrEqual(r.high * SLACK);
          }
        }
      }),
      RUNS,
    );
  });

  it('closes for each element: drained and solids make what went in', () => {
    fc.assert(
      fc.property(batch, (b) => {
        for (const element of ELEMENTS) {
          const { drainedG, solidsG, inG } = elementFate(element, b);
          expect(drainedG.likely + solidsG.likely).toBeCloseTo(inG.likely, 6);
        }
      }),
      RUNS,
    );
  });

  it('closes in mass: in, less out, is what is called unexplained', () => {
    fc.assert(
      fc.property(batch, (b) => {
        const { inKg, outKg, unexplainedPercent } = strainedBatch(b).balance;
        expect(inKg - outKg).toBeCloseTo((unexplainedPercent / 100) * inKg, 6);
      }),
      RUNS,
    );
  });

  it('never gives up less for standing longer', () => {
    fc.assert(
      fc.property(batch, printed(100), fc.constantFrom(...ELEMENTS), (b, more, element) => {
        const now = elementFate(element, b).drainedG;
        const later = elementFate(element, { ...b, days: b.days + more }).drainedG;
        for (const end of ['low', 'likely', 'high'] as const) {
          expect(later[end] * SLACK).toBeGreaterThanOrEqual(now[end]);
        }
        expect(releasedFraction(element, b).high).toBeLessThan(1);
      }),
      RUNS,
    );
  });

  it('never shows less potassium for more molasses', () => {
    fc.assert(
      fc.property(batch, between(0, 5), (b, more) => {
        const product = sugarProduct('cane-molasses') as SugarProduct;
        const sweet = (massKg: number) => elementFate('k', { ...b, sugar: { product, massKg } }).gPerL.likely;
        expect(sweet(b.sugar.massKg + more) * SLACK).toBeGreaterThanOrEqual(sweet(b.sugar.massKg));
      }),
      RUNS,
    );
  });
});

describe(`a closed bottle (seed ${SEED})`, () => {
  it('presses more with more sugar, less room and more warmth', () => {
    const bottle = fc.record({
      gasRoomL: between(0.01, 5),
      liquidL: between(0.1, 20),
      hexoseG: between(1, 500),
      temperatureC: between(0, 35),
    });
    fc.assert(
      fc.property(bottle, between(1.01, 2), (b, times) => {
        const closed = { ...b, route: 'yeast' as const };
        const now = pressureAtm(closed);
        expect(pressureAtm({ ...closed, hexoseG: b.hexoseG * times })).toBeGreaterThan(now);
        expect(pressureAtm({ ...closed, gasRoomL: b.gasRoomL * times })).toBeLessThan(now);
        expect(pressureAtm({ ...closed, temperatureC: b.temperatureC + times })).toBeGreaterThan(now);
      }),
      RUNS,
    );
  });

  it('is never given longer for being less sour', () => {
    fc.assert(
      fc.property(between(2.5, 7), between(0, 3), between(0, 40), (finalPh, up, temperatureC) => {
        const sour = useFirst({ finalPh, temperatureC, sound: true }).days;
        const lessSour = useFirst({ finalPh: finalPh + up, temperatureC, sound: true }).days;
        for (const end of ['low', 'likely', 'high'] as const) expect(lessSour[end]).toBeLessThanOrEqual(sour[end]);
      }),
      RUNS,
    );
  });
});
