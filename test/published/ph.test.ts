// pH of scraps against the list of the US food agency (fda-cfsan-2007, Approximate pH of Foods and Food Products): a
// material takes the whole range of the items that stand for it, and its middle as likely.

import { describe, it } from 'vitest';
import { between, hold } from './held.ts';
import { num, published, rowBy } from './rows.ts';

const listed = rowBy(published('fda-cfsan-2007.csv'), 'item');

function range(items: readonly string[]): readonly [number, number] {
  const rows = items.map(listed);
  return [Math.min(...rows.map((row) => num(row, 'least'))), Math.max(...rows.map((row) => num(row, 'most')))];
}

const middle = (item: string) => {
  const [least, most] = range([item]);
  return (least + most) / 2;
};

describe('pH of materials', () => {
  it.each([
    ['cabbage-leaves', ['cabbage, green']],
    ['spinach', ['spinach']],
    ['parsley', ['parsley']],
    ['celery', ['celery']],
    ['green-beans', ['beans, wax']],
    ['cucumber', ['cucumbers']],
    ['pumpkin', ['pumpkin']],
    ['pepper', ['peppers', 'peppers, green']],
    ['tomato', ['tomatoes']],
    ['carrot', ['carrots']],
    ['beetroot', ['beets']],
    ['radish-root', ['radishes, white']],
    ['potato', ['potatoes']],
    ['sweet-potato', ['potatoes, sweet']],
    ['onion', ['onions, red', 'onions, white', 'onions, yellow']],
    ['apple', ['apple, eating']],
    ['pear', ['pears, Bartlett']],
    ['peach', ['peaches']],
    ['plum', ['plums, blue', 'plums, red']],
    ['grape', ['grapes, Concord', 'grapes, seedless']],
    ['strawberry', ['strawberries']],
    ['banana-flesh', ['bananas']],
    ['orange-flesh', ['oranges, Florida', 'orange juice, Florida']],
    ['watermelon', ['watermelon']],
    ['pineapple', ['pineapple']],
  ] as const)('%s', (id, items) => {
    hold('materials', id, 'ph', between(...range(items)));
  });

  it.each([
    // A stand-in is given a wider band: another cabbage, the tuber for its skin, a cooked fruit for a raw one.
    ['chinese-cabbage', 'cabbage, green', 0.1, 0.1],
    ['potato-peel', 'potatoes', 0.2, 0.2],
    ['courgette', 'zucchini, cooked', 0.2, 0],
  ] as const)('%s, by a stand-in', (id, item, below, above) => {
    const [least, most] = range([item]);
    hold('materials', id, 'ph', { low: least - below, likely: middle(item), high: most + above });
  });

  it('mixed scraps reach over the kinds they hold', () => {
    const fruit = ['apple, eating', 'bananas', 'oranges, Florida', 'orange juice, Florida', 'pineapple'];
    const [sour, mild] = range(fruit);
    const orange = (3.3 + 4.34) / 2;
    const likely = (middle('apple, eating') + middle('bananas') + orange + middle('pineapple')) / 4;
    hold('materials', 'fruit-scraps-mixed', 'ph', { low: sour, likely, high: mild });
    const [low, high] = range(['cabbage, green', 'carrots', 'cucumbers', 'potatoes']);
    hold('materials', 'vegetable-scraps-mixed', 'ph', { low, high });
    hold('materials', 'kale', 'ph', { low: range(['cabbage, green'])[0] });
    hold('materials', 'melon', 'ph', { high: range(['melon, honeydew'])[1] });
  });
});
