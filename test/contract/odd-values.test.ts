// Values that pass for a text or a list only at first sight, and amounts that round to nothing: each is refused at its
// field with its value and what would do, and nothing throws.

import { describe, expect, it } from 'vitest';
import { type Reply, task, type Word } from '#tasks/index.ts';
import { explainLedger } from '#tasks/ledger.ts';
import { cite } from '#tasks/lists.ts';
import { problemLine } from '#tasks/problem.ts';
import { figureFaults } from './figures.ts';

const OWN: readonly Readonly<Record<string, unknown>>[] = [
  { toString: 1 },
  { toString: null, valueOf: null },
  { length: { toString: 1 } },
  { length: 1e9 },
];
const water = { volumeL: 20, alkalinity: { value: 2.5, unit: 'meq/L' } };
const can = { ratio: { n: 200, reading: 'in' }, canL: 9 };
const strain = {
  plants: [{ name: 'clippings', massKg: 2, dryMatter: 0.22 }],
  water: { volumeL: 5 },
  days: 10,
  temperatureC: 20,
  finalPh: 3.7,
  drainedL: 5,
  solidsKg: 1,
};
const bottle = { volumeL: 1, filledL: 0.9, cap: 'vent', material: 'plastic' };
const beds = { beds: [{ name: 'Gate', areaM2: 10 }], from: '2026-04-01', to: '2026-09-30' };

async function problemsOf(word: Word, input: object): Promise<readonly string[]> {
  const reply: Reply = (await task(word)).ask(JSON.parse(JSON.stringify(input)));
  return reply.ok ? [] : reply.problems.map(problemLine);
}

describe.each(OWN)('%j where a text, a number or a list belongs', (odd) => {
  it.each<readonly [Word, object, string]>([
    ['water', { ...water, alkalinity: { value: 2, unit: odd } }, 'alkalinity.unit'],
    ['water', { ...water, use: odd }, 'use'],
    ['can', { ...can, batch: { peg: odd } }, 'batch.peg'],
    ['can', { ...can, crop: odd }, 'crop'],
    ['strain', { ...strain, plants: odd }, 'plants'],
    ['strain', { ...strain, plants: [{ material: odd, massKg: 1 }] }, 'plants[0].material'],
    ['strain', { ...strain, bottle: { ...bottle, filledL: odd } }, 'bottle.filledL'],
    ['strain', { ...strain, bottle: { ...bottle, volumeL: odd } }, 'bottle.volumeL'],
    ['beds', { ...beds, beds: [{ name: odd, areaM2: 10 }] }, 'beds[0].name'],
    ['beds', { ...beds, temperatures: [{ on: '2026-05-01', lowC: odd, highC: 12 }] }, 'temperatures[0].lowC'],
    ['beds', { ...beds, acts: [{ bed: 'Gate', kind: 'mulch', material: odd, massKg: 1 }] }, 'acts[0].material'],
    ['heap', { ingredients: odd }, 'ingredients'],
    ['heap', { ingredients: [{ name: odd, massKg: 1, moisturePercent: 60 }] }, 'ingredients[0].name'],
    ['fit', { vessel: odd, plants: strain.plants, water: strain.water }, 'vessel'],
    ['sour', { vessel: { volumeL: 9 }, plants: strain.plants, water: strain.water, temperatureC: odd }, 'temperatureC'],
  ])('is refused once by %s %#', async (word, input, field) => {
    const lines = (await problemsOf(word, input)).filter((line) => line.startsWith(`${field}`));
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines) expect(line).toMatch(/^\S+: (is .+ \(got .+\)|is missing); allowed: .+/);
  });
});

describe('an amount that rounds to nothing', () => {
  it.each<readonly [Word, object, string]>([
    ['water', { ...water, plantsKg: 5e-324 }, 'plantsKg: is too small (got 5e-324); allowed: 0.000001 to 1000 kg'],
    [
      'fit',
      { ...strain, vessel: { volumeL: 1e-300 } },
      'vessel.volumeL: is too small (got 1e-300); allowed: 0.000001 to 2000 L',
    ],
    [
      'beds',
      { ...beds, beds: [{ name: 'Gate', areaM2: 5e-324 }] },
      'beds[0].areaM2: is too small (got 5e-324); allowed: 0.0001 to 5000 m²',
    ],
  ])('is refused by %s', async (word, input, line) => {
    expect(await problemsOf(word, input)).toContain(line);
  });

  it.each([
    { beds: [{ name: 'Gate', areaM2: 5000, crop: 'kale', yieldKgPerM2: 5e-324 }] },
    {
      beds: [{ name: 'Gate', areaM2: 5000, crop: 'sea kale' }],
      crops: [{ name: 'sea kale', source: 'notebook', yieldKgPerM2: 2, nNeedGPerM2: 5e-324, kGPerKg: 5e-324 }],
    },
  ])('is no need, and nothing is a share of it %#', async (of) => {
    const acts = [{ bed: 'Gate', kind: 'pour', concentrateL: 2000, nGPerL: 1, kGPerL: 200 }];
    const reply = (await task('beds')).ask({ ...beds, ...of, acts });
    if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
    expect(figureFaults(reply)).toEqual([]);
  });

  it('is refused as a pack, since nobody could count such packs', async () => {
    const sources = [{ name: 'meal', kind: 'product', nPercent: 0, p2o5Percent: 20, costPerKg: 0, packKg: 5e-324 }];
    expect(await problemsOf('beds', { ...beds, sources })).toEqual([
      'sources[0].packKg: is too small (got 5e-324); allowed: 0.001 to 1000 kg',
    ]);
  });

  it('is refused by heap, where it would be the whole of the mix', async () => {
    const heap = (count: number, litresEach: number) => ({
      ingredients: [{ material: 'horse-manure', volume: { of: 'barrow', count, litresEach } }],
    });
    expect(await problemsOf('heap', heap(1, 5e-324))).toEqual([
      'ingredients[0].volume.litresEach: is too small (got 5e-324); allowed: 0.000001 to 500 L',
    ]);
    expect(await problemsOf('heap', heap(5e-324, 10))).toEqual([
      'ingredients[0].volume.count: is too small (got 5e-324); allowed: 0.001 to 1000',
    ]);
    expect(await problemsOf('heap', heap(0.001, 0.000001))).toEqual([]);
  });

  it('is nothing where nothing may be: a zero below nothing is a zero', async () => {
    const rows = (nPercentDm: number) => ({
      ingredients: [
        { name: 'clippings', moisturePercent: 77, cPercentDm: 45, nPercentDm, massKg: 10 },
        { name: 'leaves', moisturePercent: 35, cPercentDm: 50, nPercentDm: 0.75, massKg: 5 },
      ],
    });
    const { ask } = await task('heap');
    const [below, zero] = [ask(rows(-0)), ask(rows(0))];
    if (!below.ok || !zero.ok) throw new Error('a heap was refused');
    expect(below.workings()).toEqual(zero.workings());
  });
});

