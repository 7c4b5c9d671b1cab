// What dries a mix that is too wet, from the rows to the sentence: dry kinds rich in carbon where carbon is short, mild
// ones where there is enough. The amount is Cornell's equation for a second ingredient, worked here by hand.

import { describe, expect, it } from 'vitest';
import { sayHeap } from '#words/en/heap.ts';
import { heap } from './heap.ts';

/** 20 kg at 80 % of water, with so much carbon to one of nitrogen, aiming at 55 % of water and C:N 30. */
function wet(cn: number) {
  const row = { name: 'wet', massKg: 20, moisturePercent: 80, nPercentDm: 1, cn, bulkKgPerM3: 500 };
  const said = heap({ ingredients: [row], target: { cn: 30, moisturePercent: 55 } });
  if (!said.ok) throw new Error(JSON.stringify(said.problems));
  return said.value;
}

describe('a mix too wet for its goal', () => {
  it('is dried with leaves or straw where it is short of carbon', () => {
    const { dryToAdd } = wet(12);
    expect(dryToAdd.map(({ material }) => material)).toEqual(['dry-leaves', 'straw', 'cardboard', 'wood-chips']);
  });

  it('is dried with hay or compost where it has more carbon than it needs', () => {
    const said = wet(55);
    expect(said.dryToAdd.map(({ material }) => material)).toEqual(['hay-grass', 'finished-compost']);
    const [line = ''] = sayHeap(said).filter((text) => text.startsWith('Too wet'));
    expect(line).toMatch(/hay/);
    expect(line).not.toMatch(/straw|leaves|cardboard|chips/);
  });

  it('takes so much that the mix comes to the goal', () => {
    const [leaves] = wet(12).dryToAdd;
    // Leaves hold 38 % of water: 20 kg × (80 − 55) = x × (55 − 38).
    expect(leaves?.massKg).toBeCloseTo((20 * (80 - 55)) / (55 - 38), 6);
  });
});
