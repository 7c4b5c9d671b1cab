import { describe, expect, it } from 'vitest';
import { adviceStrength, germinationIndexPercent, readGermination, toldApart } from './germination.ts';

const control = { sownCount: 30, germinatedCount: 27, meanRootMm: 20 };
const dishes = (germinatedCount: number, meanRootMm: number, sownCount = 30) => ({
  sownCount,
  germinatedCount,
  meanRootMm,
});

describe('the germination index', () => {
  it('is 100 × (24/27) × (15/20) = 66.7 % by hand', () => {
    // 24/27 = 0.8889; 15/20 = 0.75; 0.8889 × 0.75 = 0.6667
    expect(germinationIndexPercent(dishes(24, 15), control)).toBeCloseTo(66.667, 3);
  });

  it('goes by shares where the two have different numbers of seeds: 100 × (20/40 ÷ 27/30) × (18/20) = 50 %', () => {
    expect(germinationIndexPercent(dishes(20, 18, 40), control)).toBeCloseTo(50, 9);
  });

  it('is 100 % for the water against itself, and 0 where nothing germinated', () => {
    expect(germinationIndexPercent(control, control)).toBeCloseTo(100, 9);
    expect(germinationIndexPercent(dishes(0, Number.NaN), control)).toBe(0);
  });

  it('is not a number where the control gives nothing to divide by', () => {
    expect(germinationIndexPercent(control, dishes(0, 0))).toBeNaN();
    expect(germinationIndexPercent(dishes(0, 0), dishes(0, 0))).toBeNaN();
  });
});

describe('a strength read', () => {
  // with all 27 of 27 the index is 100 × root/20
  it.each([
    [9.9, 'harmful'],
    [10, 'doubtful'],
    [16, 'doubtful'],
    [16.1, 'no-harm'],
    [20, 'no-harm'],
    [20.1, 'above-water'],
  ] as const)('with a mean root of %d mm against 20 is %s', (rootMm, expected) => {
    expect(readGermination(dishes(27, rootMm), control).class).toBe(expected);
  });

  it('counts only with a control of 80 % and 15 mm, and 30 seeds of each', () => {
    const faults = (sample: typeof control, against: typeof control) => readGermination(sample, against).faults;
    expect(faults(control, dishes(24, 15))).toEqual([]);
    expect(faults(control, dishes(23, 15))).toEqual(['control-did-not-germinate']);
    expect(faults(control, dishes(24, 14.9))).toEqual(['control-roots-short']);
    expect(faults(dishes(26, 20, 29), control)).toEqual(['too-few-seeds']);
    expect(readGermination(control, dishes(23, 15)).class).toBeUndefined();
  });

  it('says nothing of being apart from water when it does not count', () => {
    // 27 of 30 against 23 of 30 with roots twice as long: far apart, but the control failed
    expect(readGermination(dishes(27, 40), dishes(23, 20)).apartFromWater).toBe(false);
  });

  it('counts where no seed of the strength germinated, or no root grew: that is the answer, 0 %', () => {
    for (const harmed of [dishes(0, Number.NaN), dishes(0, 0), dishes(20, 0)])
      expect(readGermination(harmed, control)).toMatchObject({ faults: [], indexPercent: 0, class: 'harmful' });
  });

  it.each([
    ['more germinated than sown', dishes(31, 20)],
    ['fewer than none germinated', dishes(-1, 20)],
    ['fewer than none sown', dishes(-2, 20, -1)],
    ['a part of a seed', dishes(20.5, 20)],
    ['a root that is not a number', dishes(20, Number.NaN)],
    ['a root below nothing', dishes(20, -1)],
    ['no seeds', dishes(0, 0, 0)],
  ])('does not count with %s', (_, crooked) => {
    for (const found of [readGermination(crooked, control), readGermination(control, crooked)]) {
      expect([found.faults, found.class, found.apartFromWater]).toEqual([['counts-do-not-fit'], undefined, false]);
    }
  });

  it('is told from water only when more than 25 points away', () => {
    expect(toldApart(75, 100)).toBe(false);
    expect(toldApart(74.9, 100)).toBe(true);
    expect(toldApart(100, 125.1)).toBe(true);
    expect(toldApart(Number.NaN, 100)).toBe(false);
    expect(readGermination(dishes(27, 24), control).apartFromWater).toBe(false);
    expect(readGermination(dishes(27, 26), control).apartFromWater).toBe(true);
  });
});

describe('the strength that follows', () => {
  const tried = (n: number, rootMm: number) => ({ n, sample: dishes(27, rootMm) });

  it('is half the strongest that passed: 1 in 50 passed, so 1 in 100', () => {
    const found = adviceStrength([tried(10, 4), tried(50, 17), tried(100, 19), tried(200, 20)], control);
    expect(found).toEqual({ found: true, n: 100, strongestPassedN: 50 });
  });

  it('passes a strength whose roots are longer than in water: 21 mm against 20', () => {
    expect(adviceStrength([tried(50, 21)], control)).toEqual({ found: true, n: 100, strongestPassedN: 50 });
  });

  it('may be tried undiluted, 1 in 1, and not stronger than that', () => {
    expect(adviceStrength([tried(1, 20)], control)).toEqual({ found: true, n: 2, strongestPassedN: 1 });
    expect(adviceStrength([tried(0.9, 20)], control)).toEqual({ found: false, why: 'not-valid' });
  });

  it('does not trust a pass beyond a weaker strength that failed', () => {
    const found = adviceStrength([tried(50, 18), tried(100, 15), tried(200, 20)], control);
    expect(found).toEqual({ found: true, n: 400, strongestPassedN: 200 });
  });

  it('is none where none passed, and none from a test that does not count', () => {
    expect(adviceStrength([tried(10, 4), tried(200, 16)], control)).toEqual({ found: false, why: 'none-passed' });
    expect(adviceStrength([], control)).toEqual({ found: false, why: 'not-valid' });
    expect(adviceStrength([tried(50, 20), tried(Number.NaN, 20)], control).found).toBe(false);
    expect(adviceStrength([tried(50, 20)], dishes(10, 20))).toEqual({ found: false, why: 'not-valid' });
  });
});
