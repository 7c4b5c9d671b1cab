// Beds and those who eat from them, as a round meets them: which beds a batch may go on, and what is said.

import { describe, expect, it } from 'vitest';
import type { Entry } from '#journal/entry.ts';
import { fold } from '#journal/fold.ts';
import { liquidsOf } from '#tasks/plot/liquid.ts';
import { roundOver } from '#tasks/plot/round.ts';
import { litres, meter, recorder } from './recorder.ts';

const rake = recorder({ seed: 9 });
const area = { typed: '4 m2', areaM2: 4 };
const NOW = '2026-06-12T09:00';
type Eaten = 'raw-leaf' | 'raw-fruit' | 'cooked' | 'not-eaten';
const bed = (name: string, crop: string, eaten: Eaten) =>
  rake.did('bed.described', '2026-05-01', { name, area, crop, eaten, feed: 'leaf-and-soil' });
const beds = [
  bed('Lettuce', 'lettuce', 'raw-leaf'),
  bed('Tomato', 'tomatoes', 'raw-fruit'),
  bed('Kale', 'kale', 'cooked'),
  bed('Flowers', 'sunflowers', 'not-eaten'),
];
const planted = (firstPickOn: string) =>
  beds.map(({ id }) => rake.did('bed.planted', '2026-05-01', { bed: id, act: 'planted', firstPickOn }));

function heldBatch(water: object, parts?: object) {
  const filled = rake.did('peg.filled', '2026-05-24', {
    peg: 14,
    water: [{ volume: litres(6), ...water }],
    temperatureC: 20,
    ...parts,
  });
  const looks = [3.9, 3.8, 3.8].map((ph, i) =>
    rake.did('peg.looked', ['2026-05-26', '2026-05-28', '2026-06-11'][i] ?? '', {
      batch: filled.id,
      acidity: meter(ph),
      smell: 'sour',
      temperatureC: 20,
    }),
  );
  const strained = rake.did('peg.strained', '2026-06-11', { batch: filled.id, drained: litres(5), rest: 'nothing' });
  return [filled, ...looks, strained];
}

/** Rule ids of stops and holds for each bed. */
function said(entries: readonly Entry[], way: 'soil' | 'leaf' = 'soil') {
  const plot = fold([...beds, ...entries]);
  const liquid = liquidsOf(plot, NOW)[0]?.id;
  const round = roundOver({
    plot,
    now: NOW,
    liquid,
    way,
    strength: { kind: 'typed', ratio: { n: 200, reading: 'in' }, concentrateMlPerL: 5 },
  });
  return new Map(
    round.beds.map(({ name, verdict, reasons }) => [
      name,
      {
        verdict,
        rules: reasons.filter(({ level }) => level === 'stop' || level === 'hold').map(({ rule }) => rule),
        days: reasons.map(({ values }) => Number(values.days)).filter(Number.isFinite),
      },
    ]),
  );
}

const tap = heldBatch({ source: 'tap' });
const roof = heldBatch({ source: 'butt' });
const manured = heldBatch(
  { source: 'tap' },
  { parts: [{ material: 'horse-manure', mass: { typed: '1 kg', massKg: 1 } }] },
);
const sells = rake.did('plot.described', '2026-05-02', { sells: true });
const immune = rake.did('plot.described', '2026-05-02', { present: ['immune-weak'] });
const school = rake.did('plot.described', '2026-05-02', { school: true });

describe('a held batch of plants in tap water', () => {
  it('goes on every bed whose picking is 14 days off', () => {
    const beds14 = said([...tap, ...planted('2026-06-26')]);
    for (const name of ['Lettuce', 'Tomato', 'Kale', 'Flowers']) expect(beds14.get(name)?.verdict, name).toBe('yes');
  });
  it('is sprayed on cooked beds and on none that is eaten raw', () => {
    const sprayed = said([...tap, ...planted('2026-12-26')], 'leaf');
    expect(sprayed.get('Kale')?.rules).toEqual([]);
    for (const name of ['Lettuce', 'Tomato']) {
      expect(sprayed.get(name)?.verdict).toBe('never');
      expect(sprayed.get(name)?.rules).toContain('leaf-eaten-raw');
    }
  });
});

describe('a held batch filled from a roof butt', () => {
  it('waits 120 days on lettuce, 90 on staked tomatoes, and says one wait, not two', () => {
    // 12 June to 10 September is 90 days.
    const after90 = said([...roof, ...planted('2026-09-10')]);
    expect(after90.get('Lettuce')).toMatchObject({
      verdict: 'hold',
      rules: ['eating-animal-possible-picked-soon'],
      days: [120],
    });
    expect(after90.get('Tomato')?.verdict).toBe('yes');
    const soon = said([...roof, ...planted('2026-06-14')]);
    expect(soon.get('Tomato')).toMatchObject({ rules: ['eating-animal-possible-picked-soon'], days: [90] });
    expect(soon.get('Kale')?.verdict).toBe('yes');
  });
  it('goes on no leaves, cooked or not', () => {
    expect(said([...roof, ...planted('2026-12-26')], 'leaf').get('Kale')?.rules).toEqual([
      'eating-animal-possible-on-leaves',
    ]);
  });
});

describe('a batch with manure in it', () => {
  it('waits on cooked beds too, and is never sprayed, not even on flowers', () => {
    expect(said([...manured, ...planted('2026-07-01')]).get('Kale')?.rules).toEqual(['eating-manure-picked-soon']);
    expect(said([...manured, ...planted('2026-07-01')]).get('Flowers')?.verdict).toBe('yes');
    expect(said([...manured, ...planted('2026-12-26')], 'leaf').get('Flowers')?.rules).toEqual([
      'eating-animal-on-leaves',
    ]);
  });
});

describe('a plot that sells', () => {
  it('holds what a household would pour, and counts kale as eaten raw', () => {
    const plan = planted('2026-07-12');
    expect(said([...tap, ...plan]).get('Tomato')?.verdict).toBe('yes');
    const sold = said([...tap, ...plan, sells]);
    expect(sold.get('Tomato')?.rules).toEqual(['eating-sold-picked-soon']);
    expect(sold.get('Kale')?.rules).toEqual(['eating-sold-picked-soon']);
    expect(said([...tap, ...planted('2026-12-26'), sells], 'leaf').get('Kale')?.rules).toContain('leaf-eaten-raw');
  });
});

describe('a school, and someone of weak immunity', () => {
  it('waits 21 days for the class', () => {
    expect(said([...tap, ...planted('2026-07-02'), school]).get('Lettuce')?.rules).toEqual([
      'eating-school-picked-soon',
    ]);
    expect(said([...tap, ...planted('2026-07-03'), school]).get('Lettuce')?.verdict).toBe('yes');
  });
  it('feeds no bed that is eaten raw, and the cooked ones as ever', () => {
    const round = said([...tap, ...planted('2026-12-26'), immune]);
    expect(round.get('Tomato')).toMatchObject({ verdict: 'never', rules: ['eating-immune-weak-raw-bed'] });
    expect(round.get('Kale')?.verdict).toBe('yes');
  });
});
