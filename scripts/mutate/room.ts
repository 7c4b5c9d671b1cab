// The rooms that `npm run mutate` knows: where their files lie, the tests that are to notice a change in them, and the
// share that is to be noticed. The lists are in rooms.json, because they are figures and names, not steps.

import { readFileSync } from 'node:fs';
import { z } from 'zod';

const Rooms = z.strictObject({
  /** Tests of all floors, asked of what survived the tests of its room; but for those that take longest. */
  wider: z.array(z.string()),
  widerWithout: z.array(z.string()),
  rooms: z.array(
    z.strictObject({
      name: z.string(),
      /** Share of the mutants that is to be noticed. */
      goal: z.number(),
      /** Where the mutants are made: a folder, closed by `/`, or a file. */
      source: z.array(z.string()),
      /** The tests that are asked: a folder, closed by `/`, or a file. */
      tests: z.array(z.string()),
      /** Tests in those folders that are not asked, since they take longer than all others together. */
      without: z.array(z.string()).default([]),
      /** The project of the types: a survivor that it refuses is no mutant. */
      types: z.string().default('src/engine'),
    }),
  ),
});

const told = Rooms.parse(JSON.parse(readFileSync(new URL('rooms.json', import.meta.url), 'utf8')));

export const ROOMS = told.rooms;
export type Room = (typeof ROOMS)[number];

/** The tests of all floors. */
export const WIDER: Pick<Room, 'tests' | 'without'> = { tests: told.wider, without: told.widerWithout };

/** The files under these names that pass: names as in rooms.json. */
export function filesUnder(names: readonly string[], all: readonly string[]): readonly string[] {
  return all.filter((file) => names.some((name) => (name.endsWith('/') ? file.startsWith(name) : file === name)));
}
