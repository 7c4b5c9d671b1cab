// The word ledger asked how to close a gap: what the garden has comes before anything bought, a full soil gets no more of
// what it is full of, and each sentence says bed, material and amount.

import { beforeAll, describe, expect, it } from 'vitest';
import type { Solve } from '#engine/ground/cover/program.ts';
import { type LedgerResult, ledger } from '#tasks/ledger.ts';
import { loadSolver } from '#tasks/solver/highs.ts';
import { sayLedger } from '#words/en/ledger.ts';

let solve: Solve;
beforeAll(async () => {
  solve = await loadSolver();
});

const season = { from: '2026-04-01', to: '2026-09-30', meanC: 15 };
const beds = [
  { name: 'Middle', areaM2: 5.76, crop: 'kale', soil: { p: { value: 60, unit: 'ppm', method: 'Bray-1' } } },
  { name: 'Gate', areaM2: 5.76, crop: 'tomato' },
];
const sources = [
  { name: 'compost', kind: 'compost', haveKg: 60, mostKgPerM2: 5 },
  { name: 'grass clippings', kind: 'mulch', material: 'grass-clippings-fresh', haveKg: 20, mostKgPerM2: 4 },
  { name: 'a bought meal', kind: 'product', nPercent: 12, costPerKg: 3, release: 'slow' },
];

function asked(change: object = {}): LedgerResult {
  const said = ledger({ ...season, beds, sources, ...change }, solve);
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}
const used = ({ cover }: LedgerResult, bed: string, source: string) =>
  cover?.uses.find((use) => use.bed === bed && use.source === source)?.massKg ?? 0;

describe('a gap in two beds', () => {
  it('is closed from the garden before anything is bought: more clippings, less meal', () => {
    const little = asked({ sources: sources.map((one) => ({ ...one, haveKg: 0 })) });
    const some = asked();
    expect(used(some, 'Gate', 'grass clippings')).toBeGreaterThan(0);
    expect(some.cover?.cost.likely ?? 0).toBeLessThan(little.cover?.cost.likely ?? 0);
  });
  it('brings no compost to a bed whose phosphorus tests more than high, and says that P is full', () => {
    const answer = asked();
    expect(used(answer, 'Middle', 'compost')).toBe(0);
    expect(answer.cover?.binds.join(' ')).toContain('P is full on Middle');
  });
  it('buys nothing without money, and says what stays open', () => {
    const poor = asked({ limits: { money: 0 } });
    expect([poor.cover?.buys, poor.cover?.cost.likely]).toEqual([[], 0]);
    expect(poor.cover?.left.some(({ bed, nutrient }) => bed === 'Middle' && nutrient === 'n')).toBe(true);
  });
  it('is told without a word of the workshop', () => {
    const said = sayLedger(asked()).join(' ');
    expect(said).not.toMatch(/\b(dual|constraint|objective|optimum|optimal|shadow|feasible)\b/i);
    expect(asked().cover?.says.filter((line) => line.startsWith('On '))).not.toEqual([]);
  });
  it('is left out where no source is told', () => {
    expect(asked({ sources: undefined }).cover).toBeUndefined();
  });
});
