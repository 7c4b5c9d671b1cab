// Laws of the pail that hold for every recipe.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { levelM, radiusM, type ShapeKind, vesselShape } from '#engine/pail/shape.ts';
import { materials } from '#engine/tables/index.ts';
import { type FitResult, fit as weighIn } from '#tasks/fit.ts';

const liquidIds = materials.filter((m) => m.into === 'liquid' && m.figures.dryMatter).map((m) => m.id);
const refusedIds = materials.filter((m) => m.into !== 'liquid' && m.figures.dryMatter).map((m) => m.id);

const lot = fc.record({
  material: fc.constantFrom(...liquidIds),
  massKg: fc.double({ min: 0.05, max: 30, noNaN: true }),
});
const recipe = fc.record({
  vessel: fc.record({
    volumeL: fc.double({ min: 5, max: 200, noNaN: true }),
    gasRoom: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
  }),
  plants: fc.array(lot, { minLength: 1, maxLength: 5 }),
  water: fc.record({
    volumeL: fc.double({ min: 0.5, max: 100, noNaN: true }),
    alkalinityMeqPerL: fc.double({ min: 0, max: 8, noNaN: true }),
  }),
  sugar: fc.record({
    product: fc.constantFrom('white-sugar', 'cane-molasses'),
    massKg: fc.double({ min: 0, max: 2, noNaN: true }),
  }),
});

function answer(input: unknown): FitResult {
  const said = weighIn(input);
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}

const runs = { seed: 11, numRuns: 200 };
const rank = { stop: 0, hold: 1, caution: 2, note: 3 } as const;

describe('the pail, for every recipe', () => {
  it('never settles lower when anything is added', () => {
    fc.assert(
      fc.property(recipe, lot, (r, more) => {
        const before = answer(r).fill.volumeL.likely;
        expect(answer({ ...r, plants: [...r.plants, more] }).fill.volumeL.likely).toBeGreaterThan(before);
        const wetter = { ...r.water, volumeL: r.water.volumeL + 1 };
        expect(answer({ ...r, water: wetter }).fill.volumeL.likely).toBeGreaterThan(before);
        const sweeter = { ...r.sugar, massKg: r.sugar.massKg + 0.1 };
        expect(answer({ ...r, sugar: sweeter }).fill.volumeL.likely).toBeGreaterThan(before);
      }),
      runs,
    );
  });

  it('fits after its scale cure, and after its leave-out cure, and in the vessel it asks for', () => {
    fc.assert(
      fc.property(recipe, (r) => {
        const said = answer(r);
        for (const cure of said.cures) {
          if (cure.kind === 'vessel') {
            const larger = { ...r.vessel, volumeL: cure.volumeL ?? 0 };
            expect(answer({ ...r, vessel: larger }).fill.fits).toBe(true);
            continue;
          }
          const cured = {
            ...r,
            plants: (cure.plants ?? []).map(({ material, massKg }) => ({ material, massKg })),
            water: { ...r.water, volumeL: cure.waterL },
            sugar: { ...r.sugar, massKg: cure.sugarKg },
          };
          expect(answer(cured).fill.fits).toBe(true);
        }
        expect(said.fill.fits || said.cures.some((cure) => cure.kind === 'scale')).toBe(true);
      }),
      runs,
    );
  });

  it('keeps every band in order and every mass above nothing', () => {
    fc.assert(
      fc.property(recipe, (r) => {
        const { fill, sugar, inputs } = answer(r);
        for (const band of [
          fill.volumeL,
          sugar.leastHexoseG,
          sugar.neededHexoseBandG,
          inputs.nG,
          inputs.pG,
          inputs.kG,
        ]) {
          expect(band.low).toBeLessThanOrEqual(band.likely);
          expect(band.likely).toBeLessThanOrEqual(band.high);
          expect(band.low).toBeGreaterThanOrEqual(0);
        }
      }),
      runs,
    );
  });

  it('becomes no more permissive when a refused material is added', () => {
    fc.assert(
      fc.property(recipe, fc.constantFrom(...refusedIds), (r, material) => {
        const before = answer(r);
        const after = answer({ ...r, plants: [...r.plants, { material, massKg: 0.5 }] });
        expect(after.cautions.some((c) => c.level === 'stop' || c.level === 'hold')).toBe(true);
        const strictest = (said: FitResult) => Math.min(...said.cautions.map((c) => rank[c.level]), 4);
        expect(strictest(after)).toBeLessThanOrEqual(strictest(before));
        expect(after.fill.fits && !before.fill.fits).toBe(false);
      }),
      runs,
    );
  });
});

describe('the vessel drawn to scale', () => {
  const shapes: ShapeKind[] = ['pail', 'drum', 'barrel'];

  it('holds its own volume to the rim, by counting thin discs', () => {
    for (const shape of shapes) {
      const vessel = vesselShape({ volumeL: 12, shape });
      const steps = 20_000;
      let litres = 0;
      for (let i = 0; i < steps; i++) {
        const r = radiusM(vessel, ((i + 0.5) / steps) * vessel.heightM);
        litres += (1000 * Math.PI * r * r * vessel.heightM) / steps;
      }
      expect(litres).toBeCloseTo(12, 4);
    }
  });

  it('stands higher for more litres, reaches the rim when full, and goes on above it', () => {
    fc.assert(
      fc.property(fc.constantFrom(...shapes), fc.double({ min: 1, max: 200, noNaN: true }), (shape, volumeL) => {
        const vessel = vesselShape({ volumeL, shape });
        expect(levelM(vessel, volumeL)).toBeCloseTo(vessel.heightM, 6);
        expect(levelM(vessel, volumeL / 2)).toBeLessThan(vessel.heightM);
        expect(levelM(vessel, volumeL * 1.1)).toBeGreaterThan(vessel.heightM);
        expect(levelM(vessel, 0)).toBe(0);
      }),
      runs,
    );
  });
});
