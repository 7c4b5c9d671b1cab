import { describe, expect, it } from 'vitest';
import { judge } from '#engine/rules/rule.ts';
import { waterRules } from '#engine/rules/water.ts';
import { sayWater } from '#words/en/water.ts';
import { problemLine } from './problem.ts';
import { explainWater, type WaterResult, water } from './water.ts';

function answer(input: unknown): WaterResult {
  const ran = water(input);
  if (!ran.ok) throw new Error(ran.problems.map(problemLine).join('\n'));
  return ran.value;
}

function lines(input: unknown): readonly string[] {
  const ran = water(input);
  return ran.ok ? [] : ran.problems.map(problemLine);
}

describe('water, asked with good figures', () => {
  it('answers every figure with its working', () => {
    const alkalinity = { value: 212, unit: 'mg/L CaCO3' };
    const asked = { volumeL: 5.2, freeChlorineMgPerL: 0.6, alkalinity, plantsKg: 3.2, use: 'pail' };
    const figures = Object.entries(answer(asked)).filter(([, value]) => !Array.isArray(value));
    const worked = explainWater(asked);
    expect(figures.length).toBeGreaterThanOrEqual(7);
    for (const [name, value] of figures) {
      expect(worked.find((one) => one.figure === name)?.value).toEqual(value);
    }
  });

  it('tells the field figure of thiosulfate as of unknown basis', () => {
    const { cautions } = answer({ volumeL: 20, freeChlorineMgPerL: 1 });
    const note = cautions.find(({ rule }) => rule === 'thiosulfate-two-figures');
    expect(note?.level).toBe('note');
    expect(note?.text).toContain('1.9');
    expect(note?.text).toContain('basis is not known');
  });

  it('warns above what drinking water may hold', () => {
    const rules = (mg: number) => answer({ volumeL: 20, freeChlorineMgPerL: mg }).cautions.map(({ rule }) => rule);
    expect(rules(4)).not.toContain('more-chlorine-than-drinking-water');
    expect(rules(4.1)).toContain('more-chlorine-than-drinking-water');
  });

  it('says that a degree of hardness was taken as alkalinity', () => {
    const { cautions } = answer({ volumeL: 10, alkalinity: { value: 15, unit: 'dH' } });
    expect(cautions.map(({ rule }) => rule)).toContain('hardness-is-not-alkalinity');
  });

  it('says what it did not read', () => {
    expect(answer({ volumeL: 10, colour: 'brown' }).cautions.map(({ rule }) => rule)).toContain('field-not-read');
  });

  it('speaks in whole sentences with no figure missing', () => {
    for (const use of ['pail', 'can', 'raw-crop'])
      for (const source of ['tap', 'rain', 'roof', 'ditch', 'pond', 'well'])
        for (const chlorine of [{}, { freeChlorineMgPerL: 5 }, { chloramineMgPerL: 0.6 }, { freeChlorineMgPerL: 0 }])
          for (const unit of ['dH', 'mmol/L']) {
            const result = answer({ volumeL: 10, ...chlorine, alkalinity: { value: 5, unit }, use, source });
            for (const line of [...sayWater(result), ...result.cautions.map(({ text }) => text)]) {
              expect(line).toMatch(/^[A-Z0-9].*\.$/);
              expect(line).not.toMatch(/NaN|undefined|unknown [a-z]*[,.]/);
            }
          }
  });
});

describe('the rules of a water', () => {
  it('speak where a figure is no number', () => {
    const nan = { volumeL: 10, freeChlorineMgPerL: Number.NaN, chloramineMgPerL: Number.NaN };
    const rules = judge(waterRules, nan).map(({ rule }) => rule);
    expect(rules).toContain('more-chlorine-than-drinking-water');
    expect(rules).toContain('ascorbic-acid-disputed');
  });
});

describe('water, asked with bad figures', () => {
  it('has no workings', () => {
    expect(explainWater({ volumeL: -5 })).toEqual([]);
  });

  it('names every problem at once, with value and allowed range', () => {
    const said = lines({ volumeL: -5, freeChlorineMgPerL: 200, alkalinity: { value: 'hard', unit: 'dH' }, use: 'tea' });
    expect(said).toHaveLength(4);
    expect(said[0]).toBe('volumeL: is too small (got -5); allowed: 0.000001 to 2000 L');
    expect(said[1]).toContain('freeChlorineMgPerL: is too large (got 200)');
    expect(said[2]).toContain('alkalinity.value: is not a number');
    expect(said[3]).toContain('allowed: pail, can, raw-crop');
  });

  it('asks whose degree an unnamed degree is', () => {
    for (const unit of ['degrees', '°', 'deg', 'Grad', 'hardness']) {
      const [line] = lines({ volumeL: 10, alkalinity: { value: 15, unit } });
      expect(line).toContain('alkalinity.unit: does not say whose degree it is');
      expect(line).toContain('dH (German');
      expect(line).toContain('fH (French');
      expect(line).toContain('clark (English');
    }
  });

  it('lists the units for any other unit, and says when it is missing', () => {
    expect(lines({ volumeL: 10, alkalinity: { value: 15, unit: 'ppm' } })[0]).toContain('mg/L CaCO3');
    expect(lines({ volumeL: 10, alkalinity: { value: 15 } })[0]).toContain('alkalinity.unit: is missing');
    expect(lines({})[0]).toContain('volumeL: is missing');
    expect(lines('tap')[0]).toContain('input:');
  });

  it('refuses an alkalinity that no water has, in the unit it was typed in', () => {
    // 20 meq/L · 2.804 dH per meq/L = 56 dH
    expect(lines({ volumeL: 10, alkalinity: { value: 80, unit: 'dH' } })[0]).toBe(
      'alkalinity.value: is too large (got 80); allowed: 0 to 56 dH',
    );
    expect(lines({ volumeL: 10, alkalinity: { value: Number.NaN, unit: 'dH' } })).toHaveLength(1);
  });
});
