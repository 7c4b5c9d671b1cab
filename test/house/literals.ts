// Every number that is written out in a file of code, under the name it goes by there: `LEAF_EC_DS_PER_M`,
// `POUR_PH.low`, `LINES.0.ph`, and `holdDays#3` for the third of a function. What they mean is not judged here.

import { type Node, parse, type SourceFile, walk } from './code.ts';

/** A number as it is written, and where. */
export interface Literal {
  readonly name: string;
  readonly value: number;
  readonly start: number;
  readonly end: number;
}

/** The numbers of a file, in the order they are written; of several under one name each gets its place among them. */
export function literalsOf(source: SourceFile): readonly Literal[] {
  const found: Literal[] = [];
  walk(parse(source).program, (node, above) => {
    if (node.type === 'Literal' && typeof node.value === 'number') {
      found.push({ name: nameOf([...above, node]), value: node.value, start: node.start, end: node.end });
    }
    return !node.type.startsWith('TS') || node.type === 'TSAsExpression' || node.type === 'TSSatisfiesExpression';
  });
  const places = new Map<string, number>();
  const many = (name: string) => found.filter((one) => one.name === name).length > 1;
  return found.map((one) => {
    const place = (places.get(one.name) ?? 0) + 1;
    places.set(one.name, place);
    return many(one.name) ? { ...one, name: `${one.name}#${place}` } : one;
  });
}

function nameOf(line: readonly Node[]): string {
  const parts = line.map((node, i) => partOf(node, line[i + 1]));
  return parts.filter((part) => part !== undefined).join('.');
}

/** What one node on the way down gives to the name. */
function partOf(node: Node, below: Node | undefined): string | undefined {
  if (node.type === 'VariableDeclarator' || node.type === 'FunctionDeclaration') return textOf(node.id);
  if (node.type === 'Property') return textOf(node.key);
  if (node.type === 'ArrayExpression' && below !== undefined) {
    const id = idOf(below);
    return id ?? String((node.elements as readonly unknown[]).indexOf(below));
  }
  return undefined;
}

/** The `id: 'name'` of an object, as rules have it. */
function idOf(node: Node): string | undefined {
  if (node.type !== 'ObjectExpression') return undefined;
  const own = (node.properties as readonly Node[]).find(({ key }) => textOf(key) === 'id');
  return own === undefined ? undefined : textOf(own.value);
}

function textOf(node: unknown): string | undefined {
  const { name, value } = (node ?? {}) as { readonly name?: unknown; readonly value?: unknown };
  return typeof name === 'string' ? name : typeof value === 'string' ? value : undefined;
}
