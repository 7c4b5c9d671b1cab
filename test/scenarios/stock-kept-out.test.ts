// A lot that may go into no batch: a neighbour's clippings that nobody can speak for, from the scale to the bean test;
// and a site that keeps kitchen scraps out in its own words.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { fillOffers } from '#tasks/plot/fill.ts';
import { barredIn } from '#tasks/plot/kept-out.ts';
import { keptOutIn, lotToHeap, stockView, whyNamedKept } from '#tasks/plot/scraps.ts';
import { type SlipTold, slipAsks, weighedBody } from '#tasks/plot/slip-questions.ts';
import { readBeanTest, slipView } from '#tasks/plot/slips.ts';
import { kg, litres, recorder } from './recorder.ts';

const NOW = '2026-07-01T10:00';
const TODAY = '2026-07-01';
const rake = recorder();
const bare = fold([rake.did('plot.described', '2026-03-01', { name: 'Sedge Corner' })]);
const untold: SlipTold = {
  material: 'grass-clippings-fresh',
  name: '',
  place: 'neighbour',
  treated: 'unknown',
  condition: 'fresh',
};
const weighed = weighedBody({ told: untold, plot: bare, mass: kg(9) });
const lot = rake.did('scraps.weighed', '2026-06-01', weighed);

const pots = (deformedCount: number, germinatedCount = 9) => ({
  potCount: 3,
  sownCount: 9,
  germinatedCount,
  deformedCount,
});
const test = (deformed: number, readOn = '2026-06-29') =>
  rake.did(
    'lot.tested',
    readOn,
    readBeanTest({ lot: lot.id, sownOn: '2026-06-05', readOn, leavesCount: 3, test: pots(deformed), control: pots(0) })
      .act,
  );

describe("a neighbour's clippings that nobody can speak for", () => {
  const plot = fold([lot]);
  const offers = fillOffers({ plot, now: NOW });

  it('are set aside at the scale, said before it is written down, with where they go', () => {
    const seen = slipView({ plot: bare, lot: weighed, on: TODAY });
    expect(seen.outcome).toBe('set-aside');
    expect(seen.says).toEqual(['Set aside.', expect.stringMatching(/do the bean test/)]);
  });
  it('stand greyed at the vessel with the reason, and are offered to none', () => {
    expect(offers.lots).toEqual([]);
    expect(offers.keptOut).toMatchObject([{ id: lot.id, why: 'set-aside', says: expect.stringMatching(/bean test/) }]);
  });
  it('are barred from a filling that names them, and from one that names the kind without the lot', () => {
    expect(barredIn(plot, [{ lot: lot.id }])).toHaveLength(1);
    expect(barredIn(plot, [{ material: 'grass-clippings-fresh', treated: 'unknown' }])).toHaveLength(1);
    expect(barredIn(plot, [{ material: 'grass-clippings-fresh' }])).toHaveLength(1);
    expect(barredIn(plot, [{ material: 'grass-clippings-fresh', treated: 'no' }])).toEqual([]);
  });
  it('are refused to a topping up by their name, and foxgloves by theirs', () => {
    expect(whyNamedKept(plot, 'Grass clippings, fresh')).toMatch(/bean test/);
    expect(whyNamedKept(plot, 'foxglove leaves')).toMatch(/never in a pail/);
    expect(whyNamedKept(plot, 'carrot tops')).toBeUndefined();
  });
  it('go to no heap', () => {
    expect(lotToHeap(plot, lot.id)).toBeUndefined();
    expect(stockView({ plot, today: TODAY }).lots[0]).toMatchObject({ heapMay: false, beanTest: true });
  });
  it('that a file brings in a batch all the same stay in its record, and the batch says so', () => {
    const filled = rake.did('peg.filled', '2026-06-10', {
      peg: 30,
      parts: [{ lot: lot.id, mass: kg(2) }],
      water: [{ volume: litres(5) }],
    });
    const imported = fold([lot, filled]);
    const batch = imported.batches.get(filled.id);
    if (batch === undefined) throw new Error('no batch');
    expect(imported.lots.get(lot.id)?.leftKg).toBe(7);
    expect(keptOutIn(imported, batch)).toEqual([{ name: 'grass clippings, fresh', goes: 'set-aside' }]);
    const cleared = fold([lot, filled, test(0)]);
    expect(keptOutIn(cleared, cleared.batches.get(filled.id) ?? batch)).toBeUndefined();
  });
});

