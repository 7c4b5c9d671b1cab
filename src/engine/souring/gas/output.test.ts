// Litres a day read off a course of gas.

import { describe, expect, it } from 'vitest';
import { gasByDay, mostGas, onGrid } from './output.ts';

describe('a column of a grid', () => {
  const days = [0, 0.25, 1];
  const column = [0, 1, 4];

  it('is read on straight lines between its points and held at its ends', () => {
    expect(onGrid(days, column, 0.25)).toBe(1);
    expect(onGrid(days, column, 0.625)).toBe(2.5);
    expect(onGrid(days, column, -3)).toBe(0);
    expect(onGrid(days, column, 9)).toBe(4);
  });

  it('is not known on a day that is not known, nor on an empty grid', () => {
    expect(onGrid(days, column, Number.NaN)).toBeNaN();
    expect(onGrid([], [], 1)).toBeNaN();
  });
});

describe('gas by the day', () => {
  const quarter = Float64Array.from({ length: 13 }, (_, i) => i / 4);
  const co2GPerL = quarter.map((day) => 2 * day);

  it('reads whole days off a grid of six hours and scales with the liquid', () => {
    const one = gasByDay({ curve: { days: quarter, co2GPerL }, liquidL: 1, temperatureC: 20 });
    const ten = gasByDay({ curve: { days: quarter, co2GPerL }, liquidL: 10, temperatureC: 20 });
    expect(one.map(({ day }) => day)).toEqual([0, 1, 2]);
    expect(ten.map(({ gasL }) => gasL / 10)).toEqual(one.map(({ gasL }) => expect.closeTo(gasL, 10)));
  });

  it('leaves out a day only begun, and is empty for an empty course', () => {
    const curve = { days: [0, 1, 1.5], co2GPerL: [0, 1, 2] };
    expect(gasByDay({ curve, liquidL: 1, temperatureC: 20 })).toHaveLength(1);
    expect(gasByDay({ curve: { days: [], co2GPerL: [] }, liquidL: 1, temperatureC: 20 })).toEqual([]);
  });

  it('finds the day of the most, and counts one not known as the most', () => {
    const found = [
      { day: 0, gasL: 1 },
      { day: 1, gasL: 3 },
      { day: 2, gasL: 2 },
    ];
    expect(mostGas(found)?.day).toBe(1);
    expect(mostGas([...found, { day: 3, gasL: Number.NaN }])?.day).toBe(3);
    expect(mostGas([{ day: 0, gasL: Number.NaN }, ...found])?.day).toBe(0);
    expect(mostGas([])).toBeUndefined();
  });
});
