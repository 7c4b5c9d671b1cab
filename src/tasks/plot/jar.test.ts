// A jar with no peg on the shelf of a plot: no dose, and one act, the heap.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { kinds } from '#journal/kinds/index.ts';
import { gardenEntries } from '../demo/garden.ts';
import { JAR_NAME, jarToHeap, unknownJar } from './jar.ts';

const jar = unknownJar({ plot: fold(gardenEntries('2026-06-27')) });

describe('a jar without a peg', () => {
  it('gets no dose, and the reason names pH, smell, compost and no tasting', () => {
    expect(jar.doseMl).toBeUndefined();
    expect(jar.stops.map(({ rule }) => rule)).toContain('batch-no-peg');
    const text = jar.stops.map((stop) => stop.text).join(' ');
    for (const word of [/pH/, /smell/, /compost it/, /never taste/]) expect(text).toMatch(word);
  });
  it('goes on the heap that was fed last, under its own name', () => {
    expect(jar.heap).toBe('the bay');
    const body = jarToHeap({ heap: jar.heap, volume: { typed: '0.7 L', volumeL: 0.7 }, note: '' });
    expect(body).toEqual({
      heap: 'the bay',
      ingredients: [{ name: JAR_NAME, amount: { typed: '0.7 L', volumeL: 0.7 } }],
    });
    expect(kinds['heap.fed'].newest.safeParse(body).success).toBe(true);
  });
});
