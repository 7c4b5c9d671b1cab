// The help pages: of the command line, of one word with its fields, and of the lists of names. The fields are
// read from the word's own schema, so that help can never say something else than the reading does.

import { toJSONSchema } from 'zod/v4/core';
import { task, type Word } from '#tasks/index.ts';
import { placeWords, sayFields, sayHelp } from '#words/en/command.ts';
import { type List, lists } from './call.ts';

/** What the help pages need of a JSON Schema. */
interface Schema {
  readonly type?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly prefixItems?: readonly Schema[];
  readonly anyOf?: readonly Schema[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly default?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
}

/** A help page as text, or as JSON where it is asked for. */
export async function help(about: Word | List | undefined, json: boolean): Promise<string> {
  if (about === undefined) return json ? print(await allSchemas()) : `${sayHelp().join('\n')}\n`;
  if (lists.some((list) => list === about)) return listPage(about as List, json);
  const schema = await schemaOf(about as Word);
  if (json) return print(schema);
  return `${sayFields(about as Word, fieldLines(schema as Schema)).join('\n')}\n`;
}

async function schemaOf(word: Word): Promise<object> {
  return toJSONSchema((await task(word)).schema, { io: 'input', unrepresentable: 'any' });
}

async function allSchemas(): Promise<object> {
  const { words } = await import('#tasks/index.ts');
  return Object.fromEntries(await Promise.all(words.map(async (word) => [word, await schemaOf(word)])));
}

async function listPage(list: List, json: boolean): Promise<string> {
  const { materialList, sugarList } = await import('#tasks/lists.ts');
  if (list === 'sugars') {
    const sugars = sugarList();
    return json ? print({ sugars }) : lines(sugars.map((one) => [one.id, one.name]));
  }
  const materials = materialList();
  if (json) return print({ materials });
  return lines(
    materials.map(({ id, name, into, why, source }) => [
      id,
      name,
      why === '' ? placeWords[into] : `${placeWords[into]}: ${why} [${source}]`,
    ]),
  );
}

/** Columns as wide as their longest cell; the last one runs on. */
function lines(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)));
  const text = rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd((widths[column] ?? 0) + 2))
      .join('')
      .trimEnd(),
  );
  return `${text.join('\n')}\n`;
}

function print(value: object): string {
  return `${JSON.stringify(value, undefined, 2)}\n`;
}

/** One line for each field of a schema: its path, whether it may be left out, and what it takes. */
export function fieldLines(schema: Schema, path = '', optional = false): readonly string[] {
  const own = path === '' ? [] : [`${path}${optional ? '?' : ''}  ${kindOf(schema)}`];
  if (schema.properties) {
    const required = new Set(schema.required);
    const inner = Object.entries(schema.properties).flatMap(([name, field]) =>
      fieldLines(field, path ? `${path}.${name}` : name, !required.has(name)),
    );
    return [...own, ...inner];
  }
  if (schema.items) return [...own, ...fieldLines(schema.items, `${path}[]`).slice(schema.items.properties ? 1 : 0)];
  return own;
}

function kindOf(schema: Schema): string {
  const usual = schema.default === undefined ? '' : `; ${JSON.stringify(schema.default)} when left out`;
  return kind(schema) + usual;
}

function kind(schema: Schema): string {
  if (schema.const !== undefined) return JSON.stringify(schema.const);
  if (schema.enum) return schema.enum.map((word) => JSON.stringify(word)).join(' | ');
  if (schema.anyOf) return [...new Set(schema.anyOf.map(kind))].join(' or ');
  if (schema.type === 'array') return `a list${limits(schema.minItems, schema.maxItems)}`;
  if (schema.properties) return `{ ${Object.keys(schema.properties).join(', ')} }`;
  if (schema.type === 'number' || schema.type === 'integer') {
    if (schema.exclusiveMinimum !== undefined) {
      return `a number, more than ${schema.exclusiveMinimum}${schema.maximum === undefined ? '' : `, up to ${schema.maximum}`}`;
    }
    return `a number${limits(schema.minimum, schema.maximum)}`;
  }
  if (schema.type === 'boolean') return 'true or false';
  if (schema.type === 'null') return 'null';
  return schema.type === 'string' ? 'a text' : 'any value';
}

function limits(low: number | undefined, high: number | undefined): string {
  if (low !== undefined && high !== undefined) return `, ${low} to ${high}`;
  if (high !== undefined) return `, up to ${high}`;
  return low === undefined ? '' : `, at least ${low}`;
}
