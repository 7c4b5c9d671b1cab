// What the prints of the demo garden say on the day it opens: seven bottles of peg 14 less what was poured, peg 15 slow.

import { describe, expect, it } from 'vitest';
import { fold } from '#journal/fold.ts';
import { gardenEntries } from '#tasks/demo/garden.ts';
import { tagLines } from '#words/en/print.ts';
import { kg, litres, meter, recorder } from '../../../test/scenarios/recorder.ts';
import { canWallCard, shedSheet, tagsOf } from './prints.ts';

const now = '2026-07-06T11:00';
const plot = fold(gardenEntries('2026-07-06'));

describe('jar tags', () => {
  const tags = tagsOf({ plot, now });

  it('hang on each bottle with something in it and on each standing peg', () => {
    expect(tags.map(({ of, peg }) => `${of} ${peg}`)).toEqual([
      ...Array.from({ length: 7 }, () => 'bottle 14'),
      'vessel 15',
    ]);
  });
  it('say strength, dates and the leaves it never goes on', () => {
    const [first] = tags;
    // 400 g/L to 9.1 g/L asks for 1 to 43; the handy ratio nearest is 1 to 40. Vented on 23 June, again a week later.
    expect(first).toMatchObject({ ratio: { n: 40, reading: 'to' }, strainedOn: '2026-06-20', ventOn: '2026-07-07' });
    const said = first && tagLines(first).join('\n');
    for (const part of ['use first by', 'vent 7', '1\u00a0L to 40\u00a0L of water', 'not on leaves of G, S, T, R, P'])
      expect(said).toContain(part);
  });
  it('give no strength for a pail that is not ready', () => {
    const said = tagLines(tags.at(-1) as (typeof tags)[number]).join('\n');
    expect(said).toContain('Pour nothing from it before its peg says ready');
    expect(said).not.toContain('of water');
  });
  it.each([
    [2, ['nettle', 'grass-clippings-fresh'], false],
    [3, ['comfrey', 'nettle'], true],
  ])('name the two plants there was most of, and say whether there were more: %d in all', (count, named, more) => {
    const parts = [
      { material: 'grass-clippings-fresh', mass: kg(0.5) },
      { material: 'nettle', mass: kg(1) },
      { material: 'comfrey', mass: kg(2) },
    ].slice(0, count);
    const filled = recorder().did('peg.filled', '2026-07-01T10:30', { peg: 3, temperatureC: 20, parts });
    const [tag] = tagsOf({ plot: fold([filled]), now });
    expect(tag?.plants.map(({ material }) => material)).toEqual(named);
    expect(tag).toMatchObject({ morePlants: more, filledOn: '2026-07-01' });
  });
  it('give neither strength nor date for bottles of a lost batch', () => {
    const rake = recorder();
    const filled = rake.did('peg.filled', '2026-06-01', {
      peg: 3,
      temperatureC: 20,
      parts: [{ material: 'grass-clippings-fresh', mass: kg(2) }],
    });
    const foul = (day: string, ph: number) =>
      rake.did('peg.looked', day, { batch: filled.id, acidity: meter(ph), smell: 'sewage' });
    const bottled = [
      rake.did('peg.strained', '2026-06-08', { batch: filled.id, drained: litres(1), rest: 'nothing' }),
      rake.did('bottle.filled', '2026-06-08', {
        batch: filled.id,
        filled: litres(0.9),
        cap: 'vent',
        material: 'plastic',
      }),
    ];
    const [tag] = tagsOf({ plot: fold([filled, foul('2026-06-04', 6.1), foul('2026-06-07', 6.9), ...bottled]), now });
    expect(tag).toMatchObject({ state: 'lost', ratio: undefined, useFirstOn: undefined });
    expect(tag && tagLines(tag).join('\n')).toContain('lost: pour nothing from it');
  });
});

describe('the can card for the wall', () => {
  it('gives 171, 222 and 244 mL for 7 L, two imperial gallons and 10 L at 1 to 40', () => {
    const card = canWallCard({ plot, now, tag: 'Fork' });
    // V / 41: 7000 / 41 = 170.7; 9092.18 / 41 = 221.8; 10 000 / 41 = 243.9
    expect(card.cans.map(({ concentrateMl }) => Math.round(concentrateMl))).toEqual([171, 222, 244]);
    // All within a jug of 1 L: the mark stands at the dose itself.
    for (const { fills, concentrateMl } of card.cans) expect(fills).toEqual({ full: 0, restMl: concentrateMl });
    expect(card.liquid).toMatchObject({ peg: 14, held: true });
  });
  it('gives no dose before anything is ready', () => {
    const early = canWallCard({ plot: fold(gardenEntries('2026-04-20')), now: '2026-04-20T11:00' });
    expect([early.liquid, early.ratio, early.cans]).toEqual([undefined, undefined, []]);
  });
});

describe('the shed sheet', () => {
  it('holds every bed that is eaten from, the pegs, the bottles and that children are about', () => {
    const sheet = shedSheet({ plot, now });
    expect(sheet.picks).toHaveLength(8);
    expect(sheet.pegs.map(({ peg }) => peg)).toEqual([15]);
    expect(sheet.bottles.map(({ peg }) => peg)).toEqual([14]);
    expect([sheet.children, sheet.poisonLine]).toEqual([true, undefined]);
  });
});
