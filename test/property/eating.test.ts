// One more danger, or one answer less, never makes a bed more permissive: no wait grows shorter, no way opens, and no
// stop or hold of a pour falls silent unless a stricter rule on the same matter speaks in its place.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnimalOrigin, type Eaten, type EatingAsk, eatingWait } from '#engine/can/eating.ts';
import { type PourOrder, pour } from '#engine/can/pour.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { type BedSituation, bedRules } from '#engine/rules/bed.ts';
import { canRules } from '#engine/rules/can.ts';
import { eatingRules } from '#engine/rules/eating.ts';
import { type Finding, judge } from '#engine/rules/rule.ts';
import { NOTHING_TOLD, type Profile } from '#engine/scraps/profile.ts';
import { STATES } from '#engine/souring/reason.ts';

const SEED = 20260412;
const runs = { seed: SEED, numRuns: 600 };

const CROPS = ['lettuce', '8 tomatoes', 'kale, chard', 'potatoes', 'aubergines', 'a plant of the moon', undefined];
const RAW: readonly Eaten[] = ['raw', 'raw-leaf', 'raw-fruit', 'raw-root'];
const eaten = fc.constantFrom(...RAW, 'cooked' as const, 'not-eaten' as const, undefined);
const animalOrigin = fc.constantFrom('no' as const, 'possible' as const, 'yes' as const, undefined);
const profile: fc.Arbitrary<Profile> = fc
  .record({
    ...{ sells: fc.boolean(), school: fc.boolean(), immuneWeak: fc.boolean(), pregnant: fc.boolean() },
    ...{ children: fc.boolean(), pets: fc.boolean(), hens: fc.boolean() },
  })
  .map((answers) => ({ ...NOTHING_TOLD, ...answers }));
const ask: fc.Arbitrary<EatingAsk> = fc.record({
  crop: fc.constantFrom(...CROPS),
  eaten,
  animalOrigin,
  held: fc.constantFrom(true, false, undefined),
  way: fc.constantFrom('soil' as const, 'leaf' as const),
  profile,
  overridden: fc.boolean(),
});

/** What is worse, from the mildest: unknown stands beside possible, and is told apart from manure below. */
const WORSE: readonly (AnimalOrigin | undefined)[] = ['no', 'possible', 'yes'];

type Step = (before: EatingAsk) => EatingAsk | undefined;

/** Every change for the worse, by its name; undefined where it changes nothing that could be asked. */
const STEPS: Readonly<Record<string, Step>> = {
  'adding manure or meat': (a) => (a.animalOrigin === undefined ? undefined : { ...a, animalOrigin: 'yes' }),
  'adding water that animals reach': (a) =>
    WORSE.indexOf(a.animalOrigin) <= 0 && a.animalOrigin !== undefined ? { ...a, animalOrigin: 'possible' } : undefined,
  'not knowing what was poured': (a) => (a.animalOrigin === 'yes' ? undefined : { ...a, animalOrigin: undefined }),
  'a crop eaten raw': (a) => (a.eaten === 'cooked' || a.eaten === 'not-eaten' ? { ...a, eaten: 'raw' } : undefined),
  'eating from the bed': (a) => (a.eaten === 'not-eaten' ? { ...a, eaten: 'cooked' } : undefined),
  'not telling how it is eaten': (a) => (a.eaten === 'cooked' ? { ...a, eaten: undefined } : undefined),
  'a batch not held': (a) => ({ ...a, held: false }),
  'not telling whether it was held': (a) => ({ ...a, held: undefined }),
  'a spray': (a) => ({ ...a, way: 'leaf' }),
  'a guard overridden': (a) => ({ ...a, overridden: true }),
  'one crop more': (a) => (a.crop === undefined ? undefined : { ...a, crop: `${a.crop}, lettuce` }),
  'an unknown crop': (a) => ({ ...a, crop: 'a plant of the moon' }),
  ...Object.fromEntries(
    (['sells', 'school', 'immuneWeak', 'pregnant', 'children', 'pets', 'hens'] as const).map((answer) => [
      `the answer ${answer}`,
      (a: EatingAsk) => ({ ...a, profile: { ...a.profile, [answer]: true } }),
    ]),
  ),
};

const OPEN = ['never', 'soil', 'leaf'];

describe(`the wait of any bed (seed ${SEED})`, () => {
  it.each(Object.keys(STEPS))('never shortens and opens no way by %s', (name) => {
    let tried = 0;
    fc.assert(
      fc.property(ask, (before) => {
        const after = STEPS[name]?.(before);
        if (after === undefined) return;
        tried++;
        const [one, other] = [eatingWait(before), eatingWait(after)];
        expect(other.days).toBeGreaterThanOrEqual(one.days);
        expect(OPEN.indexOf(other.how)).toBeLessThanOrEqual(OPEN.indexOf(one.how));
      }),
      runs,
    );
    expect(tried).toBeGreaterThan(50);
  });

  it('is a number of whole days between 0 and 120, and offers no spray to what is eaten raw', () => {
    fc.assert(
      fc.property(ask, (asked) => {
        const { days, how, countsAs } = eatingWait(asked);
        expect(Number.isInteger(days) && days >= 0 && days <= 120).toBe(true);
        if (countsAs === 'raw') expect(how).not.toBe('leaf');
      }),
      runs,
    );
  });
});

