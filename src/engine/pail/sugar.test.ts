// The window at its limits, with a product of round figures. The dose itself is held in test/worked/sugar-dose.csv.
import { describe, expect, it } from 'vitest';
import { resolvePart } from '../scraps/resolve.ts';
import { sugarProduct } from '../scraps/sugar.ts';
import type { Recipe } from './recipe.ts';
import { sugarWindow } from './sugar.ts';

const white = sugarProduct('white-sugar');
if (!white) throw new Error('sugar table incomplete');
const exactly = (value: number) => ({ low: value, likely: value, high: value });
/** Half of it hexose, none of it to be soured. */
const plain = { ...white, hexoseGPerKg: exactly(500), bufferEqPerKgPerPh: exactly(0) };

const leaves = resolvePart({
  ...{ name: 'leaves', massKg: 2, dryMatter: 0.2, sugarsGPerKgDm: 50, ph: 5.9 },
  bufferEqPerKgDmPerPh: 0.25,
});
/** So much sugar of its own that it never lacks any. */
const fruit = resolvePart({
  ...{ name: 'fruit', massKg: 3, dryMatter: 0.2, sugarsGPerKgDm: 600, ph: 4.4 },
  bufferEqPerKgDmPerPh: 0.1,
});
const recipe = (massKg: number, plants: Recipe['plants'] = [leaves], waterL = 6): Recipe => ({
  vessel: { volumeL: 12, gasRoom: 0.25 },
  plants,
  water: { volumeL: waterL, alkalinityMeqPerL: 0, ph: 7 },
  sugar: { product: plain, massKg },
  targetPh: 3.9,
});

describe('the sugar of a batch', () => {
  it('is needed, had and to be added as the charge balance says', () => {
    const { ownHexoseG, neededHexoseG, leastHexoseG, terms } = sugarWindow(recipe(0));
    // 2 × 0.2 × 0.25 × 2 = 0.2 eq, and 7.6 L × (1.258925e−4 − 1e−7) = 0.000956; 0.4426668 protons and 1.4 mol a mole.
    expect(terms.acidMol).toBeCloseTo(0.200956 / 0.4426668, 5);
    expect(terms.liquidL).toBeCloseTo(7.6, 9);
    expect(neededHexoseG).toBeCloseTo((180.16 * 0.200956) / (0.4426668 * 1.4), 3);
    // 2 × 0.2 × 50 = 20 g of its own, of which 0.8 is reached.
    expect(ownHexoseG).toBeCloseTo(16, 9);
    expect(leastHexoseG.likely).toBeCloseTo(2 * 58.4195 - 16, 2);
  });
  it('has none of its own without plants', () => {
    expect(sugarWindow(recipe(0, [])).ownHexoseBandG).toEqual({ low: 0, likely: 0, high: 0 });
  });
  it('weighs twice as much as a product of which half is hexose', () => {
    const said = sugarWindow(recipe(0.3));
    expect(said.addedHexoseG).toBe(150);
    expect(said.asProductG).toBeCloseTo(2 * said.leastHexoseG.likely, 9);
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(said.leastProductG[end]).toBeCloseTo(2 * said.leastHexoseG[end], 9);
    }
    expect(said.mostProductG).toBeCloseTo(2 * 152, 9);
  });
  it('is at most 20 g, of 15 to 25, for each litre of water and plant water', () => {
    const { mostHexoseG, mostHexoseBandG } = sugarWindow(recipe(0));
    // 6 L, and 2 kg × 0.8.
    expect(mostHexoseG).toBeCloseTo(152, 9);
    expect([mostHexoseBandG.low, mostHexoseBandG.high].map((g) => Number(g.toFixed(6)))).toEqual([114, 190]);
  });
});

