// The sugar of a recipe is judged once: the weigh-in, its cautions and the forecast cannot say otherwise of one pail.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fit } from '#tasks/fit.ts';
import { sour } from '#tasks/sour.ts';
import { sugarSentence } from '#words/en/weigh-in.ts';

const SUGAR_RULES = ['sugar-window-closed', 'may-not-turn-sour', 'more-sugar-than-the-acid-uses'];

const recipes = fc.record({
  vessel: fc.constant({ volumeL: 20, gasRoom: 0.25 }),
  plants: fc.tuple(
    fc.record({
      material: fc.constantFrom('grass-clippings-fresh', 'comfrey', 'nettle'),
      massKg: fc.double({ min: 0.3, max: 6, noNaN: true }),
    }),
  ),
  water: fc.record({
    volumeL: fc.double({ min: 0.1, max: 10, noNaN: true }),
    alkalinityMeqPerL: fc.double({ min: 0, max: 12, noNaN: true }),
  }),
  sugar: fc.record({
    product: fc.constantFrom('cane-molasses', 'white-sugar'),
    massKg: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
});

type Drawn = typeof recipes extends fc.Arbitrary<infer T> ? T : never;

function asked(recipe: Drawn) {
  const atScale = fit(recipe);
  const foretold = sour({ ...recipe, temperatureC: 20 }, { draws: 40, quick: true });
  if (!atScale.ok || !foretold.ok) throw new Error('the recipe was not answered');
  const ofSugar = (cautions: readonly { readonly rule: string; readonly text: string }[]) =>
    cautions.filter(({ rule }) => SUGAR_RULES.includes(rule)).map(({ text }) => text);
  const { sugar, cautions, about } = atScale.value;
  const sentence = sugarSentence(sugar, {
    productName: about.productName,
    leastG: sugar.leastProductG,
    mostG: sugar.mostProductG,
    weighedG: recipe.sugar.massKg * 1000,
  });
  return {
    ...{ sugar, sentence, reach: foretold.value.reach['4.2'] },
    ...{ atScale: ofSugar(cautions), foretold: ofSugar(foretold.value.cautions) },
  };
}

/** The first recipes of a draw for which some amount of the sugar can do just this; the forecast is asked of these alone. */
const drawn = fc.sample(recipes, { seed: 14, numRuns: 300 });
const where = (reach: string, count: number) =>
  drawn
    .filter((recipe) => {
      const answer = fit(recipe);
      return answer.ok && answer.value.sugar.reach === reach;
    })
    .slice(0, count)
    .map(asked);

describe('one judgement of sugar', () => {
  it.each(['margin', 'no margin', 'none'])(
    'is said in the same words at the weigh-in and beside the forecast: %s',
    (reach) => {
      const all = where(reach, 3);
      expect(all).toHaveLength(3);
      for (const { atScale, foretold, sentence } of all) {
        expect(foretold).toEqual(atScale);
        if (reach !== 'margin') expect(atScale).toContain(sentence);
      }
    },
  );

  it('never says that no amount would do of a pail that is foretold to sour', () => {
    const all = [...where('none', 6), ...where('no margin', 3)];
    for (const { reach, sentence } of all)
      if (reach !== null && !reach.openEnded) expect(sentence).not.toMatch(/^No amount .* would do/);
    expect(all.filter(({ sentence }) => /^No amount .* would do/.test(sentence))).toHaveLength(6);
  });

  it('is met where only the margin finds no room: 3 kg of clippings, 8 L of hard water, molasses', () => {
    const { sugar, reach, sentence } = asked({
      vessel: { volumeL: 20, gasRoom: 0.25 },
      plants: [{ material: 'grass-clippings-fresh', massKg: 3 }],
      water: { volumeL: 8, alkalinityMeqPerL: 4.2 },
      sugar: { product: 'cane-molasses', massKg: 0.6 },
    });
    expect([sugar.window, sugar.reach]).toEqual(['closed', 'no margin']);
    expect(reach?.likely).toBeLessThan(6);
    expect(sentence).toMatch(
      /^No amount of .* keeps the margin of two: .* Without a margin \d+ to \d+.g may turn it sour\./,
    );
  });
});