/** The order of one pour; `eaten` is what the bed counts as, as the round has it. */
function orderOf(a: EatingAsk, more: Partial<PourOrder>): PourOrder {
  const { countsAs } = eatingWait(a);
  return {
    strength: { kind: 'ratio', ratio: { n: 200, reading: 'in' } },
    canL: 10,
    spoon: null,
    way: a.way,
    batch: { peg: 14, state: 'ready', held: a.held, animalOrigin: a.animalOrigin, ecDsPerM: 4 },
    crop: a.crop,
    eaten: countsAs === 'raw' ? 'raw' : 'cooked',
    eatenPart: a.eaten,
    profile: a.profile,
    ...more,
  };
}

/** A rule that falls silent because a stricter one on the same matter took its place. */
const STRICTER: Readonly<Record<string, readonly string[]>> = {
  'eating-animal-possible-on-leaves': ['eating-animal-on-leaves'],
  'eating-animal-possible-picked-soon': ['eating-manure-picked-soon'],
};
/** Rules about salt and acid of plants: other crops, other limits; they are held by property/can.test.ts. */
const OF_PLANTS = /^(crop-)?salt|^too-sour/;
/** A pour on the soil has a shorter wait of its own; a spray of what is eaten raw is stopped altogether. */
const BY_LEAF: Readonly<Record<string, readonly string[]>> = {
  ...STRICTER,
  'raw-bed-picked-soon': ['leaf-eaten-raw'],
  'eating-manure-picked-soon': ['eating-animal-on-leaves'],
};

const barred = (order: PourOrder): readonly Finding[] =>
  [...judge([...batchRules, ...eatingRules], order), ...judge(canRules, { order, pour: pour(order) })].filter(
    ({ level, rule }) => (level === 'stop' || level === 'hold') && !OF_PLANTS.test(rule),
  );

describe(`stops and holds of any pour (seed ${SEED})`, () => {
  const toPickDays = fc.option(fc.integer({ min: 0, max: 200 }), { nil: undefined });
  const state = fc.constantFrom(...STATES, undefined);

  it.each(Object.keys(STEPS).filter((name) => name !== 'a guard overridden'))('only grow by %s', (name) => {
    let tried = 0;
    fc.assert(
      fc.property(ask, toPickDays, state, (before, picked, word) => {
        const after = STEPS[name]?.(before);
        if (after === undefined) return;
        tried++;
        const of = (a: EatingAsk) => {
          const order = orderOf(a, { toPickDays: picked });
          return barred({ ...order, batch: { ...order.batch, state: word } });
        };
        const now = of(after);
        const place = after.way === before.way ? STRICTER : BY_LEAF;
        for (const { rule, values } of of(before)) {
          const same = now.find((one) => one.rule === rule || place[rule]?.includes(one.rule));
          expect(same, `${rule} fell silent`).toBeDefined();
          if (same?.rule === rule && values.days !== undefined)
            expect(Number(same.values.days)).toBeGreaterThanOrEqual(Number(values.days));
        }
      }),
      runs,
    );
    expect(tried).toBeGreaterThan(50);
  });

  it('only grow as picking comes nearer, or is not told', () => {
    fc.assert(
      fc.property(ask, fc.integer({ min: 0, max: 200 }), fc.integer({ min: 0, max: 200 }), (a, one, other) => {
        const rules = (picked: number | undefined) =>
          barred(orderOf(a, { toPickDays: picked })).map(({ rule }) => rule);
        const far = rules(Math.max(one, other));
        expect(rules(Math.min(one, other))).toEqual(expect.arrayContaining(far));
        expect(rules(undefined)).toEqual(expect.arrayContaining(far));
        expect(rules(Number.NaN)).toEqual(expect.arrayContaining(far));
      }),
      runs,
    );
  });

  it('of a bed only grow by answers that were not given, and by a bed that gets none', () => {
    const bed: fc.Arbitrary<BedSituation> = fc.record({
      feed: fc.constantFrom('soil' as const, 'leaf-and-soil' as const, 'none' as const, undefined),
      eaten: fc.constantFrom('raw-leaf', 'cooked', undefined),
      grows: fc.boolean(),
      sized: fc.boolean(),
      fedDays: fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }),
    });
    const rules = (of: BedSituation) => judge(bedRules, of).map(({ rule }) => rule);
    fc.assert(
      fc.property(bed, (before) => {
        const has = expect.arrayContaining([...rules(before)]);
        expect(rules({ ...before, feed: 'none' })).toEqual(has);
        expect(rules({ ...before, eaten: undefined })).toEqual(has);
        expect(rules({ ...before, sized: false })).toEqual(has);
        expect(rules({ ...before, fedDays: 0 })).toEqual(has);
      }),
      runs,
    );
  });
});
