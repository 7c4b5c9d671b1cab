// Words as growers type them, and what is found in them.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { figures } from '../tables/index.ts';
import { habitOf } from './crop-names.ts';

describe('the crops of a bed', () => {
  it.each([
    ['8 tomatoes', ['tomato']],
    ['Kale, chard', ['kale', 'chard']],
    ['squash, climbing beans', ['squash', 'climbing-bean']],
    ['chillies, strawberries', ['chilli', 'strawberry']],
    ['sweet potatoes', ['sweet-potato']],
    ['cherry tomatoes (red)', ['tomato']],
    ["lamb's lettuce & radishes", ['lambs-lettuce', 'radish']],
    ['zucchini and eggplant', ['courgette', 'aubergine']],
    ['Brussels sprouts', ['brussels-sprouts']],
    ['bush tomatoes', ['bush-tomato']],
    ['corn salad', ['lambs-lettuce']],
  ])('%s', (typed, crops) => {
    expect(habitOf(typed)).toMatchObject({ crops, known: true });
  });

  it('lie on the soil and may be eaten raw where the table does not know them, or nothing was told', () => {
    for (const typed of [undefined, '', '3', 'yacon', 'tomatoes, yacon'])
      expect(habitOf(typed), String(typed)).toMatchObject({ known: false, touchesSoil: true });
    expect(habitOf('potatoes, yacon').raw).toBe('either');
  });

  it('take the strictest answer of all that grow there', () => {
    expect(habitOf('tomatoes').touchesSoil).toBe(false);
    expect(habitOf('tomatoes, strawberries').touchesSoil).toBe(true);
    expect(habitOf('potatoes').raw).toBe('rarely');
    expect(habitOf('potatoes, lettuce').raw).toBe('usually');
  });
});

describe('data/eating.csv', () => {
  const table = figures('eating');
  const parts = ['leaf', 'fruit', 'root', 'stem', 'flower', 'seed', 'bulb'];

  it('tells of each crop one part, how it is eaten, and whether it touches soil or is splashed', () => {
    for (const [id, row] of table) {
      expect(
        parts.filter((part) => row[part] !== undefined),
        id,
      ).toHaveLength(1);
      expect([0, 0.5, 1], id).toContain(row.usuallyRaw?.likely);
      expect([0, 1], id).toContain(row.touchesSoil?.likely);
      expect([0, 1], id).toContain(row.splashed?.likely);
    }
  });

  it('has every root and bulb touch the soil', () => {
    for (const [id, row] of table)
      if (row.root !== undefined || row.bulb !== undefined) expect(row.touchesSoil?.likely, id).toBe(1);
  });

  it('finds every crop by its own name', () => {
    const csv = readFileSync(new URL('../../../data/eating.csv', import.meta.url), 'utf8');
    const ids = [
      ...new Set(
        csv
          .trim()
          .split('\n')
          .slice(1)
          .map((line) => line.split(',')[0] ?? ''),
      ),
    ];
    for (const id of ids) expect(habitOf(id.replaceAll('-', ' ')).crops).toEqual([id]);
  });

  // The 32 crops whose demand is published in the planner's table of crops, by their common names.
  it.each([
    ...['asparagus', 'snap bean', 'broad bean', 'beetroot', 'broccoli', 'brussels sprouts', 'cabbage', 'carrot'],
    ...['cauliflower', 'celery', 'cucumber', 'eggplant', 'garlic', 'kale', 'kohlrabi', 'leek', 'lettuce', 'melon'],
    ...['onion', 'pea', 'pepper', 'potato', 'pumpkin', 'radish', 'spinach', 'summer squash', 'sweet corn'],
    ...['sweet potato', 'tomato', 'turnip', 'strawberry', 'apple', 'winter squash', 'collards'],
    ...['rocket', 'chard', 'chilli', 'parsley', 'basil', 'mint', 'coriander', 'thyme'],
  ])('knows %s', (crop) => {
    expect(habitOf(crop).known).toBe(true);
  });
});
