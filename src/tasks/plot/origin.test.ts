// What animals may have left in a batch, by each road into it.
import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import type { Body } from '#journal/kinds/index.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { kg, litres, recorder } from '../../../test/scenarios/recorder.ts';
import { originOf } from './origin.ts';

const rake = recorder();
const tap = { volume: litres(6), source: 'tap' };
const grass = { material: 'grass-clippings-fresh', mass: kg(1) };
const fill = (body: Partial<Body<'peg.filled'>>, peg = 7) =>
  rake.did('peg.filled', '2026-06-01', { peg, water: [tap], parts: [grass], ...body });
const origin = (entries: readonly Entry[], of: Entry) => {
  const plot = fold(entries);
  const batch = plot.batches.get(of.id);
  if (batch === undefined) throw new Error('no batch');
  return originOf(plot, batch);
};
const alone = (body: Partial<Body<'peg.filled'>>, ...before: readonly Entry[]) => {
  const batch = fill(body);
  return origin([...before, batch], batch);
};

describe('what animals may have left in a batch', () => {
  it('is nothing for plants in tap water', () => {
    expect(alone({})).toEqual({ animalOrigin: 'no', animalWhy: [] });
  });
  it.each([
    ['horse-manure', 'manure'],
    ['meat-fish-dairy', 'meat'],
    ['pet-waste', 'manure'],
    ['cooked-food', 'plate'],
  ])('is certain with %s', (material, why) => {
    expect(alone({ parts: [grass, { material, mass: kg(0.1) }] })).toEqual({ animalOrigin: 'yes', animalWhy: [why] });
  });
  it('is possible with compost, and with something nobody has in a list', () => {
    expect(alone({ parts: [{ material: 'finished-compost', mass: kg(1) }] }).animalOrigin).toBe('possible');
    expect(alone({ parts: [{ name: 'stuff from next door', mass: kg(1) }] })).toEqual({
      animalOrigin: 'possible',
      animalWhy: ['scraps-not-named'],
    });
  });
  it.each(['butt', 'ditch', 'pond', 'other'] as const)('is possible with water of a %s', (source) => {
    const water = rake.did('water.reported', '2026-05-01', { source });
    expect(alone({ water: [{ volume: litres(6), water: water.id }] }, water)).toEqual({
      animalOrigin: 'possible',
      animalWhy: ['open-water'],
    });
  });
  it('is possible where nobody told the water, or the report is not here', () => {
    expect(alone({ water: [{ volume: litres(6) }] }).animalWhy).toEqual(['water-not-told']);
    const water = rake.did('water.reported', '2026-05-01', { source: 'tap' });
    expect(alone({ water: [{ volume: litres(6), water: water.id }] }).animalWhy).toEqual(['water-not-told']);
  });
  it('is certain where droppings were seen in the water', () => {
    const water = rake.did('water.reported', '2026-05-01', { source: 'butt', droppings: true });
    expect(alone({ water: [{ volume: litres(6), water: water.id }] }, water).animalOrigin).toBe('yes');
  });
  it.each([
    ['plate', 'yes'],
    ['cooked', 'yes'],
    ['kitchen', 'no'],
    ['garden', 'no'],
  ] as const)('comes with a lot off the %s: %s', (from, animalOrigin) => {
    const lot = rake.did('scraps.weighed', '2026-06-01', {
      material: 'kitchen-trimmings',
      mass: kg(1),
      origin: from,
    });
    expect(alone({ parts: [{ lot: lot.id, mass: kg(1) }] }, lot).animalOrigin).toBe(animalOrigin);
  });
  it('comes with the starter, through as many batches as it went, and ends at a batch that names itself', () => {
    const first = fill({ parts: [{ material: 'horse-manure', mass: kg(1) }] }, 1);
    const second = fill({ starter: [{ volume: litres(0.2), from: first.id }] }, 2);
    const third = fill({ starter: [{ volume: litres(0.2), from: second.id }] }, 3);
    expect(origin([first, second, third], third)).toEqual({ animalOrigin: 'yes', animalWhy: ['manure', 'starter'] });
    expect(alone({ starter: [{ volume: litres(0.2) }] }).animalWhy).toEqual(['starter-not-told']);
  });
  it('comes with a topping up and with a batch that is joined, and goes with a share that is split off', () => {
    const batch = fill({}, 1);
    const topped = rake.did('peg.toppedUp', '2026-06-02', { batch: batch.id, water: [{ volume: litres(1) }] });
    const share = rake.did('peg.split', '2026-06-03', { batch: batch.id, peg: 2, taken: litres(1) });
    const other = fill({}, 3);
    const joined = rake.did('peg.joined', '2026-06-04', { batch: other.id, from: batch.id, taken: litres(1) });
    expect(origin([batch], batch).animalOrigin).toBe('no');
    expect(origin([batch, topped], batch).animalOrigin).toBe('possible');
    expect(origin([batch, topped, share], share).animalOrigin).toBe('possible');
    expect(origin([batch, topped, other, joined], other).animalOrigin).toBe('possible');
  });
});

describe('the demo garden', () => {
  it('holds plants and tap water alone in the peg that its beds are fed from', () => {
    const plot = fold(gardenEntries('2026-07-06'));
    const peg14 = [...plot.batches.values()].find(({ peg }) => peg === 14);
    expect(peg14 && originOf(plot, peg14)).toEqual({ animalOrigin: 'no', animalWhy: [] });
  });
});
