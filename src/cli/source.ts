// Where the input comes from: a file, or standard input. Read whole, as UTF-8, up to a size no recipe reaches;
// what cannot be read is told with its reason and what would do.

import { createReadStream } from 'node:fs';
import path from 'node:path';
import type { Readable } from 'node:stream';
import type { Problem } from '#tasks/problem.ts';
import { STDIN } from './call.ts';

const MOST_BYTES = 5_000_000;
const FILE_WANTED = 'a JSON file that can be read, or - for standard input';

/** A text, or the one problem that kept it from being read. */
export type Text = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problem: Problem };

/** What the outside world gives: the open standard input, and the folder that file names start from. */
export interface Surroundings {
  readonly stdin: Readable & { readonly isTTY?: boolean };
  readonly folder: string;
}

/** The text of a file, or of standard input for `-`. */
export async function readSource(file: string, { stdin, folder }: Surroundings): Promise<Text> {
  if (file === STDIN && stdin.isTTY) return refuse('FILE', undefined, 'is missing', FILE_WANTED);
  const stream = file === STDIN ? stdin : createReadStream(path.resolve(folder, file));
  const chunks: Buffer[] = [];
  let bytes = 0;
  try {
    for await (const chunk of stream) {
      const piece = typeof chunk === 'string' ? Buffer.from(chunk) : (chunk as Buffer);
      bytes += piece.length;
      if (bytes > MOST_BYTES) return refuse('FILE', file, 'is too large', `up to ${MOST_BYTES / 1_000_000} MB`);
      chunks.push(piece);
    }
  } catch (error) {
    return refuse('FILE', file, whyNot(error), FILE_WANTED);
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
    return text.trim() === '' ? refuse('FILE', file, 'is empty', 'one JSON object') : { ok: true, text };
  } catch {
    return refuse('FILE', file, 'is not plain text', 'JSON in UTF-8');
  }
}

function whyNot(error: unknown): string {
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOENT') return 'is not there';
  if (code === 'EISDIR') return 'is a folder';
  if (code === 'EACCES' || code === 'EPERM') return 'may not be read';
  if (code === 'ENAMETOOLONG') return 'has a name that is too long';
  return `cannot be read${code === undefined ? '' : `: ${code}`}`;
}

function refuse(field: string, value: string | undefined, message: string, allowed: string): Text {
  return { ok: false, problem: { field, value, message, allowed } };
}
