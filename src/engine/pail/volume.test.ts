// Litres of water, sugar and plants added by hand. A batch that stands too high lifts the lid or runs over.
import { describe, expect, it } from 'vitest';
import { lot as lotBetween, recipe } from '../../../test/worked/pail-recipe.ts';
import type { Recipe } from './recipe.ts';
import { fill, layers, lift, withStarter } from './volume.ts';

const lot = (name: string, massKg: number, likely = 1) => lotBetween(name, massKg, likely, [0.1, 0.2]);

const inVessel = ({ water, sugar, plants }: Recipe) => ({ waterL: water.volumeL, sugars: [sugar], plants });

describe('the layers', () => {
  it('are water, then sugar, then each lot of plants, from the floor up', () => {
    expect(layers(inVessel(recipe(5, 0.2, [lot('hedge', 2, 1.25), lot('comfrey', 1)])))).toEqual([
      { kind: 'water', name: 'water', id: undefined, litres: 5 },
      { kind: 'sugar', name: 'white sugar', id: 'white-sugar', litres: 0.1 },
      { kind: 'plant', name: 'hedge', id: undefined, litres: 2.5 },
      { kind: 'plant', name: 'comfrey', id: undefined, litres: 1 },
    ]);
  });
  it('have none of sugar where no sugar is in', () => {
    expect(layers(inVessel(recipe(5))).map(({ kind }) => kind)).toEqual(['water']);
  });
});

describe('the layers with a starter', () => {
  const all = layers(inVessel(recipe(5, 0.2)));
  it('have it on what is left of the water, and under the sugar', () => {
    expect(withStarter(all, 2).map(({ kind, name, litres }) => [kind, name, litres])).toEqual([
      ['water', 'water', 3],
      ['starter', 'starter', 2],
      ['sugar', 'white sugar', 0.1],
    ]);
  });
  it('are the same where there is none', () => {
    expect(withStarter(all, 0)).toBe(all);
  });
});

describe('the fill', () => {
  it('fits up to the fill line and no further: 12 L with a quarter for gas take 9', () => {
    const just = fill(recipe(9));
    expect(just).toMatchObject({ usableL: 9, fits: true, overL: 0, usedPercent: 100 });
    const over = fill(recipe(9.5));
    expect(over).toMatchObject({ usableL: 9, fits: false, overL: 0.5 });
    expect(over.usedPercent).toBeCloseTo(105.5556, 4);
    expect(fill(recipe(8.999)).fits).toBe(true);
    expect(fill(recipe(9.001)).fits).toBe(false);
  });
  it('leaves less for the batch, the more room is kept for gas', () => {
    const usable = (gasRoom: number) => fill({ ...recipe(4), vessel: { volumeL: 12, gasRoom } }).usableL;
    expect(usable(0)).toBe(12);
    expect(usable(0.5)).toBe(6);
    expect(usable(0.9)).toBeCloseTo(1.2, 9);
  });
  it('spreads as the plants do, all to one side: 2 kg at 0.9, 1 and 1.2 L/kg and 1 kg at 1.1, 1.2 and 1.4', () => {
    const { volumeL } = fill(recipe(4, 0.2, [lot('hedge', 2), lot('comfrey', 1, 1.2)]));
    // 4 + 0.1 L of water and sugar; plants 1.8 + 1.1, 2 + 1.2 and 2.4 + 1.4 L.
    expect(volumeL.low).toBeCloseTo(7, 9);
    expect(volumeL.likely).toBeCloseTo(7.3, 9);
    expect(volumeL.high).toBeCloseTo(7.9, 9);
  });
  it('has no spread without plants', () => {
    expect(fill(recipe(4, 0.2)).volumeL).toEqual({ low: 4.1, likely: 4.1, high: 4.1 });
  });
  it('weighs plants, water, sugar and the vessel itself: 3 + 4 + 0.25 kg, and 0.75 kg empty', () => {
    const of = recipe(4, 0.25, [lot('hedge', 2), lot('comfrey', 1)]);
    expect(fill(of).massKg).toBe(7.25);
    expect(fill({ ...of, vessel: { ...of.vessel, emptyMassKg: 0.75 } }).massKg).toBe(8);
  });
});

describe('the lift', () => {
  const lifted = (of: Recipe) => lift(of, fill(of));
  it('is 5 to 15 % by gas: 8 L stand at 8.4 to 9.2', () => {
    const { lowL, highL, passesRim } = lifted(recipe(8));
    expect(lowL).toBeCloseTo(8.4, 9);
    expect(highL).toBeCloseTo(9.2, 9);
    expect(passesRim).toBe(false);
  });
  it('is the floating plants where they stand higher than the gas lifts: 5 kg at 1.2 L/kg on 2 L and 0.1 L of sugar', () => {
    const { lowL, highL } = lifted(recipe(2, 0.2, [lot('hedge', 5)]));
    // Settled 2 + 0.1 + 5 = 7.1 L, with gas 7.455 to 8.165 L; floating 2 + 0.1 + 6.
    expect(lowL).toBeCloseTo(7.455, 9);
    expect(highL).toBeCloseTo(8.165, 9);
    expect(lifted(recipe(1, 0.2, [lot('hedge', 8)])).highL).toBeCloseTo(10.7, 9);
  });
  it('passes the rim where its upper end stands above it, not at it', () => {
    const on = (volumeL: number) => lifted({ ...recipe(2, 0, [lot('hedge', 10)]), vessel: { volumeL, gasRoom: 0 } });
    // 2 L and 10 kg float at 14 L; settled and lifted they stand at 12 × 1.15 = 13.8 L.
    expect(on(13.9).passesRim).toBe(true);
    expect(on(14).passesRim).toBe(false);
    expect(on(14.1).passesRim).toBe(false);
  });
  it('is taken to pass the rim where it is not known', () => {
    expect(lifted(recipe(Number.NaN)).passesRim).toBe(true);
  });
});
