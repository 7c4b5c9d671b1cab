// A pail's nitrogen is an upper bound with a range, and the share that reaches a bed is told against its need.

import { describe, expect, it } from 'vitest';
import { ledger } from '#tasks/ledger.ts';
import { sayLedger } from '#words/en/ledger.ts';

/** 9.29 m² that need 12 g of nitrogen and 15 g of potassium a square metre, fed out of one concentrate. */
function season({
  litres,
  n,
  k,
  ratio,
}: {
  readonly litres: number;
  readonly n: number;
  readonly k: number;
  readonly ratio?: number;
}) {
  const thinned =
    ratio === undefined ? { concentrateL: litres } : { pouredL: litres * ratio, ratio: { n: ratio, reading: 'in' } };
  const answer = ledger({
    beds: [{ name: 'A', areaM2: 9.29, crop: 'mixed crop' }],
    crops: [
      {
        name: 'mixed crop',
        source: 'own notes',
        yieldKgPerM2: 1,
        nNeedGPerM2: 12,
        nGPerKg: 3,
        pGPerKg: 3,
        kGPerKg: 15,
      },
    ],
    acts: [{ bed: 'A', kind: 'pour', on: '2026-06-01', ...thinned, nGPerL: n, kGPerL: k }],
    from: '2026-04-01',
    to: '2026-10-01',
  });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
}

describe('a season of 20 pours of 50 mL on 100 square feet', () => {
  // published concentrations of liquids, grams = g/L · 0.050 L · 20; need 111 g N, 139 g K
  it.each([
    [0.05, 0.1, 0.04, 0.07],
    [0.2, 0.4, 0.18, 0.29],
    [0.8, 1.5, 0.7, 1.1],
    [2.0, 4, 1.8, 2.9],
    [3.3, 9, 3.0, 6.5],
  ])('at %f g N and %f g K a litre brings %f %% of the nitrogen and %f %% of the potassium', (n, k, nShare, kShare) => {
    const [bed] = season({ litres: 20 * 0.05, n, k }).beds;
    expect(bed?.needG.n?.likely).toBeCloseTo(111.48, 2);
    expect(bed?.needG.k?.likely).toBeCloseTo(139.35, 2);
    expect(bed?.givenG.n?.likely).toBeCloseTo(n, 9);
    expect(Math.abs((bed?.liquidSharePercent.n?.likely ?? 0) - nShare)).toBeLessThan(0.06);
    expect(Math.abs((bed?.liquidSharePercent.k?.likely ?? 0) - kShare)).toBeLessThan(0.06);
  });

  it('would need about 139 L of a concentrate of 0.8 g N a litre to bring it all', () => {
    const [bed] = season({ litres: 139.35, n: 0.8, k: 0 }).beds;
    expect(bed?.liquidSharePercent.n?.likely).toBeCloseTo(100, 6);
  });

  it('changes in nothing when poured twice as thin with twice the water', () => {
    const [once] = season({ litres: 1, n: 0.8, k: 1.5, ratio: 40 }).beds;
    const [twice] = season({ litres: 1, n: 0.8, k: 1.5, ratio: 80 }).beds;
    expect(twice?.givenG.n?.likely).toBeCloseTo(once?.givenG.n?.likely ?? Number.NaN, 12);
    expect(twice?.liquidSharePercent.k?.likely).toBeCloseTo(once?.liquidSharePercent.k?.likely ?? Number.NaN, 12);
  });

  it('is told as a percentage, and neither "feeds" nor "replaces" stands beside it', () => {
    const value = season({ litres: 1, n: 0.8, k: 1.5 });
    const said = [...sayLedger(value), ...value.cautions.map(({ text }) => text)].join('\n');
    expect(said).toMatch(/the liquid brought 0\.72\u00a0% of the nitrogen/);
    expect(said).not.toMatch(/\bfeeds\b|\breplaces\b/);
  });
});

describe('a soil report of the grower’s own', () => {
  const asked = (p: object, ph?: number) => {
    const answer = ledger({
      beds: [{ name: 'A', areaM2: 10, crop: 'kale', soil: { p, ...(ph === undefined ? {} : { ph }) } }],
      acts: [{ bed: 'A', kind: 'compost', massKg: 5 }],
      from: '2026-04-01',
      to: '2026-10-01',
    });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.value;
  };
  const rules = (value: ReturnType<typeof asked>) => value.cautions.map(({ rule }) => rule);

  it('in lb/acre and in ppm with its method gives one class and one need', () => {
    const pounds = asked({ value: 60, unit: 'lb/acre', method: 'Mehlich-3' });
    const ppm = asked({ value: 30, unit: 'ppm', method: 'Mehlich 3' });
    expect(pounds.beds[0]?.soil.p).toBe('medium');
    expect(ppm.beds[0]?.soil.p).toBe('medium');
    expect(ppm.beds[0]?.needG.p).toEqual(pounds.beds[0]?.needG.p);
  });

  it('that is high sets the need to nothing and asks for no more compost', () => {
    const value = asked({ value: 140, unit: 'lb/acre', method: 'Mehlich-3' });
    expect(value.beds[0]?.needG.p?.high).toBe(0);
    expect(rules(value)).toContain('ground-p-full');
    expect(value.cautions.find(({ rule }) => rule === 'ground-p-full')?.text).toMatch(/no compost/);
  });

  it('without its method, or with one that does not fit, is questioned and given no class', () => {
    expect(rules(asked({ value: 30, unit: 'ppm' }))).toContain('soil-method-missing');
    expect(rules(asked({ value: 30, unit: 'ppm', method: 'ammonium acetate' }))).toContain(
      'soil-method-not-for-element',
    );
    expect(rules(asked({ value: 30, unit: 'mg/L', method: 'Bray-1' }))).toContain('soil-unit-not-for-method');
    expect(rules(asked({ value: 30, unit: 'ppm', method: 'Bray-1' }, 8))).toContain('soil-method-against-ph');
    expect(asked({ value: 30, unit: 'ppm' }).beds[0]?.soil.p).toBeNull();
  });

  it('of a crop nobody knows leaves the need open and says so', () => {
    const answer = ledger({ beds: [{ name: 'A', areaM2: 3, crop: 'oca' }], from: '2026-04-01', to: '2026-10-01' });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    expect(answer.value.beds[0]?.needG).toEqual({ n: null, p: null, k: null });
    expect(answer.value.cautions.map(({ rule }) => rule)).toContain('ground-crop-unknown');
  });
});
