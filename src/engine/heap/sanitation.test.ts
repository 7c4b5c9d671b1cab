import { describe, expect, it } from 'vitest';
import type { LogEntry } from './log.ts';
import { type HeapLog, type RuleId, verdictsOf, type Way } from './sanitation.ts';

/** Days in a row at one temperature; turned on some of them. */
function days(count: number, coreC: number, turned: readonly number[] = [], from = 0): readonly LogEntry[] {
  return Array.from({ length: count }, (_, i) => ({ day: from + i, coreC, turned: turned.includes(from + i) }));
}
const FIVE = [2, 5, 8, 11, 14];

function verdict(rule: RuleId, way: Way, log: Partial<HeapLog> & Pick<HeapLog, 'entries'>) {
  const found = verdictsOf({ method: 'turned', startCn: 30, curedDays: 30, ...log }).find(
    (one) => one.rule === rule && one.way === way,
  );
  if (found === undefined) throw new Error(`${rule} ${way} gives no verdict`);
  return found;
}

describe('7 CFR 205.203(c)(2): C:N 25 to 40, 55 to 77 °C, 3 days still or 15 days turned 5 times', () => {
  it('is met by 15 days in a row at 55 °C, turned five times', () => {
    expect(verdict('cfr-7', 'turned', { entries: days(15, 55, FIVE) })).toMatchObject({ met: true, missing: [] });
  });
  it('lacks a day after 14', () => {
    const found = verdict('cfr-7', 'turned', { entries: days(14, 60, [0, 2, 5, 8, 11]) });
    expect(found.missing).toEqual([{ what: 'days', count: 1, inARow: true }]);
  });
  it('lacks a turning after 4', () => {
    expect(verdict('cfr-7', 'turned', { entries: days(15, 60, FIVE.slice(1)) }).missing).toEqual([
      { what: 'turnings', count: 1 },
    ]);
  });
  it('starts anew after a dip below 55 °C, and after a day that nobody read', () => {
    const dip = [...days(10, 60, FIVE), { day: 10, coreC: 54.9 }, ...days(10, 60, FIVE, 11)];
    const gap = [...days(10, 60, FIVE), ...days(10, 60, FIVE, 11)];
    for (const entries of [dip, gap]) {
      expect(verdict('cfr-7', 'turned', { entries }).missing).toContainEqual({ what: 'days', count: 5, inARow: true });
    }
  });
  it('does not count a day above 77 °C', () => {
    expect(verdict('cfr-7', 'turned', { entries: days(15, 77, FIVE) }).met).toBe(true);
    expect(verdict('cfr-7', 'turned', { entries: days(15, 77.1, FIVE) }).met).toBe(false);
  });
  it('asks for a C:N at the start of 25 to 40, and does not take an unknown one', () => {
    const entries = days(15, 60, FIVE);
    for (const startCn of [25, 40]) expect(verdict('cfr-7', 'turned', { entries, startCn }).met).toBe(true);
    for (const startCn of [24.9, 40.1, Number.NaN, undefined]) {
      expect(verdict('cfr-7', 'turned', { entries, startCn }).met).toBe(false);
    }
  });
  it('takes 3 days in a closed vessel or an aerated pile alone', () => {
    const entries = days(3, 55);
    expect(verdict('cfr-7', 'still', { entries, method: 'closed-vessel' }).met).toBe(true);
    expect(verdict('cfr-7', 'still', { entries, method: 'aerated-pile' }).met).toBe(true);
    for (const method of ['turned', undefined] as const) {
      expect(verdict('cfr-7', 'still', { entries, method }).missing).toEqual([{ what: 'method', way: 'still' }]);
    }
    expect(verdict('cfr-7', 'still', { entries: days(2, 60), method: 'closed-vessel' }).missing).toEqual([
      { what: 'days', count: 1, inARow: true },
    ]);
  });
});

describe('21 CFR 112.54(b): 55 °C, 3 days in a row still, or 15 days not in a row turned 5 times, then curing', () => {
  const dips = [...days(8, 55, [1, 3, 5]), { day: 8, coreC: 40 }, ...days(7, 55, [10, 14], 9)];
  it('takes 15 days with a dip between them', () => {
    expect(verdict('cfr-21', 'turned', { entries: dips }).met).toBe(true);
  });
  it('lacks a day after 14, a turning after 4, and curing where none was told', () => {
    expect(verdict('cfr-21', 'turned', { entries: dips.slice(0, -1) }).missing).toEqual([
      { what: 'days', count: 1, inARow: false },
    ]);
    const four = dips.map((one) => (one.day === 1 ? { ...one, turned: false } : one));
    expect(verdict('cfr-21', 'turned', { entries: four }).missing).toEqual([{ what: 'turnings', count: 1 }]);
    expect(verdict('cfr-21', 'turned', { entries: dips, curedDays: undefined }).missing).toEqual([{ what: 'curing' }]);
  });
  it('does not take 3 days with a dip', () => {
    const entries = [...days(2, 60), { day: 2, coreC: 50 }, ...days(2, 60, [], 3)];
    expect(verdict('cfr-21', 'still', { entries, method: 'closed-vessel' }).met).toBe(false);
  });
});

describe('40 CFR 503 appendix B', () => {
  it('takes 15 days at 55 °C with five turnings, or 3 days still', () => {
    expect(verdict('cfr-40', 'turned', { entries: days(15, 55, FIVE), startCn: undefined }).met).toBe(true);
    expect(verdict('cfr-40', 'still', { entries: days(3, 55), method: 'aerated-pile' }).met).toBe(true);
    expect(verdict('cfr-40', 'turned', { entries: days(15, 54.9, FIVE) }).met).toBe(false);
  });
  it('has a weaker class: 5 days at 40 °C with four hours at 55 °C or more, told by the hour', () => {
    const warm = (hotH: number | undefined, count = 5) =>
      days(count, 42).map((one, i) => (i === 2 ? { ...one, hotH } : one));
    expect(verdict('cfr-40-slight', 'any', { entries: warm(4) }).met).toBe(true);
    expect(verdict('cfr-40-slight', 'any', { entries: warm(3.9) }).met).toBe(false);
    expect(verdict('cfr-40-slight', 'any', { entries: warm(undefined) }).met).toBe(false);
    expect(verdict('cfr-40-slight', 'any', { entries: warm(4, 4) }).met).toBe(false);
  });
});

describe('the organic board of 2006: three days of all of it', () => {
  it('is not met by the core alone, and is by the edge as well', () => {
    const entries = days(3, 60);
    expect(verdict('nosb', 'any', { entries }).missing).toEqual([{ what: 'edge' }]);
    expect(verdict('nosb', 'any', { entries: entries.map((one) => ({ ...one, edgeC: 55 })) }).met).toBe(true);
  });
});

describe('any log', () => {
  it('without a reading meets no rule', () => {
    const entries = FIVE.map((day) => ({ day, turned: true }));
    expect(
      verdictsOf({ entries, method: 'closed-vessel', startCn: 30, curedDays: 30 }).filter(({ met }) => met),
    ).toEqual([]);
  });
  it('counts from the last feeding', () => {
    const fed = [...days(15, 60, FIVE), { day: 15, coreC: 60, fed: true }];
    expect(verdict('cfr-7', 'turned', { entries: fed }).missing).toContainEqual({
      what: 'days',
      count: 15,
      inARow: true,
    });
  });
  it('takes the lowest of several readings of a day', () => {
    const entries = [...days(15, 60, FIVE), { day: 7, coreC: 50 }];
    expect(verdict('cfr-7', 'turned', { entries }).met).toBe(false);
  });
});
