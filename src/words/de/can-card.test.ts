// Every rule that may stand on the can card has a sentence in both languages.
import { describe, expect, it } from 'vitest';
import { SPOON_COUNTRIES, UNITS } from '#engine/quantity/units.ts';
import { batchRules } from '#engine/rules/batch.ts';
import { bedRules } from '#engine/rules/bed.ts';
import { canRules } from '#engine/rules/can.ts';
import { eatingRules } from '#engine/rules/eating.ts';
import { pourHourRules, sprayRules } from '#engine/rules/spray.ts';
import { canCard as english } from '../en/can-card.ts';
import { canCard as german } from './can-card.ts';

const rules = [...batchRules, ...eatingRules, ...canRules, ...bedRules, ...pourHourRules, ...sprayRules];
const ids = rules.map(({ id }) => id);
const stops = rules.filter(({ level }) => level === 'stop');

describe('the can card in two languages', () => {
  it.each([
    ['English', english],
    ['German', german],
  ])('has a sentence for every rule in %s', (_, words) => {
    for (const id of ids) {
      const said = (words.cautions as Record<string, (values: object) => string>)[id]?.({ peg: 14, days: 14, n: 40 });
      expect(said, id).toMatch(/\w{3}/);
    }
  });
  it.each([
    ['English', english],
    ['German', german],
  ])('says what to do instead of every stop, and names those that a reason may pass, in %s', (_, words) => {
    for (const { id, override } of stops) {
      expect(words.instead[id], id).toMatch(/\w{3}.*\.$/);
      expect(words.passable[id] !== undefined, id).toBe(override === 'reason');
    }
  });
  it('has as many steps in both, five at most', () => {
    expect(german.howSteps).toHaveLength(english.howSteps.length);
    expect(german.howSteps.length).toBeLessThanOrEqual(5);
  });
  it('writes a decimal comma in German, and never breaks a figure from its unit', () => {
    expect(german.litres(11.52)).toBe('11,5\u00a0L');
    expect(english.litres(11.52)).toBe('11.5\u00a0L');
    expect(german.ml(243.9)).toBe('244\u00a0mL');
  });
  // A teaspoon taken for a tablespoon triples the dose. The millilitres are those of the units' table, to the tenth.
  it.each(
    SPOON_COUNTRIES.flatMap((spoon) => [['tablespoon', 'tbsp', spoon] as const, ['teaspoon', 'tsp', spoon] as const]),
  )('says what a %s (%s) of %s holds, in both languages', (tool, short, spoon) => {
    const holdsMl = UNITS[`${short}-${spoon}`].factor * 1000;
    for (const words of [english, german]) {
      const said = words.measure({ tool, spoon, count: 2, countText: '2', errorPercent: 0 });
      const figure = /([\d.,]+)\s?mL/.exec(said)?.[1]?.replace(',', '.');
      // Of US spoons no size is said: a household there has no other.
      if (spoon === 'us') expect(figure, said).toBeUndefined();
      else expect(Number(figure), said).toBeCloseTo(holdsMl, 1);
    }
  });
});
