// The model's evidence: bands that were expected, acid that goes missing. Expectations are the balance itself, and
// the published lucerne tables' own ratio.
import { describe, expect, it } from 'vitest';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import { modelEvidence } from './expected.ts';
import { type ApparentBuffer, bufferRise, reasonsBeside } from './expected-reasons.ts';
import { judgeBatch } from './judge.ts';
import type { Look } from './look.ts';
import { at } from './model/course.ts';
import { type Known, USUAL_SPREAD } from './model/draws.ts';
import { runDraws } from './model/ensemble.ts';
import { learn } from './model/learn.ts';
import { mixtureOf } from './model/mixture.ts';
import { hourlyC } from './model/temperature.ts';

const DAYS = 8;
const white = sugarProduct('white-sugar');
if (white === undefined) throw new Error('no white sugar in the table');
const filled = (massKg: number, sugarKg: number, temperatureC = 20): Known => ({
  batch: {
    mixture: mixtureOf({
      plants: [resolvePart({ material: 'grass-clippings-fresh', massKg })],
      water: { volumeL: 6, alkalinityMeqPerL: 2, ph: 7.6 },
      sugar: { product: white, massKg: sugarKg },
    }),
    hourlyC: hourlyC({ warmth: temperatureC, days: DAYS, vesselL: 12 }),
    opennessFraction: 0.1,
  },
  spread: USUAL_SPREAD,
  seed: 7,
});
const meter = (day: number, ph: number): Look => ({ day, ph, by: 'meter' });
const known = filled(2, 0.12);
const first = runDraws(known, { from: 0, count: 400, days: DAYS });
const evidenceOf = (looks: readonly Look[], of = known, members = first) =>
  modelEvidence({ known: of, learned: learn({ known: of, first: members, looks, days: DAYS }), looks });

describe('a reading and its band', () => {
  it('lies within on the course of a batch that the model made, above and below where it is a pH off', () => {
    const [middle] = first;
    if (middle === undefined) throw new Error('no draw');
    const looks = [1, 3].map((day) => meter(day, at(middle.run, day, 'ph')));
    const on = (ph: number) => evidenceOf([...looks, meter(6, at(middle.run, 6, 'ph') + ph)]).readings.at(-1)?.side;
    expect(on(0)).toBe('within');
    expect(on(1)).toBe('above');
    expect(on(-1)).toBe('below');
  });

  it('is made from the looks before it alone: the reading itself does not move its band', () => {
    const band = (ph: number) => evidenceOf([meter(1, 5), meter(2, ph)]).readings[1]?.band;
    const [one, other] = [band(4.3), band(5.1)];
    expect(Math.abs((one?.likely ?? 0) - (other?.likely ?? 9))).toBeLessThan(0.1);
  });

  it('is asked of the last reading up to today, and of readings that are numbers', () => {
    const evidence = evidenceOf([meter(1, 5), { day: 2, ph: Number.NaN, by: 'meter' }, meter(6, 6.4)]);
    expect(evidence.readings).toHaveLength(2);
    expect(reasonsBeside(evidence, 6).map(({ code }) => code)).toContain('above-expected');
    expect(reasonsBeside(evidence, 3).map(({ code }) => code)).not.toContain('above-expected');
    expect(reasonsBeside(undefined, 6)).toEqual([]);
  });
});

describe('an apparent buffer', () => {
  const buffers = (...times: readonly (readonly [low: number, likely: number, high: number])[]): ApparentBuffer[] =>
    times.map(([low, likely, high], day) => ({ day, ph: 5, timesFactor: { low, likely, high } }));

  it('rises when it ends more than 1.73 times above the plants’ own, and above all before it', () => {
    expect(bufferRise(buffers([0.8, 1, 1.2], [1.8, 2.4, 2.8]))?.to.day).toBe(1);
    expect(bufferRise(buffers([0.8, 1, 1.2], [1.7, 2.4, 2.8]))).toBeUndefined();
    expect(bufferRise(buffers([2.2, 3, 4], [2.1, 2.4, 2.8]))).toBeUndefined();
    expect(bufferRise(buffers([2.2, 3, 4]))).toBeUndefined();
  });

  it('is told apart by the published lucerne silage: 1.0 with sucrose, 2.4 without', () => {
    // Scientific Reports 10 (2020) 17782, tables 2 and 3, balanced as this program does: 251 and 581 meq/kg DM/pH against 240.
    const band = (times: number): [number, number, number] => [times * 0.9, times, times * 1.1];
    expect(bufferRise(buffers(band(1), band(251 / 240)))).toBeUndefined();
    expect(bufferRise(buffers(band(1), band(581 / 240)))).toBeDefined();
  });

  it('rises in grass without sugar that stays above pH 6 in warmth, and not in a batch that sours', () => {
    const poor = filled(4, 0, 29);
    const members = runDraws(poor, { from: 0, count: 400, days: DAYS });
    const looks = [meter(0, 6.4), meter(3, 6.1), meter(6, 6.3)];
    const codes = (evidence: ReturnType<typeof evidenceOf>) => reasonsBeside(evidence, 9).map(({ code }) => code);
    expect(codes(evidenceOf(looks, poor, members))).toContain('buffer-rises');
    expect(codes(evidenceOf([meter(0, 6.3), meter(2, 4.7), meter(4, 4.2), meter(7, 4)]))).not.toContain('buffer-rises');
  });
});

describe('a judgement with the model’s evidence', () => {
  const evidence = evidenceOf([meter(0, 6.3), meter(6, 5.9)]);
  const looks = [meter(0, 6.3), meter(2, 4.6)];
  const judged = (extra: object) => judgeBatch({ looks, temperatureC: 20, today: 2, ...extra });

  it('keeps the word of the table', () => {
    for (const some of [looks, [...looks, meter(4, 5.2)], [meter(0, 6.3)]]) {
      const plain = judgeBatch({ looks: some, temperatureC: 20, today: 6 });
      const beside = judgeBatch({ looks: some, temperatureC: 20, today: 6, evidence });
      expect([beside.state, beside.held]).toEqual([plain.state, plain.held]);
    }
  });

  it('says what is odd, and what would answer it', () => {
    const said = judgeBatch({ looks: [meter(0, 6.3), meter(6, 5.9)], temperatureC: 20, today: 6, evidence });
    expect(said.reasons.map(({ code }) => code)).toContain('above-expected');
    expect(said.wouldChange.map(({ code }) => code)).toContain('reading-in-band-answers');
  });

  it('looks again within a day where acid goes missing', () => {
    const buffers = [
      { day: 0, ph: 6.3, timesFactor: { low: 0.5, likely: 1, high: 1.5 } },
      { day: 2, ph: 4.6, timesFactor: { low: 2.5, likely: 3, high: 4 } },
    ];
    expect(judged({}).nextLookDay).toBe(4);
    expect(judged({ evidence: { readings: [], buffers } }).nextLookDay).toBe(3);
  });
});
