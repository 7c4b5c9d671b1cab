// Across seams, from the first touch to the last print: seasons drawn at random are typed into the forms' own models. What each
// entry keeps is held against what was meant, and every figure that a sheet or a print shows against the engine asked directly.
// `SEASONS=400` draws more of them. What is found to be wrong goes to test/seasons/faults.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Day, seasons } from './season.ts';
import { batches, stock } from './shown/batches.ts';
import { bottles, strainings } from './shown/bottles.ts';
import { cards, picks } from './shown/can.ts';
import { Differences } from './shown/difference.ts';
import { ground, heap } from './shown/ground.ts';

const COUNT = Number(process.env.SEASONS ?? 40);
const drawn = fc.sample(seasons, { seed: 20_261_130, numRuns: COUNT });

/** What differs, season by season; of each the first few. */
function differing(compare: (day: Day, differ: Differences) => void): readonly string[] {
  return drawn.flatMap(({ days }, i) =>
    days.flatMap((day) => {
      const differ = new Differences();
      compare(day, differ);
      return differ.found.slice(0, 3).map((one) => `season ${i}, ${day.now}: ${one}`);
    }),
  );
}

describe(`${COUNT} seasons typed into the forms`, () => {
  it('are kept as they were meant: every amount, in whatever unit, style and country it was typed', () => {
    expect(drawn.flatMap(({ grower }) => grower.misread)).toEqual([]);
  });
  it('show the scraps in stock that were weighed less what was used', () => {
    expect(differing(stock)).toEqual([]);
  });
  it('show each batch as the engine judges and measures it, alike on every sheet and print', () => {
    expect(differing(batches)).toEqual([]);
  });
  it('show of each straining and its bottles what the engine gives, on shelf, overview and tags alike', () => {
    expect(differing(strainings)).toEqual([]);
    expect(differing(bottles)).toEqual([]);
  });
  it('show on can card, round, wall card and tags one dilution and the doses of the engine', () => {
    expect(differing(cards)).toEqual([]);
  });
  it('show on pick day and at the shed door the longest wait of all pours', () => {
    expect(differing(picks)).toEqual([]);
  });
  it('show what the beds got and lack, and what the cover is asked to close, as the word of the command line sums it', () => {
    expect(differing(ground)).toEqual([]);
  });
  it('show of the heap the masses, the C:N and the water of the engine', () => {
    expect(differing(heap)).toEqual([]);
  });
});
