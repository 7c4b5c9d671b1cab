import { describe, expect, it } from 'vitest';
import { bioassayCautions, bioassaySays } from '#words/en/bioassay.ts';
import { bioassayRules } from '../rules/bioassay.ts';
import { judge } from '../rules/rule.ts';
import { BIOASSAY, type BioassayReading, bioassayDays, bioassayVerdict, type PotsRead } from './bioassay.ts';

const pots = (germinatedCount: number, deformedCount: number, sownCount = 9, potCount = 3): PotsRead => ({
  potCount,
  sownCount,
  germinatedCount,
  deformedCount,
});
const read = (test: PotsRead, control = pots(9, 0), more: Partial<BioassayReading> = {}) =>
  bioassayVerdict({ test, control, sinceSownDays: 25, leavesCount: 3, ...more });
const SOFT_FIRST = ['clear', 'repeat', 'affected'];
const rank = (test: PotsRead, control?: PotsRead) => SOFT_FIRST.indexOf(read(test, control).verdict);

describe('the bean test', () => {
  it('is laid out as published: three pots of each kind, read after three to four weeks at three true leaves', () => {
    expect(BIOASSAY).toMatchObject({ leastPotCount: 3, leastDays: 3 * 7, mostDays: 4 * 7, leavesCount: 3 });
    expect(bioassayDays(100)).toEqual({ readFromDay: 121, readByDay: 128 });
  });

  it('clears a lot whose beans look like the control', () => {
    expect(read(pots(9, 0))).toMatchObject({ verdict: 'clear', reasons: [] });
    expect(read(pots(8, 0))).toMatchObject({ verdict: 'clear', reasons: [] });
  });

  it('finds five of nine deformed against none more than chance: 715/48620 = 0.0147', () => {
    // C(5,5)·C(13,4)/C(18,9) = 715/48620.
    const verdict = read(pots(9, 5));
    expect(verdict).toMatchObject({ verdict: 'affected', reasons: ['deformed'] });
    expect(verdict.deformed.chance).toBeCloseTo(715 / 48620, 12);
  });

  it('tells how many deformed plants it would have taken: four of nine, as three come by chance 1 in 10', () => {
    // C(14,5)/C(18,9) = 2002/48620 = 0.041; C(15,6)/C(18,9) = 5005/48620 = 0.103.
    expect(read(pots(9, 0)).leastToShowCount).toBe(4);
    expect(read(pots(9, 4)).deformed.chance).toBeCloseTo(2002 / 48620, 12);
    expect(read(pots(9, 3)).deformed.chance).toBeCloseTo(5005 / 48620, 12);
  });

  it('asks for a second test where some are deformed but too few to tell', () => {
    for (const count of [1, 2, 3]) expect(read(pots(9, count)).reasons).toEqual(['some-deformed']);
  });

  it('finds a lot in which beans do not come up affected, with nothing deformed to be seen', () => {
    expect(read(pots(0, 0))).toMatchObject({ verdict: 'affected', reasons: ['not-come-up'] });
    expect(read(pots(7, 0))).toMatchObject({ verdict: 'repeat', reasons: ['fewer-came-up'] });
  });

  it('shows nothing where the control did not come up or is deformed itself', () => {
    expect(read(pots(9, 5), pots(7, 0)).reasons).toContain('control-did-not-come-up');
    expect(read(pots(9, 9), pots(9, 1)).verdict).toBe('repeat');
    expect(read(pots(0, 0), pots(0, 0)).verdict).toBe('repeat');
  });

  it('shows nothing with two pots, or with fewer than three beans in each', () => {
    expect(read(pots(6, 6, 6, 2), pots(6, 0, 6, 2)).reasons).toContain('too-few-pots');
    expect(read(pots(6, 0, 6, 3)).reasons).toContain('too-few-pots');
  });

  it('clears nothing that was read too early, but believes harm seen early', () => {
    expect(read(pots(9, 0), undefined, { sinceSownDays: 20 }).reasons).toEqual(['read-too-early']);
    expect(read(pots(9, 0), undefined, { leavesCount: 2 }).reasons).toEqual(['read-too-early']);
    expect(read(pots(9, 0), undefined, { sinceSownDays: Number.NaN }).verdict).toBe('repeat');
    expect(read(pots(9, 6), undefined, { sinceSownDays: 12, leavesCount: 1 }).verdict).toBe('affected');
  });

  it('never clears a lot on counts that do not fit', () => {
    for (const crooked of [
      pots(10, 0),
      pots(5, 6),
      pots(-1, 0),
      pots(8.5, 0),
      pots(Number.NaN, 0),
      pots(9, Number.NaN),
    ]) {
      expect(read(crooked)).toMatchObject({ verdict: 'repeat', reasons: ['counts-do-not-fit'] });
      expect(read(pots(9, 0), crooked).verdict).toBe('repeat');
    }
  });

  it('grows no softer with one more plant deformed or one fewer come up in the test pots', () => {
    for (const control of [pots(9, 0), pots(8, 0), pots(12, 0, 12, 4), pots(12, 1, 12, 4)]) {
      for (let up = 0; up <= 9; up += 1) {
        for (let bent = 0; bent < up; bent += 1) {
          expect(rank(pots(up, bent + 1), control)).toBeGreaterThanOrEqual(rank(pots(up, bent), control));
        }
        if (up > 0) expect(rank(pots(up - 1, 0), control)).toBeGreaterThanOrEqual(rank(pots(up, 0), control));
      }
    }
  });

  it('has one text for each verdict and every number filled in, none of which promises anything', () => {
    for (const test of [pots(9, 0), pots(9, 2), pots(9, 8), pots(0, 0), pots(10, 0)]) {
      const reading = { test, control: pots(9, 0), sinceSownDays: 25, leavesCount: 3 };
      const verdict = bioassayVerdict(reading);
      const [finding, ...more] = judge(bioassayRules, verdict);
      expect(more).toEqual([]);
      const said = [
        bioassayCautions[finding?.rule ?? '']?.(finding?.values ?? {}) ?? '',
        ...bioassaySays(reading, verdict),
      ];
      for (const text of said) {
        expect(text).toMatch(/\.$/);
        expect(text).not.toMatch(/undefined|NaN|\bsafe\b|\bproven\b/i);
      }
    }
  });
});
