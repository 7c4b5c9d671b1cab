// Laws of the rescue, whatever the batch: what is never offered, the order of effort, the most sugar, and that the plain
// course is the same with and without a change that changes nothing.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import { judgeBatch } from '#engine/souring/judge.ts';
import type { Look } from '#engine/souring/look.ts';
import { type Batch, course } from '#engine/souring/model/course.ts';
import { type Known, USUAL_SPREAD } from '#engine/souring/model/draws.ts';
import { evenly, runDraws } from '#engine/souring/model/ensemble.ts';
import { learn } from '#engine/souring/model/learn.ts';
import { mixtureOf } from '#engine/souring/model/mixture.ts';
import { likelyParameters } from '#engine/souring/model/parameters.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';
import { mostHexoseGPerL, sugarRoomGPerL } from '#engine/souring/rescue/dose.ts';
import { pick } from '#engine/souring/rescue/expect.ts';
import { mayBeFoul, RESCUES, type Rescue, rescues } from '#engine/souring/rescue.ts';
import { sayRescues } from '#words/en/rescue.ts';

const SEED = 20260411;
const DAYS = 12;
const white = sugarProduct('white-sugar');
if (white === undefined) throw new Error('no white sugar in the table');

const filled = (of: { sugarKg: number; temperatureC: number; openness?: number }): Known => ({
  batch: {
    mixture: mixtureOf({
      plants: [resolvePart({ material: 'grass-clippings-fresh', massKg: 3 })],
      water: { volumeL: 6, alkalinityMeqPerL: 3, ph: 7.6 },
      sugar: { product: white, massKg: of.sugarKg },
    }),
    hourlyC: hourlyC({ warmth: of.temperatureC, days: DAYS, vesselL: 12 }),
    opennessFraction: of.openness ?? 0.15,
  },
  spread: USUAL_SPREAD,
  seed: SEED,
});
const meter = (day: number, ph: number, smell?: Look['smell']): Look => ({
  day,
  ph,
  by: 'meter',
  ...(smell && { smell }),
});

function offered(
  known: Known,
  looks: readonly Look[],
  temperatureC: number,
  draws = 20,
  taught = false,
): readonly Rescue[] {
  const today = Math.max(...looks.map(({ day }) => day));
  const first = runDraws(known, { from: 0, count: draws, days: DAYS });
  const ensemble = taught ? learn({ known, first, looks, days: DAYS }).ensemble : evenly(first);
  const judgement = judgeBatch({ looks, temperatureC, today });
  return rescues({ judgement, looks, known, ensemble, today, drawsCount: draws });
}
const kinds = (options: readonly Rescue[]) => options.map(({ kind }) => kind);
const of = (options: readonly Rescue[], kind: Rescue['kind']) => options.find((one) => one.kind === kind);

const COLD = filled({ sugarKg: 0.12, temperatureC: 10 });
const slowLooks = [meter(0, 6.4), meter(4, 6), meter(8, 5.4)];
const POOR = filled({ sugarKg: 0, temperatureC: 20 });
const poorLooks = [meter(0, 6.3), meter(4, 5.5), meter(8, 5.3)];

