// How a bed's crop is eaten, by the words its grower typed: which crops of data/eating.csv stand in them, and of those
// the strictest answer. A crop that the table lacks lies on the soil and may be eaten raw. Days to wait are eating.ts.

import { figures } from '../tables/index.ts';

/** What the table says of everything that grows on a bed, the strictest answer of all. */
export interface Habit {
  /** Ids of the table that were found in the words. */
  readonly crops: readonly string[];
  /** Whether every crop that was named stands in the table. */
  readonly known: boolean;
  /** Whether a part that is eaten lies on or in the soil, or within reach of splash. */
  readonly touchesSoil: boolean;
  /** usually: one of them is mostly eaten raw · either: both ways · rarely: each stands on the list of those rarely eaten raw. */
  readonly raw: 'usually' | 'either' | 'rarely';
}

/** Other English names, each for a row of the table. */
const ALSO: Readonly<Record<string, string>> = {
  ...{ zucchini: 'courgette', 'summer squash': 'courgette', marrow: 'courgette', butternut: 'winter-squash' },
  ...{ eggplant: 'aubergine', brinjal: 'aubergine', capsicum: 'pepper', 'hot pepper': 'chilli' },
  ...{ chili: 'chilli', chile: 'chilli', corn: 'sweet-corn', sweetcorn: 'sweet-corn', beet: 'beetroot' },
  ...{ arugula: 'rocket', cilantro: 'coriander', scallion: 'spring-onion', 'salad onion': 'spring-onion' },
  ...{ rutabaga: 'swede', 'runner bean': 'climbing-bean', 'pole bean': 'climbing-bean', 'fava bean': 'broad-bean' },
  ...{ 'faba bean': 'broad-bean', 'bok choy': 'pak-choi', 'pak choy': 'pak-choi', collard: 'collards' },
  ...{ cantaloupe: 'melon', gherkin: 'cucumber', mustard: 'mustard-greens', salad: 'salad-leaves' },
  ...{ mizuna: 'salad-leaves', 'corn salad': 'lambs-lettuce', radicchio: 'chicory', 'cavolo nero': 'kale' },
  ...{ 'cherry tomato': 'tomato', 'plum tomato': 'tomato' },
  ...{ 'ground tomato': 'bush-tomato', 'tumbling tomato': 'bush-tomato', 'sugar snap': 'pea', mangetout: 'pea' },
  ...{ blackcurrant: 'currant', redcurrant: 'currant', herb: 'herbs', greens: 'mustard-greens' },
};

type Name = readonly [words: readonly string[], id: string];

/** Every name of a crop as its words. */
const NAMES: readonly Name[] = [
  ...[...figures('eating').keys()].map((id): Name => [id.split('-'), id]),
  ...Object.entries(ALSO).map(([name, id]): Name => [name.split(' '), id]),
];
/** Answers already found: a plot has a few beds, and each is asked for again and again. */
const remembered = new Map<string, Habit>();
const MOST_REMEMBERED = 200;

/**
 * How everything on a bed is eaten, by the words as typed, such as "8 tomatoes, kale and chard".
 * @practice data/eating.csv; our caution where a crop is not in it
 */
export function habitOf(crop: string | undefined): Habit {
  const key = crop ?? '';
  const before = remembered.get(key);
  if (before !== undefined) return before;
  if (remembered.size >= MOST_REMEMBERED) remembered.clear();
  const habit = readHabit(key);
  remembered.set(key, habit);
  return habit;
}

function readHabit(crop: string): Habit {
  const inBrackets = crop.match(/\(.*?\)/g) ?? [];
  const found = piecesOf(crop.replace(/\(.*?\)/g, '')).map(cropsIn);
  // Words in brackets are mostly a kind or a count; a crop among them is eaten all the same.
  const crops = [...new Set([...found, ...piecesOf(inBrackets.join()).map(cropsIn)].flat())];
  const allKnown = found.length > 0 && found.every((ids) => ids.length > 0);
  const is = (id: string, quantity: string) => figures('eating').get(id)?.[quantity]?.likely;
  const raw = crops.map((id) => is(id, 'usuallyRaw') ?? 1);
  return {
    crops,
    known: allKnown,
    touchesSoil: !allKnown || crops.some((id) => !(is(id, 'touchesSoil') === 0 && is(id, 'splashed') === 0)),
    raw: raw.some((share) => share === 1)
      ? 'usually'
      : allKnown && raw.every((share) => share === 0)
        ? 'rarely'
        : 'either',
  };
}

/** What is named between commas and the like, each as its words. */
function piecesOf(crop: string): readonly (readonly string[])[] {
  return crop
    .toLowerCase()
    .replace(/['’]/g, '')
    .split(/[,;/&+]|\band\b|\bwith\b/)
    .flatMap((piece) => {
      const words = piece.match(/\p{L}+/gu);
      return words === null ? [] : [words];
    });
}

/** The crops that a few words name; "climbing bean" is not also a bean. */
function cropsIn(words: readonly string[]): readonly string[] {
  const hits = NAMES.flatMap(([name, id]) => {
    const at = words.findIndex((_, i) => name.every((word, j) => isSame(words[i + j], word)));
    return at < 0 ? [] : [{ id, at, end: at + name.length }];
  });
  const within = (one: (typeof hits)[number]) =>
    hits.some((other) => other.at <= one.at && other.end >= one.end && other.end - other.at > one.end - one.at);
  return hits.filter((hit) => !within(hit)).map(({ id }) => id);
}

/** A typed word that is a word of the table, or its plural. */
function isSame(typed: string | undefined, word: string): boolean {
  return (
    typed === word ||
    typed === `${word}s` ||
    typed === `${word}es` ||
    (word.endsWith('y') && typed === `${word.slice(0, -1)}ies`)
  );
}
