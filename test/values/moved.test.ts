// Each safety value is moved a little, by itself, up and down: the test that bears its name must notice.

import { beforeAll, describe, expect, it } from 'vitest';
import { keyOf, standing, type Trial, trial } from './moved.ts';
import type { Value } from './value.ts';
import { TWELVE, values } from './values.ts';

let tried: Trial;
beforeAll(async () => {
  tried = await trial(values);
});

/** One above and one below, or a twentieth; a turn of code is a turn. */
async function movesOf(value: Value): Promise<readonly number[]> {
  if (value.turned !== undefined) return [1];
  const stands = await standing(value);
  const step = value.step ?? (Number.isInteger(stands) ? 1 : Math.abs(stands) / 20);
  return [stands + step, stands - step];
}

describe('the safety values', () => {
  it('hold while none is moved', () => {
    expect(tried(new Map())).toEqual([]);
  });

  it.each(values.map((value) => [value.name, value] as const))('%s: moved, it is noticed', async (name, value) => {
    for (const to of await movesOf(value))
      expect(tried(new Map([[keyOf(value), to]]), [name]), `at ${to}`).toEqual([name]);
  });

  it.each([0, -1])('are all noticed by name when the twelve are moved together, each way (%i)', async (way) => {
    const twelve = values.filter(({ name }) => TWELVE.includes(name));
    expect(twelve).toHaveLength(12);
    const moves = await Promise.all(
      twelve.map(async (value) => [keyOf(value), (await movesOf(value)).at(way) ?? Number.NaN] as const),
    );
    expect(tried(new Map(moves))).toEqual(expect.arrayContaining([...TWELVE]));
  });
});
