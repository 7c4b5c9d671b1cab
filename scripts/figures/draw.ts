// Which figures of data/ are moved, and where each goes: seeded draws over all tables, by their number of figures.
// A moved figure still passes the checks of scripts/tables.mjs. What is made of the draw is in trial.ts.

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { uniforms } from '../../src/engine/souring/model/draws.ts';
import { makeTables } from '../tables.mjs';

/** One number of one row: `low`, `likely` or `high`. */
export interface Figure {
  readonly table: string;
  readonly line: number;
  readonly id: string;
  readonly quantity: string;
  readonly end: End;
  readonly stands: string;
  readonly source: string;
  readonly mark: string;
}
type End = (typeof ENDS)[number];

/** A figure with its new value and the table as it then reads. */
export interface Moved {
  readonly figure: Figure;
  readonly to: string;
  readonly text: string;
}

const ENDS = ['low', 'likely', 'high'] as const;
/** A row up to its three numbers; none of these cells is ever quoted. */
const ROW = /^([^,"]+),([^,"]+),([^,"]*),([^,"]*),([^,"]*),/;
/** Tables of yes and no: a tenth of a yes is nothing, so they hold no figure that could be moved. */
const MARKS = ['eating.csv'];
const SHARE = 0.1;

/** Every figure of the tables of a folder, but those of yes and no and those that are 0. */
export function figuresOf(folder: string): readonly Figure[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith('.csv') && !MARKS.includes(name))
    .sort()
    .flatMap((table) => figuresIn(table, readFileSync(join(folder, table), 'utf8')));
}

function figuresIn(table: string, text: string): readonly Figure[] {
  const [header = '', ...lines] = text.split('\n');
  if (!header.startsWith('id,quantity,low,likely,high,')) return [];
  return lines.flatMap((row, at) => {
    const [, id = '', quantity = '', ...numbers] = ROW.exec(row) ?? [];
    const [source = '', mark = ''] = originOf(row);
    return ENDS.flatMap((end, i) => {
      const stands = numbers[i] ?? '';
      return Number(stands) === 0 ? [] : [{ table, line: at + 1, id, quantity, end, stands, source, mark }];
    });
  });
}

/** Source and mark of a row; a quoted locator between them may hold commas. */
function originOf(row: string): readonly string[] {
  const found = /^(?:[^,]*,){6}([^,]*),(?:"(?:[^"]|"")*"|[^,]*),([^,]*),/.exec(row);
  return found?.slice(1) ?? [];
}

/** So many figures, spread over the tables by how many each holds, the same for the same seed. */
export function drawn(figures: readonly Figure[], { count, seed }: { count: number; seed: number }): readonly Figure[] {
  const tables = [...new Set(figures.map(({ table }) => table))];
  const held = (table: string) => figures.filter((one) => one.table === table);
  const shares = tables.map((table) => ({ table, share: (count * held(table).length) / figures.length }));
  let left = count - shares.reduce((sum, { share }) => sum + Math.floor(share), 0);
  const byRest = shares.toSorted((a, b) => (b.share % 1) - (a.share % 1));
  return byRest
    .map(({ table, share }) => ({ table, of: Math.floor(share) + (left-- > 0 ? 1 : 0) }))
    .toSorted((a, b) => tables.indexOf(a.table) - tables.indexOf(b.table))
    .flatMap(({ table, of }) => shuffled(held(table), uniforms(seed, tables.indexOf(table))).slice(0, of));
}

function shuffled<T>(list: readonly T[], uniform: () => number): readonly T[] {
  return list
    .map((one) => ({ one, at: uniform() }))
    .toSorted((a, b) => a.at - b.at)
    .map(({ one }) => one);
}

/**
 * A figure a tenth larger or smaller, as the seed has it; the other way where the checks of the tables refuse it, and
 * with the ends of its band pushed along where they refuse both.
 */
export function moved(folder: string, figure: Figure, { seed, at }: { seed: number; at: number }): Moved {
  const way = uniforms(seed, 1000 + at)() < 0.5 ? -SHARE : SHARE;
  for (const along of [false, true]) {
    for (const by of [way, -way]) {
      const tried = movedBy(folder, figure, by, along);
      if (makeTables(folder, new Map([[figure.table, tried.text]])).faults.length === 0) return tried;
    }
  }
  throw new Error(
    `data/${figure.table}:${figure.line + 1}: ${figure.id} ${figure.quantity} cannot be moved by a tenth.`,
  );
}

function movedBy(folder: string, figure: Figure, by: number, along: boolean): Moved {
  const lines = readFileSync(join(folder, figure.table), 'utf8').split('\n');
  const row = lines[figure.line] ?? '';
  const [, id, quantity, ...numbers] = ROW.exec(row) ?? [];
  const place = ENDS.indexOf(figure.end);
  const value = Number((Number(figure.stands) * (1 + by)).toPrecision(12));
  const made = numbers.map((text, i) => {
    if (i === place) return String(value);
    const passed = text !== '' && (i < place ? Number(text) > value : Number(text) < value);
    return along && passed ? String(value) : text;
  });
  lines[figure.line] = [id, quantity, ...made, ''].join(',') + row.slice(ROW.exec(row)?.[0].length ?? 0);
  return { figure, to: String(value), text: lines.join('\n') };
}