describe('what is offered', () => {
  it('for a lost batch is the heap, and nothing else', () => {
    expect(kinds(offered(COLD, [meter(0, 6.3), meter(3, 6.3, 'egg')], 10))).toEqual(['tip']);
  });

  it('is nothing for a batch that is souring or ready', () => {
    expect(offered(POOR, [meter(0, 6.3), meter(2, 5)], 20)).toEqual([]);
    expect(offered(POOR, [meter(0, 6.3), meter(2, 4), meter(4, 3.9)], 20)).toEqual([]);
  });

  it('for a cold slow one begins with waiting and warmth, and ends with the heap', () => {
    const options = offered(COLD, slowLooks, 10, 200, true);
    expect(kinds(options).slice(0, 2)).toEqual(['wait', 'warmth']);
    expect(kinds(options).at(-1)).toBe('tip');
    const warmth = of(options, 'warmth');
    expect(warmth?.helps).toBe(true);
    const [warm, plain] = [warmth?.expects?.reach['4.2'], warmth?.expects?.asItIs['4.2']];
    expect(warm?.reachedFraction ?? 0).toBeGreaterThanOrEqual(plain?.reachedFraction ?? 1);
    expect(warm?.likely ?? 99).toBeLessThan(plain?.likely ?? 99);
  });

  it('holds no sugar while the model has sugar left', () => {
    expect(kinds(offered(COLD, slowLooks, 10))).not.toContain('sugar');
  });

  it('holds sugar where sugar is what is missing, and the model expects more of it', () => {
    const sugar = of(offered(POOR, poorLooks, 20, 40), 'sugar');
    expect(sugar?.helps).toBe(true);
    expect(sugar?.expects?.reach['4.0'].reachedFraction ?? 0).toBeGreaterThan(
      sugar?.expects?.asItIs['4.0'].reachedFraction ?? 1,
    );
  });

  it.each(['egg', 'ammonia', 'sewage', 'butter-gone-off'] as const)(
    'holds no sugar and no starter after a nose said %s, whoever else smelt nothing',
    (smell) => {
      const looks = [meter(0, 6.3), meter(4, 5.5, smell), meter(4.3, 5.4, 'sour'), meter(6, 5.2, 'sour')];
      const options = kinds(offered(POOR, looks, 20));
      expect(options).toContain('tip');
      expect(options).not.toContain('sugar');
      expect(options).not.toContain('starter');
    },
  );

  it('holds no sugar after a climb', () => {
    const looks = [meter(0, 6.3), meter(4, 5.2), meter(6, 5.4)];
    expect(kinds(offered(POOR, looks, 20))).not.toContain('sugar');
  });

  it('skims only where something was seen on top, and shuts out air only where it comes in', () => {
    const film: Look = { day: 8, surface: 'flat-white' };
    expect(kinds(offered(COLD, [...slowLooks, film], 10))).toContain('skim');
    expect(kinds(offered(COLD, slowLooks, 10))).not.toContain('skim');
    expect(kinds(offered(COLD, slowLooks, 10))).toContain('close');
    expect(kinds(offered(filled({ sugarKg: 0.12, temperatureC: 10, openness: 0 }), slowLooks, 10))).not.toContain(
      'close',
    );
  });

  it('expects nothing where nobody knows how warm it stands', () => {
    const options = offered(filled({ sugarKg: 0.12, temperatureC: Number.NaN }), slowLooks, Number.NaN);
    expect(kinds(options)).toEqual(['wait', 'warmth', 'tip']);
    expect(options.every(({ expects }) => expects === undefined)).toBe(true);
  });

  it('is the same every time', () => {
    expect(offered(COLD, slowLooks, 10)).toEqual(offered(COLD, slowLooks, 10));
  });
});

