// Laws that hold for any looks at any batch: arrival order never matters, and no bad news ever improves the word.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeBatch } from '#engine/souring/judge.ts';
import { type Look, SMELLS, SURFACES } from '#engine/souring/look.ts';
import { STATES, type State } from '#engine/souring/reason.ts';

const SEED = 20260411;
const runs = { seed: SEED, numRuns: 2000 };

const FOUL = ['butter-gone-off', 'ammonia', 'egg', 'sewage'] as const;
const badness = (state: State) => STATES.indexOf(state);

/** Days in tenths and acidities in steps of 0.1, so that same-time looks and exact limits come up often. */
const look: fc.Arbitrary<Look> = fc.record(
  {
    day: fc.integer({ min: 0, max: 250 }).map((tenths) => tenths / 10),
    ph: fc.integer({ min: 32, max: 70 }).map((tenths) => tenths / 10),
    by: fc.constantFrom('meter' as const, 'strip' as const),
    smell: fc.constantFrom(...SMELLS),
    surface: fc.constantFrom(...SURFACES.filter((surface) => surface !== 'coloured-fuzz')),
    who: fc.constantFrom('Rake', 'Fork', 'Can'),
  },
  { requiredKeys: ['day'] },
);

/** A batch that sours without a foul word, most of the time: without it nearly every drawn batch would be lost. */
const sound: fc.Arbitrary<readonly Look[]> = fc
  .tuple(
    fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: -1, max: 10 })), {
      minLength: 1,
      maxLength: 8,
    }),
    fc.integer({ min: 55, max: 68 }),
    fc.constantFrom('meter' as const, 'strip' as const),
  )
  .map(([steps, start, by]) => {
    let tenthDays = 0;
    let tenthPh = start;
    return steps.map(([wait, fall]): Look => {
      tenthDays += wait;
      tenthPh = Math.max(34, tenthPh - fall);
      return { day: tenthDays / 10, ph: tenthPh / 10, by, smell: 'sour' };
    });
  });

const looks = fc.oneof(sound, fc.array(look, { maxLength: 8 }));
const temperatureC = fc.double({ min: 2, max: 38, noNaN: true });
const lastDay = (some: readonly Look[]) => Math.max(0, ...some.map(({ day }) => day));

describe(`the state of any batch (seed ${SEED})`, () => {
  it('does not depend on the order in which looks arrive', () => {
    fc.assert(
      fc.property(
        looks.chain((some) => fc.tuple(fc.constant(some), fc.shuffledSubarray([...some], { minLength: some.length }))),
        temperatureC,
        ([some, shuffled], t) => {
          const today = lastDay(some);
          const judged = judgeBatch({ looks: some, temperatureC: t, today });
          expect(judgeBatch({ looks: shuffled, temperatureC: t, today })).toEqual(judged);
        },
      ),
      runs,
    );
  });

  it('never improves when a nose is changed to a foul word', () => {
    fc.assert(
      fc.property(
        looks,
        fc.nat(),
        fc.constantFrom(...FOUL),
        temperatureC,
        fc.nat(12),
        (some, pick, smell, t, later) => {
          fc.pre(some.length > 0);
          const today = lastDay(some) + later;
          const fouled = some.map((one, i) => (i === pick % some.length ? { ...one, smell } : one));
          const before = judgeBatch({ looks: some, temperatureC: t, today });
          const after = judgeBatch({ looks: fouled, temperatureC: t, today });
          expect(badness(after.state)).toBeGreaterThanOrEqual(badness(before.state));
          expect(after.held && !before.held).toBe(false);
        },
      ),
      runs,
    );
  });

  it('never improves when one more look finds a foul word', () => {
    fc.assert(
      fc.property(
        looks,
        fc.constantFrom(...FOUL),
        fc.double({ min: 0, max: 30, noNaN: true }),
        temperatureC,
        fc.nat(12),
        (some, smell, day, t, later) => {
          const today = Math.max(lastDay(some), day) + later;
          const before = judgeBatch({ looks: some, temperatureC: t, today });
          const after = judgeBatch({ looks: [...some, { day, smell }], temperatureC: t, today });
          expect(badness(after.state)).toBeGreaterThanOrEqual(badness(before.state));
          expect(after.held && !before.held).toBe(false);
        },
      ),
      runs,
    );
  });

  it('never improves when the last acidity is read higher', () => {
    fc.assert(
      fc.property(looks, fc.integer({ min: 1, max: 30 }), temperatureC, fc.nat(9), (some, tenths, t, later) => {
        const last = some
          .filter((one) => one.ph !== undefined)
          .sort((a, b) => a.day - b.day)
          .at(-1);
        fc.pre(last !== undefined);
        // One reading at that visit: of several, the highest already stands for all.
        fc.pre(some.filter((one) => one.ph !== undefined && (last?.day ?? 0) - one.day < 0.05).length === 1);
        const raised = some.map((one) => (one === last ? { ...one, ph: (one.ph ?? 0) + tenths / 10 } : one));
        const today = lastDay(some) + later;
        const before = judgeBatch({ looks: some, temperatureC: t, today });
        const after = judgeBatch({ looks: raised, temperatureC: t, today });
        expect(badness(after.state)).toBeGreaterThanOrEqual(badness(before.state));
        expect(after.held && !before.held).toBe(false);
      }),
      runs,
    );
  });

  it('never improves while nobody looks, and is unknown or lost after ten days', () => {
    fc.assert(
      fc.property(looks, temperatureC, fc.double({ min: 0, max: 20, noNaN: true }), (some, t, more) => {
        const today = lastDay(some);
        const before = judgeBatch({ looks: some, temperatureC: t, today });
        const after = judgeBatch({ looks: some, temperatureC: t, today: today + more });
        expect(badness(after.state)).toBeGreaterThanOrEqual(badness(before.state));
        if (more >= 10) expect(['unknown', 'lost']).toContain(after.state);
      }),
      runs,
    );
  });

  it('is held only while it is ready and at or below 4.0', () => {
    let held = 0;
    fc.assert(
      fc.property(sound, temperatureC, fc.double({ min: 0, max: 9.9, noNaN: true }), (some, t, more) => {
        const judged = judgeBatch({ looks: some, temperatureC: t, today: lastDay(some) + more });
        if (!judged.held) return;
        held += 1;
        expect(judged.state).toBe('ready');
        const last = some
          .filter((one) => one.ph !== undefined)
          .sort((a, b) => a.day - b.day)
          .at(-1);
        expect(last?.ph).toBeLessThanOrEqual(4.0);
        expect(t).toBeGreaterThanOrEqual(10);
      }),
      { ...runs, numRuns: 12_000 },
    );
    expect(held, 'draws that reached the mark').toBeGreaterThan(20);
  });

  it('reaches every word, so that none of these laws holds for want of cases', () => {
    const reached = new Set<State>();
    fc.assert(
      fc.property(looks, temperatureC, fc.nat(12), (some, t, more) => {
        reached.add(judgeBatch({ looks: some, temperatureC: t, today: lastDay(some) + more }).state);
      }),
      runs,
    );
    expect([...reached].sort()).toEqual([...STATES].sort());
  });
});