describe('the bean test of those clippings', () => {
  it('clear: they may go in, are asked nothing more, and may go to the heap', () => {
    const plot = fold([test(0), lot]);
    const offers = fillOffers({ plot, now: NOW });
    expect(offers.keptOut).toEqual([]);
    expect(offers.lots).toMatchObject([{ id: lot.id, treated: 'no' }]);
    expect(barredIn(plot, [{ lot: lot.id }])).toEqual([]);
    expect(lotToHeap(plot, lot.id)?.ingredients[0]?.lot).toBe(lot.id);
  });
  it('harmed: they are out for good, whatever a later test says, in any order', () => {
    for (const entries of [
      [lot, test(6), test(0)],
      [test(0), lot, test(6)],
    ]) {
      const plot = fold(entries);
      expect(plot.lots.get(lot.id)?.goes).toBe('out');
      expect(stockView({ plot, today: TODAY }).lots[0]?.cautions.map(({ rule }) => rule)).toContain(
        'slip-beans-harmed',
      );
    }
  });
  it('unclear, or read too early, or of cress: they stay set aside', () => {
    expect(fold([lot, test(2)]).lots.get(lot.id)?.goes).toBe('set-aside');
    // 5 to 15 June is 10 days, of 21
    expect(fold([lot, test(0, '2026-06-15')]).lots.get(lot.id)?.goes).toBe('set-aside');
    const cress = rake.did('lot.tested', '2026-06-20', { lot: lot.id, test: 'cress', outcome: 'clear' });
    expect(fold([lot, cress]).lots.get(lot.id)?.goes).toBe('set-aside');
  });
  it('written as clear beside counts that do not say so does not clear them', () => {
    const { act } = readBeanTest({
      lot: lot.id,
      sownOn: '2026-06-05',
      readOn: '2026-06-29',
      leavesCount: 3,
      test: pots(6),
      control: pots(0),
    });
    const body = { ...act, outcome: 'clear' } as const;
    expect(fold([lot, rake.did('lot.tested', '2026-06-29', body)]).lots.get(lot.id)?.goes).toBe('out');
  });
  it('of an older entry, without counts, stands as it was written', () => {
    const old = rake.did('lot.tested', '2026-06-29', { lot: lot.id, test: 'bean', outcome: 'clear' });
    expect(fold([lot, old]).lots.get(lot.id)?.goes).toBe('liquid');
  });
  it('does not clear slimy clippings for the pail, nor any that came off a treated lawn', () => {
    const slimy = rake.did('scraps.weighed', '2026-06-01', { ...weighed, condition: 'slimy' });
    const treated = rake.did('scraps.weighed', '2026-06-01', { ...weighed, slip: { whose: 'own', treated: 'yes' } });
    const clear = (of: string) => rake.did('lot.tested', '2026-06-29', { lot: of, test: 'bean', outcome: 'clear' });
    expect(fold([slimy, clear(slimy.id)]).lots.get(slimy.id)?.goes).toBe('compost-only');
    expect(fold([treated, clear(treated.id)]).lots.get(treated.id)?.goes).toBe('out');
  });
});

