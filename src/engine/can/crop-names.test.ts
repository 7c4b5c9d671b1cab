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
    // what is left of a list that ends, or has nothing between two commas
    ['kale, ', ['kale']],
    ['kale,, chard; ', ['kale', 'chard']],
    ['12 leeks / 3 parsnips + beets', ['leek', 'parsnip', 'beetroot']],
    ['garlic with carrots', ['garlic', 'carrot']],
    ['broad  beans', ['broad-bean']],
    // two crops without a comma: only a name within a longer one is left out
    ['sweet potatoes peas', ['pea', 'sweet-potato']],
    ['peas sweet potatoes', ['pea', 'sweet-potato']],
    ['tomatoes climbing beans leeks', ['climbing-bean', 'leek', 'tomato']],
  ])('%s', (typed, crops) => {
    expect(habitOf(typed)).toMatchObject({ crops, known: true });
  });

  // Each name by hand, not out of the list of the code: a name lost there would be lost here too.
  it.each([
    ...[
      ['zucchini', 'courgette'],
      ['summer squash', 'courgette'],
      ['marrow', 'courgette'],
      ['butternut', 'winter-squash'],
    ],
    ...[
      ['eggplant', 'aubergine'],
      ['brinjal', 'aubergine'],
      ['capsicum', 'pepper'],
      ['hot pepper', 'chilli'],
    ],
    ...[
      ['chili', 'chilli'],
      ['chile', 'chilli'],
      ['corn', 'sweet-corn'],
      ['sweetcorn', 'sweet-corn'],
    ],
    ...[
      ['beet', 'beetroot'],
      ['arugula', 'rocket'],
      ['cilantro', 'coriander'],
      ['scallion', 'spring-onion'],
    ],
    ...[
      ['salad onion', 'spring-onion'],
      ['rutabaga', 'swede'],
      ['runner bean', 'climbing-bean'],
    ],
    ...[
      ['pole bean', 'climbing-bean'],
      ['fava bean', 'broad-bean'],
      ['faba bean', 'broad-bean'],
    ],
    ...[
      ['bok choy', 'pak-choi'],
      ['pak choy', 'pak-choi'],
      ['collard', 'collards'],
      ['cantaloupe', 'melon'],
    ],
    ...[
      ['gherkin', 'cucumber'],
      ['mustard', 'mustard-greens'],
      ['salad', 'salad-leaves'],
      ['mizuna', 'salad-leaves'],
    ],
    ...[
      ['corn salad', 'lambs-lettuce'],
      ['radicchio', 'chicory'],
      ['cavolo nero', 'kale'],
    ],
    ...[
      ['cherry tomato', 'tomato'],
      ['plum tomato', 'tomato'],
      ['ground tomato', 'bush-tomato'],
    ],
    ...[
      ['tumbling tomato', 'bush-tomato'],
      ['sugar snap', 'pea'],
      ['mangetout', 'pea'],
    ],
    ...[
      ['blackcurrant', 'currant'],
      ['redcurrant', 'currant'],
      ['herb', 'herbs'],
      ['greens', 'mustard-greens'],
    ],
  ])('%s is %s', (name, id) => {
    expect(habitOf(`1 ${name}`)).toMatchObject({ crops: [id], known: true });
  });

  it('may stand in brackets beside another, and then count too; other words in brackets are no crop', () => {
    // tomatoes are staked, strawberries lie on the soil: what is in brackets must not shorten a wait
    expect(habitOf('tomatoes (strawberries between)')).toMatchObject({
      crops: ['tomato', 'strawberry'],
      known: true,
      touchesSoil: true,
    });
    expect(habitOf('plum tomatoes (3 plants, red)')).toMatchObject({
      crops: ['tomato'],
      known: true,
      touchesSoil: false,
    });
    expect(habitOf('(lettuce)')).toMatchObject({ crops: ['lettuce'], known: false });
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
    expect(habitOf('potatoes, okra').raw).toBe('rarely');
    expect(habitOf('leeks').raw).toBe('either');
    expect(habitOf('potatoes, leeks').raw).toBe('either');
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

  it('has whatever touches the soil splashed too', () => {
    for (const [id, row] of table) if (row.touchesSoil?.likely === 1) expect(row.splashed?.likely, id).toBe(1);
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
