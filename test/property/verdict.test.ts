// Every word for every batch can be looked into: it lists its reasons, each with a sentence, and what would change it.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ModelEvidence } from '#engine/souring/expected-reasons.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import { type Look, SMELLS, SURFACES } from '#engine/souring/look.ts';
import { STATES } from '#engine/souring/reason.ts';
import { citation } from '#engine/tables/index.ts';
import { sayState } from '#words/en/souring.ts';

const SEED = 20260411;
const ph = fc.integer({ min: 32, max: 70 }).map((tenths) => tenths / 10);
const day = fc.integer({ min: 0, max: 250 }).map((tenths) => tenths / 10);
const look: fc.Arbitrary<Look> = fc.record(
  {
    day,
    ph,
    by: fc.constantFrom('meter' as const, 'strip' as const),
    smell: fc.constantFrom(...SMELLS),
    surface: fc.constantFrom(...SURFACES),
    who: fc.constantFrom('Rake', 'Fork'),
  },
  { requiredKeys: ['day', 'ph'] },
);
/** Falling readings with sour words: without them nearly every drawn batch would be lost. */
const sound: fc.Arbitrary<readonly Look[]> = fc
  .array(fc.integer({ min: 0, max: 9 }), { minLength: 2, maxLength: 7 })
  .map((falls) => {
    let tenths = 64;
    return falls.map((fall, i): Look => {
      tenths = Math.max(36, tenths - fall);
      return { day: 2 * i, ph: tenths / 10, by: 'meter', smell: 'sour' };
    });
  });
const band = fc.tuple(ph, ph, ph).map((some) => {
  const [low = 4, likely = 4, high = 4] = [...some].sort((a, b) => a - b);
  return { low, likely, high };
});
const evidence: fc.Arbitrary<ModelEvidence | undefined> = fc.option(
  fc.record({
    readings: fc.array(
      fc.record({
        day,
        ph,
        by: fc.constant('meter' as const),
        band,
        side: fc.constantFrom('within' as const, 'above' as const, 'below' as const),
      }),
      { maxLength: 3 },
    ),
    buffers: fc.array(fc.record({ day, ph, timesFactor: band }), { maxLength: 3 }),
  }),
  { nil: undefined },
);
const asked = fc.record({
  looks: fc.oneof(sound, fc.array(look, { maxLength: 6 })),
  temperatureC: fc.oneof(fc.double({ min: 4, max: 36, noNaN: true }), fc.constant(Number.NaN)),
  today: fc.integer({ min: 0, max: 40 }),
  evidence,
});

describe(`any verdict (seed ${SEED})`, () => {
  const seen = new Set<string>();

  it('lists its reasons and what would change it, each with a sentence and a source', () => {
    fc.assert(
      fc.property(asked, (batch) => {
        const judged = judgeBatch(batch);
        seen.add(judged.state);
        expect(judged.reasons.length).toBeGreaterThan(0);
        expect(judged.wouldChange.length).toBeGreaterThan(0);
        for (const { source } of [...judged.reasons, ...judged.wouldChange]) expect(citation(source)).toBeTruthy();
        const said = sayState(judged);
        expect(said.length).toBeGreaterThanOrEqual(1 + judged.reasons.length + judged.wouldChange.length);
        expect(said.join(' ')).not.toMatch(/undefined|NaN/);
      }),
      { seed: SEED, numRuns: 2000 },
    );
    expect([...seen].sort()).toEqual([...STATES].sort());
  });

  it('is the same word, held or not, whatever the model says beside it', () => {
    fc.assert(
      fc.property(asked, (batch) => {
        const plain = judgeBatch({ ...batch, evidence: undefined });
        const beside = judgeBatch(batch);
        expect([beside.state, beside.held, beside.heldFromDay]).toEqual([plain.state, plain.held, plain.heldFromDay]);
        // The next look may come sooner for it, never later.
        if (plain.nextLookDay !== undefined) expect(beside.nextLookDay).toBeLessThanOrEqual(plain.nextLookDay);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it('is never held sooner by the temperatures as they were than by their mean', () => {
    fc.assert(
      fc.property(
        sound,
        fc.array(fc.integer({ min: 4, max: 32 }), { minLength: 1, maxLength: 20 }),
        (looks, dailyC) => {
          const hourlyC = Float64Array.from(
            { length: 24 * dailyC.length },
            (_, hour) => dailyC[Math.floor(hour / 24)] ?? 0,
          );
          const temperatureC = dailyC.reduce((sum, one) => sum + one, 0) / dailyC.length;
          const today = 2 * looks.length;
          const byMean = judgeBatch({ looks, temperatureC, today });
          const asItWas = judgeBatch({ looks, temperatureC, hourlyC, today });
          if (asItWas.held) expect(byMean.heldFromDay ?? Infinity).toBeLessThanOrEqual(today + 1e-9);
          expect(asItWas.heldFromDay ?? Infinity).toBeGreaterThanOrEqual(byMean.heldFromDay ?? Infinity);
        },
      ),
      { seed: SEED, numRuns: 1000 },
    );
  });
});
