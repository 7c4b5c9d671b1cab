// @ts-check
// Is something made still up to date? A stamp holds a digest of what it was made from; when the digest of
// today differs, it is made again. Names, sizes and times of files are enough, so that asking costs
// milliseconds; a deleted file counts too.

import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';

/**
 * Digest of files and folders: every file's path, size and time. What is not there counts as not there.
 * @param {readonly string[]} places
 * @param {(file: string) => boolean} [counts]
 */
export function digestOf(places, counts = () => true) {
  const hash = createHash('sha256').update(process.version);
  for (const place of places) add(place);
  return hash.digest('hex');

  /** @param {string} place */
  function add(place) {
    const found = statSync(place, { throwIfNoEntry: false });
    if (found === undefined) return;
    if (found.isDirectory()) {
      for (const name of readdirSync(place).sort()) add(path.join(place, name));
    } else if (counts(place)) {
      hash.update(`${place}\0${found.size}\0${found.mtimeMs}\0`);
    }
  }
}

/**
 * Whether a stamp holds this digest.
 * @param {string} stamp
 * @param {string} digest
 */
export function holds(stamp, digest) {
  try {
    return readFileSync(stamp, 'utf8') === digest;
  } catch {
    return false;
  }
}

/**
 * Writes a digest into a stamp.
 * @param {string} stamp
 * @param {string} digest
 */
export function write(stamp, digest) {
  mkdirSync(path.dirname(stamp), { recursive: true });
  writeFileSync(stamp, digest);
}
