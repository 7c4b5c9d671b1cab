// The word `strain` at its edge: all problems at once, unknown elements said, assumptions listed.

import { describe, expect, it } from 'vitest';
import { explainStrain, strain } from './strain.ts';

const good = {
  plants: [{ name: 'leaves', massKg: 3, dryMatter: 0.15, nPercentDm: 3 }],
  water: { volumeL: 6, alkalinityMeqPerL: 2.5 },
  days: 10,
  temperatureC: 20,
  finalPh: 3.8,
  drainedL: 6,
  solidsKg: 2.5,
};
const answered = (input: unknown) => {
  const answer = strain(input);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.value;
};
const rules = (input: unknown) => answered(input).cautions.map((caution) => caution.rule);

describe('strain', () => {
  it('tells every problem at once, at its field', () => {
    const answer = strain({
      ...good,
      plants: [],
      finalPh: 41,
      drainedL: Number.NaN,
      bottle: { volumeL: 1, filledL: 2, cap: 'cork', material: 'plastic' },
    });
    const fields = answer.ok ? [] : answer.problems.map((problem) => problem.field).sort();
    expect(fields).toEqual(['bottle.cap', 'bottle.filledL', 'drainedL', 'finalPh', 'plants']);
    expect(explainStrain({ ...good, finalPh: 41 })).toEqual([]);
  });

  it('bears an input that is no object at all', () => {
    for (const input of [null, 7, 'x', [], { ...good, bottle: null }]) expect(strain(input).ok).toBe(false);
  });

  it('gives null, never 0, for an element nobody knows, and says which', () => {
    const value = answered(good);
    expect(value.liquid.kGPerL).toBeNull();
    expect(value.ceiling.kGPerL).toBeNull();
    expect(value.solids.cn).toBeNull();
    expect(value.unknown.map((gap) => gap.element)).toEqual(['p', 'k', 'ca', 'mg']);
    const said = value.cautions.find((caution) => caution.rule === 'strained-figures-too-low');
    expect(said?.text).toMatch(/leaves: phosphorus, potassium, calcium, magnesium.*too low/);
  });

  it('lists the warmth of a bottle whose place is not told as assumed', () => {
    const bottle = { volumeL: 1, filledL: 0.9, cap: 'vent', material: 'plastic', sugarLeftGPerL: 1 };
    expect(answered({ ...good, bottle }).assumed.map((one) => one.field)).toEqual(['bottle.temperatureC']);
    expect(answered({ ...good, bottle: { ...bottle, temperatureC: 8 } }).assumed).toEqual([]);
  });

  it('asks when more came out than could, and never passes over it', () => {
    // 6 L and 3 × 0.85 = 8.55 L
    expect(rules({ ...good, drainedL: 9 })).toContain('strained-more-than-could');
    expect(rules(good)).not.toContain('strained-more-than-could');
  });

  it('holds back or stops what is not sour, lost, in doubt or unknown', () => {
    const level = (more: object) => answered({ ...good, ...more }).cautions[0]?.level;
    expect(level({ state: 'lost' })).toBe('stop');
    expect(level({ state: 'unknown' })).toBe('hold');
    expect(level({ state: 'doubtful' })).toBe('hold');
    expect(level({ finalPh: 5.2 })).toBe('hold');
    expect(level({ finalPh: 4.4 })).toBe('hold');
    expect(level({ state: 'ready' })).toBe('caution');
    expect(answered({ ...good, state: 'lost' }).useFirst.days.high).toBe(0);
  });

  it('stops a batch with a lot that may not go into a liquid feed', () => {
    const plants = [{ material: 'grass-clippings-fresh', massKg: 3, treated: 'unknown' }];
    expect(rules({ ...good, plants })).toContain('strained-lot-not-for-liquid');
  });

  it('offers a jug above 15 kg', () => {
    expect(rules({ ...good, water: { volumeL: 14, alkalinityMeqPerL: 2 }, drainedL: 14 })).toContain(
      'empty-it-with-a-jug',
    );
    expect(rules(good)).not.toContain('empty-it-with-a-jug');
  });

  it('says that a field it has no word for was not read', () => {
    expect(rules({ ...good, colour: 'brown' })).toContain('field-not-read');
  });
});
