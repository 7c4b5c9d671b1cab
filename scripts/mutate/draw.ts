// The draw: which declarations of a room are changed. A whole room would take hours, so statements of the top level are
// taken in an order that depends on nothing but the seed and their names, until they hold mutants enough.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { parseSync } from 'oxc-parser';
import { mutantLines } from './mutant-lines.ts';

/** A statement of the top level: its file, its first and last line. */
export interface Piece {
  readonly file: string;
  readonly from: number;
  readonly to: number;
}

/** The statements of the top level that can hold a mutant: no imports, no types. */
export function pieces(file: string): readonly Piece[] {
  const text = readFileSync(file, 'utf8');
  const line = (at: number) => text.slice(0, at).split('\n').length;
  return parseSync(file, text)
    .program.body.filter((node) => !isTypes(node))
    .map((node) => ({ file, from: line(node.start), to: line(node.end) }));
}

function isTypes(node: { readonly type: string; readonly declaration?: unknown; readonly source?: unknown }): boolean {
  const inner = node.declaration as { readonly type: string } | null | undefined;
  if (inner) return isTypes(inner);
  return /^(Import|TSInterface|TSTypeAlias|ExportAll)/.test(node.type) || (node.type.startsWith('Export') && !inner);
}

/**
 * Pieces in the order of their draw, as many as hold so many mutants. Two seeds share about as many pieces as chance
 * gives them.
 */
export async function drawn(files: readonly string[], seed: number, mutants: number): Promise<readonly Piece[]> {
  const startLines = await mutantLines(files);
  const inOrder = files
    .flatMap((file) => pieces(file).map((piece, index) => ({ piece, rank: rank(`${seed} ${file} ${index}`) })))
    .sort((a, b) => (a.rank < b.rank ? -1 : 1))
    .map(({ piece }) => piece);
  let left = mutants;
  return inOrder.filter(({ file, from, to }) => {
    const takes = left > 0;
    left -= (startLines.get(file) ?? []).filter((line) => line >= from && line <= to).length;
    return takes;
  });
}

const rank = (text: string) => createHash('sha256').update(text).digest('hex');
