// What a run came to, kept in docs/mutants.json: one row a room and seed. A survivor that no test could ever notice is
// listed in equal.json with its reason, and counts neither way.

import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import type { Room } from './room.ts';
import type { Mutant } from './run.ts';

const RUNS = 'docs/mutants.json';

const Place = z.strictObject({ file: z.string(), line: z.number(), was: z.string(), became: z.string() });
const Run = z.strictObject({
  room: z.string(),
  /** No seed: the whole room. */
  seed: z.number().nullable(),
  noticed: z.number(),
  refusedByTypes: z.number(),
  /** Survivors of equal.json. */
  equal: z.number(),
  survivors: z.array(Place),
});
export type Run = z.infer<typeof Run>;

/** A change that leaves every answer as it is. The line of code names the place, because line numbers move. */
const Equal = z.strictObject({
  file: z.string(),
  onLine: z.string(),
  was: z.string(),
  became: z.string(),
  why: z.string().min(12),
});
export const EQUAL = z.array(Equal).parse(JSON.parse(readFileSync(new URL('equal.json', import.meta.url), 'utf8')));

export function score(room: Room, seed: number | undefined, mutants: readonly Mutant[]): Run {
  const count = (outcome: Mutant['outcome']) => mutants.filter((one) => one.outcome === outcome).length;
  const survived = mutants.filter(({ outcome }) => outcome === 'survived');
  const survivors = survived
    .filter((one) => !isEqual(one))
    .map(({ file, line, was, became }) => ({ file, line, was, became }));
  return {
    room: room.name,
    seed: seed ?? null,
    noticed: count('noticed'),
    refusedByTypes: count('refused by the types'),
    equal: survived.length - survivors.length,
    survivors,
  };
}

function isEqual({ file, line, was, became }: Mutant): boolean {
  const onLine = readFileSync(file, 'utf8').split('\n')[line - 1]?.trim();
  return EQUAL.some((one) => one.file === file && one.onLine === onLine && one.was === was && one.became === became);
}

/** All runs on record. */
export function runs(): readonly Run[] {
  return existsSync(RUNS) ? z.array(Run).parse(JSON.parse(readFileSync(RUNS, 'utf8'))) : [];
}

/** Puts a run on record, in place of the one of the same room and seed. */
export function saved(run: Run): void {
  const others = runs().filter(({ room, seed }) => room !== run.room || seed !== run.seed);
  const all = [...others, run].sort(
    (a, b) => a.room.localeCompare(b.room) || (a.seed ?? Number.MAX_VALUE) - (b.seed ?? Number.MAX_VALUE),
  );
  writeFileSync(RUNS, `${JSON.stringify(all, null, 2)}\n`);
}
