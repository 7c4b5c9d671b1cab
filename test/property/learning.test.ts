// Laws of learning from looks, on batches that are known because the model made them: how often the band holds the
// truth, and what must not matter. Readings carry the errors that the likelihood reckons with, slips included.
import { describe, expect, it } from 'vitest';
import { resolvePart } from '#engine/scraps/resolve.ts';
import { sugarProduct } from '#engine/scraps/sugar.ts';
import type { Look } from '#engine/souring/look.ts';
import { at } from '#engine/souring/model/course.ts';
import { type Known, normals, USUAL_SPREAD, uniforms } from '#engine/souring/model/draws.ts';
import { bandAt, evenly, runDraws } from '#engine/souring/model/ensemble.ts';
import { readingSd } from '#engine/souring/model/evidence.ts';
import { asOf, carriedOver, learn, UNTAUGHT } from '#engine/souring/model/learn.ts';
import { mixtureOf } from '#engine/souring/model/mixture.ts';
import { hourlyC } from '#engine/souring/model/temperature.ts';

const SEED = 20260411;
const DAYS = 10;
const BATCHES = 500;
/** Truths are draws of the same seed that no ensemble holds. */
const TRUTHS_FROM = 50000;
/** Days the bands are asked for, all after the last look. */
const LATER = [4, 6, 9] as const;

const white = sugarProduct('white-sugar');
if (white === undefined) throw new Error('no white sugar in the table');
const known: Known = {
  batch: {
    mixture: mixtureOf({
      plants: [
        resolvePart({ material: 'grass-clippings-fresh', massKg: 2 }),
        resolvePart({ material: 'cabbage-leaves', massKg: 1 }),
      ],
      water: { volumeL: 6, alkalinityMeqPerL: 3, ph: 7.6 },
      sugar: { product: white, massKg: 0.1 },
    }),
    hourlyC: hourlyC({ warmth: 14, days: DAYS, vesselL: 12 }),
    opennessFraction: 0.15,
  },
  spread: USUAL_SPREAD,
  seed: SEED,
};
const first = runDraws(known, { from: 0, count: 1000, days: DAYS });
const prior = evenly(first);
const meter = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });

/** A reading's error as the likelihood has it: normal, and one in twenty four times as wide. */
function errors(stream: number): (by: Look['by']) => number {
  const uniform = uniforms(SEED, 90000 + stream);
  const normal = normals(uniform);
  return (by) => normal() * readingSd(by) * (uniform() < 0.05 ? 4 : 1);
}