describe(`any batch (seed ${SEED})`, () => {
  const runs = { seed: SEED, numRuns: 12 };
  const batches = fc.record({
    sugarKg: fc.constantFrom(0, 0.03, 0.08, 0.15),
    temperatureC: fc.integer({ min: 6, max: 30 }),
    fall: fc.integer({ min: 0, max: 12 }),
  });

  it('has its options in the order of their effort, never past the most sugar, each with its words', () => {
    fc.assert(
      fc.property(batches, ({ sugarKg, temperatureC, fall }) => {
        const known = filled({ sugarKg, temperatureC });
        const looks = [meter(0, 6.3), meter(5, 6.3 - fall / 20), meter(9, 6.3 - fall / 10)];
        const options = offered(known, looks, temperatureC, 8);
        const order = kinds(options).map((kind) => RESCUES.indexOf(kind));
        expect(order).toEqual([...order].sort((a, b) => a - b));
        expect(new Set(order).size).toBe(order.length);
        expect(kinds(options).at(-1)).toBe('tip');
        const sugar = of(options, 'sugar');
        if (sugar) {
          const inAllGPerL = known.batch.mixture.freeSugarGPerL + Number(sugar.values.hexoseGPerL);
          expect(inAllGPerL).toBeLessThanOrEqual(mostHexoseGPerL() + 1e-9);
        }
        const said = sayRescues(options);
        expect(said.length).toBeGreaterThanOrEqual(options.length);
        expect(said.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
      }),
      runs,
    );
  });
});

describe('the room for sugar', () => {
  it('is the most less what went in at the start and later on, and none once that is reached', () => {
    const { batch } = filled({ sugarKg: 0.05, temperatureC: 15 });
    const added = batch.mixture.freeSugarGPerL;
    expect(sugarRoomGPerL(batch)).toBeCloseTo(20 - added, 9);
    expect(sugarRoomGPerL({ ...batch, changes: [{ day: 2, addHexoseGPerL: 5 }] })).toBeCloseTo(15 - added, 9);
    expect(sugarRoomGPerL({ ...batch, changes: [{ day: 2, addHexoseGPerL: 30 }] })).toBe(0);
    expect(sugarRoomGPerL({ ...batch, mixture: { ...batch.mixture, freeSugarGPerL: Number.NaN } })).toBe(0);
  });
});

describe('a change', () => {
  const { batch } = filled({ sugarKg: 0.05, temperatureC: 20, openness: 1 });
  const run = (changes: Batch['changes']) => course({ ...batch, changes }, likelyParameters, DAYS);

  it('that changes nothing leaves the course as it is', () => {
    expect(run([{ day: 3 }])).toEqual(run(undefined));
    const [same, plain] = [run([{ day: 3, opennessFraction: 1, addHexoseGPerL: 0 }]), run(undefined)];
    for (let point = 0; point < plain.points; point++) expect(same.ph[point]).toBeCloseTo(plain.ph[point] as number, 6);
  });

  it('takes effect on its day, not before', () => {
    const [plain, fed] = [run(undefined), run([{ day: 3, addHexoseGPerL: 5 }])];
    expect([...fed.ph.slice(0, 13)]).toEqual([...plain.ph.slice(0, 13)]);
    expect((fed.sugarGPerL[13] as number) - (plain.sugarGPerL[13] as number)).toBeGreaterThan(1);
  });

  it('of sugar in a batch that runs out of it ends sourer, of starter sours sooner', () => {
    const lowest = (made: ReturnType<typeof run>) => Math.min(...made.ph);
    expect(lowest(run([{ day: 3, addHexoseGPerL: 5 }]))).toBeLessThan(lowest(run(undefined)));
    const [plain, started] = [run(undefined), run([{ day: 0, addStarterGPerL: 0.005 }])];
    expect(started.ph[8] as number).toBeLessThan(plain.ph[8] as number);
  });
});

describe('the draws that are run again', () => {
  it('stand for the whole: heavy ones come as often as they weigh', () => {
    const members = runDraws(COLD, { from: 0, count: 4, days: 1 });
    const picked = pick({ members, weights: Float64Array.from([0.5, 0, 0.25, 0.25]) }, 8);
    expect(picked.members.map(({ index }) => index)).toEqual([0, 2, 3]);
    expect([...picked.weights]).toEqual([0.5, 0.25, 0.25]);
  });
});

describe('what may be foul', () => {
  const judged = (looks: readonly Look[]) => judgeBatch({ looks, temperatureC: 20, today: 6 });
  it('is any batch with a foul word, ever', () => {
    const clean = [meter(0, 6.3), meter(6, 5.2, 'sour')];
    expect(mayBeFoul(judged(clean), clean)).toBe(false);
    const once = [meter(0, 6.3, 'egg'), ...clean.slice(1)];
    expect(mayBeFoul(judged(once), once)).toBe(true);
  });
});
