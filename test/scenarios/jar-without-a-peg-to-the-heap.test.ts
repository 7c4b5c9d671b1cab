// A jar with no peg stands on the shelf: it gets no dose, and what the record keeps of it is the heap alone.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { jarToHeap, unknownJar } from '#tasks/plot/jar.ts';
import { litres, recorder } from './recorder.ts';

describe('a jar that nobody can name', () => {
  const rake = recorder();
  const before = fold([rake.did('heap.fed', '2026-06-01', heap('bay two'))]);

  it('gets no dose on any plot', () => {
    for (const plot of [before, fold([], 'new')]) {
      const jar = unknownJar({ plot });
      expect(jar.doseMl).toBeUndefined();
      expect(jar.stops[0]?.text).toMatch(/^No dose/);
    }
  });

  it('once on the heap is told there, in no bottle, on no bed', () => {
    const { heap: name } = unknownJar({ plot: before });
    const act = rake.did('heap.fed', '2026-06-02T18:00', jarToHeap({ heap: name, volume: litres(0.7) }));
    const plot = fold([act]);
    expect(plot.heapFed.map(({ body }) => [body.heap, body.ingredients[0]?.name])).toEqual([
      ['bay two', 'jar without a peg'],
    ]);
    expect([plot.bottles.size, plot.batches.size, plot.beds.size]).toEqual([0, 0, 0]);
    expect(plot.questions).toEqual([]);
  });
});

function heap(name: string) {
  return { heap: name, ingredients: [{ name: 'dry leaves', amount: litres(20) }] };
}