describe(`what looks teach (seed ${SEED})`, () => {
  it('the 80 % band of later days holds the truth in 75 to 85 of 100 batches', () => {
    // So many draws that two looks leave enough to speak, and no batch needs draws of its own.
    const many = runDraws(known, { from: 0, count: 2500, days: DAYS });
    const unlearned = evenly(many);
    const truths = runDraws(known, { from: TRUTHS_FROM, count: BATCHES, days: DAYS });
    let held = 0;
    let width = 0;
    let widthBefore = 0;
    truths.forEach(({ run }, t) => {
      const by = t % 2 === 0 ? 'meter' : 'strip';
      const error = errors(t);
      const looks: Look[] = [1.5, 3].map((day) => ({ day, ph: at(run, day, 'ph') + error(by), by }));
      const { ensemble } = learn({ known, first: many, looks, days: DAYS });
      for (const day of LATER) {
        const band = bandAt(ensemble, day, 'ph');
        const ph = at(run, day, 'ph');
        if (ph >= band.low && ph <= band.high) held++;
        width += band.high - band.low;
      }
    });
    for (const day of LATER)
      widthBefore += BATCHES * (bandAt(unlearned, day, 'ph').high - bandAt(unlearned, day, 'ph').low);
    const coverage = held / (LATER.length * BATCHES);
    expect(coverage).toBeGreaterThanOrEqual(0.75);
    expect(coverage).toBeLessThanOrEqual(0.85);
    // A band that holds the truth by staying as wide as it was has learned nothing.
    expect(width).toBeLessThan(0.9 * widthBefore);
  });

  it('draws of a second stage say what many more draws of the first would say', () => {
    const looks = [meter(1, 6.1), meter(3, 5.7), meter(4, 5.4)];
    const many = runDraws(known, { from: 0, count: 6000, days: DAYS });
    const staged = learn({ known, first, looks, days: DAYS });
    const plain = asOf(learn({ known, first: many, looks: [], days: DAYS }), looks);
    expect(staged.stages.length).toBeGreaterThan(1);
    for (const day of LATER) {
      const one = bandAt(staged.ensemble, day, 'ph');
      const other = bandAt(plain, day, 'ph');
      // Some 150 draws speak here: an end of a band half a pH wide is uncertain by about 0.05.
      for (const end of ['low', 'likely', 'high'] as const) expect(Math.abs(one[end] - other[end])).toBeLessThan(0.15);
    }
  });

  it.each([0.5, 1, 2, 3, 4, 5, 7, 9])('a reading exactly on the median of day %d hardly moves it', (day) => {
    const before = bandAt(prior, day, 'ph');
    const learned = learn({ known, first, looks: [], days: DAYS });
    const after = bandAt(asOf(learned, [meter(day, before.likely)]), day, 'ph');
    const width = before.high - before.low;
    // While it falls, some draws have soured and some have not, and a reading between the two humps moves the median
    // between them a little; once most have soured, by less than 0.03.
    expect(Math.abs(after.likely - before.likely)).toBeLessThan(width < 0.6 ? 0.03 : 0.1 * width);
  });

  it('does not depend on the order in which looks arrive, those of one moment included', () => {
    const looks: Look[] = [
      meter(2, 5.1),
      { day: 2, ph: 5.5, by: 'strip', smell: 'sour', who: 'Rake' },
      { day: 2, smell: 'grassy', who: 'Fork' },
      meter(1, 5.9),
    ];
    const one = learn({ known, first, looks, days: DAYS });
    const other = learn({ known, first, looks: [...looks].reverse(), days: DAYS });
    expect(other.ensemble.weights).toEqual(one.ensemble.weights);
    expect(other.belief).toEqual(one.belief);
  });

  it('gives the same answer every time, however the draws were split', () => {
    const looks = [meter(1, 5.9), meter(3, 4.9)];
    const slices = [0, 250, 500, 750].flatMap((from) => runDraws(known, { from, count: 250, days: DAYS }));
    const whole = learn({ known, first, looks, days: DAYS });
    const split = learn({ known, first: slices, looks, days: DAYS });
    expect(split.belief).toEqual(whole.belief);
    expect(bandAt(split.ensemble, 8, 'ph')).toEqual(bandAt(whole.ensemble, 8, 'ph'));
  });

  it('learns nothing from no look, and from a look that saw nothing', () => {
    for (const looks of [[], [{ day: 2 }], [{ day: 2, smell: 'cannot-smell' as const }]]) {
      const { ensemble, effectiveDrawsCount } = learn({ known, first, looks, days: DAYS });
      expect(effectiveDrawsCount).toBeCloseTo(first.length, 6);
      const [after, before] = [bandAt(ensemble, 5, 'ph'), bandAt(prior, 5, 'ph')];
      for (const end of ['low', 'likely', 'high'] as const) expect(after[end]).toBeCloseTo(before[end], 9);
    }
  });

  it('weighs the looks up to a day as if the later ones had not come', () => {
    const looks = [meter(1, 5.6), meter(3, 4.7)];
    const all = learn({ known, first, looks, days: DAYS });
    const early = learn({ known, first, looks: looks.slice(0, 1), days: DAYS });
    const again = bandAt(asOf(all, looks.slice(0, 1)), 5, 'ph');
    const plain = bandAt(early.ensemble, 5, 'ph');
    // Other draws speak; the band is the same within what 1,000 draws can tell.
    expect(Math.abs(again.likely - plain.likely)).toBeLessThan(0.06);
    expect(asOf(all, looks).weights).toEqual(all.ensemble.weights);
  });

  it('hands less than it learned to the next batch of the like, and nothing of warmth and start', () => {
    const { belief } = learn({ known, first, looks: [meter(1, 6), meter(3, 5.8)], days: DAYS });
    const next = carriedOver(belief);
    belief.middle.forEach((middle, i) => {
      expect(Math.abs(next.middle[i] as number)).toBeLessThanOrEqual(Math.abs(middle));
      expect(next.width[i] as number).toBeGreaterThanOrEqual(Math.min(1, belief.width[i] as number) - 1e-12);
    });
    expect([next.middle[4], next.middle[5]]).toEqual([0, 0]);
    expect(carriedOver(UNTAUGHT)).toEqual(UNTAUGHT);
  });
});
