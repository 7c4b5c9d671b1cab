// Hostile inputs for a word of the command line, each by its number: valid inputs spoilt in one to four places, inputs
// out of nothing with the word's own field names, and texts that are cut or broken.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { toJSONSchema } from 'zod/v4/core';
import { type Task, type Word, words } from '#tasks/index.ts';
import { inputs } from '../../contract/inputs.ts';
import { root } from '../../house/code.ts';
import { type Chance, chanceOf } from './chance.ts';
import { NAMES, nasty, nastyNumber, nastyText } from './nasty.ts';
import { copyOf, Members, type Node, nodeOf, type Place, placesOf, textOf } from './node.ts';

const SEED = 90_210;
/** Valid inputs that are drawn beside the contract's examples. */
const DRAWN = 150;

/** Makes the hostile inputs of a word. */
export interface Maker {
  readonly text: (index: number) => string;
}

export function makerOf(word: Word, task: Task): Maker {
  const { cases } = JSON.parse(readFileSync(path.join(root, 'test/contract/examples.json'), 'utf8')) as {
    readonly cases: readonly { readonly word: Word; readonly input: unknown }[];
  };
  const examples = cases.filter((one) => one.word === word).map(({ input }) => input);
  const drawn = fc.sample(inputs[word], { seed: SEED, numRuns: DRAWN });
  const fields = fieldsOf(toJSONSchema(task.schema, { io: 'input', unrepresentable: 'any' }));
  return {
    text(index) {
      const chance = chanceOf(SEED + words.indexOf(word), index);
      const kind = chance.below(100);
      const base = () => nodeOf(chance.pick(chance.oneIn(2) ? examples : drawn));
      if (kind < 14) return textOf(fewDraws(word, cloth(chance, fields)));
      if (kind < 50) return textOf(fewDraws(word, strained(base(), chance)));
      const spoilt = textOf(fewDraws(word, spoil(base(), chance, fields)));
      return kind < 96 ? spoilt : broken(spoilt, chance);
    },
  };
}

/** Every field name that a schema knows. */
function fieldsOf(schema: unknown): readonly string[] {
  if (Array.isArray(schema)) return [...new Set(schema.flatMap(fieldsOf))];
  if (typeof schema !== 'object' || schema === null) return [];
  const { properties } = schema as { properties?: object };
  return [...new Set([...Object.keys(properties ?? {}), ...Object.values(schema).flatMap(fieldsOf)])];
}

function spoil(node: Node, chance: Chance, fields: readonly string[]): Node {
  let top = node;
  for (let times = 1 + chance.below(2) * chance.below(4); times > 0; times--) {
    const places = placesOf(top);
    if (places.length === 0 || chance.oneIn(150)) top = nasty(chance);
    else spoilPlace(chance.pick(places), places, chance, fields);
  }
  return top;
}

/** Numbers at the ends of what may be, fields left out, fields too many: mostly answered. */
function strained(top: Node, chance: Chance): Node {
  for (let times = 1 + chance.below(5); times > 0; times--) {
    const places = placesOf(top);
    if (places.length === 0) return top;
    const place = chance.pick(places);
    if (typeof place.node === 'number') place.put(atAnEnd(place.node, chance));
    else if (place.node instanceof Members && chance.oneIn(4)) place.node.list.push([nastyText(chance), nasty(chance)]);
    else if (place.node === true || place.node === false) place.put(!place.node);
    else if (chance.oneIn(4)) place.remove();
  }
  return top;
}

const ENDS: readonly Node[] = [
  0, -0, 5e-324, 1e-300, 1e-12, 1e-6, 0.01, 0.1, 1, 2, 5, 10, 12, 14, 99, 100, 200, 400, 999, 1000, 2000, 5000,
];

function atAnEnd(value: number, chance: Chance): Node {
  if (chance.oneIn(2)) return chance.pick(ENDS);
  return chance.oneIn(2) ? value * 2 * chance.uniform() : value * 10 ** (chance.below(5) - 2);
}

function spoilPlace(place: Place, places: readonly Place[], chance: Chance, fields: readonly string[]): void {
  const { node, put, remove } = place;
  const kind = chance.below(100);
  if (kind < 22 && typeof node === 'number') put(moved(node, chance));
  else if (kind < 48) put(nasty(chance));
  else if (kind < 58) remove();
  else if (kind < 63) put([node]);
  else if (kind < 68) put(copyOf(chance.pick(places).node));
  else if (node instanceof Members) {
    const name = chance.oneIn(3) ? chance.pick(fields) : chance.oneIn(2) ? chance.pick(NAMES) : nastyText(chance);
    const first = node.list[0];
    if (kind < 80 || first === undefined) node.list.push([name, nasty(chance)]);
    else if (kind < 94) first[0] = name;
    else node.list.push([first[0], nasty(chance)]);
  } else if (Array.isArray(node) && node.length > 0) {
    const item = chance.pick(node);
    const times = chance.pick([1, 2, 41, chance.oneIn(40) ? 1001 : 3]);
    for (let i = 0; i < times; i++) node.push(item);
  } else if (typeof node === 'number') put(moved(node, chance));
  else if (typeof node === 'string') put(chance.oneIn(2) ? node.slice(1) : nastyText(chance));
  else put(nasty(chance));
}

/** A number moved by little or by much. */
function moved(value: number, chance: Chance): Node {
  switch (chance.below(7)) {
    case 0:
      return value * 10 ** (chance.below(640) - 320);
    case 1:
      return -value;
    case 2:
      return value * (1 + chance.uniform() * 1e-9);
    case 3:
      return String(value);
    case 4:
      return value * 10 ** (chance.below(9) - 4);
    case 5:
      return value * 3 * chance.uniform();
    default:
      return nastyNumber(chance);
  }
}

/** An input out of nothing. */
function cloth(chance: Chance, fields: readonly string[], depth = 0): Node {
  const count = chance.below(depth === 0 ? 8 : 4);
  const name = () => (chance.oneIn(6) ? nastyText(chance) : chance.pick(fields));
  const value = (): Node => {
    if (depth > 2 || chance.oneIn(2)) return nasty(chance);
    return chance.oneIn(2) ? cloth(chance, fields, depth + 1) : [cloth(chance, fields, depth + 1)];
  };
  return new Members(Array.from({ length: count }, () => [name(), value()]));
}

function broken(text: string, chance: Chance): string {
  const at = chance.below(text.length);
  switch (chance.below(4)) {
    case 0:
      return text.slice(0, at);
    case 1:
      return `${text.slice(0, at)}${nastyText(chance)}${text.slice(at)}`;
    case 2:
      return `\ufeff${text}`;
    default:
      return `${text}${chance.pick([',', '}', 'x', text, '\u0000'])}`;
  }
}

const LEAST_DRAWS = 20;

/** A forecast is many runs of a model: as few are asked as may be, where the input leaves it open or asks for more. */
function fewDraws(word: Word, node: Node): Node {
  if (word !== 'sour' || !(node instanceof Members)) return node;
  const asked = node.list.find(([key]) => key === 'draws');
  if (asked === undefined) node.list.push(['draws', LEAST_DRAWS]);
  else if (typeof asked[1] === 'number' && asked[1] > LEAST_DRAWS && asked[1] <= 5000) asked[1] = LEAST_DRAWS;
  return node;
}
