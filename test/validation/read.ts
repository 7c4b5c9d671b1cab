// The published batches as they stand in batches.csv, observed.csv and unmodelled.csv: read, typed, and refused when
// a row is not whole. What was assumed about a batch is a band with its mark; what was measured is a row of its own.
// Next: batch.ts builds the mixture, compare.ts runs it, scores.ts counts.

import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import type { Range } from '#engine/quantity/range.ts';
import { sources } from '#engine/tables/index.ts';

/** What is known or assumed of one batch: quantity to band; a figure without ends is exact. */
export interface Conditions {
  readonly set: string;
  readonly batch: string;
  readonly of: ReadonlyMap<string, Range>;
}

/** One published number. An end alone means "not less than" or "not more than"; both without a value, a span. */
export interface Observed {
  readonly set: string;
  readonly batch: string;
  readonly day: number | undefined;
  readonly quantity: string;
  readonly low: number | undefined;
  readonly value: number | undefined;
  readonly high: number | undefined;
  /** Half of the last printed digit of the value. */
  readonly printedWithin: number;
  readonly unit: string;
  readonly source: string;
  readonly locator: string;
  readonly mark: string;
  readonly use: 'score' | 'left-out';
  readonly reasonLeftOut: string;
  readonly reasonOutside: string;
  readonly note: string;
}

/** A published figure of these batches that no state of the model stands for. */
export interface Unmodelled {
  readonly set: string;
  readonly batch: string;
  readonly what: string;
  readonly value: string;
  readonly source: string;
  readonly why: string;
}

type Row = Readonly<Record<string, string>>;

const MARKS = ['seen', 'derived', 'memory', 'practice'];
const known = new Set(sources.map(({ id }) => id));

function table(file: string): readonly Row[] {
  return parse(readFileSync(new URL(file, import.meta.url), 'utf8'), { columns: true }) as Row[];
}

function cell(row: Row, column: string): string {
  const text = row[column];
  if (text === undefined) throw new Error(`${row.set} ${row.batch}: no column ${column}`);
  return text;
}

function numberOr(row: Row, column: string): number | undefined {
  const text = cell(row, column);
  if (text === '') return undefined;
  const value = Number(text);
  if (!Number.isFinite(value))
    throw new Error(`${row.set} ${row.batch} ${row.quantity}: ${column} "${text}" is not a number`);
  return value;
}

/** Marks and sources as the tables of data/ hold them; a row seen needs a source of data/sources.csv. */
function vouched(row: Row): void {
  const mark = cell(row, 'mark');
  const source = cell(row, 'source');
  const where = `${row.set} ${row.batch} ${row.quantity}`;
  if (!MARKS.includes(mark)) throw new Error(`${where}: mark "${mark}"`);
  if (source !== '' && source !== 'memory' && !known.has(source))
    throw new Error(`${where}: source "${source}" is not in data/sources.csv`);
  if (mark === 'seen' && !known.has(source)) throw new Error(`${where}: seen, but no source`);
}

function halfDigit(text: string): number {
  if (text === '') return 0;
  const digits = text.includes('.') ? text.length - text.indexOf('.') - 1 : 0;
  return 0.5 * 10 ** -digits;
}

/** Every batch with its conditions, in the order of the file. */
export function readConditions(): readonly Conditions[] {
  const made = new Map<string, { set: string; batch: string; of: Map<string, Range> }>();
  for (const row of table('batches.csv')) {
    vouched(row);
    const set = cell(row, 'set');
    const batch = cell(row, 'batch');
    const quantity = cell(row, 'quantity');
    const likely = numberOr(row, 'value');
    if (likely === undefined) throw new Error(`${set} ${batch} ${quantity}: no value`);
    const low = numberOr(row, 'low') ?? likely;
    const high = numberOr(row, 'high') ?? likely;
    if (low > likely || likely > high) throw new Error(`${set} ${batch} ${quantity}: band not in order`);
    const key = `${set} ${batch}`;
    const one = made.get(key) ?? { set, batch, of: new Map<string, Range>() };
    if (one.of.has(quantity)) throw new Error(`${key} ${quantity} stands twice`);
    one.of.set(quantity, { low, likely, high });
    made.set(key, one);
  }
  return [...made.values()];
}

/** Every published number, in the order of the file. */
export function readObserved(): readonly Observed[] {
  return table('observed.csv').map((row) => {
    vouched(row);
    const use = cell(row, 'use');
    if (use !== 'score' && use !== 'left-out') throw new Error(`${row.set} ${row.batch} ${row.quantity}: use "${use}"`);
    const reasonLeftOut = cell(row, 'reason_left_out');
    if ((use === 'left-out') !== (reasonLeftOut !== '')) {
      throw new Error(`${row.set} ${row.batch} ${row.quantity}: a row is left out with a reason, or neither`);
    }
    const low = numberOr(row, 'low');
    const value = numberOr(row, 'value');
    const high = numberOr(row, 'high');
    if (low === undefined && value === undefined && high === undefined) {
      throw new Error(`${row.set} ${row.batch} ${row.quantity}: nothing observed`);
    }
    return {
      set: cell(row, 'set'),
      batch: cell(row, 'batch'),
      day: numberOr(row, 'day'),
      quantity: cell(row, 'quantity'),
      low,
      value,
      high,
      printedWithin: halfDigit(cell(row, 'value')),
      unit: cell(row, 'unit'),
      source: cell(row, 'source'),
      locator: cell(row, 'locator'),
      mark: cell(row, 'mark'),
      use,
      reasonLeftOut,
      reasonOutside: cell(row, 'reason_outside'),
      note: cell(row, 'note'),
    };
  });
}

/** Published figures that the model has no state for. */
export function readUnmodelled(): readonly Unmodelled[] {
  return table('unmodelled.csv').map((row) => ({
    set: cell(row, 'set'),
    batch: cell(row, 'batch'),
    what: cell(row, 'what'),
    value: cell(row, 'value'),
    source: cell(row, 'source'),
    why: cell(row, 'why'),
  }));
}
