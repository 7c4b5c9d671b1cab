// The word `can` at its edges: every problem at once, what an aim needs, what is left out when no dose is allowed.
import { describe, expect, it } from 'vitest';
import { can, canSchema, explainCan } from './can.ts';
import { read } from './problem.ts';

function problems(input: unknown): readonly string[] {
  const answer = can(input);
  return answer.ok ? [] : answer.problems.map(({ field, message }) => `${field} ${message}`);
}

function answer(input: unknown) {
  const got = can(input);
  if (!got.ok) throw new Error(JSON.stringify(got.problems));
  return got.value;
}

const half = { ratio: { n: 200, reading: 'in' }, canL: 9 } as const;

describe('an input of the word can', () => {
  it('reports every problem at once, those between fields beside those of one field', () => {
    expect(problems({ canL: -9, depthLPerM2: 'deep', batch: { ph: 41 }, areaM2: 4 })).toEqual([
      'batch.ph is too large',
      'canL is too small',
      'depthLPerM2 is not a number',
      'ratio is missing',
    ]);
  });
  it.each([
    ['no strength', { canL: 9 }, 'ratio is missing'],
    ['both strengths', { ...half, aim: { nGPerM2: 1 } }, 'aim stands beside a ratio'],
    ['two aims', { canL: 9, aim: { nGPerM2: 1, kGPerM2: 1 } }, 'aim is not one aim'],
    ['an empty aim', { canL: 9, aim: {} }, 'aim is not one aim'],
    [
      'an aim without the batch’s nitrogen',
      { canL: 9, aim: { nGPerM2: 1 }, areaM2: 1, depthLPerM2: 2 },
      'batch.nGPerL is missing',
    ],
    [
      'an aim without an area',
      { canL: 9, aim: { nGPerM2: 1 }, batch: { nGPerL: 1 }, depthLPerM2: 2 },
      'areaM2 is missing',
    ],
    [
      'a salt limit without the water’s salt',
      { canL: 9, aim: { maxEcDsPerM: 1 }, batch: { ecDsPerM: 5 } },
      'water.ecDsPerM is missing',
    ],
    ['an area without a depth', { ...half, areaM2: 4 }, 'depthLPerM2 is missing'],
    [
      'a thimble for a field',
      { ...half, canL: 0.1, areaM2: 5000, depthLPerM2: 2 },
      'canL is too small for so many litres',
    ],
    ['a ratio of nothing', { canL: 9, ratio: { n: 0, reading: 'in' } }, 'ratio.n is too small'],
    ['a ratio that does not say its reading', { canL: 9, ratio: { n: 200 } }, 'ratio.reading is missing'],
    ['an unnamed spoon country', { ...half, spoon: 'home' }, 'spoon is not one of the words known here'],
    ['not an object', 'nine litres', 'input'],
    ['an infinite can', { ...half, canL: Number.POSITIVE_INFINITY }, 'canL'],
    ['a can that is no number', { ...half, canL: Number.NaN }, 'canL is not a number'],
  ])('refuses %s', (_, input, expected) => {
    const got = problems(input);
    expect(
      got.some((line) => line.startsWith(expected)),
      got.join('; '),
    ).toBe(true);
  });
  it('names what it did not read', () => {
    expect(answer({ ...half, colour: 'brown' }).cautions.map((c) => c.rule)).toContain('field-not-read');
  });
  it('is taken as given by the schema', () => {
    expect(read(canSchema, half).ok).toBe(true);
  });
});

describe('an aim in grams', () => {
  // 0.5 g/m² from a batch of 0.5 g/L poured 2 L/m² deep: 1 L of the 2 L is concentrate.
  const aimed = {
    canL: 10,
    aim: { nGPerM2: 0.5 },
    areaM2: 5,
    depthLPerM2: 2,
    batch: {
      peg: 14,
      state: 'ready',
      held: true,
      ph: 3.7,
      ecDsPerM: 1,
      nGPerL: { low: 0.25, likely: 0.5, high: 0.75 },
    },
  };
  it('is met by half and half, and the grams come as a band', () => {
    const got = answer(aimed);
    expect(got.perCan).toEqual({ concentrateMl: 5000, waterMl: 5000 });
    expect(got.concentrateL).toBe(5);
    expect(got.given?.nGPerM2?.likely).toBeCloseTo(0.5, 12);
    expect(got.given?.nGPerM2?.low).toBeLessThan(0.26);
    expect(got.given?.nGPerM2?.high).toBeGreaterThan(0.74);
  });
  it('works for potassium alike', () => {
    const got = answer({ ...aimed, aim: { kGPerM2: 1 }, batch: { ...aimed.batch, kGPerL: 2 } });
    expect(got.perCan?.concentrateMl).toBe(2500);
  });
  it('gives no dose when even the undiluted batch is too weak, and says how far it goes', () => {
    const got = answer({ ...aimed, aim: { nGPerM2: 2 } });
    expect(got.perCan).toBeUndefined();
    expect(got.noDose?.[0]).toMatch(/holds 1\sg\/m²/);
  });
});

describe('a salt limit', () => {
  const limited = {
    canL: 10,
    aim: { maxEcDsPerM: 1 },
    batch: { peg: 14, state: 'ready', held: true, ecDsPerM: 5 },
    water: { alkalinityMeqPerL: 4, ecDsPerM: 0.5 },
  };
  it('fixes the share where the mixture by volume just meets it: (1 − 0.5) / (5 − 0.5) is a ninth', () => {
    expect(answer(limited).perCan?.concentrateMl).toBeCloseTo(10000 / 9, 1);
  });
  it('gives no dose when the water alone stands there', () => {
    expect(answer({ ...limited, aim: { maxEcDsPerM: 0.5 } }).noDose?.length).toBe(1);
  });
});

describe('workings', () => {
  it('stand for every figure of a full answer, and their values are those of the answer', () => {
    const input = {
      ...half,
      areaM2: 9.6,
      depthLPerM2: 2.5,
      batch: { peg: 14, state: 'ready', held: true, ph: 3.7, ecDsPerM: 4, nGPerL: 0.4 },
      water: { alkalinityMeqPerL: 4.24, ecDsPerM: 0.58 },
    };
    const got = answer(input);
    const worked = new Map(explainCan(input).map((w) => [w.figure, w.value]));
    expect(worked.get('perCan.concentrateMl')).toBeCloseTo(got.perCan?.concentrateMl ?? 0, 6);
    expect(worked.get('totalL')).toBe(got.totalL);
    expect(worked.get('diluted.ph')).toEqual(got.diluted.ph);
    expect(worked.get('diluted.ecDsPerM')).toEqual(got.diluted.ecDsPerM);
    expect(worked.get('given.nGPerM2')).toEqual(got.given?.nGPerM2);
    for (const w of explainCan(input)) expect(w.formula.length).toBeGreaterThan(3);
  });
  it('are none for a wrong input and none where no dose is allowed', () => {
    expect(explainCan({})).toEqual([]);
    expect(explainCan({ ...half, batch: { peg: 16, state: 'lost' } })).toEqual([]);
  });
});
