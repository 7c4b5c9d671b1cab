// Which build of the page a server gives out, said in a header of every answer: by it a second start knows that the port is
// taken by this same program, and whether by the same build.

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import path from 'node:path';

/** The header that only this program's server sends. */
export const OURS = 'tilthwright-build';

/** A short name of a build, out of the two files that change with every other one. */
export function buildOf(webRoot: string): string {
  const hash = createHash('sha256');
  for (const file of ['index.html', 'sw.js']) hash.update(textOf(path.join(webRoot, file)));
  return hash.digest('hex').slice(0, 12);
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    // A page without a worker is a page all the same.
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return '';
    throw error;
  }
}
