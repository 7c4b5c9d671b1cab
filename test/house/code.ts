// Reading our own code: the files of the tree, and what a parser sees in each. The house rules stand beside
// this file, one subject each; every one is a function over a text, so that it can be shown a planted fault.

import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type ParseResult, parseSync } from 'oxc-parser';

export const root = path.join(path.dirname(fileURLToPath(import.meta.url)), '../..');

/** A file of the tree: its path from the root, with slashes, and its text. */
export interface SourceFile {
  readonly file: string;
  readonly text: string;
}

const NOT_OURS = ['node_modules', 'dist', 'build', 'test-results', '.git'];

/** Every file under some folders whose name ends as asked; what is made or installed apart. */
export function filesUnder(folders: readonly string[], ends: RegExp): readonly SourceFile[] {
  const found: SourceFile[] = [];
  for (const folder of folders) visit(folder);
  return found;

  function visit(folder: string): void {
    for (const entry of readdirSync(path.join(root, folder), { withFileTypes: true })) {
      const file = path.posix.join(folder, entry.name);
      if (NOT_OURS.includes(entry.name)) continue;
      if (entry.isDirectory()) visit(file);
      else if (ends.test(entry.name)) found.push({ file, text: readFileSync(path.join(root, file), 'utf8') });
    }
  }
}

/** Code that runs in the product: no tests, no generated table. */
export function codeUnder(folder: string): readonly SourceFile[] {
  return filesUnder([folder], /\.tsx?$/).filter(
    ({ file }) => !/\.test\.tsx?$/.test(file) && file !== 'src/engine/tables/generated.ts',
  );
}

/** A file as the parser sees it; a file it cannot read is a fault of its own. */
export function parse({ file, text }: SourceFile): ParseResult {
  const parsed = parseSync(path.basename(file), text);
  if (parsed.errors.length > 0) throw new Error(`${file}: ${parsed.errors[0]?.message}`);
  return parsed;
}

/** Any node of the parser's tree. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [name: string]: unknown;
}

/** Visits a tree from the top down, each node with the nodes above it, nearest last. Answering false stays above. */
export function walk(top: unknown, see: (node: Node, above: readonly Node[]) => boolean | undefined): void {
  visit(top, []);

  function visit(one: unknown, above: readonly Node[]): void {
    if (Array.isArray(one)) {
      for (const item of one) visit(item, above);
    } else if (isNode(one) && see(one, above) !== false) {
      const here = [...above, one];
      for (const value of Object.values(one)) {
        if (typeof value === 'object' && value !== null) visit(value, here);
      }
    }
  }
}

export function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';
}

/** The line of a place in a text, counted from 1. */
export function lineOf(text: string, at: number): number {
  return text.slice(0, at).split('\n').length;
}
