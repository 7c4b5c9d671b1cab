// The three pegs of the demo plot, day by day.
import { describe, expect, it } from 'vitest';
import { card, meter, on, rulesOf } from './can-card.ts';

const peg14 = meter([
  [0, 6.3, 'grassy'],
  [1, 5.2, 'grassy'],
  [2, 4.5, 'sour'],
  [4, 4.1, 'sour'],
  [7, 3.8, 'yeasty'],
  [9, 3.7, 'yeasty'],
]);
const peg15 = meter([
  [0, 6.9],
  [3, 6.4],
  [6, 5.7],
  [9, 5.1],
  [12, 4.7],
  [16, 4.4],
  [20, 4.1],
  [22, 4.1],
]);
const peg16 = [
  ...meter([
    [0, 6.4],
    [3, 6.1],
    [6, 6.3, 'egg'],
    [9, 6.9, 'sewage'],
  ]),
  { day: 9, surface: 'larvae' },
] as const;

describe('peg 14, 18 to 22 °C', () => {
  it.each([0, 1, 2, 4])('is souring on day %d', (day) => {
    for (const temperatureC of [18, 20, 22]) expect(on(day, temperatureC, peg14).state).toBe('souring');
  });
  it('is ready on day 7, not held', () => {
    for (const temperatureC of [18, 20, 22])
      expect(on(7, temperatureC, peg14)).toMatchObject({ state: 'ready', held: false });
  });
  it('is held on day 22, fifteen days after day 7, where a reading of day 16 is as sour', () => {
    const longer = [...peg14, ...meter([[16, 3.7]])];
    expect(on(21.9, 20, longer)).toMatchObject({ state: 'ready', held: false });
    expect(on(22, 20, longer)).toMatchObject({ state: 'ready', held: true });
    for (const temperatureC of [18, 20, 22, 29])
      for (const day of [9, 14, 18.9]) expect(on(day, temperatureC, peg14).held).toBe(false);
  });
  it('is held later when it stands cooler', () => {
    expect(on(22, 18, [...peg14, ...meter([[16, 3.7]])]).held).toBe(false);
  });
});

describe('peg 15, 11 °C', () => {
  it.each([0, 3])('is souring on day %d', (day) => {
    expect(on(day, 11, peg15).state).toBe('souring');
  });
  it.each([6, 9, 10, 12, 16, 20, 21])('is slow on day %d', (day) => {
    expect(on(day, 11, peg15).state).toBe('slow');
  });
  it('is ready on day 22', () => {
    expect(on(22, 11, peg15).state).toBe('ready');
  });
  it('is never held: it does not pass 4.0', () => {
    for (let day = 0; day <= 60; day++) expect(on(day, 11, peg15).held).toBe(false);
  });
  it('goes on cooked crops only: the can card holds it', () => {
    const { state, held } = on(22, 11, peg15);
    const said = card({
      ratio: { n: 40, reading: 'to' },
      canL: 10,
      batch: { peg: 15, state, held, ecDsPerM: 4 },
      eaten: 'cooked',
    });
    expect(rulesOf(said, 'hold')).toEqual(['batch-not-held']);
    expect(said.perCan?.concentrateMl).toBeCloseTo(10000 / 41, 1);
  });
});

describe('peg 16, 29 °C', () => {
  it('is souring on day 3', () => {
    expect(on(3, 29, peg16).state).toBe('souring');
  });
  it.each([6, 9])('is lost on day %d', (day) => {
    expect(on(day, 29, peg16).state).toBe('lost');
  });
});

describe('the can card of the demo plot, 1 to 40', () => {
  // 10,000/41, 9,092.18/41 and 7,000/41.
  it.each([
    [10, 244],
    [2 * 4.54609, 222],
    [7, 171],
  ])('marks the jug for a can of %d L at %d mL', (canL, markMl) => {
    const said = card({
      ratio: { n: 40, reading: 'to' },
      canL,
      batch: { peg: 14, state: 'ready', held: true },
      eaten: 'cooked',
    });
    expect(said.measures?.find(({ tool }) => tool === 'jug')?.count).toBe(markMl);
  });
});