describe('enough and too much', () => {
  it('is enough from the likely least on, and not a gram before', () => {
    // 100.84 g of hexose, 201.7 g of the product.
    expect([0, 0.2, 0.201, 0.2025, 0.3].map((kg) => sugarWindow(recipe(kg)).enough)).toEqual([
      ...[false, false, false],
      ...[true, true],
    ]);
  });
  it('is enough with none where the plants bring all of it', () => {
    const { leastHexoseG, enough, asProductG, window } = sugarWindow(recipe(0, [fruit]));
    expect(leastHexoseG.likely).toBe(0);
    expect([enough, asProductG, window]).toEqual([true, 0, 'open']);
  });
  it('is too much above the most, and not at it: 6 L of water take 120 g, 240 g of the product', () => {
    expect([0, 0.239, 0.24, 0.241, 1].map((kg) => sugarWindow(recipe(kg, [])).tooMuch)).toEqual([
      ...[false, false, false],
      ...[true, true],
    ]);
  });
  it('is taken as too much, and as not enough, where it is not known', () => {
    const { enough, tooMuch } = sugarWindow(recipe(Number.NaN));
    expect([enough, tooMuch]).toEqual([false, true]);
  });
  it('closes the window only where the least is above the most: with nothing in, both are nothing', () => {
    expect(sugarWindow(recipe(0, [], 0)).window).toBe('open');
    expect(sugarWindow(recipe(0)).window).toBe('open');
    expect(sugarWindow(recipe(0, [{ ...leaves, massKg: 8 }], 1)).window).toBe('closed');
  });
  it('takes half as much and some of its own without the margin: 58.42 − 16 g, twice that of the product', () => {
    const { withoutMarginProductG: bare } = sugarWindow(recipe(0));
    expect(bare.likely).toBeCloseTo(2 * (58.4195 - 16), 2);
    expect(bare.low).toBeLessThan(bare.likely);
    expect(bare.high).toBeGreaterThan(bare.likely);
  });
  it('reaches the margin, sourness alone, or none, as more leaves stand in the same litre of water', () => {
    const reached = [0.2, 1, 8].map((massKg) => {
      const { reach, window, withoutMarginProductG, mostProductG } = sugarWindow(
        recipe(0, [{ ...leaves, massKg, dryMatter: exactly(0.3) }], 1),
      );
      return [reach, window, withoutMarginProductG.low <= mostProductG];
    });
    expect(reached).toEqual([
      ['margin', 'open', true],
      ['no margin', 'closed', true],
      ['none', 'closed', false],
    ]);
  });
});

describe('a product that must be soured itself', () => {
  /** 0.1 eq per kg and pH, from pH 5.9. */
  const own = { ...plain, ph: 5.9, bufferEqPerKgPerPh: exactly(0.1) };
  const withProduct = (product: typeof own, plants: Recipe['plants'] = [leaves]) =>
    sugarWindow({ ...recipe(0, plants), sugar: { product, massKg: 0 } });

  it('takes a share of each gram: 180.16 × 0.2 / (0.4426668 × 1.4) = 58.14 g of the 500 in a kilogram', () => {
    expect(withProduct(own).terms.productSelfFraction).toBeCloseTo(0.1162823, 6);
    expect(sugarWindow(recipe(0)).terms.productSelfFraction).toBe(0);
  });
  it('raises the least by 1 / (1 − 2 × 0.1162823)', () => {
    const bare = sugarWindow(recipe(0)).leastHexoseG;
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(withProduct(own).leastHexoseG[end]).toBeCloseTo(bare[end] * 1.303041, 3);
    }
  });
  it('takes none where it is as sour as the target, or more', () => {
    expect(withProduct({ ...own, ph: 3.9 }).terms.productSelfFraction).toBe(0);
    expect(withProduct({ ...own, ph: 3 }).terms.productSelfFraction).toBe(0);
  });
  it('closes the window where twice its share is all of it, and not where nothing is missing', () => {
    // Share 0.4996 at 0.4296 eq per kg and pH, 0.5008 at 0.4307.
    expect(withProduct({ ...own, bufferEqPerKgPerPh: exactly(0.4296) }).leastHexoseG.likely).toBeLessThan(1e6);
    const never = { ...own, bufferEqPerKgPerPh: exactly(0.4307) };
    const closed = withProduct(never);
    expect([closed.window, closed.leastHexoseG.likely, closed.asProductG]).toEqual(['closed', Infinity, Infinity]);
    const { window, leastHexoseG, asProductG, leastProductG } = withProduct(never, [fruit]);
    expect([window, leastHexoseG.likely, asProductG, leastProductG.likely]).toEqual(['open', 0, 0, 0]);
  });
});
