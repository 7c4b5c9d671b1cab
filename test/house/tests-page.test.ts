// docs/tests.md says what docs/mutants.json holds; each change listed as one of the same answer still stands in the code;
// every folder of tests that is asked is there.

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { mutationsPart } from '../../scripts/mutate/page.ts';
import { ROOMS } from '../../scripts/mutate/room.ts';
import { EQUAL, runs } from '../../scripts/mutate/score.ts';

describe('the page of what the tests notice', () => {
  test('holds the runs on record', () => {
    expect(readFileSync('docs/tests.md', 'utf8')).toContain(mutationsPart());
  });

  test('speaks of rooms that are there', () => {
    const names = ROOMS.map(({ name }) => name);
    for (const { room } of runs()) expect(names).toContain(room);
    for (const { source, tests, without } of ROOMS)
      expect([...source, ...tests, ...without].filter((name) => !existsSync(name))).toEqual([]);
  });

  test.each(EQUAL)('$file: $was to $became stands in the code', ({ file, onLine, was }) => {
    const text = readFileSync(file, 'utf8');
    expect(text.split('\n').map((line) => line.trim())).toContain(onLine);
    expect(text).toContain(was);
  });
});