describe('a site that forbids kitchen scraps', () => {
  const site = rake.did('plot.described', '2026-03-01', {
    outsideScraps: true,
    kitchenScraps: false,
    siteRule: { text: 'No kitchen waste on any plot.', on: '2026-03-14' },
  });
  const plot = fold([site]);

  it('greys kitchen kinds in its own words with its date, and leaves what may grow on the plot', () => {
    const { closed } = fillOffers({ plot, now: NOW });
    expect(closed.says).toContain('"No kitchen waste on any plot."');
    expect(closed.says).toMatch(/14\u00a0Mar 2026/);
    expect(closed.ids.has('kitchen-trimmings')).toBe(true);
    for (const id of ['cabbage-leaves', 'grass-clippings-fresh', 'carrot', 'apple']) {
      expect(closed.ids.has(id)).toBe(false);
    }
    expect(fillOffers({ plot: bare, now: NOW }).closed.says).toBeUndefined();
  });
  it('keeps a lot of the kitchen out of vessel and heap, one weighed in before it was told included', () => {
    const peel = rake.did('scraps.weighed', '2026-02-20', {
      material: 'kitchen-trimmings',
      mass: kg(1),
      slip: { whose: 'household', treated: 'no' },
      condition: 'fresh',
    });
    expect(fold([peel]).lots.get(peel.id)?.goes).toBe('liquid');
    const held = fold([site, peel]);
    expect(held.lots.get(peel.id)?.goes).toBe('out');
    expect(fillOffers({ plot: held, now: NOW }).keptOut[0]?.says).toContain('"No kitchen waste on any plot."');
    expect(lotToHeap(held, peel.id)).toBeUndefined();
  });
  it('asks no more of a carrot once it is said to be of the kitchen', () => {
    const told = { material: 'carrot', name: '', place: 'own-kitchen' } as const;
    expect(slipAsks({ told, plot })).toMatchObject({ asks: ['place'], open: [] });
    const seen = slipView({ plot, lot: weighedBody({ told, plot, mass: kg(1) }), on: TODAY });
    expect([seen.outcome, seen.cautions.map(({ rule }) => rule)]).toEqual(['out', ['slip-site-forbids']]);
  });
});

describe('the questions of a slip', () => {
  const asks = (told: SlipTold) => slipAsks({ told, plot: bare }).asks;
  it('are as few as the lot needs', () => {
    expect(asks({ material: 'grass-clippings-fresh', name: '' })).toEqual(['place']);
    expect(asks({ material: 'grass-clippings-fresh', name: '', place: 'this-plot' })).toEqual([
      'place',
      'treated',
      'condition',
    ]);
    expect(asks({ material: 'kitchen-trimmings', name: '', place: 'own-kitchen' })).toEqual([
      'place',
      'kitchen',
      'condition',
    ]);
    expect(asks({ material: 'coffee-grounds', name: '', place: 'own-kitchen' })).toEqual(['place', 'condition']);
    expect(asks({ material: 'cooked-food', name: '' })).toEqual([]);
    expect(asks({ material: 'dry-leaves', name: '', place: 'this-plot' })).toEqual(['name', 'place', 'treated']);
  });
  it('go into kind and label only where weedkiller was used', () => {
    const told = { material: 'grass-clippings-fresh', name: '', place: 'this-plot', treated: 'yes' } as const;
    expect(asks(told)).toEqual(['place', 'treated', 'weedkiller', 'when']);
    expect(asks({ ...told, weedkiller: 'other', labelAllows: 'yes' })).toEqual([
      'place',
      'treated',
      'weedkiller',
      'labelAllows',
      'when',
      'condition',
    ]);
  });
  it('leave no answer to be guessed: what was told reads back, and what was not asked is not made up', () => {
    const body = weighedBody({
      told: { material: 'carrot', name: '', place: 'other-kitchen', kitchen: 'raw', condition: 'wilted' },
      plot: bare,
      mass: kg(1),
    });
    expect(body).toMatchObject({
      slip: { whose: 'neighbour', cameFrom: 'kitchen' },
      origin: 'kitchen',
      kitchen: 'raw',
      condition: 'wilted',
    });
    expect(body.slip?.treated).toBeUndefined();
    expect(slipView({ plot: bare, lot: body, on: TODAY }).outcome).toBe('in');
  });
  it('take "not known" for an answer everywhere, and count it with the careful ones', () => {
    const told = { ...untold, place: 'unknown', kitchen: 'unknown', condition: 'unknown' } as const;
    const { open } = slipAsks({ told, plot: bare });
    expect(open).toEqual([]);
    expect(slipView({ plot: bare, lot: weighedBody({ told, plot: bare, mass: kg(1) }), on: TODAY }).outcome).toBe(
      'set-aside',
    );
  });
});
