// What a piece of `npm run faults` is, how pieces are found, and the page their counts make. A piece is a file of
// scripts/faults with one function, `run`; its short form is called by a test.

import { readdirSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { root } from '../house/code.ts';

/** What a piece found. The lines go to docs/reliability.md: counts, and nothing that another machine would count otherwise. */
export interface Found {
  readonly title: string;
  readonly lines: readonly string[];
  readonly failed: number;
  /** Told to the person who runs it and not kept: what depends on the machine. */
  readonly aside?: readonly string[];
}

/** How much of a piece is run: 1 is all of it. */
export interface Options {
  readonly scale: number;
}

export interface Piece {
  readonly name: string;
  readonly run: (options: Options) => Promise<Found>;
}

const FOLDER = path.join(root, 'scripts/faults');

/** The names of all pieces, in order. */
export function pieceNames(): readonly string[] {
  return readdirSync(FOLDER)
    .filter((file) => file.endsWith('.ts'))
    .map((file) => file.slice(0, -'.ts'.length))
    .sort();
}

/** Loads one piece; a file without a function `run` is no piece, and is said to be none. */
export async function loadPiece(name: string): Promise<Piece> {
  const { run } = (await import(pathToFileURL(path.join(FOLDER, `${name}.ts`)).href)) as { run?: Piece['run'] };
  if (typeof run !== 'function') throw new Error(`scripts/faults/${name}.ts has no function run`);
  return { name, run };
}

/** Runs a piece to its end; a piece that throws has failed, and says how. */
export async function runPiece({ name, run }: Piece, options: Options): Promise<Found> {
  try {
    return await run(options);
  } catch (error) {
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    return { title: name, lines: ['The piece itself broke off; nothing of it counts.'], failed: 1, aside: [what] };
  }
}
