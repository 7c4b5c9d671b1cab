// The rules about straining, bottles and lids: a missing number makes them speak, a growing danger never
// silences them, and each has its sentence.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StrainedBatch } from '#engine/bottle/liquid.ts';
import { strainedBatch } from '#engine/bottle/strained.ts';
import { strainRules } from '#engine/rules/bottle.ts';
import { judge, type Level } from '#engine/rules/rule.ts';
import { type BottleUse, bottleUseRules, lidRules, liftRules } from '#engine/rules/vessel.ts';
import type { SugarProduct } from '#engine/scraps/part.ts';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { citation } from '#engine/tables/index.ts';
import { strainCautions } from '#words/en/strain.ts';
import { vesselCautions } from '#words/en/vessel.ts';

const SEED = 20261125;
const RUNS = { seed: SEED, numRuns: 300 };
const LEVELS: readonly Level[] = ['stop', 'hold', 'caution', 'note'];

const bottle: BottleUse = {
  volumeL: 1,
  filledL: 0.95,
  cap: 'vent',
  material: 'plastic',
  sugarLeftGPerL: 3,
  temperatureC: 20,
  pressureAtm: 0.8,
};
const batch: StrainedBatch = {
  plants: [
    resolvePart({
      massKg: 2,
      dryMatter: 0.2,
      nPercentDm: 3,
      pPercentDm: 0.4,
      kPercentDm: 2,
      caPercentDm: 1,
      mgPercentDm: 0.3,
    }),
  ],
  waterL: 8,
  sugar: { product: sugarProduct('white-sugar') as SugarProduct, massKg: 0 },
  starterL: 0,
  days: 10,
  finalPh: 3.8,
  drainedL: 8,
  solidsKg: 1.9,
};
const heard = (b: StrainedBatch, state?: string) =>
  judge(strainRules, { batch: b, strained: strainedBatch(b), state }).map((finding) => finding.rule);
const strictest = (use: BottleUse) =>
  Math.min(4, ...judge(bottleUseRules, use).map((finding) => LEVELS.indexOf(finding.level)));

describe(`rules of the bottle (seed ${SEED})`, () => {
  it('say only the tag when all is well', () => {
    expect(heard(batch, 'ready')).toEqual(['strained-tag-not-a-drink']);
    expect(judge(bottleUseRules, bottle)).toEqual([]);
    expect(judge(liftRules, { massKg: 15 })).toEqual([]);
  });

  it('speak when a number is missing', () => {
    expect(heard({ ...batch, finalPh: Number.NaN })).toContain('strained-not-sour');
    expect(heard({ ...batch, drainedL: Number.NaN })).toContain('strained-more-than-could');
    expect(heard({ ...batch, solidsKg: Number.NaN })).toContain('strained-sum-open');
    expect(judge(liftRules, { massKg: Number.NaN })).toHaveLength(1);
    const blind = { ...bottle, sugarLeftGPerL: Number.NaN, pressureAtm: Number.NaN };
    for (const use of [
      { ...blind, cap: 'screw' as const },
      { ...blind, material: 'glass' as const },
    ]) {
      expect(judge(bottleUseRules, use).map((finding) => finding.level)).toContain('stop');
    }
  });

  it('ask when more liquid came out than water and the plants’ own water', () => {
    // 8 L and 2 kg × 0.8
    expect(heard({ ...batch, drainedL: 9.6 })).not.toContain('strained-more-than-could');
    expect(heard({ ...batch, drainedL: 9.61 })).toContain('strained-more-than-could');
  });

  it('never grow softer as the sugar left grows', () => {
    const use = fc.record({
      cap: fc.constantFrom('vent', 'screw', 'loose'),
      material: fc.constantFrom('plastic', 'glass', 'drink-bottle'),
      sugar: fc.double({ min: 0, max: 50, noNaN: true }),
      more: fc.double({ min: 0, max: 50, noNaN: true }),
    });
    fc.assert(
      fc.property(use, ({ cap, material, sugar, more }) => {
        const at = (sugarLeftGPerL: number) => strictest({ ...bottle, cap, material, sugarLeftGPerL } as BottleUse);
        expect(at(sugar + more)).toBeLessThanOrEqual(at(sugar));
      }),
      RUNS,
    );
  });

  it('stop a bottle made for drink whatever its cap and sugar', () => {
    for (const cap of ['vent', 'screw', 'loose'] as const) {
      expect(strictest({ ...bottle, material: 'drink-bottle', cap, sugarLeftGPerL: 0 })).toBe(0);
    }
  });

  it('never grow softer as the acidity fades', () => {
    const strict = (finalPh: number) => {
      const b = { ...batch, finalPh };
      const found = judge(strainRules, { batch: b, strained: strainedBatch(b) });
      return Math.min(...found.map((finding) => LEVELS.indexOf(finding.level)));
    };
    fc.assert(
      fc.property(
        fc.double({ min: 2.5, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 3, noNaN: true }),
        (ph, up) => {
          expect(strict(ph + up)).toBeLessThanOrEqual(strict(ph));
        },
      ),
      RUNS,
    );
  });

  it('each have a sentence and a source that can be cited', () => {
    for (const rule of [...strainRules, ...bottleUseRules, ...lidRules, ...liftRules]) {
      expect({ ...strainCautions, ...vesselCautions }, rule.id).toHaveProperty(rule.id);
      expect(citation(rule.source).length).toBeGreaterThan(5);
    }
  });
});
