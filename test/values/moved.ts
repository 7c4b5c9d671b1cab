// Moves safety values as a careless hand would, and says which of the tests that hold them notice. The engine and the
// tests are put together once, each value with a switch in its place; every trial runs them afresh. No file is changed.

import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { compileFunction } from 'node:vm';
import { build, type Plugin } from 'vite';
import { root, type SourceFile } from '../house/code.ts';
import { literalsOf } from '../house/literals.ts';
import type { Value } from './value.ts';

/** What is moved: by the place of a number its new value; by that of code anything. */
export type Moves = ReadonlyMap<string, number>;

type Rows = Readonly<Record<string, readonly (readonly [string, number[]])[]>>;
interface Switches {
  readonly number: (at: string, stands: number) => number;
  readonly turned: (key: string) => boolean;
  readonly tables: (others: Rows, quantities: readonly string[]) => void;
}

const ENGINE = path.join(root, 'src/engine');
const TABLES = path.join(ENGINE, 'tables/generated.ts');
const ENDS = ['low', 'likely', 'high'];

/** The place of a value in a way that tells two turns of one function apart. */
export const keyOf = ({ at, turned }: Value): string => (turned === undefined ? at : `${at}: ${turned[0]}`);

/** Names of the values that no longer hold once these are moved: of all, or of those that are asked about. */
export type Trial = (moves: Moves, asked?: readonly string[]) => readonly string[];

/** Puts engine and tests together with a switch at each value. */
export async function trial(values: readonly Value[]): Promise<Trial> {
  const built = await build({
    root,
    configFile: false,
    logLevel: 'error',
    plugins: [switches(values)],
    build: {
      ssr: path.join(root, 'test/values/values.ts'),
      write: false,
      minify: false,
      rolldownOptions: { output: { format: 'cjs', codeSplitting: false } },
    },
  });
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((one) => ('output' in one ? one.output : []));
  const [made] = outputs.flatMap((one) => (one.type === 'chunk' ? [one.code] : []));
  if (made === undefined) throw new Error('nothing was built of test/values/values.ts');
  const run = compileFunction(made, ['require', 'exports', 'moved']);
  const require = createRequire(import.meta.url);
  return (moves, asked) => {
    const exports: { values?: readonly Value[] } = {};
    run(require, exports, switchesOf(moves));
    const { values: afresh = [] } = exports;
    const tried = asked === undefined ? afresh : afresh.filter(({ name }) => asked.includes(name));
    return tried.filter((value) => !holds(value)).map(({ name }) => name);
  };
}

function holds(value: Value): boolean {
  try {
    value.holds();
    return true;
  } catch {
    return false;
  }
}

function switchesOf(moves: Moves): Switches {
  return {
    number: (at, stands) => moves.get(at) ?? stands,
    turned: (key) => moves.has(key),
    tables: (others, quantities) => {
      for (const [at, value] of moves) if (at.startsWith('data/')) moveRow(others, quantities, at, value);
    },
  };
}

/** A row of a table as `data/heap.csv cfr-7.leastC`, all of its band or one end of it. */
function rowOf(at: string) {
  const found = /^data\/([\w-]+)\.csv (\S+)\.(\w+)(?: (low|likely|high))?$/.exec(at);
  if (found === null) throw new Error(`no row of a table: ${at}`);
  const [, table = '', id = '', quantity = '', end] = found;
  return { table, id, quantity, ends: end === undefined ? ENDS : [end] };
}

function moveRow(others: Rows, quantities: readonly string[], at: string, value: number): void {
  const { flat, start, ends } = placeOf(others, quantities, at);
  for (const end of ends) flat[start + 1 + ENDS.indexOf(end)] = value;
}

function placeOf(others: Rows, quantities: readonly string[], at: string) {
  const { table, id, quantity, ends } = rowOf(at);
  const flat = others[table]?.find(([one]) => one === id)?.[1];
  const start = (flat ?? []).findIndex((one, i) => i % 5 === 0 && quantities[one] === quantity);
  if (flat === undefined || start === -1) throw new Error(`no table has ${at}`);
  return { flat, start, ends };
}

/** What a value stands at: read from the code or the table. */
export async function standing({ at }: Value): Promise<number> {
  if (at.startsWith('data/')) {
    const made = (await import('#engine/tables/generated.ts')) as unknown as { others: Rows; quantities: string[] };
    const { flat, start, ends } = placeOf(made.others, made.quantities, at);
    return flat[start + 1 + ENDS.indexOf(ends.length === 1 ? (ends[0] ?? '') : 'likely')] ?? Number.NaN;
  }
  const [file = '', name = ''] = at.split(' ');
  const found = literalsOf(engineFile(file)).find((one) => one.name === name);
  if (found === undefined) throw new Error(`no number goes by ${at}`);
  return found.value;
}

function engineFile(file: string): SourceFile {
  return { file: `src/engine/${file}`, text: readFileSync(path.join(ENGINE, file), 'utf8') };
}

/** Puts the switches in as the files are read. */
function switches(values: readonly Value[]): Plugin {
  const inCode = values.filter(({ at }) => !at.startsWith('data/'));
  return {
    name: 'switches at safety values',
    enforce: 'pre',
    transform(text, id) {
      if (id === TABLES) return `${text}\nmoved.tables(others, quantities);\n`;
      if (!id.startsWith(`${ENGINE}/`)) return undefined;
      const file = path.relative(ENGINE, id).replaceAll(path.sep, '/');
      const here = inCode.filter(({ at }) => at.startsWith(`${file} `));
      return here.length === 0 ? undefined : withSwitches({ file, text }, here);
    },
  };
}

function withSwitches(source: SourceFile, here: readonly Value[]): string {
  const numbers = new Set(here.flatMap(({ at, turned }) => (turned === undefined ? [at] : [])));
  let { text } = source;
  for (const { name, start, end } of literalsOf(source).toReversed()) {
    const at = `${source.file} ${name}`;
    if (numbers.has(at))
      text = `${text.slice(0, start)}moved.number(${JSON.stringify(at)}, ${text.slice(start, end)})${text.slice(end)}`;
  }
  for (const value of here) {
    if (value.turned === undefined) continue;
    const [from, to] = value.turned;
    if (text.split(from).length !== 2) throw new Error(`${source.file} has not one "${from}"`);
    text = text.replace(from, () => `(moved.turned(${JSON.stringify(keyOf(value))}) ? (${to}) : (${from}))`);
  }
  return text;
}