describe('a need of next to nothing', () => {
  it('is covered as far as it goes: no stage of the cover leaves the next one nothing to find', async () => {
    const reply = (await task('beds')).ask({
      ...beds,
      beds: [
        { name: 'A', areaM2: 4, crop: 'kale, chard', yieldKgPerM2: 0.01 },
        { name: 'B', areaM2: 0.01, crop: 'tomatoes', yieldKgPerM2: 0.02 },
      ],
      acts: [{ bed: 'A', kind: 'product', massKg: 0.001, k2oPercent: 100 }],
      meanC: 0,
      to: '2026-05-20',
      sources: [
        { name: 'first', kind: 'cover-crop', mostKgPerM2: 0.000004 },
        { name: 'second', kind: 'product', nPercent: 50, costPerKg: 0 },
      ],
    });
    if (!reply.ok) throw new Error(JSON.stringify(reply.problems));
    expect(figureFaults(reply)).toEqual([]);
  });
});

describe('a heap', () => {
  const rows = (sought: number) => ({
    ingredients: [
      { material: 'pineapple', massKg: 1000 },
      ...Array.from({ length: sought }, () => ({ material: 'cardboard', massKg: null })),
    ],
    target: { cn: 500, moisturePercent: 95 },
  });
  it('is asked for twelve masses and no more, so that the search ends', async () => {
    expect(await problemsOf('heap', rows(12))).toEqual([]);
    expect((await problemsOf('heap', rows(43)))[0]).toMatch(
      /^ingredients: has 43 masses to be found \(got .+\); allowed: up to 12 rows with massKg null$/,
    );
  });
});

describe('a refusal', () => {
  it.each<readonly [Word, unknown]>([
    ['fit', 5],
    ['fit', null],
    ['can', []],
    ['water', 'text'],
    ['strain', true],
    ['sour', [1]],
    ['heap', null],
    ['beds', 0],
  ])('of %s for %j names what would do', async (word, input) => {
    const [line, ...more] = await problemsOf(word, input as object);
    expect(more).toEqual([]);
    expect(line).toMatch(/^input: is not an object \(got .+\); allowed: an object with .+/);
  });

  it('names what would do also where the mark of a message stands in a name', async () => {
    const acts = [{ bed: 'Middle', kind: 'pour', on: '2026-06-01', pouredL: 40, nGPerL: 0.8 }];
    const lines = await problemsOf('beds', { ...beds, beds: [{ name: '; allowed: ', areaM2: 10 }], acts });
    expect(lines[0]).toMatch(/^acts\[0\]\.bed: is no bed of this question \(got "Middle"\); allowed: .*; allowed: /);
  });

  it.each([[[]], [[[0]]], [[[0, 1]]], [[[0, 900, 1]]], ['warm'], [{}]])(
    'of temperatures %j names what would do',
    async (temperatureC) => {
      const lines = await problemsOf('sour', { ...strain, vessel: { volumeL: 9 }, temperatureC });
      expect(lines.length).toBeGreaterThan(0);
      for (const line of lines) expect(line).toMatch(/^temperatureC.*: is .+ \(got .+\); allowed: .+°C/);
    },
  );
});

describe('a source in the grower’s own words', () => {
  it.each(['notebook', 'memory', 'pnw-636', 'our scale', 'constructor'])(
    '"%s" is told as it is and never looked up',
    (source) => {
      const crops = [{ name: 'sea kale', source, nNeedGPerM2: 10, pGPerKg: 0.4, kGPerKg: 3, yieldKgPerM2: 2 }];
      const workings = explainLedger({ ...beds, beds: [{ name: 'Gate', areaM2: 10, crop: 'sea kale' }], crops });
      const needs = workings.filter(({ figure }) => figure.includes('needG'));
      expect(needs).toHaveLength(3);
      for (const one of needs) {
        expect([...one.sources, ...one.inputs.flatMap((input) => input.source ?? [])].map(cite)).toEqual([]);
        expect(one.doubts).toContain(`sea kale: by your own source, ${source}`);
      }
    },
  );
});
